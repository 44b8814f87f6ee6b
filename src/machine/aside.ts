import * as v from 'valibot';
import type { Transaction } from './database';
import { restoreAt } from './restore-at';
import { time } from './schema-parts';
import { isPlain } from './plain';

const ASIDE = 'aside:';

/** A record that cannot be read, kept as it was found. */
export interface Unreadable {
  /** Where it lies now: for `discard`. */
  readonly at: string;
  /** Where it was found. */
  readonly key: string;
  /** When it was set aside (ISO 8601); null where it still stands in its place. */
  readonly since: string | null;
  readonly reason: string;
  /** To save to a file. */
  readonly stored: unknown;
}

const envelope = v.object({ type: v.literal('aside'), key: v.string(), since: time, reason: v.string() });

/** Copies what cannot be read out of the way of a write, within the same transaction, under a key not yet used. */
export async function setAside(
  transaction: Transaction,
  key: string,
  stored: unknown,
  reason: string,
  since: string,
): Promise<void> {
  let at = `${ASIDE}${key}@${since}`;
  while ((await transaction.get(at)) !== undefined) at += '+';
  transaction.put(at, { type: 'aside', key, since, reason, stored });
}

/** What stands in its place and cannot be read. */
export const inPlace = (key: string, stored: unknown, reason: string): Unreadable => ({
  at: key,
  key,
  since: null,
  reason,
  stored,
});

/** What was found at a key, if it was set aside or cannot be read. */
export function asUnreadable(at: string, stored: unknown): Unreadable | undefined {
  if (at.startsWith(ASIDE) && isPlain(stored)) {
    const read = v.safeParse(envelope, stored);
    if (read.success) {
      const { key, since, reason } = read.output;
      // In the words of today; in those of then where today it could be read.
      const again = restoreAt(key, stored.stored);
      return { at, key, since, reason: again.ok ? reason : again.reason, stored: stored.stored };
    }
  }
  const restored = restoreAt(at, stored);
  return restored.ok ? undefined : inPlace(at, stored, restored.reason);
}
