import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edited } from '../../src/machine/edit';
import { writeFile } from '../../src/machine/exchange';
import { compareReadings, compareStamps } from '../../src/machine/stamp';
import type { Machine, Reading } from '../../src/machine/schema';
import { VERSION } from '../../src/machine/version';
import type { Store } from '../../src/machine/store';
import { demoMachine, demoReadings } from '../support/demo';
import { memoryStore, must, readGood, storeWith, take } from '../support/exchange-samples';
import { readFileSync } from 'node:fs';
import { machineKey, readingAt, keyOf } from '../../src/machine/keys';
import { times } from '../support/sweep';

/*
 * Source of the rules: L. Lamport, Time, Clocks, and the Ordering of Events in a Distributed System, CACM 21 (1978) 558: what
 * was done with knowledge of a thing comes after it, whatever the clocks say. The model beside it keeps, for each thing, the
 * set of things its device had seen when it was done; it counts nothing.
 */

const machine: Machine = { ...demoMachine, id: 'bench', demo: false, ordinal: 0, values: {}, choices: {} };
const [base] = demoReadings as [Reading];
/** Any hour of a century: a clock may stand anywhere. */
const clock = fc.integer({ min: 0, max: 880_000 }).map((hours) => new Date(Date.UTC(2000, 0, 1) + hours * 3_600_000));
const lead = { ...demoMachine.values['z.lead']! };

const newest = async (store: Store): Promise<readonly Reading[]> => must(await store.latest('bench', {})).records;
const text = async (store: Store): Promise<string> =>
  writeFile([must(await store.get(machineKey('bench')))!, ...(await newest(store))], '2026-05-06T07:08:09.000Z');

describe('one device whose clock jumps', () => {
  it('has the reading that was kept last for its latest, and all of them in the order of keeping', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(clock, { minLength: 1, maxLength: 12 }), async (clocks) => {
        const store = await storeWith(machine);
        const ids: string[] = [];
        for (const [i, now] of clocks.entries()) {
          const id = `r${i}`;
          const reading = { ...base, machine: 'bench', id, at: now.toISOString() };
          must(await store.keep(reading, (old, ordinal) => edited(old, { values: { 'z.lead': lead } }, now, ordinal)));
          ids.unshift(id);
          expect(must(await store.latest('bench', { limit: 1 })).records.map((one) => one.id)).toEqual([id]);
        }
        expect((await newest(store)).map(({ id }) => id)).toEqual(ids);
        for (const { id, at, machine: of } of await newest(store)) {
          expect(must(await store.reading({ machine: of, at, id }))?.id).toBe(id);
        }
      }),
      { numRuns: times(150, 10) },
    );
  });

  it('gives no ordinal twice, though the last reading was removed in between', async () => {
    const store = await storeWith(machine);
    const keep = async (id: string) =>
      must(await store.keep({ ...base, machine: 'bench', id }, (old, ordinal) => edited(old, {}, new Date(), ordinal)));
    const first = await keep('a');
    must(await store.remove(keyOf(first)));
    expect((await keep('b')).ordinal).toBeGreaterThan(first.ordinal);
  });
});

type Act =
  | { readonly kind: 'keep'; readonly on: number; readonly now: Date }
  | { readonly kind: 'send'; readonly on: number; readonly to: number };

const DEVICES = 3;
const device = fc.integer({ min: 0, max: DEVICES - 1 });
const act: fc.Arbitrary<Act> = fc.oneof(
  fc.record({ kind: fc.constant('keep' as const), on: device, now: clock }),
  fc.record({ kind: fc.constant('send' as const), on: device, to: device }),
);

