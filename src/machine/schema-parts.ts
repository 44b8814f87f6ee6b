import * as v from 'valibot';

/** Longest texts and largest maps a record may hold: for the fields' `maxlength` as well. */
export const LIMITS = {
  id: 64,
  name: 120,
  note: 4000,
  typed: 120,
  line: 600,
  steps: 40,
  map: 400,
  /** Entries of a case. */
  log: 300,
  /** Days between two readings of a check. */
  days: 3650,
  /** Pixels of a photo along its longer side. */
  photoSide: 1280,
  /** Characters of a photo in base64: 900 kB of picture. */
  photo: 1_200_000,
} as const;

const word = (what: string) => `${what} should be text`;

/** Text of at most `max` characters. */
export function text(max: number) {
  return v.pipe(v.string(word('this')), v.maxLength(max, `this text is longer than ${max} characters`));
}

function matching(pattern: RegExp, what: string) {
  return v.pipe(
    v.string(word(what)),
    v.maxLength(LIMITS.id, `${what} is longer than ${LIMITS.id} characters`),
    v.regex(pattern, `this is not ${what}`),
  );
}

/** No colon: the ids stand in keys, where a colon parts them. */
export const id = matching(/^[A-Za-z0-9][A-Za-z0-9-]*$/, 'an id');
/** Where a machine keeps a value: `z.lead`. */
export const place = matching(/^[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*$/, 'the name of a value');
/** What every object inherits (`toString`) would be found in any table it is looked up in. */
const ownName = v.check<string, string>((name) => !(name in Object.prototype), 'this name cannot be used');
/** An id as a name in a map. */
export const ownId = v.pipe(id, ownName);
/** A calculator's symbol. */
export const symbol = v.pipe(matching(/^[A-Za-z][A-Za-z0-9_]*$/, 'a symbol'), ownName);
/** An option picked: `belt`, `M3x0.5`. */
const option = v.pipe(matching(/^[A-Za-z0-9][A-Za-z0-9_.+/-]*$/, 'an option'), ownName);
/** Ids of units and tools; empty where there is none. */
export const idOrNone = matching(/^[A-Za-z0-9_-]*$/, 'an id');

export const name = v.pipe(
  text(LIMITS.name),
  v.check((value) => value.trim() !== '', 'a name is missing'),
);

/** SI, never infinite, never "not a number". */
export const number = v.pipe(v.number('this should be a number'), v.finite('this number is not finite'));
export const half = v.pipe(number, v.minValue(0, 'a half-width below zero'));

/** As `Date.toISOString` writes it, so that times sort as text. */
export const time = v.pipe(
  v.string(word('a time')),
  v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/, 'this is not a time'),
  v.check((value) => {
    const date = new Date(value);
    return !Number.isNaN(date.getTime()) && date.toISOString() === value;
  }, 'this is not a time'),
);

/** True for what JSON and the browser's copying make of `{}`: no array, date or map. */
export function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}

const plain = v.custom<object>(isPlain, 'this should be a set of named values');

const small = v.check<object, string>(
  (value) => Object.keys(value).length <= LIMITS.map,
  `more than ${LIMITS.map} values`,
);

/** A plain object with these fields; others are left out. */
export function fields<const E extends v.ObjectEntries>(entries: E) {
  return v.pipe(plain, v.object(entries, 'a value is missing'));
}

/** A list of at most `max`. */
export function listOf<V extends v.GenericSchema>(value: V, max: number) {
  return v.pipe(v.array(value, 'this should be a list'), v.maxLength(max, `more than ${max} in a list`));
}

/** A map with checked names. valibot drops `__proto__`, `constructor` and `prototype`; it would take an array, hence `plain`. */
export function map<V extends v.GenericSchema>(key: typeof place | typeof symbol, value: V) {
  return v.pipe(plain, small, v.record(key, value));
}

/** A picture as base64, without the `data:` before it. */
export const base64 = v.pipe(
  v.string(word('a photo')),
  v.maxLength(LIMITS.photo, `this photo is longer than ${LIMITS.photo} characters`),
  v.regex(/^[A-Za-z0-9+/]+={0,2}$/, 'this is not a photo'),
);

/** A whole number from 1 to `max`. */
export const wholeUpTo = (max: number) =>
  v.pipe(
    number,
    v.integer('this should be a whole number'),
    v.minValue(1, 'this is below one'),
    v.maxValue(max, `this is above ${max}`),
  );

export const choices = (key: typeof place | typeof symbol) => map(key, option);

/** One of these words. */
export function oneOf<const W extends readonly string[]>(...words: W) {
  return v.picklist(words, `this should be one of: ${words.join(', ')}`);
}
