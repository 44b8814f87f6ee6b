import { createStore, promisifyRequest, type UseStore } from 'idb-keyval';
import { done, explainError, HELD_UP, isStorageError, mayPass, Refusal, type Stored } from './failure';
import say from './words/en';

export type Entries = readonly (readonly [key: string, value: unknown])[];

/** What can be done within one transaction. Await nothing else in it: it would end. */
export interface Transaction {
  get(key: string): Promise<unknown>;
  /** All that stands at keys beginning with `prefix`, in order of keys. */
  entries(prefix: string): Promise<Entries>;
  /** The last `count` of them, of those before the key `before` if it is given; in order of keys. */
  last(prefix: string, count: number, before?: string): Promise<Entries>;
  /** How many keys begin with `prefix`. */
  count(prefix: string): Promise<number>;
  /** The keys beginning with `prefix`, in order. */
  keys(prefix: string): Promise<readonly string[]>;
  put(key: string, value: unknown): void;
  remove(key: string): void;
}

/** Somewhere to keep records. All of a transaction happens, or nothing of it. */
export interface Backend {
  /**
   * Runs `body` in a transaction; a `Refusal` thrown in it undoes the transaction and becomes the result. The body may be
   * run again after a failure, as long as it has written nothing.
   * @throws what `body` throws, other than a `Refusal` or an error of the storage
   */
  run<T>(mode: IDBTransactionMode, body: (transaction: Transaction) => Promise<T>): Promise<Stored<T>>;
}

export interface DatabaseOptions {
  readonly createStore: (database: string, store: string) => UseStore;
  /** Waits before each new attempt: their number bounds the attempts. */
  readonly pausesMs: readonly number[];
  /** How long one attempt may take to open. */
  readonly openMs: number;
}

export const databaseOptions: DatabaseOptions = { createStore, pausesMs: [100, 400, 1600], openMs: 2500 };

const DATABASE = 'trammel';
const RECORDS = 'records';

/** How far an attempt came. */
interface Progress {
  began: boolean;
  wrote: boolean;
}

const later = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** Beyond every key that begins with `prefix`. */
const endOf = (prefix: string) => `${prefix}\uffff`;

const from = (first: string, before: string) => IDBKeyRange.bound(first, before, false, true);

async function entriesIn(store: IDBObjectStore, range: IDBKeyRange): Promise<Entries> {
  const [keys, values] = await Promise.all([
    promisifyRequest(store.getAllKeys(range)),
    promisifyRequest<unknown[]>(store.getAll(range)),
  ]);
  return keys.flatMap((key, i) => (typeof key === 'string' ? [[key, values[i]] as const] : []));
}

/** The key at which the last `count` of a range begin; undefined where the range holds fewer. */
function startOfLast(store: IDBObjectStore, range: IDBKeyRange, count: number): Promise<string | undefined> {
  return new Promise((resolve, reject) => {
    const request = store.openKeyCursor(range, 'prev');
    let ahead = count - 1;
    request.onsuccess = () => {
      const cursor = request.result;
      if (cursor && ahead > 0) {
        cursor.advance(ahead);
        ahead = 0;
      } else resolve(typeof cursor?.key === 'string' ? cursor.key : undefined);
    };
    request.onerror = () => reject(request.error ?? new DOMException(say.store.cutShort, 'AbortError'));
  });
}

function transactionOn(store: IDBObjectStore, progress: Progress): Transaction {
  return {
    get: (key) => promisifyRequest<unknown>(store.get(key)),
    entries: (prefix) => entriesIn(store, from(prefix, endOf(prefix))),
    async last(prefix, count, before = endOf(prefix)) {
      const start = await startOfLast(store, from(prefix, before), count);
      return entriesIn(store, from(start ?? prefix, before));
    },
    count: (prefix) => promisifyRequest(store.count(from(prefix, endOf(prefix)))),
    async keys(prefix) {
      const keys = await promisifyRequest(store.getAllKeys(from(prefix, endOf(prefix))));
      return keys.filter((key) => typeof key === 'string');
    },
    put(key, value) {
      progress.wrote = true;
      store.put(value, key);
    },
    remove(key) {
      progress.wrote = true;
      store.delete(key);
    },
  };
}

/** What a request says whose transaction has ended, before or while it waited. */
const ENDED = ['AbortError', 'TransactionInactiveError', 'InvalidStateError'];

async function within<T>(store: IDBObjectStore, body: (t: Transaction) => Promise<T>, progress: Progress): Promise<T> {
  const transaction = store.transaction;
  const committed = promisifyRequest(transaction);
  // Looked at below in either case; without this, an abort that comes before the body's own error counts as unhandled.
  committed.catch(() => undefined);
  try {
    const value = await body(transactionOn(store, progress));
    await committed;
    return value;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    const end = await committed.then(
      () => null,
      (reason: unknown) => reason,
    );
    // A request cut short, or made when all had ended, says only that; the transaction knows why.
    throw error instanceof DOMException && ENDED.includes(error.name) && end !== null ? end : error;
  }
}

/** One attempt. An open that comes after its time is up does nothing, so that no write happens twice. */
function attempt<T>(
  use: UseStore,
  mode: IDBTransactionMode,
  body: (t: Transaction) => Promise<T>,
  openMs: number,
  progress: Progress,
): Promise<T> {
  return new Promise<T>((resolve, reject) => {
    const heldUp = new DOMException('opening takes too long', HELD_UP);
    let late = false;
    const timer = setTimeout(() => {
      late = true;
      reject(heldUp);
    }, openMs);
    const opened = (store: IDBObjectStore): Promise<T> => {
      if (late) throw heldUp;
      clearTimeout(timer);
      progress.began = true;
      return within(store, body, progress);
    };
    // `use` throws at once where there is no indexedDB; inside `then` that is a rejection like the others.
    void Promise.resolve()
      .then(() => use(mode, opened))
      .then(resolve, reject)
      .finally(() => clearTimeout(timer));
  });
}

/**
 * The browser's database through idb-keyval. idb-keyval keeps its connection: 6.2.5 even a failed one, 6.3.0 still one
 * that the browser closed without saying so (a locked phone) and an open that never answers. So every failure here drops
 * the connection, and what wrote nothing is tried again on a fresh one.
 */
export function database(options: DatabaseOptions): Backend {
  let current: UseStore | undefined;
  return {
    async run(mode, body) {
      let last: unknown;
      for (const pause of [0, ...options.pausesMs]) {
        if (pause > 0) await later(pause);
        const progress: Progress = { began: false, wrote: false };
        const use = (current ??= options.createStore(DATABASE, RECORDS));
        try {
          return done(await attempt(use, mode, body, options.openMs, progress));
        } catch (error) {
          if (error instanceof Refusal) return error.failure;
          if (progress.began && !isStorageError(error)) throw error;
          if (current === use) current = undefined;
          last = error;
          if (progress.wrote || !mayPass(error)) break;
        }
      }
      return explainError(last);
    },
  };
}
