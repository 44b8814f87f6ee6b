import type { Movement } from '../../engine/order';
import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

/** The carriage seen from behind, along its travel: the guide stands at x = 0, right is +x. m, m/s². */
interface Carriage {
  /** Line and share of the pull of each drive; with one drive, that one. */
  readonly drives: readonly { readonly x: number; readonly share: number }[];
  readonly mass: number;
  /** Places of the gantry's two ends along the travel. */
  readonly ends: readonly [leading: number, other: number];
  readonly acceleration: number;
}

const size = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;
const sides = { 'mass-left': -1, 'mass-right': 1, 'mass-by-drive': 1, 'mass-away-from-drive': -1 } as const;
const isSide = (picture: string): picture is keyof typeof sides => Object.hasOwn(sides, picture);

function massAt(seen: Seen | undefined): number {
  if (typeof seen !== 'object') return 0;
  if (!isSide(seen.picture)) throw new Error(`no side: ${seen.picture}`);
  return sides[seen.picture] * seen.size;
}

/** Towards x = 0 by an amount, from either side. */
const inwards = (x: number, by: number): number => x - Math.sign(x) * by;

function carry(carriage: Carriage, { part, direction, amount }: Movement): Carriage {
  const { drives, mass, ends, acceleration } = carriage;
  switch (`${part} ${direction}`) {
    case 'drive’s point towards the guide':
      return { ...carriage, drives: drives.map(({ x, share }) => ({ x: inwards(x, amount), share })) };
    case 'mass from the drive’s side':
    case 'mass to the left':
      return { ...carriage, mass: mass - amount };
    case 'mass to the drive’s side':
    case 'mass to the right':
      return { ...carriage, mass: mass + amount };
    case 'share of the pull more on the left':
    case 'share of the pull more on the right': {
      const wins = direction === 'more on the left' ? Math.min : Math.max;
      const winner = wins(...drives.map(({ x }) => x));
      return {
        ...carriage,
        drives: drives.map(({ x, share }) => ({ x, share: share + (x === winner ? amount : -amount) })),
      };
    }
    case 'leading end of the gantry back':
      return { ...carriage, ends: [ends[0] - amount, ends[1]] };
    case 'acceleration down':
      return { ...carriage, acceleration: acceleration - amount };
    default:
      throw new Error(`${part} cannot go ${direction}`);
  }
}

const model: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const both = choices.drive === 'both';
    const share = size(given.s);
    const before: Carriage = {
      drives: both
        ? [
            { x: -size(given.d_1), share },
            { x: size(given.d_2), share: 1 - share },
          ]
        : [{ x: size(given.d_0), share: 1 }],
      mass: massAt(both ? given.e_l : given.e),
      ends: [size(given.dx), 0],
      acceleration: size(given.a),
    };
    const after = movements.reduce(carry, before);
    const [first, second] = after.drives;
    const left = after.mass < 0;
    const mass: Seen = both
      ? { picture: left ? 'mass-left' : 'mass-right', size: Math.abs(after.mass) }
      : { picture: left ? 'mass-away-from-drive' : 'mass-by-drive', size: Math.abs(after.mass) };
    const read: Record<string, Seen> = { dx: after.ends[0] - after.ends[1], a: after.acceleration };
    if (both) return { ...read, e_l: mass, s: (first?.share ?? 0) / ((first?.share ?? 0) + (second?.share ?? 0)) };
    return { ...read, e: mass, d_0: first?.x ?? 0 };
  },
  contradictions: {
    belowNothing: {
      given: { L: '40 mm', d_0: '30 mm', F_a: '3 N', F_b: '2 N', a_2: '80 mm' },
      choices: { by: 'scale' },
    },
    farIsNear: {
      given: { L: '40 mm', d_0: '30 mm', F_a: '2 N', a_1: '80 mm', F_b: '3 N', a_2: '40 mm' },
      choices: { by: 'scale' },
    },
  },
};
export default model;
