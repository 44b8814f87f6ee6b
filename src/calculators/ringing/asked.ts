import { acceleration, length, ratio, speed } from '../../quantity/kinds';
import { fromSi, toSi, type Measure } from '../../quantity/unit';
import type { AskOf } from '../../engine/calculator';
import type { Amount } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;

/** What a set value is worth giving to: two digits, rounded to the quiet side. */
function quietly(x: number, round: (y: number) => number): number {
  const size = 10 ** (Math.floor(Math.log10(x)) - 1);
  // A value that has two digits already stays, whatever a float makes of it.
  return round(Number((x / size).toPrecision(9))) * size;
}

const amount = (si: number, { kind, unit }: Measure): Amount => ({ si, width: 0, kind: kind.id, unit: unit.id });

const MEASURES = { a_s: acceleration.mm_s2, v_m: speed.mm_s } as const;

/** "620 mm/s²": at most this. */
export function most(ask: Ask, symbol: keyof typeof MEASURES): Amount {
  const measure: Measure = MEASURES[symbol];
  const shown = quietly(fromSi(ask.number(symbol), measure.unit), Math.floor);
  return amount(toSi(Number(shown.toPrecision(6)), measure.unit), measure);
}

/** Factor to stiffen by, to two digits, rounded up. */
export const times = (ask: Ask): Amount => amount(quietly(ask.number('r_k'), Math.ceil), ratio.one);

/** Length of the ramp, to two digits. */
export const ramp = (ask: Ask): Amount =>
  amount(toSi(Number(fromSi(ask.number('l_r'), length.mm.unit).toPrecision(2)), length.mm.unit), length.mm);
