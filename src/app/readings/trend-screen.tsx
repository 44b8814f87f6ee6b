import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import { A, useNavigate, useParams } from '@solidjs/router';
import { dueFor, pairsOf } from '../../machine/history';
import type { Machine, Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';
import { VerdictMark } from '../../ui/verdict-mark';
import { checkNow } from '../../reference/renamed';
import { loadFacts, printDue, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { OfMachine } from '../desk/of-machine';
import { Outcome } from './outcome';
import { printTime } from '../desk/time';
import { titleOf, verdictWord } from '../desk/reading-entry';
import { ReadingList } from './list';
import { Trends } from './trend';
import say from './words/en';
import '../../ui/lists.css';

/** Corrections shown before the person asks for more. */
const PAIRS = 3;
/** Readings looked at before the person asks for all. */
const NEWEST = 200;

/** One check on one machine: how it stands, over time, and whether the corrections worked. */
export function TrendScreen() {
  const params = useParams();
  return <OfMachine>{(machine) => <CheckSheet machine={machine()} check={checkNow(params.check ?? '')} />}</OfMachine>;
}

function CheckSheet(props: { machine: Machine; check: string }) {
  const records = useRecords();
  const [limit, setLimit] = createSignal(NEWEST);
  const [loaded] = createResource(() => props.check, loadFacts);
  const [page] = createResource(
    () => ({ machine: props.machine.id, calculator: props.check, limit: limit(), tick: records.readingsTick() }),
    ({ machine, calculator, limit: most }) => records.latestReadings(machine, { calculator, limit: most }),
  );
  const readings = createMemo(() => page.latest?.records ?? []);
  return (
    <Show when={loaded.latest} fallback={<p>{say.lookingUp}</p>}>
      {(facts) => (
        <>
          <h1>{titleOf(props.check)}</h1>
          <p>
            {say.check.on} <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
          </p>
          <Standing
            machine={props.machine}
            check={props.check}
            facts={facts()}
            latest={readings()[0]}
            known={page.latest !== undefined}
          />
          <div class="two-columns">
            <div>
              <Show when={readings().length > 0}>
                <section class="section">
                  <h2>{say.check.overTime}</h2>
                  <Trends readings={readings()} facts={facts()} />
                  <Show when={page.latest?.next !== undefined}>
                    <p class="small faint">{say.check.newest(NEWEST)}</p>
                    <button
                      type="button"
                      class="button"
                      disabled={page.loading}
                      onClick={() => setLimit(Number.MAX_SAFE_INTEGER)}
                    >
                      {say.check.all}
                    </button>
                  </Show>
                </section>
              </Show>
            </div>
            <div>
              <Corrections readings={readings()} facts={facts()} />
              <section class="section">
                <h2>{say.check.readings}</h2>
                <ReadingList machine={props.machine.id} check={props.check} />
              </section>
              <section class="section no-print">
                <h2>{say.check.every}</h2>
                <Interval machine={props.machine} check={props.check} />
              </section>
            </div>
          </div>
        </>
      )}
    </Show>
  );
}

/** How the check stands by its latest reading, whether it is due, and the key to take it. */
function Standing(props: {
  machine: Machine;
  check: string;
  facts: CheckFacts;
  latest: Reading | undefined;
  /** Whether the readings have been looked up. */
  known: boolean;
}) {
  const records = useRecords();
  const navigate = useNavigate();
  const due = () => (props.known ? dueFor(props.check, props.latest, props.machine, props.facts.uses, new Date()) : []);
  const take = async () => {
    await records.choose(props.machine.id);
    navigate(`/check/${props.check}`);
  };
  return (
    <>
      <Show when={props.latest} fallback={<p class="faint">{props.known ? say.check.never : say.looking}</p>}>
        {(latest) => (
          <div class="bench-line">
            <VerdictMark state={latest().verdict} />
            <div>
              <strong>{verdictWord(props.check, latest().verdict)}</strong>, {printTime(latest().at)}
              <br />
              {latest().order.sentence}
            </div>
          </div>
        )}
      </Show>
      <For each={due()}>
        {(one) => (
          <p class="due">
            <strong>{say.check.due}</strong>{' '}
            {printDue(one, props.latest, props.facts.calculator, records.settings().mark)}
          </p>
        )}
      </For>
      <Show when={props.facts.calculator}>
        <div class="row section no-print">
          <button type="button" class="button button-main" onClick={() => void take()}>
            {props.latest ? say.check.takeAgain : say.check.take}
          </button>
        </div>
      </Show>
    </>
  );
}

/** What was advised, and what the next reading said of it, newest first. */
function Corrections(props: { readings: readonly Reading[]; facts: CheckFacts }) {
  const [shown, setShown] = createSignal(PAIRS);
  const pairs = createMemo(() => pairsOf(props.readings));
  return (
    <Show when={pairs().length > 0}>
      <section class="section">
        <h2>{say.check.corrections}</h2>
        <For each={pairs().slice(0, shown())}>{(pair) => <Outcome pair={pair} facts={props.facts} />}</For>
        <Show when={pairs().length > shown()}>
          <button type="button" class="button" onClick={() => setShown(shown() + PAIRS)}>
            {say.check.earlier}
          </button>
        </Show>
      </section>
    </Show>
  );
}

/** Days after which the check is due again; none unless the person says so. */
function Interval(props: { machine: Machine; check: string }) {
  const records = useRecords();
  const [problem, setProblem] = createSignal<string>();
  const days = () => props.machine.intervals?.[props.check];
  const set = (text: string) => {
    const typed = text.trim() === '' ? undefined : Number(text.trim());
    if (typed !== undefined && !(Number.isInteger(typed) && typed >= 1 && typed <= LIMITS.days)) {
      setProblem(say.check.wholeDays(LIMITS.days));
      return;
    }
    setProblem(undefined);
    void records.changeMachine(props.machine.id, { intervals: { [props.check]: typed } });
  };
  return (
    <>
      <label>
        {say.check.days}
        <input
          class="text-input"
          type="text"
          inputmode="numeric"
          autocomplete="off"
          value={days() ?? ''}
          onChange={(event) => set(event.currentTarget.value)}
        />
      </label>
      <Show when={problem()}>
        <p class="problem" role="alert">
          {problem()}
        </p>
      </Show>
    </>
  );
}
