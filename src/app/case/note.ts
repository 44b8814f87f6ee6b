import type { Reading } from '../../machine/schema';
import { LIMITS } from '../../machine/limits';

/** What an entry says of the reading it rests on: the numbers that were held to a limit, and the instruction. */
export function readingNote(reading: Reading): string {
  const judged = [...new Set(reading.limits.map((limit) => limit.of))];
  const numbers = judged.flatMap((symbol) => {
    const result = reading.results[symbol];
    return result ? [`${result.name} ${result.text}`] : [];
  });
  const note = [...numbers, reading.order.sentence].filter((part) => part !== '').join('; ');
  return note.length > LIMITS.line ? `${note.slice(0, LIMITS.line - 1)}…` : note;
}
