import { createMemo, createUniqueId, For, Show } from 'solid-js';
import { formatNumber } from '../../../quantity/format';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import type { DrawnProfile, DrawnSpectrum, RidgeLine } from '../../../signal/ridge-types';
import { numberTicks, placesOf } from '../../../ui/ticks';

const WIDTH = 340;
const LEFT = 12;
const RIGHT = WIDTH - 12;

/** The least and the most of a list for each of `columns` steps across the drawing: as one line, however long the list. */
function envelope(values: Float64Array, columns: number): readonly (readonly [x: number, low: number, high: number])[] {
  const count = Math.min(columns, values.length);
  return Array.from({ length: count }, (_, column) => {
    const from = Math.floor((column * values.length) / count);
    const to = Math.max(Math.floor(((column + 1) * values.length) / count), from + 1);
    let [low, high] = [Infinity, -Infinity];
    for (const value of values.subarray(from, to)) [low, high] = [Math.min(low, value), Math.max(high, value)];
    return [(from + to) / 2, low, high] as const;
  });
}

/** Grey values along the strip, with the ridges marked. */
export function ProfileChart(props: {
  profile: DrawnProfile;
  /** m along the profile. */
  crests: readonly number[];
  unit: Unit;
  mark: DecimalMark;
}) {
  const title = createUniqueId();
  const [top, bottom, height] = [24, 116, 150];
  const length = () => Math.max(props.profile.values.length - 1, 1) * props.profile.step;
  const x = (metres: number) => LEFT + (metres / length()) * (RIGHT - LEFT);
  const line = createMemo(() => {
    const points = envelope(props.profile.values, RIGHT - LEFT);
    const most = points.reduce((max, [, low, high]) => Math.max(max, -low, high), 1e-9);
    const y = (value: number) => (top + bottom) / 2 - (value / most) * ((bottom - top) / 2);
    return `M${points
      .map(([at, low, high]) => {
        const across = x(Math.min(at * props.profile.step, length())).toFixed(1);
        return low === high
          ? `${across} ${y(low).toFixed(1)}`
          : `${across} ${y(low).toFixed(1)} V${y(high).toFixed(1)}`;
      })
      .join(' L')}`;
  });
  const ticks = createMemo(() => numberTicks(0, length() / props.unit.factor, 5));
  const number = (value: number) => {
    const text = value.toFixed(placesOf(ticks()));
    return props.mark === 'comma' ? text.replace('.', ',') : text;
  };
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-labelledby={title}>
      <title id={title}>
        Brightness along the strip{props.crests.length > 0 ? `, ${props.crests.length} ridges marked` : ''}
      </title>
      <text class="d-text" x={LEFT} y={14}>
        Brightness along the strip, {props.unit.label}
      </text>
      <path class="d-accent" d={props.crests.map((at) => `M${x(at).toFixed(1)} ${top - 4} V${bottom + 4}`).join('')} />
      <path class="d-ink" d={line()} />
      <path class="d-thin" d={`M${LEFT} ${bottom + 8} H${RIGHT}`} />
      <For each={ticks()}>
        {(tick) => (
          <g>
            <path class="d-thin" d={`M${x(tick * props.unit.factor)} ${bottom + 8} v4`} />
            <text
              class="d-text"
              x={Math.min(Math.max(x(tick * props.unit.factor), LEFT + 4), RIGHT - 8)}
              y={bottom + 26}
              text-anchor="middle"
            >
              {number(tick)}
            </text>
          </g>
        )}
      </For>
    </svg>
  );
}

const ORDINALS = ['', 'ridges', 'half', 'third', 'quarter', 'fifth', 'sixth'];
/** Lines nearer than this on the drawing would write over each other. */
const APART = 44;

function nameOf(line: RidgeLine, ridges: RidgeLine | undefined): string {
  if (line.role === 'ridges') return 'ridges';
  if (line.role === 'layers') return 'layers';
  if (line.role === 'other') return 'other';
  const order = ridges ? Math.round(line.frequency / ridges.frequency) : 0;
  return ORDINALS[order] ?? 'part';
}

