import type { Movement } from '../../engine/order';
import type { Ask } from './asked';

/** The change from the number set to one that was counted or measured, as its words and the hand take it. */
export function changeTo(ask: Ask, symbol: 'S_c' | 'S_n') {
  const axis = ask.choice('axis');
  const by = ask.number(symbol) - ask.number('S_0');
  const raise = by > 0;
  const movement: Movement = {
    part: `steps per length, ${axis}`,
    direction: raise ? 'raise' : 'lower',
    amount: Math.abs(by),
  };
  return { change: { axis, raise, from: ask.quantity('S_0'), to: ask.quantity(symbol) }, movements: [movement] };
}
