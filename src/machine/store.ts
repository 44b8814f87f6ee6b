import { announcer, openChannel, type Announcer, type Change } from './announce';
import { asUnreadable, setAside, type Unreadable } from './aside';
import {
  database,
  databaseOptions,
  type Backend,
  type DatabaseOptions,
  type Entries,
  type Transaction,
} from './database';
import { done, failed, Refusal, type StorageState, type Stored } from './failure';
import { HELD, heldBy, holding } from './held';
import { cannotRead, finding, typed, type Latest, type Listing, type Page } from './find';
import {
  casesOf,
  draftKeyNow,
  draftsOf,
  keyOf,
  machineKey,
  photosOf,
  readingAt,
  readingsOf,
  typedOn,
  type Key,
  type Prefix,
  type RecordAt,
} from './keys';
import { restoreAt } from './restore-at';
import { nextOrdinal } from './edit';
import { memory } from './memory';
import { restore, type Machine, type Photo, type Reading, type StoredRecord } from './schema';
import { goOn, type Watch } from './steps';
import { watched } from './watched';
import say from './words/en';

/** What a removal took away, to be put back. What cannot be read is not among it: that was set aside. */
export type Removed = Entries;

/**
 * Where records are kept. Nothing here rejects for a fault of the storage or of a record: the result says so. A record
 * that cannot be read is never lost: it stays where it is, or is set aside before anything is written in its place; one
 * written by a newer Trammel is not written over at all.
 */
