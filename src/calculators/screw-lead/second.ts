import { cross, dot, norm } from 'mathjs';
import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;
type Vector = [number, number, number];

/** Radius of the screw: any will do, the lead does not depend on it. */
const RADIUS = 4e-3;

/** Lead of the thread on a cylinder that carries a nut so far in so many turns: from the direction of the thread's tangent. */
function leadOf(travel: number, turns: number): number {
  const around = 2 * Math.PI * RADIUS * turns;
  const tangent: Vector = [0, around, travel];
  const axis: Vector = [0, 0, 1];
  const steep = dot(tangent, axis) / (norm(cross(tangent, axis)) as number);
  return 2 * Math.PI * RADIUS * steep;
}

/** The screw is a thread on a cylinder, and the machine counts with a lead of its own: it is in order where both carry the nut alike. */
const second: SecondModel = {
  carry: ({ given, movements }) => {
    let set = num(given.P_h);
    for (const { direction, amount } of movements) set += direction === 'raise' ? amount : -amount;
    const has = leadOf(num(given.x), num(given.N));
    // The machine asks for the same turns, and the nut travels as the screw carries it: off by more than one in a hundred is another screw.
    return Math.abs(has / set - 1) < 0.01 ? { P_h: set } : { P_h: num(given.P_h) };
  },
  contradictions: {
    twoLeads: { given: { x: '40 mm', N: '5', P_h: '8 mm', P: '2 mm', n_s: '1' } },
  },
};
export default second;
