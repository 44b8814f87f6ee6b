import 'fake-indexeddb/auto';
import { createStore } from 'idb-keyval';
import { expect, it } from 'vitest';
import { queryNow } from '../../src/engine/link';
import { listed } from '../../src/engine/list';
import { restore } from '../../src/machine/schema';
import { openStore } from '../../src/machine/store';
import { demoReadings } from '../support/demo';
import { checkNow, inCaseNow, isFormerCheck } from '../../src/reference/renamed';
import { decodeCase } from '../../src/diagnosis/link';
import { unreadable } from '../../src/diagnosis/pick';
import { catalogue } from '../../src/diagnosis/catalogue';

const CHANGED = '2026-11-20T08:00:00.000Z';
const draft = (calculator: string, v: number) => ({
  ...{ v, type: 'draft', machine: 'm1', calculator, choices: {}, changed: CHANGED },
  entries: { dh: { text: '0,7', unit: 'mm', tool: '' } },
});
/** Writes as an earlier Trammel did, past the store. */
async function planted(name: string, records: Readonly<Record<string, unknown>>) {
  const use = createStore(name, 'records');
  for (const [key, value] of Object.entries(records)) await use('readwrite', (store) => void store.put(value, key));
  return openStore({ createStore: () => use, pausesMs: [], openChannel: () => undefined });
}
const must = <T>(result: { ok: true; value: T } | { ok: false }): T => {
  if (!result.ok) throw new Error('the store did not answer');
  return result.value;
};

it('leads a check’s former name to a check of today, and never takes the name again', () => {
  const ids = listed.map(({ id }) => id);
  expect(isFormerCheck('dual-z-sync')).toBe(true);
  expect(ids).toContain(checkNow('dual-z-sync'));
  expect(ids.filter(isFormerCheck)).toEqual([]);
});

it('finds a draft that was kept under the former name, and moves it', async () => {
  const store = await planted('renamed', { 'draft:m1:dual-z-sync': draft('dual-z-sync', 5) });
  const found = must(await store.get('draft:m1:two-z-screws'));
  expect(found?.entries).toEqual(draft('', 5).entries);
  expect(must(await store.get('draft:m1:dual-z-sync'))).toBeUndefined();
});

it('loses neither of two drafts that stand under both names', async () => {
  const newer = { ...draft('two-z-screws', 6), entries: {}, ordinal: 1 };
  const store = await planted('both', {
    'draft:m1:dual-z-sync': draft('dual-z-sync', 5),
    'draft:m1:two-z-screws': newer,
  });
  expect(must(await store.get('draft:m1:two-z-screws'))).toEqual(newer);
  expect(must(await store.list('draft:m1:')).records).toHaveLength(2);
});

it('finds a reading of the former name among those of the check', async () => {
  const former = { ...demoReadings[0]!, v: 5, machine: 'm1', calculator: 'dual-z-sync' };
  const store = await planted('readings', { [`reading:m1:${former.at}-${former.id}`]: former });
  expect(must(await store.latest('m1', { calculator: 'two-z-screws' })).records).toHaveLength(1);
});

it('keeps a machine’s interval under the new name', () => {
  const machine = {
    ...{
      v: 5,
      type: 'machine',
      id: 'm1',
      name: 'By the door',
      note: '',
      demo: false,
      created: CHANGED,
      changed: CHANGED,
    },
    ...{ values: {}, choices: {}, intervals: { 'dual-z-sync': 30 } },
  };
  expect(restore(machine)).toMatchObject({ ok: true, record: { intervals: { 'two-z-screws': 30 } } });
});

