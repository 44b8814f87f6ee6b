import { canonical } from './canonical';
import { isPlain } from './plain';
import { compareStamps, type Stamp } from './stamp';
import { restore, type Machine, type Restored, type Settings, type StoredRecord } from './schema';

/** `newest` keeps, value by value, the later one; `here` what is on this device; `file` what the file says. */
export type Choice = 'newest' | 'here' | 'file';

/** One thing that is not the same here and in the file; undefined on the side that has none. */
export interface Difference {
  /** `['name']`, `['values', 'z.lead']` */
  readonly path: readonly [field: string, name?: string];
  readonly here: unknown;
  readonly file: unknown;
  /** Which is the later; where no time tells, what stands here is kept. */
  readonly newer: 'here' | 'file' | 'unknown';
}

type Raw = Readonly<Record<string, unknown>>;

/** A record's own times, and what concerns one device alone: never told as a difference. */
const APART = ['changed', 'ordinal', 'created', 'seenVersion', 'lastExport', 'persistAsked'];
/** Which machine is on the bench is the device's own matter; in other records it is whose they are. */
const apart = (type: string, field: string): boolean =>
  APART.includes(field) || (type === 'settings' && field === 'machine');

/** One thing, though it has parts: nothing is gained by telling them apart. */
const ONE = ['order'];

/** Which of two stamps is the later. A clock that was ahead decides nothing. */
export function laterOf(here: Stamp | undefined, file: Stamp | undefined, now: Date): Difference['newer'] {
  const order = here && file ? compareStamps(here, file, now) : 0;
  return order === 0 ? 'unknown' : order < 0 ? 'file' : 'here';
}

/** The stamp of a record's last change, or of a value's taking; undefined where it has none. */
export function stampOf(stamped: Raw): Stamp | undefined {
  const at = stamped.changed ?? stamped.at;
  if (typeof at !== 'string') return undefined;
  return { at, ordinal: typeof stamped.ordinal === 'number' ? stamped.ordinal : undefined };
}

const names = (here: Raw, file: Raw): readonly string[] =>
  [...new Set([...Object.keys(here), ...Object.keys(file)])].sort();

function difference(
  path: Difference['path'],
  here: unknown,
  file: unknown,
  whole: Difference['newer'],
  now: Date,
): Difference {
  if (here === undefined) return { path, here, file, newer: 'file' };
  if (file === undefined) return { path, here, file, newer: 'here' };
  const timed = isPlain(here) && isPlain(file) && 'at' in here && 'at' in file;
  return { path, here, file, newer: timed ? laterOf(stampOf(here), stampOf(file), now) : whole };
}

/** Everything two records of one key differ in, maps taken apart. A value's own stamp tells which is newer, else the record's. */
export function differences(here: StoredRecord, file: StoredRecord, now: Date): readonly Difference[] {
  const [mine, theirs] = [here as Raw, file as Raw];
  const whole = laterOf(stampOf(mine), stampOf(theirs), now);
  return names(mine, theirs).flatMap((field): readonly Difference[] => {
    const [a, b] = [mine[field], theirs[field]];
    if (apart(here.type, field) || canonical(a) === canonical(b)) return [];
    if (!isPlain(a) || !isPlain(b) || ONE.includes(field)) return [difference([field], a, b, whole, now)];
    return names(a, b).flatMap((name) =>
      canonical(a[name]) === canonical(b[name]) ? [] : [difference([field, name], a[name], b[name], whole, now)],
    );
  });
}

/** True where the file's side of a difference is taken. What only one side has is always kept. */
export function takesFile({ here, file, newer }: Difference, choice: Choice): boolean {
  if (here === undefined) return choice !== 'here';
  if (file === undefined || choice === 'here') return false;
  return choice === 'file' || newer === 'file';
}

/**
 * The record as it stands here with what the choice takes from the file's, field by field. Merging the same file again
 * changes nothing.
 * @returns refused where the two together are more than a record may hold
 */
export function merge<R extends Machine | Settings>(
  here: R,
  file: R,
  found: readonly Difference[],
  choice: Choice,
): Restored {
  const taken = found.filter((one) => takesFile(one, choice));
  if (taken.length === 0) return { ok: true, record: here };
  const merged: Record<string, unknown> = { ...here };
  for (const { path, file: value } of taken) {
    const [field, name] = path;
    const old = merged[field];
    merged[field] = name === undefined ? value : { ...(isPlain(old) ? old : {}), [name]: value };
  }
  if (here.type === 'machine' && file.type === 'machine') {
    merged.created = file.created < here.created ? file.created : here.created;
    merged.changed = file.changed > here.changed ? file.changed : here.changed;
    merged.ordinal = Math.max(here.ordinal, file.ordinal);
  }
  return restore(merged);
}
