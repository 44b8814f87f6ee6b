import { createMemo, For, Show } from 'solid-js';
import { constants } from '../../formula/constants';
import { formatNumber } from '../../quantity/format';
import { Drawing } from '../../ui/drawing';
import { numberTicks } from '../../ui/ticks';
import type { FigureProps } from '../../engine/calculator';
import { lines } from './cells';
import { coursesOf, slidAlong, type Courses } from './courses';
import type { Moment } from './curve';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 262;
const [LEFT, RIGHT, TOP, BOTTOM] = [34, 334, 16, 188] as const;
const ZERO = 273.15;
const SIGMA = constants.sigma_SB?.value ?? NaN;
const PARTS = ['T_li', 'T_se', 'T_f', 'T_bl', 'T_no'] as const;

type Value = FigureProps<typeof calc>['value'];

/** Places on paper of a time in s and a temperature in K. */
interface Scale {
  readonly x: (t: number) => number;
  readonly y: (T: number) => number;
}
interface Part {
  readonly T: number;
  readonly text: string;
}

function courses(v: Value): Courses | undefined {
  const [C, P, G, e, A] = [v('C'), v('P'), v('G_c'), v('epsilon'), v('A')];
  const [Ta, Tw, tw, tx] = [v('T_a'), v('T_w'), v('t_w'), v('t_x')];
  const [tau, ts, Te, Tu] = [v('tau'), v('t_s'), v('T_e'), v('T_u')];
  if (C === undefined || P === undefined || G === undefined || e === undefined || A === undefined) return undefined;
  if (Ta === undefined || Tw === undefined || tw === undefined || tx === undefined) return undefined;
  if (tau === undefined || ts === undefined || Te === undefined || Tu === undefined) return undefined;
  return coursesOf({ lump: { C, P, G, R: e * SIGMA * A, Ta }, Tw, tw, tx, tau, ts, Te, Tu });
}

const readings = (v: Value): readonly Moment[] =>
  lines.flatMap(({ time, temperature }) => {
    const [t, T] = [v(time), v(temperature)];
    return t === undefined || T === undefined ? [] : [{ t, T }];
  });

/** Curves of block and reading against time, to scale: healthy, sensor fallen out, heater stuck on; limits of the parts. */
export default function Figure(props: FigureProps<typeof calc>) {
  const all = createMemo(() => courses(props.value));
  const recorded = createMemo(() => {
    const found = all();
    return found ? slidAlong(readings(props.value), found) : [];
  });
  const parts = (): readonly Part[] =>
    PARTS.flatMap((symbol) => {
      const T = props.value(symbol);
      if (T === undefined) return [];
      return [{ T, text: say.figure.part(say.figure.parts[symbol], formatNumber(T - ZERO, 3, props.mark)) }];
    });
  return (
    <Drawing width={WIDTH} height={HEIGHT} label={say.figure.label}>
      <Show
        when={all()}
        fallback={
          <text class="d-text" x={WIDTH / 2} y={HEIGHT / 2} text-anchor="middle">
            {say.figure.curvesCome}
          </text>
        }
      >
        {(found) => {
          const scale: Scale = {
            x: (t) => LEFT + (t / found().end) * (RIGHT - LEFT),
            y: (T) => BOTTOM - ((T - found().bottom) / (found().top - found().bottom)) * (BOTTOM - TOP),
          };
          return (
            <>
              <Axes scale={scale} top={found().top} end={found().end} />
              <Limits scale={scale} parts={parts().filter(({ T }) => T < found().top)} />
              <Curves scale={scale} courses={found()} ends={props.text('T_u')} recorded={recorded()} />
              <Key
                cuts={say.figure.cuts(props.text('t_x'), props.text('T_x'))}
                reads={recorded().length > 0 ? say.figure.readsWithDots : say.figure.reads}
                far={parts().filter(({ T }) => T >= found().top)}
              />
            </>
          );
        }}
      </Show>
    </Drawing>
  );
}