export interface Store {
  get<K extends Key>(key: K): Promise<Stored<RecordAt<K> | undefined>>;
  /** @throws Cancelled where `watch` ends it */
  list<P extends Prefix>(prefix: P, watch?: Watch): Promise<Stored<Listing<RecordAt<P>>>>;
  /** The reading of this time and id, wherever it stands in its machine's order. */
  reading(taken: Pick<Reading, 'machine' | 'at' | 'id'>): Promise<Stored<Reading | undefined>>;
  /**
   * A machine's readings, newest first, no more than are wanted: read in parts, so that a long history holds up neither
   * the page nor a write.
   */
  latest(machine: string, want: Latest): Promise<Stored<Page>>;
  /**
   * How many readings each machine has that came in from no file, by id; only those taken after `after` (ISO 8601) if it is
   * given.
   */
  countUnheld(after?: string): Promise<Stored<ReadonlyMap<string, number>>>;
  /** Notes that a file holds the readings at these keys. */
  hold(keys: readonly string[]): Promise<Stored<undefined>>;
  /** Writes whole records, all or none. For an edit use `change`, which loses nothing that another tab wrote. */
  save(...records: readonly StoredRecord[]): Promise<Stored<undefined>>;
  /** The same for many, told how far it is. @throws Cancelled where `watch` ends it: then nothing is written */
  saveWatched(records: readonly StoredRecord[], watch: Watch): Promise<Stored<undefined>>;
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
  /**
   * `change` for a record of a machine, as the last of all that was done to the machine: `edit` gets the ordinal of that.
   * Counts up in the machine's record within the same transaction.
   */
  changeOn<K extends Key>(
    key: K,
    machine: string,
    edit: (record: RecordAt<K> | undefined, ordinal: number) => RecordAt<K> | undefined,
  ): Promise<Stored<RecordAt<K> | undefined>>;
  /**
   * Saves a reading, its photo and what it taught about its machine, all or none, as the last of all that was done to the
   * machine, whatever the clock says. Refused where the machine is no longer
   * there: nobody would find the reading again.
   */
  keep(
    reading: Omit<Reading, 'ordinal'>,
    edit: (machine: Machine, ordinal: number) => Machine,
    photo?: Photo,
  ): Promise<Stored<Reading>>;
  remove(...keys: readonly Key[]): Promise<Stored<Removed>>;
  /** Removes a machine with its readings, photos, drafts and cases. */
  removeMachine(id: string): Promise<Stored<Removed>>;
  /** Undoes a removal. What has been written at one of these keys since stays as it is. */
  putBack(removed: Removed): Promise<Stored<undefined>>;
  /** Everything that cannot be read: what was set aside, and what still stands in its place. Reads all there is. */
  listAside(): Promise<Stored<readonly Unreadable[]>>;
  /** Forgets one unreadable record for good: only when the person says so. A record that can be read is left alone. */
  discard(at: string): Promise<Stored<Removed>>;
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

/** Clears a key for writing: what cannot be read is set aside. @throws Refusal where a newer Trammel wrote it */
async function makeRoom(transaction: Transaction, key: string, stored: unknown, now: Date): Promise<void> {
  if (stored === undefined) return;
  const restored = restoreAt(key, stored);
  if (restored.ok) return;
  if (restored.newer) throw new Refusal(failed('newer', say.store.leftAlone(restored.reason)));
  await setAside(transaction, key, stored, restored.reason, now.toISOString());
}

/** What does not pass the door could not be read back. @throws Refusal */
function checked(record: StoredRecord, key: string): StoredRecord {
  const restored = restore(record);
  if (!restored.ok) throw new Refusal(failed('refused', say.store.notSavedFor(restored.reason)));
  if (keyOf(restored.record) !== key) throw new Refusal(failed('refused', say.store.notSavedElsewhere));
  return restored.record;
}

/** @throws Refusal where the machine is gone or cannot be read */
async function machineIn(transaction: Transaction, id: string, gone: string): Promise<Machine> {
  const key = machineKey(id);
  const found = await transaction.get(key);
  if (found === undefined) throw new Refusal(failed('refused', gone));
  const restored = restoreAt(key, found);
  if (!restored.ok) throw new Refusal(cannotRead(restored));
  return typed<typeof key>(restored.record);
}

/** For what is done to a machine now: after all that it has seen, in a file too. */
async function ordinalFor(transaction: Transaction, machine: Machine): Promise<number> {
  const [last] = await transaction.last(readingsOf(machine.id), 1);
  return nextOrdinal(Math.max(machine.ordinal, (last && readingAt(last[0])?.ordinal) ?? 0));
}

/** The machine with one thing more done to it. @throws Refusal where it is gone or cannot be read */
async function countUp(transaction: Transaction, id: string): Promise<Machine> {
  const machine = await machineIn(transaction, id, say.store.machineGone);
  return { ...machine, ordinal: await ordinalFor(transaction, machine) };
}

/** Records whose places are looked at together. */
const BATCH = 100;

/** Writes them in one transaction, whose requests leave the page its turn between batches. @throws Refusal, Cancelled */
async function putAll(
  transaction: Transaction,
  records: readonly StoredRecord[],
  now: Date,
  watch?: Watch,
): Promise<void> {
  for (let begin = 0; begin < records.length; begin += BATCH) {
    const batch = records.slice(begin, begin + BATCH).map((record) => ({ key: keyOf(record), record }));
    const standing = await Promise.all(batch.map(({ key }) => transaction.get(key)));
    goOn(watch);
    for (const [i, { key, record }] of batch.entries()) {
      const kept = checked(record, key);
      await makeRoom(transaction, key, standing[i], now);
      transaction.put(key, kept);
    }
    watch?.tell(Math.min(1, (begin + BATCH) / records.length));
  }
}

function changing(
  backend: Backend,
  announce: Announcer,
  now: () => Date,
): Pick<Store, 'save' | 'saveWatched' | 'change' | 'changeOn'> {
  const save = async (records: readonly StoredRecord[], watch?: Watch) => {
    const result = await backend.run('readwrite', async (transaction) => {
      await putAll(transaction, records, now(), watch);
      return undefined;
    });
    if (result.ok) announce.say(records.map(keyOf));
    return result;
  };
  async function changed<K extends Key>(
    key: K,
    edit: (record: RecordAt<K> | undefined, ordinal: number) => RecordAt<K> | undefined,
    machine: string | undefined,
  ): Promise<Stored<RecordAt<K> | undefined>> {
    let mistake: { readonly error: unknown } | undefined;
    const result = await backend.run('readwrite', async (transaction) => {
      const counted = machine === undefined ? undefined : await countUp(transaction, machine);
      const stored = await transaction.get(key);
      const restored = restoreAt(key, stored);
      const old = restored.ok ? typed<K>(restored.record) : undefined;
      let edited: RecordAt<K> | undefined;
      try {
        edited = edit(old, counted?.ordinal ?? 0);
      } catch (error) {
        mistake = { error };
        throw new Refusal(failed('refused', say.store.notSaved));
      }
      if (edited === undefined) return { record: old, keys: [] };
      const kept = checked(edited, key);
      await makeRoom(transaction, key, stored, now());
      transaction.put(key, kept);
      if (counted) transaction.put(keyOf(counted), counted);
      return { record: typed<K>(kept), keys: [key, ...(counted ? [keyOf(counted)] : [])] };
    });
    if (mistake) throw mistake.error;
    if (!result.ok) return result;
    announce.say(result.value.keys);
    return done(result.value.record);
  }
  return {
    save: (...records) => save(records),
    saveWatched: (records, watch) => save(records, watch),
    change: (key, edit) => changed(key, edit, undefined),
    changeOn: (key, machine, edit) => changed(key, edit, machine),
  };
}

function keeping(backend: Backend, announce: Announcer, now: () => Date): Pick<Store, 'keep'> {
  return {
    async keep(given, edit, photo) {
      const key = machineKey(given.machine);
      const result = await backend.run('readwrite', async (transaction) => {
        const machine = await machineIn(transaction, given.machine, say.store.gone);
        const ordinal = await ordinalFor(transaction, machine);
        const reading: Reading = { ...given, ordinal };
        const records = [reading, ...(photo ? [photo] : [])];
        const learned = checked(edit(machine, ordinal), key);
        await putAll(transaction, records, now());
        transaction.put(key, learned);
        return { keys: [key, ...records.map(keyOf)], reading };
      });
      if (!result.ok) return result;
      announce.say(result.value.keys);
      return done(result.value.reading);
    },
  };
}

function removing(
  backend: Backend,
  announce: Announcer,
  now: () => Date,
): Pick<Store, 'remove' | 'removeMachine' | 'discard' | 'putBack'> {
  /** Writes in one transaction, then tells of the keys that `body` returns. */
  const writing = async (body: (transaction: Transaction) => Promise<Entries>): Promise<Stored<Entries>> => {
    const result = await backend.run('readwrite', body);
    if (result.ok) announce.say(result.value.map(([key]) => key));
    return result;
  };
  const remove = async (find: (transaction: Transaction) => Promise<Entries>) => {
    const result = await writing(async (transaction) => {
      const found = (await find(transaction)).filter(([, stored]) => stored !== undefined);
      for (const [key, stored] of found) {
        if (!key.startsWith(HELD)) await makeRoom(transaction, key, stored, now());
        transaction.remove(key);
      }
      return found;
    });
    return result.ok ? done(result.value.filter(([key, stored]) => restoreAt(key, stored).ok)) : result;
  };
  const at = (transaction: Transaction, keys: readonly string[]): Promise<Entries> =>
    Promise.all(keys.map(async (key) => [key, await transaction.get(key)] as const));
  return {
    remove: (...keys) => remove((transaction) => at(transaction, keys)),
    removeMachine: (id) =>
      remove(async (transaction) => [
        ...(await at(transaction, [machineKey(id), heldBy(id)])),
        ...(await transaction.entries(readingsOf(id))),
        ...(await transaction.entries(photosOf(id))),
        ...(await transaction.entries(draftsOf(id))),
        ...(await transaction.entries(typedOn(id))),
        ...(await transaction.entries(casesOf(id))),
      ]),
    discard: (key) =>
      writing(async (transaction) => {
        const stored = await transaction.get(key);
        if (stored === undefined || asUnreadable(key, stored) === undefined) return [];
        transaction.remove(key);
        return [[key, stored]];
      }),
    async putBack(removed) {
      const result = await writing(async (transaction) => {
        const found = await at(
          transaction,
          removed.map(([key]) => key),
        );
        const free = removed.filter((_, i) => found[i]?.[1] === undefined);
        for (const [key, stored] of free) transaction.put(key, stored);
        return free;
      });
      return result.ok ? done(undefined) : result;
    },
  };
}

/** Drafts of checks that have another name today go where they are looked for; one that is there already stays. */
async function moveRenamed(backend: Backend): Promise<void> {
  const former = (keys: readonly string[]) => keys.filter((key) => draftKeyNow(key) !== undefined);
  const found = await backend.run('readonly', async (transaction) => former(await transaction.keys('draft:')));
  if (!found.ok || found.value.length === 0) return;
  await backend.run('readwrite', async (transaction) => {
    for (const key of found.value) {
      const stored = await transaction.get(key);
      const [now, restored] = [draftKeyNow(key), restore(stored)];
      if (!now || !restored.ok || (await transaction.get(now)) !== undefined) continue;
      transaction.put(now, restored.record);
      transaction.remove(key);
    }
  });
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
  if (opened.ok) await moveRenamed(backend);
  const announce = announcer(opened.ok ? options.openChannel() : undefined);
  return {
    ...finding(backend),
    ...holding(backend, announce),
    ...changing(backend, announce, options.now),
    ...keeping(backend, announce, options.now),
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
