import { For, Index, Match, Show, Switch } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 250;
const LEFT = 40;
const RIGHT = WIDTH - 40;
const MIDDLE = WIDTH / 2;
const REST = 140;
/** The mounted screw: its axis, from the coupling to the top. */
const AXIS = 130;
const TOP = 40;
const FOOT = 190;
/** Bow shown at most, in units of the drawing. */
const MOST = 36;
const FACTORS = [1, 2, 5].flatMap((step) => [1, 10, 100, 1000].map((ten) => step * ten)).sort((a, b) => a - b);

type Props = FigureProps<typeof calc>;
interface Bar {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  /** Offset of the middle (of the end, for a free top): upwards on a lying screw, to the right on a standing one. */
  bow: number;
  half: number;
  free?: boolean;
  ghost?: boolean;
}

/** With the bow as drawn and half the screw's thickness, in units of the drawing. */
type Laid = Props & { readonly drawn: number; readonly half: number };

const SHARES = Array.from({ length: 41 }, (_, i) => i / 40);

/** The screw as a band with its thread as slanting strokes; as a ghost, its axis only. */
function Screw(props: Bar) {
  const upright = () => props.x1 === props.x2;
  const at = (share: number, aside: number) => {
    const bow = props.bow * (props.free ? share * share : 4 * share * (1 - share)) + aside;
    const [x, y] = [props.x1 + share * (props.x2 - props.x1), props.y1 + share * (props.y2 - props.y1)];
    return upright() ? { x: x + bow, y } : { x, y: y - bow };
  };
  const edge = (aside: number) =>
    SHARES.map((share) => {
      const point = at(share, aside);
      return `${point.x},${point.y}`;
    });
  const strokes = () =>
    SHARES.slice(1).map((share, i) => ({ from: at(SHARES[i] ?? 0, -props.half), to: at(share, props.half) }));
  return (
    <Show when={!props.ghost} fallback={<polyline class="d-ghost" points={edge(0).join(' ')} />}>
      <polygon class="d-ink d-fill" points={[...edge(-props.half), ...edge(props.half).reverse()].join(' ')} />
      <Index each={strokes()}>
        {(s) => <line class="d-thin" x1={s().from.x} y1={s().from.y} x2={s().to.x} y2={s().to.y} />}
      </Index>
    </Show>
  );
}

/** Dial, stem and foot; the foot touches at (x, y), the dial sits above it or to its right. */
function Dial(props: { x: number; y: number; sideways?: boolean }) {
  return (
    <g transform={`translate(${props.x} ${props.y})${props.sideways ? ' rotate(90)' : ''}`}>
      <line class="d-ink" x1={-7} y1={0} x2={7} y2={0} />
      <line class="d-ink" x1={0} y1={0} x2={0} y2={-22} />
      <circle class="d-ink d-fill" cx={0} cy={-38} r={16} />
      <line class="d-accent" x1={0} y1={-38} x2={8} y2={-48} />
      <circle class="d-accent" cx={0} cy={-38} r={1.5} />
    </g>
  );
}

/** Side view of the screw on its supports, span to scale; the bow is exaggerated by a factor the drawing states. */
export default function Figure(props: Props) {
  const method = () => props.choice.method;
  const span = () => (method() === 'mounted' ? props.value('L') : props.value('c')) ?? 0.3;
  const scale = () => (method() === 'mounted' ? FOOT - TOP : RIGHT - LEFT) / span();
  const offset = () => Math.abs((method() === 'mounted' ? props.value('y_0') : props.value('s')) ?? 0) * scale();
  const factor = () => (offset() === 0 ? 1 : ([...FACTORS].reverse().find((step) => offset() * step <= MOST) ?? 1));
  const drawn = () => Math.min(MOST, offset() * factor());
  /** On a flat the weight holds part of the bow down: what stands up is the gap. */
  const standing = () => {
    if (props.choice.touch === 'none') return 0;
    return Math.min(drawn(), (props.value('g') ?? 0) * scale() * factor());
  };
  const half = () => Math.min(8, Math.max(3, ((props.value('d_3') ?? 0.0055) * scale()) / 2));
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <Switch>
        <Match when={method() === 'flat'}>
          <OnFlat {...props} drawn={drawn()} half={half()} standing={standing()} />
        </Match>
        <Match when={method() === 'blocks'}>
          <OnBlocks {...props} drawn={drawn()} half={half()} />
        </Match>
        <Match when={method() === 'mounted'}>
          <Mounted {...props} drawn={drawn()} half={half()} />
        </Match>
      </Switch>
      <text class="d-text" x={MIDDLE} y={HEIGHT - (method() === 'mounted' ? 5 : 18)} text-anchor="middle">
        {factor() > 1 ? say.figure.enlarged(factor()) : say.figure.toScale}
      </text>
    </Drawing>
  );
}