function Axes(props: { readonly scale: Scale; readonly top: number; readonly end: number }) {
  return (
    <>
      <For each={numberTicks(0, props.top - ZERO, 5)}>
        {(tick) => (
          <g>
            <line
              class="d-thin"
              x1={LEFT - 4}
              y1={props.scale.y(tick + ZERO)}
              x2={LEFT}
              y2={props.scale.y(tick + ZERO)}
            />
            <text class="d-text" x={LEFT - 6} y={props.scale.y(tick + ZERO) + 4} text-anchor="end">
              {tick}
            </text>
          </g>
        )}
      </For>
      <For each={numberTicks(0, 0.94 * props.end, 5)}>
        {(tick) => (
          <g>
            <line class="d-thin" x1={props.scale.x(tick)} y1={BOTTOM} x2={props.scale.x(tick)} y2={BOTTOM + 4} />
            <text class="d-text" x={props.scale.x(tick)} y={BOTTOM + 15} text-anchor="middle">
              {tick}
            </text>
          </g>
        )}
      </For>
      <text class="d-text" x={2} y={11}>
        °C
      </text>
      <text class="d-text" x={RIGHT} y={BOTTOM + 15} text-anchor="end">
        s
      </text>
      <path class="d-thin" d={`M${LEFT} ${TOP - 6}V${BOTTOM}H${RIGHT}`} />
    </>
  );
}

/** A line for what each part stands. */
function Limits(props: { readonly scale: Scale; readonly parts: readonly Part[] }) {
  const placed = () => {
    // Labels of lines close together step aside.
    let last = Infinity;
    return [...props.parts]
      .sort((a, b) => a.T - b.T)
      .map((part) => {
        last = Math.min(props.scale.y(part.T) - 3, last - 12);
        return { ...part, at: last };
      });
  };
  return (
    <For each={placed()}>
      {(part) => (
        <g>
          <line class="d-thin" x1={LEFT} y1={props.scale.y(part.T)} x2={RIGHT} y2={props.scale.y(part.T)} />
          <text class="d-text" x={LEFT + 4} y={part.at}>
            {part.text}
          </text>
        </g>
      )}
    </For>
  );
}

interface Drawn {
  readonly scale: Scale;
  readonly courses: Courses;
  readonly ends: string;
  readonly recorded: readonly Moment[];
}

function Curves(props: Drawn) {
  const x = (t: number) => props.scale.x(t);
  const y = (T: number) => props.scale.y(T);
  const path = (moments: readonly Moment[]) =>
    moments.map(({ t, T }, i) => `${i === 0 ? 'M' : 'L'}${x(t).toFixed(1)} ${y(T).toFixed(1)}`).join('');
  const fault = () => x(props.courses.fault);
  const trip = () => props.courses.trip;
  return (
    <>
      <path class="d-ink" d={path(props.courses.healthy)} />
      <path class="d-ghost" d={path(props.courses.reading)} />
      <path class="d-accent" d={path(props.courses.stuck)} />
      <path class="d-ink" d={path(props.courses.cooling)} />
      <path class="d-ink" d={path(props.courses.guarded)} />
      <line class="d-ghost" x1={fault()} y1={y(props.courses.Tw)} x2={fault()} y2={BOTTOM} />
      <path class="d-ink d-fill" d={`M${x(trip().t)} ${y(trip().T) - 5}l5 5l-5 5l-5 -5z`} />
      <text class="d-text d-text-accent" x={RIGHT} y={TOP - 4} text-anchor="end">
        {say.figure.stuck(props.ends)}
      </text>
      <For each={props.recorded}>
        {(point) => <circle class="d-accent d-fill" cx={x(point.t)} cy={y(point.T)} r={2.5} />}
      </For>
    </>
  );
}

/** What the signs mean, and the parts whose lines lie above the drawing. */
function Key(props: { readonly cuts: string; readonly reads: string; readonly far: readonly Part[] }) {
  return (
    <>
      <path class="d-ink d-fill" d={`M9 ${HEIGHT - 46}l5 5l-5 5l-5 -5z`} />
      <text class="d-text" x={19} y={HEIGHT - 37}>
        {props.cuts}
      </text>
      <line class="d-ghost" x1={3} y1={HEIGHT - 25} x2={16} y2={HEIGHT - 25} />
      <text class="d-text" x={19} y={HEIGHT - 21}>
        {props.reads}
      </text>
      <text class="d-text" x={19} y={HEIGHT - 5}>
        {props.far.length > 0 ? say.figure.higherUp(props.far.map((part) => part.text)) : ''}
      </text>
    </>
  );
}
