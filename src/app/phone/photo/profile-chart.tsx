import { createMemo, createUniqueId, For } from 'solid-js';
import type { DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import type { DrawnProfile } from '../../../signal/ridge-types';
import { numberTicks, placesOf } from '../../../ui/ticks';
import say from './words/en';

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
        {props.crests.length > 0 ? say.profile.titleMarked(props.crests.length) : say.profile.title}
      </title>
      <text class="d-text" x={LEFT} y={14}>
        {say.profile.axis(props.unit.label)}
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
