import type { Effect, Movement } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { Ask } from './asked';

/** Least change of the number that is worth typing: a hundredth of a step per mm, in steps per metre. Common practice, no source. */
export const STEP = 10;

/** Where the number of each axis is entered. */
const NUMBERS = { x: 'S_x', y: 'S_y', z: 'S_z', zb: 'S_z', feed: 'S_e' } as const;

/** What is read once another number is set: the same command sends other steps, and each step moves as far as before. */
function readWith(ask: Ask, steps: number): Effect {
  const axis = ask.choice('axis');
  const number = { [NUMBERS[axis]]: steps };
  const by = axis === 'feed' ? ask.choice('fed') : ask.choice('by');
  if (by !== 'travel') return number;
  const moves = (ask.number('l_d') * steps) / ask.number('S_0');
  return axis === 'feed'
    ? { ...number, r_2: ask.number('r_1') - moves }
    : { ...number, x_2: ask.number('x_1') + moves - ask.number('b') };
}

/** The change from the number set to one that was counted or measured, as its words and the hand take it. */
export function changeTo(ask: Ask, symbol: 'S_c' | 'S_n') {
  const axis = ask.choice('axis');
  const found = ask.quantity(symbol);
  const steps = settable(found.si, STEP, 'nearest');
  const by = steps - ask.number('S_0');
  const raise = by > 0;
  const movement: Movement = {
    part: `steps per length, ${axis}`,
    direction: raise ? 'raise' : 'lower',
    amount: Math.abs(by),
  };
  const to = { ...found, si: steps, width: 0 };
  return {
    change: { axis, raise, from: ask.quantity('S_0'), to },
    movements: [movement],
    effect: readWith(ask, steps),
  };
}
