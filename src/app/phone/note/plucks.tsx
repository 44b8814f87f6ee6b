import { For, Show } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import { printFate, printNote } from './fate';
import type { Listening } from './listening';
import say from './words/en';

/** The plucks as they came: tapped, one shows its spectrum; each can be struck off and taken back. */
export function NotePlucks(props: {
  listening: Listening;
  mark: DecimalMark;
  shown: number | undefined;
  onShow: (number: number) => void;
}) {
  return (
    <ol class="note-plucks">
      <For each={props.listening.tally.plucks()}>
        {(pluck) => (
          <li classList={{ 'note-unused': !props.listening.tally.combined().used.has(pluck.number) }}>
            <button
              type="button"
              class="note-pluck"
              aria-pressed={props.shown === pluck.number}
              onClick={() => props.onShow(pluck.number)}
            >
              <span class="faint">{pluck.number}</span>
              <span>
                <span class="note-value">{printNote(pluck, props.mark)}</span>
                <span class="small note-fate">{printFate(pluck, props.listening.tally.combined(), props.mark)}</span>
              </span>
            </button>
            <Show when={pluck.note.status === 'found'}>
              <button
                type="button"
                class="button"
                aria-label={pluck.struck ? say.plucks.takeBackOne(pluck.number) : say.plucks.strikeOne(pluck.number)}
                onClick={() => props.listening.strike(pluck.number, !pluck.struck)}
              >
                {pluck.struck ? say.plucks.takeBack : say.plucks.strike}
              </button>
            </Show>
          </li>
        )}
      </For>
    </ol>
  );
}
