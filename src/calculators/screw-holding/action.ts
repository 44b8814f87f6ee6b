import type { VerdictState } from '../../engine/calculator';
import type { Contradiction, Order, Told } from '../../engine/order';
import { amounts, type Amounts } from './amounts';
import { contradict, step, tell, twoMotors, type Ask } from './asking';
import { remedies, sinking, trial } from './holding';

/** Starts may miss a whole number by this much: leads are stamped rounded. */
const STARTS_OFF = 0.03;

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** Entries that do not fit together. What may fall is said first there too, for nothing is known of what holds it. */
export function contradiction(ask: Ask): Contradiction | undefined {
  if (twoMotors(ask)) {
    if (ask.number('x') > ask.number('S') / 2) return contradict('outsideScrews', {}, ['x', 'S']);
    if (ask.number('F_2') <= 0) return contradict('liftsOtherSide', {}, ['M_z', 'M', 'x']);
  }
  if (ask.choice('screw') === 'ball') return undefined;
  const starts = ask.number('n_s');
  if (Math.abs(starts - Math.round(starts)) > STARTS_OFF * starts || Math.round(starts) < 1) {
    return contradict('leadNoPitches', { lead: ask.quantity('P_h'), pitch: ask.quantity('P') }, ['P_h', 'P']);
  }
  return ask.number('T_R') > 0 ? undefined : contradict('jamsBothWays', {}, ['P_h', 'mu']);
}

const rest = (by: Amounts, steps: readonly Told[]) => ({
  steps,
  movements: by.movements,
  ...(by.effect ? { effect: by.effect } : {}),
});

/** What else is to be set, said after what may fall. */
function besides(ask: Ask, by: Amounts): Told[] {
  return [
    ...(doubtful(ask.check('m_b')) ? [step('stalledPush', pushes(ask)), ...bendSteps(ask, by)] : []),
    ...(by.speed ? [step('alsoSlower', by.speed)] : []),
  ];
}

const pushes = (ask: Ask) => ({ push: ask.quantity('F_s'), buckles: ask.quantity('F_b') });

/** What to do about a screw that a stalled motor could bend. */
function bendSteps(ask: Ask, by: Amounts): Told[] {
  const euler = ask.number('r_s') > 1;
  return [
    step('marginIs', { margin: ask.quantity('m_b'), wanted: ask.quantity('m_bl'), euler }),
    ...(by.current ? [step('currentTo', by.current)] : []),
    step('truerEnds'),
    step('afterCollision'),
  ];
}

const CURES = { mu: 'measureFriction', T_d: 'measureIdle', T_b: 'measureDrag', M_z: 'weigh' } as const;

/** The gantry may fall: that comes first, whatever else there is. */
function mayFall(ask: Ask, by: Amounts): Order {
  const margin = ask.quantity('m');
  const wanted = ask.quantity('m_lim');
  const last = [...sinking(ask, by), ...besides(ask, by), step('grease')];
  if (ask.check('m') === 'beyond') {
    const all = rest(by, [step('park'), ...remedies(ask), ...last]);
    return ask.number('m') >= 1 ? tell('smallMargin', { margin, wanted }, all) : tell('runsDown', { margin }, all);
  }
  const weakest = ask.known('m')?.budget[0]?.symbol;
  const cure = Object.entries(CURES).find(([symbol]) => symbol === weakest)?.[1];
  const steps = [step('park'), ...trial(ask), ...(cure === undefined ? [] : [step(cure)]), ...last];
  return tell('tooClose', { margin, wanted }, rest(by, steps));
}

function buckling(ask: Ask, by: Amounts): Order {
  const certain = ask.check('m_b') === 'beyond';
  const steps = [...bendSteps(ask, by), ...(by.speed ? [step('alsoSlower', by.speed)] : [])];
  if (!by.current) return tell('stiffen', { certain, ...pushes(ask) }, rest(by, steps));
  return tell('setCurrent', { certain, ...pushes(ask), to: by.current.to }, rest(by, steps));
}

function whirling(ask: Ask, by: Amounts): Order {
  const certain = ask.check('n') === 'beyond';
  const steps = [step('truerOrThicker'), step('stopAtOnce')];
  if (!by.speed) return tell('noSpeed', {}, rest(by, steps));
  return tell('slower', { certain, ...by.speed }, rest(by, steps));
}

function holds(ask: Ask, by: Amounts): Order {
  const byThread = ask.number('m_t') >= ask.number('m_lim');
  return tell(
    'leave',
    { margin: ask.quantity('m') },
    rest(by, [
      ...trial(ask),
      step('comesFrom', { byThread, thread: ask.quantity('m_t') }),
      ...(ask.number('m_t') < 1 ? sinking(ask, by) : []),
    ]),
  );
}

/** What the hand does, for every state of the three checks; what may fall comes first. */
export function instruct(ask: Ask): Order {
  ask.number('m');
  const by = amounts(ask);
  if (doubtful(ask.check('m'))) return mayFall(ask, by);
  if (ask.check('m_b') === 'beyond') return buckling(ask, by);
  if (ask.check('n') === 'beyond') return whirling(ask, by);
  if (doubtful(ask.check('m_b'))) return buckling(ask, by);
  if (doubtful(ask.check('n'))) return whirling(ask, by);
  return holds(ask, by);
}

export { levers } from './amounts';
