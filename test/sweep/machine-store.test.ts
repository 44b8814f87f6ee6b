import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { createStore, get as rawGet, keys as rawKeys, set as rawSet, type UseStore } from 'idb-keyval';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { demoMachine, demoReadings } from '../support/demo';
import { blankMachine, edited } from '../../src/machine/edit';
import type { Change } from '../../src/machine/announce';
import type { Stored } from '../../src/machine/failure';
import { draftKey, draftsOf, keyOf, machineKey, readingsOf, type Key } from '../../src/machine/keys';
import type { Machine, Reading, StoredRecord } from '../../src/machine/schema';
import { defaultSettings, VERSION } from '../../src/machine/version';
import { openStore, type Store, type StoreOptions } from '../../src/machine/store';
import say from '../../src/machine/words/en';
import { record } from '../support/machine-records';
import { times } from '../support/sweep';

const NOW = new Date('2026-05-06T07:08:09.000Z');
const quick: Partial<StoreOptions> = { pausesMs: [1, 1, 1], openMs: 100, now: () => NOW, openChannel: () => undefined };

const opened: Store[] = [];
async function open(options: Partial<StoreOptions> = {}): Promise<Store> {
  const store = await openStore({ ...quick, ...options });
  opened.push(store);
  return store;
}

/** The same database, past the store: what another version or a damaged disk may have left. */
const raw = () => createStore('trammel', 'records');

function must<T>(result: Stored<T>): T {
  if (!result.ok) throw new Error(`${result.kind}: ${result.reason}`);
  return result.value;
}

