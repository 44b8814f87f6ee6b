import type { Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/schema-parts';
import { limitsIn, loadFacts, nameIn } from '../desk/check-facts';

/** What an entry says of the reading it rests on: the numbers that were held to a limit, and the instruction. */
export async function readingNote(reading: Reading): Promise<string> {
  const { calculator } = await loadFacts(reading.calculator);
  const judged = [...new Set(limitsIn(calculator, reading).map((limit) => limit.of))];
  const numbers = judged.flatMap((symbol) => {
    const result = reading.results[symbol];
    return result ? [`${nameIn(calculator, reading, symbol)} ${result.text}`] : [];
  });
  const note = [...numbers, reading.headline].filter((part) => part !== '').join('; ');
  return note.length > LIMITS.line ? `${note.slice(0, LIMITS.line - 1)}…` : note;
}
