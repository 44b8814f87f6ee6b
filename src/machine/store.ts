import { announcer, openChannel, type Announcer, type Change } from './announce';
import { asUnreadable, inPlace, setAside, type Unreadable } from './aside';
import { database, databaseOptions, type Backend, type DatabaseOptions, type Transaction } from './database';
import { done, failed, isStorageFailure, Refusal, type Failure, type Stored } from './failure';
import { draftsOf, keyOf, machineKey, readingsOf, restoreAt, type Key, type Prefix, type RecordAt } from './keys';
import { memory } from './memory';
import { restore, type Restored, type StoredRecord } from './schema';

/** `kept`, or why not: `failing` until it works again, `not kept` until the page is opened anew. */
export type StorageState =
  { readonly kind: 'kept' } | { readonly kind: 'failing' | 'not kept'; readonly failure: Failure };

export interface Listing<R> {
  /** In order of keys: readings oldest first. */
  readonly records: readonly R[];
  readonly unreadable: readonly Unreadable[];
}

/**
 * Where records are kept. Nothing here rejects for a fault of the storage or of a record: the result says so. A record
 * that cannot be read is never lost: it stays where it is, or is set aside before anything is written in its place; one
 * written by a newer Trammel is not written over at all.
 */
export interface Store {
  get<K extends Key>(key: K): Promise<Stored<RecordAt<K> | undefined>>;
  list<P extends Prefix>(prefix: P): Promise<Stored<Listing<RecordAt<P>>>>;
  /** Writes whole records, all or none. For an edit use `change`, which loses nothing that another tab wrote. */
  save(...records: readonly StoredRecord[]): Promise<Stored<undefined>>;
  /**
   * Reads, edits and writes one record in one transaction.
   * @param edit gets undefined where there is no record (or none that can be read); what it returns must belong at the
   * same key; undefined leaves all as it is. May be run more than once.
   * @returns the record as it now stands
   * @throws what `edit` throws
   */
  change<K extends Key>(
    key: K,
    edit: (record: RecordAt<K> | undefined) => RecordAt<K> | undefined,
  ): Promise<Stored<RecordAt<K> | undefined>>;
  remove(...keys: readonly Key[]): Promise<Stored<undefined>>;
  /** Removes a machine with its readings and drafts. */
  removeMachine(id: string): Promise<Stored<undefined>>;
  /** Everything that cannot be read: what was set aside, and what still stands in its place. Reads all there is. */
  listAside(): Promise<Stored<readonly Unreadable[]>>;
  /** Forgets one unreadable record for good: only when the person says so. A record that can be read is left alone. */
  discard(at: string): Promise<Stored<undefined>>;
  state(): StorageState;
  /** Calls back when records changed, here or in another tab. @returns a function that ends it */
  subscribe(listener: (change: Change) => void): () => void;
  /** Calls back when keeping begins to fail or works again. @returns a function that ends it */
  onState(listener: (state: StorageState) => void): () => void;
  close(): void;
}

export interface StoreOptions extends DatabaseOptions {
  readonly now: () => Date;
  readonly openChannel: () => BroadcastChannel | undefined;
}

const cannotRead = (restored: Extract<Restored, { ok: false }>): Failure =>
  failed(restored.newer ? 'newer' : 'unreadable', restored.reason);

/** A key's prefix fixes the type of the record that `restoreAt` lets through. */
const typed = <K extends string>(record: StoredRecord): RecordAt<K> => record as RecordAt<K>;

/** Clears a key for writing: what cannot be read is set aside. @throws Refusal where a newer Trammel wrote it */
async function makeRoom(transaction: Transaction, key: string, stored: unknown, now: Date): Promise<void> {
  if (stored === undefined) return;
  const restored = restoreAt(key, stored);
  if (restored.ok) return;
  if (restored.newer)
    throw new Refusal(failed('newer', `${restored.reason} It was left as it is; nothing was changed.`));
  await setAside(transaction, key, stored, restored.reason, now.toISOString());
}

/** What does not pass the door could not be read back. @throws Refusal */
function checked(record: StoredRecord, key: string): StoredRecord {
  const restored = restore(record);
  if (!restored.ok) throw new Refusal(failed('refused', `Not saved. ${restored.reason}`));
  if (keyOf(restored.record) !== key) throw new Refusal(failed('refused', 'Not saved. The record belongs elsewhere.'));
  return restored.record;
}

function reading(backend: Backend): Pick<Store, 'get' | 'list' | 'listAside'> {
  return {
    async get<K extends Key>(key: K) {
      const found = await backend.run('readonly', (transaction) => transaction.get(key));
      if (!found.ok || found.value === undefined) return found.ok ? done(undefined) : found;
      const restored = restoreAt(key, found.value);
      return restored.ok ? done(typed<K>(restored.record)) : cannotRead(restored);
    },
    async list<P extends Prefix>(prefix: P) {
      const found = await backend.run('readonly', (transaction) => transaction.entries(prefix));
      if (!found.ok) return found;
      const records: RecordAt<P>[] = [];
      const unreadable: Unreadable[] = [];
      for (const [key, stored] of found.value) {
        const restored = restoreAt(key, stored);
        if (restored.ok) records.push(typed<P>(restored.record));
        else unreadable.push(inPlace(key, stored, restored.reason));
      }
      return done({ records, unreadable });
    },
    async listAside() {
      const found = await backend.run('readonly', (transaction) => transaction.entries(''));
      return found.ok ? done(found.value.flatMap(([key, stored]) => asUnreadable(key, stored) ?? [])) : found;
    },
  };
}

