import { createMemo, createResource, For, Show } from 'solid-js';
import { A, useNavigate, useParams } from '@solidjs/router';
import { nameOf } from '../../engine/name';
import { endsOf, type KeptLimit, type Pair } from '../../machine/history';
import type { Machine, Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';
import { formatMeasured, formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { toolById } from '../../reference/tools';
import { VerdictMark } from '../../ui/verdict-mark';
import { inSheetOrder, loadFacts, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { createBehindText } from '../desk/typed-text';
import { OfMachine } from '../desk/of-machine';
import { printExpects } from '../desk/promised';
import { shownIn, unbroken, unitIn } from '../desk/reading-print';
import { Outcome } from './outcome';
import { retold } from './retold';
import { printTime } from '../desk/time';
import { titleOf, verdictWord } from '../desk/reading-entry';
import { ReadingPhoto } from '../desk/reading-photo';
import { StopAt } from '../desk/stop';
import say from './words/en';
import './screen.css';

const TIME_LENGTH = '2026-01-01T00:00:00.000Z'.length;

/** One reading, whole: what was entered, what came out, what was to be done. */
export function ReadingScreen() {
  const records = useRecords();
  const params = useParams();
  const taken = () => {
    const [machine = '', both = ''] = [params.id, params.taken];
    return { machine, at: both.slice(0, TIME_LENGTH), id: both.slice(TIME_LENGTH + 1) };
  };
  const [reading] = createResource(
    () => ({ ...taken(), tick: records.readingsTick() }),
    async (at) => ({ found: await records.readingAt(at) }),
  );
  return (
    <OfMachine>
      {(machine) => (
        <Show when={reading.latest} fallback={<p>{say.lookingUp}</p>}>
          {(answer) => (
            <Show
              when={answer().found}
              fallback={
                <>
                  <h1>{say.reading.gone}</h1>
                  <p>
                    {say.reading.mayBeRemoved} <A href={`/machines/${machine().id}`}>{machine().name}</A>
                  </p>
                </>
              }
            >
              {(found) => <ReadingSheet machine={machine()} reading={found()} />}
            </Show>
          )}
        </Show>
      )}
    </OfMachine>
  );
}

function ReadingSheet(props: { machine: Machine; reading: Reading }) {
  const records = useRecords();
  const navigate = useNavigate();
  const [facts] = createResource(() => props.reading.calculator, loadFacts);
  const told = createMemo(() => retold(props.reading.order, facts.latest?.calculator, records.settings().mark));
  const note = createBehindText(
    () => props.reading.note,
    (text) => records.noteOn(props.reading, text),
  );
  const remove = async () => {
    if (await records.removeReading(props.reading)) navigate(`/machines/${props.machine.id}`);
  };
  return (
    <>
      <h1>{titleOf(props.reading.calculator)}</h1>
      <p>
        {say.reading.on(printTime(props.reading.at))} <A href={`/machines/${props.machine.id}`}>{props.machine.name}</A>
      </p>
      <div class="bench-line section">
        <VerdictMark state={props.reading.verdict} />
        <div>
          <strong>{verdictWord(props.reading.calculator, props.reading.verdict)}</strong>
          <br />
          {told().sentence}
        </div>
      </div>
      <Show when={told().steps.length > 0}>
        <ol>
          <For each={told().steps}>{(step) => <li>{step}</li>}</For>
        </ol>
      </Show>
      <Show when={Object.keys(props.reading.order.expects).length > 0}>
        <p>{say.reading.expects(printExpects(props.reading, records.settings().mark))}</p>
      </Show>
      <Show when={!props.reading.whole}>
        <p class="small faint">{say.reading.earlier}</p>
      </Show>
      <Show when={facts.latest}>
        {(known) => (
          <div class="two-columns">
            <div>
              <Entered reading={props.reading} facts={known()} />
              <Results reading={props.reading} facts={known()} />
            </div>
            <div>
              <Show when={props.reading.verdict === 'beyond'}>
                <WhatCameOfIt reading={props.reading} facts={known()} />
              </Show>
              <section class="section">
                <h2>{say.reading.note}</h2>
                <textarea
                  class="text-input"
                  rows="3"
                  aria-label={say.reading.note}
                  maxlength={LIMITS.note}
                  value={note.text()}
                  onInput={(event) => note.type(event.currentTarget.value)}
                />
                <StopAt text={note.text()} />
              </section>
              <ReadingPhoto reading={props.reading} />
            </div>
          </div>
        )}
      </Show>
      <div class="row section no-print">
        <A class="button" href={`/machines/${props.machine.id}/check/${props.reading.calculator}`}>
          {say.reading.overTime}
        </A>
        <button type="button" class="button" onClick={() => void remove()}>
          {say.reading.remove}
        </button>
      </div>
    </>
  );
}

interface Part {
  reading: Reading;
  facts: CheckFacts;
}

function printOrigin({ origin, tool }: Reading['entries'][string]): string {
  const name = origin === 'measured' ? toolById(tool)?.name : undefined;
  return name === undefined ? say.reading.origins[origin] : say.reading.measuredWith(name);
}

function Entered(props: Part) {
  const records = useRecords();
  const print = (entry: Reading['entries'][string]) =>
    unbroken(formatMeasured(entry.value, entry.half, shownIn(entry), { mark: records.settings().mark }));
  const options = () => {
    const order = Object.keys(props.facts.calculator?.choices ?? {});
    const all = Object.entries(props.reading.options);
    return all.sort(([a], [b]) => order.indexOf(a) - order.indexOf(b)).map(([, option]) => option);
  };
  const entries = createMemo(() =>
    inSheetOrder(props.facts.calculator, Object.keys(props.reading.entries)).flatMap(
      (symbol) => props.reading.entries[symbol] ?? [],
    ),
  );
  return (
    <section class="section">
      <h2>{say.reading.entered}</h2>
      <table class="sheet-table reading-values">
        <tbody>
          <For each={options()}>
            {(one) => (
              <tr>
                <th scope="row">{one.name}</th>
                <td>{one.text}</td>
              </tr>
            )}
          </For>
          <For each={entries()}>
            {(entry) => (
              <tr>
                <th scope="row">{entry.name}</th>
                <td>
                  {print(entry)}
                  <br />
                  <span class="faint small">{printOrigin(entry)}</span>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}

/** What a limit left a result, and how it stood against it then. */
function printLimit(reading: Reading, limit: KeptLimit, mark: DecimalMark): string {
  const unit = unitIn(reading, limit.of);
  const { min, max } = endsOf(reading, limit);
  const print = (si: number | undefined) =>
    si === undefined ? undefined : unbroken(formatValue(si, 0, unit, { mark }));
  return say.reading.limit(limit.name, print(min), print(max), verdictWord(reading.calculator, limit.verdict));
}

/** As they were printed then, each with its limits; what an earlier version did not keep is said to be unknown. */
function Results(props: Part) {
  const records = useRecords();
  const shown = () => {
    const { results, limits, whole } = props.reading;
    const lost = whole ? [] : limits.map(({ of }) => of).filter((of) => !results[of] && !props.reading.entries[of]);
    return inSheetOrder(props.facts.calculator, [...new Set([...Object.keys(results), ...lost])]);
  };
  const name = (symbol: string) => {
    const { calculator } = props.facts;
    return props.reading.results[symbol]?.name ?? (calculator ? nameOf(calculator, symbol) : symbol);
  };
  const limitsOf = (symbol: string) => props.reading.limits.filter(({ of }) => of === symbol);
  return (
    <section class="section">
      <h2>{say.reading.results}</h2>
      <table class="sheet-table reading-values">
        <tbody>
          <For each={shown()}>
            {(symbol) => (
              <tr>
                <th scope="row">{name(symbol)}</th>
                <td>
                  {unbroken(props.reading.results[symbol]?.text ?? say.reading.notKept)}
                  <For each={limitsOf(symbol)}>
                    {(limit) => (
                      <div class="faint small">{printLimit(props.reading, limit, records.settings().mark)}</div>
                    )}
                  </For>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </section>
  );
}

function WhatCameOfIt(props: Part) {
  const records = useRecords();
  const [pair] = createResource(
    () => ({ before: props.reading, tick: records.readingsTick() }),
    async ({ before }): Promise<Pair> => ({ before, after: await records.readingAfter(before) }),
  );
  return (
    <Show when={pair.latest}>
      {(found) => (
        <section class="section">
          <h2>{say.reading.outcome}</h2>
          <Outcome pair={found()} facts={props.facts} />
        </section>
      )}
    </Show>
  );
}
