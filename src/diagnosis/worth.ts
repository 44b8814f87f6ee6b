import type { Cause, Remedy } from './types';

/** What an hour is worth where the person has not said (common practice; in the same money as the costs). */
export const WORTH = 20;

/** Minutes of a remedy, its parts counted as the minutes that would earn them. */
export function effortOf(remedy: Remedy, worth: number = WORTH): number {
  return remedy.minutes + (60 * remedy.cost) / worth;
}

/** Totals nearer than this are alike: the times and prices are rough. */
const ALIKE = 0.2;

/**
 * Repair and replacement side by side, each by its total in money: parts, and minutes at the hourly worth.
 * @param worth of an hour, above zero
 */
export function weigh(
  cause: Cause,
  worth: number = WORTH,
): { readonly mend: number; readonly replace: number | undefined; readonly cheaper: 'mend' | 'replace' | 'alike' } {
  const total = (remedy: Remedy): number => remedy.cost + (remedy.minutes / 60) * worth;
  const mend = total(cause.mend);
  if (!cause.replace) return { mend, replace: undefined, cheaper: 'mend' };
  const replace = total(cause.replace);
  const alike = Math.abs(mend - replace) < ALIKE * Math.max(mend, replace);
  return { mend, replace, cheaper: alike ? 'alike' : mend < replace ? 'mend' : 'replace' };
}
