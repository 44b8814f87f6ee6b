import './note.css';
import { createMemo, createSignal, Show } from 'solid-js';
import type { PanelProps } from '../panel';
import { printNote } from './fate';
import { NoteCautions, NoteHow } from './how';
import { NoteKeys } from './keys';
import { NoteLevel } from './level';
import { createListening, type Listening } from './listening';
import { NotePlucks } from './plucks';
import { NoteReading } from './reading';
import { NoteSpectrum } from './spectrum';
import type { Pluck } from './tally';
import say from './words/en';

/** What is wrong with the microphone, and what to do about it. */
function NoteTrouble(props: { ear: Listening['ear'] }) {
  return (
    <Show when={props.ear.trouble()}>
      {(trouble) => (
        <div class="problem" role="alert">
          <p>{say.trouble[trouble()]}</p>
          <p>{say.typeInstead}</p>
          <Show when={trouble() === 'suspended'}>
            <button type="button" class="button" onClick={() => props.ear.resume()}>
              {say.goOn}
            </button>
          </Show>
        </div>
      )}
    </Show>
  );
}

/** What the phone does to the sound that makes the notes doubtful. */
function NoteDoubts(props: { ear: Listening['ear'] }) {
  return (
    <>
      <Show when={props.ear.meddling().length > 0}>
        <p class="due small">{say.meddling.sentence(props.ear.meddling().map((one) => say.meddling.names[one]))}</p>
      </Show>
      <Show when={props.ear.isOn()}>
        <p class="small faint">{say.meddling.unknown}</p>
      </Show>
      <Show when={props.ear.rateOff()}>
        <p class="problem" role="alert">
          {say.rateOff}
        </p>
      </Show>
    </>
  );
}

const captionOf = ({ number, note }: Pluck): string =>
  note.status === 'found' ? say.spectrum.caption(number, note.snrDb.toFixed(0)) : say.spectrum.noNote(number);

/** Listens to a plucked belt, hands free, until enough plucks agree on its note. */
export function NotePanel(props: PanelProps) {
  const listening = createListening();
  const { ear, tally } = listening;
  const [picked, setPicked] = createSignal<number>();
  const hasPlucks = () => tally.plucks().length > 0;
  const isFresh = () => !hasPlucks() && !ear.isOn() && ear.trouble() === undefined;
  const shown = createMemo(() => tally.plucks().find(({ number }) => number === picked()) ?? tally.plucks().at(-1));
  const listen = (): void => {
    setPicked(undefined);
    listening.start();
  };
  const take = (): void => {
    const note = tally.combined().found;
    if (!note) return;
    listening.stop();
    props.onTake({ value: note.frequency, halfWidth: note.halfWidth });
  };

  return (
    <div class="note">
      <Show when={!ear.isOn() && ear.phase() !== 'done'}>
        <NoteCautions />
      </Show>
      <NoteTrouble ear={ear} />
      <Show when={!isFresh()}>
        <NoteReading listening={listening} mark={props.mark} />
      </Show>
      <Show when={ear.phase() === 'listening'}>
        <NoteLevel level={ear.level()} />
      </Show>
      <NoteDoubts ear={ear} />
      <NoteKeys listening={listening} take={props.take} onListen={listen} onTake={take} />
      <Show when={hasPlucks()}>
        <section class="section">
          <h2>{say.plucks.title}</h2>
          <NotePlucks listening={listening} mark={props.mark} shown={shown()?.number} onShow={setPicked} />
          <Show when={shown()} keyed>
            {(pluck) => (
              <NoteSpectrum
                note={pluck.note}
                label={say.spectrum.title(pluck.number, printNote(pluck, props.mark))}
                caption={captionOf(pluck)}
              />
            )}
          </Show>
        </section>
      </Show>
      <NoteHow open={isFresh()} />
      <Show when={ear.trouble() === undefined}>
        <p class="small faint">{say.typeInstead}</p>
      </Show>
    </div>
  );
}
