import { For } from 'solid-js';
import { formatMeasured } from '../../../quantity/format';
import { frequency } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { Listening } from './listening';
import say from './words/en';

/** Two notes that the plucks fall into, each with the key that keeps only its plucks. */
export function NoteTwo(props: { listening: Listening; mark: DecimalMark }) {
  const groups = () => props.listening.tally.combined().two;
  const print = (group: { frequency: number; halfWidth: number }) =>
    formatMeasured(group.frequency, group.halfWidth, frequency.Hz.unit, { mark: props.mark });
  return (
    <>
      <p>
        <b>{say.two.title(groups().map(print))}</b> {say.two.what}
      </p>
      <div class="row">
        <For each={groups()}>
          {(group, belt) => (
            <button type="button" class="button" onClick={() => props.listening.keepOnly(group.numbers)}>
              {say.two.keep[belt()]}
            </button>
          )}
        </For>
      </div>
    </>
  );
}
