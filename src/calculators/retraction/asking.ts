import type { AskOf } from '../../engine/calculator';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

/** What this check's orders may ask. */
export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
