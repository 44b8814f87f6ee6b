import type { Announcer } from './announce';
import type { Backend, Transaction } from './database';
import { done, type Stored } from './failure';
import { readingAt } from './keys';
import { isPlain } from './plain';

/*
 * Which readings came in from a file, and so are held by one: a list for each machine beside its records, of this device
 * alone. It decides only whether to remind of saving a file; lost, the reminder comes once too often.
 */

export const HELD = 'held:';
export const heldBy = (machine: string) => `${HELD}${machine}`;

const listIn = (stored: unknown): readonly string[] =>
  isPlain(stored) && Array.isArray(stored.keys) ? stored.keys.filter((key) => typeof key === 'string') : [];

/** Keys of the readings that a file holds. */
export async function heldKeys(transaction: Transaction): Promise<ReadonlySet<string>> {
  // Seldom there is any: nothing is read then.
  if ((await transaction.count(HELD)) === 0) return new Set();
  const lists = await transaction.entries(HELD);
  return new Set(lists.flatMap(([, stored]) => listIn(stored)));
}

/** Notes that a file holds these readings; other keys are passed over. */
export function holding(backend: Backend, announce: Announcer) {
  return {
    hold: async (keys: readonly string[]): Promise<Stored<undefined>> => {
      const machines = new Map<string, string[]>();
      for (const key of keys) {
        const machine = readingAt(key)?.machine;
        if (machine === undefined) continue;
        const list = machines.get(machine);
        if (list) list.push(key);
        else machines.set(machine, [key]);
      }
      if (machines.size === 0) return done(undefined);
      const result = await backend.run('readwrite', async (transaction) => {
        for (const [machine, found] of machines) {
          const before = listIn(await transaction.get(heldBy(machine)));
          transaction.put(heldBy(machine), { type: 'held', keys: [...new Set([...before, ...found])] });
        }
        return undefined;
      });
      // Whoever counts them counts anew.
      if (result.ok) announce.say(keys);
      return result;
    },
  };
}
