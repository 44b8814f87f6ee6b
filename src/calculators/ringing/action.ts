import { telling, type Movement, type Order, type Told } from '../../engine/order';
import { firstThat, settable } from '../../engine/settable';
import { distance, most, ramp, setTo, STEPS, times, type Ask } from './asked';
import { culprit } from './culprit';
import type words from './words/en';

const { tell, step, contradict } = telling<typeof words>();
const measureAgain = true;

/** What is set, or read anew. */
type Changes = Readonly<Partial<Record<'a' | 'v_c' | 'x_0', number>>>;

/** Quiet ramps, damping, corner: what else is known. */
function besides(ask: Ask): Told[] {
  const more = (ask.known('k_a')?.value ?? 1) > 1;
  const next = more ? { at: ask.aside('a_k'), swings: ask.known('k_a')?.value ?? 1 } : undefined;
  const said: Told[] = [step('wholeSwings', { one: ask.aside('a_1'), next })];
  if (ask.known('zeta')) {
    const [count, wall, damping] = [ask.aside('n_10'), ask.aside('l_10'), ask.aside('zeta')];
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
  return { kept: ask.quantity('v_c'), high: ask.quantity('x_c') };
}

/** What is set and read anew: lower, until it surely suffices; the ramp is then longer, and counting begins beyond it. */
function lowered(ask: Ask): { readonly effect: Changes; readonly movements: readonly Movement[] } | undefined {
  const [now, v] = [ask.number('a'), ask.number('v')];
  const tooFast = corner(ask) !== undefined;
  const speeds = (made: Changes): Changes => {
    if (!tooFast) return made;
    const from = settable(ask.known('v_m')?.low ?? 0, STEPS.v_c, 'down');
    const v_c = firstThat((si) => ask.after({ ...made, v_c: si }, 'x_c') === 'within', Math.max(0, from), 0, STEPS.v_c);
    return { ...made, v_c: v_c ?? 0 };
  };
  const at = (a: number): Changes => {
    if (a >= now) return speeds({});
    // A fifth more than the ramp, in whole millimetres, is surely beyond it.
    const beyond = settable((1.2 * v ** 2) / (2 * a), 1e-3, 'up');
    return speeds({ a, ...(ask.number('x_0') < beyond ? { x_0: beyond } : {}) });
  };
  const from = ask.check('a') === 'within' ? now : settable(ask.known('a_s')?.low ?? 0, STEPS.a, 'down');
  const a = firstThat((si) => ask.after(at(si)) === 'within', Math.max(STEPS.a, from), STEPS.a, STEPS.a);
  if (a === undefined) return undefined;
  const effect = at(a);
  const movements: Movement[] = [];
  if (effect.a !== undefined) movements.push({ part: 'acceleration', direction: 'down', amount: now - effect.a });
  if (effect.v_c !== undefined) {
    movements.push({ part: 'corner speed', direction: 'down', amount: ask.number('v_c') - effect.v_c });
  }
  return { effect, movements };
}

function tooMuch(ask: Ask): Order {
  const rounded = corner(ask);
  const [from, quiet] = [ask.quantity('a'), ask.aside('a_q')];
  const high = step('mayBeHigh', { at: from, high: ask.aside('X'), allowed: ask.quantity('x_tol') });
  const rings = rounded ? [step('cornerRings', { ...rounded, most: most(ask, 'v_m') })] : [];
  const found = lowered(ask);
  if (found?.effect.a === undefined) {
    return tell('stiffen', { times: times(ask) }, { steps: [high, ...culprit(ask), ...rings, ...besides(ask)] });
  }
  const { a, x_0 } = found.effect;
  return tell(
    'lowerTo',
    { from, to: setTo('a', a), times: times(ask) },
    {
      steps: [
        high,
        ask.number('a') <= ask.number('a_q') ? step('dependsOnRamp', { quiet }) : step('evenSoft', { quiet }),
        ...(x_0 === undefined ? [] : [step('countBeyond', { from: distance(x_0) })]),
        ...culprit(ask),
        ...rings,
        ...besides(ask),
      ],
      ...found,
    },
  );
}

/** The corner alone rings too high: its speed is lowered, the acceleration left. */
function tooFast(ask: Ask): Order {
  const rounded = corner(ask);
  const found = lowered(ask);
  if (!rounded || found?.effect.v_c === undefined) return tooClose(ask);
  const rings = { ...rounded, most: setTo('v_c', found.effect.v_c) };
  return tell('lowerCorner', rings, {
    steps: [step('cornerRings', rings), ...culprit(ask), ...besides(ask)],
    ...found,
  });
}

function tooClose(ask: Ask): Order {
  const [now, keeps, allowed] = [ask.quantity('a'), ask.quantity('a_s'), ask.quantity('x_tol')];
  const seen = ask.known('a_s')?.budget[0]?.symbol === 'x_tol';
  if (seen)
    return tell(
      'lookAtWall',
      {},
      { steps: [step('heightOfThisWall', { keeps, allowed }), ...culprit(ask)], measureAgain },
    );
  return tell('again', {}, { steps: [step('countsDouble', { now, keeps, allowed }), ...culprit(ask)], measureAgain });
}

/** What to turn down, stiffen or leave alone. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.need('a_s');
  ask.need('l_r');
  if (ask.choice('test') === 'two') ask.need('kappa');
  if (ask.choice('corner') === 'kept') ask.need('x_c');
  const first = doubtful(ask);
  if (first) return first;
  if (ask.check('a') === 'beyond') return tooMuch(ask);
  if (ask.check('x_c') === 'beyond') return tooFast(ask);
  if (ask.check('a') !== 'within') return tooClose(ask);
  const rounded = corner(ask);
  if (rounded) {
    return tell(
      'cornerTooClose',
      {},
      { steps: [step('overMore', { ...rounded, most: most(ask, 'v_m') })], measureAgain },
    );
  }
  const quiet = { upTo: most(ask, 'a_s'), allowed: ask.quantity('x_tol') };
  return tell('leave', quiet, { steps: [step('anotherCause'), ...culprit(ask), ...besides(ask)] });
}

/** Two prints at one speed tell nothing; a strand is shorter than its belt. */
export function contradiction(ask: Ask) {
  if (ask.choice('test') === 'two' && Math.abs(ask.number('v_2') / ask.number('v') - 1) < 0.01) {
    return contradict('oneSpeed', { first: ask.quantity('v'), second: ask.quantity('v_2') }, ['v', 'v_2']);
  }
  if (ask.number('L_1') < ask.number('L_t1')) return undefined;
  return contradict('runOverBelt', { run: ask.quantity('L_1'), belt: ask.quantity('L_t1') }, ['L_1', 'L_t1']);
}
