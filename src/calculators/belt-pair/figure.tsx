import { For, Index, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 280;
const LEFT = 16;
const RIGHT = WIDTH - 16;
const ROWS = [42, 134] as const;
/** Height on paper of a swinging middle. */
const SWING = 12;
const BARS = { left: 16, width: 190 };
const RULER = { y: 252, middle: 212, half: 112 };
const MARK = 9;

const belts = [
  { L: 'L_1', f: 'f_1', T: 'T_1', e: 'f_1e', name: 'first' },
  { L: 'L_2', f: 'f_2', T: 'T_2', e: 'f_2e', name: 'second' },
] as const;

/** Two spans to one scale, their tensions as bars, and the offset of the tensioners against teeth. */
export default function Figure(props: FigureProps<typeof calc>) {
  const longest = () => Math.max(props.value('L_1') ?? 0.25, props.value('L_2') ?? 0.25);
  const right = (L: number | undefined) => LEFT + (RIGHT - LEFT) * ((L ?? 0.25) / longest());
  const wave = (y: number, end: number, height: number) =>
    Array.from({ length: 25 }, (_, i) => {
      const t = i / 24;
      return `${LEFT + t * (end - LEFT)},${y - height * Math.sin(Math.PI * t)}`;
    }).join(' ');
  const tightest = () => Math.max(props.value('T_1') ?? 0, props.value('T_2') ?? 0, 1e-9);
  const bar = (T: number | undefined) => Math.max(2, BARS.width * Math.max((T ?? 0) / tightest(), 0));

  /** Offset less what is by design, in teeth. */
  const teeth = () => props.value('n');
  /** Teeth to either side that the ruler shows. */
  const reach = () => Math.min(Math.max(Math.ceil(Math.abs(teeth() ?? 0)) + 1, 3), 40);
  const step = () => RULER.half / reach();
  const marks = () => {
    const most = reach();
    return Array.from({ length: 2 * most + 1 }, (_, i) => i - most);
  };
  const place = () => RULER.middle + Math.min(Math.max(teeth() ?? 0, -reach()), reach()) * step();

  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <Index each={belts}>
        {(belt, i) => {
          const y = () => ROWS[i] ?? 0;
          const end = () => right(props.value(belt().L));
          return (
            <g>
              <polyline class="d-ghost" points={wave(y(), end(), SWING)} />
              <polyline class="d-ghost" points={wave(y(), end(), -SWING)} />
              <line class="d-ink" x1={LEFT} y1={y()} x2={end()} y2={y()} />
              <circle class="d-ink d-fill" cx={LEFT} cy={y()} r={4} />
              <circle class="d-ink d-fill" cx={end()} cy={y()} r={4} />
              <DimensionLine
                x1={LEFT}
                y1={y() - 22}
                x2={end()}
                y2={y() - 22}
                text={say.figure.span(say.figure.names[belt().name], props.text(belt().L))}
                dx={Math.max(0, 60 - (end() - LEFT) / 2)}
              />
              <rect class="d-ink d-shade" x={BARS.left} y={y() + 18} width={bar(props.value(belt().T))} height={10} />
              <text class="d-text d-text-accent" x={BARS.left + BARS.width + 8} y={y() + 28}>
                {props.text(belt().T)}
              </text>
              <text class="d-text" x={BARS.left + 6} y={y() + 43}>
                {say.figure.sounds(props.text(belt().f), props.text(belt().e))}
              </text>
            </g>
          );
        }}
      </Index>

      <line class="d-ink" x1={RULER.middle - RULER.half} y1={RULER.y} x2={RULER.middle + RULER.half} y2={RULER.y} />
      <For each={marks()}>
        {(tooth) => (
          <line
            class={tooth === 0 ? 'd-ink' : 'd-thin'}
            x1={RULER.middle + tooth * step()}
            y1={RULER.y - (tooth === 0 ? MARK + 4 : MARK)}
            x2={RULER.middle + tooth * step()}
            y2={RULER.y}
          />
        )}
      </For>
      <text class="d-text" x={8} y={RULER.y - 14}>
        {say.figure.tensioners}
      </text>
      <text class="d-text" x={8} y={RULER.y + 1}>
        {say.figure.inTeeth}
      </text>
      <text class="d-text" x={RULER.middle} y={RULER.y + 24} text-anchor="middle">
        {say.figure.oneTooth(props.text('x_1'))}
      </text>
      <Show when={teeth() !== undefined}>
        <DimensionLine accent single x1={place()} y1={RULER.y - 32} x2={place()} y2={RULER.y - 2} text="" />
        <text
          class="d-text d-text-accent"
          x={Math.min(Math.max(place(), 130), WIDTH - 60)}
          y={RULER.y - 36}
          text-anchor="middle"
        >
          {say.figure.second(props.text('n'))}
        </text>
      </Show>
    </Drawing>
  );
}
