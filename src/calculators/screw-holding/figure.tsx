import { For, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 252;
/** The screw upright at the left, between its ends. */
const SCREW = { x: 52, top: 30, bottom: 150 };
/** One turn of the thread, laid flat. */
const SLOPE = { left: 150, right: 322, base: 136, tallest: 92 };
const SCALE = { left: 16, right: WIDTH - 16, y: 214 };

/** The screw with its load; one turn of its thread laid flat at its true angle; the margin on a scale. */
export default function Figure(props: FigureProps<typeof calc>) {
  const plain = () => props.choice.screw !== 'ball';
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <Screw {...props} />
      <Show
        when={plain()}
        fallback={
          <text class="d-text" x={SLOPE.left + 4} y={90}>
            {say.figure.ballsRoll(props.text('eta_b'))}
          </text>
        }
      >
        <Slope {...props} />
      </Show>

      <Margin {...props} />
    </Drawing>
  );
}

/** The screw to scale, upright on its motor, with the nut and its load. */
function Screw(props: FigureProps<typeof calc>) {
  const scale = () => (SCREW.bottom - SCREW.top) / (props.value('L') ?? 0.4);
  const core = () => Math.min(Math.max(((props.value('d_3') ?? 0.0055) * scale()) / 2, 0.6), 14);
  const outer = () => Math.min(Math.max(((props.value('d') ?? 0.008) * scale()) / 2, core() + 1.2), 18);
  /** At most sixteen threads are drawn: finer ones would close up. */
  const threads = () => {
    const lead = (props.value('P_h') ?? 0.008) * scale();
    const step = Math.max(lead, (SCREW.bottom - SCREW.top) / 16);
    return Array.from({ length: Math.floor((SCREW.bottom - SCREW.top) / step) }, (_, i) => SCREW.bottom - i * step);
  };
  const nut = (SCREW.top + SCREW.bottom) / 2;

  return (
    <>
      <rect
        class="d-ink d-fill"
        x={SCREW.x - core()}
        y={SCREW.top}
        width={2 * core()}
        height={SCREW.bottom - SCREW.top}
      />
      <For each={threads()}>
        {(y) => <line class="d-thin" x1={SCREW.x - outer()} y1={y} x2={SCREW.x + outer()} y2={y - 3} />}
      </For>
      <rect class="d-ink d-shade" x={SCREW.x - 14} y={SCREW.bottom} width={28} height={22} />
      <rect class="d-ink d-shade" x={SCREW.x - 20} y={nut - 7} width={40} height={14} />
      <line class="d-ink" x1={SCREW.x + 20} y1={nut} x2={SCREW.x + 56} y2={nut} />
      <DimensionLine accent single x1={SCREW.x + 56} y1={nut} x2={SCREW.x + 56} y2={nut + 36} text="" />
      <text class="d-text d-text-accent" x={SCREW.x + 56} y={nut + 50} text-anchor="middle">
        F = {props.text('F')}
      </text>
      <DimensionLine x1={16} y1={SCREW.top} x2={16} y2={SCREW.bottom} text="" />
      <text class="d-text" x={6} y={SCREW.top - 12}>
        L = {props.text('L')}
      </text>
      <text class="d-text" x={SCREW.x + 8} y={SCREW.bottom + 36} text-anchor="middle">
        {say.figure.toScale}
      </text>
    </>
  );
}

