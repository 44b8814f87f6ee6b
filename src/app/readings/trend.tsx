import { createMemo, createSignal, For, Show } from 'solid-js';
import { A } from '@solidjs/router';
import { trendOf, type Point } from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { formatMeasured, formatValue } from '../../quantity/format';
import { fromSi, type Unit } from '../../quantity/unit';
import { Fold } from '../../ui/fold';
import { TrendChart } from '../../ui/trend-chart';
import { verdictWords } from '../../ui/verdict-mark';
import { inSheetOrder, type CheckFacts } from '../desk/check-facts';
import { useRecords } from '../desk/context';
import { printTime } from '../desk/time';
import { readingHref } from '../desk/reading-entry';
import { nameIn, unbroken, unitIn } from '../desk/reading-print';
import say from './words/en';

/** Rows of the table; the chart draws all. */
const ROWS = 50;

interface Props {
  /** Of one check on one machine, newest first; one at least. */
  readings: readonly Reading[];
  facts: CheckFacts;
}

/** Each result over time: those with a limit at once, any other by choice. */
export function Trends(props: Props) {
  const [picked, setPicked] = createSignal<string>();
  const symbols = createMemo(() => {
    const found = new Set(props.readings.flatMap((reading) => Object.keys(reading.results)));
    return inSheetOrder(props.facts.calculator, [...found]);
  });
  const newestWith = (symbol: string) =>
    props.readings.find(({ results, entries }) => results[symbol] ?? entries[symbol]);
  const limited = createMemo(() => [
    ...new Set(
      props.readings
        .flatMap((reading) => reading.limits.map((limit) => limit.of))
        .filter((symbol) => newestWith(symbol) !== undefined),
    ),
  ]);
  const others = () => symbols().filter((symbol) => !limited().includes(symbol));
  const other = () => picked() ?? (limited().length === 0 ? others()[0] : undefined);
  const nameOf = (symbol: string) => ((reading) => (reading ? nameIn(reading, symbol) : symbol))(newestWith(symbol));
  return (
    <>
      <For each={limited()}>{(symbol) => <Trend symbol={symbol} name={nameOf(symbol)} {...props} />}</For>
      <Show when={others().length > 0}>
        <label>
          {limited().length > 0 ? say.trend.another : say.trend.other}
          <div class="row">
            <select value={other() ?? ''} onChange={(event) => setPicked(event.currentTarget.value || undefined)}>
              <Show when={limited().length > 0}>
                <option value="">{say.trend.none}</option>
              </Show>
              <For each={others()}>{(symbol) => <option value={symbol}>{nameOf(symbol)}</option>}</For>
            </select>
          </div>
        </label>
      </Show>
      <Show when={other()} keyed>
        {(symbol) => <Trend symbol={symbol} name={nameOf(symbol)} {...props} />}
      </Show>
    </>
  );
}

function Trend(props: Props & { symbol: string; name: string }) {
  const records = useRecords();
  const mark = () => records.settings().mark;
  const points = createMemo(() => trendOf(props.readings, props.symbol));
  const unit = createMemo<Unit | undefined>(() => {
    const newest = points().at(-1)?.reading;
    return newest && unitIn(newest, props.symbol);
  });
  return (
    <Show when={unit()}>
      {(shown) => (
        <div class="section">
          <h3>{props.name}</h3>
          <Show when={points().length > 1} fallback={<p class="faint small">{say.trend.one}</p>}>
            <TrendChart
              points={points().map((point) => inUnit(point, shown()))}
              axis={shown().label === '' ? props.name : say.trend.axis(props.name, shown().label)}
              label={say.trend.chart(props.name, points().length)}
              comma={mark() === 'comma'}
            />
          </Show>
          <Fold title={say.trend.asTable}>
            <PointTable points={points()} unit={shown()} />
          </Fold>
        </div>
      )}
    </Show>
  );
}

const inUnit = (point: Point, unit: Unit) => ({
  at: point.at,
  state: point.state,
  value: fromSi(point.value, unit),
  low: fromSi(point.low, unit),
  high: fromSi(point.high, unit),
  min: point.min === undefined ? undefined : fromSi(point.min, unit),
  max: point.max === undefined ? undefined : fromSi(point.max, unit),
});

function PointTable(props: { points: readonly Point[]; unit: Unit }) {
  const records = useRecords();
  const mark = () => records.settings().mark;
  const print = (point: Point) =>
    unbroken(formatMeasured(point.value, (point.high - point.low) / 2, props.unit, { mark: mark() }));
  const limit = ({ min, max }: Point) => {
    const show = (si: number) => formatValue(si, 0, props.unit, { mark: mark() });
    if (min !== undefined && max !== undefined) return say.trend.between(show(min), show(max));
    if (max !== undefined) return say.trend.atMost(show(max));
    return min === undefined ? '' : say.trend.atLeast(show(min));
  };
  const rows = () => props.points.slice(-ROWS).reverse();
  const hasLimit = () => rows().some((point) => limit(point) !== '');
  return (
    <>
      <table class="sheet-table">
        <thead>
          <tr>
            <th scope="col">{say.trend.taken}</th>
            <th scope="col">{say.trend.value}</th>
            <Show when={hasLimit()}>
              <th scope="col">{say.trend.limit}</th>
            </Show>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {(point) => (
              <tr>
                <td>
                  <A href={readingHref(point.reading)}>{printTime(point.reading.at)}</A>
                </td>
                <td>{print(point)}</td>
                <Show when={hasLimit()}>
                  <td>
                    {limit(point)}
                    <br />
                    <span class="faint">{verdictWords[point.state]}</span>
                  </td>
                </Show>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <Show when={props.points.length > ROWS}>
        <p class="small faint">{say.trend.newest(ROWS, props.points.length)}</p>
      </Show>
    </>
  );
}
