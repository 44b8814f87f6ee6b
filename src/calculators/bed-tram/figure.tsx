import { createMemo, For, Show } from 'solid-js';
import { Drawing, TurnArrow } from '../../ui/drawing';
import { formatValue } from '../../quantity/format';
import { angle, length } from '../../quantity/kinds';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import { heightMap, type Spot } from './map';
import { MOST_POINTS } from './points';
import { adjustersOf, setTurn, turnFor, wholeTurns } from './turning';
import say from './words/en';

const WIDTH = 340;
const TOP = 26;
const MOST_WIDE = 214;
const MOST_HIGH = 200;

/** Plan of the bed seen from above: heights as shade and numbers, adjusters with the way they turn, both slopes below. */
export default function Figure(props: FigureProps<typeof calc>) {
  const W = () => props.value('W') ?? 0.22;
  const D = () => props.value('D') ?? 0.22;
  const scale = () => Math.min(MOST_WIDE / W(), MOST_HIGH / D());
  const left = () => (WIDTH - W() * scale()) / 2;
  const bottom = () => TOP + D() * scale();
  const px = (x: number) => left() + x * scale();
  const py = (y: number) => bottom() - y * scale();
  const read = () => {
    const points = [];
    const up = props.choice.by === 'gap' ? -1 : 1;
    for (let n = 1; n <= MOST_POINTS; n += 1) {
      const [x, y, z] = [props.value(`x_${n}`), props.value(`y_${n}`), props.value(`z_${n}`)];
      if (x !== undefined && y !== undefined && z !== undefined) points.push({ n, x, y, z: up * z });
    }
    return points;
  };
  const map = createMemo(() => heightMap(read(), W(), D()));
  const print = (si: number) => {
    const hundredths = Math.round(si * 1e5);
    const text = formatValue(Math.abs(hundredths) * 1e-5, 1e-4, length.mm.unit, { mark: props.mark });
    const sign = hundredths > 0 ? '+' : hundredths < 0 ? '−' : '';
    return sign + text.replace(/\smm$/, '');
  };
  const least = () => props.value('phi_h') ?? Math.PI / 18;
  const degrees = (turn: number) => formatValue(turn, 0, angle.deg.unit, { mark: props.mark });
  const adjusters = () => {
    const each = [];
    for (let n = 1; n <= adjustersOf(props.choice.layout).length; n += 1) {
      const i = n as 1 | 2 | 3 | 4;
      const turn = props.value(`psi_${i}`) ?? 0;
      each.push({ n, x: props.value(`X_${i}`), y: props.value(`Y_${i}`), turn, set: setTurn(turn, least()) });
    }
    return each;
  };
  const label = (n: number, set: number | undefined) => {
    if (set === undefined) return say.figure.adjuster(n, 0, undefined);
    const { turns, rest } = wholeTurns(set);
    return say.figure.adjuster(n, turns, rest === 0 ? undefined : degrees(rest));
  };
  const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
  const base = () => bottom() + 64;
  return (
    <Drawing width={WIDTH} height={base() + 40} label={say.figure.label}>
      <For each={map().tiles}>
        {(tile) => (
          <rect
            x={px(tile.x)}
            y={py(tile.y + tile.high)}
            width={tile.wide * scale()}
            height={tile.high * scale()}
            class={tile.share >= 0 ? 'd-solid' : undefined}
            fill="currentColor"
            shape-rendering="crispEdges"
            fill-opacity={0.55 * Math.abs(tile.share)}
          />
        )}
      </For>
      <rect class="d-ink" x={px(0)} y={py(D())} width={W() * scale()} height={D() * scale()} />
      <For each={adjusters()}>
        {(one) => (
          <Show when={one.x !== undefined && one.y !== undefined}>
            <Adjuster
              x={clamp(px(one.x ?? 0), 12, WIDTH - 12)}
              y={clamp(py(one.y ?? 0), 12, bottom() + 12)}
              middle={WIDTH / 2}
              text={label(one.n, one.set)}
              isTurned={one.set !== undefined}
              clockwise={turnFor(one.turn, props.choice.build, props.choice.hand) === 'clockwise'}
            />
          </Show>
        )}
      </For>
      <For each={map().spots}>
        {(spot) => (
          <Height
            x={px(spot.x)}
            y={py(spot.y)}
            spot={spot}
            text={spot.extreme ? say.figure.point(spot.n, print(spot.rise)) : print(spot.rise)}
          />
        )}
      </For>
      <text class="d-text" x={WIDTH / 2} y={TOP - 12} text-anchor="middle">
        {say.figure.back}
      </text>
      <text class="d-text" x={WIDTH / 2} y={bottom() + 16} text-anchor="middle">
        {say.figure.frontAndHeights}
      </text>
      <Slope
        x={20}
        y={base()}
        rise={props.value('t_x')}
        over={W()}
        from={say.figure.left}
        to={say.figure.right}
        text={props.text('t_x')}
      />
      <Slope
        x={190}
        y={base()}
        rise={props.value('t_y')}
        over={D()}
        from={say.figure.front}
        to={say.figure.back}
        text={props.text('t_y')}
      />
      <text class="d-text" x={WIDTH / 2} y={base() + 34} text-anchor="middle">
        {say.figure.scale(EXAGGERATED)}
      </text>
    </Drawing>
  );
}