/** Which periods are in the strip: a logarithmic axis of periods, the long ones on the left. */
export function SpectrumChart(props: {
  spectrum: DrawnSpectrum;
  lines: readonly RidgeLine[];
  unit: Unit;
  mark: DecimalMark;
}) {
  const title = createUniqueId();
  const [top, bottom, height] = [44, 150, 184];
  const range = createMemo(() => {
    const { step, amplitude } = props.spectrum;
    const end = step * (amplitude.length - 1);
    const found = props.lines.map((line) => 1 / line.period);
    const least = Math.max(step, Math.min(...found.map((f) => f / 3), end / 10));
    return { least, most: Math.max(Math.min(end, Math.max(...found.map((f) => f * 2.2), least * 10)), least * 1.1) };
  });
  const x = (frequency: number) => {
    const { least, most } = range();
    return LEFT + (Math.log(frequency / least) / Math.log(most / least)) * (RIGHT - LEFT);
  };
  const peak = createMemo(() => {
    const { step, amplitude } = props.spectrum;
    let most = 1e-12;
    amplitude.forEach((value, k) => {
      if (k * step >= range().least && k * step <= range().most) most = Math.max(most, value);
    });
    return most;
  });
  const path = createMemo(() => {
    const { step, amplitude } = props.spectrum;
    const highest = new Map<number, number>();
    amplitude.forEach((value, k) => {
      if (k * step < range().least || k * step > range().most) return;
      const column = Math.round(x(k * step) * 2) / 2;
      highest.set(column, Math.max(highest.get(column) ?? 0, value));
    });
    const points = [...highest].map(
      ([at, value]) => `${at} ${(bottom - (value / peak()) * (bottom - top)).toFixed(1)}`,
    );
    return points.length > 0 ? `M${points.join(' L')}` : '';
  });
  const named = createMemo(() => {
    const ridges = props.lines.find((line) => line.role === 'ridges');
    const kept: { at: number; name: string; period: string; strong: boolean }[] = [];
    const order = { ridges: 0, layers: 1, harmonic: 2, other: 3 };
    for (const line of [...props.lines].sort((a, b) => order[a.role] - order[b.role] || b.strength - a.strength)) {
      const at = x(1 / line.period);
      if (at < LEFT || at > RIGHT || kept.some((other) => Math.abs(other.at - at) < APART)) continue;
      const period = formatNumber(line.period / props.unit.factor, 3, props.mark);
      kept.push({ at, name: nameOf(line, ridges), period, strong: line.role === 'ridges' });
    }
    return kept;
  });
  const ticks = createMemo(() => {
    const { least, most } = range();
    const periods = [...Array(9).keys()].flatMap((power) =>
      [1, 2, 5].map((digit) => digit * 10 ** (power - 5) * props.unit.factor),
    );
    return periods.filter((period) => 1 / period >= least && 1 / period <= most).reverse();
  });
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-labelledby={title}>
      <title id={title}>
        Which periods are in it:{' '}
        {named()
          .map((one) => `${one.name} ${one.period} ${props.unit.label}`)
          .join(', ') || 'none stands out'}
      </title>
      <text class="d-text" x={LEFT} y={12}>
        Strength of each period, {props.unit.label}
      </text>
      <path class="d-ink" d={path()} />
      <path class="d-thin" d={`M${LEFT} ${bottom} H${RIGHT}`} />
      <For each={named()}>
        {(one) => (
          <g>
            <path class={one.strong ? 'd-accent' : 'd-ghost'} d={`M${one.at} ${top - 2} V${bottom}`} />
            <text
              class={one.strong ? 'd-text d-text-accent' : 'd-text'}
              x={Math.min(Math.max(one.at, LEFT + 18), RIGHT - 18)}
              y={top - 8}
              text-anchor="middle"
            >
              {one.name}
            </text>
          </g>
        )}
      </For>
      <For each={ticks()}>
        {(period) => (
          <g>
            <path class="d-thin" d={`M${x(1 / period)} ${bottom} v4`} />
            <Show when={x(1 / period) > LEFT + 8 && x(1 / period) < RIGHT - 8}>
              <text class="d-text" x={x(1 / period)} y={bottom + 18} text-anchor="middle">
                {formatNumber(period / props.unit.factor, 3, props.mark)}
              </text>
            </Show>
          </g>
        )}
      </For>
    </svg>
  );
}
