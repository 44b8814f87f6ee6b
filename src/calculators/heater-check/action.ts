import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type { model } from './model';
import type words from './words/en';

export type Ask = AskOf<{
  inputs: typeof inputs;
  choices: typeof choices;
  formulas: typeof formulas;
  outputs: typeof model.outputs;
}>;
const { tell, step } = telling<typeof words>();

/** 0 °C, K. */
const ZERO = 273.15;
/** How far above the working temperature a cut-off has to open, K. */
const CLEARANCE = 20;

const toDigits = (value: number, digits: number): number => Number(value.toPrecision(digits));

/** The largest window that is quick enough and keeps the block below what the weakest part stands; whole seconds. */
function window(ask: Ask): number | undefined {
  const late = ask.known('t_p')?.value;
  const most = Math.min(ask.number('t_max'), late ?? Infinity) - ask.number('t_d');
  return most >= 1 ? Math.floor(most) : undefined;
}

/** The two real tests with their pass marks. */
function tests(ask: Ask): Told[] {
  const to = ask.quantity('T_w');
  return [
    step('testHealthy', { to, after: ask.quantity('t_w') }),
    step('testSensorOut', { to, within: ask.quantity('t_max'), block: ask.quantity('T_c') }),
  ];
}

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

function cutOff(ask: Ask): Told[] {
  const [low, high] = [ask.number('T_w') + CLEARANCE, ask.number('T_p')];
  const fits =
    high > low
      ? step('cutOffBetween', { from: toDigits(low - ZERO, 3), to: toDigits(high - ZERO, 3) })
      : step('noCutOffFits');
  return [fits, step('qualified')];
}

function stuck(ask: Ask): Order {
  const fitted = ask.choice('cutoff') === 'fitted';
  if (fitted && ask.number('T_f') <= ask.number('T_e')) {
    return tell(
      'cutOffLower',
      { opens: ask.quantity('T_f'), harm: harm(ask) },
      { steps: [...cutOff(ask), step('failedClosed'), ...tests(ask)] },
    );
  }
  return tell(
    'fitCutOff',
    { ends: ask.quantity('T_e'), harm: harm(ask) },
    { steps: [step('failedClosed'), ...cutOff(ask), step('higherResistance'), ...tests(ask)] },
  );
}

function slowDog(ask: Ask): Order {
  const most = window(ask);
  const acts = { after: ask.quantity('t_x'), at: ask.quantity('T_x') };
  const now = ask.number('W');
  if (most === undefined || ask.number('T_w') >= ask.number('T_p')) {
    return tell('doNotUse', acts, { steps: [step('colderOrWeaker'), step('failedClosed'), ...cutOff(ask)] });
  }
  const from = ask.quantity('W');
  if (most >= now) {
    return tell('quickEnough', acts, {
      steps: [step('shortenIfHealthy', { from }), step('failedClosed'), ...tests(ask)],
      measureAgain: true,
    });
  }
  return tell(
    'shortenWindow',
    { ...acts, from, to: most },
    {
      steps: [
        step('stillClears'),
        step('failedClosed'),
        ...(ask.choice('cutoff') === 'none' ? cutOff(ask) : []),
        ...tests(ask),
      ],
      movements: [{ part: 'watchdog’s window', direction: 'shorten', amount: now - most }],
    },
  );
}

function falseAlarm(ask: Ask): Order {
  const most = ask.number('dT_W') / ask.number('f_H');
  const change = Math.max(ask.number('H') - most, 0);
  return tell(
    'lowerHysteresis',
    { to: toDigits(most, 2), rise: ask.quantity('dT_W') },
    {
      steps: [step('neverOff'), step('orLengthen'), step('failedClosed'), ...tests(ask)],
      movements: [{ part: 'watchdog’s hysteresis', direction: 'lower', amount: change }],
    },
  );
}

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** What the hand does, for every state of the checks: the watchdog first, since it is set in a minute. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number('t_x');
  const [quick, hot, rise, worst] = [ask.check('t_x'), ask.check('T_x'), ask.check('dT_W'), ask.number('T_u')];
  if (quick === 'beyond' || hot === 'beyond') return slowDog(ask);
  if (rise === 'beyond') return falseAlarm(ask);
  if (ask.choice('cutoff') === 'fitted' && ask.check('T_f') === 'beyond') {
    return tell('cutOffHigher', { least: ask.quantity('T_fw') }, { steps: [...cutOff(ask), step('failedClosed')] });
  }
  const least = Math.min(...parts(ask).map(({ stands }) => stands));
  const known = ask.known('T_u');
  if ((known?.low ?? worst) > least) return stuck(ask);
  if (open(quick) || open(hot)) return slowDog(ask);
  if (open(rise)) {
    return tell(
      'leaveDog',
      { rise: ask.quantity('dT_W') },
      { steps: [step('timeRealRise'), step('failedClosed'), ...tests(ask)], measureAgain: true },
    );
  }
  if ((known?.high ?? worst) > least) return stuck(ask);
  if (ask.verdict !== 'within') {
    return tell(
      'lookUpRating',
      { opens: ask.quantity('T_f') },
      { steps: [step('failedClosed'), ...tests(ask)], measureAgain: true },
    );
  }
  return tell(
    'leaveAndProve',
    { after: ask.quantity('t_x'), ends: ask.quantity('T_u') },
    { steps: [...tests(ask), step('failedClosed')] },
  );
}
