import { Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';
import { partOf } from './judging';
import { advisedWay, askedOf, judgeWays, type Asked, type Span, type WayId } from './model';

const WIDTH = 340;
const HEIGHT = 250;
const TOP = 92;
const AXIS = 158;
/** The drawn half of the part on the left ends at the nearest face where there is room, else at a break. */
const ROOM = { side: 148, right: 74, depth: 118 };

/** Section through the hole, to scale: the screw, the thread that is left, the wall; the way to mend in accent. */
export default function Figure(props: FigureProps<typeof calc>) {
  const d = () => props.value('d') ?? 0.003;
  const reach = () => props.value('L_r') ?? 2 * d();
  const left = () => Math.min(props.value('L_e') ?? 0, reach());
  const depth = () => props.value('L_h') ?? 2 * reach();
  const wall = () => props.value('w') ?? 2 * d();
  const through = () => props.choice.hole !== 'blind';

  /** Undefined while something is lacking: then no way is drawn. */
  const way = (): WayId | undefined => {
    const picked = props.choice.way;
    if (picked !== 'advised') return picked;
    const [have, want] = [props.known('s_e'), props.value('s_min')];
    if (!have || want === undefined || have.low >= want) return undefined;
    const part = partOf(props.choice.hole, props.choice.part);
    if (askedOf(part).some((symbol) => props.value(symbol) === undefined)) return undefined;
    const read = (symbol: Asked): Span => {
      const value = props.value(symbol) ?? 0;
      return props.known(symbol) ?? { value, low: value, high: value };
    };
    return advisedWay(judgeWays(read, part), read);
  };
  const SIZES = {
    longer: 'd',
    insert: 'D_i',
    next: 'd_n',
    bolt: 'D_c',
    heatset: 'D_h',
    nut: 's_w',
    replace: 'd',
  } as const satisfies Readonly<Record<WayId, string>>;
  const sizeOf = (id: WayId | undefined) => (id === undefined ? 'd' : SIZES[id]);
  const outside = () => props.value(sizeOf(way())) ?? d();
  const bore = () => {
    const id = way();
    return id === undefined ? '' : say.figure.mended[id](props.text(sizeOf(id)));
  };
  const mended = () => {
    const id = way();
    if (id === 'insert') return props.value('L_i') ?? 0;
    if (id === 'bolt') return depth();
    if (id === 'heatset') return props.value('L_s') ?? 0;
    if (id === 'nut') return props.value('h_k') ?? 0;
    return id === 'longer' ? reach() + (props.value('L_b') ?? 0) : reach();
  };

  /** A nut lies under a floor as thick as the screw. */
  const below = () => (way() === 'nut' ? d() : 0);

  const scale = () =>
    Math.min(ROOM.depth / Math.max(depth(), reach(), below() + mended()), 46 / Math.max(d(), outside()));
  const broken = () => (wall() + d() / 2) * scale() > ROOM.side;
  const face = () => AXIS - Math.min((wall() + d() / 2) * scale(), ROOM.side);
  const right = () => AXIS + ROOM.right;
  const half = (diameter: number) => (diameter * scale()) / 2;
  const down = (length: number) => TOP + length * scale();
  const bottom = () => (through() ? down(depth()) : Math.min(down(depth()) + 22, HEIGHT - 26));
  const root = () => half(d() - 1.08 * (props.value('P') ?? 0));
  const wallLine = () => Math.min(down(depth()) - 8, TOP + 84);
  const wide = () => AXIS - half(d()) - face() > 84;

  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <Part face={face()} right={right()} bottom={bottom()} broken={broken()} through={through()} />
      {/* The hole, its sound thread thick, then the screw in it. */}
      <rect class="d-fill" x={AXIS - half(d())} y={TOP} width={2 * half(d())} height={down(depth()) - TOP} />
      <Show when={left() > 0}>
        <SoundThread outer={half(d())} root={root()} y={down(reach() - left())} height={left() * scale()} />
      </Show>
      <rect class="d-ink" x={AXIS - root()} y={TOP} width={2 * root()} height={reach() * scale()} />
      <path
        class="d-ink"
        d={`M${AXIS - half(1.8 * d())} ${TOP - 12} v${-half(1.6 * d())} h${half(3.6 * d())} v${half(1.6 * d())} z`}
      />
      <line class="d-ghost" x1={AXIS} y1={34} x2={AXIS} y2={HEIGHT - 18} />
      <Show when={way() !== undefined}>
        <rect
          class="d-accent"
          x={AXIS - half(outside())}
          y={down(below())}
          width={2 * half(outside())}
          height={mended() * scale()}
        />
      </Show>
      <Show when={way() === 'bolt'}>
        <rect
          class="d-accent"
          x={AXIS - half(1.8 * d())}
          y={bottom()}
          width={half(3.6 * d())}
          height={half(1.6 * d())}
        />
      </Show>
      <DimensionLine x1={face()} y1={wallLine()} x2={AXIS - half(d())} y2={wallLine()} text="" />
      <text
        class="d-text"
        x={wide() ? (face() + AXIS - half(d())) / 2 : face() - 4}
        y={wide() ? wallLine() - 5 : wallLine() + 4}
        text-anchor={wide() ? 'middle' : 'end'}
      >
        {say.figure.wall(props.text('w'))}
      </text>
      <DimensionLine
        x1={right() + 10}
        y1={TOP}
        x2={right() + 10}
        y2={down(reach())}
        text={say.figure.reach(props.text('L_r'))}
        dx={5}
        dy={4}
        anchor="start"
      />
      <text class="d-text" x={6} y={16}>
        {say.figure.hole(props.choice.size, props.text('L_e'), props.text('L_h'))}
      </text>
      <text class="d-text d-text-accent" x={6} y={33}>
        {bore()}
      </text>
      <text class="d-text" x={WIDTH / 2} y={HEIGHT - 4} text-anchor="middle">
        {broken() ? say.figure.toScaleButWall : say.figure.toScale}
      </text>
    </Drawing>
  );
}

/** The part cut open, without its hole: broken off on the right, and on the left where the nearest face has no room. */
function Part(props: { face: number; right: number; bottom: number; broken: boolean; through: boolean }) {
  const zigzag = (x: number, flip: number) => {
    const [y0, y1] = [TOP, props.bottom];
    const middle = (y0 + y1) / 2;
    return `M${x} ${y0} V${middle - 8} l${4 * flip} 4 l${-8 * flip} 8 l${4 * flip} 4 V${y1}`;
  };
  return (
    <>
      <rect class="d-shade" x={props.face} y={TOP} width={props.right - props.face} height={props.bottom - TOP} />
      <path
        class={props.broken ? 'd-thin' : 'd-ink'}
        d={props.broken ? zigzag(props.face, 1) : `M${props.face} ${TOP} V${props.bottom}`}
      />
      <path class="d-thin" d={zigzag(props.right, -1)} />
      <line class="d-ink" x1={props.face} y1={TOP} x2={props.right} y2={TOP} />
      <Show when={props.through}>
        <line class="d-ink" x1={props.face} y1={props.bottom} x2={props.right} y2={props.bottom} />
      </Show>
    </>
  );
}

/** The thread that still holds, on both sides from its root to the outside. */
function SoundThread(props: { outer: number; root: number; y: number; height: number }) {
  return (
    <>
      <rect class="d-shade" x={AXIS - props.outer} y={props.y} width={props.outer - props.root} height={props.height} />
      <rect class="d-shade" x={AXIS + props.root} y={props.y} width={props.outer - props.root} height={props.height} />
    </>
  );
}
