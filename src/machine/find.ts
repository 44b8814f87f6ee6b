import { asUnreadable, inPlace, type Unreadable } from './aside';
import type { Backend, Entries } from './database';
import { done, failed, type Failure, type Stored } from './failure';
import { HELD, heldKeys } from './held';
import { readingAt, readingKey, readingsOf, type Key, type Prefix, type ReadingAt, type RecordAt } from './keys';
import { restoreAt } from './restore-at';
import type { Reading, Restored, StoredRecord } from './schema';
import { isPlain } from './plain';
import { breathe, goOn, type Watch } from './steps';
import { checkNow } from '../reference/renamed';

export interface Listing<R> {
  /** In order of keys: a machine's readings from the first to the last. */
  readonly records: readonly R[];
  readonly unreadable: readonly Unreadable[];
}

/** Which of a machine's readings are wanted, from the newest back. */
export interface Latest {
  /** The most that are wanted; all without it. */
  readonly limit?: number;
  /** Those of this check only. */
  readonly calculator?: string | undefined;
  /** Where a page before this one ended. */
  readonly before?: string | undefined;
}

/** Some of a machine's readings, newest first. */
export interface Page extends Listing<Reading> {
  /** To ask for the rest with; undefined where there is none. */
  readonly next: string | undefined;
}

export const cannotRead = (restored: Extract<Restored, { ok: false }>): Failure =>
  failed(restored.newer ? 'newer' : 'unreadable', restored.reason);

/** A key's prefix fixes the type of the record that `restoreAt` lets through. */
export const typed = <K extends string>(record: StoredRecord): RecordAt<K> => record as RecordAt<K>;

/** What was found at a key, as its record. */
function read<K extends string>(key: string, stored: unknown): Stored<RecordAt<K>> {
  const restored = restoreAt(key, stored);
  return restored.ok ? done(typed<K>(restored.record)) : cannotRead(restored);
}

/** Readings per transaction: a write waits for one part at the most, and a part is checked well within a frame or two. */
const PART = 100;

/** A record of an older version may name its check by an older name. */
const isOf = (stored: unknown, check: string): boolean => typeof stored === 'string' && checkNow(stored) === check;

/**
 * What stands at a prefix, in parts from the last back; between them the page, and whoever writes, has a turn.
 * @param count how many the next part holds at the most
 * @param before where a part before it ended
 */
async function* backwards(
  backend: Backend,
  prefix: string,
  count: () => number,
  before?: string,
): AsyncGenerator<Stored<Entries>, void, void> {
  let end = before;
  for (;;) {
    const [most, at] = [count(), end];
    const found = await backend.run('readonly', (transaction) => transaction.last(prefix, most, at));
    yield found;
    if (!found.ok || found.value.length < most) return;
    end = found.value[0]?.[0];
    await breathe();
  }
}

/** Records to a part of a whole listing, and photos, which are heavy. */
const LISTED = 250;
const PHOTOS = 10;

/** All that stands at a prefix, read in parts, oldest first. @throws Cancelled */
async function all<P extends Prefix>(
  backend: Backend,
  prefix: P,
  watch: Watch | undefined,
): Promise<Stored<Listing<RecordAt<P>>>> {
  const size = prefix.startsWith('photo:') ? PHOTOS : LISTED;
  // Only who waits is told how far it is.
  const total = watch ? await backend.run('readonly', (transaction) => transaction.count(prefix)) : done(0);
  if (!total.ok) return total;
  const records: RecordAt<P>[] = [];
  const unreadable: Unreadable[] = [];
  for await (const found of backwards(backend, prefix, () => size)) {
    goOn(watch);
    if (!found.ok) return found;
    for (const [key, stored] of [...found.value].reverse()) {
      const restored = restoreAt(key, stored);
      if (restored.ok) records.push(typed<P>(restored.record));
      else unreadable.push(inPlace(key, stored, restored.reason));
    }
    watch?.tell(Math.min(1, records.length / Math.max(1, total.value)));
  }
  return done({ records: records.reverse(), unreadable: unreadable.reverse() });
}

async function latest(backend: Backend, machine: string, want: Latest): Promise<Stored<Page>> {
  const prefix = readingsOf(machine);
  const { limit = Infinity, calculator } = want;
  const records: Reading[] = [];
  const unreadable: Unreadable[] = [];
  const count = () => (calculator === undefined ? Math.min(PART, limit - records.length) : PART);
  for await (const found of backwards(backend, prefix, count, want.before)) {
    if (!found.ok) return found;
    for (const [key, stored] of [...found.value].reverse()) {
      // Of another check: not worth the checking of every field.
      if (calculator !== undefined && isPlain(stored) && !isOf(stored.calculator, calculator)) continue;
      const restored = restoreAt(key, stored);
      if (restored.ok) records.push(typed<typeof prefix>(restored.record));
      else unreadable.push(inPlace(key, stored, restored.reason));
      if (records.length === limit) return done({ records, unreadable, next: key });
    }
  }
  return done({ records, unreadable, next: undefined });
}

/** What only reads, on any backend: see `Store`. */
export function finding(backend: Backend) {
  return {
    async get<K extends Key>(key: K) {
      const found = await backend.run('readonly', (transaction) => transaction.get(key));
      if (!found.ok || found.value === undefined) return found.ok ? done(undefined) : found;
      return read<K>(key, found.value);
    },
    list: <P extends Prefix>(prefix: P, watch?: Watch): Promise<Stored<Listing<RecordAt<P>>>> =>
      all(backend, prefix, watch),
    async reading({ machine, at, id }: Pick<ReadingAt, 'machine' | 'at' | 'id'>): Promise<Stored<Reading | undefined>> {
      const bare = readingKey({ machine, ordinal: 0, at, id });
      const found = await backend.run('readonly', async (transaction) => {
        const uncounted = await transaction.get(bare);
        if (uncounted !== undefined) return [bare, uncounted] as const;
        const keys = await transaction.keys(readingsOf(machine));
        const key = keys.findLast((one) => {
          const taken = readingAt(one);
          return taken?.id === id && taken.at === at;
        });
        return key === undefined ? undefined : ([key, await transaction.get(key)] as const);
      });
      if (!found.ok || found.value === undefined) return found.ok ? done(undefined) : found;
      return read<`reading:${string}`>(...found.value);
    },
    latest: (machine: string, want: Latest) => latest(backend, machine, want),
    async countUnheld(after = ''): Promise<Stored<ReadonlyMap<string, number>>> {
      const found = await backend.run('readonly', async (transaction) => {
        const keys = await transaction.keys('reading:');
        return { keys, held: await heldKeys(transaction) };
      });
      if (!found.ok) return found;
      const { keys, held } = found.value;
      const counts = new Map<string, number>();
      for (const key of keys) {
        const taken = readingAt(key);
        if (!taken || taken.at <= after || held.has(key)) continue;
        counts.set(taken.machine, (counts.get(taken.machine) ?? 0) + 1);
      }
      return done(counts);
    },
    async listAside(): Promise<Stored<readonly Unreadable[]>> {
      const unreadable: Unreadable[] = [];
      for await (const found of backwards(backend, '', () => PART)) {
        if (!found.ok) return found;
        const others = found.value.filter(([key]) => !key.startsWith(HELD));
        unreadable.push(...others.flatMap(([key, stored]) => asUnreadable(key, stored) ?? []).reverse());
      }
      return done(unreadable.reverse());
    },
  };
}
