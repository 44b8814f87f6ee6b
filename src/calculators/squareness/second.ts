import { rotate } from 'mathjs';
import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

type Point = [number, number];

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;
const length = ([x, y]: Point): number => Math.hypot(x, y);

/** Angle at the front left corner of a parallelogram with these sides, from either diagonal by the law of cosines: their mean. */
function cornerOf(A: number, B: number, d_1: number, d_2: number): number {
  const across = (d: number): number => Math.acos((A ** 2 + B ** 2 - d ** 2) / (2 * A * B));
  // Front left to back right spans the corners beside it, the other diagonal this one.
  return (Math.PI - across(d_1) + across(d_2)) / 2;
}

/** A blade square to its stock but for its own error, laid from the corner backwards: where the side lies to its right, at the back. */
function gapAt(back: boolean, side: Point, blade: Point, l: number): number {
  const at = (way: Point): number => (way[0] / way[1]) * l;
  const off = at(side) - at(blade);
  return back ? off : -off;
}

const gap = (right: number, blade: 'left' | 'right'): Seen => {
  // The side runs away to the right of the blade going back: a blade on its left leaves a gap at the back, one on its right at the front.
  const atBack = blade === 'left' ? right >= 0 : right < 0;
  return { picture: atBack ? 'gap-at-back' : 'gap-at-front', size: Math.abs(right) };
};
const runsRight = (seen: Seen | undefined, blade: 'left' | 'right'): number => {
  const atBack = typeof seen === 'object' && seen.picture === 'gap-at-back';
  return (atBack === (blade === 'left') ? 1 : -1) * num(seen);
};

/** A corner sharper than 90° has Y leaning to the right. */
const leaning = (seen: Seen | undefined): number =>
  typeof seen === 'object' && seen.picture === 'sharper-than-square' ? num(seen) : -num(seen);

/**
 * Plan of machine or frame: X and Y as two directions from the front left corner, front towards the eye. For the movement X is askew, for
 * a frame Y leans; the angle between them is what a print, a square or the frame's corners show.
 */
const second: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const l = num(given.l);
    const wide =
      typeof given.i_e === 'object' && given.i_e.picture === 'wider-than-square' ? num(given.i_e) : -num(given.i_e);
    const seen = {
      diagonals: () => Math.PI / 2 - cornerOf(num(given.A), num(given.B), num(given.d_1), num(given.d_2)),
      square: () => Math.atan(runsRight(given.m, 'left') / l - wide),
      photo: () => Math.atan(leaning(given.i_p)),
      reversal: () => Math.atan((runsRight(given.m_1, 'left') + runsRight(given.m_2, 'right')) / 2 / l),
    };
    const way = (choices.way ?? 'diagonals') as keyof typeof seen;
    const skew = seen[way]();
    const isFrame = choices.of === 'frame';
    const run = num(isFrame ? given.L_f : given.S_b);
    // End of the beam, or back of the frame, as points.
    let end: Point = isFrame ? [run * Math.tan(skew), run] : [run, run * Math.tan(skew)];
    for (const { direction, amount } of movements) {
      const shifts: Record<string, Point> = {
        left: [-amount, 0],
        right: [amount, 0],
        back: [0, amount],
        forward: [0, -amount],
      };
      const [dx, dy] = shifts[direction] ?? [0, 0];
      end = [end[0] + dx, end[1] + dy];
    }
    const corner = isFrame ? Math.atan2(end[1], end[0]) : Math.PI / 2 - Math.atan2(end[1], end[0]);
    const change = Math.PI / 2 - corner - skew;
    const x: Point = [1, 0];
    const y: Point = rotate<Point>([1, 0], corner);
    if (way === 'diagonals') {
      const [A, B] = [num(given.A), num(given.B)];
      const diagonals = (angle: number): Point => {
        const up = rotate<Point>([B, 0], angle);
        return [length([A + up[0], up[1]]), length([A - up[0], up[1]])];
      };
      const [now, before] = [diagonals(corner), diagonals(corner + change)];
      return { d_1: num(given.d_1) + now[0] - before[0], d_2: num(given.d_2) + now[1] - before[1] };
    }
    const blade = (error: number, flipped: boolean): Point => {
      const leans = rotate<Point>(x, Math.PI / 2 + Math.atan(error) * (flipped ? -1 : 1));
      return leans;
    };
    if (way === 'photo') {
      const lean = y[0] / y[1];
      return { i_p: { picture: lean >= 0 ? 'sharper-than-square' : 'wider-than-square', size: Math.abs(lean) } };
    }
    if (way === 'square') return { m: gap(gapAt(true, y, blade(wide, false), l), 'left') };
    // What the square itself adds changes sides when it is flipped.
    const own = Math.atan((runsRight(given.m_1, 'left') - runsRight(given.m_2, 'right')) / 2 / l);
    return {
      m_1: gap(gapAt(true, y, blade(Math.tan(own), false), l), 'left'),
      m_2: gap(gapAt(true, y, blade(Math.tan(own), true), l), 'right'),
    };
  },
};
export default second;