describe('devices that exchange files, each with a clock of its own that jumps', () => {
  it('agree on one order in which nothing stands before what it was done in knowledge of', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(act, { minLength: 3, maxLength: 14 }), async (acts) => {
        const stores = await Promise.all(Array.from({ length: DEVICES }, () => storeWith(machine)));
        const seen = stores.map(() => new Set<string>());
        const known = new Map<string, ReadonlySet<string>>();
        const places = new Map<string, ReadonlySet<string>>();
        for (const [i, one] of acts.entries()) {
          const store = stores[one.on]!;
          if (one.kind === 'send') {
            await take(stores[one.to]!, await text(store));
            for (const id of seen[one.on]!) seen[one.to]!.add(id);
            continue;
          }
          const id = `r${i}`;
          known.set(id, new Set(seen[one.on]));
          const reading = { ...base, machine: 'bench', id, at: one.now.toISOString() };
          const value = { ...lead, value: 0.001 * (i + 1), at: one.now.toISOString() };
          must(
            await store.keep(reading, (old, ordinal) => edited(old, { values: { 'z.lead': value } }, one.now, ordinal)),
          );
          seen[one.on]!.add(id);
          places.set(id, known.get(id)!);
        }
        // Everyone hears of everything, in different orders.
        const texts = await Promise.all(stores.map(text));
        for (const [i, store] of stores.entries())
          for (let k = 0; k < DEVICES; k += 1) await take(store, texts[(i + k) % DEVICES]!);
        const orders = await Promise.all(
          stores.map(async (store) => (await newest(store)).map(({ id }) => id).reverse()),
        );
        expect(new Set(orders.map((order) => order.join())).size).toBe(1);
        const [order] = orders as [string[]];
        expect([...order].sort()).toEqual([...known.keys()].sort());
        for (const [later, before] of known) {
          for (const earlier of before) expect(order.indexOf(earlier)).toBeLessThan(order.indexOf(later));
        }
        // The value that stays was overwritten by nobody who knew it.
        for (const store of stores) {
          const value = must(await store.get(machineKey('bench')))!.values['z.lead']?.value;
          if (known.size === 0) continue;
          const by = `r${Math.round(value! / 0.001) - 1}`;
          expect([...places].filter(([, before]) => before.has(by)).map(([id]) => id)).toEqual([]);
        }
      }),
      { numRuns: times(200, 8) },
    );
  });
});

describe('stamps', () => {
  const stamp = fc.record({ ordinal: fc.integer({ min: 0, max: 3 }), at: clock.map((date) => date.toISOString()) });
  const now = new Date('2026-05-06T07:08:09.000Z');

  it('are in one order, and a time that has not come wins over none', () => {
    fc.assert(
      fc.property(stamp, stamp, stamp, (a, b, c) => {
        expect(compareStamps(a, b, now)).toBe(-compareStamps(b, a, now) || 0);
        if (compareStamps(a, b, now) <= 0 && compareStamps(b, c, now) <= 0) {
          expect(compareStamps(a, c, now)).toBeLessThanOrEqual(0);
        }
        if (a.ordinal === b.ordinal && Date.parse(a.at) > now.getTime() + 3_600_000) {
          expect(compareStamps(a, b, now)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });

  it('of readings lie as their keys do', () => {
    const place = fc.record({
      ordinal: fc.oneof(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 999_999_999_999 })),
      at: clock.map((date) => date.toISOString()),
      id: fc.constantFrom('a', 'b', 'a-b'),
    });
    fc.assert(
      fc.property(place, place, (a, b) => {
        const [one, two] = [a, b].map((of) => keyOf({ ...base, v: VERSION, ...of })) as [string, string];
        expect(compareReadings(a, b)).toBe(one < two ? -1 : one > two ? 1 : 0);
        expect(readingAt(one)).toEqual({ machine: base.machine, ...a });
      }),
    );
  });
});

describe('what version 5 kept', () => {
  const file = readGood(readFileSync('test/cases/version-5.txt', 'utf8'));

  it('is read whole, in order of time, and stands before what is kept now, though its clock was ahead', async () => {
    const store = await memoryStore();
    const { plan } = await take(store, readFileSync('test/cases/version-5.txt', 'utf8'));
    expect(plan.refused).toEqual([]);
    expect(file.records.map(({ v }) => v)).toEqual(file.records.map(() => VERSION));
    const now = new Date('2026-11-27T12:00:00.000Z');
    const reading = { ...base, machine: 'second', id: 'fresh', at: now.toISOString() };
    must(await store.keep(reading, (old, ordinal) => edited(old, {}, now, ordinal)));
    expect(must(await store.latest('second', {})).records.map(({ id }) => id)).toEqual(['fresh', 'ahead', 'third']);
  });
});
