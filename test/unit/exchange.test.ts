import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FILE_LIMITS, FORMAT_VERSION, writeFile } from '../../src/machine/exchange';
import { canonical } from '../../src/machine/canonical';
import type { Choice } from '../../src/machine/exchange-merge';
import { makePlan, outcome, type Plan } from '../../src/machine/exchange-plan';
import { readFile, tooLarge } from '../../src/machine/exchange-read';
import { gather, planFor, takeIn } from '../../src/machine/exchange-store';
import { demoMachine, demoReadings } from '../support/demo';
import { failed } from '../../src/machine/failure';
import { keyOf, machineKey } from '../../src/machine/keys';
import type { Machine, Reading, StoredRecord } from '../../src/machine/schema';
import { defaultSettings, VERSION } from '../../src/machine/version';
import { LIMITS } from '../../src/machine/limits';
import { Cancelled } from '../../src/machine/steps';
import type { Store } from '../../src/machine/store';
import {
  draft,
  everything,
  MADE,
  memoryStore,
  must,
  photo,
  readGood,
  samples,
  second,
  states,
  storeWith,
  take,
} from '../support/exchange-samples';
import say from '../../src/machine/words/en';
import { isWhole, some, times } from '../support/sweep';

const LATER = '2026-06-01T00:00:00.000Z';
const LATEST = '2026-07-01T00:00:00.000Z';
const [before, after] = demoReadings as [Reading, Reading];
const lead = demoMachine.values['z.lead']!;

const newest = (): Choice => 'newest';
describe('a file', () => {
  it('holds one record a line, in a fixed order, whatever order the records come in', () => {
    const text = writeFile(samples, MADE);
    expect(writeFile([...samples].reverse(), MADE)).toBe(text);
    const lines = text.split('\n');
    expect(lines.slice(0, 5)).toEqual(['{', '"format": "trammel",', '"v": 1,', `"made": "${MADE}",`, '"machines": [']);
    const parsed = JSON.parse(text) as Record<string, unknown[]>;
    expect(Object.keys(parsed)).toEqual([
      ...['format', 'v', 'made', 'machines', 'readings', 'photos', 'drafts', 'settings'],
    ]);
    expect(parsed.readings!.map((one) => (one as Reading).id)).toEqual(['before', 'after', 'third']);
  });

  it('does not depend on the order of names within a record', () => {
    const turned = Object.fromEntries(Object.entries(demoMachine.values).reverse());
    expect(writeFile([{ ...demoMachine, values: turned }], MADE)).toBe(writeFile([demoMachine], MADE));
  });

  it('leaves out what concerns this device alone', () => {
    const mine = { ...defaultSettings, lastExport: LATER, persistAsked: LATER };
    expect(writeFile([mine], MADE)).toBe(writeFile([defaultSettings], MADE));
  });

  it('of one machine holds that machine, its readings and photos, and no one else’s', async () => {
    const store = await storeWith(...samples);
    const found = must(await gather(store, { machine: demoMachine.id }));
    expect(new Set(found.records.map(keyOf))).toEqual(new Set([demoMachine, before, after, photo].map(keyOf)));
    expect(must(await gather(store, 'machines')).records.map(({ type }) => type)).not.toContain('draft');
    expect(must(await gather(store, 'everything')).records).toHaveLength(samples.length);
  });
});

