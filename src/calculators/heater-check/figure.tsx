import { createMemo, For, Show } from 'solid-js';
import { constants } from '../../formula/constants';
import { formatNumber } from '../../quantity/format';
import { Drawing } from '../../ui/drawing';
import { numberTicks } from '../../ui/ticks';
import type { FigureProps } from '../../engine/calculator';
import { lines } from './cells';
import { simulate, type Lump, type Moment } from './curve';
import type calc from './index';
import say from './words/en';

const WIDTH = 340;
const HEIGHT = 262;
const [LEFT, RIGHT, TOP, BOTTOM] = [34, 334, 16, 188] as const;
const ZERO = 273.15;
const SIGMA = constants.sigma_SB?.value ?? NaN;
const STEPS = 160;
const PARTS = ['T_li', 'T_se', 'T_f', 'T_bl', 'T_no'] as const;

/** Curves of block and reading against time, to scale: healthy, sensor fallen out, heater stuck on; limits of the parts. */
export default function Figure(props: FigureProps<typeof calc>) {
  const v = (symbol: Parameters<typeof props.value>[0]) => props.value(symbol);
  const all = createMemo(() => {
    const [C, P, G, e, A] = [v('C'), v('P'), v('G_c'), v('epsilon'), v('A')];
    const [Ta, Tw, tw, tx, tau, Te, Tu] = [v('T_a'), v('T_w'), v('t_w'), v('t_x'), v('tau'), v('T_e'), v('T_u')];
    const ts = v('t_s');
    if (C === undefined || P === undefined || G === undefined || e === undefined || A === undefined) return undefined;
    if (Ta === undefined || Tw === undefined || tw === undefined || tx === undefined || tau === undefined)
      return undefined;
    if (Te === undefined || Tu === undefined || ts === undefined) return undefined;
    const lump: Lump = { C, P, G, R: e * SIGMA * A, Ta };
    // The exact curve reaches the working temperature a little sooner than the straight-line loss says.
    const rise = simulate(lump, { t: 0, T: Ta }, tw, STEPS).filter(({ T }) => T <= Tw);
    const there = (rise.at(-1)?.t ?? tw) + tw / STEPS;
    const fault = there + 0.25 * tw;
    const after = Math.max(5 * tx, 1.2 * tau);
    const stuck = simulate(lump, { t: fault, T: Tw }, after, STEPS).filter(({ T }) => T <= Tu);
    const dog = simulate(lump, { t: fault, T: Tw }, tx, STEPS);
    const cooling = simulate({ ...lump, P: 0 }, dog.at(-1) ?? { t: fault, T: Tw }, after - tx, STEPS);
    const reading = Array.from({ length: STEPS }, (_, i) => {
      const t = (i / STEPS) * after;
      return { t: fault + t, T: Ta + (Tw - Ta) * Math.exp(-t / ts) };
    });
    const healthy = [...rise, { t: there, T: Tw }, { t: fault, T: Tw }];
    return { healthy, stuck, dog, cooling, reading, fault, end: fault + after, Ta, Tw, Te, Tu, trip: dog.at(-1) };
  });
  const top = () => {
    const found = all();
    return found ? Math.max(found.Te, found.Tw, found.trip?.T ?? 0) + 40 : 600;
  };
  const bottom = () => Math.min(all()?.Ta ?? ZERO, ZERO);
  const x = (t: number) => LEFT + (t / (all()?.end ?? 1)) * (RIGHT - LEFT);
  const y = (T: number) => BOTTOM - ((T - bottom()) / (top() - bottom())) * (BOTTOM - TOP);
  const path = (moments: readonly Moment[]) =>
    moments.map(({ t, T }, i) => `${i === 0 ? 'M' : 'L'}${x(t).toFixed(1)} ${y(T).toFixed(1)}`).join('');
  const parts = () =>
    PARTS.flatMap((symbol) => {
      const T = v(symbol);
      if (T === undefined) return [];
      return [{ T, text: say.figure.part(say.figure.parts[symbol], formatNumber(T - ZERO, 3, props.mark)) }];
    });
  const shown = () => {
    // Labels of lines close together step aside.
    let last = Infinity;
    return parts()
      .filter(({ T }) => T < top())
      .sort((a, b) => a.T - b.T)
      .map((part) => {
        const at = Math.min(y(part.T) - 3, last - 12);
        last = at;
        return { ...part, at };
      });
  };
  const far = () => parts().filter(({ T }) => T >= top());
  /** Recorded readings; a heating curve slid to where the healthy one passes its first reading. */
  const recorded = createMemo(() => {
    const points = lines.flatMap(({ time, temperature }) => {
      const [t, T] = [v(time), v(temperature)];
      return t === undefined || T === undefined ? [] : [{ t, T }];
    });
    const [first, last] = [points[0], points.at(-1)];
    const found = all();
    if (!first || !last || !found) return [];
    const falls = last.T < first.T;
    const along = falls ? found.cooling : found.healthy;
    const from = along.find(({ T }) => (falls ? T <= first.T : T >= first.T))?.t ?? 0;
    return points.map(({ t, T }) => ({ t: from + t - first.t, T })).filter(({ t }) => t <= found.end);
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
        {(found) => (
          <>
            <For each={numberTicks(0, top() - ZERO, 5)}>
              {(tick) => (
                <g>
                  <line class="d-thin" x1={LEFT - 4} y1={y(tick + ZERO)} x2={LEFT} y2={y(tick + ZERO)} />
                  <text class="d-text" x={LEFT - 6} y={y(tick + ZERO) + 4} text-anchor="end">
                    {tick}
                  </text>
                </g>
              )}
            </For>
            <For each={numberTicks(0, 0.94 * found().end, 5)}>
              {(tick) => (
                <g>
                  <line class="d-thin" x1={x(tick)} y1={BOTTOM} x2={x(tick)} y2={BOTTOM + 4} />
                  <text class="d-text" x={x(tick)} y={BOTTOM + 15} text-anchor="middle">
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
            <For each={shown()}>
              {(part) => (
                <g>
                  <line class="d-thin" x1={LEFT} y1={y(part.T)} x2={RIGHT} y2={y(part.T)} />
                  <text class="d-text" x={LEFT + 4} y={part.at}>
                    {part.text}
                  </text>
                </g>
              )}
            </For>
            <path class="d-ink" d={path(found().healthy)} />
            <path class="d-ghost" d={path(found().reading)} />
            <path class="d-accent" d={path(found().stuck)} />
            <path class="d-ink" d={path(found().cooling)} />
            <path class="d-ink" d={path(found().dog)} />
            <line class="d-ghost" x1={x(found().fault)} y1={y(found().Tw)} x2={x(found().fault)} y2={BOTTOM} />
            <Show when={found().trip}>
              {(trip) => <path class="d-ink d-fill" d={`M${x(trip().t)} ${y(trip().T) - 5}l5 5l-5 5l-5 -5z`} />}
            </Show>
            <text class="d-text d-text-accent" x={RIGHT} y={TOP - 4} text-anchor="end">
              {say.figure.stuck(props.text('T_u'))}
            </text>
            <For each={recorded()}>
              {(point) => <circle class="d-accent d-fill" cx={x(point.t)} cy={y(point.T)} r={2.5} />}
            </For>
            <path class="d-ink d-fill" d={`M9 ${HEIGHT - 46}l5 5l-5 5l-5 -5z`} />
            <text class="d-text" x={19} y={HEIGHT - 37}>
              {say.figure.cuts(props.text('t_x'), props.text('T_x'))}
            </text>
            <line class="d-ghost" x1={3} y1={HEIGHT - 25} x2={16} y2={HEIGHT - 25} />
            <text class="d-text" x={19} y={HEIGHT - 21}>
              {recorded().length > 0 ? say.figure.readsWithDots : say.figure.reads}
            </text>
            <text class="d-text" x={19} y={HEIGHT - 5}>
              {far().length > 0 ? say.figure.higherUp(far().map((part) => part.text)) : ''}
            </text>
          </>
        )}
      </Show>
    </Drawing>
  );
}
