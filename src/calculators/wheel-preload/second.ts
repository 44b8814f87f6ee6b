import { rotate } from 'mathjs';
import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

type Point = [number, number];

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;
/** Seen from the bolt head, mathematicians' sense: anticlockwise is positive. */
const signed = (direction: string | undefined, angle: number): number => (direction === 'clockwise' ? -angle : angle);

/**
 * The bush seen from the bolt head, the rail above: the wheel's axle on a small circle round the bolt, straight down where the wheel is
 * fully retracted. The wheel is a spring against the rail; a finger at the tread holds both flanks of the V by friction.
 */
const second: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const e = num(given.e);
    let axle = rotate<Point>([0, -e], signed(choices.side, num(given.theta_0)));
    const before = axle[1];
    for (const { direction, amount } of movements) axle = rotate<Point>(axle, signed(direction, amount));
    const angle = Math.acos(Math.min(1, Math.max(-1, -axle[1] / e)));
    if (choices.by === 'bush') return { theta_0: angle };
    const flanks = 2 * Math.sin(num(given.beta));
    // The weight left on takes load off the wheel that slips most easily.
    const weight =
      choices.by === 'hanging' ? (num(given.M) * 9.80665 * num(given.d)) / num(given.s) / num(given.n_w) : 0;
    const oneFlank = num(given.F_slip) / (2 * num(given.mu));
    const pressed = oneFlank * flanks + weight + num(given.c_w) * (axle[1] - before);
    return { theta_0: angle, F_slip: Math.max(0, 2 * num(given.mu) * ((pressed - weight) / flanks)) };
  },
};
export default second;
