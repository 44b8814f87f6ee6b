import { For, Show } from 'solid-js';
import { DimensionLine, Drawing } from '../../ui/drawing';
import type { FigureProps } from '../../engine/calculator';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 220;
const LEFT = 30;
const RIGHT = WIDTH - 16;
const TOP = 26;
const BASE = 176;
const ZERO = 273.15;
const FACTORS = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** Saturation pressure over water, Pa at K: WMO-No. 8, annex 4.B. */
const saturation = (T: number): number => 611.2 * Math.exp((17.62 * (T - ZERO)) / (243.12 + T - ZERO));

const clamp = (x: number, low: number, high: number): number => Math.min(Math.max(x, low), high);

/** Vapour pressure over temperature with the curve of saturation; or screw and frame with their growth. */
export default function Figure(props: FigureProps<typeof calc>) {
  return (
    <Show when={props.choice.ask === 'swing'} fallback={<Vapour {...props} />}>
      <Growth {...props} />
    </Show>
  );
}

function Vapour(props: FigureProps<typeof calc>) {
  const other = () => (props.choice.ask === 'box' ? props.value('T_b') : props.value('T_s'));
  const air = () => props.value('T') ?? ZERO + 20;
  const dew = () => props.value('T_d');
  const e = () => props.value('e');
  const ends = () => {
    const all = [air(), other() ?? air(), dew() ?? air()];
    return { low: Math.min(...all) - 6, high: Math.max(...all) + 6 };
  };
  const most = () => 1.25 * Math.max(e() ?? 0, Math.min(saturation(air()), 3 * (e() ?? Infinity)));
  const x = (T: number) => LEFT + ((T - ends().low) / (ends().high - ends().low)) * (RIGHT - LEFT);
  const y = (p: number) => BASE - (p / most()) * (BASE - TOP);
  const curve = () => {
    const [{ low, high }, ceiling] = [ends(), most()];
    const points: string[] = [];
    for (let i = 0; i <= 80; i += 1) {
      const T = low + ((high - low) * i) / 80;
      if (saturation(T) <= ceiling) points.push(`${x(T)},${y(saturation(T))}`);
    }
    return points.join(' ');
  };
  const label = (T: number) => clamp(x(T), LEFT + 30, RIGHT - 34);
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.vapour}>
      <line class="d-thin" x1={LEFT} y1={BASE} x2={RIGHT} y2={BASE} />
      <line class="d-thin" x1={LEFT} y1={BASE} x2={LEFT} y2={TOP - 8} />
      <text class="d-text" x={LEFT - 4} y={TOP - 12}>
        {say.figure.pressure(props.text('e'))}
      </text>
      <polyline class="d-ink" points={curve()} />
      <Show when={e()}>
        {(pressure) => (
          <g>
            <line class="d-ghost" x1={LEFT} y1={y(pressure())} x2={RIGHT} y2={y(pressure())} />
            <circle class="d-ink d-fill" cx={x(air())} cy={y(pressure())} r={4} />
            <text class="d-text" x={label(air())} y={y(pressure()) - 8} text-anchor="middle">
              {say.figure.air(props.text('T'))}
            </text>
          </g>
        )}
      </Show>
      <Show when={dew()}>
        {(T) => (
          <g>
            <line class="d-thin" x1={x(T())} y1={y(saturation(T()))} x2={x(T())} y2={BASE + 4} />
            <text class="d-text" x={label(T())} y={BASE + 18} text-anchor="middle">
              {say.figure.dew(props.text('T_d'))}
            </text>
          </g>
        )}
      </Show>
      <Show when={other()}>
        {(T) => (
          <g>
            <line class="d-accent" x1={x(T())} y1={BASE + 4} x2={x(T())} y2={Math.max(y(saturation(T())), TOP)} />
            <text class="d-text d-text-accent" x={label(T())} y={BASE + 36} text-anchor="middle">
              {props.choice.ask === 'box' ? say.figure.box(props.text('T_b')) : say.figure.surface(props.text('T_s'))}
            </text>
          </g>
        )}
      </Show>
    </Drawing>
  );
}

interface Column {
  name: string;
  x: number;
  length: number;
  growth: number;
  text: string;
}

const COLUMN = 26;

function Growth(props: FigureProps<typeof calc>) {
  const kept = () => props.choice.zero === 'kept';
  const fromHead = () => kept() && props.choice.lift.endsWith('head');
  const held = () => (fromHead() ? 'above' : kept() ? 'below' : 'switch');
  const columns = (): Column[] => {
    const column = (name: string, x: number, length: number, growth: number, text: string): Column => {
      return { name, x, length, growth, text };
    };
    const frame = column(
      say.figure.frame,
      190,
      props.value('l_f') ?? 0.3,
      props.value('dl_f') ?? 0,
      props.text('dl_f'),
    );
    if (!kept()) return [frame];
    return [
      column(say.figure.screw, 90, props.value('l_s') ?? 0.3, props.value('dl_s') ?? 0, props.text('dl_s')),
      frame,
    ];
  };
  const scale = () => 100 / Math.max(1e-6, ...columns().map((one) => one.length));
  const factor = () => {
    const most = Math.max(0, ...columns().map((one) => Math.abs(one.growth))) * scale();
    return [...FACTORS].reverse().find((f) => f * most <= 24) ?? 10;
  };
  const start = () => (fromHead() ? TOP + 14 : BASE - 6);
  const way = () => (fromHead() ? 1 : -1);
  const end = (one: Column) => start() + way() * one.length * scale();
  const grown = (one: Column) => end(one) + way() * one.growth * scale() * factor();
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.growth}>
      <line class="d-ink" x1={40} y1={start()} x2={240} y2={start()} />
      <For each={columns()}>
        {(one) => (
          <g>
            <rect
              class="d-ink d-shade"
              x={one.x - COLUMN / 2}
              y={Math.min(start(), end(one))}
              width={COLUMN}
              height={Math.abs(end(one) - start())}
            />
            <line class="d-accent" x1={one.x - COLUMN} y1={grown(one)} x2={one.x + COLUMN} y2={grown(one)} />
            <DimensionLine accent single x1={one.x} y1={end(one)} x2={one.x} y2={grown(one)} text="" />
            <text class="d-text" x={one.x + COLUMN / 2 + 6} y={(start() + end(one)) / 2 - 4}>
              {one.name}
            </text>
            <text class="d-text d-text-accent" x={one.x + COLUMN / 2 + 6} y={(start() + end(one)) / 2 + 12}>
              {one.text}
            </text>
          </g>
        )}
      </For>
      <text class="d-text" x={WIDTH / 2} y={TOP - 10} text-anchor="middle">
        {say.figure.drawn(say.figure.held[held()], factor())}
      </text>
      <text class="d-text d-text-accent" x={WIDTH / 2} y={HEIGHT - 14} text-anchor="middle">
        {say.figure[(props.value('dg') ?? 0) < 0 ? 'narrower' : 'wider'](
          props.text('dg').replace('−', ''),
          props.text('dg_lim'),
        )}
      </text>
    </Drawing>
  );
}
