import { createMemo, For, Show } from 'solid-js';
import { Drawing, TurnArrow } from '../../ui/drawing';
import { formatValue } from '../../quantity/format';
import { angle, length } from '../../quantity/kinds';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import { levellingPlan, type Piece, type Spot } from './map';
import { MOST_POINTS } from './points';
import { adjustersOf, setTurn, turnFor, wholeTurns } from './turning';
import say from './words/en';

const WIDTH = 340;
const TOP = 26;
const MOST_WIDE = 214;
const MOST_HIGH = 200;

/** Levelling plan of the bed from above: spot heights, contours with ticks that fall, adjusters with the way they turn, both slopes below. */
export default function Figure(props: FigureProps<typeof calc>) {
  const W = () => props.value('W') ?? 0.2;
  const D = () => props.value('D') ?? 0.2;
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
  const plan = createMemo(() => levellingPlan(read(), W(), D()));
  const isBeyond = (rise: number | undefined) => Math.abs(rise ?? 0) > (props.value('t_lim') ?? Infinity);
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
      <path
        class="d-thin"
        d={plan()
          .contours.map((piece) => drawn(piece, px, py))
          .join('')}
      />
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
      <For each={plan().spots}>
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
        isBeyond={isBeyond(props.value('t_x'))}
        from={say.figure.left}
        to={say.figure.right}
        text={props.text('t_x')}
      />
      <Slope
        x={190}
        y={base()}
        rise={props.value('t_y')}
        over={D()}
        isBeyond={isBeyond(props.value('t_y'))}
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

/** A piece of a contour as a path, with its tick. */
function drawn({ from, to, tick }: Piece, px: (x: number) => number, py: (y: number) => number): string {
  const at = ({ x, y }: Piece['from']) => `${px(x).toFixed(1)} ${py(y).toFixed(1)}`;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return `M${at(from)}L${at(to)}${tick ? `M${at(middle)}L${at(tick)}` : ''}`;
}

function Height(props: { x: number; y: number; spot: Spot; text: string }) {
  return (
    <g>
      <circle class="d-ink" cx={props.x} cy={props.y} r={props.spot.extreme ? 3.4 : 1.6} />
      <text class="d-text" x={props.x} y={props.y - 5} text-anchor="middle">
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

/** Tilt on paper for each of the bed's: so a limit of 0.05 mm on 0.2 m shows. */
const EXAGGERATED = 100;
const BAR = 130;
const MOST_DROP = 22;

function Slope(props: {
  x: number;
  y: number;
  rise: number | undefined;
  over: number;
  isBeyond: boolean;
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
      <line
        class={props.isBeyond ? 'd-red' : 'd-ink'}
        x1={props.x}
        y1={props.y + drop()}
        x2={props.x + BAR}
        y2={props.y - drop()}
      />
      <text class="d-text" x={props.x} y={props.y + 18}>
        {props.from}
      </text>
      <text class="d-text" x={props.x + BAR} y={props.y + 18} text-anchor="end">
        {props.to}
      </text>
      <text
        class={props.isBeyond ? 'd-text d-text-red' : 'd-text'}
        x={props.x + BAR / 2}
        y={props.y - 12}
        text-anchor="middle"
      >
        {props.rise === undefined ? '' : props.text}
      </text>
    </g>
  );
}
