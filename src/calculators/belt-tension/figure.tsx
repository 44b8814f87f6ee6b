import { For, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 236;
const LEFT = 48;
const RIGHT = WIDTH - 48;
const SPAN = 74;
const PULLEY = 22;
/** Height on paper that a swinging or pressed middle may take. */
const SWING = 24;
const SCALE = { left: 24, right: WIDTH - 24, y: 184 };
const STEPS = [1, 2, 5, 10, 20, 50, 100];
/** Numbers on the scale of tensions keep this far apart. */
const APART = 52;

/** A half wave of this height between the ends; held ends leave it level. */
function wave(height: number, held: boolean): string {
  return Array.from({ length: 33 }, (_, i) => {
    const t = i / 32;
    const bow = held ? Math.sin(Math.PI * t) ** 1.25 : Math.sin(Math.PI * t);
    return `${LEFT + t * (RIGHT - LEFT)},${SPAN - height * bow}`;
  }).join(' ');
}

/** The span between its tangent points, plucked or pressed, and below it the tension on a scale with its range. */
export default function Figure(props: FigureProps<typeof calc>) {
  const pressing = () => props.choice.by === 'press';
  const held = () => !pressing() && props.choice.ends === 'clamped';
  const scale = () => (RIGHT - LEFT) / (props.value('L') ?? 0.3);
  const drop = () => (props.value('y') ?? 0.004) * scale();
  const factor = () => [...STEPS].reverse().find((step) => drop() * step <= SWING) ?? 1;
  const depth = () => Math.min(drop() * factor(), SWING);

  const most = () => {
    const values = [props.value('T'), props.value('T_hi'), props.value('T_lo')].flatMap((v) =>
      v === undefined ? [] : [v],
    );
    return 1.15 * Math.max(1e-9, ...values);
  };
  const at = (tension: number) => SCALE.left + (SCALE.right - SCALE.left) * Math.min(Math.max(tension / most(), 0), 1);
  const ends = () => {
    const [low, high] = [props.value('T_lo'), props.value('T_hi')];
    return low === undefined || high === undefined || high <= low ? undefined : { low: at(low), high: at(high) };
  };
  /** The two numbers under the scale, moved apart where the ends lie close together. */
  const labels = () => {
    const found = ends();
    if (!found) return undefined;
    const middle = (found.low + found.high) / 2;
    const half = Math.max((found.high - found.low) / 2, APART);
    const centre = Math.min(Math.max(middle, SCALE.left + half + 20), SCALE.right - half - 20);
    return { low: centre - half, high: centre + half };
  };
  const now = () => {
    const tension = props.value('T');
    return tension === undefined ? undefined : at(tension);
  };
  const clear = (x: number) => Math.min(Math.max(x, SCALE.left + 34), SCALE.right - 34);

  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <For each={[LEFT, RIGHT]}>
        {(x) => (
          <g>
            <circle class="d-ink d-shade" cx={x} cy={SPAN + PULLEY} r={PULLEY} />
            <circle class="d-thin" cx={x} cy={SPAN + PULLEY} r={4} />
            <line class="d-thin" x1={x} y1={SPAN - 8} x2={x} y2={22} />
          </g>
        )}
      </For>
      <DimensionLine x1={LEFT} y1={26} x2={RIGHT} y2={26} text={`L = ${props.text('L')}`} />
      <Show
        when={pressing()}
        fallback={
          <g>
            <polyline class="d-ghost" points={wave(SWING, held())} />
            <polyline class="d-ghost" points={wave(-SWING, held())} />
            <line class="d-ink" x1={LEFT} y1={SPAN} x2={RIGHT} y2={SPAN} />
            <text class="d-text d-text-accent" x={WIDTH / 2} y={SPAN + 42} text-anchor="middle">
              f = {props.text('f')}
            </text>
          </g>
        }
      >
        <line class="d-ghost" x1={LEFT} y1={SPAN} x2={RIGHT} y2={SPAN} />
        <polyline class="d-ink" points={`${LEFT},${SPAN} ${WIDTH / 2},${SPAN + depth()} ${RIGHT},${SPAN}`} />
        <DimensionLine accent single x1={WIDTH / 2} y1={SPAN - 30} x2={WIDTH / 2} y2={SPAN + depth() - 2} text="" />
        <text class="d-text d-text-accent" x={WIDTH / 2 + 8} y={SPAN - 14}>
          F = {props.text('F')}
        </text>
        <text class="d-text" x={WIDTH / 2} y={SPAN + depth() + 18} text-anchor="middle">
          y = {props.text('y')}
        </text>
      </Show>
      <text class="d-text" x={WIDTH / 2} y={SPAN + 62} text-anchor="middle">
        {pressing() ? say.figure.pressed(factor()) : say.figure.plucked}
      </text>

      <line class="d-thin" x1={SCALE.left} y1={SCALE.y} x2={SCALE.right} y2={SCALE.y} />
      <line class="d-thin" x1={SCALE.left} y1={SCALE.y - 5} x2={SCALE.left} y2={SCALE.y + 5} />
      <text class="d-text" x={SCALE.left - 4} y={SCALE.y + 19} text-anchor="middle">
        0
      </text>
      <Show when={ends()}>
        {(found) => (
          <g>
            <rect
              class="d-ink d-shade"
              x={found().low}
              y={SCALE.y - 6}
              width={found().high - found().low}
              height={12}
            />
            <line class="d-thin" x1={found().low} y1={SCALE.y + 6} x2={labels()?.low} y2={SCALE.y + 16} />
            <line class="d-thin" x1={found().high} y1={SCALE.y + 6} x2={labels()?.high} y2={SCALE.y + 16} />
            <text class="d-text" x={labels()?.low} y={SCALE.y + 29} text-anchor="middle">
              {say.figure.least(props.text('T_lo'))}
            </text>
            <text class="d-text" x={labels()?.high} y={SCALE.y + 29} text-anchor="middle">
              {say.figure.most(props.text('T_hi'))}
            </text>
          </g>
        )}
      </Show>
      <Show when={now()}>
        {(x) => (
          <g>
            <DimensionLine accent single x1={x()} y1={SCALE.y - 20} x2={x()} y2={SCALE.y - 1} text="" />
            <text class="d-text d-text-accent" x={clear(x())} y={SCALE.y - 24} text-anchor="middle">
              T = {props.text('T')}
            </text>
          </g>
        )}
      </Show>
    </Drawing>
  );
}
