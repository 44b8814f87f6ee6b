import { canonical } from './canonical';
import { differences, laterOf, merge, stampOf, takesFile, type Choice, type Difference } from './exchange-merge';
import type { GoodFile, RefusedRecord } from './exchange-read';
import { keyOf, proofPhoto, type Key } from './keys';
import type { Machine, Restored, StoredRecord } from './schema';
import { finish, type Steps } from './steps';
import say from './words/en';

/** What is on this device already, as far as a file may touch it. */
export interface Here {
  readonly records: readonly StoredRecord[];
  /** Keys at which something stands that cannot be read: a file never writes there. */
  readonly unreadable: readonly string[];
}

/** `newer`: the file has later things; `older`: only what is here is later; `conflict`: both, or no time tells. */
export type ItemState = 'added' | 'same' | 'newer' | 'older' | 'conflict';

export interface Item {
  readonly key: Key;
  readonly state: ItemState;
  readonly file: StoredRecord;
  /** Undefined where it would be added. */
  readonly here: StoredRecord | undefined;
  readonly differences: readonly Difference[];
}

/** All of a file that belongs to one machine, decided on together; or to none: settings, and entries without a machine. */
export interface Group {
  readonly machine: string | null;
  /** As it is called here, else in the file. */
  readonly name: string;
  readonly items: readonly Item[];
  /** Another machine here has the same name. */
  readonly namesake: boolean;
}

/** What a file would do, before it does it. */
export interface Plan {
  readonly made: string;
  readonly groups: readonly Group[];
  readonly refused: readonly RefusedRecord[];
  readonly repeats: number;
}

const machineOf = (record: StoredRecord): string | null =>
  record.type === 'machine' ? record.id : record.type === 'settings' ? null : record.machine;

/** Which record of a file is meant, for the person. */
export function called(record: StoredRecord): string {
  switch (record.type) {
    case 'machine':
      return say.which.machine(record.name);
    case 'reading':
      return say.which.reading(record.calculator, record.at.slice(0, 16).replace('T', ' '));
    case 'photo':
      return say.which.photo(record.reading);
    case 'draft':
      return say.which.draft(record.calculator);
    case 'typed':
      return say.which.typed(record.field);
    case 'case':
      return say.which.case(record.opened.slice(0, 10));
    case 'settings':
      return say.which.settings;
  }
}

function stateOf(found: readonly Difference[]): ItemState {
  if (found.length === 0) return 'same';
  const is = (newer: Difference['newer']) => found.some((one) => one.newer === newer);
  if (is('unknown') || (is('file') && is('here'))) return 'conflict';
  return is('file') ? 'newer' : 'older';
}

/** Other records than a machine are one thing: the record's own stamp decides, not who has more in it. */
function wholeState(here: StoredRecord, file: StoredRecord, now: Date): ItemState {
  const order = 'ordinal' in here && 'ordinal' in file ? laterOf(stampOf(here), stampOf(file), now) : 'unknown';
  return order === 'unknown' ? 'conflict' : order === 'file' ? 'newer' : 'older';
}

function itemOf(file: StoredRecord, here: StoredRecord | undefined, now: Date): Item {
  const key = keyOf(file);
  if (!here) return { key, state: 'added', file, here, differences: [] };
  const found = differences(here, file, now);
  const state = found.length > 0 && file.type !== 'machine' ? wholeState(here, file, now) : stateOf(found);
  return { key, state, file, here, differences: found };
}

interface Known {
  readonly unreadable: ReadonlySet<string>;
  /** Ids of machines that are here or will be. */
  readonly machines: ReadonlySet<string>;
  /** Key of each reading here, by machine and id. */
  readonly readings: ReadonlyMap<string, Key>;
  /** Readings and cases that are here or will be: a photo belongs to one of them. */
  readonly anyReading: ReadonlySet<string>;
}

const readingOf = (machine: string, id: string): string => `${machine}:${id}`;

const readingsAmong = (records: readonly StoredRecord[]) =>
  records.flatMap((one) => (one.type === 'reading' ? [[readingOf(one.machine, one.id), keyOf(one)] as const] : []));

function refusalOf(item: Item, known: Known): string | undefined {
  const { file, here } = item;
  if (known.unreadable.has(item.key)) return say.file.keptUnreadable;
  if (file.type === 'machine') {
    if (here?.type !== 'machine') return undefined;
    const both = (['newest', 'file'] as const).map((choice) => merge(here, file, item.differences, choice));
    return both.every(({ ok }) => ok) ? undefined : say.file.tooMuchTogether;
  }
  const machine = machineOf(file);
  if (machine !== null && !known.machines.has(machine)) return say.file.noMachine;
  if (file.type === 'photo' && !known.anyReading.has(readingOf(file.machine, file.reading))) return say.file.noReading;
  const other = file.type === 'reading' ? known.readings.get(readingOf(file.machine, file.id)) : undefined;
  return other === undefined || other === item.key ? undefined : say.file.otherTime;
}

