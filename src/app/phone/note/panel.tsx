import './note.css';
import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { formatMeasured } from '../../../quantity/format';
import { frequency } from '../../../quantity/kinds';
import { ChoiceField } from '../../../ui/choice-field';
import { NoteCautions, NoteHow } from './how';
import { NoteLevel } from './level';
import { createListening } from './listening';
import { NotePlucks, printFate, printNote } from './plucks';
import { NoteSpectrum } from './spectrum';
import { meddlingSentence, RATE_OFF, REFUSAL, TROUBLE, TYPE_INSTEAD } from './note-words';
import type { PanelProps } from '../panel-props';

const COUNTS = ['3', '5', '7'].map((count) => ({ id: count, label: count }));

/** Listens to a plucked belt, hands free, until enough plucks agree on its note. */
export function NotePanel(props: PanelProps) {
  const listening = createListening();
  const [picked, setPicked] = createSignal<number>();
  const { phase, plucks, combined, wanted } = listening;

  const isOn = () => phase() === 'opening' || phase() === 'listening' || phase() === 'away';
  const isFresh = () => plucks().length === 0 && !isOn() && listening.trouble() === undefined;
  const last = () => plucks().at(-1);
  const shown = createMemo(() => plucks().find(({ number }) => number === picked()) ?? last());
  const found = () => combined().found;
  const count = () => combined().used.size;
  const missing = () => Math.max(wanted() - count(), 0);
  const print = (value: number, halfWidth: number) =>
    formatMeasured(value, halfWidth, frequency.Hz.unit, { mark: props.mark });

  const lastWords = () => {
    const pluck = last();
    if (!pluck) return '';
    if (pluck.note.status === 'refused') return REFUSAL[pluck.note.reason].advice;
    return `Pluck ${pluck.number}: ${printNote(pluck, props.mark)}, ${printFate(pluck, combined())}.`;
  };
  const listenKey = () => {
    if (plucks().length === 0) return 'Listen';
    return missing() > 0 ? `Listen for ${missing()} more` : 'Listen again';
  };
  const spectrumLabel = () => {
    const pluck = shown();
    return pluck ? `Spectrum of pluck ${pluck.number}: ${printNote(pluck, props.mark)}` : '';
  };
  const spectrumCaption = () => {
    const pluck = shown();
    if (pluck?.note.status !== 'found') return `Pluck ${pluck?.number ?? ''}: no note was found in it.`;
    return `Pluck ${pluck.number}, ${pluck.note.snrDb.toFixed(0)} dB over the noise. Solid: its note; broken: the partials above it, numbered.`;
  };
  const listen = (): void => {
    // Enough are there: a fresh set was asked for.
    if (missing() === 0) listening.forget();
    setPicked(undefined);
    listening.start();
  };
  const take = (): void => {
    const note = found();
    if (!note) return;
    listening.stop();
    props.onTake({ value: note.frequency, halfWidth: note.halfWidth });
  };

  return (
    <div class="note">
      <Show when={!isOn() && phase() !== 'done'}>
        <NoteCautions />
      </Show>
      <Show when={listening.trouble()}>
        {(trouble) => (
          <div class="problem" role="alert">
            <p>{TROUBLE[trouble()]}</p>
            <p>{TYPE_INSTEAD}</p>
            <Show when={trouble() === 'suspended'}>
              <button type="button" class="button" onClick={() => listening.resume()}>
                Go on
              </button>
            </Show>
          </div>
        )}
      </Show>

      <Show when={!isFresh()}>
        <section class="note-reading" role="status" aria-label="Listening">
          <p class="note-phase">
            <Switch fallback={plucks().length > 0 ? `Not listening: ${count()} of ${wanted()}.` : 'Not listening.'}>
              <Match when={phase() === 'opening'}>Asking for the microphone…</Match>
              <Match when={phase() === 'listening'}>
                <b>
                  {count()} of {wanted()}
                </b>{' '}
                {count() === 0 ? 'Listening: pluck the middle of the span.' : 'Let it ring out, then pluck again.'}
              </Match>
              <Match when={phase() === 'away'}>
                The page is out of sight: the microphone is off until you are back.
              </Match>
              <Match when={phase() === 'done' && missing() === 0}>Done: {count()} plucks agree.</Match>
            </Switch>
          </p>
          <Show when={found()}>
            {(note) => (
              <p class="note-result">
                {print(note().frequency, note().halfWidth)} <span class="small faint">95 %, of {count()} plucks</span>
              </p>
            )}
          </Show>
          <Show when={plucks().length > 0 && !found()}>
            <p>No note yet: at least two plucks must agree, and more than half of those not struck off.</p>
          </Show>
          <Show when={phase() === 'listening' && lastWords()}>
            <p class="small">{lastWords()}</p>
          </Show>
        </section>
      </Show>
      <Show when={phase() === 'listening'}>
        <NoteLevel level={listening.level()} />
      </Show>
      <Show when={meddlingSentence(listening.meddling())}>{(sentence) => <p class="due small">{sentence()}</p>}</Show>
      <Show when={listening.rateOff()}>
        <p class="problem" role="alert">
          {RATE_OFF}
        </p>
      </Show>

      <Show when={!isOn()}>
        <ChoiceField
          label="Good plucks to wait for"
          options={COUNTS}
          value={String(wanted())}
          onPick={(id) => listening.want(Number(id))}
        />
      </Show>
      <div class="note-keys">
        <Show
          when={isOn()}
          fallback={
            <button type="button" class="button" classList={{ 'button-main': !found() }} onClick={listen}>
              {listenKey()}
            </button>
          }
        >
          <button type="button" class="button" onClick={() => listening.stop()}>
            Stop
          </button>
        </Show>
        <Show when={plucks().length > 0 || isOn()}>
          <button
            type="button"
            class="button"
            classList={{ 'button-main': !!found() }}
            disabled={!found()}
            onClick={take}
          >
            {props.take}
          </button>
        </Show>
      </div>

      <Show when={plucks().length > 0}>
        <section class="section">
          <h2>Plucks</h2>
          <NotePlucks listening={listening} mark={props.mark} shown={shown()?.number} onShow={setPicked} />
          <Show when={shown()} keyed>
            {(pluck) => <NoteSpectrum note={pluck.note} label={spectrumLabel()} caption={spectrumCaption()} />}
          </Show>
        </section>
      </Show>
      <NoteHow open={isFresh()} />
      <Show when={listening.trouble() === undefined}>
        <p class="small faint">{TYPE_INSTEAD}</p>
      </Show>
    </div>
  );
}
