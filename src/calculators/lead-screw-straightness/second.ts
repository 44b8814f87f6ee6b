import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;

/**
 * A nut in a mount with a slot: the screw carries its middle round a circle, and the mount is touched wherever the circle leaves the slot.
 * What the order changes is the slot; everything else stays where it is.
 */
const second: SecondModel = {
  carry: ({ given, movements }) => {
    let slot = [-num(given.j), num(given.j)] as const;
    for (const { part, amount } of movements) if (part === 'nut') slot = [-amount, amount];
    return { j: (slot[1] - slot[0]) / 2 };
  },
};
export default second;
