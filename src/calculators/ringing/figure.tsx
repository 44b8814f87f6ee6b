import { For, Show } from 'solid-js';
import { formatNumber } from '../../quantity/format';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 240;
const LEFT = 26;
const RIGHT = WIDTH - 14;
const WALL = 84;
const SCALE = { left: 24, right: WIDTH - 24, y: 190 };
/** Height on paper of the first ripple. */
const HIGH = 20;
/** Waves that can still be told apart on a phone. */
const MOST = 24;
/** Decrement drawn where none was read. */
const FADE = 0.23;
/** Fading drawn at most, so that the last ripple is still seen. */
const MOST_FADE = Math.log(4);
/** Numbers on the scale keep this far apart. */
const APART = 58;

/** The wall behind the corner, ramp and ripples to scale along it; below, the accelerations on a scale. */
export default function Figure(props: FigureProps<typeof calc>) {
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <Ripples {...props} />
      <Accelerations {...props} />
    </Drawing>
  );
}

/** The wall to scale behind the corner: how the ripples fade along it, where the ramp ends, how far they were counted. */
function Ripples(props: FigureProps<typeof calc>) {
  const spacing = () => props.value('P') ?? 0.002;
  const spaces = () => (props.choice.by === 'count' ? (props.value('N') ?? 5) : 5);
  const start = () => props.value('x_0') ?? 0.005;
  /** Whole ripples only, so many as fit in what was counted and in the drawing. */
  const drawn = () => Math.min(spaces(), MOST);
  const scale = () => (RIGHT - LEFT - 8) / (start() + (drawn() + 0.5) * spacing());
  const at = (way: number) => Math.min(LEFT + way * scale(), RIGHT);
  const wave = () => {
    const [from, apart, per] = [start(), spacing(), scale()];
    const ripples = (RIGHT - LEFT) / per / apart;
    const fade = Math.min(props.value('delta') ?? FADE, MOST_FADE / ripples);
    const points: string[] = [];
    for (let x = LEFT; x <= RIGHT; x += 0.5) {
      const way = (x - LEFT) / per - from;
      const height = HIGH * Math.exp(-fade * (way / apart + from / apart));
      points.push(`${x},${WALL - height * Math.cos((2 * Math.PI * way) / apart)}`);
    }
    return points.join(' ');
  };
  const ramp = () => {
    const length = props.value('l_r');
    return length === undefined ? undefined : at(length) - LEFT;
  };

  return (
    <>
      <Show when={ramp()}>
        {(width) => (
          <g>
            <rect class="d-thin d-shade" x={LEFT} y={WALL - 34} width={width()} height={64} />
            <text class="d-text" x={LEFT + 3} y={WALL + 46}>
              {say.figure.ramp(`${formatNumber((props.value('l_r') ?? 0) * 1e3, 2, props.mark)} mm`)}
            </text>
          </g>
        )}
      </Show>
      <polyline class="d-ink" points={`${LEFT},${WALL + 32} ${wave()}`} />
      <line class="d-ghost" x1={LEFT} y1={WALL} x2={RIGHT} y2={WALL} />
      <DimensionLine
        accent
        x1={at(start())}
        y1={36}
        x2={at(start() + drawn() * spacing())}
        y2={36}
        text={`${drawn()} × ${props.text('P')}`}
      />
      <For each={[start(), start() + drawn() * spacing()]}>
        {(way) => <line class="d-thin" x1={at(way)} y1={30} x2={at(way)} y2={WALL - 4} />}
      </For>
      <text class="d-text d-text-accent" x={RIGHT} y={14} text-anchor="end">
        f = {props.text('f')}
      </text>
      <text class="d-text" x={4} y={14}>
        {say.figure.corner}
      </text>
      <text class="d-text" x={RIGHT} y={WALL + 46} text-anchor="end">
        {say.figure.notToScale}
      </text>
    </>
  );
}

/** The acceleration in use on a scale from zero, with the ranges that are low enough and those that ring. */
function Accelerations(props: FigureProps<typeof calc>) {
  const marks = () => {
    const found = (['a_s', 'a_q', 'a'] as const).flatMap((symbol) => {
      const value = props.value(symbol);
      return value === undefined ? [] : [{ symbol, value }];
    });
    const most = 1.15 * Math.max(1e-9, ...found.map((mark) => mark.value));
    return found.map((mark) => ({
      ...mark,
      x: SCALE.left + ((SCALE.right - SCALE.left) * mark.value) / most,
    }));
  };
  const mark = (symbol: string) => marks().find((one) => one.symbol === symbol);
  /** Places of the two numbers under the scale, moved apart where they would meet. */
  const labels = () => {
    const [low, high] = [mark('a_s')?.x ?? SCALE.left, mark('a_q')?.x ?? SCALE.right];
    const half = Math.max((high - low) / 2, APART);
    const middle = Math.min(Math.max((low + high) / 2, SCALE.left + half + 26), SCALE.right - half - 26);
    return { low: middle - half, high: middle + half };
  };
  const clear = (x: number) => Math.min(Math.max(x, SCALE.left + 50), SCALE.right - 50);

  return (
    <>
      <line class="d-thin" x1={SCALE.left} y1={SCALE.y} x2={SCALE.right} y2={SCALE.y} />
      <line class="d-thin" x1={SCALE.left} y1={SCALE.y - 5} x2={SCALE.left} y2={SCALE.y + 5} />
      <text class="d-text" x={SCALE.left - 4} y={SCALE.y - 9} text-anchor="middle">
        0
      </text>
      <Show when={mark('a_s')}>
        {(low) => (
          <g>
            <rect class="d-ink d-shade" x={SCALE.left} y={SCALE.y - 5} width={low().x - SCALE.left} height={10} />
            <line class="d-thin" x1={low().x} y1={SCALE.y + 6} x2={labels().low} y2={SCALE.y + 16} />
            <text class="d-text" x={labels().low} y={SCALE.y + 29} text-anchor="middle">
              {say.figure.low(props.text('a_s'))}
            </text>
          </g>
        )}
      </Show>
      <Show when={mark('a_q')}>
        {(high) => (
          <g>
            <line class="d-ghost" x1={high().x} y1={SCALE.y - 7} x2={high().x} y2={SCALE.y + 7} />
            <line class="d-thin" x1={high().x} y1={SCALE.y + 7} x2={labels().high} y2={SCALE.y + 16} />
            <text class="d-text" x={labels().high} y={SCALE.y + 43} text-anchor="middle">
              {say.figure.high(props.text('a_q'))}
            </text>
          </g>
        )}
      </Show>
      <Show when={mark('a')}>
        {(now) => (
          <g>
            <DimensionLine accent single x1={now().x} y1={SCALE.y - 20} x2={now().x} y2={SCALE.y - 1} text="" />
            <text class="d-text d-text-accent" x={clear(now().x)} y={SCALE.y - 24} text-anchor="middle">
              a = {props.text('a')}
            </text>
          </g>
        )}
      </Show>
    </>
  );
}
