import type { VerdictState } from '../../engine/calculator';
import { telling, type Effect, type Movement, type Order, type Told } from '../../engine/order';
import { massOf, set, type Ask } from './asked';
import { planOf, type Changes } from './plan';
import type words from './words/en';

const { tell, step, contradict } = telling<typeof words>();

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** The mass centre brought in, to the side where the guide is from it. */
function massIn(ask: Ask, to: number): Movement {
  const mass = massOf(ask);
  const isOut = ask.number(mass) > 0;
  const amount = Math.abs(ask.number(mass)) - Math.abs(to);
  if (mass === 'e_l') return { part: 'mass', direction: isOut ? 'to the right' : 'to the left', amount };
  return { part: 'mass', direction: isOut ? 'from the drive’s side' : 'to the drive’s side', amount };
}

/** What is changed, one part after the other, for a hand and for a test. */
function movementsOf(ask: Ask, changes: Changes): Movement[] {
  const { d_0, s, dx, a } = changes;
  const centre = changes[massOf(ask)];
  const found: Movement[] = [];
  if (d_0 !== undefined) {
    found.push({ part: 'drive’s point', direction: 'towards the guide', amount: ask.number('d_0') - d_0 });
  }
  if (s !== undefined) {
    const more = s - ask.number('s');
    found.push({
      part: 'share of the pull',
      direction: more > 0 ? 'more on the left' : 'more on the right',
      amount: Math.abs(more),
    });
  }
  if (centre !== undefined) found.push(massIn(ask, centre));
  if (dx !== undefined) {
    found.push({ part: 'leading end of the gantry', direction: 'back', amount: ask.number('dx') - dx });
  }
  if (a !== undefined) found.push({ part: 'acceleration', direction: 'down', amount: ask.number('a') - a });
  return found.filter(({ amount }) => amount > 0);
}

/** Only where the gantry is forced out of square by more than the play. */
function squaring(ask: Ask): Told[] {
  if ((ask.known('N_c')?.value ?? 0) <= 0) return [];
  return [step('square', { ahead: ask.aside('dx'), play: ask.aside('dx_0'), cost: ask.aside('F_c') })];
}

/** The other ways to a smaller offset. */
function reshaping(ask: Ask): Told[] {
  if (!doubtful(ask.check('q'))) return [];
  if (ask.choice('drive') === 'both') {
    return [step('cancelPullsBy'), step('spreadGuide', { most: ask.aside('d_m') })];
  }
  return [step('lengthen', { to: ask.aside('L_m'), now: ask.aside('L') }), step('driveBoth')];
}

/** In the order of effort: clean, free a side, square, then what else would do. */
const cure = (ask: Ask): Told[] => [
  step('careFirst', { guide: ask.choice('pair') }),
  step('freeOneSide', { drive: ask.choice('drive') }),
  ...squaring(ask),
  ...reshaping(ask),
];

/** What is changed besides what the sentence names. */
function besides(ask: Ask, changes: Changes, named?: keyof Changes): Told[] {
  const { d_0, s, a } = changes;
  const mass = massOf(ask);
  const centre = changes[mass];
  const said: Told[] = [];
  if (d_0 !== undefined && named !== 'd_0') {
    said.push(step('alsoDrive', { to: set(ask, 'd_0', d_0), now: ask.quantity('d_0') }));
  }
  if (s !== undefined && named !== 's') {
    said.push(step('alsoShare', { to: set(ask, 's', s), now: ask.quantity('s') }));
  }
  if (centre !== undefined && named !== mass) {
    said.push(step('alsoMass', { to: set(ask, mass, centre), now: ask.quantity(mass) }));
  }
  if (a !== undefined && named !== 'a') said.push(step('alsoSlower', { to: set(ask, 'a', a) }));
  return said;
}

/** An order with all that it changes. */
function changing(ask: Ask, changes: Changes, named: keyof Changes, steps: readonly Told[]) {
  const effect: Effect = Object.fromEntries(Object.entries(changes));
  return {
    steps: [...besides(ask, changes, named), ...steps],
    movements: movementsOf(ask, changes),
    effect,
  };
}

