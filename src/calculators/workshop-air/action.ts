import { telling, type Order } from '../../engine/order';
import type { Ask } from './asking';
import { boxAt, dryAt, hottest, ofCelsius } from './setting';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

/** From here on bare steel rusts in the open: ISO 9223 counts the hours above 80 % as wet (from memory). */
const RUST = 0.8;
/** 0 °C, K. */
const FREEZING = 273.15;

function cold(ask: Ask): Order {
  const [above, settles] = [ask.quantity('dT_d'), ask.quantity('T_k')];
  const frost = settles.si < FREEZING ? [step('frost')] : [];
  if (ask.verdict === 'within') {
    const rust = ask.number('U_s') > RUST ? [step('rust')] : [];
    return tell('unwrap', { above, dew: settles }, { steps: [...rust, step('roomFirst'), ...frost] });
  }
  const [dry, now] = [dryAt(ask), ask.number('T_s')];
  if (ask.verdict === 'too close') {
    const until = dry === undefined ? ask.quantity('T_o') : ofCelsius(dry);
    return tell('waitAndRead', { until }, { steps: [step('readAgain'), step('mirror')], measureAgain: true });
  }
  const wrapped = [step('closedBag'), step('spools')];
  if (dry === undefined) {
    const args = { settles, air: ask.quantity('T') };
    return tell('neverDry', args, { steps: [...wrapped, step('drierAir'), ...frost] });
  }
  return tell(
    above.si < 0 ? 'getsWet' : 'tooNear',
    { until: ofCelsius(dry) },
    {
      steps: [...wrapped, step('wipeBed'), step('drierAir'), ...frost],
      movements: [{ part: 'surface', direction: 'warmer', amount: dry - now }],
      effect: { T_s: dry },
    },
  );
}

/** A box that would soften what lies in it. */
function hotBox(ask: Ask): Order {
  const [at, soft, most] = [ask.quantity('T_b'), ask.quantity('T_g'), hottest(ask)];
  if (most === undefined) return tell('outOfBox', { at, soft }, { steps: [step('desiccant')] });
  const amount = at.si - most;
  return tell(
    'coolBox',
    { to: ofCelsius(most), at, soft },
    {
      steps: [step('desiccant'), step('lookAfter')],
      movements: [{ part: 'box', direction: 'cooler', amount }],
      effect: { T_b: most },
      heats: [{ to: most, bears: ask.number('T_max') }],
    },
  );
}

function box(ask: Ask): Order {
  const [inside, most] = [ask.quantity('U_b'), ask.quantity('U_lim')];
  const [at, bears] = [ask.quantity('T_b'), ask.number('T_max')];
  if (ask.check('T_b') === 'beyond') return hotBox(ask);
  if (ask.verdict === 'within') {
    const heats = [{ to: at.si, bears }];
    return tell('keepBox', { at, inside, most }, { steps: [step('letBreathe'), step('dampSpell')], heats });
  }
  if (ask.check('U_b') !== 'beyond') {
    if (ask.check('T_b') === 'too close') {
      const args = { at, most: ask.quantity('T_max') };
      return tell('probeBox', args, { steps: [step('probeBeside')], measureAgain: true });
    }
    const steps = [step('desiccant'), step('belowSoft')];
    return tell('hygrometerInside', { inside, most }, { steps, measureAgain: true });
  }
  const to = boxAt(ask);
  const limits = { at, inside, most, soft: ask.quantity('T_g') };
  if (to === undefined || to <= at.si)
    return tell('dryBox', limits, { steps: [step('desiccant'), step('letBreathe')] });
  return tell(
    'warmBox',
    { to: ofCelsius(to), at, inside, most },
    {
      steps: [step('belowSoft'), step('desiccant')],
      movements: [{ part: 'box', direction: 'warmer', amount: to - at.si }],
      effect: { T_b: to },
      heats: [{ to, bears }],
    },
  );
}

function swing(ask: Ask): Order {
  const gap = ask.number('dg');
  const [moved, allowed, swung] = [ask.quantity('dg'), ask.quantity('dg_lim'), ask.quantity('dT')];
  if (ask.verdict === 'within') {
    return tell('leaveZero', { moved, swung, allowed }, { steps: [step('warmedThrough'), step('notTheWarmth')] });
  }
  if (ask.verdict === 'too close') {
    return tell(
      'readFrame',
      { moved, allowed },
      { steps: [step('holdToUpright'), step('feelerTwice')], measureAgain: true },
    );
  }
  const bring = gap > 0 ? 'nearer' : 'farther';
  return tell(
    'setZero',
    { moved, gap: gap > 0 ? 'wider' : 'narrower', bring },
    {
      steps: [
        step('bring', { moved, bring }),
        step('warmedThrough'),
        step('otherEnd'),
        step('outOfTheSun'),
        step('zeroOnBed'),
      ],
      movements: [{ part: 'Z zero', direction: bring, amount: Math.abs(gap) }],
      effect: { T_1: ask.number('T_2') },
    },
  );
}

/** What to do about the air, for every state of the checks. */
export function instruct(ask: Ask): Order {
  const question = ask.choice('ask');
  if (question === 'swing') return swing(ask);
  return question === 'box' ? box(ask) : cold(ask);
}