/** One turn of the thread laid flat at its true angle, and in accent the steepest that friction holds. */
function Slope(props: FigureProps<typeof calc>) {
  const angle = () => props.value('lambda');
  const incline = () => {
    const lambda = angle();
    if (lambda === undefined) return undefined;
    const run = Math.min(SLOPE.right - SLOPE.left, SLOPE.tallest / Math.tan(lambda));
    return { run, rise: run * Math.tan(lambda), lambda };
  };
  /** The steepest that friction holds, from the same foot. */
  const held = () => {
    const [mu, alpha] = [props.value('mu'), props.value('alpha')];
    if (mu === undefined || alpha === undefined) return undefined;
    const steepest = Math.atan(mu / Math.cos(alpha));
    const run = Math.min(SLOPE.right - SLOPE.left, SLOPE.tallest / Math.tan(steepest));
    return { x: SLOPE.left + run, y: SLOPE.base - run * Math.tan(steepest) };
  };

  return (
    <>
      <Show when={incline()}>
        {(slope) => (
          <g>
            <polygon
              class="d-ink d-shade"
              points={`${SLOPE.left},${SLOPE.base} ${SLOPE.left + slope().run},${SLOPE.base} ${SLOPE.left + slope().run},${SLOPE.base - slope().rise}`}
            />
            <g
              transform={`translate(${SLOPE.left + slope().run * 0.6} ${SLOPE.base - slope().rise * 0.6}) rotate(${(-slope().lambda * 180) / Math.PI})`}
            >
              <rect class="d-ink d-fill" x={-14} y={-18} width={28} height={18} />
              <Show when={(props.value('m') ?? 1) < 1}>
                <DimensionLine accent single x1={-16} y1={-9} x2={-40} y2={-9} text="" />
              </Show>
            </g>
          </g>
        )}
      </Show>
      <Show when={held()}>
        {(end) => <line class="d-accent" x1={SLOPE.left} y1={SLOPE.base} x2={end().x} y2={end().y} />}
      </Show>
      <text class="d-text" x={SLOPE.left} y={18}>
        {say.figure.laidFlat(props.text('lambda'))}
      </text>
      <text class="d-text d-text-accent" x={SLOPE.left} y={35}>
        {say.figure.slope}
      </text>
      <text class="d-text" x={SLOPE.left} y={SLOPE.base + 17}>
        {say.figure.lead(props.text('P_h'), props.text('d_2'))}
      </text>
    </>
  );
}

/** The margin with its uncertainty on a scale from zero, with the margin wanted and that of the screw alone. */
function Margin(props: FigureProps<typeof calc>) {
  const most = () => {
    const values = (['m', 'm_lim'] as const).map((name) => props.value(name) ?? 0);
    return 1.25 * Math.max(1, ...values);
  };
  const at = (margin: number) => SCALE.left + (SCALE.right - SCALE.left) * Math.min(Math.max(margin / most(), 0), 1);
  const band = () => {
    const known = props.known('m');
    return known ? { low: at(known.low), high: at(known.high), at: at(known.value) } : undefined;
  };
  const thread = () => props.value('m_t');
  const clear = (x: number) => Math.min(Math.max(x, SCALE.left + 34), SCALE.right - 40);

  return (
    <>
      <line class="d-thin" x1={SCALE.left} y1={SCALE.y} x2={SCALE.right} y2={SCALE.y} />
      <Show when={band()}>
        {(found) => (
          <g>
            <rect
              class="d-ink d-shade"
              x={found().low}
              y={SCALE.y - 6}
              width={Math.max(found().high - found().low, 1)}
              height={12}
            />
            <line class="d-accent" x1={found().at} y1={SCALE.y - 10} x2={found().at} y2={SCALE.y + 10} />
            <text class="d-text d-text-accent" x={clear(found().at)} y={SCALE.y - 14} text-anchor="middle">
              {say.figure.margin(props.text('m'))}
            </text>
          </g>
        )}
      </Show>
      <For each={[0, 1]}>
        {(mark) => (
          <g>
            <line class="d-thin" x1={at(mark)} y1={SCALE.y - 5} x2={at(mark)} y2={SCALE.y + 5} />
            <text class="d-text" x={at(mark)} y={SCALE.y + 20} text-anchor="middle">
              {mark}
            </text>
          </g>
        )}
      </For>
      <line
        class="d-ink"
        x1={at(props.value('m_lim') ?? 1.5)}
        y1={SCALE.y - 9}
        x2={at(props.value('m_lim') ?? 1.5)}
        y2={SCALE.y + 9}
      />
      <text class="d-text" x={Math.min(at(props.value('m_lim') ?? 1.5) + 4, SCALE.right - 70)} y={SCALE.y + 20}>
        {say.figure.wanted(props.text('m_lim'))}
      </text>
      <Show when={thread() !== undefined}>
        <line class="d-ghost" x1={at(thread() ?? 0)} y1={SCALE.y - 8} x2={at(thread() ?? 0)} y2={SCALE.y + 24} />
        <text
          class="d-text"
          x={Math.max(clear(at(thread() ?? 0)), SCALE.left + 60)}
          y={SCALE.y + 35}
          text-anchor="middle"
        >
          {say.figure.alone(props.text('m_t'))}
        </text>
      </Show>
    </>
  );
}
