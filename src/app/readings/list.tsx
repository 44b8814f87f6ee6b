import { createEffect, createSignal, For, on, onCleanup, Show } from 'solid-js';
import type { Page } from '../../machine/find';
import { useRecords } from '../desk/context';
import { ReadingEntry } from '../desk/reading-entry';
import say from './words/en';

const PAGE = 10;

/** A machine's readings, newest first, ten at a time; those of one check where it is given. */
export function ReadingList(props: { machine: string; check?: string }) {
  const records = useRecords();
  const [wanted, setWanted] = createSignal(PAGE);
  const [page, setPage] = createSignal<Page>();
  // A resource would drop the list while a longer one is read.
  createEffect(
    on([() => props.machine, () => props.check, wanted, records.readingsTick], ([machine, calculator, limit]) => {
      let ended = false;
      onCleanup(() => (ended = true));
      void records
        .latestReadings(machine, { limit, ...(calculator === undefined ? {} : { calculator }) })
        .then((found) => {
          if (!ended) setPage(found);
        });
    }),
  );
  const list = () => page()?.records ?? [];
  return (
    <Show when={list().length > 0} fallback={<p class="faint">{page() ? say.list.none : say.looking}</p>}>
      <ul class="index-list">
        <For each={list()}>
          {(reading) => (
            <li>
              <ReadingEntry reading={reading} />
            </li>
          )}
        </For>
      </ul>
      <Show when={page()?.next !== undefined}>
        <button type="button" class="button" onClick={() => setWanted(wanted() + PAGE)}>
          {say.list.more}
        </button>
      </Show>
    </Show>
  );
}
