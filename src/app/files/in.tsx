import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Choice } from '../../machine/exchange-merge';
import { outcome, type Group, type Plan } from '../../machine/exchange-plan';
import type { GoodFile } from '../../machine/exchange-read';
import { planFor, takeIn } from '../../machine/exchange-store';
import { partOf, type Watch } from '../../machine/steps';
import type { Store } from '../../machine/store';
import { GroupPlan } from './group';
import { printTime } from '../desk/time';
import { readChosen } from './read';
import { createWork, Working } from './working';
import say from './words/en';
import './plan.css';

/** What was read and what it would do. */
interface Looked {
  readonly name: string;
  readonly file: GoodFile;
  readonly plan: Plan;
}

const REFUSED_SHOWN = 20;
const GROUPS_SHOWN = 60;

/** Takes in a file: shows what it would do, and does it when the person says so. */
export function TakeInFile(props: { store: Promise<Store> }) {
  const [looked, setLooked] = createSignal<Looked>();
  const [choices, setChoices] = createSignal<ReadonlyMap<string | null, Choice>>(new Map());
  const [problem, setProblem] = createSignal<string>();
  const [told, setTold] = createSignal<string>();
  const work = createWork();

  const clear = () => {
    setLooked(undefined);
    setChoices(new Map<string | null, Choice>());
    setProblem(undefined);
    setTold(undefined);
  };
  const choose = (machine: string | null): Choice => choices().get(machine) ?? 'newest';

  const look = async (chosen: File, watch: Watch): Promise<{ readonly problem?: string }> => {
    const file = await readChosen(chosen, partOf(watch, 0, 0.7));
    if (!file.ok) return { problem: file.reason };
    const plan = await planFor(await props.store, file, partOf(watch, 0.7, 1));
    if (!plan.ok) return { problem: plan.reason };
    setLooked({ name: chosen.name, file, plan: plan.value });
    return {};
  };

  const open = async (input: HTMLInputElement) => {
    const chosen = input.files?.[0];
    if (!chosen) return;
    clear();
    const watch = work.begin(say.takeIn.reading);
    const answer = await work.end(look(chosen, watch));
    if (answer) setProblem(answer.problem);
    else setTold(say.takeIn.stopped);
    // So that the same file can be chosen again.
    input.value = '';
  };

  const take = async (now: Looked, watch: Watch) => takeIn(await props.store, now.file, now.plan, choose, watch);

  const accept = async (now: Looked) => {
    const records = outcome(now.plan, choose);
    const added = now.plan.groups.flatMap(({ items }) => items).filter(({ state }) => state === 'added').length;
    setProblem(undefined);
    const watch = work.begin(say.takeIn.writing);
    const taken = await work.end(take(now, watch));
    if (!taken) {
      setProblem(say.takeIn.stopped);
    } else if (!taken.ok) {
      setProblem(say.takeIn.failed(taken.reason));
    } else if (taken.value.kind === 'looked again') {
      setLooked({ ...now, plan: taken.value.plan });
      setProblem(say.takeIn.lookedAgain);
    } else {
      clear();
      setTold(say.takeIn.done(added, records.length - added));
    }
  };

  return (
    <div class="section">
      <h3>{say.takeIn.title}</h3>
      <label>
        {say.takeIn.choose}
        <input
          class="text-input"
          type="file"
          disabled={work.busy()}
          onChange={(event) => void open(event.currentTarget)}
        />
      </label>
      <p class="faint small">{say.takeIn.safe}</p>
      <p role="status">{work.said() || told()}</p>
      <Working work={work} />
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={looked()}>
        {(now) => (
          <PlanPanel
            looked={now()}
            busy={work.busy()}
            choose={choose}
            onChoose={(machine, choice) => setChoices((old) => new Map(old).set(machine, choice))}
            onAccept={() => void accept(now())}
            onLeave={clear}
          />
        )}
      </Show>
    </div>
  );
}

const unchanged = (group: Group): boolean => group.items.every(({ state }) => state === 'same');

/** True where here and the file differ: the person decides. */
const asks = (group: Group): boolean => group.items.some(({ differences }) => differences.length > 0);

/** All that a file would do, before it does it. */
function PlanPanel(props: {
  looked: Looked;
  busy: boolean;
  choose: (machine: string | null) => Choice;
  onChoose: (machine: string | null, choice: Choice) => void;
  onAccept: () => void;
  onLeave: () => void;
}) {
  const plan = () => props.looked.plan;
  // Those that ask something first: a file may hold more machines than a page should.
  const changed = createMemo(() => {
    const groups = plan().groups.filter((group) => !unchanged(group));
    return [...groups.filter(asks), ...groups.filter((group) => !asks(group))];
  });
  const shown = () => changed().slice(0, GROUPS_SHOWN);
  const items = createMemo(() => plan().groups.flatMap((group) => group.items));
  const writes = createMemo(() => outcome(plan(), props.choose).length);
  const summary = () => {
    const added = items().filter(({ state }) => state === 'added').length;
    const same = items().filter(({ state }) => state === 'same').length;
    const left = items().length - same - writes();
    const refused = plan().refused.length;
    return say.plan.summary(printTime(plan().made), [
      say.plan.added(added),
      say.plan.changed(writes() - added),
      ...(left > 0 ? [say.plan.left(left)] : []),
      say.plan.same(same),
      ...(refused > 0 ? [say.plan.refusedCount(refused)] : []),
    ]);
  };
  return (
    <div class="panel plan" role="group" aria-label={say.plan.label}>
      <p>
        <strong>{props.looked.name}</strong>, {summary()}
      </p>
      <Show when={plan().repeats > 0}>
        <p class="small">{say.plan.repeats(plan().repeats)}</p>
      </Show>
      <For each={shown()}>
        {(group) => (
          <GroupPlan
            group={group}
            choice={props.choose(group.machine)}
            onChoose={(choice) => props.onChoose(group.machine, choice)}
          />
        )}
      </For>
      <Show when={changed().length > GROUPS_SHOWN}>
        <p>{say.andMore(changed().length - GROUPS_SHOWN)}</p>
      </Show>
      <Show when={plan().refused.length > 0}>
        <h4>{say.plan.refused}</h4>
        <ul>
          <For each={plan().refused.slice(0, REFUSED_SHOWN)}>
            {(one) => <li>{say.plan.refusal(one.what, one.reason)}</li>}
          </For>
        </ul>
        <Show when={plan().refused.length > REFUSED_SHOWN}>
          <p>{say.andMore(plan().refused.length - REFUSED_SHOWN)}</p>
        </Show>
      </Show>
      <Show when={writes() === 0}>
        <p>{say.plan.nothing}</p>
      </Show>
      <div class="row">
        <button
          type="button"
          class="button button-main"
          disabled={props.busy || writes() === 0}
          onClick={() => props.onAccept()}
        >
          {say.plan.take}
        </button>
        <button type="button" class="button" disabled={props.busy} onClick={() => props.onLeave()}>
          {say.plan.leave}
        </button>
      </div>
    </div>
  );
}