it('splits a setting that did two jobs into both, in a draft, in a reading, on the machine and in a link', () => {
  const set = { value: 4, half: 0, unit: 'K', origin: 'measured', tool: '', at: CHANGED };
  const machine = restore({
    ...{
      v: 5,
      type: 'machine',
      id: 'm1',
      name: 'By the door',
      note: '',
      demo: false,
      created: CHANGED,
      changed: CHANGED,
    },
    ...{ values: { 'heater.watchdog-hysteresis': set }, choices: {} },
  });
  expect(machine).toMatchObject({
    ok: true,
    record: { values: { 'heater.guard-lag': set, 'heater.guard-rise': set } },
  });
  const typed = { text: '4', unit: 'K', tool: '' };
  const entries = { W: { text: '20', unit: 's', tool: '' }, H: typed };
  expect(restore({ ...draft('heater-check', 5), entries })).toMatchObject({
    ok: true,
    record: { entries: { t_g: { text: '20' }, dT_l: typed, dT_g: typed } },
  });
  expect(queryNow('heater-check', 'v=1&W=20;s&H=4;K')).toBe('v=1&t_g=20;s&dT_l=4;K&dT_g=4;K');
  expect(queryNow('two-z-screws', 'v=1&W=20;mm')).toBe('v=1&W=20;mm');
});

const machineOf5 = (values: object, choices: object) => ({
  ...{
    v: 5,
    type: 'machine',
    id: 'm1',
    name: 'By the door',
    note: '',
    demo: false,
    created: CHANGED,
    changed: CHANGED,
  },
  ...{ values, choices },
});

it('keeps what was kept under another part’s name, values and choices alike', () => {
  const set = { value: 0.002, half: 0, unit: 'mm', origin: 'measured', tool: '', at: CHANGED };
  const values = {
    'extruder.pull-back': set,
    'extruder.tube-bore': set,
    'hotend.cycle-time': set,
    'steps.extruder': set,
  };
  expect(restore(machineOf5(values, { 'extruder.drive': 'tube' }))).toMatchObject({
    ok: true,
    record: {
      values: { 'feed.retraction': set, 'feed.tube-bore': set, 'heater.cycle-time': set, 'steps.feed': set },
      choices: { 'feed.place': 'tube' },
    },
  });
});

it('keeps an option that was picked, in a draft, in what it took the place of, in a reading and in a link', () => {
  const before = { entries: { W: { text: '20', unit: 's', tool: '' } }, choices: { foot: 'brim' } };
  const kept = { ...draft('test-column', 5), choices: { foot: 'brim', bed: 'glass' }, before };
  expect(restore(kept)).toMatchObject({
    ok: true,
    record: { choices: { foot: 'rim', bed: 'glass' }, before: { choices: { foot: 'rim' } } },
  });
  const guard = { ...draft('heater-check', 5), before };
  expect(restore(guard)).toMatchObject({ ok: true, record: { before: { entries: { t_g: { text: '20' } } } } });
  const reading = { ...demoReadings[0]!, v: 5, calculator: 'test-column', choices: { foot: 'brim' } };
  expect(restore(reading)).toMatchObject({ ok: true, record: { choices: { foot: 'rim' } } });
  expect(queryNow('test-column', 'v=1&foot=brim&h=brim;mm&foot')).toBe('v=1&foot=rim&h=brim;mm&foot');
});

it('keeps what a case names, in a record and in a link', () => {
  const log = [
    { kind: 'answer', check: 'strand-caliper', answer: 'yes', at: CHANGED, note: '' },
    { kind: 'ruled out', cause: 'pull-back-short', sure: 'fairly', at: CHANGED, note: '' },
  ];
  const facts = { 'warm-cupboard': true, 'belt-z': false };
  const one = { v: 5, type: 'case', id: 'c1', machine: 'm1', symptom: 'strings', owner: '', complaint: '' };
  const found = restore({ ...one, opened: CHANGED, changed: CHANGED, facts, log, closed: null });
  expect(found).toMatchObject({
    ok: true,
    record: {
      facts: { 'warm-place': true, 'belt-z': false },
      log: [{ check: 'filament-caliper' }, { cause: 'retraction-short' }],
    },
  });
  const symptom =
    catalogue.symptoms.find(({ causes }) => causes.some(({ cause }) => cause === 'retraction-short'))?.id ?? '';
  const when = new Date(CHANGED).getTime().toString(36);
  const query = `v=1&i=c1&s=${symptom}&o=${when}&n=x&f=warm-cupboard.1&e=a.pull-back.beyond.${when}.&e=r.pull-back-short.c.${when}.`;
  const opened = decodeCase(query, inCaseNow);
  expect(opened).toMatchObject({ ok: true, letter: { facts: { 'warm-place': true } } });
  expect(opened.ok && unreadable(catalogue, opened.letter)).toBeUndefined();
});
