import type { Known } from '../../formula/outcome';
import type { AskOf } from '../../engine/calculator';
import { telling, type Order } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';
import type { Shares, Span, Time } from './words/en/orders';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

const HOUR = 3600;
const DAY = 24 * HOUR;
/** From here on days are easier to grasp than hours. */
const LONG = 3 * DAY;

/** Two digits: the bands are wide. */
const rough = (value: number): number => Number(value.toPrecision(2));

function timeOf(seconds: number): Time {
  return seconds >= LONG ? { count: rough(seconds / DAY), unit: 'days' } : { count: rough(seconds / HOUR), unit: 'h' };
}

const ends = (known: Known | undefined, value: number): readonly [number, number] =>
  known ? [Math.max(known.low, 0), known.high] : [value, value];

function spanOf(ask: Ask): Span {
  const [low, high] = ends(ask.known('t_q'), ask.number('t_q'));
  return { from: timeOf(low), to: timeOf(high) };
}

function sharesOf(symbol: 'W_o' | 'W_2', ask: Ask): Shares {
  const [low, high] = ends(ask.known(symbol), ask.number(symbol));
  return { from: rough(100 * low), to: rough(100 * high) };
}

function tooHot(ask: Ask): Order | undefined {
  const state = ask.check('T_b');
  if (state === 'within' || state === 'none') return undefined;
  if (state === 'too close') {
    return tell(
      'probeFirst',
      { oven: ask.quantity('T_b'), most: ask.quantity('T_max') },
      { steps: [step('hangProbe'), step('orCooler')], measureAgain: true },
    );
  }
  return tell(
    'coolOven',
    { most: ask.quantity('T_max'), soft: ask.quantity('T_g') },
    {
      steps: [step('softStrands'), step('coolerLonger')],
      movements: [{ part: 'oven', direction: 'cooler', amount: Math.max(ask.number('T_b') - ask.number('T_max'), 0) }],
    },
  );
}

function tooDamp(ask: Ask): Order | undefined {
  const state = ask.check('u_e');
  if (state === 'within' || state === 'none') return undefined;
  if (state === 'too close') {
    const workedOut = step('workedOut', { humidity: ask.quantity('U_b'), held: ask.quantity('u_e') });
    return tell('hygrometer', {}, { steps: [workedOut, step('weigh')], measureAgain: true });
  }
  return tell(
    'dryAir',
    { oven: ask.quantity('T_b'), humidity: ask.quantity('U_b'), held: ask.quantity('u_e') },
    { steps: [step('warmerOrDrier', { most: ask.quantity('T_max') }), step('vent')] },
  );
}

function dry(ask: Ask): Order {
  const found = tooHot(ask) ?? tooDamp(ask);
  if (found) return found;
  const [low, high] = ends(ask.known('t_q'), ask.number('t_q'));
  const set = ask.number('t');
  const [time, oven] = [timeOf(set), ask.quantity('T_b')];
  const band = step('band', { takes: spanOf(ask), left: ask.quantity('q') });
  if (ask.verdict === 'within') {
    return tell('dryFor', { time, oven }, { steps: [band, step('weighAllTheSame'), step('away')] });
  }
  if (ask.verdict === 'too close') {
    return tell('dryThenWeigh', { time, oven }, { steps: [band, step('weigh'), step('away')], measureAgain: true });
  }
  return tell(
    'dryLonger',
    { time, oven, takes: spanOf(ask) },
    {
      steps: [step('startWith', { time: timeOf(low) }), step('weigh'), step('looseCoils'), step('away')],
      movements: [{ part: 'drying time', direction: 'longer', amount: Math.max(high - set, 0) }],
    },
  );
}

function stored(ask: Ask): Order {
  const water = step('water', { taken: sharesOf('W_o', ask), allowed: ask.quantity('W_lim') });
  if (ask.verdict === 'within') return tell('printFromIt', {}, { steps: [water, step('away')] });
  if (ask.verdict === 'too close') {
    return tell(
      'listenOrWeigh',
      {},
      { steps: [water, step('feedIntoAir'), step('looseStrandTells')], measureAgain: true },
    );
  }
  return tell(
    'dryFirst',
    {},
    {
      steps: [water, step('askForTime')],
      movements: [
        { part: 'water in the filament', direction: 'less', amount: ask.number('W_o') - ask.number('W_lim') },
      ],
    },
  );
}

function weighed(ask: Ask): Order {
  const [had, left] = [ask.quantity('W_0'), sharesOf('W_2', ask)];
  if (ask.number('w_l') <= 0) {
    return tell('weighAgain', {}, { steps: [step('scaleTooCoarse'), step('weighStrand')], measureAgain: true });
  }
  if (ask.verdict === 'within') return tell('stopDrying', { had, left }, { steps: [step('away')] });
  const allowed = ask.quantity('W_lim');
  if (ask.verdict === 'too close') {
    return tell(
      'dryAndWeighAgain',
      {},
      {
        steps: [step('leftByWeighing', { left, allowed }), step('secondLoss'), step('finerScale')],
        measureAgain: true,
      },
    );
  }
  return tell(
    'dryAgain',
    { left, allowed },
    {
      steps: [step('weigh'), step('away')],
      movements: [
        { part: 'water in the filament', direction: 'less', amount: ask.number('W_2') - ask.number('W_lim') },
      ],
    },
  );
}

/** What to do about the filament, for every state of the checks. */
export function instruct(ask: Ask): Order {
  const question = ask.choice('ask');
  if (question === 'store') return stored(ask);
  return question === 'weigh' ? weighed(ask) : dry(ask);
}
