import { For, Show } from 'solid-js';
import { expanded } from '../../formula/outcome';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 240;
const BED = 206;
const TOP = 30;
const PART = { x: 40, width: 84 };
const BARS = { x: 232, width: 96 };
/** A gap lower than this has no room for arrow heads. */
const ROOM = 18;

/** The part to scale: what is sound, what is starved, the gap up to the nozzle; beside it what each way out costs. */
export default function Figure(props: FigureProps<typeof calc>) {
  const whole = () => Math.max(props.value('H_t') ?? 0.05, 1e-4);
  const stopped = () => Math.min(props.value('Z_s') ?? whole() * 0.7, whole());
  const sound = () => Math.min(Math.max(props.value('Z_g') ?? stopped(), 0), stopped());
  const band = () => Math.min(Math.max(props.value('z_b') ?? 0, 0), stopped() - sound());
  const doubt = () => {
    const known = props.known('Z_g');
    return known ? expanded(known) : 0;
  };
  const scale = () => (BED - TOP) / whole();
  const y = (z: number) => BED - z * scale();
  const clamp = (z: number) => Math.min(Math.max(z, 0), whole());
  const strings = () => [0.15, 0.4, 0.65, 0.9].map((share) => PART.x + share * PART.width);
  const bars = () => {
    const off = props.choice.stands === 'off';
    const all = [
      off ? { name: say.figure.notPossible, cost: undefined } : { name: say.figure.resume, cost: props.value('C_r') },
      { name: say.figure.glue, cost: props.value('C_g') },
      { name: say.figure.anew, cost: props.value('C_n') },
    ];
    const most = Math.max(...all.map(({ cost }) => cost ?? 0), 1e-9);
    return all.map((one, i) => ({ ...one, y: 108 + i * 40, width: ((one.cost ?? 0) / most) * BARS.width }));
  };
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <rect class="d-ink d-shade" x={12} y={BED} width={150} height={9} />
      <rect class="d-ghost" x={PART.x} y={y(whole())} width={PART.width} height={BED - y(whole())} />
      <rect class="d-ink d-fill" x={PART.x} y={y(sound())} width={PART.width} height={BED - y(sound())} />
      <Show when={band() > 0}>
        <For each={strings()}>
          {(x) => <line class="d-thin" x1={x} y1={y(sound())} x2={x + 4} y2={y(sound() + band())} />}
        </For>
      </Show>
      <Show when={doubt() > 0}>
        <rect
          class="d-accent d-shade"
          x={PART.x - 6}
          y={y(clamp(sound() + doubt()))}
          width={PART.width + 12}
          height={Math.max(y(clamp(sound() - doubt())) - y(clamp(sound() + doubt())), 0)}
        />
      </Show>
      <line class="d-accent" x1={PART.x - 6} y1={y(sound())} x2={PART.x + PART.width + 6} y2={y(sound())} />
      <polygon
        class="d-ink d-shade"
        points={`${PART.x + 22},${y(stopped()) - 16} ${PART.x + 48},${y(stopped()) - 16} ${PART.x + 39},${y(stopped())} ${PART.x + 31},${y(stopped())}`}
      />
      <DimensionLine
        x1={PART.x - 16}
        y1={BED}
        x2={PART.x - 16}
        y2={y(sound())}
        text={props.text('Z_g')}
        dx={22}
        dy={4}
        anchor="start"
      />
      <Show when={y(sound()) - y(stopped()) > ROOM}>
        <DimensionLine
          accent
          x1={PART.x + PART.width + 12}
          y1={y(sound())}
          x2={PART.x + PART.width + 12}
          y2={y(stopped())}
          text=""
        />
      </Show>
      <text
        class="d-text d-text-accent"
        x={PART.x + PART.width + 20}
        y={(y(sound()) + y(stopped())) / 2 + 4}
        text-anchor="start"
      >
        {props.text('z_l')}
      </text>
      <text class="d-text d-text-accent" x={PART.x + PART.width / 2} y={18} text-anchor="middle">
        {say.figure.lost(props.text('n_l'))}
      </text>
      <text class="d-text" x={BARS.x} y={84}>
        {say.figure.cost}
      </text>
      <For each={bars()}>
        {(bar) => (
          <g>
            <text class="d-text" x={BARS.x} y={bar.y - 4}>
              {bar.name}
            </text>
            <Show when={bar.width > 0}>
              <rect class="d-ink d-shade" x={BARS.x} y={bar.y} width={bar.width} height={12} />
            </Show>
          </g>
        )}
      </For>
    </Drawing>
  );
}
