import { createMemo, createUniqueId, For, Show } from 'solid-js';
import { formatNumber } from '../../../quantity/format';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import type { DrawnSpectrum, RidgeLine } from '../../../signal/ridge-types';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 184;
const LEFT = 12;
const RIGHT = WIDTH - 12;
const TOP = 44;
const BOTTOM = 150;
/** Lines nearer than this on the drawing would write over each other. */
const APART = 44;

const FRACTIONS = ['part', 'ridges', 'half', 'third', 'quarter', 'fifth', 'sixth'] as const;
/** Which lines are named first where there is no room for all. */
const ORDER = { ridges: 0, layers: 1, harmonic: 2, other: 3 };

function nameOf(line: RidgeLine, ridges: RidgeLine | undefined): string {
  if (line.role !== 'harmonic') return say.periods.lines[line.role];
  const order = ridges ? Math.round(line.frequency / ridges.frequency) : 0;
  return say.periods.lines[FRACTIONS[order] ?? 'part'];
}

/** 1/m: what the axis spans. */
interface Range {
  readonly least: number;
  readonly most: number;
}

function rangeOf({ step, amplitude }: DrawnSpectrum, lines: readonly RidgeLine[]): Range {
  const end = step * (amplitude.length - 1);
  const found = lines.map((line) => 1 / line.period);
  const least = Math.max(step, Math.min(...found.map((f) => f / 3), end / 10));
  return { least, most: Math.max(Math.min(end, Math.max(...found.map((f) => f * 2.2), least * 10)), least * 1.1) };
}

/** The spectrum as a path, the highest of each half of a unit across. */
function pathOf({ step, amplitude }: DrawnSpectrum, { least, most }: Range, x: (frequency: number) => number): string {
  let peak = 1e-12;
  const highest = new Map<number, number>();
  amplitude.forEach((value, k) => {
    if (k * step < least || k * step > most) return;
    peak = Math.max(peak, value);
    const column = Math.round(x(k * step) * 2) / 2;
    highest.set(column, Math.max(highest.get(column) ?? 0, value));
  });
  const points = [...highest].map(([at, value]) => `${at} ${(BOTTOM - (value / peak) * (BOTTOM - TOP)).toFixed(1)}`);
  return points.length > 0 ? `M${points.join(' L')}` : '';
}

/** m: periods of 1, 2 and 5 of the unit's powers of ten, the long ones first. */
function ticksIn({ least, most }: Range, unit: Unit): readonly number[] {
  const periods = [...Array(9).keys()].flatMap((power) =>
    [1, 2, 5].map((digit) => digit * 10 ** (power - 5) * unit.factor),
  );
  return periods.filter((period) => 1 / period >= least && 1 / period <= most).reverse();
}

/** Which periods are in the strip: a logarithmic axis of periods, the long ones on the left. */
export function PeriodsChart(props: {
  spectrum: DrawnSpectrum;
  lines: readonly RidgeLine[];
  unit: Unit;
  mark: DecimalMark;
}) {
  const title = createUniqueId();
  const range = createMemo(() => rangeOf(props.spectrum, props.lines));
  const x = (frequency: number) => {
    const { least, most } = range();
    return LEFT + (Math.log(frequency / least) / Math.log(most / least)) * (RIGHT - LEFT);
  };
  const print = (metres: number) => formatNumber(metres / props.unit.factor, 3, props.mark);
  const named = createMemo(() => {
    const ridges = props.lines.find((line) => line.role === 'ridges');
    const kept: { at: number; name: string; period: string; strong: boolean }[] = [];
    for (const line of [...props.lines].sort((a, b) => ORDER[a.role] - ORDER[b.role] || b.strength - a.strength)) {
      const at = x(1 / line.period);
      if (at < LEFT || at > RIGHT || kept.some((other) => Math.abs(other.at - at) < APART)) continue;
      kept.push({ at, name: nameOf(line, ridges), period: print(line.period), strong: line.role === 'ridges' });
    }
    return kept;
  });
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={title}>
      <title id={title}>{say.periods.title(named(), props.unit.label)}</title>
      <text class="d-text" x={LEFT} y={12}>
        {say.periods.axis(props.unit.label)}
      </text>
      <path class="d-ink" d={pathOf(props.spectrum, range(), x)} />
      <path class="d-thin" d={`M${LEFT} ${BOTTOM} H${RIGHT}`} />
      <For each={named()}>
        {(one) => (
          <g>
            <path class={one.strong ? 'd-accent' : 'd-ghost'} d={`M${one.at} ${TOP - 2} V${BOTTOM}`} />
            <text
              class={one.strong ? 'd-text d-text-accent' : 'd-text'}
              x={Math.min(Math.max(one.at, LEFT + 18), RIGHT - 18)}
              y={TOP - 8}
              text-anchor="middle"
            >
              {one.name}
            </text>
          </g>
        )}
      </For>
      <For each={ticksIn(range(), props.unit)}>
        {(period) => (
          <g>
            <path class="d-thin" d={`M${x(1 / period)} ${BOTTOM} v4`} />
            <Show when={x(1 / period) > LEFT + 8 && x(1 / period) < RIGHT - 8}>
              <text class="d-text" x={x(1 / period)} y={BOTTOM + 18} text-anchor="middle">
                {print(period)}
              </text>
            </Show>
          </g>
        )}
      </For>
    </svg>
  );
}
