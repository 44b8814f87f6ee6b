import type { AskOf } from '../../engine/calculator';
import { telling, type Amount, type Order, type Told } from '../../engine/order';
import { angle } from '../../quantity/kinds';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** Gain below a quarter of the best: within about 15° of a dead centre. */
const DEAD_CENTRE = Math.sin((15 * Math.PI) / 180);
const DEGREE = Math.PI / 180;
/** Least turn of a bush that a hand sets with a spanner. */
const HAND_TURN = 1 * DEGREE;

const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

/** Whole degrees, tenths below two: the stiffness behind an estimate supports no more. */
function settable(turn: number): Amount {
  const shown = turn / DEGREE;
  const si = Number(shown.toFixed(shown < 2 ? 1 : 0)) * DEGREE;
  return { si, width: 0, kind: angle.deg.kind.id, unit: angle.deg.unit.id };
}

function noRoom(ask: Ask): Order {
  if (ask.choice('contact') === 'line') {
    return tell('changeCarriage', {}, { steps: [step('fartherApart'), step('lessForce'), step('stifferWheels')] });
  }
  const steps = [step('leaveOrTurnIn', { way: ask.choice('side') }), step('brightBand'), step('onlyThenCarriage')];
  return tell('wearIn', {}, { steps });
}

function settleFirst(ask: Ask): Order {
  const steps: Told[] =
    ask.choice('by') === 'bush' ? [step('doSlipTest')] : [step('repeatSlip'), step('measureFriction')];
  if (ask.number('N') ** 2 > ask.number('N_min') * ask.number('N_max')) steps.push(step('measureBand'));
  return tell('again', {}, { steps });
}

/** Turn to try before the next slip test, SI: the estimate, at most the largest turn and what is left of the arc. */
function nextTurn(ask: Ask, left: number): { readonly amount: number; readonly estimated: boolean } {
  const most = Math.min(ask.number('phi_s'), left);
  const estimate = ask.known('dtheta');
  if (!estimate || Math.abs(estimate.value) > most) return { amount: most, estimated: false };
  return { amount: Math.abs(estimate.value), estimated: true };
}

function endOfThrow(raise: boolean): Order {
  return raise
    ? tell('endOfThrow', {}, { steps: [step('wornWheel'), step('onSpacers')] })
    : tell('fullyRetracted', {}, { steps: [step('belongTogether')] });
}

function turnBush(ask: Ask, raise: boolean): Order {
  const present = ask.number('theta_0');
  const nearEnd = Math.sin(present) < DEAD_CENTRE;
  const left = raise ? Math.PI - present : present;
  if (nearEnd && left < Math.PI / 2) return endOfThrow(raise);
  const closing = ask.choice('side');
  const way = raise ? closing : opposite[closing];
  const { amount, estimated } = nextTurn(ask, left);
  const turn = { way, raise, by: settable(amount), estimated };
  const steps: Told[] = [step('easeBolt'), step('turnBush', turn), step('slipAgain')];
  if (amount < HAND_TURN) steps.push(step('nudge'));
  if (!estimated) steps.push(step('goOn'));
  if (nearEnd) steps.push(step('nearEnd', { raise }));
  if (ask.check('N_min') !== 'within') steps.push(step('littleRoom'));
  steps.push(step('roughStiffness'));
  return tell('turn', turn, { steps, movements: [{ part: 'eccentric bush', direction: way, amount }] });
}

/** What the hand does, for every state of the two checks. */
export function instruct(ask: Ask): Order {
  const [carried, least, most] = [ask.number('N'), ask.number('N_min'), ask.number('N_max')];
  const beyond = ask.check('N') === 'beyond';
  if (ask.check('N_min') === 'beyond' || (beyond && most <= least)) return noRoom(ask);
  if (beyond) return turnBush(ask, carried < least);
  if (ask.verdict !== 'within') return settleFirst(ask);
  return tell('leave', {}, { steps: [step('markAngle')] });
}
