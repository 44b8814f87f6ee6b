import { exact, type Amount } from '../../engine/order';
import { settable } from '../../engine/settable';
import { length } from '../../quantity/kinds';
import type { Ask } from './asking';

/** Finer steps than the usual one, that can be set as well where the band is narrow, m. */
const FINER = [0.1e-3, 0.05e-3, 0.01e-3] as const;

export const ofLength = (si: number): Amount => exact(si, length.mm);

/** The most that the usual step sets below what this hot end stands, m. */
export const mostSet = (ask: Ask): number => settable(ask.number('x_max'), ask.number('x_step'), 'down');

/**
 * The length to set: the nearest that can be set to the middle of what is surely inside the band, by the usual step where that does, else by a finer
 * one. Never above what this hot end stands. m
 */
export function lengthFor(ask: Ask): number {
  const most = ask.number('x_max');
  const low = ask.known('x_lo')?.high ?? ask.number('x_lo');
  const high = Math.min(ask.known('x_hi')?.low ?? ask.number('x_hi'), most);
  const middle = Math.max((Math.max(low, 0) + high) / 2, 0);
  const at = (step: number): number => {
    const near = settable(middle, step, 'nearest');
    return near > most ? settable(most, step, 'down') : near;
  };
  const tried = [ask.number('x_step'), ...FINER].map(at);
  return tried.find((x_set) => ask.after({ x_set }) === 'within') ?? tried[0] ?? most;
}

/** Where a test piece starts: at what the listed flow values point to, in steps that can be set. m */
export function startAt(ask: Ask): number {
  const step = ask.number('x_step');
  return Math.min(Math.max(settable(ask.number('x_r'), step, 'nearest'), step), mostSet(ask));
}