function binds(ask: Ask, changes: Changes): Order {
  const bound = Math.abs(ask.number('q')) >= 1;
  const why = bound
    ? { bound: { at: ask.quantity('d_b'), pushed: ask.quantity('d') } }
    : { eaten: { share: ask.quantity('q'), allowed: ask.quantity('q_lim') } };
  const steps = [...cure(ask), ...(bound ? [step('noMoreForce')] : [])];
  if (changes.s !== undefined) {
    const to = changes.s > ask.number('s') ? 'left' : 'right';
    const share = set(ask, 's', changes.s);
    return tell('shareOut', { to, share, ...why }, changing(ask, changes, 's', steps));
  }
  const to = set(ask, 'd_0', changes.d_0 ?? ask.number('d_0'));
  return tell('driveTo', { to, now: ask.quantity('d_0'), ...why }, changing(ask, changes, 'd_0', steps));
}

function hangsUp(ask: Ask, changes: Changes): Order {
  const mass = massOf(ask);
  const eaten = Math.abs(ask.number('q_e')) < 1 ? ask.quantity('q_e') : undefined;
  const most = set(ask, mass, Math.abs(changes[mass] ?? 0));
  const steps = [step('massOut', { out: ask.quantity(mass) }), ...cure(ask), step('inProportion')];
  return tell('support', { most, eaten }, changing(ask, changes, mass, steps));
}

/** What the drive must pull, as far as there is a number for it, and what it can. */
const needed = (ask: Ask) => ({ force: ask.quantity(ask.known('F') ? 'F' : 'R'), has: ask.quantity('F_m') });

function tooWeak(ask: Ask): Order {
  return tell('tooWeak', needed(ask), { steps: [...cure(ask), step('findDrag')] });
}

function tooHeavy(ask: Ask, changes: Changes): Order {
  const needs = needed(ask);
  const times = ask.known('k_F') ? [step('withoutOffset', { force: ask.aside('R'), times: ask.aside('k_F') })] : [];
  const steps = [...cure(ask), ...times];
  if (changes.dx !== undefined) return tell('squareFirst', needs, changing(ask, changes, 'dx', steps));
  if (changes.a !== undefined) {
    return tell('slower', { ...needs, to: set(ask, 'a', changes.a) }, changing(ask, changes, 'a', steps));
  }
  const to = set(ask, 'd_0', changes.d_0 ?? ask.number('d_0'));
  return tell('driveTo', { to, now: ask.quantity('d_0'), needs }, changing(ask, changes, 'd_0', steps));
}

function unsettled(ask: Ask): Order {
  const steps = [
    ask.choice('by') === 'pair' ? step('pullTwice') : step('repeatPulls'),
    step('wouldBind', { at: ask.quantity('d_b'), stands: ask.quantity('d') }),
    step('careMeanwhile', { guide: ask.choice('pair') }),
  ];
  return tell('measure', {}, { steps, measureAgain: true });
}

/** No change promises that it runs: the drive lacks the force whatever is changed, or the doubt is too wide to say. */
function unsure(ask: Ask, changes: Changes, lacks: boolean): Order {
  if (lacks) return tooWeak(ask);
  const friction = ask.choice('by') === 'pair' ? step('pullTwice') : step('repeatPulls');
  return tell('finerFirst', {}, { steps: [friction, ...besides(ask, changes), ...cure(ask)], measureAgain: true });
}

/** What the hand does, for every state of the checks; binding comes first. */
export function instruct(ask: Ask): Order {
  ask.need('mu');
  if (ask.verdict === 'beyond') {
    const changes = planOf(ask);
    const after = ask.after(changes);
    if (after !== 'within') return unsure(ask, changes, after === 'beyond');
    if (ask.check('q') === 'beyond') return binds(ask, changes);
    if (ask.check('q_e') === 'beyond') return hangsUp(ask, changes);
    return tooHeavy(ask, changes);
  }
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

/** The far pull is farther out than the near one, and friction is not below nothing. */
export function contradiction(ask: Ask) {
  if (ask.choice('by') !== 'scale') return undefined;
  if (ask.number('a_2') <= ask.number('a_1')) {
    return contradict('farIsNear', { near: ask.quantity('a_1'), far: ask.quantity('a_2') }, ['a_1', 'a_2']);
  }
  if (ask.number('mu') > 0) return undefined;
  return contradict('belowNothing', { near: ask.quantity('F_a'), far: ask.quantity('F_b') }, ['F_a', 'F_b']);
}
