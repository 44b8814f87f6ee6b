import { createMemo, createSignal } from 'solid-js';
import type { NoteFound, NoteRefused } from '../../../signal/note';
import { against, combinePlucks } from '../../../signal/pluck-set';

/** One pluck that was heard. */
export interface Pluck {
  /** Counts from 1, as they came. */
  readonly number: number;
  readonly note: NoteFound | NoteRefused;
  readonly struck: boolean;
}

/**
 * Share by which a phone's sample clock may be off, and every note with it, however well the plucks agree: 100 parts in a
 * million covers the crystal and its warmth (common practice, no source).
 */
const CLOCK = 1e-4;

/** The plucks heard so far, and what those come to that gave a note and were not struck off. */
export function createTally() {
  const [plucks, setPlucks] = createSignal<readonly Pluck[]>([]);
  const [wanted, setWanted] = createSignal(5);

  const combined = createMemo(() => {
    const taken = plucks().flatMap(({ number, note, struck }) =>
      note.status === 'found' && !struck ? [{ number, note }] : [],
    );
    const result = combinePlucks(
      taken.map(({ note }) => note),
      against(plucks().map(({ note }) => note)),
    );
    const numbers = (places: readonly number[]) =>
      new Set(places.flatMap((place) => ((pluck) => (pluck ? [pluck.number] : []))(taken[place])));
    const used = numbers(result.used);
    const clocked = ({ frequency, halfWidth }: { frequency: number; halfWidth: number }) => ({
      frequency,
      halfWidth: Math.hypot(halfWidth, CLOCK * frequency),
    });
    if (result.status === 'two') {
      const two = result.groups.map((group) => ({ ...clocked(group), numbers: numbers(group.used) }));
      return { used, found: undefined, two };
    }
    if (result.status !== 'found') return { used, found: undefined, two: [] };
    return { used, found: clocked(result), two: [] };
  });
  const count = () => (combined().two.length > 0 ? 0 : combined().used.size);

  return {
    plucks,
    /** How many plucks must agree. */
    wanted,
    want: (agreeing: number): void => void setWanted(agreeing),
    combined,
    /** How many agree. */
    count,
    missing: () => Math.max(wanted() - count(), 0),
    /** Plucks are heard, but two or more gave no note, and more of them than gave one: it may be the belt's own fault. */
    isDumb: () => {
      const dumb = plucks().filter(({ note }) => note.status === 'refused').length;
      return dumb >= 2 && 2 * dumb > plucks().length;
    },
    isEnough: () => combined().found !== undefined && count() >= wanted(),
    add: (note: Pluck['note']): void =>
      void setPlucks((before) => [...before, { number: before.length + 1, note, struck: false }]),
    strike: (number: number, struck: boolean): void =>
      void setPlucks((before) => before.map((pluck) => (pluck.number === number ? { ...pluck, struck } : pluck))),
    /** Leaves only these of the plucks that gave a note. */
    keepOnly: (numbers: ReadonlySet<number>): void =>
      void setPlucks((before) => before.map((pluck) => ({ ...pluck, struck: !numbers.has(pluck.number) }))),
    clear: (): void => void setPlucks([]),
  };
}

export type Tally = ReturnType<typeof createTally>;
