import type { AskOf } from '../../engine/calculator';
import { telling } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
export const { tell, step, contradict } = telling<typeof words>();

export const twoMotors = (ask: Ask): boolean => ask.choice('screws') === 'two' && ask.choice('drive') === 'motors';
export const byBelt = (ask: Ask): boolean => ask.choice('screws') === 'two' && ask.choice('drive') === 'belt';