describe('reading a file', () => {
  const reasonOf = (text: string) => {
    const read = readFile(text);
    return read.ok ? undefined : read.reason;
  };
  const shell = (rest: object) => JSON.stringify({ format: 'trammel', v: 1, made: MADE, ...rest });

  it.each([
    ['', say.file.empty],
    [writeFile(samples, MADE).slice(0, -200), say.file.damaged],
    ['null', say.file.notOurs],
    ['[]', say.file.notOurs],
    ['{"format":"another"}', say.file.notOurs],
    ['{"__proto__":{"format":"trammel","v":1}}', say.file.notOurs],
    [shell({ v: 'x' }), say.file.noVersion],
    [shell({ v: 0 }), say.file.noVersion],
    [shell({ v: FORMAT_VERSION + 1 }), say.file.newer(2, 1)],
    [shell({ made: 'yesterday' }), say.file.unreadableAt('made', say.field.time.otherShape)],
    [shell({ machines: {} }), say.file.unreadableAt('machines', say.field.shouldBeList)],
    [shell({ readings: new Array(FILE_LIMITS.records + 1).fill(0) }), say.file.tooMany(50_000)],
    ['['.repeat(200_000), say.file.damaged],
    [
      `{"format":"trammel","v":1,"made":${'['.repeat(50_000)}${']'.repeat(50_000)}}`,
      say.file.unreadableAt('made', say.field.time.shouldBeText),
    ],
  ])('%#: refused in a sentence', (text, part) => {
    expect(reasonOf(text)).toContain(part);
    expect(reasonOf(text)).toMatch(/^This .*\.$/);
  });

  it('is not begun where it has too many bytes', () => {
    expect(tooLarge(FILE_LIMITS.bytes)).toBeUndefined();
    expect(tooLarge(FILE_LIMITS.bytes + 1)).toContain('64 MB');
    expect(reasonOf(' '.repeat(FILE_LIMITS.bytes + 1))).toContain('64 MB');
  });

  it('bears a byte order mark', () => {
    expect(readGood(`\uFEFF${writeFile(samples, MADE)}`).records).toHaveLength(samples.length);
  });

  it('brings older records up to date, refuses newer ones by name and keeps the others', () => {
    const { lastExport, persistAsked, ...old } = defaultSettings;
    expect([lastExport, persistAsked]).toEqual([null, null]);
    const read = readGood(
      shell({
        machines: [
          { ...demoMachine, v: 1 },
          { ...second, v: VERSION + 1 },
        ],
        settings: { ...old, v: 1 },
      }),
    );
    expect(read.records).toEqual([{ ...demoMachine, ordinal: 0 }, defaultSettings]);
    expect(read.refused).toEqual([
      { what: 'machine 2, “Left bench”', reason: expect.stringContaining('newer Trammel') as string },
    ]);
  });

  it('takes equal repeats once, and none of several that contradict each other under one id', () => {
    const other = { ...after, id: before.id };
    const read = readGood(
      shell({ machines: [demoMachine, second, demoMachine, { ...second, name: 'x' }], readings: [before, other] }),
    );
    expect(read.records).toEqual([demoMachine]);
    expect(read.repeats).toBe(1);
    expect(read.refused.map(({ what }) => what)).toEqual([
      ...['machine 2, “Left bench”', 'machine 4, “x”', 'reading 1', 'reading 2'],
    ]);
  });

  it('refuses a record in the wrong list, shortens a name for the person', () => {
    const read = readGood(shell({ machines: [before, { name: 'n'.repeat(1e6) }] }));
    expect(read.records).toEqual([]);
    expect(read.refused[0]?.reason).toContain('wrong list');
    expect(read.refused[1]?.what.length).toBeLessThan(80);
  });
});

