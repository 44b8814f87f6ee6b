import type { AskOf } from '../../engine/calculator';
import { exact, telling, type Amount, type Order, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import { angle } from '../../quantity/kinds';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** Gain below a quarter of the best: within about 15° of a dead centre. */
const DEAD_CENTRE = Math.sin((15 * Math.PI) / 180);
const DEGREE = Math.PI / 180;
/** Turns of a bush that a hand sets with a spanner by a pen mark: the coarser where it does. Common practice, no source. */
const HAND_TURNS = [5 * DEGREE, DEGREE] as const;
/** The least of them. */
export const HAND_TURN = DEGREE;

const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

const degrees = (si: number): Amount => exact(si, angle.deg);

/** The slip force that a preload gives, SI: none where the wheel has come off the rail. */
function slipAt(ask: Ask, preload: number): number {
  const pressed = ask.choice('by') === 'hanging' ? preload - ask.number('F_g') : preload;
  return Math.max(0, (ask.number('mu') * pressed) / Math.sin(ask.number('beta')));
}

/** What is read once the bush stands at another angle, the wheel and its plate being a spring. */
export function readAt(ask: Ask, theta: number): { readonly theta_0: number; readonly F_slip?: number } {
  if (ask.choice('by') === 'bush') return { theta_0: theta };
  const closed = ask.number('e') * (Math.cos(ask.number('theta_0')) - Math.cos(theta));
  return { theta_0: theta, F_slip: slipAt(ask, ask.number('N') + ask.number('c_w') * closed) };
}

function noRoom(ask: Ask): Order {
  if (ask.choice('contact') === 'line') {
    return tell('changeCarriage', {}, { steps: [step('fartherApart'), step('lessForce'), step('stifferWheels')] });
  }
  const steps = [step('leaveOrTurnIn', { way: ask.choice('side') }), step('brightBand'), step('onlyThenCarriage')];
  return tell('wearIn', {}, { steps, measureAgain: true });
}

function settleFirst(ask: Ask): Order {
  const steps: Told[] =
    ask.choice('by') === 'bush' ? [step('doSlipTest')] : [step('repeatSlip'), step('measureFriction')];
  if (ask.number('N') ** 2 > ask.number('N_min') * ask.number('N_max')) steps.push(step('measureBand'));
  return tell('again', {}, { steps, measureAgain: true });
}

/** Preloads to aim at, SI: the middle by ratio, and on towards the middle by difference, which a wide doubt makes the surer. */
function aims(ask: Ask): readonly number[] {
  const [ratio, half] = [ask.number('N_aim'), (ask.number('N_min') + ask.number('N_max')) / 2];
  return [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => ratio ** (1 - share) * half ** share);
}

/** The bush angle that gives a preload, SI; undefined past the dead centres. */
function angleFor(ask: Ask, preload: number): number | undefined {
  const height = Math.cos(ask.number('theta_0')) - (preload - ask.number('N')) / (ask.number('c_w') * ask.number('e'));
  return Math.abs(height) <= 1 ? Math.acos(height) : undefined;
}

/** The angle to turn to, SI, as a hand sets it: one that surely does where there is one, else the nearest to the middle of the limits. */
function target(ask: Ask, raise: boolean): number | undefined {
  const present = ask.number('theta_0');
  const wanted = aims(ask).flatMap((preload) => angleFor(ask, preload) ?? []);
  const ends = wanted.length > 0 ? [] : [raise ? Math.PI : 0];
  const reached = HAND_TURNS.flatMap((turn) =>
    [...wanted, ...ends].flatMap((angle) => {
      const whole = settable(angle - present, turn, 'nearest');
      return [0, -1, 1, -2, 2].map((more) => Math.min(Math.PI, Math.max(0, present + whole + more * turn)));
    }),
  ).filter((theta, i, all) => theta !== present && all.indexOf(theta) === i);
  const surely = reached.find((theta) => ask.after(readAt(ask, theta)) === 'within');
  return surely ?? (wanted.length > 0 ? reached[0] : undefined);
}

function endOfThrow(raise: boolean): Order {
  return raise
    ? tell('endOfThrow', {}, { steps: [step('wornWheel'), step('onSpacers')] })
    : tell('fullyRetracted', {}, { steps: [step('belongTogether')] });
}

function turnBush(ask: Ask, raise: boolean): Order {
  const present = ask.number('theta_0');
  const to = target(ask, raise);
  if (to === undefined) return endOfThrow(raise);
  const closing = ask.choice('side');
  const way = raise ? closing : opposite[closing];
  const amount = Math.abs(to - present);
  const most = ask.number('phi_s');
  const turn = { way, raise, by: degrees(amount) };
  const steps: Told[] = [
    step('easeBolt'),
    step('turnTo', { ...turn, most: amount > most ? degrees(settable(most, HAND_TURN, 'down') || most) : undefined }),
    step('slipAgain'),
  ];
  if (Math.sin(present) < DEAD_CENTRE) steps.push(step('nearEnd', { raise }));
  if (ask.check('N_min') !== 'within') steps.push(step('littleRoom'));
  steps.push(step('roughStiffness'));
  const movements = [{ part: 'eccentric bush', direction: way, amount }];
  return tell('turnBush', turn, { steps, movements, effect: readAt(ask, to) });
}

/** What the hand does, for every state of the two checks. */
export function instruct(ask: Ask): Order {
  for (const asked of ['N', 'N_min', 'N_max'] as const) ask.need(asked);
  const [carried, least, most] = [ask.number('N'), ask.number('N_min'), ask.number('N_max')];
  const beyond = ask.check('N') === 'beyond';
  if (ask.check('N_min') === 'beyond' || (beyond && most <= least)) return noRoom(ask);
  if (beyond) return turnBush(ask, carried < least);
  if (ask.verdict !== 'within') return settleFirst(ask);
  return tell('leave', {}, { steps: [step('markAngle')] });
}
