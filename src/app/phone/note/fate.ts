import { formatValue } from '../../../quantity/format';
import { frequency } from '../../../quantity/kinds';
import type { DecimalMark } from '../../../quantity/parse';
import type { NoteRefused } from '../../../signal/note';
import type { Pluck, Tally } from './tally';
import say from './words/en';

/** Hz: a pluck by itself is printed no finer, whatever its own doubt; the plucks differ by more. */
const FINEST = 0.1;
/** Nearer than this to a whole ratio, a note is taken for a partial of the same span. */
const WHOLE = 0.04;
/** A belt plucked harder, or one that crept: nearer than this it may still be the same span. */
const NEAR = 0.03;

/** "109.98 Hz"; in words where a pluck gave no note. */
export function printNote({ note }: Pluck, mark: DecimalMark): string {
  if (note.status !== 'found') return say.plucks.noNote;
  return formatValue(note.frequency, Math.max(note.halfWidth, FINEST), frequency.Hz.unit, { mark });
}

/**
 * Why a pluck stands apart from the others.
 * @param frequency its note, Hz
 * @param common the note that the others agree on, Hz
 */
export function whyApart(frequency: number, common: number): string {
  const isRatio = (ratio: number): boolean => Math.abs(frequency / common / ratio - 1) < WHOLE;
  if (isRatio(2)) return say.apart.octaveAbove;
  if (isRatio(1 / 2)) return say.apart.octaveBelow;
  if (isRatio(3)) return say.apart.thrice;
  if (isRatio(1 / 3)) return say.apart.third;
  const off = frequency / common - 1;
  const percent = Math.abs(off * 100);
  const way = off > 0 ? 'higher' : 'lower';
  if (Math.abs(off) < NEAR) return say.apart.moved(percent.toPrecision(2), way);
  return say.apart.otherSpan(percent.toFixed(0), way);
}

/** Why a pluck gave no note; where two ways of naming it contradict each other, what each of them heard. */
function printRefusal({ reason, heard }: NoteRefused, mark: DecimalMark): string {
  if (!heard) return say.refusal[reason].short;
  const print = (hertz: number) => formatValue(hertz, FINEST, frequency.Hz.unit, { mark });
  return say.refusal.contradicted.heard(print(heard.partials), print(heard.period));
}

/** Whether a pluck counts, and why not. */
export function printFate(pluck: Pluck, combined: ReturnType<Tally['combined']>, mark: DecimalMark): string {
  const { note, number, struck } = pluck;
  if (note.status !== 'found') return say.fate.notUsed(printRefusal(note, mark));
  if (struck) return say.fate.struck;
  const belt = combined.two.findIndex(({ numbers }) => numbers.has(number));
  if (belt >= 0) return say.two.fate[belt] ?? say.fate.waiting;
  if (!combined.found) return say.fate.waiting;
  if (combined.used.has(number)) return note.doubted ? say.fate.doubted : say.fate.used;
  return say.fate.notUsed(whyApart(note.frequency, combined.found.frequency));
}