describe('the plan', () => {
  const here = (...records: readonly StoredRecord[]) => ({ records, unreadable: [] });
  const plan = (mine: readonly StoredRecord[], theirs: readonly StoredRecord[]) =>
    makePlan(readGood(writeFile(theirs, MADE)), here(...mine));
  const changed = (change: Partial<Machine>, at = LATER): Machine => ({ ...demoMachine, ...change, changed: at });
  const value = (number: number, at: string) => ({ ...lead, value: number, at });
  const only = (one: Plan, choice: Choice) => {
    const records = outcome(one, () => choice);
    expect(records.length).toBeLessThanOrEqual(1);
    return records[0] as Machine | undefined;
  };

  it('says of each record what would become of it', () => {
    const mine = [demoMachine, before, after, draft, defaultSettings];
    const theirs = [changed({ name: 'New' }), second, before, { ...after, note: 'x' }, draft, defaultSettings];
    expect(new Map(states(plan(mine, theirs)) as [string, string][])).toEqual(
      new Map([
        [keyOf(demoMachine), 'newer'],
        [keyOf(second), 'added'],
        [keyOf(before), 'same'],
        [keyOf(after), 'conflict'],
        [keyOf(draft), 'same'],
        ['settings', 'same'],
      ]),
    );
  });

  it('lets the newer win value by value where both sides changed, and shows each', () => {
    const mine = changed(
      { name: 'Mine', values: { 'z.lead': value(1, LATEST), 'bed.width': value(2, LATER), 'wheel.load': lead } },
      LATEST,
    );
    const theirs = changed(
      { name: 'Theirs', values: { 'z.lead': value(3, LATER), 'bed.width': value(4, LATEST), 'belt.note': lead } },
      LATER,
    );
    const one = plan([mine], [theirs]);
    expect(states(one)).toEqual([[keyOf(mine), 'conflict']]);
    expect(one.groups[0]!.items[0]!.differences.map(({ path, newer }) => [...path, newer])).toEqual([
      ['name', 'here'],
      ['values', 'bed.width', 'file'],
      ['values', 'belt.note', 'file'],
      ['values', 'wheel.load', 'here'],
      ['values', 'z.lead', 'here'],
    ]);
    expect(only(one, 'newest')).toEqual({
      ...mine,
      values: {
        'z.lead': value(1, LATEST),
        'bed.width': value(4, LATEST),
        'wheel.load': lead,
        'belt.note': lead,
      },
    });
    expect(only(one, 'here')).toBeUndefined();
    expect(only(one, 'file')).toEqual({
      ...mine,
      name: 'Theirs',
      values: { 'z.lead': value(3, LATER), 'bed.width': value(4, LATEST), 'wheel.load': lead, 'belt.note': lead },
    });
  });

  it('keeps what is here where only it changed, and where no time tells', () => {
    const older = plan([changed({ name: 'Mine' })], [demoMachine]);
    expect(states(older)).toEqual([[keyOf(demoMachine), 'older']]);
    expect(only(older, 'newest')).toBeUndefined();
    const created = '2020-01-01T00:00:00.000Z';
    const updated = only(plan([demoMachine], [changed({ name: 'Theirs', created })]), 'newest');
    expect(updated).toEqual({ ...demoMachine, name: 'Theirs', created, changed: LATER });
    const tied = plan([demoMachine], [{ ...demoMachine, name: 'Theirs' }]);
    expect(states(tied)).toEqual([[keyOf(demoMachine), 'conflict']]);
    expect(only(tied, 'newest')).toBeUndefined();
    expect(only(tied, 'file')?.name).toBe('Theirs');
  });

  it('ends alike on both devices, whichever takes in the other’s file', () => {
    const sides = fc.tuple(
      ...Array.from({ length: 2 }, () => fc.dictionary(fc.constantFrom('z.a', 'z.b', 'z.c'), fc.nat(9))),
    );
    const machineOf = (values: Readonly<Record<string, number>>, at: string) =>
      changed(
        {
          values: Object.fromEntries(
            Object.entries(values).map(([k, n]) => [k, value(n, `2026-01-0${(n % 9) + 1}T00:00:00.000Z`)]),
          ),
        },
        at,
      );
    fc.assert(
      fc.property(sides, ([a, b]) => {
        // Times that tie belong to equal values here.
        const clean = (side: object) =>
          Object.fromEntries(Object.entries(side).map(([k, n]) => [k, Math.min(n as number, 8)]));
        const [mine, theirs] = [machineOf(clean(a!), LATER), machineOf(clean(b!), LATEST)];
        const there = only(plan([mine], [theirs]), 'newest') ?? mine;
        const back = only(plan([theirs], [mine]), 'newest') ?? theirs;
        expect(canonical(there.values)).toBe(canonical(back.values));
      }),
      { endOnFailure: true },
    );
  });

  it('a newer half-typed entry wins, an older one stays out', () => {
    const newer = { ...draft, entries: {}, changed: LATER };
    expect(outcome(plan([demoMachine, draft], [newer, demoMachine]), newest)).toEqual([newer]);
    expect(outcome(plan([demoMachine, newer], [draft, demoMachine]), newest)).toEqual([]);
    expect(outcome(plan([demoMachine, newer], [draft, demoMachine]), () => 'file')).toEqual([draft]);
  });

  it('leaves settings as they are here unless the file’s are asked for, and then what is the device’s own', () => {
    const mine = { ...defaultSettings, machine: 'mine', lastExport: LATER, persistAsked: LATER };
    const theirs = { ...defaultSettings, machine: 'theirs', theme: 'dark' as const };
    expect(outcome(plan([mine], [theirs]), newest)).toEqual([]);
    expect(outcome(plan([mine], [theirs]), () => 'file')).toEqual([{ ...mine, theme: 'dark' }]);
    expect(states(plan([mine], [{ ...theirs, theme: 'system' }]))).toEqual([['settings', 'same']]);
  });

  it('refuses what would belong to nobody, and a reading whose id is taken at another time', () => {
    const one = plan([demoMachine, before], [after, { ...after, machine: 'nobody' }, { ...before, at: LATER }, photo]);
    expect(states(one)).toEqual([
      [keyOf(after), 'added'],
      [keyOf(photo), 'added'],
    ]);
    expect(one.refused.map(({ reason }) => reason)).toEqual([
      'A reading with this id and another time is kept here.',
      'Its machine can be read neither in this file nor on this device.',
    ]);
    const lost = plan([demoMachine], [photo, { ...draft, machine: 'nobody' }]);
    expect(lost.groups).toEqual([]);
    expect(lost.refused).toHaveLength(2);
  });

  it('never writes where something stands that cannot be read', () => {
    const one = makePlan(readGood(writeFile([demoMachine, before, second], MADE)), {
      records: [],
      unreadable: [machineKey(demoMachine.id)],
    });
    expect(outcome(one, newest)).toEqual([second]);
    expect(one.refused.map(({ what }) => what)).toEqual([
      `machine “${demoMachine.name}”`,
      'reading of two-z-screws, 2026-03-05 17:40 UTC',
    ]);
  });

  it.runIf(isWhole)('refuses a machine that together with the one here would be too large', () => {
    const many = (group: string) =>
      Object.fromEntries(Array.from({ length: LIMITS.map }, (_, i) => [`${group}.p${i}`, lead]));
    const one = plan([changed({ values: many('a') })], [changed({ values: many('b') }, LATEST)]);
    expect(one.groups).toEqual([]);
    expect(one.refused[0]?.reason).toContain('more than one machine can hold');
  });

  it('tells a machine of the same name that is another', () => {
    expect(plan([demoMachine], [{ ...second, name: demoMachine.name }]).groups[0]?.namesake).toBe(true);
    expect(plan([demoMachine], [second]).groups[0]?.namesake).toBe(false);
  });
});

