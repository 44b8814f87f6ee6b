import type { SecondModel, Seen } from '../../engine/second';

/*
 * Each span as a thread along which a pulse runs: its note is that of the pulse's way there and back. A tensioner is moved a little at a
 * time, and the span plucked after each, until the note named is heard. No formula of the check is used.
 */

/** Pieces that a pulse is followed over. */
const PIECES = 200;
/** A tensioner goes on by this share of the tension, at first; then by ever less. */
const COARSE = 0.1;

const size = (seen: Seen | undefined): number => (typeof seen === 'number' ? seen : 0);

interface Span {
  readonly length: number;
  /** Of any density: the belt stays the same. */
  readonly tension: number;
}

/** Time of a pulse to the far end and back: each piece hands on its neighbour's sideways speed by the pull between them. */
function note({ length, tension }: Span): number {
  const piece = length / PIECES;
  const mass = 0.01 * piece;
  // A piece of thread on its pull is a spring on a mass: it passes a pulse on in the root of mass over stiffness.
  const passes = Math.sqrt(mass / (tension / piece));
  let time = 0;
  for (let i = 0; i < 2 * PIECES; i += 1) time += passes;
  return 1 / time;
}

/** The pull that makes a span sound so, found by plucking and pulling. */
function strung(length: number, heard: number): Span {
  let tension = 1;
  for (let i = 0; i < 200; i += 1) tension *= (heard / note({ length, tension })) ** 1.5;
  return { length, tension };
}

/** Moves one tensioner the way it was told until the note is heard; the other way it is never met, and is left after a while. */
function tune(span: Span, way: 'tighter' | 'looser', goal: number): Span {
  let [now, share] = [span, COARSE];
  const short = (one: Span): boolean => (way === 'tighter' ? note(one) < goal : note(one) > goal);
  for (let i = 0; i < 400 && share > 1e-7; i += 1) {
    const further = { ...now, tension: now.tension * (way === 'tighter' ? 1 + share : 1 / (1 + share)) };
    if (short(further)) now = further;
    else share /= 2;
  }
  return now;
}

const belts = {
  'tensioner of the first belt': { span: 'L_1', note: 'f_1' },
  'tensioner of the second belt': { span: 'L_2', note: 'f_2' },
} as const;
const isBelt = (part: string): part is keyof typeof belts => Object.hasOwn(belts, part);

const model: SecondModel = {
  carry: ({ given, movements, effect }) => {
    const read: Record<string, Seen> = {};
    for (const { part, direction } of movements) {
      if (!isBelt(part)) throw new Error(`no such part: ${part}`);
      if (direction !== 'tighter' && direction !== 'looser') throw new Error(`a belt does not go ${direction}`);
      const { span, note: symbol } = belts[part];
      const goal = effect[symbol];
      if (typeof goal !== 'number') throw new Error(`no note to stop at for the ${part}`);
      read[symbol] = note(tune(strung(size(given[span]), size(given[symbol])), direction, goal));
    }
    // What is told its note and stands there already is read again.
    for (const symbol of ['f_1', 'f_2'] as const) {
      if (effect[symbol] !== undefined && read[symbol] === undefined) read[symbol] = size(given[symbol]);
    }
    return read;
  },
  contradictions: {
    leastOverMost: { given: { L_1: '300 mm', f_1: '80 Hz', L_2: '300 mm', f_2: '80 Hz', T_b: '50 N', T_a: '40 N' } },
  },
};
export default model;
