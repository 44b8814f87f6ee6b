import { formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { fromSi, toSi, type Measure } from '../../quantity/unit';
import { exact, type Amount } from '../../engine/order';

/** An SI value that is no symbol of the calculator, to at most `digits` significant digits of its unit. */
export function rounded(si: number, measure: Measure, digits = 6): Amount {
  const { unit } = measure;
  return exact(toSi(Number(fromSi(si, unit).toPrecision(digits)), unit), measure);
}

/** The same as printed, with its unit. */
export function printPlain(si: number, measure: Measure, mark: DecimalMark, digits?: number): string {
  return formatValue(rounded(si, measure, digits).si, 0, measure.unit, { mark });
}
