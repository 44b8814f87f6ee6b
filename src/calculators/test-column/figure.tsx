import { Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 250;
const BED = 206;
const TOP = 44;
const MIDDLE = 128;
/** Sway drawn at most, in units of the drawing. */
const MOST = 54;
const FACTORS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const SHARES = Array.from({ length: 31 }, (_, i) => i / 30);
const GAUGE = { x: 236, width: 92 };

/** Bend of a clamped bar under a push at its free end, tip 1 (Roark, table 8.1, case 1a). */
const bend = (share: number): number => (share * share * (3 - share)) / 2;

/** A result against its limit as a bar: full at the limit. */
function Share(props: { y: number; name: string; share: number | undefined }) {
  const filled = () => Math.min(1.25, Math.max(0, props.share ?? 0)) * (GAUGE.width / 1.25);
  const limit = GAUGE.x + GAUGE.width / 1.25;
  return (
    <g>
      <text class="d-text" x={GAUGE.x} y={props.y - 5}>
        {props.name}
      </text>
      <rect class="d-thin" x={GAUGE.x} y={props.y} width={GAUGE.width} height={10} />
      <Show when={filled() > 0}>
        <rect class="d-ink d-shade" x={GAUGE.x} y={props.y} width={filled()} height={10} />
      </Show>
      <line class="d-accent" x1={limit} y1={props.y - 3} x2={limit} y2={props.y + 13} />
    </g>
  );
}

/** The column to scale on its foot, its sway exaggerated by a factor the drawing states; beside it what is used of each limit. */
export default function Figure(props: FigureProps<typeof calc>) {
  const height = () => props.value('L') ?? 0.1;
  const width = () => props.value('b') ?? 0.01;
  const rim = () => props.value('r') ?? 0;
  const scale = () => Math.min((BED - TOP) / height(), 150 / (width() + 2 * rim()));
  const half = () => Math.max(1.5, (width() * scale()) / 2);
  const top = () => BED - height() * scale();
  const sway = () => (props.value('x') ?? 0) * scale();
  const factor = () => (sway() === 0 ? 1 : ([...FACTORS].reverse().find((f) => f * sway() <= MOST) ?? 1));
  const drawn = () => Math.min(MOST, sway() * factor());
  const side = (aside: number, bow: number) =>
    SHARES.map((share) => `${MIDDLE + aside + bow * bend(share)},${BED - share * (BED - top())}`);
  const outline = (bow: number) => [...side(-half(), bow), ...side(half(), bow).reverse()].join(' ');
  const wall = () => Math.min(half(), (props.value('t_w') ?? 0) * scale());
  const ratio = (of: 'x' | 'r_min' | 'sigma', to: 'x_lim' | 'r_f' | 'sigma_h') => {
    const [value, limit] = [props.value(of), props.value(to)];
    return value === undefined || limit === undefined || limit <= 0 ? undefined : value / limit;
  };
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <rect class="d-ink d-shade" x={20} y={BED} width={200} height={9} />
      <Show when={rim() > 0}>
        <rect
          class="d-ink d-fill"
          x={MIDDLE - half() - rim() * scale()}
          y={BED - (props.choice.foot === 'pad' ? Math.max(4, 0.002 * scale()) : 2)}
          width={2 * (half() + rim() * scale())}
          height={props.choice.foot === 'pad' ? Math.max(4, 0.002 * scale()) : 2}
        />
      </Show>
      <polygon class="d-ghost" points={outline(0)} />
      <polygon class="d-ink d-fill" points={outline(drawn())} />
      <Show when={props.choice.core === 'shell' && wall() < half()}>
        <polyline class="d-thin" points={side(wall() - half(), drawn()).join(' ')} />
        <polyline class="d-thin" points={side(half() - wall(), drawn()).join(' ')} />
      </Show>
      <DimensionLine
        accent
        single
        x1={MIDDLE - half() - 44}
        y1={top() + 4}
        x2={MIDDLE - half() - 4}
        y2={top() + 4}
        text={props.text('F')}
        dx={-12}
      />
      <DimensionLine x1={30} y1={BED} x2={30} y2={top()} text={props.text('L')} dx={6} dy={20} anchor="start" />
      <DimensionLine
        x1={MIDDLE - half()}
        y1={BED + 20}
        x2={MIDDLE + half()}
        y2={BED + 20}
        text={props.text('b')}
        dy={16}
      />
      <text class="d-text d-text-accent" x={MIDDLE + 4} y={22} text-anchor="middle">
        {say.figure.sways(props.text('x'), factor())}
      </text>
      <text class="d-text" x={GAUGE.x} y={58}>
        {say.figure.usedOfLimit}
      </text>
      <Share y={84} name={say.figure.sway} share={ratio('x', 'x_lim')} />
      <Share y={124} name={say.figure.shaking} share={ratio('r_min', 'r_f')} />
      <Share y={164} name={say.figure.foot} share={ratio('sigma', 'sigma_h')} />
    </Drawing>
  );
}