const bench = blankMachine('Bench', NOW, 'bench');
const key = machineKey('bench');
const lead = demoMachine.values['z.lead']!;

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe.each([
  ['in the browser’s database', {}],
  [
    'in memory',
    {
      createStore: () => () => Promise.reject(new DOMException('barred', 'SecurityError')),
    } satisfies Partial<StoreOptions>,
  ],
] as const)('records %s', (_, options: Partial<StoreOptions>) => {
  it('come back as they were saved', async () => {
    const store = await open(options);
    await fc.assert(
      fc.asyncProperty(fc.array(record, { minLength: 1, maxLength: 4 }), async (records) => {
        must(await store.save(...records));
        const last = new Map<Key, StoredRecord>(records.map((r) => [keyOf(r), r]));
        for (const [at, written] of last) expect(must(await store.get(at))).toEqual(written);
      }),
      { numRuns: times(40, 5) },
    );
  });

  it('are absent until saved and after removal', async () => {
    const store = await open(options);
    expect(must(await store.get('settings'))).toBeUndefined();
    must(await store.save(defaultSettings));
    expect(must(await store.get('settings'))).toEqual(defaultSettings);
    must(await store.remove('settings'));
    expect(must(await store.get('settings'))).toBeUndefined();
  });

  it('are saved all or none, and never what could not be read back', async () => {
    const store = await open(options);
    const broken = { ...demoMachine, values: { 'z.lead': { ...lead, value: NaN } } };
    expect(await store.save(bench, broken)).toMatchObject({ ok: false, kind: 'refused' });
    expect(must(await store.get(key))).toBeUndefined();
    expect(must(await store.list('machine:')).records).toEqual([]);
  });

  it('are listed by prefix, one machine’s readings apart from another’s whose id begins alike, oldest first', async () => {
    const store = await open(options);
    const [before, after] = demoReadings as [Reading, Reading];
    const stranger: Reading = { ...before, machine: `${before.machine}-2`, id: 'x' };
    must(await store.save(after, stranger, before, demoMachine, defaultSettings));
    expect(must(await store.list(readingsOf(demoMachine.id))).records).toEqual([before, after]);
    expect(must(await store.list('machine:')).records).toEqual([demoMachine]);
  });

  it('are edited where they stand; an edit that returns nothing writes nothing; a mistake in it comes out', async () => {
    const store = await open(options);
    const told: Change[] = [];
    store.subscribe((change) => told.push(change));
    expect(must(await store.change(key, (old) => old ?? bench))).toEqual(bench);
    expect(must(await store.change(key, () => undefined))).toEqual(bench);
    const mistake = new RangeError('planted');
    await expect(
      store.change(key, () => {
        throw mistake;
      }),
    ).rejects.toBe(mistake);
    expect(await store.change(key, () => demoMachine)).toMatchObject({ ok: false, kind: 'refused' });
    expect(must(await store.get(key))).toEqual(bench);
    expect(told).toEqual([{ keys: [key], elsewhere: false }]);
  });

  it('of a machine go together', async () => {
    const store = await open(options);
    const draft = {
      v: VERSION,
      type: 'draft',
      machine: demoMachine.id,
      calculator: 'two-z-screws',
      entries: {},
      choices: {},
      changed: NOW.toISOString(),
      ordinal: 1,
    } as const;
    must(await store.save(demoMachine, ...demoReadings, draft, { ...draft, machine: null }, bench));
    must(await store.removeMachine(demoMachine.id));
    expect(must(await store.list('machine:')).records).toEqual([bench]);
    expect(must(await store.list(readingsOf(demoMachine.id))).records).toEqual([]);
    expect(must(await store.list(draftsOf(demoMachine.id))).records).toEqual([]);
    expect(must(await store.get(draftKey(null, 'two-z-screws')))).toBeDefined();
  });

  it('that were removed can be put back, all of them, except over what was written there since', async () => {
    const store = await open(options);
    must(await store.save(demoMachine, ...demoReadings, defaultSettings));
    const removed = must(await store.removeMachine(demoMachine.id));
    expect(removed).toHaveLength(3);
    const since = { ...demoMachine, name: 'Made anew' };
    must(await store.save(since));
    must(await store.putBack(removed));
    expect(must(await store.get(machineKey(demoMachine.id)))).toEqual(since);
    expect(must(await store.list(readingsOf(demoMachine.id))).records).toEqual(demoReadings);
    must(await store.remove(machineKey(demoMachine.id)));
    must(await store.putBack(removed));
    expect(must(await store.get(machineKey(demoMachine.id)))).toEqual(demoMachine);
  });

  it('of a machine’s readings come newest first, in pages, of one check where that is asked', async () => {
    const store = await open(options);
    const count = times(345, 55);
    const many = Array.from({ length: count }, (_, i): Reading => ({
      ...demoReadings[0]!,
      id: `r${i}`,
      calculator: i % 7 === 0 ? 'screw-lead' : 'two-z-screws',
      at: new Date(NOW.getTime() + ((i * 7919) % count)).toISOString(),
    }));
    must(await store.save(...many, { ...many[0]!, machine: `${demoMachine.id}-2` }));
    const newest = many.toSorted((a, b) => (a.at < b.at ? 1 : -1));
    expect(must(await store.latest(demoMachine.id, {})).records).toEqual(newest);
    for (const calculator of [undefined, 'screw-lead', 'retraction']) {
      const wanted = newest.filter((reading) => calculator === undefined || reading.calculator === calculator);
      for (const limit of [times(1, 20), times(20, 27), times(100, 40), count - 1, count, count + 1]) {
        const paged: Reading[] = [];
        let before: string | undefined;
        do {
          const page = must(await store.latest(demoMachine.id, { calculator, limit, before }));
          expect(page.records.length).toBeLessThanOrEqual(limit);
          paged.push(...page.records);
          before = page.next;
        } while (before !== undefined);
        expect(paged).toEqual(wanted);
      }
    }
    expect(must(await store.latest('nobody', { limit: 3 }))).toEqual({ records: [], unreadable: [], next: undefined });
  });

  it('are counted by machine, those after a time only where that is asked', async () => {
    const store = await open(options);
    const [before, after] = demoReadings as [Reading, Reading];
    must(await store.save(demoMachine, before, after, { ...after, machine: 'm2' }, defaultSettings));
    expect(must(await store.countUnheld())).toEqual(
      new Map([
        ['m2', 1],
        [demoMachine.id, 2],
      ]),
    );
    expect(must(await store.countUnheld(before.at))).toEqual(
      new Map([
        ['m2', 1],
        [demoMachine.id, 1],
      ]),
    );
    expect(must(await store.countUnheld(after.at))).toEqual(new Map());
  });

  it('of a reading and what it taught its machine are written both or neither, and not without a machine', async () => {
    const store = await open(options);
    const [reading] = demoReadings as [Reading];
    const learn = (machine: Machine) => edited(machine, { values: { 'bed.width': lead } }, NOW);
    expect(await store.keep(reading, learn)).toMatchObject({ ok: false, kind: 'refused' });
    expect(must(await store.countUnheld())).toEqual(new Map());
    must(await store.save(demoMachine));
    const told: Change[] = [];
    store.subscribe((change) => told.push(change));
    const bad = (machine: Machine) => ({ ...machine, name: '' });
    expect(await store.keep(reading, bad)).toMatchObject({ ok: false, kind: 'refused' });
    expect(must(await store.countUnheld())).toEqual(new Map());
    must(await store.keep(reading, learn));
    expect(must(await store.get(machineKey(demoMachine.id)))?.values['bed.width']).toEqual({ ...lead, ordinal: 3 });
    const kept = { ...reading, ordinal: 3 };
    expect(must(await store.latest(demoMachine.id, {})).records).toEqual([kept]);
    expect(told.map(({ keys }) => keys)).toEqual([[machineKey(demoMachine.id), keyOf(kept)]]);
  });

  it('are not shared with what the caller does to them later', async () => {
    const store = await open(options);
    const mine = structuredClone(demoMachine) as unknown as { name: string; values: Record<string, { value: number }> };
    must(await store.save(mine as unknown as Machine));
    mine.name = 'Changed';
    mine.values['z.lead']!.value = 1;
    const got = must(await store.get(machineKey(demoMachine.id))) as unknown as typeof mine;
    got.values['bed.width']!.value = 1;
    expect(must(await store.get(machineKey(demoMachine.id)))).toEqual(demoMachine);
  });
});

