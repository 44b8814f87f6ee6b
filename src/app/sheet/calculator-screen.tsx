import { createEffect, createMemo, createResource, createSignal, For, lazy, on, onCleanup, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { A, useParams } from '@solidjs/router';
import { compareWays } from '../../engine/evaluate';
import { listed, loadCalculator, type Loaded } from '../../engine/list';
import { force, length, temperature } from '../../quantity/kinds';
import type { Reading } from '../../machine/schema';
import { Fold } from '../../ui/fold';
import { ArrivalNotice, createArrivals, takeArrival, type Arrival } from './arrival';
import { Ask } from './ask';
import { createBench, type Entered } from './bench';
import { BenchBar } from './bench-bar';
import { CheckCard } from './check-card';
import { useRecords } from '../desk/context';
import { createDraftKeeper } from './draft-keeper';
import { Examples } from './examples';
import { takeHanded } from './take-handed';
import { Inputs } from './inputs';
import { Keeper, PastReadings } from './keeper';
import { MachinePicker } from '../desk/machine-picker';
import { printSymbol, valueOf } from './print';
import { HandOver } from './share';
import { WaysTable } from '../desk/ways-table';
import { Limits, Workings } from './workings';

// With the catalogue of causes behind it: only where a machine has cases.
const CaseBanner = lazy(async () => ({ default: (await import('../case/banner')).CaseBanner }));

const BLANK: Entered = { entries: {}, choices: {} };

/** One screen for every calculator: finds it, finds what was being entered, and shows the sheet. */
export function CalculatorScreen() {
  const records = useRecords();
  const params = useParams();
  const arrival = createArrivals();
  const [loaded] = createResource(
    () => params.id,
    async (id) => ({ id, found: await loadCalculator(id) }),
  );
  const draftOf = createMemo(
    () =>
      records.ready() && params.id
        ? { id: params.id, machine: records.settings().machine, arrival: arrival() }
        : undefined,
    undefined,
    {
      // A link opened over the same check makes the sheet anew, over the newest draft.
      equals: (a, b) => a?.id === b?.id && a?.machine === b?.machine && a?.arrival === b?.arrival,
    },
  );
  // What was entered before a machine was chosen goes along to the machine, unless it has entries of its own.
  let carried: { readonly id: string; readonly entered: Entered } | undefined;
  const carry = (id: string, entered: Entered) => (carried = { id, entered });
  const [draft] = createResource(draftOf, async (of) => {
    const found = await records.draftFor(of.machine, of.id);
    const adopted = of.machine !== null && carried?.id === of.id ? carried.entered : undefined;
    if (of.machine !== null) carried = undefined;
    return { ...of, draft: found ?? adopted, carried: !found && adopted !== undefined };
  });
  const sheet = createMemo(() => {
    const calculator = loaded();
    const found = draft();
    if (!calculator?.found || calculator.id !== found?.id || draft.loading) return undefined;
    return { loaded: calculator.found, ...found };
  });
  return (
    <Show
      when={sheet()}
      keyed
      fallback={
        <main>
          <Show when={loaded() && !loaded()?.found} fallback={<p>Fetching the sheet…</p>}>
            <h1>No such check</h1>
            <p>
              <A href="/">All checks</A>
            </p>
          </Show>
        </main>
      }
    >
      {(now) => (
        <Sheet
          id={now.id}
          machine={now.machine}
          loaded={now.loaded}
          draft={now.draft}
          carried={now.carried}
          arrival={now.arrival}
          onLeave={carry}
        />
      )}
    </Show>
  );
}

function Sheet(props: {
  id: string;
  machine: string | null;
  loaded: Loaded;
  draft: Entered | undefined;
  /** The draft came along from before the machine was chosen, and is not yet kept under it. */
  carried: boolean;
  arrival: Arrival | undefined;
  onLeave: (id: string, entered: Entered) => void;
}) {
  const records = useRecords();
  const meta = () => listed.find((entry) => entry.id === props.id);
  // The sheet is made anew for each check and machine, so these are fixed for its life.
  // eslint-disable-next-line solid/reactivity
  const { calculator, Figure, download } = props.loaded;
  const machine = () => records.machines().find((one) => one.id === props.machine);
  const units = createMemo(() => {
    const { lengthUnit, forceUnit, temperatureUnit } = records.settings();
    return {
      ...(lengthUnit === 'in' ? { [length.in.kind.id]: length.in.unit } : {}),
      ...(forceUnit === 'N' ? {} : { [force[forceUnit].kind.id]: force[forceUnit].unit }),
      ...(temperatureUnit === 'F' ? { [temperature.F.kind.id]: temperature.F.unit } : {}),
    };
  });
  // eslint-disable-next-line solid/reactivity
  const start = props.draft ?? BLANK;
  const bench = createBench(
    calculator,
    {
      kept: () => machine()?.values ?? {},
      keptChoices: () => machine()?.choices ?? {},
      mark: () => records.settings().mark,
      units,
    },
    start,
  );
  // eslint-disable-next-line solid/reactivity
  const keeper = createDraftKeeper(records, props.machine, props.id);
  // eslint-disable-next-line solid/reactivity
  const decoded = takeArrival(props.arrival, calculator, bench);
  createEffect(on(bench.changes, () => keeper.note(bench.entered), { defer: true }));
  // eslint-disable-next-line solid/reactivity
  takeHanded(props.id, calculator, bench);
  // eslint-disable-next-line solid/reactivity
  if (props.carried) {
    keeper.note(bench.entered);
    keeper.flush();
  }
  onCleanup(() => {
    keeper.end();
    if (props.machine === null) props.onLeave(props.id, structuredClone(unwrap(bench.entered)));
  });

  const [kept, setKept] = createSignal<Reading>();
  const [hasCases] = createResource(
    () => (props.machine === null ? undefined : { machine: props.machine, tick: records.casesTick() }),
    async ({ machine }) => (await records.casesOf(machine)).some(({ closed }) => closed === null),
  );
  const banner = () => (hasCases.latest === true ? machine() : undefined);

  const wide = matchMedia('(min-width: 64rem)').matches;
  const print = (symbol: string) =>
    printSymbol(calculator, bench.evaluation(), bench.situation(), symbol, false) ?? '…';
  const drawing = () => (
    <Figure
      value={(symbol) => valueOf(bench.evaluation(), symbol)}
      text={print}
      known={(symbol) => {
        const outcome = bench.evaluation().outcomes[symbol];
        return outcome?.ok ? outcome : undefined;
      }}
      choice={bench.evaluation().choices}
      mark={records.settings().mark}
    />
  );
  const ways = createMemo(() => compareWays(calculator, bench.shown().evaluation, bench.situation()));
  return (
    <>
      <main>
        <h1>{meta()?.title}</h1>
        <p>{meta()?.question}</p>
        <Show when={banner()}>{(of) => <CaseBanner machine={of()} calculator={props.id} kept={kept()} />}</Show>
        <ArrivalNotice arrival={props.arrival} decoded={decoded} bench={bench} />
        <div class="two-columns">
          <div>
            <Show when={calculator.cautions.length > 0}>
              <div class="cautions">
                <strong>First</strong>
                <ul>
                  <For each={calculator.cautions}>{(caution) => <li>{caution}</li>}</For>
                </ul>
              </div>
            </Show>
            {drawing()}
            <section class="section">
              <h2>Readings</h2>
              <Inputs calculator={calculator} bench={bench} />
            </section>
            <section class="section no-print">
              <MachinePicker />
            </section>
            <PastReadings id={props.id} machine={props.machine} />
          </div>
          <div>
            <Show when={ways()}>
              {(found) => (
                <Fold title={found().title} open>
                  <WaysTable ways={found()} />
                </Fold>
              )}
            </Show>
            <Show when={calculator.limits.length > 0}>
              <Fold title="Limits" open={wide}>
                <Limits calculator={calculator} bench={bench} />
              </Fold>
            </Show>
            <Fold title="Formulas, numbers put in, doubt" open={wide}>
              <Workings calculator={calculator} bench={bench} />
            </Fold>
            <Fold title="The other way round">
              <Ask calculator={calculator} bench={bench} />
            </Fold>
            <Show when={calculator.beware.length > 0}>
              <Fold title="What this cannot tell">
                <ul>
                  <For each={calculator.beware}>{(line) => <li>{line}</li>}</For>
                </ul>
              </Fold>
            </Show>
            <Fold title="Hand this check over">
              <HandOver id={props.id} title={meta()?.title ?? ''} calculator={calculator} bench={bench} />
              <p class="section">On paper: one card with the cautions, the drawing, the steps and the numbers.</p>
              <button type="button" class="button" onClick={() => window.print()}>
                Print this sheet
              </button>
            </Fold>
            <Fold title="Worked examples">
              <Examples calculator={calculator} bench={bench} />
            </Fold>
          </div>
        </div>
        <CheckCard
          id={props.id}
          title={meta()?.title ?? ''}
          machine={machine()?.name}
          calculator={calculator}
          bench={bench}
          drawing={drawing}
        />
      </main>
      <BenchBar id={props.id} calculator={calculator} bench={bench}>
        <Keeper
          id={props.id}
          machine={machine()}
          calculator={calculator}
          bench={bench}
          download={download}
          onKept={setKept}
        />
      </BenchBar>
    </>
  );
}
