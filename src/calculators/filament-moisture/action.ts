import type { Known } from '../../formula/outcome';
import { telling, type Heats, type Order } from '../../engine/order';
import type { Ask } from './asking';
import { DAY, HOUR, LONG, hottest, movementsTo, ofOven, settingFor, type Setting } from './oven';
import type words from './words/en';
import type { Shares, Span, Time } from './words/en/orders';

const { tell, step } = telling<typeof words>();

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

/** What an order to dry at this oven's temperature heats. */
const heated = (ask: Ask, to: number): readonly Heats[] => [{ to, bears: ask.number('T_max') }];

const timed = (ask: Ask, { t }: Setting): Time => timeOf(t ?? ask.number('t'));

/** An oven that may soften the strand: nothing is dried in it, whatever the question is. */
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
  const [soft, most] = [ask.quantity('T_g'), hottest(ask)];
  if (most === undefined) return tell('noOven', { soft }, { steps: [step('desiccantOnly')] });
  if (ask.choice('ask') === 'weigh') {
    const args = { oven: ask.quantity('T_b'), to: ofOven(most), soft };
    return tell('driedTooHot', args, { steps: [step('softFilament'), step('coolerAgain')], heats: heated(ask, most) });
  }
  const set = settingFor(ask, 'hottest') ?? { T_b: most };
  return tell(
    'ovenDown',
    { to: ofOven(most), soft, time: timed(ask, set) },
    {
      steps: [step('softFilament'), step('weigh'), step('away')],
      movements: movementsTo(ask, set),
      effect: { ...set },
      heats: heated(ask, most),
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
  const air = { oven: ask.quantity('T_b'), humidity: ask.quantity('U_b'), held: ask.quantity('u_e') };
  const set = settingFor(ask, 'hottest');
  if (set?.T_b === undefined || set.T_b <= air.oven.si)
    return tell('dryAir', air, { steps: [step('desiccantOrDrier'), step('vent')] });
  return tell(
    'ovenUp',
    { ...air, to: ofOven(set.T_b), time: timed(ask, set) },
    {
      steps: [step('vent'), step('weigh'), step('away')],
      movements: movementsTo(ask, set),
      effect: { ...set },
      heats: heated(ask, set.T_b),
    },
  );
}

/** Too short even by the fastest rate: how long by the slowest. */
function tooShort(ask: Ask): Order {
  const [low] = ends(ask.known('t_q'), ask.number('t_q'));
  const [time, oven, takes] = [timeOf(ask.number('t')), ask.quantity('T_b'), spanOf(ask)];
  const weighing = [step('weigh'), step('looseCoils'), step('away')];
  const set = settingFor(ask, 'as set');
  if (!set) {
    const steps = [step('startWith', { time: timeOf(low) }), ...weighing];
    return tell('dryLonger', { time, oven, takes }, { steps, measureAgain: true, heats: heated(ask, oven.si) });
  }
  const at = set.T_b === undefined ? oven : ofOven(set.T_b);
  return tell(
    'dryUpTo',
    { time, upTo: timed(ask, set), oven: at },
    {
      steps: [step('slowest', { oven, takes }), ...weighing],
      movements: movementsTo(ask, set),
      effect: { ...set },
      heats: heated(ask, at.si),
    },
  );
}

function dry(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number('u_e');
  const found = tooHot(ask) ?? tooDamp(ask);
  if (found) return found;
  const [time, oven] = [timeOf(ask.number('t')), ask.quantity('T_b')];
  const band = step('band', { takes: spanOf(ask), left: ask.quantity('q') });
  const heats = heated(ask, oven.si);
  if (ask.verdict === 'within') {
    return tell('dryFor', { time, oven }, { steps: [band, step('weighAllTheSame'), step('away')], heats });
  }
  if (ask.verdict === 'too close') {
    const steps = [band, step('weigh'), step('away')];
    return tell('dryThenWeigh', { time, oven }, { steps, measureAgain: true, heats });
  }
  return tooShort(ask);
}

/** Room air so warm that the strand surely or perhaps softens where it lies. */
function liesTooWarm(ask: Ask): Order | undefined {
  const state = ask.check('T');
  if (state !== 'beyond' && state !== 'too close') return undefined;
  return tell('lieCooler', { air: ask.quantity('T'), soft: ask.quantity('T_g') }, { steps: [step('softFilament')] });
}

function stored(ask: Ask): Order {
  const warm = liesTooWarm(ask);
  if (warm) return warm;
  const water = step('water', { taken: sharesOf('W_o', ask), allowed: ask.quantity('W_lim') });
  if (ask.verdict === 'within') return tell('printFromIt', {}, { steps: [water, step('away')] });
  if (ask.verdict === 'too close') {
    return tell('listenOrWeigh', {}, { steps: [water, step('feedIntoAir'), step('looseTells')], measureAgain: true });
  }
  const most = hottest(ask);
  const noHotter = most === undefined ? [] : [step('noHotter', { most: ofOven(most), soft: ask.quantity('T_g') })];
  const heats = most === undefined ? [] : heated(ask, most);
  return tell('dryFirst', {}, { steps: [water, ...noHotter, step('askForTime')], heats });
}

function weighed(ask: Ask): Order {
  const hot = tooHot(ask);
  if (hot) return hot;
  const [had, left] = [ask.quantity('W_0'), sharesOf('W_2', ask)];
  if (ask.number('w_l') <= 0) {
    return tell('weighAgain', {}, { steps: [step('scaleTooCoarse'), step('weighLoose')], measureAgain: true });
  }
  if (ask.verdict === 'within') return tell('stopDrying', { had, left }, { steps: [step('away')] });
  const [allowed, heats] = [ask.quantity('W_lim'), heated(ask, ask.number('T_b'))];
  if (ask.verdict === 'too close') {
    return tell(
      'dryAndWeighAgain',
      {},
      {
        steps: [step('leftByWeighing', { left, allowed }), step('secondLoss'), step('finerScale')],
        measureAgain: true,
        heats,
      },
    );
  }
  const steps = [step('weigh'), step('secondLoss'), step('away')];
  return tell('dryAgain', { left, allowed }, { steps, measureAgain: true, heats });
}

/** What to do about the filament, for every state of the checks. */
export function instruct(ask: Ask): Order {
  const question = ask.choice('ask');
  if (question === 'store') return stored(ask);
  return question === 'weigh' ? weighed(ask) : dry(ask);
}
