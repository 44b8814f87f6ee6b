import type { AskOf } from '../../engine/calculator';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import type words from './words/en';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
export type Result = Parameters<Ask['known']>[0];
export type PartKey = keyof typeof words.parts;
