import { formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { fromSi, toSi, type Measure } from '../../quantity/unit';

/** The decimal mark a printed number was written with; a point where it has none. */
export function markOf(printed: string): DecimalMark {
  return printed.includes(',') ? 'comma' : 'point';
}

/**
 * An SI value that is no symbol of the calculator, with its unit, in the decimal mark of a number already printed; at
 * most `digits` significant digits.
 */
export function printLike(printed: string, si: number, measure: Measure, digits = 6): string {
  const { unit } = measure;
  return formatValue(toSi(Number(fromSi(si, unit).toPrecision(digits)), unit), 0, unit, { mark: markOf(printed) });
}
