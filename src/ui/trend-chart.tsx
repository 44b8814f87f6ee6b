import { createMemo, createUniqueId, For, Show } from 'solid-js';
import type { MarkState } from './verdict-mark';
import { numberTicks, placesOf, timeTicks } from './ticks';
import say from './words/en';
import './trend.css';

const WIDTH = 340;
const HEIGHT = 216;
const LEFT = 50;
const RIGHT = WIDTH - 12;
const TOP = 26;
const BOTTOM = HEIGHT - 26;
/** Readings of one evening are not drawn as if they were weeks apart. */
const LEAST_SPAN_MS = 12 * 3600e3;
const MOST_TICKS = 4;
const CAP = 3;

/** A reading on the chart: numbers in the unit shown, `at` in milliseconds since 1970. */
export interface TrendPoint {
  readonly at: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly min: number | undefined;
  readonly max: number | undefined;
  readonly state: MarkState;
}

export interface TrendChartProps {
  /** Oldest first, one at least. */
  readonly points: readonly TrendPoint[];
  /** Read aloud instead of the drawing. */
  readonly label: string;
  /** Above the axis: "Error across the bed, mm". */
  readonly axis: string;
  readonly comma: boolean;
}

interface Frame {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
}

function frameOf(points: readonly TrendPoint[]): Frame {
  let [from, to, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { at, min = Infinity, max = -Infinity, ...point } of points) {
    from = Math.min(from, at);
    to = Math.max(to, at);
    low = Math.min(low, point.low, point.value, min, max === -Infinity ? Infinity : max);
    high = Math.max(high, point.high, point.value, max, min === Infinity ? -Infinity : min);
  }
  const spare = Math.max((LEAST_SPAN_MS - (to - from)) / 2, (to - from) * 0.04);
  const pad = (high - low || Math.abs(high) || 1) * 0.08;
  return { from: from - spare, to: to + spare, low: low - pad, high: high + pad };
}

const SHAPES: Readonly<Record<MarkState, { readonly path: string; readonly tone: string }>> = {
  within: { path: 'm-4 0 a4 4 0 1 0 8 0 a4 4 0 1 0 -8 0', tone: 'd-ink d-fill' },
  'too close': { path: 'm0 -5 l5 9 h-10 z', tone: 'd-ink d-fill' },
  beyond: { path: 'm0 -6 l6 6 l-6 6 l-6 -6 z', tone: 'd-solid-red' },
  none: { path: 'm-3 0 a3 3 0 1 0 6 0 a3 3 0 1 0 -6 0', tone: 'd-solid' },
};
const STATES = Object.keys(SHAPES) as MarkState[];

/** A result over time, to scale: readings with their intervals, and the limit in force at each. */
export function TrendChart(props: TrendChartProps) {
  const title = createUniqueId();
  const frame = createMemo(() => frameOf(props.points));
  const x = (at: number) => LEFT + ((at - frame().from) / (frame().to - frame().from)) * (RIGHT - LEFT);
  const y = (value: number) => BOTTOM - ((value - frame().low) / (frame().high - frame().low)) * (BOTTOM - TOP);
  const rows = createMemo(() => numberTicks(frame().low, frame().high, 5));
  const columns = createMemo(() => timeTicks(frame().from, frame().to, MOST_TICKS));
  const number = (value: number) => {
    const text = (Math.abs(value) < 1e-12 ? 0 : value).toFixed(placesOf(rows())).replace('-', '\u2212');
    return props.comma ? text.replace('.', ',') : text;
  };
  /** Where each reading's limit holds: from it to the next. */
  const spans = createMemo(() =>
    props.points.map((point, i) => ({
      point,
      from: i === 0 ? LEFT : x(point.at),
      to: ((next) => (next ? x(next.at) : RIGHT))(props.points[i + 1]),
    })),
  );
  const allowed = () =>
    spans()
      .filter(({ point }) => point.min !== undefined || point.max !== undefined)
      .map(({ point, from, to }) => {
        const top = point.max === undefined ? TOP : y(point.max);
        const bottom = point.min === undefined ? BOTTOM : y(point.min);
        return `M${from} ${top} H${to} V${bottom} H${from} z`;
      })
      .join('');
  const edges = () =>
    spans()
      .flatMap(({ point, from, to }) =>
        [point.min, point.max].flatMap((edge) => (edge === undefined ? [] : [`M${from} ${y(edge)} H${to}`])),
      )
      .join('');
  const bars = () =>
    props.points
      .filter((point) => point.high > point.low)
      .map((point) => {
        const [left, low, high] = [x(point.at) - CAP, y(point.low), y(point.high)];
        return `M${x(point.at)} ${low} V${high} M${left} ${low} h${2 * CAP} M${left} ${high} h${2 * CAP}`;
      })
      .join('');
  const marks = (state: MarkState) =>
    props.points
      .filter((point) => point.state === state)
      .map((point) => `M${x(point.at)} ${y(point.value)} ${SHAPES[state].path}`)
      .join('');
  const hasLimit = () => allowed() !== '';
  return (
    <figure class="trend">
      <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={title}>
        <title id={title}>{props.label}</title>
        <path class="trend-allowed" d={allowed()} />
        <path class="d-thin" d={`M${LEFT} ${TOP} V${BOTTOM} H${RIGHT}`} />
        <For each={rows()}>
          {(value) => (
            <g>
              <line class="d-thin" x1={LEFT - 4} y1={y(value)} x2={LEFT} y2={y(value)} />
              <text class="d-text" x={LEFT - 7} y={y(value) + 4} text-anchor="end">
                {number(value)}
              </text>
            </g>
          )}
        </For>
        <For each={columns()}>
          {(tick) => (
            <g>
              <line class="d-thin" x1={x(tick.at)} y1={BOTTOM} x2={x(tick.at)} y2={BOTTOM + 4} />
              <text
                class="d-text"
                x={Math.min(Math.max(x(tick.at), LEFT - 10), RIGHT - 14)}
                y={BOTTOM + 18}
                text-anchor="middle"
              >
                {tick.text}
              </text>
            </g>
          )}
        </For>
        <path class="d-ink" d={edges()} />
        <path class="d-accent" d={bars()} />
        <For each={STATES}>{(state) => <path class={SHAPES[state].tone} d={marks(state)} />}</For>
        <text class="d-text" x={4} y={14}>
          {props.axis}
        </text>
      </svg>
      <figcaption class="small faint">
        <For each={STATES.filter((state) => marks(state) !== '')}>
          {(state) => (
            <span class="trend-key">
              <svg viewBox="-8 -8 16 16" aria-hidden="true">
                <path class={SHAPES[state].tone} d={`M0 0 ${SHAPES[state].path}`} />
              </svg>
              {say.trend.marks[state]}
            </span>
          )}
        </For>
        <Show when={hasLimit()}>
          <span class="trend-key">
            <svg viewBox="-8 -8 16 16" aria-hidden="true">
              <path class="trend-allowed" d="M-8 -6 h16 v12 h-16 z" />
              <path class="d-ink" d="M-8 -6 h16" />
            </svg>
            {say.trend.allowed}
          </span>
        </Show>
        <span>{say.trend.bars}</span>
      </figcaption>
    </figure>
  );
}