describe('two tabs', () => {
  it('editing different fields of one machine at the same time lose nothing', async () => {
    const [one, two] = await Promise.all([open(), open()]);
    must(await one.save(bench));
    const places = Array.from({ length: 20 }, (_, i) => `z.p${i}`);
    await Promise.all(
      places.map((place, i) =>
        (i % 2 ? one : two).change(key, (old) => old && edited(old, { values: { [place]: lead } }, NOW)),
      ),
    );
    expect(Object.keys(must(await two.get(key))?.values ?? {}).sort()).toEqual([...places].sort());
  });

  it('in memory too, edits at the same time lose nothing', async () => {
    const store = await open({ createStore: () => () => Promise.reject(new DOMException('', 'SecurityError')) });
    must(await store.save(bench));
    const places = ['z.a', 'z.b', 'z.c'];
    await Promise.all(
      places.map((place) => store.change(key, (old) => old && edited(old, { values: { [place]: lead } }, NOW))),
    );
    expect(Object.keys(must(await store.get(key))?.values ?? {})).toEqual(places);
  });

  it('tell each other which keys changed', async () => {
    const channel = () => new BroadcastChannel('trammel');
    const [one, two] = await Promise.all([open({ openChannel: channel }), open({ openChannel: channel })]);
    const here: Change[] = [];
    one.subscribe((change) => here.push(change));
    const elsewhere = new Promise<Change>((resolve) => two.subscribe(resolve));
    must(await one.save(bench));
    expect(await elsewhere).toEqual({ keys: [key], elsewhere: true });
    expect(here).toEqual([{ keys: [key], elsewhere: false }]);
  });

  it('a message of another form is not heard, and a write that ends after closing does not reject', async () => {
    const channel = () => new BroadcastChannel('trammel');
    const store = await open({ openChannel: channel });
    const heard: Change[] = [];
    store.subscribe((change) => heard.push(change));
    const stranger = channel();
    for (const message of [null, 'machine:bench', [1], { keys: [key] }]) stranger.postMessage(message);
    stranger.postMessage([key]);
    await vi.waitFor(() => expect(heard).toEqual([{ keys: [key], elsewhere: true }]));
    stranger.close();
    const saving = store.save(bench);
    store.close();
    expect(await saving).toMatchObject({ ok: true });
  });
});

describe('a prefix is all that is read', () => {
  it('of many readings only the wanted machine’s leave the database', async () => {
    const store = await open();
    const many = Array.from({ length: 50 }, (_, i) => ({ ...demoReadings[0]!, machine: `m${i % 10}`, id: `r${i}` }));
    must(await store.save(...many));
    const all = vi.spyOn(IDBObjectStore.prototype, 'getAll');
    expect(must(await store.list(readingsOf('m3'))).records).toHaveLength(5);
    expect(all).toHaveBeenCalledTimes(1);
    const range = all.mock.calls[0]![0] as IDBKeyRange;
    expect(range.includes('reading:m3:2026')).toBe(true);
    expect(many.filter((reading) => range.includes(keyOf(reading)))).toHaveLength(5);
  });
});

