import { estimateNote } from '../../src/signal/note';
import { pluck, type Pluck, type Room } from './plucks';

/** Errors counted apart: which multiple of the note was named instead. */
export interface Wrong {
  half: number;
  double: number;
  third: number;
  other: number;
}

/** What a method made of a cell's plucks. */
export class Tally {
  trials = 0;
  refused = 0;
  readonly wrong: Wrong = { half: 0, double: 0, third: 0, other: 0 };
  readonly cents: number[] = [];

  add(found: number | undefined, truth: number) {
    this.trials += 1;
    if (found === undefined) {
      this.refused += 1;
      return;
    }
    const ratio = found / truth;
    if (Math.abs(ratio - 1) <= 0.03) this.cents.push(1200 * Math.log2(ratio));
    else if (Math.abs(ratio - 0.5) < 0.03) this.wrong.half += 1;
    else if (Math.abs(ratio - 2) < 0.08) this.wrong.double += 1;
    else if (Math.abs(ratio - 1 / 3) < 0.02 || Math.abs(ratio - 3) < 0.15) this.wrong.third += 1;
    else this.wrong.other += 1;
  }

  get wrongs(): number {
    return this.wrong.half + this.wrong.double + this.wrong.third + this.wrong.other;
  }
}

export const median = (values: readonly number[]): number =>
  values.length === 0 ? NaN : [...values].sort((a, b) => a - b)[values.length >> 1]!;

export interface Cell {
  readonly tally: Tally;
  /** Cramér-Rao bounds of the trials, as standard deviations in cents. */
  readonly bounds: readonly number[];
  readonly inside: number;
  /** Milliseconds of each estimate by the clock, and of the processor (all threads of ours). */
  readonly times: readonly number[];
  readonly worked: readonly number[];
}

/** Our estimate on the plucks of a room, seeds from `seed` on; `each` gets every pluck, for the peers. */
export function runCell(room: Room, seed: number, trials: number, each?: (made: Pluck, i: number) => void): Cell {
  const tally = new Tally();
  const bounds: number[] = [];
  const times: number[] = [];
  const worked: number[] = [];
  let inside = 0;
  for (let i = 0; i < trials; i += 1) {
    const made = pluck(room, seed + i);
    const used = process.cpuUsage();
    const began = performance.now();
    const note = estimateNote(made.samples, made.rate, { before: made.before });
    times.push(performance.now() - began);
    const { user, system } = process.cpuUsage(used);
    worked.push((user + system) / 1000);
    tally.add(note.status === 'found' ? note.frequency : undefined, made.frequency);
    bounds.push((1200 / Math.LN2) * (made.bound / made.frequency));
    if (note.status === 'found' && Math.abs(note.frequency - made.frequency) <= note.halfWidth) inside += 1;
    each?.(made, i);
  }
  return { tally, bounds, inside, times, worked };
}

/** What a cell must hold: shares wrong (by more than 3 %) and refused, by the noise. */
export const LIMITS: Readonly<Record<number, { wrong: number; refused: number }>> = {
  20: { wrong: 0, refused: 0 },
  10: { wrong: 0.005, refused: 0.02 },
  0: { wrong: 0.02, refused: 0.3 },
};
