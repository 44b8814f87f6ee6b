import { createMemo, createResource, createSignal, For, Show, untrack } from 'solid-js';
import { compareWays } from '../../engine/evaluate';
import type { Reading } from '../../machine/schema';
import { Fold } from '../../ui/fold';
import { createTrailing } from '../../ui/trailing';
import { useRecords } from '../desk/context';
import { TermKeys, TERMS_TITLE } from '../desk/glossary/terms';
import { MachinePicker } from '../desk/machine-picker';
import { part } from '../desk/parts/part';
import { WaysTable } from '../desk/ways-table';
import { ArrivalNotice } from './arrival';
import { Ask } from './ask';
import { BenchBar } from './bench-bar';
import { Cautions } from './cautions';
import { CheckCard } from './check-card';
import { Examples } from './examples';
import { SheetFigure } from './figure';
import { Inputs } from './inputs';
import { Keeper } from './keeper';
import type { Sheet } from './open-sheet';
import { PastReadings } from './past-readings';
import { textsOf } from './texts-of';
import { HandOver } from './share';
import say from './words/en';
import { Limits, Workings } from './workings';

// With the catalogue of causes behind it: only where a machine has cases.
const CaseBanner = part(async () => (await import('../case/banner')).CaseBanner, say.screen.ofCase);

/** The sheet of a check: what is read on the left of a wide screen, what follows from it on the right, the verdict below. */
export function SheetView(props: { sheet: Sheet }) {
  const [kept, setKept] = createSignal<Reading>();
  return (
    <>
      <main>
        <h1>{props.sheet.title}</h1>
        <p>{props.sheet.question}</p>
        <OpenCase sheet={props.sheet} kept={kept()} />
        <ArrivalNotice arrival={props.sheet.arrival} decoded={props.sheet.decoded} bench={props.sheet.bench} />
        <div class="two-columns">
          <div>
            <Cautions calculator={props.sheet.calculator} />
            <SheetFigure sheet={props.sheet} />
            <section class="section">
              <h2>{say.readings.title}</h2>
              <Inputs calculator={props.sheet.calculator} bench={props.sheet.bench} />
            </section>
            <section class="section no-print">
              <MachinePicker />
            </section>
            <PastReadings id={props.sheet.id} machine={props.sheet.machineId} />
          </div>
          <Folds sheet={props.sheet} />
        </div>
        <CheckCard sheet={props.sheet} />
      </main>
      <BenchBar id={props.sheet.id} calculator={props.sheet.calculator} bench={props.sheet.bench}>
        <Keeper sheet={props.sheet} onKept={setKept} />
      </BenchBar>
    </>
  );
}

/** The case that waits for this check, where the machine has one. */
function OpenCase(props: { sheet: Sheet; kept: Reading | undefined }) {
  const records = useRecords();
  const [hasCases] = createResource(
    () => (props.sheet.machineId === null ? undefined : { machine: props.sheet.machineId, tick: records.casesTick() }),
    async ({ machine }) => (await records.casesOf(machine)).some(({ closed }) => closed === null),
  );
  return (
    <Show when={hasCases.latest === true && props.sheet.machine()}>
      {(machine) => <CaseBanner machine={machine()} calculator={props.sheet.id} kept={props.kept} />}
    </Show>
  );
}

/** What follows from the readings, what it rests on, and what else can be done with the sheet. */
function Folds(props: { sheet: Sheet }) {
  const wide = matchMedia('(min-width: 64rem)').matches;
  const trailing = createTrailing(
    () => props.sheet.bench.moment(),
    untrack(() => props.sheet.bench.moment()),
  );
  const ways = createMemo(() => {
    const { evaluation, situation } = trailing.value();
    return compareWays(props.sheet.calculator, evaluation, situation);
  });
  return (
    <div>
      <Show when={ways()}>
        {(found) => (
          <Fold title={found().title} open>
            <div aria-busy={trailing.late()}>
              <WaysTable ways={found()} />
            </div>
          </Fold>
        )}
      </Show>
      <Show when={props.sheet.calculator.limits.length > 0}>
        <Fold title={say.folds.limits} open={wide}>
          <Limits calculator={props.sheet.calculator} bench={props.sheet.bench} />
        </Fold>
      </Show>
      <Fold title={say.folds.workings} open={wide}>
        <Workings calculator={props.sheet.calculator} bench={props.sheet.bench} />
      </Fold>
      <Fold title={say.folds.ask}>
        <Ask calculator={props.sheet.calculator} bench={props.sheet.bench} />
      </Fold>
      <Show when={props.sheet.calculator.beware.length > 0}>
        <Fold title={say.folds.beware}>
          <ul>
            <For each={props.sheet.calculator.beware}>{(line) => <li>{line}</li>}</For>
          </ul>
        </Fold>
      </Show>
      <Fold title={TERMS_TITLE}>
        <TermKeys texts={textsOf(props.sheet.calculator)} />
      </Fold>
      <Fold title={say.folds.handOver}>
        <HandOver sheet={props.sheet} />
      </Fold>
      <Fold title={say.folds.examples}>
        <Examples calculator={props.sheet.calculator} bench={props.sheet.bench} />
      </Fold>
    </div>
  );
}
