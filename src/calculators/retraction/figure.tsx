import { For, Index, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 250;
const LEFT = 14;
const RIGHT = WIDTH - 20;
/** The path of the filament, above; the lengths, below. */
const GEAR = { x: 40, y: 40, r: 12 };
const AXIS = 240;
const TIP = 116;
const BAR = { y: 142, height: 16 };
const BAND = BAR.y + BAR.height + 12;
const KEY = 210;
/** Half widths of the melt chamber and of the tip as drawn. */
const CHAMBER = 9;
const LEAST_SHARE = 0.004;

/** Filament from gear to tip, not to scale. */
function FilamentPath(props: FigureProps<typeof calc>) {
  const tube = () => props.choice.drive === 'tube';
  const path = () =>
    tube()
      ? `M${GEAR.x + GEAR.r} ${GEAR.y - 24} V${GEAR.y + 14} C${GEAR.x + GEAR.r} ${TIP + 26} 150 ${TIP + 18} 164 62 S${AXIS} -8 ${AXIS} 52 V${TIP - 18}`
      : `M${AXIS} 4 V${TIP - 18}`;
  const gearX = () => (tube() ? GEAR.x : AXIS - GEAR.r);
  const gearY = () => (tube() ? GEAR.y : 26);
  return (
    <g>
      <Show when={tube()}>
        <path class="d-ghost" transform="translate(-5 3)" d={path()} />
        <path class="d-ghost" transform="translate(5 -3)" d={path()} />
      </Show>
      <path class="d-ink" d={path()} />
      <circle class="d-ink d-shade" cx={gearX()} cy={gearY()} r={GEAR.r} />
      <For each={Array.from({ length: 12 }, (_, i) => (i * Math.PI) / 6)}>
        {(turned) => (
          <line
            class="d-thin"
            x1={gearX() + 8 * Math.cos(turned)}
            y1={gearY() + 8 * Math.sin(turned)}
            x2={gearX() + GEAR.r * Math.cos(turned)}
            y2={gearY() + GEAR.r * Math.sin(turned)}
          />
        )}
      </For>
      <rect class="d-fill" x={AXIS - 22} y={56} width={44} height={TIP - 74} />
      <polygon
        class="d-ink d-shade"
        points={`${AXIS - CHAMBER},60 ${AXIS + CHAMBER},60 ${AXIS + CHAMBER},${TIP - 16} ${AXIS + 2},${TIP - 6} ${AXIS + 2},${TIP} ${AXIS - 2},${TIP} ${AXIS - 2},${TIP - 6} ${AXIS - CHAMBER},${TIP - 16}`}
      />
      <text class="d-text" x={AXIS + 28} y={72}>
        {props.text('dp')}
      </text>
      <text class="d-text" x={AXIS - 8} y={TIP + 2} text-anchor="end">
        {`d = ${props.text('d')}`}
      </text>
      <text class="d-text" x={tube() ? 74 : 20} y={tube() ? 24 : 30}>
        {`L = ${props.text('L')}`}
      </text>
      <Show when={tube()}>
        <text class="d-text" x={74} y={40}>
          {say.figure.bends(props.text('Theta'))}
        </text>
      </Show>
      <text class="d-text" x={tube() ? 74 : 20} y={tube() ? 56 : 46}>
        {say.figure.notToScale}
      </text>
    </g>
  );
}

/** Filament from gear to tip (not to scale), and the stored lengths end to end with the set length against the band (to scale). */
export default function Figure(props: FigureProps<typeof calc>) {
  const tube = () => props.choice.drive === 'tube';
  const parts = () =>
    (
      [
        { name: 'filament', class: 'd-ink d-shade', length: props.value('s_f') ?? 0 },
        { name: 'slack', class: 'd-fill', length: tube() ? (props.value('s_t') ?? 0) : 0 },
        { name: 'melt', class: 'd-ink d-shade', length: props.value('s_m') ?? 0 },
        { name: 'backlash', class: 'd-fill', length: props.value('s_b') ?? 0 },
      ] as const
    ).map((part) => ({ ...part, length: Math.max(part.length, 0) }));
  const most = () => {
    const stored = parts().reduce((sum, part) => sum + part.length, 0);
    return Math.max(stored, props.value('x_set') ?? 0, props.value('x_hi') ?? 0, 1e-4);
  };
  const at = (length: number) => LEFT + (Math.max(length, 0) / most()) * (RIGHT - LEFT);
  const stacked = () => {
    let start = 0;
    return parts().map((part) => {
      const from = start;
      start += part.length;
      return { ...part, from: at(from), to: at(start) };
    });
  };
  const key = () => stacked().filter((part) => tube() || part.name !== 'slack');
  const texts = () => [props.text('s_f'), ...(tube() ? [props.text('s_t')] : []), props.text('s_m'), props.text('s_b')];
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <FilamentPath {...props} />
      <Index each={stacked().filter((part) => part.to - part.from > LEAST_SHARE * (RIGHT - LEFT))}>
        {(part) => (
          <rect class={part().class} x={part().from} y={BAR.y} width={part().to - part().from} height={BAR.height} />
        )}
      </Index>
      <Show when={props.value('x_hi') !== undefined}>
        <DimensionLine
          x1={at(props.value('x_lo') ?? 0)}
          y1={BAND}
          x2={at(props.value('x_hi') ?? 0)}
          y2={BAND}
          text=""
        />
        <text class="d-text" x={LEFT} y={BAND + 16}>
          {say.figure.stored(props.text('x_r'), props.text('x_hi'))}
        </text>
      </Show>
      <Show when={props.value('x_set') !== undefined}>
        <line
          class="d-accent"
          x1={at(props.value('x_set') ?? 0)}
          y1={BAR.y - 6}
          x2={at(props.value('x_set') ?? 0)}
          y2={BAND + 6}
        />
        <text
          class="d-text d-text-accent"
          x={at(props.value('x_set') ?? 0)}
          y={BAR.y - 9}
          text-anchor={at(props.value('x_set') ?? 0) > WIDTH / 2 ? 'end' : 'start'}
        >
          {say.figure.set(props.text('x_set'))}
        </text>
      </Show>
      <Index each={key()}>
        {(part, i) => (
          <g transform={`translate(${LEFT + (i % 2) * 160} ${KEY + Math.floor(i / 2) * 17})`}>
            <text class="d-text" x={0} y={0}>
              {`${i + 1} ${say.figure.parts[part().name]} ${texts()[i] ?? ''}`}
            </text>
          </g>
        )}
      </Index>
      <text class="d-text" x={WIDTH - 6} y={HEIGHT - 5} text-anchor="end">
        {say.figure.lengths(key().length)}
      </text>
    </Drawing>
  );
}
