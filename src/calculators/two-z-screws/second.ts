import { rotate } from 'mathjs';
import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

type Point = [number, number];

/** Where a right-hand thread stands above its foot at the nut's side, once the screw has been turned, anticlockwise seen from above. */
function threadAt(lead: number, turned: number): number {
  // The helix (cos t, sin t, lead t / 2π) turned with the screw: the nut stands at angle zero, so t = −turned.
  return (lead * -turned) / (2 * Math.PI);
}

/** How far a nut that cannot turn moves up; a left-hand thread is a right-hand one in a mirror, where turns run the other way. */
function climb(lead: number, hand: string | undefined, direction: string, amount: number): number {
  const seen = direction === 'anticlockwise' ? amount : -amount;
  return threadAt(lead, hand === 'left' ? -seen : seen);
}

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;
const leans = (seen: Seen | undefined): number =>
  typeof seen === 'object' && seen.picture === 'right-higher' ? seen.size : -num(seen);
const shown = (up: number): Seen => ({ picture: up >= 0 ? 'right-higher' : 'left-higher', size: Math.abs(up) });

/**
 * Front view of frame and gantry as points, seen from before the printer: two screws upright on the frame's bar, a nut on each, the
 * gantry a straight bar through both nuts. Everything may lean with the table.
 */
const second: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const S = num(given.S);
    const lead = num(given.P_h);
    const lean = Math.atan(leans(given.i_f));
    const onFrame = (x: number, y: number): Point => rotate<Point>([x, y], lean);
    // Heights of the nuts above the frame.
    const nuts = { left: 0, right: 0 };
    const heights = choices.by === 'heights';
    nuts.right = heights ? (leans(given.dh) * S) / num(given.S_m) : S * Math.tan(Math.atan(leans(given.i_g)) - lean);
    for (const { part, direction, amount } of movements) {
      const which = part === 'right screw' ? 'right' : 'left';
      nuts[which] += climb(lead, choices.hand, direction, amount);
    }
    const [left, right] = [onFrame(0, nuts.left), onFrame(S, nuts.right)];
    if (!heights) return { i_g: shown((right[1] - left[1]) / (right[0] - left[0])) };
    // Two places on the bar, so far apart as they were before.
    return { dh: shown(((nuts.right - nuts.left) / S) * num(given.S_m)) };
  },
  contradictions: {
    jammed: { given: { dh: '45 mm ± 0.03', S_m: '400 mm', S: '400 mm' } },
  },
};
export default second;
