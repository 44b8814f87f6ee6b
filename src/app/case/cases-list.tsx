import { createResource, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { catalogue } from '../../diagnosis/catalogue';
import type { Case } from '../../machine/schema';
import say from './words/en';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';

const called = (one: Case): string => catalogue.symptoms.find(({ id }) => id === one.symptom)?.title ?? say.screen.bad;

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
          <p class="faint">{cases.latest ? say.cases.none : say.cases.looking}</p>
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
                      ? say.cases.ended(say.ends[one.closed.how], printTime(one.closed.at))
                      : say.cases.open(printTime(one.opened))}
                    <Show when={one.owner}> · {say.cases.asked(one.owner)}</Show>
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
