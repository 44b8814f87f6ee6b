import { For, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 250;
const LEFT = 60;
const RIGHT = WIDTH - 60;
const TOP = 18;
const BELT = 205;
const LEVEL = 95;
const PULLEY = 14;
/** How far the gantry reaches past the screws' axes. */
const OVERHANG = 16;
/** Tilt shown at most, so that the gantry stays on the sheet. */
const MOST_DROP = 40;
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** Front view: two screws, the gantry on them, the belt below. Width to scale, tilt exaggerated by a stated factor. */
export default function Figure(props: FigureProps<typeof calc>) {
  const scale = () => (RIGHT - LEFT) / (props.value('S') ?? 0.4);
  const factor = () => {
    const rise = Math.abs(props.value('dh_s') ?? 0) * scale();
    if (rise === 0) return 1;
    return [...STEPS].reverse().find((step) => rise * step <= MOST_DROP) ?? 1;
  };
  const half = () => {
    const drawn = ((props.value('dh_s') ?? 0) * scale() * factor()) / 2;
    return Math.max(-MOST_DROP / 2, Math.min(MOST_DROP / 2, drawn));
  };
  /** Half the difference at the gantry's ends, where it is more than at the screws. */
  const end = () => half() * (1 + (2 * OVERHANG) / (RIGHT - LEFT));
  /** Height on paper of the low screw's side, from which the difference is drawn. */
  const low = () => LEVEL + Math.abs(half());
  const teeth = () => Math.min(Math.max(Math.round(props.value('z') ?? 20), 8), 40);
  const belt = () => props.choice.drive === 'belt';
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <For each={[LEFT, RIGHT]}>
        {(x) => (
          <g>
            <rect class="d-fill" x={x - 5} y={TOP} width={10} height={BELT - TOP} />
            <For each={Array.from({ length: 18 }, (_, i) => TOP + 6 + i * 10)}>
              {(y) => <line class="d-thin" x1={x - 5} y1={y + 4} x2={x + 5} y2={y} />}
            </For>
            <Show when={belt()} fallback={<rect class="d-ink d-shade" x={x - 15} y={BELT} width={30} height={28} />}>
              <circle class="d-ink d-shade" cx={x} cy={BELT} r={PULLEY} />
              <For each={Array.from({ length: teeth() }, (_, i) => (i * 2 * Math.PI) / teeth())}>
                {(angle) => (
                  <line
                    class="d-thin"
                    x1={x + (PULLEY - 3) * Math.cos(angle)}
                    y1={BELT + (PULLEY - 3) * Math.sin(angle)}
                    x2={x + PULLEY * Math.cos(angle)}
                    y2={BELT + PULLEY * Math.sin(angle)}
                  />
                )}
              </For>
            </Show>
          </g>
        )}
      </For>
      <Show when={belt()}>
        <line class="d-ink" x1={LEFT} y1={BELT - PULLEY - 1} x2={RIGHT} y2={BELT - PULLEY - 1} />
        <line class="d-ink" x1={LEFT} y1={BELT + PULLEY + 1} x2={RIGHT} y2={BELT + PULLEY + 1} />
      </Show>
      <line class="d-ghost" x1={LEFT - 30} y1={low()} x2={RIGHT + 30} y2={low()} />
      <polygon
        class="d-ink d-shade"
        points={`${LEFT - OVERHANG},${LEVEL + end() - 8} ${RIGHT + OVERHANG},${LEVEL - end() - 8} ${RIGHT + OVERHANG},${LEVEL - end() + 8} ${LEFT - OVERHANG},${LEVEL + end() + 8}`}
      />
      <Show when={Math.abs(half()) > 1}>
        <DimensionLine
          accent
          x1={half() > 0 ? RIGHT + 26 : LEFT - 26}
          y1={low()}
          x2={half() > 0 ? RIGHT + 26 : LEFT - 26}
          y2={LEVEL - Math.abs(half())}
          text=""
          single
        />
        <text
          class="d-text d-text-accent"
          x={half() > 0 ? WIDTH - 2 : 2}
          y={low() + 18}
          text-anchor={half() > 0 ? 'end' : 'start'}
        >
          {props.text('dh_s')}
        </text>
      </Show>
      <DimensionLine x1={LEFT} y1={160} x2={RIGHT} y2={160} text={`S = ${props.text('S')}`} />
      <text class="d-text" x={WIDTH / 2} y={HEIGHT - 4} text-anchor="middle">
        {say.figure.scale(factor())}
      </text>
    </Drawing>
  );
}
