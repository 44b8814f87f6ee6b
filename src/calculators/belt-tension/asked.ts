import type { AskOf } from '../../engine/calculator';
import { acceleration, angle, force, frequency, length } from '../../quantity/kinds';
import { exact, type Amount } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;

/** Least step of a note that a hand tunes to, Hz: one, and less where that would be too coarse. */
export const tuningStep = (note: number): number => (note < 30 ? 0.1 : note < 100 ? 0.5 : 1);
/** Division of a luggage scale, N. */
export const SCALE_STEP = 0.1;
/** An acceleration is set in steps of 50 mm/s². */
export const ACCELERATION_STEP = 0.05;
/** What a hand turns surely of a screw, rev in radians: an eighth. */
export const TURN_STEP = Math.PI / 4;
/** What a hand slides a motor by, m. */
export const SLIDE_STEP = 5e-4;

export const hertz = (si: number): Amount => exact(si, frequency.Hz);
export const newton = (si: number): Amount => exact(si, force.N);
export const turns = (si: number): Amount => exact(si, angle.turn);
export const way = (si: number): Amount => exact(si, length.mm);
export const slower = (si: number): Amount => exact(si, acceleration.mm_s2);
