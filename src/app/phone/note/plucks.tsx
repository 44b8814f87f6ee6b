import { For, Show } from 'solid-js';
import { formatValue } from '../../../quantity/format';
import { frequency } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { Listening, Pluck } from './listening';
import { REFUSAL, whyApart } from './note-words';

/** Hz: a pluck by itself is printed no finer, whatever its own doubt; the plucks differ by more. */
const FINEST = 0.1;

/** "109.98 Hz"; in words where a pluck gave no note. */
export function printNote({ note }: Pluck, mark: DecimalMark): string {
  if (note.status !== 'found') return 'no note';
  return formatValue(note.frequency, Math.max(note.halfWidth, FINEST), frequency.Hz.unit, { mark });
}

/** Whether a pluck counts, and why not. */
export function printFate(pluck: Pluck, combined: ReturnType<Listening['combined']>): string {
  const { note, number, struck } = pluck;
  if (note.status !== 'found') return `not used: ${REFUSAL[note.reason].short}`;
  if (struck) return 'struck off';
  if (!combined.found) return 'waiting for others that agree';
  if (combined.used.has(number)) return 'used';
  return `not used: ${whyApart(note.frequency, combined.found.frequency)}`;
}

/** The plucks as they came: tapped, one shows its spectrum; each can be struck off and taken back. */
export function NotePlucks(props: {
  listening: Listening;
  mark: DecimalMark;
  shown: number | undefined;
  onShow: (number: number) => void;
}) {
  return (
    <ol class="note-plucks">
      <For each={props.listening.plucks()}>
        {(pluck) => (
          <li classList={{ 'note-unused': !props.listening.combined().used.has(pluck.number) }}>
            <button
              type="button"
              class="note-pluck"
              aria-pressed={props.shown === pluck.number}
              onClick={() => props.onShow(pluck.number)}
            >
              <span class="faint">{pluck.number}</span>
              <span>
                <span class="note-value">{printNote(pluck, props.mark)}</span>
                <span class="small note-fate">{printFate(pluck, props.listening.combined())}</span>
              </span>
            </button>
            <Show when={pluck.note.status === 'found'}>
              <button
                type="button"
                class="button"
                aria-label={`${pluck.struck ? 'Take back' : 'Strike off'} pluck ${pluck.number}`}
                onClick={() => props.listening.strike(pluck.number, !pluck.struck)}
              >
                {pluck.struck ? 'Take back' : 'Strike off'}
              </button>
            </Show>
          </li>
        )}
      </For>
    </ol>
  );
}
