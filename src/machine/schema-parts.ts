import * as v from 'valibot';
import { isPlain } from './plain';
import { LIMITS } from './limits';
import say from './words/en';

const field = say.field;

/** Text of at most `max` characters. */
export function text(max: number) {
  return v.pipe(v.string(field.shouldBeText), v.maxLength(max, field.tooLong(max)));
}

function matching(pattern: RegExp, words: typeof field.id) {
  return v.pipe(
    v.string(words.shouldBeText),
    v.maxLength(LIMITS.id, words.tooLong(LIMITS.id)),
    v.regex(pattern, words.otherShape),
  );
}

/** No colon: the ids stand in keys, where a colon parts them. */
export const id = matching(/^[A-Za-z0-9][A-Za-z0-9-]*$/, field.id);
/** Where a machine keeps a value: `z.lead`. */
export const place = matching(/^[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*$/, field.place);
/** What every object inherits (`toString`) would be found in any table it is looked up in. */
const ownName = v.check<string, string>((name) => !(name in Object.prototype), field.reservedName);
/** An id as a name in a map. */
export const ownId = v.pipe(id, ownName);
/** A calculator's symbol. */
export const symbol = v.pipe(matching(/^[A-Za-z][A-Za-z0-9_]*$/, field.symbol), ownName);
/** An option picked: `belt`, `M8×1`. */
const option = v.pipe(matching(/^[A-Za-z0-9][A-Za-z0-9_.+/×-]*$/, field.option), ownName);
/** Ids of units and tools; empty where there is none. */
export const idOrNone = matching(/^[A-Za-z0-9_-]*$/, field.id);

/** Key of words, which a calculator of today may still have; empty where there is none. */
export const keyOrNone = v.pipe(idOrNone, ownName);
/** Id of a kind of quantity; empty where it is not known. */
export const kindOrNone = matching(/^[a-z ]*$/, field.id);

export const name = v.pipe(
  text(LIMITS.name),
  v.check((value) => value.trim() !== '', field.noName),
);

/** SI, never infinite, never "not a number". */
export const number = v.pipe(v.number(field.shouldBeNumber), v.finite(field.notFinite));
export const half = v.pipe(number, v.minValue(0, field.halfBelowZero));

/** As `Date.toISOString` writes it, so that times sort as text. */
export const time = v.pipe(
  v.string(field.time.shouldBeText),
  v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/, field.time.otherShape),
  v.check((value) => {
    const date = new Date(value);
    return !Number.isNaN(date.getTime()) && date.toISOString() === value;
  }, field.time.otherShape),
);

const plain = v.custom<object>(isPlain, field.shouldBeMap);

const small = v.check<object, string>(
  (value) => Object.keys(value).length <= LIMITS.map,
  field.tooManyValues(LIMITS.map),
);

/** A plain object with these fields; others are left out. */
export function fields<const E extends v.ObjectEntries>(entries: E) {
  return v.pipe(plain, v.object(entries, field.missing));
}

/** A list of at most `max`. */
export function listOf<V extends v.GenericSchema>(value: V, max: number) {
  return v.pipe(v.array(value, field.shouldBeList), v.maxLength(max, field.tooManyInList(max)));
}

/** A map with checked names. valibot drops `__proto__`, `constructor` and `prototype`; it would take an array, hence `plain`. */
export function map<V extends v.GenericSchema>(key: typeof place | typeof symbol, value: V) {
  return v.pipe(plain, small, v.record(key, value));
}

/** A picture as base64, without the `data:` before it. */
export const base64 = v.pipe(
  v.string(field.photo.shouldBeText),
  v.maxLength(LIMITS.photo, field.photo.tooLong(LIMITS.photo)),
  v.regex(/^[A-Za-z0-9+/]+={0,2}$/, field.photo.otherShape),
);

/** A whole number from 1 to `max`. */
export const wholeUpTo = (max: number) =>
  v.pipe(number, v.integer(field.shouldBeWhole), v.minValue(1, field.belowOne), v.maxValue(max, field.above(max)));

/**
 * Place in the order of what was done to one machine: a counter beside the clock, which can be wrong. Whatever is done next has
 * one more than the most that the machine has seen, here or in a file. Zero where an earlier version did not count.
 */
export const ordinal = v.pipe(
  number,
  v.integer(field.shouldBeWhole),
  v.minValue(0, field.belowZero),
  v.maxValue(LIMITS.ordinal, field.above(LIMITS.ordinal)),
);

export const choices = (key: typeof place | typeof symbol) => map(key, option);

/** One of these words. */
export function oneOf<const W extends readonly string[]>(...words: W) {
  return v.picklist(words, field.shouldBeOneOf(words.join(', ')));
}

/** Where a value comes from. */
export const origin = oneOf('typical', 'nameplate', 'measured');
