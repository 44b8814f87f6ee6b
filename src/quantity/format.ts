import { fromSi, type Unit } from './unit';
import type { DecimalMark } from './parse';

export interface FormatOptions {
  readonly mark?: DecimalMark;
  /** Leave out the sign (the sentence says the direction). */
  readonly magnitude?: boolean;
}

const MAX_DECIMALS = 12;

/** Decimal places that leave `significant` digits of `x`; negative for tens and hundreds. */
function decimalsFor(x: number, significant: number): number {
  // toExponential rounds first, so 0.0996 to two digits counts as 0.10.
  const exponent = Number(x.toExponential(significant - 1).split('e')[1]);
  return significant - 1 - exponent;
}

/** Decimal places for two digits of an uncertainty; undefined where there is none, or only the dust of rounding. */
function placesFor(width: number): number | undefined {
  if (!(width > 0)) return undefined;
  const decimals = decimalsFor(width, 2);
  return decimals > MAX_DECIMALS ? undefined : decimals;
}

function fixed(x: number, decimals: number, mark: DecimalMark): string {
  const places = Math.min(Math.max(decimals, 0), MAX_DECIMALS);
  const step = 10 ** -Math.min(decimals, 0);
  const rounded = Math.round(x / step) * step;
  const text = (decimals < 0 ? rounded : x).toFixed(places);
  const unsigned = /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
  return (mark === 'comma' ? unsigned.replace('.', ',') : unsigned).replace('-', '\u2212');
}

function withUnit(number: string, unit: Unit): string {
  if (unit.label === '') return number;
  return unit.label === '°' || unit.label === '′' ? `${number}${unit.label}` : `${number}\u00a0${unit.label}`;
}

/** A plain number, at most `significant` digits, no trailing zeros: for values without an uncertainty. */
export function formatNumber(x: number, significant = 6, mark: DecimalMark = 'point'): string {
  if (x === 0) return '0';
  const text = String(Number(x.toPrecision(significant)));
  return (mark === 'comma' ? text.replace('.', ',') : text).replace('-', '\u2212');
}

/** The number of `formatValue`, without its unit. */
export function formatBare(si: number, expanded: number, unit: Unit, options: FormatOptions = {}): string {
  const mark = options.mark ?? 'point';
  const shown = fromSi(si, unit);
  const number = options.magnitude ? Math.abs(shown) : shown;
  const decimals = placesFor(expanded / unit.factor);
  return decimals === undefined ? formatNumber(number, 6, mark) : fixed(number, decimals, mark);
}

/**
 * A value to the digits that its expanded uncertainty supports: two digits of uncertainty, the value to the same place
 * (JCGM 100, 7.2.6). Without an uncertainty, at most six digits.
 */
export function formatValue(si: number, expanded: number, unit: Unit, options: FormatOptions = {}): string {
  return withUnit(formatBare(si, expanded, unit, options), unit);
}

/** The number of `formatExpanded`, without its unit; empty when there is no uncertainty. */
export function formatBareExpanded(expanded: number, unit: Unit, mark: DecimalMark = 'point'): string {
  const width = expanded / unit.factor;
  const decimals = placesFor(width);
  return decimals === undefined ? '' : fixed(width, decimals, mark);
}

/** The half of "value ± U": two digits of the expanded uncertainty, with its unit. Empty when it is zero. */
export function formatExpanded(expanded: number, unit: Unit, mark: DecimalMark = 'point'): string {
  const width = formatBareExpanded(expanded, unit, mark);
  return width === '' ? '' : withUnit(width, unit);
}

/** "0.750 ± 0.035 mm"; the bare value when there is no uncertainty. */
export function formatMeasured(si: number, expanded: number, unit: Unit, options: FormatOptions = {}): string {
  const width = formatBareExpanded(expanded, unit, options.mark);
  if (width === '') return formatValue(si, 0, unit, options);
  const pair = `${formatBare(si, expanded, unit, options)} ± ${width}`;
  if (unit.label === '°' || unit.label === '′') return `(${pair})${unit.label}`;
  return withUnit(pair, unit);
}
