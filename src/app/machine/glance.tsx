import { createEffect, createMemo, createResource, createSignal, For, on, onCleanup, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { listed } from '../../engine/list';
import { dueFor, type Due } from '../../machine/history';
import type { Machine, Reading } from '../../machine/schema';
import { VerdictMark } from '../../ui/verdict-mark';
import { loadFacts, printDue, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';
import { titleOf, verdictWord } from '../desk/reading-entry';
import say from './words/en';

/** Readings looked through at a time. */
const PART = 300;
const NO_USES: CheckFacts = { calculator: undefined, uses: { values: {}, choices: {} } };

interface Seen {
  readonly machine: string;
  readonly latest: ReadonlyMap<string, Reading>;
  readonly complete: boolean;
}

/** The last reading of each check on a machine: the newest ones at once, older ones as they are found. */
function createSeen(machine: () => string) {
  const records = useRecords();
  const [seen, setSeen] = createSignal<Seen>();
  createEffect(
    on([machine, records.readingsTick], ([id]) => {
      let ended = false;
      onCleanup(() => (ended = true));
      const known = seen()?.machine === id && seen()?.complete;
      const look = async () => {
        const latest = new Map<string, Reading>();
        let before: string | undefined;
        do {
          const page = await records.latestReadings(id, { limit: PART, ...(before === undefined ? {} : { before }) });
          if (ended) return;
          for (const reading of page.records) {
            if (!latest.has(reading.calculator)) latest.set(reading.calculator, reading);
          }
          before = page.next;
          const complete = before === undefined;
          // What stands there stays until all of the new is known.
          if (complete || !known) setSeen({ machine: id, latest: new Map(latest), complete });
        } while (before !== undefined);
      };
      void look();
    }),
  );
  return seen;
}

interface Line {
  readonly check: string;
  readonly latest: Reading | undefined;
  readonly due: readonly Due[];
  readonly facts: CheckFacts;
}

const order = (check: string): number => listed.findIndex((entry) => entry.id === check);
/** What wants a hand first, then what is due, then what is well. */
const rank = ({ latest, due }: Line): number =>
  latest?.verdict === 'beyond' ? 0 : due.length > 0 ? 1 : latest?.verdict === 'within' ? 3 : 2;

/** Each check's latest verdict on a machine, and what is due, with the reason. */
export function Glance(props: { machine: Machine }) {
  const records = useRecords();
  const seen = createSeen(() => props.machine.id);
  const checks = createMemo(
    () => [...new Set([...(seen()?.latest.keys() ?? []), ...Object.keys(props.machine.intervals ?? {})])].sort(),
    undefined,
    { equals: (a, b) => a.join() === b.join() },
  );
  const [facts] = createResource(
    checks,
    async (ids) => new Map(await Promise.all(ids.map(async (id) => [id, await loadFacts(id)] as const))),
  );
  const lines = createMemo<readonly Line[]>(() =>
    checks()
      .map((check) => {
        const known = facts.latest?.get(check) ?? NO_USES;
        const latest = seen()?.latest.get(check);
        const due = dueFor(check, latest, props.machine, known.uses, new Date());
        return { check, latest, facts: known, due: latest || seen()?.complete ? due : [] };
      })
      .sort((a, b) => rank(a) - rank(b) || order(a.check) - order(b.check)),
  );
  const dueCount = () => lines().filter((line) => line.due.length > 0).length;
  return (
    <Show when={lines().length > 0} fallback={<p class="faint">{seen() ? say.glance.none : say.glance.looking}</p>}>
      <Show when={dueCount() > 0}>
        <p>{say.glance.due(dueCount())}</p>
      </Show>
      <ul class="index-list">
        <For each={lines()}>
          {(line) => (
            <li>
              <A class="index-entry" href={`/machines/${props.machine.id}/check/${line.check}`}>
                <span>
                  <strong>{titleOf(line.check)}</strong>{' '}
                  <Show when={line.due.length > 0}>
                    <span class="stamp">{say.glance.dueStamp}</span>
                  </Show>
                  <br />
                  <Show when={line.latest} fallback={<span class="faint small">{say.glance.never}</span>}>
                    {(latest) => (
                      <span class="small">
                        {say.glance.standing(verdictWord(line.check, latest().verdict), printTime(latest().at))}
                      </span>
                    )}
                  </Show>
                </span>
                <VerdictMark state={line.latest?.verdict ?? 'none'} />
              </A>
              <For each={line.due}>
                {(due) => (
                  <p class="due small">{printDue(due, line.latest, line.facts.calculator, records.settings().mark)}</p>
                )}
              </For>
            </li>
          )}
        </For>
      </ul>
      <Show when={seen()?.complete === false}>
        <p class="faint small">{say.glance.lookingBack}</p>
      </Show>
    </Show>
  );
}
