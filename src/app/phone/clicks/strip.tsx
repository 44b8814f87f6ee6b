import { createMemo, For } from 'solid-js';
import { doubtfulOf } from '../../../signal/click-count';
import { numberTicks } from '../../../ui/ticks';
import type { Counting } from './counting';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 74;
const LEFT = 12;
const RIGHT = WIDTH - 12;
const TOP = 6;
const BASE = 48;
/** Seconds shown at least; dB over the noise at the top. */
const SHORTEST = 10;
const LOUDEST = 40;

/** Every tick at its time, as high as it is loud: full lines are beyond doubt, broken ones are not. */
export function ClicksStrip(props: { counting: Counting }) {
  const last = () => Math.max(SHORTEST, props.counting.seconds());
  const x = (seconds: number): number => LEFT + (seconds / last()) * (RIGHT - LEFT);
  const doubtful = createMemo(() => doubtfulOf(props.counting.clicks()));
  return (
    <svg class="drawing" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={say.strip.label}>
      <For each={props.counting.clicks()}>
        {({ at, loudness }, i) => (
          <path
            class={doubtful()[i()] ? 'd-ghost' : 'd-accent'}
            d={`M${x(at)} ${BASE} V${BASE - Math.min(1, Math.max(0.2, loudness / LOUDEST)) * (BASE - TOP)}`}
          />
        )}
      </For>
      <path class="d-thin" d={`M${LEFT} ${BASE} H${RIGHT}`} />
      <For each={numberTicks(0, last(), 5)}>
        {(tick) => (
          <g>
            <path class="d-thin" d={`M${x(tick)} ${BASE} v4`} />
            <text class="d-text" x={x(tick)} y={HEIGHT - 8} text-anchor="middle">
              {tick}
            </text>
          </g>
        )}
      </For>
      <text class="d-text" x={RIGHT + 10} y={HEIGHT - 8} text-anchor="end">
        s
      </text>
    </svg>
  );
}
