import { createResource, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import type { Case } from '../../machine/schema';
import { ENDS } from './said';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';

const called = (one: Case): string =>
  catalogue.symptoms.find(({ id }) => id === one.symptom)?.title ?? 'A case that cannot be read';

/** A machine's cases, open ones first; only the open ones where `open`. */
export function CasesList(props: { machine: string; open?: boolean }) {
  const records = useRecords();
  const [cases] = createResource(
    () => ({ machine: props.machine, tick: records.casesTick() }),
    ({ machine }) => records.casesOf(machine),
  );
  const shown = () => (cases.latest ?? []).filter((one) => !props.open || one.closed === null);
  return (
    <Show
      when={shown().length > 0}
      fallback={
        <Show when={!props.open}>
          <p class="faint">{cases.latest ? 'None yet.' : 'Looking…'}</p>
        </Show>
      }
    >
      <ul class="index-list">
        <For each={shown()}>
          {(one) => (
            <li>
              <A class="index-entry" href={`/case/${one.machine}/${one.id}`}>
                <span>
                  <strong>{called(one)}</strong>
                  <br />
                  <span class="faint small">
                    {one.closed
                      ? `${ENDS[one.closed.how]}, ${printTime(one.closed.at)}`
                      : `Open since ${printTime(one.opened)}`}
                    <Show when={one.owner}> · asked by {one.owner}</Show>
                  </span>
                </span>
                <span class="leader" aria-hidden="true">
                  ›
                </span>
              </A>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
