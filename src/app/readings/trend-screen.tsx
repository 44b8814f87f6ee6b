import { createMemo, createResource, createSignal, For, Show } from 'solid-js';
import { A, useNavigate, useParams } from '@solidjs/router';
import { dueFor, pairsOf } from '../../machine/history';
import type { Machine } from '../../machine/schema';
import { LIMITS } from '../../machine/schema-parts';
import { VerdictMark } from '../../ui/verdict-mark';
import { loadFacts, printDue } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { OfMachine } from '../desk/of-machine';
import { Outcome } from './outcome';
import { printTime } from '../desk/time';
import { titleOf, verdictWord } from '../desk/reading-entry';
import { ReadingList } from './list';
import { Trends } from './trend';
import '../../ui/lists.css';

/** Corrections shown before the person asks for more. */
const PAIRS = 3;
/** Readings looked at before the person asks for all. */
const NEWEST = 200;

/** One check on one machine: how it stands, over time, and whether the corrections worked. */
export function TrendScreen() {
  const params = useParams();
  return <OfMachine>{(machine) => <CheckSheet machine={machine()} check={params.check ?? ''} />}</OfMachine>;
}

function CheckSheet(props: { machine: Machine; check: string }) {
  const records = useRecords();
  const navigate = useNavigate();
  const [pairs, setPairs] = createSignal(PAIRS);
  const [limit, setLimit] = createSignal(NEWEST);
  const [loaded] = createResource(() => props.check, loadFacts);
  const [page] = createResource(
    () => ({ machine: props.machine.id, calculator: props.check, limit: limit(), tick: records.readingsTick() }),
    ({ machine, calculator, limit: most }) => records.latestReadings(machine, { calculator, limit: most }),
  );
  const readings = createMemo(() => page.latest?.records ?? []);
  const outcomes = createMemo(() => pairsOf(readings()));
  const due = () => {
    const facts = loaded.latest;
    return facts && page.latest ? dueFor(props.check, readings()[0], props.machine, facts.uses, new Date()) : [];
  };
  const take = async () => {
    await records.choose(props.machine.id);
    navigate(`/check/${props.check}`);
  };
  return (
    <Show when={loaded.latest} fallback={<p>Looking it up…</p>}>
      {(facts) => (
        <>
          <h1>{titleOf(props.check)}</h1>
          <p>
            on <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
          </p>
          <Show
            when={readings()[0]}
            fallback={<p class="faint">{page.latest ? 'Never taken on this machine.' : 'Looking…'}</p>}
          >
            {(latest) => (
              <div class="bench-line">
                <VerdictMark state={latest().verdict} />
                <div>
                  <strong>{verdictWord(props.check, latest().verdict)}</strong>, {printTime(latest().at)}
                  <br />
                  {latest().headline}
                </div>
              </div>
            )}
          </Show>
          <For each={due()}>
            {(one) => (
              <p class="due">
                <strong>Due.</strong> {printDue(one, facts().calculator, records.settings().mark)}
              </p>
            )}
          </For>
          <Show when={facts().calculator}>
            <div class="row section no-print">
              <button type="button" class="button button-main" onClick={() => void take()}>
                {readings().length > 0 ? 'Take it again' : 'Take it'}
              </button>
            </div>
          </Show>
          <div class="two-columns">
            <div>
              <Show when={readings().length > 0}>
                <section class="section">
                  <h2>Over time</h2>
                  <Trends readings={readings()} facts={facts()} />
                  <Show when={page.latest?.next !== undefined}>
                    <p class="small faint">The newest {NEWEST} readings.</p>
                    <button
                      type="button"
                      class="button"
                      disabled={page.loading}
                      onClick={() => setLimit(Number.MAX_SAFE_INTEGER)}
                    >
                      Show all
                    </button>
                  </Show>
                </section>
              </Show>
            </div>
            <div>
              <Show when={outcomes().length > 0}>
                <section class="section">
                  <h2>Corrections, before and after</h2>
                  <For each={outcomes().slice(0, pairs())}>{(pair) => <Outcome pair={pair} facts={facts()} />}</For>
                  <Show when={outcomes().length > pairs()}>
                    <button type="button" class="button" onClick={() => setPairs(pairs() + PAIRS)}>
                      Show earlier ones
                    </button>
                  </Show>
                </section>
              </Show>
              <section class="section">
                <h2>Readings</h2>
                <ReadingList machine={props.machine.id} check={props.check} />
              </section>
              <section class="section no-print">
                <h2>Taken again every</h2>
                <Interval machine={props.machine} check={props.check} />
              </section>
            </div>
          </div>
        </>
      )}
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
      setProblem(`Whole days from 1 to ${LIMITS.days}, or nothing.`);
      return;
    }
    setProblem(undefined);
    void records.changeMachine(props.machine.id, { intervals: { [props.check]: typed } });
  };
  return (
    <>
      <label>
        Days (empty: only when a value it rests on changes)
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
