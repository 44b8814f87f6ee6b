import fc from 'fast-check';
import type { Choice } from '../../src/machine/exchange-merge';
import type { Plan } from '../../src/machine/exchange-plan';
import { readFile, type GoodFile } from '../../src/machine/exchange-read';
import { gather, planFor, takeIn } from '../../src/machine/exchange-store';
import { demoMachine, demoReadings } from './demo';
import type { Stored } from '../../src/machine/failure';
import { keyOf } from '../../src/machine/keys';
import type { Draft, Machine, Photo, Reading, StoredRecord } from '../../src/machine/schema';
import { defaultSettings, VERSION } from '../../src/machine/version';
import { openStore, type Store } from '../../src/machine/store';
import { record } from './machine-records';

export const MADE = '2026-05-06T07:08:09.000Z';

export function must<T>(result: Stored<T>): T {
  if (!result.ok) throw new Error(`${result.kind}: ${result.reason}`);
  return result.value;
}

export function readGood(text: string): GoodFile {
  const read = readFile(text);
  if (!read.ok) throw new Error(read.reason);
  return read;
}

/** A store that keeps its records in memory: the browser's is barred. */
export const memoryStore = (): Promise<Store> =>
  openStore({
    createStore: () => () => Promise.reject(new DOMException('barred', 'SecurityError')),
    pausesMs: [],
    openChannel: () => undefined,
  });

/** All that a store holds. */
export const everything = async (store: Store) => must(await gather(store, 'everything')).records;

export async function storeWith(...records: readonly StoredRecord[]): Promise<Store> {
  const store = await memoryStore();
  must(await store.save(...records));
  return store;
}

/** Takes a file in: the plan as shown, and what was done. */
export async function take(store: Store, text: string, choice: Choice = 'newest') {
  const file = readGood(text);
  const plan = must(await planFor(store, file));
  return { plan, done: must(await takeIn(store, file, plan, () => choice)) };
}

/** What a plan says of each record. */
export const states = (plan: Plan) => plan.groups.flatMap((group) => group.items.map((item) => [item.key, item.state]));

const [before, after] = demoReadings as [Reading, Reading];

export const photo: Photo = {
  v: VERSION,
  type: 'photo',
  machine: demoMachine.id,
  reading: before.id,
  width: 4,
  height: 3,
  jpeg: 'AAAA',
};

export const draft: Draft = {
  v: VERSION,
  type: 'draft',
  machine: demoMachine.id,
  calculator: 'two-z-screws',
  entries: { dh: { text: '0.4', unit: 'mm', tool: 'caliper' } },
  choices: { drive: 'belt' },
  changed: '2026-04-01T00:00:00.000Z',
  ordinal: 1,
};

export const second: Machine = {
  ...demoMachine,
  id: 'second',
  name: 'Left bench',
  demo: false,
  intervals: { 'two-z-screws': 30 },
};

/** One of everything. */
export const samples: readonly StoredRecord[] = [
  demoMachine,
  second,
  before,
  after,
  { ...after, id: 'third', machine: 'second' },
  photo,
  draft,
  { ...draft, machine: null },
  defaultSettings,
];

/** Few ids, so that two devices often hold the same machine, reading or entry, and differ in it. */
const shared = (one: StoredRecord, i: number): StoredRecord => {
  if (one.type === 'machine') return { ...one, id: `m${i % 2}` };
  if (one.type === 'reading') return { ...one, id: `r${i % 3}`, at: i % 2 === 0 ? MADE : one.at };
  if (one.type === 'case') return { ...one, id: `c${i % 2}` };
  return one.type === 'draft' ? { ...one, calculator: 'two-z-screws' } : one;
};

/**
 * Records as a device could hold them: one per key and reading id, none without its machine, no photo without its
 * reading.
 */
export const household = (alike: boolean): fc.Arbitrary<readonly StoredRecord[]> =>
  fc.array(record, { minLength: 1, maxLength: 30 }).map((given) => {
    const records = alike ? given.map(shared) : given;
    const machines = [
      ...new Map(records.flatMap((one) => (one.type === 'machine' ? [[one.id, one] as const] : []))).values(),
    ];
    const home = (i: number) => machines[i % machines.length]?.id;
    const seen = new Set<string>();
    const readings = records.flatMap((one, i) => {
      const machine = home(i);
      if (one.type !== 'reading' || machine === undefined || seen.has(`${machine}:${one.id}`)) return [];
      seen.add(`${machine}:${one.id}`);
      return [{ ...one, machine }];
    });
    const rest = records.flatMap((one, i): StoredRecord[] => {
      const machine = home(i);
      if (one.type === 'draft') return [{ ...one, machine: machine ?? null }];
      if (one.type === 'case') return machine === undefined ? [] : [{ ...one, machine }];
      const reading = readings[i % readings.length];
      if (one.type === 'photo') return reading ? [{ ...one, machine: reading.machine, reading: reading.id }] : [];
      return one.type === 'settings' ? [one] : [];
    });
    return [...new Map([...machines, ...readings, ...rest].map((one) => [keyOf(one), one])).values()];
  });