/** Lying on a flat: what the weight leaves standing, and the leaf of the gauge that goes under. */
function OnFlat(props: Laid & { readonly standing: number }) {
  return (
    <>
      <rect class="d-ink d-shade" x={10} y={REST} width={WIDTH - 20} height={22} />
      <text class="d-text" x={18} y={REST + 15}>
        {say.figure.flat}{' '}
      </text>
      <Show when={props.standing > 1}>
        <rect class="d-accent d-shade" x={MIDDLE - 22} y={REST - props.standing} width={44} height={props.standing} />
      </Show>
      <Screw
        x1={LEFT}
        y1={REST - props.half}
        x2={RIGHT}
        y2={REST - props.half}
        bow={props.standing}
        half={props.half}
      />
      <Screw x1={LEFT} y1={REST} x2={RIGHT} y2={REST} bow={props.drawn} half={props.half} ghost />
      <Show when={props.drawn > 8}>
        <DimensionLine
          x1={RIGHT - 60}
          y1={REST}
          x2={RIGHT - 60}
          y2={REST - props.drawn}
          text="s"
          dx={6}
          anchor="start"
        />
        <line class="d-thin" x1={MIDDLE} y1={REST - props.drawn} x2={RIGHT - 54} y2={REST - props.drawn} />
      </Show>
      <text class="d-text d-text-accent" x={MIDDLE} y={74} text-anchor="middle">
        {props.choice.touch === 'none' ? say.figure.noFeeler : say.figure.feeler(props.text('g'))}
      </text>
      <text class="d-text" x={MIDDLE} y={28} text-anchor="middle">
        {say.figure.unweighted(props.text('s'))}
      </text>
      <DimensionLine x1={LEFT} y1={195} x2={RIGHT} y2={195} text={`c = ${props.text('c')}`} />
    </>
  );
}

/** Turned on two blocks under a dial: the bow up and down is the runout. */
function OnBlocks(props: Laid) {
  return (
    <>
      <Screw
        x1={LEFT}
        y1={REST - props.half}
        x2={RIGHT}
        y2={REST - props.half}
        bow={-props.drawn}
        half={props.half}
        ghost
      />
      <Screw x1={LEFT} y1={REST - props.half} x2={RIGHT} y2={REST - props.half} bow={props.drawn} half={props.half} />
      <For each={[LEFT, RIGHT]}>
        {(x) => <rect class="d-ink d-shade" x={x - 14} y={REST - props.half} width={28} height={44} />}
      </For>
      <line class="d-ghost" x1={LEFT} y1={REST - props.half} x2={RIGHT} y2={REST - props.half} />
      <Dial x={MIDDLE} y={REST - 2 * props.half - props.drawn} />
      <Show when={props.drawn > 8}>
        <DimensionLine
          x1={MIDDLE - 24}
          y1={REST - props.half}
          x2={MIDDLE - 24}
          y2={REST - props.half - props.drawn}
          text="s"
          dx={-6}
          dy={6}
          anchor="end"
        />
        <DimensionLine
          accent
          x1={MIDDLE + 24}
          y1={REST - props.half + props.drawn}
          x2={MIDDLE + 24}
          y2={REST - props.half - props.drawn}
          text="TIR"
          dx={6}
          dy={10}
          anchor="start"
        />
      </Show>
      <text class="d-text d-text-accent" x={MIDDLE + 24} y={34}>
        {say.figure.tir(props.text('TIR'))}
      </text>
      <text class="d-text" x={MIDDLE - 24} y={34} text-anchor="end">
        {say.figure.bow(props.text('s'))}
      </text>
      <DimensionLine x1={LEFT} y1={206} x2={RIGHT} y2={206} text={`c = ${props.text('c')}`} />
    </>
  );
}

/** Standing in its coupling, the dial at the middle or, with a free top, at the end. */
function Mounted(props: Laid) {
  const free = () => props.choice.ends === 'free';
  const readAt = () => (free() ? 1 : 0.5);
  const readY = () => FOOT - readAt() * (FOOT - TOP);
  return (
    <>
      <line class="d-ghost" x1={AXIS} y1={TOP - 14} x2={AXIS} y2={FOOT + 10} />
      <Screw x1={AXIS} y1={FOOT} x2={AXIS} y2={TOP} free={free()} bow={-props.drawn} half={props.half} ghost />
      <Screw x1={AXIS} y1={FOOT} x2={AXIS} y2={TOP} free={free()} bow={props.drawn} half={props.half} />
      <rect class="d-ink d-shade" x={AXIS - 22} y={FOOT + 18} width={44} height={22} />
      <rect class="d-ink d-fill" x={AXIS - 12} y={FOOT - 6} width={24} height={24} />
      <text class="d-text" x={AXIS + 28} y={FOOT + 10}>
        {say.figure.coupling}{' '}
      </text>
      <Show when={!free()}>
        <rect class="d-ink d-shade" x={AXIS - 24} y={TOP - 10} width={14} height={14} />
        <rect class="d-ink d-shade" x={AXIS + 10} y={TOP - 10} width={14} height={14} />
      </Show>
      <rect class="d-ink d-fill" x={AXIS - 30} y={FOOT - 34} width={60} height={12} />
      <text class="d-text" x={AXIS + 36} y={FOOT - 24}>
        {say.figure.nut}{' '}
      </text>
      <Dial sideways x={AXIS + props.drawn + props.half} y={readY()} />
      <text class="d-text d-text-accent" x={WIDTH - 4} y={readY() + (free() ? 34 : -24)} text-anchor="end">
        {say.figure.tir(props.text('TIR'))}
      </text>
      <DimensionLine
        x1={46}
        y1={TOP}
        x2={46}
        y2={FOOT}
        text={`L = ${props.text('L')}`}
        dx={-2}
        dy={-88}
        anchor="middle"
      />
    </>
  );
}
