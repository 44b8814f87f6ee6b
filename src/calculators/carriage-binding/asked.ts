import type { AskOf } from '../../engine/calculator';
import type { Amount } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
/** Inputs that a hand can change. */
export type Lever = 'd_0' | 's' | 'dx' | 'a' | 'e' | 'e_l';

/** What a hand sets: a drive's point or a mass to the millimetre, a share to a twentieth, an acceleration to 50 mm/s². */
export const STEPS: Readonly<Record<Lever, number>> = { d_0: 1e-3, e: 1e-3, e_l: 1e-3, dx: 1e-4, s: 0.05, a: 0.05 };

/** The mass centre's input, by how the carriage is driven. */
export const massOf = (ask: Ask): 'e' | 'e_l' => (ask.choice('drive') === 'both' ? 'e_l' : 'e');

/** A value to set, in the unit that the person reads this in. */
export const set = (ask: Ask, symbol: Lever, si: number): Amount => ({ ...ask.quantity(symbol), si, width: 0 });
