import { createResource, createSignal, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { useRecords } from '../desk/context';
import say from './words/en';

/** What was waiting when the person said "later": the reminder comes back with the next reading. */
const [putOff, setPutOff] = createSignal<{ readonly count: number; readonly since: string | null }>();

/** Says how many readings no exported file holds, with a link to where they are exported, if it is given. Nothing while there are none. */
export function ExportReminder(props: { href?: string }) {
  const records = useRecords();
  const [count] = createResource(
    () =>
      records.ready() && records.keeping()
        ? { tick: records.readingsTick(), since: records.settings().lastExport }
        : undefined,
    () => records.countUnexported(),
  );
  const waiting = () => count.latest ?? 0;
  const since = () => records.settings().lastExport;
  const shown = () => waiting() > (putOff()?.since === since() ? (putOff()?.count ?? 0) : 0);
  return (
    <Show when={shown()}>
      <div class="notice row no-print">
        <span>{since() === null ? say.reminder.waiting(waiting()) : say.reminder.waitingAgain(waiting())}</span>
        <Show when={props.href}>
          {(href) => (
            <A class="button" href={href()}>
              {say.reminder.save}
            </A>
          )}
        </Show>
        <button
          type="button"
          class="button button-plain"
          onClick={() => setPutOff({ count: waiting(), since: since() })}
        >
          {say.reminder.later}
        </button>
      </div>
    </Show>
  );
}
