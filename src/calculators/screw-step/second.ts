import { bignumber, type BigNumber } from 'mathjs';
import { sizeSeen, type SecondModel, type Seen } from '../../engine/second';

const num = (seen: Seen | undefined): number => sizeSeen(seen) ?? 0;

/** Layers that are printed to look at a wall. */
const LAYERS = 200;

/**
 * Errors of the layers of a wall, as the drive makes them one by one: it goes to the nearest place that it can hold. What a height
 * misses a whole number of places by is less than the layers can gather.
 */
function worstLayer(height: number, place: number): number {
  const [h, g] = [bignumber(height), bignumber(place)];
  const at = (i: number): BigNumber => h.times(i).div(g).plus(1e-9).round().times(g);
  let worst = 0;
  for (let i = 0; i < LAYERS; i += 1)
    worst = Math.max(
      worst,
      Math.abs(
        at(i + 1)
          .minus(at(i))
          .minus(h)
          .toNumber(),
      ),
    );
  return worst;
}

/**
 * The drive as it moves: a rotor that lags behind its field until its torque overcomes friction, and a wall whose layers are rounded to the
 * places that the motor holds. An order is taken up only where it makes the wall or the lag better.
 */
const second: SecondModel = {
  carry: ({ given, choices, movements }) => {
    const turn = choices.lift === 'belt' ? num(given.p) * num(given.z) : num(given.P_h);
    const full = (turn * num(given.theta_s)) / (2 * Math.PI) / num(given.i_g);
    let [h, m, friction] = [num(given.h), num(given.m), num(given.tau_f)];
    const place = (): number => (choices.grid === 'full' ? full : full / m);
    const before = worstLayer(h, place());
    for (const { part, direction, amount } of movements) {
      const by = direction === 'up' ? amount : -amount;
      if (part === 'layer height') h += by;
      if (part === 'microsteps') m += by;
      if (part === 'friction of the Z drive') friction += by;
    }
    if (worstLayer(h, place()) > before * (1 + 1e-9)) return { h: num(given.h) };
    return { h, m, tau_f: Math.max(0, friction) };
  },
};
export default second;
