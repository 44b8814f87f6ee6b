import { Show } from 'solid-js';
import { Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import { shareLeft } from './series';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 224;
const LEFT = 44;
const RIGHT = WIDTH - 14;
const TOP = 30;
const BASE = 168;
const HOUR = 3600;
const POINTS = 60;

/** Water in the strand over time, between the fastest and the slowest published rate. */
export default function Figure(props: FigureProps<typeof calc>) {
  const gains = () => props.choice.ask === 'store';
  const now = () => (gains() ? props.value('t_o') : props.value('t'));
  /** Scaled time for each second: middle, slowest, fastest. */
  const rates = () => {
    const [known, time] = [props.known('x'), now()];
    if (!known || time === undefined || !(known.value > 0)) return undefined;
    // A band wider than its middle reaches zero by the half-width alone.
    const low = known.low > 0 ? known.low : known.value / 10;
    return { middle: known.value / time, slow: low / time, fast: known.high / time };
  };
  const most = () => {
    const needed = props.choice.ask === 'dry' ? (props.value('t_q') ?? 0) : 0;
    return 1.6 * Math.max(now() ?? 0, needed, HOUR / 10);
  };
  const x = (t: number) => LEFT + (t / most()) * (RIGHT - LEFT);
  const y = (share: number) => BASE - share * (BASE - TOP);
  const share = (rate: number, t: number) => (gains() ? 1 - shareLeft(rate * t) : shareLeft(rate * t));
  const curve = (rate: number): string[] => {
    const points: string[] = [];
    // Closer at the start, where the curve is steep.
    for (let i = 0; i <= POINTS; i += 1) {
      const t = most() * (i / POINTS) ** 2;
      points.push(`${x(t)},${y(share(rate, t))}`);
    }
    return points;
  };
  const clear = (at: number) => Math.min(Math.max(at, LEFT + 40), RIGHT - 40);
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <line class="d-thin" x1={LEFT} y1={BASE} x2={RIGHT} y2={BASE} />
      <line class="d-thin" x1={LEFT} y1={BASE} x2={LEFT} y2={TOP - 6} />
      <text class="d-text" x={LEFT - 6} y={y(1) + 4} text-anchor="end">
        100 %
      </text>
      <text class="d-text" x={LEFT - 6} y={BASE + 4} text-anchor="end">
        0
      </text>
      <text class="d-text" x={LEFT} y={14}>
        {gains() ? say.figure.taken : say.figure.left}
      </text>
      <Show when={rates()}>
        {(rate) => (
          <g>
            <polygon
              class="d-thin d-shade"
              points={[...curve(rate().fast), ...curve(rate().slow).reverse()].join(' ')}
            />
            <polyline class="d-ink" points={curve(rate().middle).join(' ')} />
          </g>
        )}
      </Show>
      <Show when={props.choice.ask === 'dry' ? props.value('q') : undefined}>
        {(q) => <line class="d-ghost" x1={LEFT} y1={y(q())} x2={RIGHT} y2={y(q())} />}
      </Show>
      <Show when={now()}>
        {(t) => (
          <g>
            <line class="d-accent" x1={x(t())} y1={BASE + 4} x2={x(t())} y2={TOP} />
            <text class="d-text d-text-accent" x={clear(x(t()))} y={BASE + 18} text-anchor="middle">
              {gains() ? say.figure.open(props.text('t_o')) : say.figure.set(props.text('t'))}
            </text>
          </g>
        )}
      </Show>
      <text class="d-text" x={LEFT} y={HEIGHT - 22}>
        {say.figure.line}
      </text>
      <text class="d-text" x={LEFT} y={HEIGHT - 6}>
        {say.figure.shaded}
      </text>
    </Drawing>
  );
}
