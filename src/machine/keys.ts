import type { Case, Draft, Machine, Photo, Reading, Settings, StoredRecord, Typed } from './schema';
import { checkNow, isFormerCheck } from '../reference/renamed';
import { LIMITS } from './limits';

/** One record per key, so that two tabs or two screens seldom write the same one. */
export type Key =
  | `machine:${string}`
  | `reading:${string}`
  | `photo:${string}`
  | `draft:${string}`
  | `typed:${string}`
  | `case:${string}`
  | 'settings';
/** What keys begin with: everything of one kind, or of one machine. */
export type Prefix =
  'machine:' | `reading:${string}` | `photo:${string}` | `draft:${string}` | `typed:${string}` | `case:${string}`;

/** The record that stands at a key, or at the keys with a prefix. */
export type RecordAt<K extends string> = K extends `machine:${string}`
  ? Machine
  : K extends `reading:${string}`
    ? Reading
    : K extends `photo:${string}`
      ? Photo
      : K extends `draft:${string}`
        ? Draft
        : K extends `typed:${string}`
          ? Typed
          : K extends `case:${string}`
            ? Case
            : K extends 'settings'
              ? Settings
              : never;

/** Stands in a key where no machine is chosen, or no case is opened yet; no id looks like it. */
const NONE = '-';

export const machineKey = (id: string) => `machine:${id}` as const;
export const draftKey = (machine: string | null, calculator: string) =>
  `draft:${machine ?? NONE}:${calculator}` as const;
/** What of a reading its key is made of. */
export type ReadingAt = Pick<Reading, 'machine' | 'ordinal' | 'at' | 'id'>;

/** How a counted reading's key begins after its machine: beyond every digit, and so after the keys of those not counted. */
const COUNTED = 'n';
const DIGITS = String(LIMITS.ordinal).length;

/** A machine's readings lie in their order: those that an earlier version kept by time, then by ordinal; times sort as text. */
export const readingKey = ({ machine, ordinal, at, id }: ReadingAt) => {
  const counted = ordinal === 0 ? '' : `${COUNTED}${String(ordinal).padStart(DIGITS, '0')}-`;
  return `reading:${machine}:${counted}${at}-${id}` as const;
};
/** Prefix of one machine's readings. The closing colon keeps `ab` out of `a`. */
export const readingsOf = (machine: string) => `reading:${machine}:` as const;
const READING = new RegExp(`^reading:([^:]+):(?:${COUNTED}(\\d{${DIGITS}})-)?(.{24})-(.+)$`, 's');
/** Which reading stands at a key, without reading it; undefined for another kind of key. */
export function readingAt(key: string): ReadingAt | undefined {
  const [, machine, ordinal = '0', at, id] = READING.exec(key) ?? [];
  if (machine === undefined || at === undefined || id === undefined) return undefined;
  return { machine, ordinal: Number(ordinal), at, id };
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
export const typedKey = (machine: string | null, of: string | null, field: string) =>
  `typed:${machine ?? NONE}:${of ?? NONE}:${field}` as const;
export const typedOn = (machine: string) => `typed:${machine}:` as const;

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
      return readingKey(record);
    case 'photo':
      return photoKey(record.machine, record.reading);
    case 'draft':
      return draftKey(record.machine, record.calculator);
    case 'typed':
      return typedKey(record.machine, record.case, record.field);
    case 'case':
      return caseKey(record.machine, record.id);
    case 'settings':
      return 'settings';
  }
}
