import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;

/**
 * A drive as a heap of equal steps: the controller counts them out from the number that is set, each moves the carriage, or feeds the
 * filament, as far as each of the first run did.
 */
const second: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const axis = choices.axis ?? 'x';
    const isFeed = axis === 'feed';
    const name = { x: 'S_x', y: 'S_y', z: 'S_z', zb: 'S_z', feed: 'S_e' }[axis] ?? 'S_x';
    const was = num(given[name]);
    let set = was;
    for (const { direction, amount } of movements) set += direction === 'raise' ? amount : -amount;
    if ((isFeed ? choices.fed : choices.by) !== 'travel') return { [name]: set };
    const commanded = num(isFeed ? given.l_f : given.l_c);
    const ran = isFeed ? num(given.r_1) - num(given.r_2) : num(given.x_2) - num(given.x_1) + num(given.b);
    const eachStep = ran / (was * commanded);
    // The slack is taken up once, at the start, as before.
    const runs = set * commanded * eachStep;
    return isFeed
      ? { [name]: set, r_2: num(given.r_1) - runs }
      : { [name]: set, x_2: num(given.x_1) - num(given.b) + runs };
  },
};
export default second;
