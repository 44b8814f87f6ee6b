import { Index, Show } from 'solid-js';
import { DimensionLine, Drawing, TurnArrow } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 258;
const RAIL = { x: 8, y: 52, width: 186, height: 24 };
const MIDDLE = RAIL.x + RAIL.width / 2;
const BOLT = { x: 118, y: 178 };
/** Eccentricity and outer radius of the bush as drawn. */
const THROW = 16;
const BUSH = 32;
const HOLE = 12;
const ARROW = 56;
/** Least arc that still reads as an arrow. */
const LEAST_ARC = (20 * Math.PI) / 180;

/** Seen from the bolt heads: wheels on the rail, below the eccentric bush enlarged, its angle true. */
export default function Figure(props: FigureProps<typeof calc>) {
  const spacing = () => props.value('s') ?? 0.06;
  const radius = () => props.value('r_w') ?? 0.0105;
  const scale = () => Math.min(130 / spacing(), 17 / radius());
  const r = () => radius() * scale();
  const fixed = () => [MIDDLE - (spacing() * scale()) / 2, MIDDLE + (spacing() * scale()) / 2];
  const bottom = RAIL.y + RAIL.height;
  const times = () => {
    const e = props.value('e');
    return e === undefined ? undefined : Math.round(THROW / (e * scale()));
  };

  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <rect class="d-ink d-shade" x={RAIL.x} y={RAIL.y} width={RAIL.width} height={RAIL.height} />
      <text class="d-text" x={MIDDLE} y={RAIL.y + 16} text-anchor="middle">
        {say.figure.rail}
      </text>
      <Index each={fixed()}>
        {(x) => (
          <g>
            <circle class="d-ink d-fill" cx={x()} cy={RAIL.y - r()} r={r()} />
            <circle class="d-thin" cx={x()} cy={RAIL.y - r()} r={r() * 0.3} />
          </g>
        )}
      </Index>
      <DimensionLine
        x1={fixed()[0] ?? 0}
        y1={13}
        x2={fixed()[1] ?? 0}
        y2={13}
        text={`s = ${props.text('s')}`}
        dy={-2}
      />
      <circle class="d-ink d-fill" cx={MIDDLE} cy={bottom + r()} r={r()} />
      <circle class="d-accent" cx={MIDDLE} cy={bottom + r()} r={r() * 0.4} />
      <text class="d-text" x={206} y={22}>
        {say.figure.least(props.text('N_min'))}
      </text>
      <text class="d-text d-text-accent" x={206} y={42}>
        {say.figure.now(props.text('N'))}
      </text>
      <text class="d-text" x={206} y={62}>
        {say.figure.most(props.text('N_max'))}
      </text>
      <text class="d-text" x={206} y={82}>
        p₀ = {props.text('p_0')}
      </text>

      <Bush {...props} />
      <text class="d-text" x={WIDTH / 2} y={HEIGHT - 5} text-anchor="middle">
        {say.figure.scale(times())}
      </text>
    </Drawing>
  );
}

/** The eccentric bush enlarged, its angle true: where it stands, where to turn it, and what that moves the wheel. */
function Bush(props: FigureProps<typeof calc>) {
  const turned = () => (props.choice.side === 'clockwise' ? -1 : 1);
  /** Direction on paper of the bush's thick side: fully retracted is straight down, away from the rail. */
  const bearing = (theta: number) => -Math.PI / 2 + turned() * theta;
  const centre = (theta: number) => ({
    x: BOLT.x + THROW * Math.cos(bearing(theta)),
    y: BOLT.y - THROW * Math.sin(bearing(theta)),
  });
  const present = () => props.value('theta_0') ?? Math.PI / 2;
  /** Angle tried out, or the next one to set where the preload is off; empty where there is nothing to turn. */
  const next = (): readonly number[] => {
    const tried = props.value('theta');
    if (tried !== undefined) return [tried];
    const [n, least, most] = (['N', 'N_min', 'N_max'] as const).map((name) => props.value(name));
    if (n === undefined || least === undefined || most === undefined || most <= least) return [];
    if (n >= least && n <= most) return [];
    const step = props.value('phi_s') ?? LEAST_ARC;
    const turn = Math.min(Math.abs(props.value('dtheta') ?? step), step);
    return [Math.min(Math.max(present() + (n < least ? turn : -turn), 0), Math.PI)];
  };
  const arrowEnd = (to: number) => {
    const way = Math.sign(to - present());
    return bearing(present() + way * Math.max(Math.abs(to - present()), LEAST_ARC));
  };
  const now = () => centre(present());
  const retracted = BOLT.y + THROW;

  return (
    <>
      <line class="d-ghost" x1={BOLT.x} y1={BOLT.y - 64} x2={BOLT.x} y2={BOLT.y + 68} />
      <line class="d-ghost" x1={BOLT.x - 60} y1={BOLT.y} x2={BOLT.x + 60} y2={BOLT.y} />
      <text class="d-text" x={4} y={BOLT.y - 8}>
        {say.figure.mostGain}
      </text>
      <circle class="d-ink d-shade" cx={now().x} cy={now().y} r={BUSH} />
      <circle class="d-ink d-fill" cx={BOLT.x} cy={BOLT.y} r={HOLE} />
      <line class="d-accent" x1={BOLT.x} y1={BOLT.y} x2={now().x} y2={now().y} />
      <circle class="d-accent" cx={now().x} cy={now().y} r={2} />
      <Index each={next()}>
        {(to) => (
          <g>
            <circle class="d-ghost" cx={centre(to()).x} cy={centre(to()).y} r={BUSH} />
            <TurnArrow cx={BOLT.x} cy={BOLT.y} r={ARROW} from={bearing(present())} to={arrowEnd(to())} />
          </g>
        )}
      </Index>
      <line class="d-thin" x1={BOLT.x} y1={retracted} x2={206} y2={retracted} />
      <line class="d-thin" x1={now().x} y1={now().y} x2={206} y2={now().y} />
      <Show when={Math.abs(retracted - now().y) > 2}>
        <DimensionLine single x1={200} y1={retracted} x2={200} y2={now().y} text="" />
      </Show>
      <Show when={props.value('u') !== undefined}>
        <text class="d-text d-text-accent" x={210} y={BOLT.y - 28}>
          u = {props.text('u')}
        </text>
      </Show>
      <text class="d-text" x={210} y={BOLT.y - 10}>
        x = {props.text('x')}
      </text>
      <text class="d-text" x={210} y={BOLT.y + 8}>
        {say.figure.gain(props.text('u_1'))}
      </text>
      <text class="d-text" x={210} y={BOLT.y + 26}>
        {say.figure.nowAt(props.text('theta_0'))}
      </text>
      <text class="d-text" x={210} y={BOLT.y - 50}>
        {say.figure.toTheRail}
      </text>
      <text class="d-text" x={210} y={BOLT.y + 52}>
        {say.figure.retracted}
      </text>
    </>
  );
}
