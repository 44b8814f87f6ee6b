import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const size = (seen: Seen | undefined): number => sizeSeen(seen) ?? NaN;

/** Things on a bench: a carriage on a gantry with its zero in the middle and right counted up, a driver's dial, a speed that is set. */
const model: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const after: Record<string, Seen> = {};
    for (const { part, direction, amount } of movements) {
      if (part === 'carriage') {
        const stands = (choices.side === 'right' ? 1 : -1) * size(given.x);
        after.x = Math.abs(stands + (direction === 'right' ? 1 : -1) * amount);
      }
      // A motor's torque goes with its current, of which the dial is marked in shares of the rated one.
      if (part === 'motor current') after.k_I = size(given.k_I) + (direction === 'lower' ? -amount : amount);
      if (part === 'fastest Z move') {
        const turns = size(given.v) / size(given.P_h) + ((direction === 'slower' ? -1 : 1) * amount) / size(given.P_h);
        after.v = turns * size(given.P_h);
      }
    }
    return after;
  },
  contradictions: {
    outsideScrews: { given: { M_z: '2 kg', x: '250 mm', S: '400 mm' } },
    liftsOtherSide: { given: { M_z: '1 kg', M: '5 kg', x: '100 mm' } },
    leadNoPitches: { given: { M_z: '2 kg', x: '100 mm', P_h: '7 mm' } },
    jamsBothWays: { given: { M_z: '2 kg', x: '100 mm', P_h: '48 mm', mu: '0.6' }, choices: { screw: 'tr8x8' } },
  },
};
export default model;
