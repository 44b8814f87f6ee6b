import type { AskOf } from '../../engine/calculator';
import { telling, type Order } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** From here on bare steel rusts in the open: ISO 9223 counts the hours above 80 % as wet (from memory). */
const RUST = 0.8;
/** 0 °C, K. */
const FREEZING = 273.15;

function cold(ask: Ask): Order {
  const above = ask.number('dT_d');
  const wait = ask.quantity('T_o');
  const frost = ask.number('T_d') < FREEZING ? [step('frost')] : [];
  if (ask.verdict === 'within') {
    const rust = ask.number('U_s') > RUST ? [step('rust')] : [];
    return tell(
      'unwrap',
      { above: ask.quantity('dT_d'), dew: ask.quantity('T_d') },
      { steps: [...rust, step('roomFirst'), ...frost] },
    );
  }
  if (ask.verdict === 'too close') {
    return tell('waitAndRead', { until: wait }, { steps: [step('readAgain'), step('mirror')], measureAgain: true });
  }
  return tell(
    above < 0 ? 'getsWet' : 'tooNear',
    { until: wait },
    {
      steps: [step('closedBag'), step('spools'), step('wipeBed'), step('drierAir'), ...frost],
      movements: [{ part: 'surface', direction: 'warmer', amount: Math.max(ask.number('T_o') - ask.number('T_s'), 0) }],
    },
  );
}

function box(ask: Ask): Order {
  const [inside, most, enough] = [ask.quantity('U_b'), ask.quantity('U_lim'), ask.quantity('T_o')];
  if (ask.verdict === 'within') {
    const at = ask.quantity('T_b');
    return tell('keepBox', { at, inside, most }, { steps: [step('letBreathe'), step('dampSpell')] });
  }
  if (ask.verdict === 'too close') {
    return tell(
      'hygrometerInside',
      { inside, most },
      { steps: [step('desiccant'), step('justEnough', { enough })], measureAgain: true },
    );
  }
  return tell(
    'warmBox',
    { to: enough, at: ask.quantity('T_b'), inside, most },
    {
      steps: [step('belowSoft'), step('desiccant')],
      movements: [{ part: 'box', direction: 'warmer', amount: Math.max(ask.number('T_o') - ask.number('T_b'), 0) }],
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
    },
  );
}

/** What to do about the air, for every state of the checks. */
export function instruct(ask: Ask): Order {
  const question = ask.choice('ask');
  if (question === 'swing') return swing(ask);
  return question === 'box' ? box(ask) : cold(ask);
}
