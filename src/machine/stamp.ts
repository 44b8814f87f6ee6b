import type { Reading } from './schema';

/**
 * The order of what was done to one machine: by ordinal, a counter as of Lamport (Communications of the ACM 21, 1978), since a
 * clock can be wrong; where two devices gave the same one, by time.
 */

/** When something was done: its ordinal (none or zero where an earlier version did not count) and its time, ISO 8601. */
export interface Stamp {
  readonly ordinal?: number | undefined;
  readonly at: string;
}

/** A clock set by hand, or one between two devices, may be off by this much and still tell which came first. */
const SLACK_MS = 5 * 60_000;

/** True for a time that has not come: the clock was wrong when it was taken, or is now. */
export const isAhead = (at: string, now: Date): boolean => Date.parse(at) > now.getTime() + SLACK_MS;

const sign = (a: string | number, b: string | number): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Below zero where `a` came first, above where `b` did; zero where it cannot be told.
 * @param now where it is given, a time that has not come tells nothing
 */
export function compareStamps(a: Stamp, b: Stamp, now?: Date): number {
  const counted = sign(a.ordinal ?? 0, b.ordinal ?? 0);
  if (counted !== 0) return counted;
  const told = (at: string) => (now && isAhead(at, now) ? '' : at);
  return sign(told(a.at), told(b.at));
}

/** Two readings of one machine in their order, as their keys lie. */
export const compareReadings = (
  a: Pick<Reading, 'ordinal' | 'at' | 'id'>,
  b: Pick<Reading, 'ordinal' | 'at' | 'id'>,
): number => sign(a.ordinal, b.ordinal) || sign(a.at, b.at) || sign(a.id, b.id);
