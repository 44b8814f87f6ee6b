import '../sound/sound.css';
import './note.css';
import { createMemo, createSignal, Show } from 'solid-js';
import type { PanelProps } from '../panel';
import { EarLevel } from '../sound/level';
import { EarDoubts, EarTrouble } from '../sound/trouble';
import { printNote } from './fate';
import { NoteCautions, NoteHow } from './how';
import { NoteKeys } from './keys';
import { createListening } from './listening';
import { NotePlucks } from './plucks';
import { NoteReading } from './reading';
import { NoteSpectrum } from './spectrum';
import type { Pluck } from './tally';
import say from './words/en';

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
      <EarTrouble ear={ear} instead={say.typeInstead} />
      <Show when={!isFresh()}>
        <NoteReading listening={listening} mark={props.mark} />
      </Show>
      <Show when={ear.phase() === 'listening'}>
        <EarLevel level={ear.level()} />
      </Show>
      <EarDoubts ear={ear} effect={say.meddled} />
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
