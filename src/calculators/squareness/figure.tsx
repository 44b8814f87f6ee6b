import { Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 262;
const LEFT = 88;
const BASE = 208;
const MOST_WIDE = 164;
const MOST_HIGH = 150;
const MOST_SHEAR = 34;
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200];

/** Plan of print, movement or frame: sides to scale, skew exaggerated by a stated factor, a true rectangle behind it. */
export default function Figure(props: FigureProps<typeof calc>) {
  const ofFrame = () => props.choice.of === 'frame';
  const byDiagonals = () => props.choice.way === 'diagonals';
  const a = () => (byDiagonals() ? (props.value('A') ?? 0.1) : (props.value('l') ?? 0.1));
  const b = () => (byDiagonals() ? (props.value('B') ?? 0.1) : (props.value('l') ?? 0.1));
  const scale = () => Math.min(MOST_WIDE / a(), MOST_HIGH / b());
  const wide = () => a() * scale();
  const high = () => b() * scale();
  const slant = () => Math.tan(props.value('epsilon') ?? 0);
  /** The frame leans sideways; of the axes the beam runs askew. */
  const span = () => (ofFrame() ? high() : wide());
  const factor = () => {
    const shear = Math.abs(slant()) * span();
    if (shear === 0) return 1;
    return [...STEPS].reverse().find((step) => shear * step <= MOST_SHEAR) ?? 1;
  };
  const shear = () => Math.max(-MOST_SHEAR, Math.min(MOST_SHEAR, slant() * span() * factor()));
  const sx = () => (ofFrame() ? shear() : 0);
  const sy = () => (ofFrame() ? 0 : shear());
  const corner = {
    fl: () => ({ x: LEFT, y: BASE }),
    fr: () => ({ x: LEFT + wide(), y: BASE - sy() }),
    br: () => ({ x: LEFT + wide() + sx(), y: BASE - high() - sy() }),
    bl: () => ({ x: LEFT + sx(), y: BASE - high() }),
  };
  const at = ({ x, y }: { x: number; y: number }) => `${x},${y}`;
  const middle = () => BASE - high() / 2;
  /** Stock along the front side, blade up the left one: it touches at the back where the corner is wide. */
  const square = () => {
    const lean = (shear() * high()) / span();
    const x = LEFT - 5 - Math.max(0, -lean);
    const y = BASE + 5;
    const blade = ofFrame() ? x : x - lean;
    return `${blade},${y - high()} ${x},${y} ${x + 0.6 * wide()},${y - 0.6 * sy()}`;
  };
  const out = () => Math.abs(shear()) > 1;
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <rect class="d-ghost" x={LEFT} y={BASE - high()} width={wide()} height={high()} />
      <polygon
        class="d-ink d-shade"
        points={`${at(corner.fl())} ${at(corner.fr())} ${at(corner.br())} ${at(corner.bl())}`}
      />
      <Show
        when={byDiagonals()}
        fallback={
          <g>
            <polyline class="d-accent" points={square()} />
            <text class="d-text" x={LEFT - 24} y={BASE - 6} text-anchor="end">
              {say.figure.square}
            </text>
          </g>
        }
      >
        <line class="d-thin" x1={corner.fl().x} y1={corner.fl().y} x2={corner.br().x} y2={corner.br().y} />
        <line class="d-thin" x1={corner.bl().x} y1={corner.bl().y} x2={corner.fr().x} y2={corner.fr().y} />
        <text class="d-text" x={LEFT + wide() * 0.7} y={middle() - sy() * 0.7 - high() * 0.26} text-anchor="middle">
          d₁ {props.text('d_1')}
        </text>
        <text class="d-text" x={LEFT + wide() * 0.68} y={middle() - sy() * 0.7 + high() * 0.3} text-anchor="middle">
          d₂ {props.text('d_2')}
        </text>
        <text class="d-text" x={LEFT - 10} y={BASE - high() * 0.2} text-anchor="end">
          {props.text('B')}
        </text>
      </Show>
      <Show when={!ofFrame()}>
        <line
          class="d-accent"
          x1={LEFT - 24}
          y1={middle() + (sy() * 24) / wide()}
          x2={LEFT + wide() + 24}
          y2={middle() - sy() - (sy() * 24) / wide()}
        />
        <circle class="d-fill" cx={LEFT - 24} cy={middle() + (sy() * 24) / wide()} r={5} />
        <circle class="d-fill" cx={LEFT + wide() + 24} cy={middle() - sy() - (sy() * 24) / wide()} r={5} />
        <text class="d-text" x={LEFT - 34} y={middle() - 12} text-anchor="end">
          {say.figure.beam}
        </text>
      </Show>
      <Show when={out()}>
        <Show
          when={ofFrame()}
          fallback={
            <DimensionLine
              accent
              single
              x1={LEFT + wide() + 40}
              y1={middle() - sy() * 1.15}
              x2={LEFT + wide() + 40}
              y2={middle()}
              text={props.text('dy').replace('−', '')}
              dx={4}
              dy={sy() > 0 ? 24 : -24}
            />
          }
        >
          <DimensionLine
            accent
            single
            x1={LEFT + wide() / 2 + sx() + 12}
            y1={BASE - high() - 14}
            x2={LEFT + wide() / 2 + 12}
            y2={BASE - high() - 14}
            text={props.text('dx').replace('−', '')}
            dy={-6}
          />
        </Show>
      </Show>
      <text class="d-text" x={LEFT + wide() / 2} y={BASE + 20 + Math.max(0, -sy()) / 2} text-anchor="middle">
        {say.figure.front}
      </text>
      <text class="d-text" x={WIDTH / 2} y={HEIGHT - 4} text-anchor="middle">
        {say.figure.scale(factor())}
      </text>
    </Drawing>
  );
}
