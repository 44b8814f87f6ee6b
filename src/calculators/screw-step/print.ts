import { formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { fromSi, toSi, type Measure } from '../../quantity/unit';

/** An SI value that is no symbol of the calculator, with its unit, at most `digits` significant digits. */
export function printPlain(si: number, measure: Measure, mark: DecimalMark, digits = 6): string {
  const { unit } = measure;
  return formatValue(toSi(Number(fromSi(si, unit).toPrecision(digits)), unit), 0, unit, { mark });
}
