import { For } from 'solid-js';
import type { Level } from './ear';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 50;
const LEFT = 14;
const RIGHT = WIDTH - 14;
const TOP = 6;
const BASE = 26;
const LEAST_DB = -100;
const TICKS = [-100, -80, -60, -40, -20, 0];

const x = (decibels: number): number =>
  LEFT + ((Math.min(Math.max(decibels, LEAST_DB), 0) - LEAST_DB) / -LEAST_DB) * (RIGHT - LEFT);

/** How loud it is now, against the noise that is always there. */
export function EarLevel(props: { level: Level | undefined }) {
  const over = () => (props.level ? Math.max(props.level.rms - props.level.noise, 0).toFixed(0) : '–');
  return (
    <div class="ear-level">
      <p class="small">
        {say.level.before} <b>{over()} dB</b> {say.level.after}
      </p>
      <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
        <rect class="d-shade" x={LEFT} y={TOP} width={x(props.level?.noise ?? LEAST_DB) - LEFT} height={BASE - TOP} />
        <path class="ear-bar" d={`M${LEFT} ${(TOP + BASE) / 2} H${x(props.level?.rms ?? LEAST_DB)}`} />
        <path class="d-ink" d={`M${x(props.level?.noise ?? LEAST_DB)} ${TOP} V${BASE}`} />
        <path class="d-thin" d={`M${LEFT} ${BASE} H${RIGHT}`} />
        <For each={TICKS}>
          {(tick) => (
            <g>
              <path class="d-thin" d={`M${x(tick)} ${BASE} v4`} />
              <text class="d-text" x={x(tick)} y={HEIGHT - 6} text-anchor={tick === 0 ? 'end' : 'middle'}>
                {tick === 0 ? '0 dB' : String(tick).replace('-', '\u2212')}
              </text>
            </g>
          )}
        </For>
      </svg>
    </div>
  );
}
