import type { Backend, Transaction } from './database';
import { done, Refusal } from './failure';

// No copies as the database makes them: the door builds a new record on the way in and on the way out.
function transactionOn(records: Map<string, unknown>): Transaction {
  const entries = (prefix: string) =>
    [...records].filter(([key]) => key.startsWith(prefix)).sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    get: (key) => Promise.resolve(records.get(key)),
    entries: (prefix) => Promise.resolve(entries(prefix)),
    last: (prefix, count, before) =>
      Promise.resolve(
        entries(prefix)
          .filter(([key]) => before === undefined || key < before)
          .slice(-count),
      ),
    count: (prefix) => Promise.resolve(entries(prefix).length),
    keys: (prefix) => Promise.resolve(entries(prefix).map(([key]) => key)),
    put: (key, value) => void records.set(key, value),
    remove: (key) => void records.delete(key),
  };
}

/** Keeps records until the page is closed: what stands in where the browser keeps nothing. */
export function memory(): Backend {
  let records = new Map<string, unknown>();
  let last: Promise<unknown> = Promise.resolve();
  return {
    run(_mode, body) {
      const result = last.then(async () => {
        const copy = new Map(records);
        try {
          const value = await body(transactionOn(copy));
          records = copy;
          return done(value);
        } catch (error) {
          if (error instanceof Refusal) return error.failure;
          throw error;
        }
      });
      // The next transaction waits for this one, however it ended; its own caller hears of a failure.
      last = result.catch(() => undefined);
      return result;
    },
  };
}