function changing(backend: Backend, announce: Announcer, now: () => Date): Pick<Store, 'save' | 'change'> {
  return {
    async save(...records) {
      const result = await backend.run('readwrite', async (transaction) => {
        for (const record of records) {
          const key = keyOf(record);
          const kept = checked(record, key);
          await makeRoom(transaction, key, await transaction.get(key), now());
          transaction.put(key, kept);
        }
        return undefined;
      });
      if (result.ok) announce.say(records.map(keyOf));
      return result;
    },
    async change<K extends Key>(key: K, edit: (record: RecordAt<K> | undefined) => RecordAt<K> | undefined) {
      let mistake: { readonly error: unknown } | undefined;
      const result = await backend.run('readwrite', async (transaction) => {
        const stored = await transaction.get(key);
        const restored = restoreAt(key, stored);
        const old = restored.ok ? typed<K>(restored.record) : undefined;
        let edited: RecordAt<K> | undefined;
        try {
          edited = edit(old);
        } catch (error) {
          mistake = { error };
          throw new Refusal(failed('refused', 'Not saved.'));
        }
        if (edited === undefined) return { record: old, wrote: false };
        const kept = checked(edited, key);
        await makeRoom(transaction, key, stored, now());
        transaction.put(key, kept);
        return { record: typed<K>(kept), wrote: true };
      });
      if (mistake) throw mistake.error;
      if (!result.ok) return result;
      if (result.value.wrote) announce.say([key]);
      return done(result.value.record);
    },
  };
}

function removing(backend: Backend, announce: Announcer, now: () => Date) {
  const remove = async (find: (transaction: Transaction) => Promise<readonly (readonly [string, unknown])[]>) => {
    const result = await backend.run('readwrite', async (transaction) => {
      const found = (await find(transaction)).filter(([, stored]) => stored !== undefined);
      for (const [key, stored] of found) {
        await makeRoom(transaction, key, stored, now());
        transaction.remove(key);
      }
      return found.map(([key]) => key);
    });
    if (!result.ok) return result;
    announce.say(result.value);
    return done(undefined);
  };
  const at = (transaction: Transaction, keys: readonly string[]) =>
    Promise.all(keys.map(async (key) => [key, await transaction.get(key)] as const));
  return {
    remove: (...keys: readonly Key[]) => remove((transaction) => at(transaction, keys)),
    removeMachine: (id: string) =>
      remove(async (transaction) => [
        ...(await at(transaction, [machineKey(id)])),
        ...(await transaction.entries(readingsOf(id))),
        ...(await transaction.entries(draftsOf(id))),
      ]),
    async discard(key: string): Promise<Stored<undefined>> {
      const result = await backend.run('readwrite', async (transaction) => {
        const stored = await transaction.get(key);
        const wanted = stored !== undefined && asUnreadable(key, stored) !== undefined;
        if (wanted) transaction.remove(key);
        return wanted ? [key] : [];
      });
      if (!result.ok) return result;
      announce.say(result.value);
      return done(undefined);
    },
  };
}

/** Passes every result through, and tells when keeping begins to fail or works again. */
function watched(backend: Backend, tell: (state: StorageState) => void): Backend {
  let writesFail = false;
  return {
    async run(mode, body) {
      const result = await backend.run(mode, body);
      const writing = mode === 'readwrite';
      // A full store can still be read: only a write shows that there is room again.
      if (result.ok && (writing || !writesFail)) {
        writesFail = false;
        tell({ kind: 'kept' });
      } else if (!result.ok && isStorageFailure(result)) {
        writesFail ||= writing;
        tell({ kind: 'failing', failure: result });
      }
      return result;
    },
  };
}

/**
 * Opens the store. Where the browser's storage cannot be had after several attempts, everything works on in memory and
 * the state says that nothing is being kept, and why.
 */
export async function openStore(given: Partial<StoreOptions> = {}): Promise<Store> {
  const options: StoreOptions = { ...databaseOptions, now: () => new Date(), openChannel, ...given };
  const listeners = new Set<(state: StorageState) => void>();
  let state: StorageState = { kind: 'kept' };
  const tell = (next: StorageState) => {
    if (next.kind === state.kind && next.kind === 'kept') return;
    state = next;
    for (const listener of [...listeners]) listener(next);
  };
  const disk = database(options);
  const opened = await disk.run('readonly', (transaction) => transaction.get('settings'));
  if (!opened.ok) state = { kind: 'not kept', failure: opened };
  const backend = opened.ok ? watched(disk, tell) : memory();
  const announce = announcer(opened.ok ? options.openChannel() : undefined);
  return {
    ...reading(backend),
    ...changing(backend, announce, options.now),
    ...removing(backend, announce, options.now),
    state: () => state,
    subscribe: (listener) => announce.subscribe(listener),
    onState(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: () => announce.close(),
  };
}
