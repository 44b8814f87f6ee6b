import { For, Show } from 'solid-js';
import { formatNumber } from '../../quantity/format';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const LEFT = 20;
/** Longest bar; the rest of the width is for what is drawn too large. */
const LONGEST = 250;
const MOST = 34;
const HUB = { x: 58, y: 52, r: 30 };
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

type Props = FigureProps<typeof calc>;
type Axis = Props['choice']['axis'];

interface Bar {
  readonly name: keyof typeof say.figure.bars;
  readonly told: number;
  readonly found: number | undefined;
  readonly text: string;
}

/** What turns: a screw with its nut, a pulley with its belt, or the feed gear with its filament. */
function Drive(props: { readonly axis: Axis; readonly teeth: number }) {
  const isFeed = () => props.axis === 'feed';
  const marks = () => (isFeed() ? 40 : props.teeth);
  const ray = (angle: number, r: number) => ({ x: HUB.x + r * Math.cos(angle), y: HUB.y + r * Math.sin(angle) });
  return (
    <Show
      when={props.axis !== 'z'}
      fallback={
        <g>
          <rect class="d-fill" x={LEFT} y={HUB.y - 10} width={130} height={20} />
          <For each={Array.from({ length: 16 }, (_, i) => LEFT + 5 + i * 8)}>
            {(x) => <line class="d-thin" x1={x - 3} y1={HUB.y + 10} x2={x + 3} y2={HUB.y - 10} />}
          </For>
          <rect class="d-ink d-shade" x={LEFT + 52} y={HUB.y - 20} width={26} height={40} />
        </g>
      }
    >
      <circle class="d-ink d-shade" cx={HUB.x} cy={HUB.y} r={HUB.r} />
      <circle class="d-thin" cx={HUB.x} cy={HUB.y} r={5} />
      <For each={Array.from({ length: marks() }, (_, i) => (i * 2 * Math.PI) / marks())}>
        {(angle) => (
          <line
            class="d-thin"
            x1={ray(angle, HUB.r - 4).x}
            y1={ray(angle, HUB.r - 4).y}
            x2={ray(angle, HUB.r).x}
            y2={ray(angle, HUB.r).y}
          />
        )}
      </For>
      <line class="d-ink" x1={isFeed() ? LEFT : HUB.x} y1={HUB.y - HUB.r - 2} x2={150} y2={HUB.y - HUB.r - 2} />
      <Show when={!isFeed()}>
        <path
          class="d-ink"
          d={`M${HUB.x} ${HUB.y - HUB.r - 2} A${HUB.r + 2} ${HUB.r + 2} 0 0 0 ${HUB.x} ${HUB.y + HUB.r + 2} L150 ${HUB.y + HUB.r + 2}`}
        />
      </Show>
    </Show>
  );
}

/** The drive and what one turn of it moves; below, told or drawn against moved or measured, the difference enlarged. */
export default function Figure(props: Props) {
  const isFeed = () => props.choice.axis === 'feed';
  const by = () => (isFeed() ? props.choice.fed : props.choice.by);
  const perTurn = (): number | undefined => {
    const times = (a: number | undefined, b: number | undefined) =>
      a === undefined || b === undefined ? undefined : a * b;
    if (isFeed()) return times(Math.PI, props.value('d_g'));
    if (props.choice.axis === 'z') return props.value('P_h');
    return props.choice.axis === 'zb'
      ? times(props.value('p_z'), props.value('z_z'))
      : times(props.value('p'), props.value('z'));
  };
  const teeth = () => Math.min(Math.max(Math.round(props.value('z') ?? props.value('z_z') ?? 20), 8), 60);
  const bars = (): readonly Bar[] => {
    const value = props.value;
    if (by() === 'parts') return [];
    if (by() === 'print') {
      return props.choice.pair === 'sides'
        ? [
            { name: 'outside', told: value('D_o') ?? 0, found: value('m_o'), text: props.text('m_o') },
            { name: 'inside', told: value('D_i') ?? 0, found: value('m_i'), text: props.text('m_i') },
          ]
        : [
            { name: 'short', told: value('l_1') ?? 0, found: value('m_1'), text: props.text('m_1') },
            { name: 'long', told: value('l_2') ?? 0, found: value('m_2'), text: props.text('m_2') },
          ];
    }
    const told = value(isFeed() ? 'l_f' : 'l_c') ?? 0;
    return [{ name: isFeed() ? 'fed' : 'moved', told, found: value('l_d'), text: props.text('l_d') }];
  };
  const scale = () => LONGEST / Math.max(1e-6, ...bars().map((bar) => bar.told));
  const error = (bar: Bar) => (bar.found === undefined ? 0 : bar.found - bar.told);
  const factor = () => {
    const worst = Math.max(0, ...bars().map((bar) => Math.abs(error(bar)))) * scale();
    return worst < 1e-6 ? 1 : ([...STEPS].reverse().find((step) => worst * step <= MOST) ?? 1);
  };
  const end = (bar: Bar) =>
    LEFT + Math.max(0, bar.told * scale() + Math.max(-LONGEST, Math.min(MOST, error(bar) * scale() * factor())));
  const top = (i: number) => 122 + i * 56;
  const height = () => 112 + bars().length * 56 + (bars().length > 0 ? 18 : 0);
  const mm = (si: number, digits: number) => `${formatNumber(si * 1e3, digits, props.mark)} mm`;

  return (
    <Drawing width={WIDTH} height={height()} label={say.figure.label}>
      <Drive axis={props.choice.axis} teeth={teeth()} />
      <text class="d-text" x={164} y={HUB.y - 18}>
        {say.figure.turn(perTurn() === undefined ? '–' : mm(perTurn() ?? 0, 4))}
      </text>
      <text class="d-text" x={164} y={HUB.y + 4}>
        {say.figure.counted(props.text('S_c'))}
      </text>
      <text class="d-text d-text-accent" x={164} y={HUB.y + 26}>
        {say.figure.set(props.text('S_0'))}
      </text>
      <For each={bars()}>
        {(bar, i) => (
          <g>
            <DimensionLine
              x1={LEFT}
              y1={top(i())}
              x2={LEFT + bar.told * scale()}
              y2={top(i())}
              text={say.figure[by() === 'print' ? 'drawn' : 'told'](mm(bar.told, 6))}
            />
            <line
              class="d-ghost"
              x1={LEFT + bar.told * scale()}
              y1={top(i())}
              x2={LEFT + bar.told * scale()}
              y2={top(i()) + 24}
            />
            <Show when={bar.found !== undefined}>
              <rect class="d-ink d-shade" x={LEFT} y={top(i()) + 6} width={end(bar) - LEFT} height={14} />
            </Show>
            <text class="d-text d-text-accent" x={LEFT} y={top(i()) + 35}>
              {say.figure.bars[bar.name](bar.text)}
            </text>
          </g>
        )}
      </For>
      <Show when={bars().length > 0}>
        <text class="d-text" x={WIDTH / 2} y={height() - 5} text-anchor="middle">
          {factor() > 1 ? say.figure.enlarged(factor()) : say.figure.toScale}
        </text>
      </Show>
    </Drawing>
  );
}
