import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const size = (seen: Seen | undefined): number => sizeSeen(seen) ?? NaN;

/** Where good thread lies, as depths below the face. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

const shared = (a: Stretch, b: Stretch): number => Math.max(Math.min(a.to, b.to) - Math.max(a.from, b.from), 0);

/** A hole as a line of depths: torn at the mouth, good below; a screw takes hold where it meets good thread. */
const model: SecondModel = {
  carry: ({ given, movements, effect }) => {
    const [reach, left, below, depth] = ['L_r', 'L_e', 'L_b', 'L_h'].map((symbol) => size(given[symbol])) as [
      number,
      number,
      number,
      number,
    ];
    const good: Stretch = { from: reach - left, to: reach + below };
    const longer = movements.find(({ part }) => part === 'screw');
    if (longer) {
      const screw: Stretch = { from: 0, to: reach + (longer.direction === 'longer' ? 1 : -1) * longer.amount };
      return { L_r: screw.to, L_e: shared(screw, good), L_b: good.to - screw.to };
    }
    // A new part is threaded from its face to the end of its hole.
    return effect.L_e === undefined ? {} : { L_e: shared({ from: 0, to: reach }, { from: 0, to: depth }) };
  },
  contradictions: {
    leftBeyondReach: { given: { L_r: '6 mm', L_e: '8 mm', L_h: '12 mm', w: '5 mm' } },
    leftBeyondHole: { given: { L_r: '9 mm', L_e: '8 mm', L_h: '6 mm', w: '5 mm' }, choices: { hole: 'reached' } },
    reachBeyondHole: { given: { L_r: '14 mm', L_e: '0 mm', L_h: '12 mm', w: '5 mm' } },
    threadBeyondHole: { given: { L_r: '6 mm', L_e: '0 mm', L_b: '8 mm', L_h: '12 mm', w: '5 mm' } },
  },
};
export default model;
