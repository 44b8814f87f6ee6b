import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Choice } from '../../machine/exchange-merge';
import { outcome, type Group, type Plan } from '../../machine/exchange-plan';
import { readFile, tooLarge, type GoodFile } from '../../machine/exchange-read';
import { planFor, takeIn } from '../../machine/exchange-store';
import type { Store } from '../../machine/store';
import { GroupPlan } from './group';
import { printTime } from '../desk/time';
import say from './words/en';
import './plan.css';

/** What was read and what it would do. */
interface Looked {
  readonly name: string;
  readonly file: GoodFile;
  readonly plan: Plan;
}

async function textOf(file: File): Promise<string | undefined> {
  try {
    return await file.text();
  } catch {
    return undefined;
  }
}

const REFUSED_SHOWN = 20;

/** Takes in a file: shows what it would do, and does it when the person says so. */
export function TakeInFile(props: { store: Promise<Store> }) {
  const [looked, setLooked] = createSignal<Looked>();
  const [choices, setChoices] = createSignal<ReadonlyMap<string | null, Choice>>(new Map());
  const [problem, setProblem] = createSignal<string>();
  const [told, setTold] = createSignal<string>();
  const [busy, setBusy] = createSignal('');

  const clear = () => {
    setLooked(undefined);
    setChoices(new Map<string | null, Choice>());
    setProblem(undefined);
    setTold(undefined);
  };
  const choose = (machine: string | null): Choice => choices().get(machine) ?? 'newest';

  const look = async (chosen: File): Promise<string | undefined> => {
    const large = tooLarge(chosen.size);
    if (large !== undefined) return large;
    const text = await textOf(chosen);
    if (text === undefined) return say.takeIn.notOpened;
    const file = readFile(text);
    if (!file.ok) return file.reason;
    const plan = await planFor(await props.store, file);
    if (!plan.ok) return plan.reason;
    setLooked({ name: chosen.name, file, plan: plan.value });
    return undefined;
  };

  const open = async (input: HTMLInputElement) => {
    const chosen = input.files?.[0];
    if (!chosen) return;
    clear();
    setBusy(say.takeIn.reading);
    setProblem(await look(chosen));
    setBusy('');
    // So that the same file can be chosen again.
    input.value = '';
  };

  const accept = async (now: Looked) => {
    const records = outcome(now.plan, choose);
    const added = now.plan.groups.flatMap(({ items }) => items).filter(({ state }) => state === 'added').length;
    setBusy(say.takeIn.writing);
    setProblem(undefined);
    const taken = await takeIn(await props.store, now.file, now.plan, choose);
    setBusy('');
    if (!taken.ok) {
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
          disabled={busy() !== ''}
          onChange={(event) => void open(event.currentTarget)}
        />
      </label>
      <p class="faint small">{say.takeIn.safe}</p>
      <p role="status">{busy() || told()}</p>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
      <Show when={looked()}>
        {(now) => (
          <PlanPanel
            looked={now()}
            busy={busy() !== ''}
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
  const shown = createMemo(() => plan().groups.filter((group) => !unchanged(group)));
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