describe('a long history', () => {
  it('the newest readings are found without reading the rest', async () => {
    const store = await open();
    const many = Array.from({ length: 400 }, (_, i): Reading => {
      const at = new Date(NOW.getTime() + i).toISOString();
      return { ...demoReadings[0]!, id: `r${i}`, at };
    });
    must(await store.save(...many));
    const all = vi.spyOn(IDBObjectStore.prototype, 'getAll');
    expect(must(await store.latest(demoMachine.id, { limit: 5 })).records).toEqual(many.slice(-5).reverse());
    expect(all).toHaveBeenCalledTimes(1);
    const range = all.mock.calls[0]![0] as IDBKeyRange;
    expect(many.filter((reading) => range.includes(keyOf(reading)))).toHaveLength(5);
  });

  it('a reading that cannot be read is reported and does not cut the list short', async () => {
    const store = await open();
    must(await store.save(...demoReadings));
    const [first, last] = demoReadings.map(keyOf) as [Key, Key];
    await rawSet(last, { ...demoReadings[1], verdict: 'perhaps' }, raw());
    for (const want of [{}, { limit: 1 }, { calculator: 'two-z-screws' }]) {
      const page = must(await store.latest(demoMachine.id, want));
      expect(page.records.map(keyOf)).toEqual([first]);
      expect(page.unreadable.map((each) => each.at)).toEqual([last]);
    }
  });

  it('everything unreadable is found among many, in order of keys', async () => {
    const store = await open();
    const many = Array.from({ length: 250 }, (_, i): Reading => ({ ...demoReadings[0]!, id: `r${i}` }));
    must(await store.save(...many));
    const broken = [3, 120, 249].map((i) => keyOf(many[i]!)).sort();
    for (const at of broken) await rawSet(at, { damaged: true }, raw());
    expect(must(await store.listAside()).map((each) => each.at)).toEqual(broken);
  });
});

describe('a record that cannot be read', () => {
  const rubbish = { type: 'machine', v: 1, id: 'bench', name: 42, precious: 'notes' };
  const reason = say.record.unreadableAt('name', say.field.shouldBeText);

  it('stays where it is, and is reported', async () => {
    await rawSet(key, rubbish, raw());
    const store = await open();
    expect(await store.get(key)).toEqual({ ok: false, kind: 'unreadable', reason: expect.any(String) as string });
    expect(must(await store.list('machine:'))).toEqual({
      records: [],
      unreadable: [{ at: key, key, since: null, reason: expect.any(String) as string, stored: rubbish }],
    });
    expect(must(await store.listAside())).toHaveLength(1);
    expect(await rawGet(key, raw())).toEqual(rubbish);
    expect(store.state()).toEqual({ kind: 'kept' });
  });

  const named = { ...bench, name: 42 };

  it.each([
    ['save', (store: Store) => store.save(bench)],
    ['change', (store: Store) => store.change(key, () => bench)],
  ])('is set aside before %s writes in its place', async (_, write) => {
    await rawSet(key, named, raw());
    const store = await open();
    must(await write(store));
    expect(must(await store.get(key))).toEqual(bench);
    const aside = must(await store.listAside());
    expect(aside).toEqual([
      { at: `aside:${key}@${NOW.toISOString()}`, key, since: NOW.toISOString(), reason, stored: named },
    ]);
    const discarded = must(await store.discard(aside[0]!.at));
    expect(must(await store.listAside())).toEqual([]);
    must(await store.putBack(discarded));
    expect(must(await store.listAside())).toEqual(aside);
  });

  it.each([
    ['the reason in the words of today', named, reason],
    ['the reason then given, where today it can be read', bench, 'Then it could not be read.'],
  ])('tells, once set aside, %s', async (_, stored, told) => {
    const since = NOW.toISOString();
    const at = `aside:${key}@${since}`;
    await rawSet(at, { type: 'aside', key, since, reason: 'Then it could not be read.', stored }, raw());
    const store = await open();
    expect(must(await store.listAside())).toEqual([{ at, key, since, reason: told, stored }]);
  });

  it('is set aside before it is removed, and a second one does not push out the first', async () => {
    const store = await open();
    for (const name of [1, 2]) {
      await rawSet(key, { ...bench, name }, raw());
      must(await store.remove(key));
    }
    expect(must(await store.get(key))).toBeUndefined();
    const stored = must(await store.listAside()).map((each) => each.stored);
    expect(stored).toEqual([
      { ...bench, name: 1 },
      { ...bench, name: 2 },
    ]);
  });

  it('written by a newer Trammel: refused, kept, not written over, not removed', async () => {
    const newer = { ...bench, v: VERSION + 1, hologram: true };
    await rawSet(key, newer, raw());
    const store = await open();
    for (const result of [
      await store.get(key),
      await store.save(bench),
      await store.change(key, () => bench),
      await store.remove(key),
      await store.removeMachine('bench'),
    ]) {
      expect(result).toMatchObject({ ok: false, kind: 'newer' });
      expect(result.ok ? '' : result.reason).toContain('written by a newer Trammel');
    }
    expect(await rawGet(key, raw())).toEqual(newer);
    expect(must(await store.listAside())).toMatchObject([{ at: key, since: null }]);
  });

  it('a record under another’s key, and a key of no kind, are reported; discard spares what can be read', async () => {
    const store = await open();
    must(await store.save(bench));
    await rawSet('machine:other', bench, raw());
    await rawSet('aside:half', { type: 'aside' }, raw());
    expect(must(await store.listAside()).map((each) => each.at)).toEqual(['aside:half', 'machine:other']);
    must(await store.discard(key));
    must(await store.discard('aside:half'));
    expect(must(await store.get(key))).toEqual(bench);
    expect(await rawKeys(raw())).toEqual([key, 'machine:other']);
  });
});