function knownFrom(items: readonly Item[], here: Here): Known {
  const unreadable = new Set(here.unreadable);
  const coming = items.filter((item) => !unreadable.has(item.key)).map((item) => item.file);
  const ids = [...here.records, ...coming].flatMap((record) => (record.type === 'machine' ? [record.id] : []));
  const readings = new Map(readingsAmong(here.records));
  const cases = [...here.records, ...coming].flatMap((one) =>
    one.type === 'case' ? [one.id, proofPhoto(one.id)].map((id) => readingOf(one.machine, id)) : [],
  );
  const anyReading = new Set([...readings.keys(), ...readingsAmong(coming).map(([id]) => id), ...cases]);
  return { unreadable, machines: new Set(ids), readings, anyReading };
}

/** What taking in this file would add, change and leave, made piece by piece. Writes nothing. */
export function* planSteps(file: GoodFile, here: Here, now = new Date()): Steps<Plan> {
  const standing = new Map<string, StoredRecord>();
  for (const record of here.records) {
    standing.set(keyOf(record), record);
    yield 0;
  }
  const all: Item[] = [];
  for (const record of file.records) {
    all.push(itemOf(record, standing.get(keyOf(record)), now));
    yield all.length / file.records.length;
  }
  const known = knownFrom(all, here);
  const refused = [...file.refused];
  const groups = new Map<string | null, Item[]>();
  for (const item of all) {
    const reason = refusalOf(item, known);
    if (reason !== undefined) {
      refused.push({ what: called(item.file), reason });
      continue;
    }
    const machine = machineOf(item.file);
    const members = groups.get(machine) ?? [];
    groups.set(machine, members);
    members.push(item);
    yield 1;
  }
  const machines = here.records.filter((record): record is Machine => record.type === 'machine');
  return {
    made: file.made,
    repeats: file.repeats,
    refused,
    groups: [...groups].map(([machine, items]) => {
      const found = items.find(({ file: one }) => one.type === 'machine')?.file;
      const mine = machines.find(({ id }) => id === machine);
      const name = mine?.name ?? (found?.type === 'machine' ? found.name : '');
      return { machine, name, items, namesake: machines.some((one) => one.id !== machine && one.name === name) };
    }),
  };
}

/** Undefined for a record that is taken whole or not at all. */
function mergedFrom(
  here: StoredRecord,
  file: StoredRecord,
  found: readonly Difference[],
  choice: Choice,
): Restored | undefined {
  if (here.type === 'machine' && file.type === 'machine') return merge(here, file, found, choice);
  if (here.type === 'settings' && file.type === 'settings') return merge(here, file, found, choice);
  return undefined;
}

/** What would be written for one item; undefined where all stays as it is. */
export function outcomeOf(item: Item, choice: Choice): StoredRecord | undefined {
  const { file, here, state } = item;
  if (!here) return file;
  if (state === 'same' || choice === 'here') return undefined;
  const merged = mergedFrom(here, file, item.differences, choice);
  if (merged) return merged.ok && item.differences.some((one) => takesFile(one, choice)) ? merged.record : undefined;
  return choice === 'file' || state === 'newer' ? file : undefined;
}

/** Every record that the plan writes under these choices, one per machine (null: what belongs to none). */
export function outcome(plan: Plan, choose: (machine: string | null) => Choice): readonly StoredRecord[] {
  return plan.groups.flatMap((group) => group.items.flatMap((item) => outcomeOf(item, choose(group.machine)) ?? []));
}

/** The same at once. */
export const makePlan = (file: GoodFile, here: Here, now = new Date()): Plan => finish(planSteps(file, here, now));

const itemsOf = (plan: Plan): readonly Item[] => plan.groups.flatMap(({ items }) => items);

/** True where a second look at the device, for the same file, made the same plan: what was shown is what would be done. */
export function* samePlanSteps(seen: Plan, now: Plan): Steps<boolean> {
  const before = new Map(itemsOf(seen).map((item) => [item.key, item]));
  const after = itemsOf(now);
  if (before.size !== after.length || canonical(seen.refused) !== canonical(now.refused)) return false;
  for (const [i, { key, here }] of after.entries()) {
    const old = before.get(key);
    if (old === undefined || canonical(old.here ?? null) !== canonical(here ?? null)) return false;
    yield i / after.length;
  }
  return true;
}
