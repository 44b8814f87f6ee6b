import type { Interval, Promised } from '../../machine/history';
import type { Reading } from '../../machine/schema';
import { formatMeasured } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import { shownIn, unbroken } from './reading-print';
import say from './words/en';

interface In {
  readonly kind: string;
  readonly unit: string;
}

const print = ({ value, low, high }: Interval, unit: In, mark: DecimalMark): string =>
  unbroken(formatMeasured(value, (high - low) / 2, shownIn(unit), { mark }));

/** "Height difference: expected 0.00 ± 0.04 mm, read 0.02 ± 0.03 mm: as predicted." */
export function printPromised(one: Promised, mark: DecimalMark): string {
  return say.promised(one.name, print(one.expected, one, mark), print(one.read, one, mark), one.held);
}

/** What a reading's order promised: names with their intervals. */
export function printExpects({ order }: Reading, mark: DecimalMark): readonly string[] {
  return Object.values(order.expects).map((one) => say.expects(one.name, print(one, one, mark)));
}