describe('failing storage', () => {
  /** A createStore whose first opens fail as told; counts how often a fresh store was asked for. */
  function failing(failures: readonly (() => Promise<never>)[]) {
    const count = { stores: 0, uses: 0 };
    const create = (name: string, storeName: string): UseStore => {
      count.stores += 1;
      const real = createStore(name, storeName);
      // A failed connection stays failed, as with idb-keyval 6.2.5 and with one the browser closed.
      const failure = failures[count.stores - 1];
      return (mode, callback) => {
        count.uses += 1;
        return failure ? failure() : real(mode, callback);
      };
    };
    return { create, count };
  }
  const reject = (name: string) => () => Promise.reject(new DOMException('planted', name));
  const hang = () => new Promise<never>(() => undefined);

  it.each([
    ['fails', reject('UnknownError')],
    ['does not answer', hang],
    ['was closed by the browser', reject('InvalidStateError')],
  ])('an open that %s is tried again with a fresh store', async (_, failure) => {
    const { create, count } = failing([failure, failure]);
    const store = await open({ createStore: create });
    expect(store.state()).toEqual({ kind: 'kept' });
    expect(count.stores).toBe(3);
    must(await store.save(bench));
    expect(count.stores).toBe(3);
    expect(await rawGet(key, raw())).toEqual(bench);
  });

  it.each([
    ['UnknownError', 'other', 4],
    ['InvalidStateError', 'missing', 4],
    ['SecurityError', 'missing', 1],
    ['QuotaExceededError', 'full', 1],
  ])('%s for ever: bounded attempts, then memory and a sentence', async (name, kind, attempts) => {
    const { create, count } = failing(Array.from({ length: 99 }, () => reject(name)));
    const store = await open({ createStore: create });
    expect(count.uses).toBe(attempts);
    expect(store.state()).toMatchObject({ kind: 'not kept', failure: { kind } });
    must(await store.save(bench));
    expect(must(await store.get(key))).toEqual(bench);
    expect(count.uses).toBe(attempts);
  });

  it('no answer for ever is called blocked', async () => {
    const store = await open({ createStore: () => hang, openMs: 5 });
    expect(store.state()).toMatchObject({ kind: 'not kept', failure: { kind: 'blocked' } });
  });

  it('no indexedDB at all (idb-keyval throws at once)', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const store = await open();
    expect(store.state()).toMatchObject({ kind: 'not kept', failure: { kind: 'missing' } });
    must(await store.save(bench));
    expect(must(await store.list('machine:')).records).toEqual([bench]);
  });

  it('an open that answers after its time does not write a second time', async () => {
    let release: () => void = () => undefined;
    const gate = new Promise<void>((resolve) => (release = resolve));
    let slow = false;
    const create = (name: string, storeName: string): UseStore => {
      const real = createStore(name, storeName);
      return async (mode, callback) => {
        if (slow) {
          slow = false;
          await gate;
        }
        return real(mode, callback);
      };
    };
    const store = await open({ createStore: create, openMs: 60 });
    must(await store.save(bench));
    slow = true;
    let edits = 0;
    must(await store.change(key, (old) => ((edits += 1), old && { ...old, note: `${old.note}+` })));
    release();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(edits).toBe(1);
    expect(must(await store.get(key))?.note).toBe('+');
  });

  it('a connection that dies while the app runs is replaced', async () => {
    const store = await open();
    must(await store.save(bench));
    // As a locked phone leaves it: the connection is closed, no event was sent.
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    });
    expect(must(await store.get(key))).toEqual(bench);
    expect(transaction).toHaveBeenCalledTimes(2);
    expect(store.state()).toEqual({ kind: 'kept' });
  });

  it('a read that is cut short is tried again', async () => {
    const store = await open();
    must(await store.save(bench));
    vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementationOnce(() => {
      throw new DOMException('Connection to Indexed Database server lost.', 'UnknownError');
    });
    expect(must(await store.get(key))).toEqual(bench);
  });

  it('no room: the write fails as a whole with a sentence, the state says so until a write succeeds', async () => {
    const store = await open();
    const states: string[] = [];
    store.onState((state) => states.push(state.kind === 'kept' ? 'kept' : state.failure.kind));
    must(await store.save(bench));
    // The database runs out of room on the second record, when the transaction is already under way.
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      value,
      at,
    ) {
      put.mockRestore();
      const request = this.put(value, at);
      vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
        throw new DOMException('planted', 'QuotaExceededError');
      });
      return request;
    });
    const result = await store.save({ ...bench, note: 'lost' }, demoMachine);
    expect(result).toMatchObject({ ok: false, kind: 'full', reason: expect.stringContaining('no room') as string });
    expect(must(await store.get(key))).toEqual(bench);
    expect(must(await store.get(machineKey(demoMachine.id)))).toBeUndefined();
    expect(store.state()).toMatchObject({ kind: 'failing', failure: { kind: 'full' } });
    vi.restoreAllMocks();
    must(await store.save({ ...bench, note: 'kept' }));
    expect(store.state()).toEqual({ kind: 'kept' });
    expect(states).toEqual(['full', 'kept']);
  });

  /** The next put is taken, then the browser ends the transaction itself for this reason. */
  function endAfterPut(reason: string, when: (request: IDBRequest, end: () => void) => void) {
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(function (this: IDBObjectStore, value, at) {
      const request = this.put(value, at);
      const { transaction } = this;
      Object.defineProperty(transaction, 'error', { get: () => new DOMException('planted', reason) });
      when(request, () => transaction.abort());
      return request;
    });
  }

  it.each<[string, (request: IDBRequest, end: () => void) => void]>([
    ['at the end', (request, end) => request.addEventListener('success', end)],
    // The request for the second record is then cut short: its own error says no more than that.
    ['while the next request waits', (_, end) => queueMicrotask(end)],
  ])('no room found out only %s: the reason is told, nothing is announced', async (_, when) => {
    const store = await open();
    must(await store.save(bench));
    const told: Change[] = [];
    store.subscribe((change) => told.push(change));
    endAfterPut('QuotaExceededError', when);
    expect(await store.save({ ...bench, note: 'lost' }, demoMachine)).toMatchObject({ ok: false, kind: 'full' });
    expect(told).toEqual([]);
    expect(must(await store.list('machine:')).records).toEqual([bench]);
  });

  it('what may have been written is not tried again', async () => {
    const store = await open();
    must(await store.save(bench));
    endAfterPut('UnknownError', (request, end) => request.addEventListener('success', end));
    let edits = 0;
    const result = await store.change(key, (old) => ((edits += 1), old && { ...old, note: 'lost' }));
    expect(result).toMatchObject({ ok: false, kind: 'other' });
    expect(edits).toBe(1);
  });
});
