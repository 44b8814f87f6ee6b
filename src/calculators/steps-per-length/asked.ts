import type { Context } from '../../engine/calculator';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

type Results = (typeof formulas)[number]['text'] extends infer T
  ? T extends `${infer S} =${string}`
    ? S
    : never
  : never;
export type Ask = Context<Results | keyof typeof inputs, typeof choices>;

export const AXES = { x: 'X', y: 'Y', z: 'Z', zb: 'Z', feed: 'the filament feed' } as const;

/** "80 steps per mm" for the "80 1/mm" of the tables. */
export function stepsText(ctx: Ask, symbol: 'S_0' | 'S_c' | 'S_n'): string {
  return ctx
    .text(symbol)
    .replace(/\u00a01\/(mm|in)$/, (_, unit: string) => `\u00a0steps per ${unit === 'in' ? 'inch' : unit}`);
}
