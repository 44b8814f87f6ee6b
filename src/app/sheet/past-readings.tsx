import { createResource, For, Show } from 'solid-js';
import { useRecords } from '../desk/context';
import { ReadingEntry } from '../desk/reading-entry';
import say from './words/en';

const SHOWN = 5;

/** Earlier readings of this check on this machine. */
export function PastReadings(props: { id: string; machine: string | null }) {
  const records = useRecords();
  const [page] = createResource(
    () =>
      props.machine === null
        ? undefined
        : { machine: props.machine, calculator: props.id, tick: records.readingsTick() },
    ({ machine, calculator }) => records.latestReadings(machine, { calculator, limit: SHOWN }),
  );
  const readings = () => page()?.records ?? [];
  return (
    <Show when={readings().length > 0}>
      <section class="section">
        <h2>{say.keeper.past}</h2>
        <ul class="index-list">
          <For each={readings()}>
            {(reading) => (
              <li>
                <ReadingEntry reading={reading} />
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  );
}
