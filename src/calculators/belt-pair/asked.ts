import type { AskOf } from '../../engine/calculator';
import { frequency } from '../../quantity/kinds';
import { exact, type Amount } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;

/** Least step of a note that a hand tunes to, Hz: one, and less where that would be too coarse. */
export const tuningStep = (note: number): number => (note < 30 ? 0.1 : note < 100 ? 0.5 : 1);

export const hertz = (si: number): Amount => exact(si, frequency.Hz);
