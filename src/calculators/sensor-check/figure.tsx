import { createMemo, For, Show } from 'solid-js';
import { Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 212;
const [LEFT, RIGHT, TOP, BOTTOM] = [52, 322, 14, 184] as const;
const ZERO = 273.15;
const [COLD, HOT] = [-20, 300] as const;
const DECADES = [1, 2, 3, 4, 5, 6, 7] as const;
/** °C at a share of the resistance at 0 °C, IEC 60751; not a number beyond its reach. */
const platinum = (share: number): number => {
  const [A, B] = [3.9083e-3, -5.775e-7];
  return (Math.sqrt(A * A - 4 * B * (1 - share)) - A) / (2 * B);
};
const NAMES = ['10 Ω', '100 Ω', '1 kΩ', '10 kΩ', '100 kΩ', '1 MΩ', '10 MΩ'] as const;

/** Resistance over temperature on a logarithmic scale with the room’s and the working point; or the heater’s power as a bar. */
export default function Figure(props: FigureProps<typeof calc>) {
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure[props.choice.what]}>
      <Show when={props.choice.what === 'sensor'} fallback={<Power {...props} />}>
        <Curve {...props} />
      </Show>
    </Drawing>
  );
}

function Curve(props: FigureProps<typeof calc>) {
  /** Temperature in °C for a number of ohms, by the law chosen. */
  const law = createMemo(() => {
    const v = props.value;
    if (props.choice.law === 'beta') {
      const [n, r, b] = [v('T_n'), v('R_n'), v('B')];
      if (n === undefined || r === undefined || b === undefined) return undefined;
      return (ohms: number) => 1 / (1 / n + Math.log(ohms / r) / b) - ZERO;
    }
    const zero = v('R_0');
    if (zero !== undefined) return (ohms: number) => platinum(ohms / zero);
    const [a, b, c] = [v('a_S'), v('b_S'), v('c_S')];
    if (a === undefined || b === undefined || c === undefined) return undefined;
    return (ohms: number) => 1 / (a + Math.log(ohms) * (b + c * Math.log(ohms) ** 2)) - ZERO;
  });
  const x = (celsius: number) =>
    LEFT + ((Math.min(Math.max(celsius, COLD), HOT) - COLD) / (HOT - COLD)) * (RIGHT - LEFT);
  const y = (ohms: number) => BOTTOM - ((Math.min(Math.max(Math.log10(ohms), 1), 7) - 1) / 6) * (BOTTOM - TOP);
  const path = createMemo(() => {
    const of = law();
    if (!of) return '';
    return Array.from({ length: 121 }, (_, i) => 10 ** (1 + i / 20))
      .map((ohms) => ({ ohms, celsius: of(ohms) }))
      .filter(({ celsius }) => celsius >= COLD && celsius <= HOT)
      .map(({ ohms, celsius }, i) => `${i === 0 ? 'M' : 'L'}${x(celsius).toFixed(1)} ${y(ohms).toFixed(1)}`)
      .join('');
  });
  /** Reading: what the sensor says against what the room thermometer says. */
  const reading = () => {
    const [room, measured, due] = [props.value('T_a'), props.value('R_m'), props.value('R_e')];
    const seen = props.choice.by === 'ohms' ? measured : due === undefined ? undefined : (props.value('q') ?? 1) * due;
    return room === undefined || seen === undefined ? undefined : { x: x(room - ZERO), y: y(seen) };
  };
  const working = () => {
    const [T, R] = [props.value('T_w'), props.value('R_w')];
    return T === undefined || R === undefined ? undefined : { x: x(T - ZERO), y: y(R) };
  };
  return (
    <g>
      <For each={DECADES}>
        {(decade, i) => (
          <g>
            <line class="d-thin" x1={LEFT} y1={y(10 ** decade)} x2={RIGHT} y2={y(10 ** decade)} />
            <text class="d-text" x={LEFT - 4} y={y(10 ** decade) + 4} text-anchor="end">
              {NAMES[i()]}
            </text>
          </g>
        )}
      </For>
      <For each={[0, 100, 200, 300]}>
        {(celsius) => (
          <g>
            <line class="d-thin" x1={x(celsius)} y1={TOP} x2={x(celsius)} y2={BOTTOM + 4} />
            <text class="d-text" x={x(celsius)} y={BOTTOM + 16} text-anchor="middle">
              {celsius}
            </text>
          </g>
        )}
      </For>
      <text class="d-text" x={(x(200) + x(300)) / 2} y={BOTTOM + 16} text-anchor="middle">
        °C
      </text>
      <path class="d-ink" d={path()} />
      <Show when={working()}>
        {(at) => (
          <g>
            <line class="d-thin" x1={at().x} y1={at().y} x2={at().x} y2={at().y - 36} />
            <circle class="d-ink d-fill" cx={at().x} cy={at().y} r={4} />
            <text class="d-text" x={RIGHT - 2} y={at().y - 40} text-anchor="end">
              {say.figure.due(props.text('R_w'), props.text('T_w'))}
            </text>
          </g>
        )}
      </Show>
      <Show
        when={reading()}
        fallback={
          <text class="d-text d-text-accent" x={RIGHT} y={TOP + 12} text-anchor="end">
            {say.figure.markedHere}
          </text>
        }
      >
        {(at) => (
          <g>
            <path class="d-accent" d={`M${at().x - 6} ${at().y - 6}l12 12m0 -12l-12 12`} />
            <text class="d-text d-text-accent" x={at().x + 10} y={at().y - 6}>
              {say.figure.tells(props.text('T_s'), props.text('T_a'))}
            </text>
          </g>
        )}
      </Show>
    </g>
  );
}

function Power(props: FigureProps<typeof calc>) {
  const shown = createMemo(() => {
    const [P, marked, low, high] = [props.value('P'), props.value('P_r'), props.value('k_lo'), props.value('k_hi')];
    if (P === undefined || marked === undefined || low === undefined || high === undefined) return undefined;
    const most = Math.max(P, marked * high) * 1.1;
    const at = (watts: number) => 20 + (watts / most) * (WIDTH - 40);
    return { P: at(P), marked: at(marked), low: at(marked * low), high: at(marked * high) };
  });
  return (
    <Show
      when={shown()}
      fallback={
        <text class="d-text" x={WIDTH / 2} y={HEIGHT / 2} text-anchor="middle">
          {say.figure.barComes}
        </text>
      }
    >
      {(bar) => (
        <g>
          <text class="d-text" x={20} y={40}>
            {say.figure.marked(props.text('P_r'), props.text('V_r'), props.text('R_x'))}
          </text>
          <rect class="d-ink d-fill" x={20} y={48} width={bar().marked - 20} height={26} />
          <text class="d-text d-text-accent" x={20} y={104}>
            {say.figure.measured(props.text('R_h'), props.text('V'), props.text('P'), props.text('I'))}
          </text>
          <rect class="d-accent d-shade" x={20} y={112} width={Math.max(bar().P - 20, 1)} height={26} />
          <line class="d-ghost" x1={bar().low} y1={112} x2={bar().low} y2={150} />
          <line class="d-ghost" x1={bar().high} y1={112} x2={bar().high} y2={150} />
          <text class="d-text" x={20} y={168}>
            {say.figure.dashed(props.text('k_lo'), props.text('k_hi'))}
          </text>
          <text class="d-text" x={20} y={190}>
            {say.figure.square}
          </text>
        </g>
      )}
    </Show>
  );
}
