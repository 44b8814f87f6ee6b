import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** Starts may miss a whole number by this much: leads are stamped rounded. */
const STARTS_OFF = 0.03;
/** A carriage nearer than this to the middle need not be moved, m. */
const NEAR_MIDDLE = 0.005;

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';
const opposite = { left: 'right', right: 'left' } as const;

const twoMotors = (ask: Ask): boolean => ask.choice('screws') === 'two' && ask.choice('drive') === 'motors';

/** Entries that do not fit together. */
function misfit(ask: Ask): Order | undefined {
  const measureAgain = true;
  if (twoMotors(ask) && ask.number('F_2') <= 0) {
    return tell('weighAgain', {}, { steps: [step('massIncludes')], measureAgain });
  }
  if (ask.choice('screw') === 'ball') return undefined;
  const starts = ask.number('n_s');
  if (Math.abs(starts - Math.round(starts)) > STARTS_OFF * starts || Math.round(starts) < 1) {
    return tell('lookAtScrew', { lead: ask.quantity('P_h') }, { steps: [step('countGrooves')], measureAgain });
  }
  if (ask.number('T_R') > 0) return undefined;
  return tell('noTorque', {}, { steps: [step('jams')], measureAgain });
}

/** Which side goes first, and the slide of the carriage that makes both alike. */
function unequal(ask: Ask): { readonly steps: Told[]; readonly movements: Movement[] } {
  if (!twoMotors(ask)) return { steps: [], movements: [] };
  const near = ask.choice('side');
  const steps = [step('sinkApart', { step: ask.quantity('h_e') })];
  if (ask.number('x') < NEAR_MIDDLE) return { steps, movements: [] };
  const towards = opposite[near];
  const slide = step('slideCarriage', {
    by: ask.quantity('x'),
    towards,
    near,
    load: ask.quantity('F'),
    other: ask.quantity('F_2'),
    margin: ask.quantity('m'),
    otherMargin: ask.quantity('m_2'),
  });
  return {
    steps: [slide, ...steps],
    movements: [{ part: 'carriage', direction: towards, amount: ask.number('x') }],
  };
}

function remedies(ask: Ask): Told[] {
  const most = ask.number('F_m') > 0 ? ask.quantity('F_m') : undefined;
  const steps = [
    step('brake', { torque: ask.quantity('T_k'), wanted: ask.quantity('m_lim') }),
    step('counterweight', { most, load: ask.quantity('F') }),
  ];
  return [
    ...steps,
    ask.choice('screw') === 'ball' ? step('ballScrew') : step('lowerLead', { lead: ask.quantity('P_n') }),
  ];
}

function tooLittle(ask: Ask): Order {
  const { steps, movements } = unequal(ask);
  const all = { steps: [step('park'), ...steps, ...remedies(ask), step('grease')], movements };
  const margin = ask.quantity('m');
  if (ask.number('m') >= 1) return tell('smallMargin', { margin, wanted: ask.quantity('m_lim') }, all);
  return tell('runsDown', { margin }, all);
}

const CURES = { mu: 'measureFriction', T_d: 'measureIdle', T_b: 'measureDrag', M_z: 'weigh' } as const;

function trial(ask: Ask): Told {
  const screws = ask.choice('screws');
  const where = screws === 'one' ? 'nut' : screws === 'two' && ask.choice('drive') === 'belt' ? 'midway' : 'eachNut';
  return step('trial', { where, pull: ask.quantity('F_p') });
}

function unsettled(ask: Ask): Order {
  const { steps, movements } = unequal(ask);
  const weakest = ask.known('m')?.budget[0]?.symbol;
  const cure = Object.entries(CURES).find(([symbol]) => symbol === weakest)?.[1];
  return tell(
    'tooClose',
    { margin: ask.quantity('m'), wanted: ask.quantity('m_lim') },
    {
      steps: [step('park'), trial(ask), ...(cure === undefined ? [] : [step(cure)]), ...steps, step('grease')],
      movements,
    },
  );
}

/** What to do about a screw that a stalled motor could bend. */
function buckling(ask: Ask): Order {
  const euler = ask.number('s') > ask.number('s_c');
  const margin = step('marginIs', { margin: ask.quantity('m_b'), wanted: ask.quantity('m_bl'), euler });
  return tell(
    'lowerCurrent',
    { certain: ask.check('m_b') === 'beyond', push: ask.quantity('F_s'), buckles: ask.quantity('F_b') },
    { steps: [margin, step('currentInProportion'), step('truerEnds'), step('afterCollision')] },
  );
}

function whirling(ask: Ask): Order {
  const certain = ask.check('n') === 'beyond';
  const amount = certain ? ask.number('v') - ask.number('v_m') : 0;
  return tell(
    'slower',
    { certain, from: ask.quantity('v'), to: ask.quantity('v_m') },
    {
      steps: [step('truerOrThicker'), step('stopAtOnce')],
      movements: certain ? [{ part: 'fastest Z move', direction: 'slower', amount }] : [],
    },
  );
}

function holds(ask: Ask): Order {
  const byThread = ask.number('m_t') >= ask.number('m_lim');
  const { steps, movements } = unequal(ask);
  const uneven = ask.number('m_t') < 1 && twoMotors(ask);
  return tell(
    'leave',
    { margin: ask.quantity('m') },
    {
      steps: [trial(ask), step('comesFrom', { byThread, thread: ask.quantity('m_t') }), ...(uneven ? steps : [])],
      movements: ask.number('m_t') < 1 ? movements : [],
    },
  );
}

/** What the hand does, for every state of the three checks; holding comes first. */
export function instruct(ask: Ask): Order {
  const wrong = misfit(ask);
  if (wrong) return wrong;
  ask.number('m');
  if (ask.check('m') === 'beyond') return tooLittle(ask);
  if (ask.check('m_b') === 'beyond') return buckling(ask);
  if (ask.check('n') === 'beyond') return whirling(ask);
  if (doubtful(ask.check('m'))) return unsettled(ask);
  if (doubtful(ask.check('m_b'))) return buckling(ask);
  if (doubtful(ask.check('n'))) return whirling(ask);
  return holds(ask);
}
