import type { Case, Reading } from '../../machine/schema';
import type { ReadingLines } from './sheet';
import say from './words/en';
import type { Records } from '../desk/records';
import { titleOf, verdictWord } from '../desk/reading-entry';

/** The readings that a case's answers and its proof rest on, as far as they are there, each with its numbers. */
export async function readingsOfCase(readingAt: Records['readingAt'], one: Case): Promise<readonly ReadingLines[]> {
  const entries = one.log.flatMap((entry) => (entry.kind === 'answer' && entry.reading ? [entry.reading] : []));
  const taken = [...entries, ...(one.closed?.reading ? [one.closed.reading] : [])];
  const found = await Promise.all(taken.map((at) => readingAt({ machine: one.machine, ...at })));
  return found.flatMap((reading) => (reading ? [linesOf(reading)] : []));
}

function linesOf(reading: Reading): ReadingLines {
  return {
    id: reading.id,
    title: titleOf(reading.calculator),
    lines: [
      say.sheet.verdict(verdictWord(reading.calculator, reading.verdict), reading.order.sentence),
      ...Object.values(reading.results).map(({ name, text }) => `${name} ${text}`),
    ],
  };
}