function Height(props: { x: number; y: number; spot: Spot; text: string }) {
  return (
    <g>
      <circle class="d-ink" cx={props.x} cy={props.y} r={props.spot.extreme ? 3.4 : 1.6} />
      <text
        class={props.spot.extreme ? 'd-text d-text-accent' : 'd-text'}
        x={props.x}
        y={props.y - 5}
        text-anchor="middle"
      >
        {props.text}
      </text>
    </g>
  );
}

function Adjuster(props: {
  x: number;
  y: number;
  middle: number;
  text: string;
  isTurned: boolean;
  clockwise: boolean;
}) {
  const outwards = () => (props.x < props.middle - 20 ? -1 : props.x > props.middle + 20 ? 1 : 0);
  return (
    <g>
      <circle class="d-ghost" cx={props.x} cy={props.y} r={10} />
      <Show when={props.isTurned}>
        <TurnArrow
          cx={props.x}
          cy={props.y}
          r={10}
          from={Math.PI / 2}
          to={props.clockwise ? -Math.PI / 2 : 1.5 * Math.PI}
        />
      </Show>
      <text
        class="d-text"
        x={outwards() === 0 ? props.x + 14 : outwards() < 0 ? 4 : 336}
        y={props.y + 18}
        text-anchor={outwards() > 0 ? 'end' : 'start'}
      >
        {props.text}
      </text>
    </g>
  );
}

/** Tilt on paper for each of the bed's: so a limit of 0.05 mm on 0.22 m shows. */
const EXAGGERATED = 100;
const BAR = 130;
const MOST_DROP = 22;

function Slope(props: {
  x: number;
  y: number;
  rise: number | undefined;
  over: number;
  from: string;
  to: string;
  text: string;
}) {
  const drop = () => {
    const drawn = ((props.rise ?? 0) / props.over) * BAR * EXAGGERATED;
    return Math.max(-MOST_DROP, Math.min(MOST_DROP, drawn)) / 2;
  };
  return (
    <g>
      <line class="d-ghost" x1={props.x} y1={props.y} x2={props.x + BAR} y2={props.y} />
      <line class="d-accent" x1={props.x} y1={props.y + drop()} x2={props.x + BAR} y2={props.y - drop()} />
      <text class="d-text" x={props.x} y={props.y + 18}>
        {props.from}
      </text>
      <text class="d-text" x={props.x + BAR} y={props.y + 18} text-anchor="end">
        {props.to}
      </text>
      <text class="d-text d-text-accent" x={props.x + BAR / 2} y={props.y - 12} text-anchor="middle">
        {props.rise === undefined ? '' : props.text}
      </text>
    </g>
  );
}
