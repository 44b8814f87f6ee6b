import {
  restore,
  type Case,
  type Draft,
  type Machine,
  type Photo,
  type Reading,
  type Restored,
  type Settings,
  type StoredRecord,
} from './schema';
import { checkNow, isFormerCheck } from '../reference/renamed';
import say from './words/en';

/** One record per key, so that two tabs or two screens seldom write the same one. */
export type Key =
  `machine:${string}` | `reading:${string}` | `photo:${string}` | `draft:${string}` | `case:${string}` | 'settings';
/** What keys begin with: everything of one kind, or of one machine. */
export type Prefix = 'machine:' | `reading:${string}` | `photo:${string}` | `draft:${string}` | `case:${string}`;

/** The record that stands at a key, or at the keys with a prefix. */
export type RecordAt<K extends string> = K extends `machine:${string}`
  ? Machine
  : K extends `reading:${string}`
    ? Reading
    : K extends `photo:${string}`
      ? Photo
      : K extends `draft:${string}`
        ? Draft
        : K extends `case:${string}`
          ? Case
          : K extends 'settings'
            ? Settings
            : never;

/** Stands in a draft's key where no machine is chosen; no id looks like it. */
const NO_MACHINE = '-';

export const machineKey = (id: string) => `machine:${id}` as const;
export const draftKey = (machine: string | null, calculator: string) =>
  `draft:${machine ?? NO_MACHINE}:${calculator}` as const;
/** Times sort as text: a machine's readings lie in order of time. */
export const readingKey = (machine: string, at: string, id: string) => `reading:${machine}:${at}-${id}` as const;
/** Prefix of one machine's readings. The closing colon keeps `ab` out of `a`. */
export const readingsOf = (machine: string) => `reading:${machine}:` as const;
/** Whose reading stands at a key and when it was taken, without reading it; undefined for another kind of key. */
export function readingAt(key: string): { readonly machine: string; readonly at: string } | undefined {
  const [, machine, at] = /^reading:([^:]+):(.{24})-/.exec(key) ?? [];
  return machine === undefined || at === undefined ? undefined : { machine, at };
}
/** Where a draft of a check stands that had another name when it was written; undefined for another kind of key. */
export function draftKeyNow(key: string): Key | undefined {
  const [, machine, check] = /^draft:([^:]+):([^:]+)$/.exec(key) ?? [];
  if (machine === undefined || check === undefined || !isFormerCheck(check)) return undefined;
  return draftKey(machine, checkNow(check));
}
export const photoKey = (machine: string, reading: string) => `photo:${machine}:${reading}` as const;
export const photosOf = (machine: string) => `photo:${machine}:` as const;
export const draftsOf = (machine: string) => `draft:${machine}:` as const;

export const caseKey = (machine: string, id: string) => `case:${machine}:${id}` as const;
export const casesOf = (machine: string) => `case:${machine}:` as const;
/** Id under which the photo of a case's proof lies, beside that of its complaint. */
export const proofPhoto = (id: string): string => `${id}-proof`;

/** Where a record stands: no record carries its key. */
export function keyOf(record: StoredRecord): Key {
  switch (record.type) {
    case 'machine':
      return machineKey(record.id);
    case 'reading':
      return readingKey(record.machine, record.at, record.id);
    case 'photo':
      return photoKey(record.machine, record.reading);
    case 'draft':
      return draftKey(record.machine, record.calculator);
    case 'case':
      return caseKey(record.machine, record.id);
    case 'settings':
      return 'settings';
  }
}

/** `restore` for what was found at a key: a record that belongs elsewhere is refused too. */
export function restoreAt(key: string, stored: unknown): Restored {
  const restored = restore(stored);
  if (!restored.ok || keyOf(restored.record) === key) return restored;
  // Its check has another name today: it reads as it is until it is moved.
  if (keyOf(restored.record) === draftKeyNow(key)) return restored;
  return { ok: false, newer: false, reason: say.record.elsewhere };
}