describe('taking in', () => {
  it('writes nothing where the records changed after the plan was seen, and shows the new plan', async () => {
    const store = await storeWith(demoMachine);
    const file = readGood(writeFile([{ ...demoMachine, name: 'Theirs', changed: LATER }, before], MADE));
    const seen = must(await planFor(store, file));
    must(await store.save({ ...demoMachine, name: 'Changed meanwhile', changed: LATEST }));
    const done = must(await takeIn(store, file, seen, newest));
    expect(done).toMatchObject({ kind: 'looked again' });
    expect(must(await store.list('machine:')).records[0]?.name).toBe('Changed meanwhile');
    expect(must(await store.list('reading:')).records).toEqual([]);
    if (done.kind !== 'looked again') throw new Error('unreachable');
    expect(must(await takeIn(store, file, done.plan, newest))).toEqual({ kind: 'written', records: 1 });
  });

  it('is one saving, and none where nothing is to be written', async () => {
    const store = await storeWith(demoMachine);
    const calls: number[] = [];
    const counted: Store = {
      ...store,
      save: (...records) => {
        calls.push(records.length);
        return store.save(...records);
      },
    };
    await take(counted, writeFile(samples, MADE));
    expect(calls).toEqual([samples.length - 1]);
    await take(counted, writeFile(samples, MADE));
    expect(calls).toEqual([samples.length - 1]);
  });

  it('hands on why the storage failed', async () => {
    const store = await memoryStore();
    const full = { ...store, save: () => Promise.resolve(failed('full', 'No room.')) };
    const file = readGood(writeFile(samples, MADE));
    const plan = must(await planFor(store, file));
    expect(await takeIn(full, file, plan, newest)).toMatchObject({ ok: false, reason: 'No room.' });
  });

  it('counts what came in as held by a file, and only that; a number that was kept here is not', async () => {
    const store = await storeWith(demoMachine, { ...before, id: 'mine' });
    const unheld = async () => Object.fromEntries(must(await store.countUnheld()));
    expect(await unheld()).toEqual({ [demoMachine.id]: 1 });
    // One of them dated long after today: another phone's clock.
    await take(store, writeFile([demoMachine, before, { ...after, at: '2099-01-01T00:00:00.000Z' }], MADE));
    const all = must(await store.list('reading:')).records;
    expect(all.map(({ machine }) => machine)).toEqual(Array.from({ length: 3 }, () => demoMachine.id));
    expect(await unheld()).toEqual({ [demoMachine.id]: 1 });
    must(await store.save({ ...before, id: 'later' }));
    expect(await unheld()).toEqual({ [demoMachine.id]: 2 });
    // The list is no record: nothing is set aside for it, nor left of it, nor saved to a file.
    expect(must(await store.listAside())).toEqual([]);
    expect(writeFile(await everything(store), MADE)).not.toContain('"held"');
    must(await store.removeMachine(demoMachine.id));
    expect(must(await store.listAside())).toEqual([]);
    expect(await unheld()).toEqual({});
  });

  it.each(some([0.55, 0, 0.2, 0.8], 2))(
    'ended by the person at a share of %d, nothing of it is written',
    async (share) => {
      const many = Array.from({ length: times(1000, 250) }, (_, i): Reading => ({ ...before, id: `r${i}` }));
      const store = await storeWith(demoMachine, after);
      const file = readGood(writeFile([{ ...demoMachine, name: 'Theirs', changed: LATEST }, ...many], MADE));
      const plan = must(await planFor(store, file));
      const controller = new AbortController();
      const told: number[] = [];
      const tell = (now: number) => {
        told.push(now);
        if (now >= share) controller.abort();
      };
      const watch = { tell, signal: controller.signal };
      const was = writeFile(await everything(store), MADE);
      await expect(takeIn(store, file, plan, newest, watch)).rejects.toThrow(Cancelled);
      expect(writeFile(await everything(store), MADE)).toBe(was);
      expect(told).toEqual([...told].sort((a, b) => a - b));
      const done = await takeIn(store, file, plan, newest, { ...watch, signal: new AbortController().signal });
      expect(must(done)).toEqual({ kind: 'written', records: many.length + 1 });
      expect(must(await store.countUnheld())).toEqual(new Map([[demoMachine.id, 1]]));
    },
  );

  it('passes over one unreadable record, as saving does', async () => {
    const store = await storeWith(...samples);
    const broken = { ...store, get: () => Promise.resolve(failed('newer', 'Written by a newer Trammel.')) };
    const found = must(await gather(broken, 'everything'));
    expect(found.unreadable).toEqual(['settings']);
    expect(found.records).toHaveLength(samples.length - 1);
    const blocked = { ...store, get: () => Promise.resolve(failed('blocked', 'Held up.')) };
    expect(await gather(blocked, 'everything')).toMatchObject({ ok: false, kind: 'blocked' });
  });
});
