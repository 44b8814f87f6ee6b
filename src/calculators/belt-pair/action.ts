import { expanded } from '../../formula/outcome';
import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;

/** One belt's symbols and name, so that everything mirrors when the two are swapped. */
const sides = {
  first: { T: 'T_1', least: 'T_lo1', most: 'T_hi1', note: 'f_1e', name: 'first' },
  second: { T: 'T_2', least: 'T_lo2', most: 'T_hi2', note: 'f_2e', name: 'second' },
} as const;

const CURES = {
  f_1: 'pluckFirst',
  f_2: 'pluckSecond',
  L_1: 'measureFirstSpan',
  L_2: 'measureSecondSpan',
  m_0: 'weighBelt',
  m_02: 'weighEach',
  m_s: 'weighLonger',
  m_s2: 'weighLonger',
  mu_a: 'weighForMass',
  mu_b: 'weighSecond',
  EI_1: 'longerSpans',
  EI_2: 'longerSpans',
} as const;

function cure(ask: Ask, of: 'd_T' | 'T_1' | 'T_2'): Told {
  const first = ask.known(of)?.budget[0]?.symbol;
  const found = Object.entries(CURES).find(([symbol]) => symbol === first)?.[1];
  return step(found ?? 'repeatFive');
}

/** What the offset of the tensioners tells, where it was measured. */
function onTeeth(ask: Ask): Told[] {
  const found = ask.known('n');
  if (!found) return [];
  if (ask.check('d_T') !== 'within') return [step('offsetAgain')];
  const whole = ask.known('n_w');
  // Known well, but between two teeth: no better tool makes a tooth of it.
  const between = () => [step('betweenTeeth', { teeth: ask.quantity('n') })];
  if (!whole) return expanded(found) < NEAR_WHOLE ? between() : [step('cannotTell', { tooth: ask.quantity('x_1') })];
  if (Math.abs(found.value - whole.value) > NEAR_WHOLE) return between();
  const teeth = Math.abs(whole.value);
  if (teeth === 0) return [step('noTooth')];
  return [step('drawThrough', { longer: found.value > 0 ? 'second' : 'first', teeth })];
}

function outsideModel(ask: Ask): Order | undefined {
  if (doubtful(ask.check('L_1')) || doubtful(ask.check('L_2'))) {
    const steps = [step('bothLong'), step('countStiffness')];
    return tell('tooShort', { least: ask.quantity('L_min') }, { steps, measureAgain: true });
  }
  if (!doubtful(ask.check('epsilon_1')) && !doubtful(ask.check('epsilon_2'))) return undefined;
  return tell('tooStiff', {}, { steps: [step('bothLong')], measureAgain: true });
}

const turn = (name: 'first' | 'second', direction: string, amount: number): Movement => ({
  part: `tensioner of the ${name} belt`,
  direction,
  amount,
});

/** The looser belt is tightened to the tighter one's tension, unless that is more than it may carry. */
function even(ask: Ask): Order {
  const secondTighter = ask.number('d_T') > 0;
  const tight = secondTighter ? sides.second : sides.first;
  const loose = secondTighter ? sides.first : sides.second;
  const amount = Math.abs(ask.number('T_2') - ask.number('T_1'));
  const by = ask.quantity('d_T');
  const overloaded = ask.number(tight.T) > Math.min(ask.number(tight.most), ask.number(loose.most));
  const slack = ask.number(loose.T) < ask.number(loose.least);
  if (overloaded && slack) {
    const movements = [turn(tight.name, 'looser', amount / 2), turn(loose.name, 'tighter', amount / 2)];
    return tell('bothWays', { tight: tight.name, loose: loose.name }, { steps: [step('setOne')], movements });
  }
  const moved = overloaded ? tight : loose;
  const bothSlack = ask.number(tight.T) < ask.number(tight.least);
  const change = { slacken: overloaded, moved: moved.name, note: ask.quantity(moved.note) };
  return tell(
    'even',
    { tight: tight.name, by, ...change },
    {
      steps: [...(bothSlack ? [step('bothSlack')] : []), step('aLittle', change), step('notSameNote'), ...onTeeth(ask)],
      movements: [turn(moved.name, overloaded ? 'looser' : 'tighter', amount)],
    },
  );
}

/** Both pull alike, and one of them too little or too much. */
function bothOff(ask: Ask, off: (typeof sides)['first' | 'second']): Order {
  const slack = ask.number(off.T) < ask.number(off.least);
  const edge = slack ? ask.number(off.least) : ask.number(off.most);
  const amount = Math.abs(edge - ask.number(off.T));
  const movements = Object.values(sides).map(({ name }) => turn(name, slack ? 'tighter' : 'looser', amount));
  return tell('bothOff', { slack }, { steps: [step('setFirst'), ...onTeeth(ask)], movements });
}

/** They pull alike; what is left to say is whether both pull enough, and not too much. */
function alike(ask: Ask): Order {
  const [first, second] = [ask.check('T_1'), ask.check('T_2')];
  if (first === 'beyond' || second === 'beyond') return bothOff(ask, first === 'beyond' ? sides.first : sides.second);
  if (first !== 'within' || second !== 'within') {
    const steps = [cure(ask, first === 'within' ? 'T_2' : 'T_1'), ...onTeeth(ask)];
    return tell('enough', {}, { steps, measureAgain: true });
  }
  const rest = { steps: [step('writeDown'), ...onTeeth(ask)] };
  const teeth = ask.known('n_w');
  const uneven =
    teeth !== undefined && teeth.value !== 0 && Math.abs((ask.known('n')?.value ?? 0) - teeth.value) <= NEAR_WHOLE;
  if (!uneven) return tell('leave', {}, rest);
  return tell('longerLoop', { longer: teeth.value > 0 ? 'second' : 'first', teeth: Math.abs(teeth.value) }, rest);
}

/** What the hand does about two belts, for every state of the checks. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number('d_T');
  const found = outsideModel(ask);
  if (found) return found;
  const state = ask.check('d_T');
  if (state === 'beyond') return even(ask);
  if (state === 'within') return alike(ask);
  return tell('again', {}, { steps: [cure(ask, 'd_T'), ...onTeeth(ask)], measureAgain: true });
}
