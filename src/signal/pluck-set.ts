import type { NoteFound, NoteRefused } from './note';

/** Plucks that agree on a note of their own. */
interface PluckGroup {
  readonly frequency: number;
  readonly halfWidth: number;
  readonly used: readonly number[];
}

export type PluckSet =
  | {
      readonly status: 'found';
      /** Median of the plucks that agree, Hz. */
      readonly frequency: number;
      /** Half-width of the median's 95 % interval, Hz. */
      readonly halfWidth: number;
      /** Places in the list given. */
      readonly used: readonly number[];
      readonly outliers: readonly number[];
    }
  | {
      /** Two notes, each of two plucks or more: the one with more plucks first. */
      readonly status: 'two';
      readonly groups: readonly [PluckGroup, PluckGroup];
      readonly used: readonly number[];
      readonly outliers: readonly number[];
    }
  | { readonly status: 'too few'; readonly used: readonly number[]; readonly outliers: readonly number[] };

/** Plucks of one belt scatter by less than the first share; those farther than the second are of another note. */
const SURE = 0.015;
const FARTHEST = 0.05;

/** Two-sided 95 % quantile of Student's t for 1, 2, … degrees of freedom (printed tables). */
const STUDENT = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131,
];
const student = (freedom: number): number => STUDENT[freedom - 1] ?? 1.96 + 2.6 / freedom;

/** From so many that agree on, what else is heard speaks no longer against them. */
const ENOUGH = 4;

/** How many sounds were heard that are no belt's: each of them says that those that agree may be none's either. */
export const against = (heard: readonly (NoteFound | NoteRefused)[]): number =>
  heard.filter(
    (note) =>
      note.status === 'refused' &&
      (note.reason === 'held' || note.reason === 'contradicted' || note.reason === 'too noisy'),
  ).length;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? upper)) / 2;
}

/** The places of the most plucks that lie within the sure scatter of one of them. */
function largestGroup(notes: readonly NoteFound[]): readonly number[] {
  let best: readonly number[] = [];
  for (const centre of notes) {
    const group = [...notes.keys()].filter((i) => {
      const note = notes[i];
      return note && Math.abs(note.frequency / centre.frequency - 1) <= SURE;
    });
    if (group.length > best.length) best = group;
  }
  return best;
}

/** Notes this near to a whole ratio of each other are one belt's, named by another of its partials. */
const WHOLE = 0.04;

/** Of the plucks that stand apart those that agree among themselves, where there are two or more and theirs is no overtone. */
function otherGroup(notes: readonly NoteFound[], outliers: readonly number[], centre: number): PluckGroup | undefined {
  const apart = outliers.filter((i) => {
    const ratio = (notes[i]?.frequency ?? NaN) / centre;
    const whole = ratio > 1 ? ratio : 1 / ratio;
    return Math.round(whole) < 2 || Math.abs(whole / Math.round(whole) - 1) > WHOLE;
  });
  const rest = apart.flatMap((i) => notes[i] ?? []);
  const used = largestGroup(rest).flatMap((place) => apart[place] ?? []);
  return used.length >= 2 ? groupOf(notes, used) : undefined;
}

/**
 * One note from several plucks: their median. Plucks of another octave or another string are told apart: those that lie
 * outside four standard deviations (by the median absolute deviation, held between 1.5 % and 5 %) of the largest group. The
 * half-width is the greater of what the scatter gives, by Student's t with the median's larger spread (√(π/2), asymptotic),
 * and what the plucks' own half-widths give. 'two' where two or more of those that stand apart agree on another note that is no
 * overtone: two belts. 'too few' where not even two, or not more than half, agree; of few, not more than there are sounds of no belt.
 * @param others sounds heard that are no belt's
 */
export function combinePlucks(notes: readonly NoteFound[], others = 0): PluckSet {
  const group = largestGroup(notes).map((i) => notes[i]?.frequency ?? NaN);
  const centre = median(group);
  const deviation = 1.4826 * median(group.map((f) => Math.abs(f - centre)));
  const used: number[] = [];
  const outliers: number[] = [];
  notes.forEach((note, i) => {
    const within = Math.min(FARTHEST * centre, Math.max(SURE * centre, 4 * deviation, 2 * note.halfWidth));
    (Math.abs(note.frequency - centre) <= within ? used : outliers).push(i);
  });
  const n = used.length;
  const second = otherGroup(notes, outliers, centre);
  if (n >= 2 && second) {
    const groups = [groupOf(notes, used), second] as const;
    return {
      status: 'two',
      groups,
      used: [...used, ...second.used],
      outliers: outliers.filter((i) => !second.used.includes(i)),
    };
  }
  if (n < 2 || 2 * n <= notes.length || (n < ENOUGH && n <= others)) return { status: 'too few', used, outliers };
  return { status: 'found', ...groupOf(notes, used), outliers };
}

function groupOf(notes: readonly NoteFound[], used: readonly number[]): PluckGroup {
  const n = used.length;
  const kept = used.map((i) => notes[i]).filter((note) => note !== undefined);
  const frequencies = kept.map((note) => note.frequency);
  const mean = frequencies.reduce((sum, f) => sum + f, 0) / n;
  const spread = Math.sqrt(frequencies.reduce((sum, f) => sum + (f - mean) ** 2, 0) / (n - 1));
  const own = Math.sqrt(kept.reduce((sum, note) => sum + note.halfWidth ** 2, 0) / n);
  const loss = n === 2 ? 1 : Math.sqrt(Math.PI / 2);
  const halfWidth = (loss / Math.sqrt(n)) * Math.max(student(n - 1) * spread, own);
  return { frequency: median(frequencies), halfWidth, used };
}
