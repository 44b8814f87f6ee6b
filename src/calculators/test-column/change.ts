import { exact, type Amount } from '../../engine/order';
import { firstThat, settable } from '../../engine/settable';
import { length } from '../../quantity/kinds';
import type { Ask } from './asking';

/** Widths, rims and pads are drawn in steps of this, heights in whole millimetres, m. */
export const STEP = 0.5e-3;
export const MILLIMETRE = 1e-3;
/** More than this all round is no rim any more but another print, m. */
export const WIDEST_RIM = 15e-3;
/** A column made wider than this, over its width as drawn, or shorter, over its height, is another piece. */
const WIDEST = 3;
const SHORTEST = 0.5;

export const ofLength = (si: number): Amount => exact(si, length.mm);

export const widest = (ask: Ask): number => settable(WIDEST * ask.number('b'), STEP, 'down');
export const shortest = (ask: Ask): number => settable(SHORTEST * ask.number('L'), MILLIMETRE, 'up');

const passes = (ask: Ask, changes: Parameters<Ask['after']>[0]): boolean => ask.after(changes) === 'within';

/** The end of a result's interval that is sure to do; undefined where there is none. SI. */
const sure = (ask: Ask, symbol: Parameters<Ask['known']>[0], end: 'low' | 'high'): number | undefined =>
  ask.known(symbol)?.[end];

/** The width with which it surely neither sways nor is shaken up, and holds; undefined where none does. m. */
export function widthFor(ask: Ask): number | undefined {
  const from = settable(Math.max(sure(ask, 'b_x', 'high') ?? 0, ask.number('b') + STEP / 2), STEP, 'up');
  const to = widest(ask);
  return from > to ? undefined : firstThat((b) => passes(ask, { b }), from, to, STEP);
}

/** The height up to which all of that surely holds; undefined where half of the height is too much. m. */
export function heightFor(ask: Ask): number | undefined {
  const heights = (['L_x', 'L_f', 'L_h'] as const).map((symbol) => sure(ask, symbol, 'low') ?? 0);
  const to = shortest(ask);
  const from = settable(Math.max(Math.min(...heights, ask.number('L') - MILLIMETRE / 2), to), MILLIMETRE, 'down');
  return firstThat((L) => passes(ask, { L }), Math.max(from, to), to, MILLIMETRE);
}

/** A foot that surely holds: a rim or pad all round, m; a thick pad holds over all of its width. */
export interface Foot {
  readonly how: 'newPad' | 'newRim' | 'widerPad' | 'widerRim';
  readonly r: number;
  /** As the words give it: all round, but the whole width of a new pad. */
  readonly width: Amount;
  readonly change: { readonly r: number; readonly q_r?: number };
}

/** @param holds what the foot is to pass: the whole check, or its own limit by the sure end of the rim needed */
export function footFor(ask: Ask, holds: 'whole check' | 'foot'): Foot | undefined {
  const needed = settable(Math.max(sure(ask, 'r_n', 'high') ?? 0, ask.number('r') + STEP / 2), STEP, 'up');
  const all = (change: Foot['change']): boolean => passes(ask, change);
  const rim =
    holds === 'foot'
      ? needed <= WIDEST_RIM
        ? needed
        : undefined
      : needed > WIDEST_RIM
        ? undefined
        : firstThat((r) => all({ r }), needed, WIDEST_RIM, STEP);
  const now = ask.choice('foot');
  if (rim !== undefined) {
    const how = now === 'bare' ? 'newRim' : now === 'pad' ? 'widerPad' : 'widerRim';
    return { how, r: rim, width: ofLength(rim), change: { r: rim } };
  }
  if (now === 'pad') return undefined;
  const foot = sure(ask, 'B_n', 'high');
  if (foot === undefined) return undefined;
  const b = ask.number('b');
  const half = settable(Math.max((foot - b) / 2, STEP), STEP, 'up');
  const wide = (r: number) => ({ r, q_r: 1 });
  const r = holds === 'foot' ? half : firstThat((one) => all(wide(one)), half, Math.max(half, 2 * WIDEST_RIM), STEP);
  return r === undefined ? undefined : { how: 'newPad', r, width: ofLength(b + 2 * r), change: wide(r) };
}
