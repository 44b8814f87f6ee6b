import { formatMeasured } from '../../quantity/format';
import { shownIn, unbroken } from '../desk/reading-print';
import { printDay } from '../desk/time';
import type { Bench } from './bench';
import { sideWords } from './print';
import say from './words/en';

/** What a line read the last time, beside one that is read again; undefined where it is not. */
export function printEarlier(bench: Bench, symbol: string): string | undefined {
  const last = bench.last();
  const was = last?.entries[symbol];
  const spec = bench.calc.inputs[symbol];
  if (!bench.isRepeat() || !last || !was || !spec || !bench.calc.measured.includes(symbol)) return undefined;
  const side = sideWords(spec, was.value);
  const mark = bench.mark();
  const value = formatMeasured(was.value, was.half, shownIn(was), { mark, magnitude: side !== '' });
  return say.readings.earlier(unbroken(value) + (side === '' ? '' : `, ${side}`), printDay(last.at));
}

/** What another tab wrote to a line that the cursor stands in; undefined where it did not. */
export function printElsewhere(bench: Bench, symbol: string): string | undefined {
  const found = bench.elsewhere();
  return found?.symbol === symbol ? say.readings.elsewhere(found.text) : undefined;
}
