import * as v from 'valibot';
import { FILE_LIMITS, FORMAT, FORMAT_VERSION, SECTIONS } from './exchange';
import { canonical } from './canonical';
import { keyOf } from './keys';
import { fields, time } from './schema-parts';
import { isPlain } from './plain';
import { restore, type StoredRecord } from './schema';
import { finish, type Steps } from './steps';
import say from './words/en';

/** A record of a file that is not taken in, and why. */
export interface RefusedRecord {
  /** Which it is, for the person: `machine 2, “Left bench”`. */
  readonly what: string;
  readonly reason: string;
}

export interface GoodFile {
  readonly ok: true;
  /** When the file was made, ISO 8601. */
  readonly made: string;
  readonly records: readonly StoredRecord[];
  readonly refused: readonly RefusedRecord[];
  /** Records that stood in the file more than once in the same words: taken once. */
  readonly repeats: number;
}

export type FileRead = GoodFile | { readonly ok: false; readonly reason: string };

const list = v.optional(v.array(v.unknown(), say.field.shouldBeList), []);

const envelope = fields({
  format: v.literal(FORMAT),
  v: v.literal(FORMAT_VERSION),
  made: time,
  machines: list,
  readings: list,
  photos: list,
  drafts: list,
  typed: list,
  cases: list,
  settings: v.optional(v.unknown()),
});

const refusal = (reason: string) => ({ ok: false, reason }) as const;

const TOO_LARGE = say.file.tooLarge(FILE_LIMITS.bytes / 1024 / 1024);

/** A sentence where a file has too many bytes to be read. */
export const tooLarge = (bytes: number): string | undefined => (bytes > FILE_LIMITS.bytes ? TOO_LARGE : undefined);

/** Says what the version of the outer form is wrong with; undefined where this Trammel reads it. */
function versionTrouble(written: unknown): string | undefined {
  if (typeof written !== 'number' || !Number.isInteger(written) || written < 1) return say.file.noVersion;
  if (written <= FORMAT_VERSION) return undefined;
  return say.file.newer(written, FORMAT_VERSION);
}

const NAME_SHOWN = 40;

function describe(type: StoredRecord['type'], number: number, raw: unknown): string {
  if (type === 'settings') return say.which.settings;
  const name = isPlain(raw) && typeof raw.name === 'string' ? raw.name : '';
  const shown = name.length > NAME_SHOWN ? `${name.slice(0, NAME_SHOWN)}…` : name;
  return say.which.listed(type, number, shown);
}

/** What makes a record one of its own within a file. */
function identity(record: StoredRecord): string {
  // Two readings of one id are at odds even where their times, and so their keys, differ.
  if (record.type === 'reading') return `reading:${record.machine}:${record.id}`;
  return keyOf(record);
}

interface Found {
  readonly record: StoredRecord;
  readonly what: string;
}

interface Listed {
  readonly type: StoredRecord['type'];
  readonly number: number;
  readonly raw: unknown;
}

/** One record through the door: found, or why not. */
function sifted({ type, number, raw }: Listed): Found | RefusedRecord {
  const what = describe(type, number, raw);
  const restored = restore(raw);
  if (!restored.ok) return { what, reason: restored.reason };
  return restored.record.type === type ? { what, record: restored.record } : { what, reason: say.file.wrongList };
}

function* sift(raws: readonly Listed[]): Steps<Pick<GoodFile, 'records' | 'refused' | 'repeats'>> {
  const refused: RefusedRecord[] = [];
  const groups = new Map<string, Found[]>();
  for (const [i, raw] of raws.entries()) {
    const found = sifted(raw);
    if ('reason' in found) refused.push(found);
    else {
      const id = identity(found.record);
      const same = groups.get(id);
      if (same) same.push(found);
      else groups.set(id, [found]);
    }
    yield i / raws.length;
  }
  const records: StoredRecord[] = [];
  let repeats = 0;
  for (const [first, ...others] of groups.values()) {
    if (!first) continue;
    const text = others.length > 0 ? canonical(first.record) : '';
    if (others.every(({ record }) => canonical(record) === text)) {
      records.push(first.record);
      repeats += others.length;
    } else {
      for (const { what } of [first, ...others]) refused.push({ what, reason: say.file.atOdds });
    }
    if (others.length > 0) yield 1;
  }
  return { records, refused, repeats };
}

/**
 * Reads what a file's JSON holds, every record through the one door. Looks at nothing that is stored.
 * @param value undefined where the text was no JSON
 */
export function* readValueSteps(value: unknown): Steps<FileRead> {
  if (value === undefined) return refusal(say.file.damaged);
  if (!isPlain(value) || value.format !== FORMAT) return refusal(say.file.notOurs);
  const trouble = versionTrouble(value.v);
  if (trouble !== undefined) return refusal(trouble);
  const read = v.safeParse(envelope, value, { abortEarly: true });
  if (!read.success) {
    const [issue] = read.issues;
    return refusal(say.file.unreadableAt(v.getDotPath(issue) ?? say.file.itsStart, issue.message));
  }
  const { machines, readings, cases, photos, drafts, typed, settings, made } = read.output;
  const numbered = (type: StoredRecord['type'], raws: readonly unknown[]): readonly Listed[] =>
    raws.map((raw, i) => ({ type, number: i + 1, raw }));
  const raws = [
    ...numbered('machine', machines),
    ...numbered('reading', readings),
    ...numbered('case', cases),
    ...numbered('photo', photos),
    ...numbered('draft', drafts),
    ...numbered('typed', typed),
    ...numbered('settings', SECTIONS.settings in value ? [settings] : []),
  ];
  if (raws.length > FILE_LIMITS.records) return refusal(say.file.tooMany(FILE_LIMITS.records));
  return { ok: true, made, ...(yield* sift(raws)) };
}

/** A text that is not worth parsing: why. */
export function textTrouble(text: string): string | undefined {
  if (text.length > FILE_LIMITS.bytes) return TOO_LARGE;
  return /\S/.test(text) ? undefined : say.file.empty;
}

/** What a file's text holds; undefined where it is no JSON. @throws never */
export function parseFile(text: string): unknown {
  try {
    // Some programs put a byte order mark in front.
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

/**
 * Reads a file's text.
 * @returns what can be taken in and what is refused; or one sentence, where it is no file of Trammel's
 * @throws never
 */
export function readFile(text: string): FileRead {
  const trouble = textTrouble(text);
  return trouble === undefined ? finish(readValueSteps(parseFile(text))) : refusal(trouble);
}
