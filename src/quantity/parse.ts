import { fromSi, findUnit, toSi, type Kind, type Unit } from './unit';
import say from './words/en';

/** How this person writes decimals; decides what `1,000` means. */
export type DecimalMark = 'point' | 'comma';

/** What was typed, understood: SI value, the unit it was typed in, and the SI half-width if one was typed. */
export interface Typed {
  readonly ok: true;
  readonly value: number;
  readonly unit: Unit;
  readonly half?: number;
}

/** Why it was not understood, as a sentence for the person. */
export interface Refused {
  readonly ok: false;
  readonly reason: string;
}

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const PLUS_MINUS = /\s*(?:\+\s*\/?\s*-|±)\s*/;
const DECIMAL = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?`;
const NUMBER = new RegExp(String.raw`^([+-]?)\s*(?:(\d+)\s+(\d+)\s*/\s*(\d+)|(\d+)\s*/\s*(\d+)|(${DECIMAL}))\s*`, 'i');
const THOUSANDS = /^[1-9]\d{0,2},\d{3}$/;

const typed = say.typed;

const refuse = (reason: string): Refused => ({ ok: false, reason });

/** The units a person may write for `kind`, for a sentence: "mm, µm or in". */
function unitList(kind: Kind): string {
  const labels = kind.units.map((unit) => unit.label).filter((label) => label !== '');
  const last = labels.pop();
  if (last === undefined) return typed.noUnit;
  return labels.length > 0 ? typed.or(labels.join(', '), last) : last;
}

/** A kind as it stands in a sentence; a stranger's by its id. */
function nameOf(kind: Kind): string {
  const names: Readonly<Record<string, string>> = say.kinds;
  return names[kind.id] ?? kind.id;
}

interface Part {
  readonly number: number;
  readonly rest: string;
}

function readNumber(text: string, mark: DecimalMark): Part | Refused {
  const match = NUMBER.exec(text);
  if (!match) {
    return refuse(typed.noNumber(text));
  }
  const [all, sign, whole, wholeTop, wholeBottom, top, bottom, decimal] = match;
  const rest = text.slice(all.length);
  // `1/s` is a unit that starts with a digit.
  if (/^(?!1\/[a-z])[.,\d]/i.test(rest)) {
    return refuse(typed.twoMarks(text));
  }
  const negative = sign === '-' ? -1 : 1;
  if (decimal !== undefined) {
    if (mark === 'point' && THOUSANDS.test(decimal)) {
      const joined = decimal.replace(',', '');
      return refuse(typed.ambiguous(decimal, decimal.replace(',', '.'), joined));
    }
    return { number: negative * Number(decimal.replace(',', '.')), rest };
  }
  const denominator = Number(wholeBottom ?? bottom);
  if (denominator === 0) return refuse(typed.byZero(text));
  const numerator = Number(wholeTop ?? top);
  return { number: negative * (Number(whole ?? 0) + numerator / denominator), rest };
}

function tidy(text: string): string {
  let tidied = text.replace(/[\u2212\u2013]/g, '-').replace(/[\u00a0\u202f]/g, ' ');
  for (const [sign, plain] of Object.entries(VULGAR)) tidied = tidied.replaceAll(sign, ` ${plain}`);
  return tidied.trim();
}

/**
 * Reads what a person typed into a field: `0.4`, `0,4`, `1/32 in`, `400 um`, `3 1/2`, `0.40 +- 0.02`, `30 N ± 5 %`.
 *
 * @param text as typed
 * @param kind what the field measures; its units are the ones accepted
 * @param unit the unit meant when none is typed
 * @param mark the person's decimal mark; both are read, but `1,000` is refused as ambiguous with `point`
 * @returns the SI value, or a sentence that says what is wrong and what would be accepted
 */
export function parseQuantity(text: string, kind: Kind, unit: Unit, mark: DecimalMark = 'point'): Typed | Refused {
  const tidied = tidy(text);
  if (tidied === '') return refuse(typed.nothing);
  const [main = '', halfText, ...more] = tidied.split(PLUS_MINUS);
  if (more.length > 0) return refuse(typed.oneHalf);

  const first = readNumber(main, mark);
  if ('ok' in first) return first;
  let typedUnit = unit;
  let unitGiven = false;
  if (first.rest !== '') {
    const found = findUnit(kind, first.rest);
    if (!found) return refuse(typed.otherUnit(first.rest, nameOf(kind), unitList(kind)));
    typedUnit = found;
    unitGiven = true;
  }

  let halfNumber: number | undefined;
  let halfUnit = typedUnit;
  let relative = false;
  if (halfText !== undefined) {
    const second = readNumber(halfText, mark);
    if ('ok' in second) return refuse(typed.afterHalf(second.reason));
    if (second.number < 0) return refuse(typed.negativeHalf);
    halfNumber = second.number;
    if (second.rest !== '') {
      const found = findUnit(kind, second.rest);
      if (found) {
        halfUnit = found;
        if (!unitGiven) typedUnit = found;
      } else if (second.rest.trim() === '%') {
        relative = true;
      } else {
        return refuse(typed.otherHalfUnit(second.rest, nameOf(kind), unitList(kind)));
      }
    }
  }

  const value = toSi(first.number, typedUnit);
  if (!Number.isFinite(value)) return refuse(typed.tooLarge);
  if (kind.whole && !Number.isInteger(first.number)) {
    return refuse(typed.notWhole(String(first.number)));
  }
  if (halfNumber === undefined) return { ok: true, value, unit: typedUnit };
  // A share of the number typed: 5 % of 20 °C is 1 °C, though the SI value is 293 K.
  const half = relative
    ? ((Math.abs(first.number) * halfNumber) / 100) * typedUnit.factor
    : halfNumber * halfUnit.factor;
  if (!Number.isFinite(half)) return refuse(typed.halfTooLarge);
  return { ok: true, value, unit: typedUnit, half };
}

const MAX_PLACES = 12;

/**
 * A measured SI value with its half-width as text that `parseQuantity` reads back in the same unit: two digits of the
 * half-width, the value to the same place.
 */
export function toTypedMeasured(si: number, half: number, unit: Unit, mark: DecimalMark = 'point'): string {
  const width = half / unit.factor;
  if (!(width > 0)) return toTyped(si, unit, mark);
  const places = Math.min(Math.max(1 - Math.floor(Math.log10(width)), 0), MAX_PLACES);
  const text = `${fromSi(si, unit).toFixed(places)} ± ${width.toFixed(places)}`;
  return mark === 'comma' ? text.replaceAll('.', ',') : text;
}

/** An SI value as text that `parseQuantity` reads back in the same unit, with at most `digits` significant digits. */
export function toTyped(si: number, unit: Unit, mark: DecimalMark = 'point', digits = 10): string {
  const text = String(Number(fromSi(si, unit).toPrecision(digits)));
  return mark === 'comma' ? text.replace('.', ',') : text;
}
