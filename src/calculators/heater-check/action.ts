import type { VerdictState } from '../../engine/calculator';
import { telling, type Order } from '../../engine/order';
import type { Ask } from './asking';
import { cutOff, holdsToo, proving } from './proving';
import { guard, quickEnough } from './guard';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

/** Parts that too much heat ruins, and what each stands. */
const STANDS = { liner: 'T_li', sensor: 'T_se', block: 'T_bl', nozzle: 'T_no' } as const;
const PARTS = ['liner', 'sensor', 'block', 'nozzle'] as const;

/** What there is of them, each with what it stands, K. */
const parts = (ask: Ask) =>
  PARTS.filter((part) => part !== 'liner' || ask.choice('liner') === 'ptfe').map((part) => ({
    part,
    stands: ask.number(STANDS[part]),
  }));

/** What the stuck heater does to the parts: which it surely ruins, and which perhaps. */
function harm(ask: Ask) {
  const { low, high } = ask.known('T_u') ?? { low: ask.number('T_u'), high: ask.number('T_u') };
  const all = parts(ask);
  return {
    sure: all.filter(({ stands }) => low > stands).map(({ part }) => part),
    perhaps: all.filter(({ stands }) => low <= stands && high > stands).map(({ part }) => part),
  };
}

function stuck(ask: Ask): Order {
  const { steps: tests, heats } = proving(ask);
  const fitted = ask.choice('cutoff') === 'fitted';
  if (fitted && ask.number('T_f') <= ask.number('T_e')) {
    return tell(
      'cutOffLower',
      { opens: ask.quantity('T_f'), harm: harm(ask) },
      { steps: [...cutOff(ask), step('failedClosed'), ...tests], heats },
    );
  }
  return tell(
    'fitCutOff',
    { ends: ask.quantity('T_e'), harm: harm(ask) },
    { steps: [step('failedClosed'), ...cutOff(ask), step('higherResistance'), ...tests], heats },
  );
}

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** What the hand does, for every state of the checks: the guard first, since it is set in a minute. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number('t_x');
  const [quick, hot, rise, worst] = [ask.check('t_x'), ask.check('T_x'), ask.check('dT_h'), ask.number('T_u')];
  if ([quick, hot, rise].includes('beyond')) return guard(ask);
  if (ask.choice('cutoff') === 'fitted' && ask.check('T_f') === 'beyond') {
    return tell('cutOffHigher', { least: ask.quantity('T_fw') }, { steps: [...cutOff(ask), step('failedClosed')] });
  }
  const least = Math.min(...parts(ask).map(({ stands }) => stands));
  const known = ask.known('T_u');
  if ((known?.low ?? worst) > least) return stuck(ask);
  if (open(quick) || open(hot)) return quickEnough(ask);
  const { steps: tests, heats } = proving(ask);
  if (open(rise)) {
    return tell(
      'leaveGuard',
      { rise: ask.quantity('dT_h') },
      { steps: [step('timeRealRise'), step('failedClosed'), ...tests], measureAgain: true, heats },
    );
  }
  if ((known?.high ?? worst) > least) return stuck(ask);
  if (ask.verdict !== 'within') {
    return tell(
      'lookUpRating',
      { opens: ask.quantity('T_f') },
      { steps: [step('failedClosed'), ...tests], measureAgain: true, heats },
    );
  }
  return tell(
    'leaveAndProve',
    { after: ask.quantity('t_x'), ends: ask.quantity('T_u') },
    { steps: [...tests, ...holdsToo(ask), step('failedClosed')], heats },
  );
}
