import { formatBare, formatBareExpanded, type FormatOptions } from './format';
import type { Unit } from './unit';
import say, { type Spoken } from './words/en';

/** The mark plays no part in speech. */
export type SpeakOptions = Pick<FormatOptions, 'magnitude'>;

const MILLION = 1_000_000;
const number = say.number;

/** 0 to 999,999 in words. */
function inWords(n: number): string {
  const few = number.small[n];
  if (few !== undefined) return few;
  if (n < 100) return number.tens(Math.floor(n / 10), n % 10 === 0 ? '' : inWords(n % 10));
  const step = n < 1000 ? 100 : 1000;
  const [head, rest] = [inWords(Math.floor(n / step)), n % step];
  const tail = rest === 0 ? '' : inWords(rest);
  return step === 100 ? number.hundreds(head, tail) : number.thousands(head, tail, rest < 100);
}

const digitByDigit = (digits: string): string => Array.from(digits, (digit) => inWords(Number(digit))).join(' ');

/** A whole number without a sign: in words up to a million, digit by digit above. */
function speakWhole(digits: string): string {
  const n = Number(digits);
  if (n === MILLION) return number.million;
  return n < MILLION ? inWords(n) : digitByDigit(digits);
}

/**
 * A printed number as it is said: “two point three”, “minus zero point zero five”.
 *
 * @param printed as `formatNumber` prints it with a decimal point
 */
export function speakNumber(printed: string): string {
  if (/^[-−]/.test(printed)) return number.minus(speakNumber(printed.slice(1)));
  const [mantissa = '', exponent] = printed.split('e');
  if (exponent !== undefined) return number.power(speakNumber(mantissa), speakNumber(exponent.replace('+', '')));
  const [whole = '', digits] = mantissa.split('.');
  return digits === undefined ? speakWhole(whole) : number.point(speakWhole(whole), digitByDigit(digits));
}

/** The unit as it is said after a number printed so: “degree” after 1 and −1, else “degrees”. Its label for a stranger. */
function unitAfter(printed: string, unit: Unit): string {
  const units: Readonly<Record<string, Readonly<Record<string, Spoken>>>> = say.units;
  const [one, many] = units[unit.kind]?.[unit.id] ?? [unit.label, unit.label];
  return /^[-−]?1$/.test(printed) ? one : many;
}

function withUnit(spoken: string, printed: string, unit: Unit): string {
  const name = unitAfter(printed, unit);
  return name === '' ? spoken : say.withUnit(spoken, name);
}

/** What `formatValue` prints, as it is said: “two point three degrees”. Same digits. */
export function speakValue(si: number, expanded: number, unit: Unit, options: SpeakOptions = {}): string {
  const printed = formatBare(si, expanded, unit, { ...options, mark: 'point' });
  return withUnit(speakNumber(printed), printed, unit);
}

/** What `formatMeasured` prints, as it is said: “two point three plus or minus zero point four degrees”. Same digits. */
export function speakMeasured(si: number, expanded: number, unit: Unit, options: SpeakOptions = {}): string {
  const half = formatBareExpanded(expanded, unit);
  if (half === '') return speakValue(si, 0, unit, options);
  const value = speakNumber(formatBare(si, expanded, unit, { ...options, mark: 'point' }));
  return withUnit(say.plusMinus(value, speakNumber(half)), half, unit);
}
