import { createMemo, For, Show } from 'solid-js';
import { formatNumber } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';
import { isNear, rank, type Line } from './model';

const WIDTH = 340;
const ROW = 18;
const TOP = 40;
/** Names end and the scale begins; the scale ends and the mismatch begins. */
const LEFT = 136;
const RIGHT = 282;
const MARGIN = 8;
const DECADES = [1e-5, 1e-4, 1e-3, 1e-2, 1e-1, 1, 10, 100];

/** Ranked list of the parts on one logarithmic scale of periods, with the ridges' own as a band through all of them. */
export default function Figure(props: FigureProps<typeof calc>) {
  const ridges = () => props.known('P');
  const ranking = createMemo(() => rank({ known: (symbol) => props.known(symbol), choices: props.choice }));
  /** What fits on top, then halves and doubles that do, then the others. */
  const lines = createMemo(() => {
    const { lines: own, multiples } = ranking();
    return [...own.filter((line) => line.fits), ...multiples, ...own.filter((line) => !line.fits)];
  });
  const ends = createMemo(() => {
    const periods = [...lines().map((line) => line.period), ridges()?.value ?? 0].filter((period) => period > 0);
    const low = Math.min(...periods) / 1.25;
    const high = Math.max(...periods) * 1.25;
    return periods.length > 0 ? { low, high: Math.max(high, low * 4) } : { low: 1e-3, high: 0.1 };
  });
  const x = (period: number) => {
    const { low, high } = ends();
    const share = Math.log(Math.max(period, low / 2) / low) / Math.log(high / low);
    return LEFT + MARGIN + Math.min(Math.max(share, 0), 1) * (RIGHT - LEFT - 2 * MARGIN);
  };
  const height = () => TOP + Math.max(lines().length, 1) * ROW + 40;
  const bottom = () => height() - 36;
  const marks = () => DECADES.flatMap((decade) => [1, 2, 5].map((digit) => digit * decade));
  const ticks = createMemo(() => {
    const { low, high } = ends();
    const all = marks().filter((mark) => mark >= low && mark <= high);
    const tens = all.filter((mark) => /^1e|^10*$|^0\.0*1$/.test(String(Number(mark.toPrecision(3)))));
    return all.length > 4 && tens.length > 1 ? tens : all.slice(0, 4);
  });
  const mm = (si: number, digits: number) => formatNumber(si * 1e3, digits, props.mark);
  return (
    <Drawing width={WIDTH} height={height()} label={say.figure.label}>
      <Show when={ridges()}>
        {(known) => (
          <>
            <rect
              class="d-accent d-shade"
              x={x(known().low)}
              y={TOP - 14}
              width={Math.max(x(known().high) - x(known().low), 1)}
              height={bottom() - TOP + 14}
            />
            <text class="d-text d-text-accent" x={(LEFT + RIGHT) / 2} y={14} text-anchor="middle">
              {say.figure.ridges(props.text('P'))}
            </text>
          </>
        )}
      </Show>
      <For each={ticks()}>
        {(tick) => (
          <g>
            <line class="d-thin" x1={x(tick)} y1={TOP - 8} x2={x(tick)} y2={bottom()} />
            <text class="d-text" x={x(tick)} y={bottom() + 13} text-anchor="middle">
              {mm(tick, 2)}
            </text>
          </g>
        )}
      </For>
      <line class="d-thin" x1={LEFT} y1={bottom()} x2={RIGHT} y2={bottom()} />
      <text class="d-text" x={RIGHT + 6} y={bottom() + 13}>
        mm
      </text>
      <For each={lines()}>
        {(line, i) => <Row line={line} x={x(line.period)} y={TOP + (i() + 0.5) * ROW} mark={props.mark} />}
      </For>
      <Show
        when={lines().length > 0}
        fallback={
          <text class="d-text" x={WIDTH / 2} y={TOP + 14} text-anchor="middle">
            {say.figure.enter}
          </text>
        }
      >
        <Legend y={height() - 8} />
      </Show>
    </Drawing>
  );
}

/** One part: its name, its period as a mark at x, and how far that is from the ridges'. */
function Row(props: { line: Line; x: number; y: number; mark: DecimalMark }) {
  const off = () => {
    const times = 1 + props.line.value;
    if (!isNear(props.line))
      return `${times < 1 ? '÷' : '×'} ${formatNumber(Math.max(times, 1 / times), 2, props.mark)}`;
    return `${props.line.value < 0 ? '' : '+'}${formatNumber(props.line.value * 100, 2, props.mark)} %`;
  };
  const name = () => {
    const { short } = say.parts[props.line.part.key];
    if (props.line.multiple === 1) return short;
    return `${props.line.multiple < 1 ? '½' : '2'} × ${short.split(',')[0] ?? ''}`;
  };
  return (
    <g>
      <text
        class={props.line.fits && props.line.multiple === 1 ? 'd-text d-text-accent' : 'd-text'}
        x={2}
        y={props.y + 4}
      >
        {name()}
      </text>
      <line class="d-ghost" x1={LEFT} y1={props.y} x2={RIGHT} y2={props.y} />
      <Show
        when={props.line.multiple === 1}
        fallback={<path class="d-ink d-fill" d={`M${props.x} ${props.y - 6} l6 6 l-6 6 l-6 -6 z`} />}
      >
        <Show
          when={props.line.fits}
          fallback={<line class="d-ink" x1={props.x} y1={props.y - 6} x2={props.x} y2={props.y + 6} />}
        >
          <circle class="d-solid" cx={props.x} cy={props.y} r={5.5} />
        </Show>
      </Show>
      <text class="d-text" x={WIDTH - 2} y={props.y + 4} text-anchor="end">
        {off()}
      </text>
    </g>
  );
}

/** What the three marks stand for. */
function Legend(props: { y: number }) {
  return (
    <>
      <circle class="d-solid" cx={10} cy={props.y} r={5} />
      <text class="d-text" x={19} y={props.y + 4}>
        {say.figure.fits}
      </text>
      <line class="d-ink" x1={54} y1={props.y - 6} x2={54} y2={props.y + 6} />
      <text class="d-text" x={61} y={props.y + 4}>
        {say.figure.doesNot}
      </text>
      <path class="d-ink d-fill" d={`M122 ${props.y - 6} l6 6 l-6 6 l-6 -6 z`} />
      <text class="d-text" x={132} y={props.y + 4}>
        {say.figure.multiple}
      </text>
    </>
  );
}
