import { readCoded } from './coded';
import { plainText } from './plain';
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

const PLUS_MINUS = /\s*(?:\+\s*\/?\s*-|±)\s*/;
const DECIMAL = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?`;
const NUMBER = new RegExp(
  String.raw`^([+-]?)\s*(?:(\d+)(?:\s+|-\s*)(\d+)\s*/\s*(\d+)|(\d+)\s*/\s*(\d+)|(${DECIMAL}))\s*`,
  'i',
);
/** Thousands as those write them whose decimals have the other mark. */
const THOUSANDS: Readonly<Record<DecimalMark, RegExp>> = {
  point: /^[1-9]\d{0,2},\d{3}$/,
  comma: /^[1-9]\d{0,2}\.\d{3}$/,
};

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
    if (THOUSANDS[mark].test(decimal)) {
      const joined = decimal.replace(/[.,]/, '');
      return mark === 'point'
        ? refuse(typed.ambiguous(decimal, decimal.replace(',', '.'), joined))
        : refuse(typed.ambiguousPoint(decimal, decimal.replace('.', ','), joined));
    }
    return { number: negative * Number(decimal.replace(',', '.')), rest };
  }
  const denominator = Number(wholeBottom ?? bottom);
  if (denominator === 0) return refuse(typed.byZero(text));
  const numerator = Number(wholeTop ?? top);
  return { number: negative * (Number(whole ?? 0) + numerator / denominator), rest };
}

/** A sign of degrees alone means the field's own scale, or that of Celsius where the field is in kelvin. */
function bareDegrees(kind: Kind, field: Unit, text: string): Unit | undefined {
  if (text.trim() !== '°' || !kind.units.some((unit) => unit.label.startsWith('°'))) return undefined;
  if (field.label.startsWith('°')) return field;
  return kind.units.find((unit) => unit.label === '°' || unit.offset !== 0) ?? field;
}

interface Amount {
  readonly number: number;
  /** As typed; undefined where none was. */
  readonly unit: Unit | undefined;
  /** What stands behind the number and is no unit of the kind. */
  readonly rest: string;
}

function readAmount(text: string, kind: Kind, field: Unit, mark: DecimalMark): Amount | Refused {
  const coded = readCoded(text.trim(), kind, field);
  if (coded) return 'reason' in coded ? refuse(coded.reason) : { ...coded, rest: '' };
  const part = readNumber(text, mark);
  if ('ok' in part) return part;
  if (part.rest === '') return { ...part, unit: undefined };
  const unit = bareDegrees(kind, field, part.rest) ?? findUnit(kind, part.rest);
  return { number: part.number, unit, rest: unit ? '' : part.rest };
}

/** Half-width in SI, and the unit it was typed in. */
interface Half {
  readonly half: number;
  readonly unit: Unit | undefined;
}

function readHalf(
  text: string,
  main: Amount & { readonly text: string },
  kind: Kind,
  field: Unit,
  mark: DecimalMark,
): Half | Refused {
  const found = readAmount(text, kind, main.unit ?? field, mark);
  if ('ok' in found) return refuse(typed.afterHalf(found.reason));
  if (found.number < 0) return refuse(typed.negativeHalf);
  const unit = main.unit ?? found.unit ?? field;
  // A share of the number typed: 5 % of 20 °C is 1 °C, though the SI value is 293 K.
  if (found.rest.trim() === '%')
    return { half: ((Math.abs(main.number) * found.number) / 100) * unit.factor, unit: undefined };
  if (found.rest !== '') return refuse(typed.otherHalfUnit(found.rest, nameOf(kind), unitList(kind)));
  // 20 ± 1 K in a field of °C: kelvins of a difference, or of the scale?
  if (!main.unit && found.unit?.offset === 0 && field.offset !== 0) {
    return refuse(typed.scaleOrDifference(main.text, text.trim(), field.label, found.unit.label));
  }
  return { half: found.number * (found.unit ?? unit).factor, unit: found.unit };
}

/**
 * Reads what a person typed into a field: `0.4`, `0,4`, `1/32 in`, `400 um`, `3 1/2`, `1-1/2 in`, `4k7`, `1:30`,
 * `0.40 +- 0.02`, `30 N ± 5 %`.
 *
 * @param text as typed
 * @param kind what the field measures; its units are the ones accepted
 * @param unit the unit meant when none is typed
 * @param mark the person's decimal mark; both are read, but what may be thousands by it (`1,000` with `point`) is refused
 * @returns the SI value, or a sentence that says what is wrong and what would be accepted
 */
export function parseQuantity(text: string, kind: Kind, unit: Unit, mark: DecimalMark = 'point'): Typed | Refused {
  const plain = plainText(text);
  if (plain === '') return refuse(typed.nothing);
  const [mainText = '', halfText, ...more] = plain.split(PLUS_MINUS);
  if (more.length > 0) return refuse(typed.oneHalf);

  const main = readAmount(mainText, kind, unit, mark);
  if ('ok' in main) return main;
  if (main.rest !== '') return refuse(typed.otherUnit(main.rest, nameOf(kind), unitList(kind)));
  const read =
    halfText === undefined ? undefined : readHalf(halfText, { ...main, text: mainText.trim() }, kind, unit, mark);
  if (read && 'ok' in read) return read;

  const typedUnit = main.unit ?? read?.unit ?? unit;
  const value = toSi(main.number, typedUnit);
  if (!Number.isFinite(value)) return refuse(typed.tooLarge);
  if (kind.whole && !Number.isInteger(main.number)) return refuse(typed.notWhole(String(main.number)));
  if (!read) return { ok: true, value, unit: typedUnit };
  if (!Number.isFinite(read.half)) return refuse(typed.halfTooLarge);
  return { ok: true, value, unit: typedUnit, half: read.half };
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
