import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** In the order of effort: clean, free a side, square, move the drive, lengthen. */
function cure(ask: Ask): Told[] {
  return [
    step('careFirst', { guide: ask.choice('pair') }),
    step('freeOneSide', { drive: ask.choice('drive') }),
    ...squaring(ask),
    ...reshaping(ask),
  ];
}

/** Only where the gantry is forced out of square by more than the play. */
function squaring(ask: Ask): Told[] {
  if (ask.number('N_c') <= 0) return [];
  return [step('square', { ahead: ask.quantity('dx'), play: ask.quantity('dx_0'), cost: ask.quantity('F_c') })];
}

function reshaping(ask: Ask): Told[] {
  if (!doubtful(ask.check('q'))) return [];
  const most = ask.quantity('d_m');
  if (ask.choice('drive') === 'both') {
    const shares = step('cancelPulls', { wanted: ask.quantity('s_0'), now: ask.quantity('s') });
    return [shares, step('spreadGuide', { most })];
  }
  return [
    step('moveDrive', { most, now: ask.quantity('d') }),
    step('lengthen', { to: ask.quantity('L_m'), now: ask.quantity('L') }),
    step('driveBoth'),
  ];
}

function movementsOf(ask: Ask): Movement[] {
  const found: Movement[] = [];
  if (doubtful(ask.check('q'))) {
    if (ask.choice('drive') === 'both') {
      found.push({
        part: 'share of the pull',
        direction: ask.number('d') > 0 ? 'more on the right' : 'more on the left',
        amount: Math.abs(ask.number('s') - ask.number('s_0')),
      });
    } else if (ask.number('x_d') > 0) {
      found.push({ part: 'drive’s point', direction: 'towards the guide', amount: ask.number('x_d') });
    }
  }
  const ahead = ask.number('dx') - ask.number('dx_0');
  if (ask.number('N_c') > 0 && ahead > 0) {
    found.push({ part: 'leading end of the gantry', direction: 'back', amount: ahead });
  }
  return found;
}

function binds(ask: Ask): Order {
  const movements = movementsOf(ask);
  const share = ask.quantity('q');
  const bound = Math.abs(ask.number('q')) >= 1;
  const why = bound
    ? { bound: { at: ask.quantity('d_b'), pushed: ask.quantity('d') } }
    : { eaten: { share, allowed: ask.quantity('q_lim') } };
  const rest = () => ({ steps: [...cure(ask), ...(bound ? [step('noMoreForce')] : [])], movements });
  if (ask.choice('drive') === 'both') {
    return tell('bringPull', { to: ask.number('d') > 0 ? 'right' : 'left', ...why }, rest());
  }
  return tell('moveDrive', { by: ask.quantity('x_d'), lengthen: ask.quantity('x_L'), ...why }, rest());
}

function hangsUp(ask: Ask): Order {
  const eaten = Math.abs(ask.number('q_e')) < 1 ? ask.quantity('q_e') : undefined;
  const steps = [step('massOut', { out: ask.quantity('e') }), ...cure(ask), step('inProportion')];
  return tell('support', { most: ask.quantity('d_m'), eaten }, { steps, movements: movementsOf(ask) });
}

function tooHeavy(ask: Ask): Order {
  const needs = { force: ask.quantity('F'), has: ask.quantity('F_m') };
  const without = step('withoutOffset', { force: ask.quantity('R'), times: ask.quantity('k_F') });
  const rest = { steps: [...cure(ask), without], movements: movementsOf(ask) };
  const clamped = ask.number('F_c') > ask.number('R') / 4;
  return clamped ? tell('squareFirst', needs, rest) : tell('lowerAcceleration', needs, rest);
}

function unsettled(ask: Ask): Order {
  const steps = [
    ask.choice('by') === 'pair' ? step('pullTwice') : step('repeatPulls'),
    step('wouldBind', { at: ask.quantity('d_b'), stands: ask.quantity('d') }),
    step('careMeanwhile', { guide: ask.choice('pair') }),
  ];
  return tell('measure', {}, { steps, measureAgain: true });
}

/** What the hand does, for every state of the checks; binding comes first. */
export function instruct(ask: Ask): Order {
  if (ask.number('mu') <= 0) return tell('pullAgain', {}, { steps: [step('sameSpeed')], measureAgain: true });
  if (ask.check('q') === 'beyond') return binds(ask);
  if (ask.check('q_e') === 'beyond') return hangsUp(ask);
  // Bound by its best value, though the doubt reaches back: no force to name.
  if (ask.check('F_t') === 'beyond') return Math.abs(ask.number('q')) < 1 ? tooHeavy(ask) : binds(ask);
  if (ask.verdict !== 'within') return unsettled(ask);
  const share = ask.quantity('q');
  const [at, stands, force] = [ask.quantity('d_b'), ask.quantity('d'), ask.quantity('F')];
  return tell(
    'leave',
    { share },
    {
      steps: [
        step('bindsAndNeeds', { at, stands, force }),
        step('ifItSticks'),
        step('care', { guide: ask.choice('pair') }),
      ],
    },
  );
}
