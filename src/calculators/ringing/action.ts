import { telling, type Movement, type Order, type Told } from '../../engine/order';
import { most, ramp, times, type Ask } from './asked';
import { culprit } from './culprit';
import type words from './words/en';

const { tell, step } = telling<typeof words>();
const measureAgain = true;

/** Quiet ramps, damping, corner: what else is known. */
function besides(ask: Ask): Told[] {
  const more = (ask.known('k_a')?.value ?? 1) > 1;
  const next = more ? { at: ask.quantity('a_k'), swings: ask.number('k_a') } : undefined;
  const said: Told[] = [step('wholeSwings', { one: ask.quantity('a_1'), next })];
  if (ask.known('zeta')) {
    const [count, wall, damping] = [ask.quantity('n_10'), ask.quantity('l_10'), ask.quantity('zeta')];
    said.push(step('dieAway', { count, wall, damping }));
  }
  if (ask.choice('corner') === 'rest') said.push(step('ifKept', { most: most(ask, 'v_m') }));
  return said;
}

/** Two prints: whether the spacing went with the speed. */
function atTwoSpeeds(ask: Ask): Order | undefined {
  if (ask.check('kappa') === 'within') return undefined;
  if (ask.check('kappa') !== 'beyond') return tell('fartherApart', {}, { steps: [step('twiceAsFast')], measureAgain });
  const spacings = {
    first: ask.quantity('lambda'),
    at: ask.quantity('v'),
    second: ask.quantity('lambda_2'),
    atSecond: ask.quantity('v_2'),
  };
  return tell('keepSpacing', {}, { steps: [step('wouldSpread', spacings), step('ridgePeriod'), step('toothOrStep')] });
}

/** The reading does not hold as one of swinging: what to do first. */
function doubtful(ask: Ask): Order | undefined {
  if (ask.check('x_0') !== 'within') {
    const steps = [step('closerInRamp'), step('beginFarther')];
    return tell('insideRamp', { speed: ask.quantity('v'), ramp: ramp(ask) }, { steps, measureAgain });
  }
  if (ask.choice('test') === 'two') return atTwoSpeeds(ask);
  const teeth = ask.check('g_p') === 'within' ? undefined : ask.quantity('p');
  const fullSteps = ask.check('g_s') === 'within' ? undefined : ask.quantity('x_f');
  if (!teeth && !fullSteps) return undefined;
  return tell('spacedLike', { teeth, fullSteps }, { steps: [step('halfSpeed'), step('doNotDie')], measureAgain });
}

/** What a corner’s own speed does, where it is known and surely or perhaps too much. */
function corner(ask: Ask) {
  if (ask.choice('corner') !== 'kept' || ask.check('x_c') === 'within') return undefined;
  const amount = Math.max(0, ask.number('v_c') - ask.number('v_m'));
  const movement: Movement = { part: 'corner speed', direction: 'down', amount };
  return { kept: ask.quantity('v_c'), high: ask.quantity('x_c'), most: most(ask, 'v_m'), movement };
}

/** What is said of a corner's speed: all of it but the movement. */
const rings = ({ kept, high, most: to }: NonNullable<ReturnType<typeof corner>>) => ({ kept, high, most: to });

function tooMuch(ask: Ask): Order {
  const rounded = corner(ask);
  const from = ask.quantity('a');
  const quiet = ask.quantity('a_q');
  return tell(
    'lower',
    { from, to: most(ask, 'a_s'), times: times(ask) },
    {
      steps: [
        step('mayBeHigh', { at: from, high: ask.quantity('X'), allowed: ask.quantity('x_tol') }),
        ask.number('a') <= ask.number('a_q') ? step('dependsOnRamp', { quiet }) : step('evenSoft', { quiet }),
        ...culprit(ask),
        ...(rounded ? [step('cornerRings', rings(rounded))] : []),
        ...besides(ask),
      ],
      movements: [
        { part: 'acceleration', direction: 'down', amount: ask.number('a') - ask.number('a_s') },
        ...(rounded ? [rounded.movement] : []),
      ],
    },
  );
}

function tooClose(ask: Ask): Order {
  const [now, keeps, allowed] = [ask.quantity('a'), ask.quantity('a_s'), ask.quantity('x_tol')];
  return tell('again', {}, { steps: [step('countsDouble', { now, keeps, allowed }), ...culprit(ask)], measureAgain });
}

/** What to turn down, stiffen or leave alone. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number('a_s');
  ask.number('l_r');
  if (ask.choice('test') === 'two') ask.number('kappa');
  if (ask.choice('corner') === 'kept') ask.number('x_c');
  const first = doubtful(ask);
  if (first) return first;
  if (ask.check('a') === 'beyond') return tooMuch(ask);
  if (ask.check('a') !== 'within') return tooClose(ask);
  const rounded = corner(ask);
  if (rounded && ask.check('x_c') === 'beyond') {
    const steps = [step('cornerRings', rings(rounded)), ...culprit(ask), ...besides(ask)];
    return tell('lowerCorner', rings(rounded), { steps, movements: [rounded.movement] });
  }
  if (rounded) return tell('cornerTooClose', {}, { steps: [step('overMore', rings(rounded))], measureAgain });
  const quiet = { upTo: most(ask, 'a_s'), allowed: ask.quantity('x_tol') };
  return tell('leave', quiet, { steps: [step('anotherCause'), ...culprit(ask), ...besides(ask)] });
}
