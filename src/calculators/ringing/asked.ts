import { acceleration, length, ratio, speed } from '../../quantity/kinds';
import { fromSi, toSi } from '../../quantity/unit';
import type { AskOf } from '../../engine/calculator';
import { exact, type Amount } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;

/** A value in two digits, by the rounding given. */
function twoDigits(x: number, round: (y: number) => number): number {
  const size = 10 ** (Math.floor(Math.log10(x)) - 1);
  // A value that has two digits already stays, whatever a float makes of it.
  return round(Number((x / size).toPrecision(9))) * size;
}

/** What a hand sets: an acceleration to 50 mm/s², a speed through corners to half a millimetre a second. */
export const STEPS = { a: 0.05, v_c: 5e-4 } as const;

const MEASURES = { a: acceleration.mm_s2, v_c: speed.mm_s } as const;
export const setTo = (symbol: keyof typeof MEASURES, si: number): Amount => exact(si, MEASURES[symbol]);
export const distance = (si: number): Amount => exact(si, length.mm);

/** The most of a result that is surely right, in steps that can be set: "at most this". */
export function most(ask: Ask, symbol: 'a_s' | 'v_m'): Amount {
  const of = symbol === 'a_s' ? 'a' : 'v_c';
  ask.need(symbol);
  const sure = ask.known(symbol)?.low ?? 0;
  return setTo(of, settable(Math.max(0, sure), STEPS[of], 'down'));
}

/** Factor to stiffen by so that it surely suffices, to two digits, rounded up. */
export function times(ask: Ask): Amount {
  ask.need('r_k');
  return exact(twoDigits(ask.known('r_k')?.high ?? 1, Math.ceil), ratio.one);
}

/** Length of the ramp, to two digits. */
export const ramp = (ask: Ask): Amount =>
  exact(toSi(Number(fromSi(ask.number('l_r'), length.mm.unit).toPrecision(2)), length.mm.unit), length.mm);
