import type { Cause, Way } from './types';

/** What an hour is worth where the person has not said (common practice; in the same money as the costs). */
export const WORTH = 20;

/** Minutes of a way, its parts counted as the minutes that would earn them. */
export function effortOf(way: Way, worth: number = WORTH): number {
  return way.minutes + (60 * way.cost) / worth;
}

export interface Weighed {
  readonly way: Way;
  /** Parts, and minutes at the hourly worth, in money. */
  readonly total: number;
}

/** Totals nearer than this are alike: the times and prices are rough. */
const ALIKE = 0.2;

/**
 * Repair and replacement side by side, each with its total in money.
 * @param worth of an hour, above zero
 */
export function weigh(
  cause: Cause,
  worth: number = WORTH,
): { readonly mend: Weighed; readonly replace: Weighed | undefined; readonly cheaper: 'mend' | 'replace' | 'alike' } {
  const weighed = (way: Way): Weighed => ({ way, total: way.cost + (way.minutes / 60) * worth });
  const mend = weighed(cause.mend);
  if (!cause.replace) return { mend, replace: undefined, cheaper: 'mend' };
  const replace = weighed(cause.replace);
  const alike = Math.abs(mend.total - replace.total) < ALIKE * Math.max(mend.total, replace.total);
  return { mend, replace, cheaper: alike ? 'alike' : mend.total < replace.total ? 'mend' : 'replace' };
}
