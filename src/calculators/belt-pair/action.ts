import { expanded } from '../../formula/outcome';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import { hertz, tuningStep, type Ask } from './asked';
import type words from './words/en';

const { tell, step, contradict } = telling<typeof words>();

/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;

/** One belt's symbols and name, so that everything mirrors when the two are swapped. */
const sides = {
  first: { T: 'T_1', note: 'f_1', alike: 'f_1e', middle: 'f_1a', name: 'first' },
  second: { T: 'T_2', note: 'f_2', alike: 'f_2e', middle: 'f_2a', name: 'second' },
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
  EI_01: 'droopForStiffness',
  EI_02: 'droopForStiffness',
  chi_1: 'longerForEnds',
  chi_2: 'longerForEnds',
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
  // Without a stiffness against the tension a span is all stiffness.
  const stiff = (['epsilon_1', 'epsilon_2'] as const).some((of) => ask.check(of) !== 'within');
  return stiff ? tooStiff() : undefined;
}

/** A span is too stiff to tell its tension by, now or where it is to go. */
const tooStiff = (): Order => tell('tooStiff', {}, { steps: [step('bothLong')], measureAgain: true });

/** The notes that both are to sound. */
interface Notes {
  readonly f_1?: number;
  readonly f_2?: number;
}

const tuned = (note: number): number => settable(note, tuningStep(note), 'nearest');

/** One note, and those a step beside it, in which rounding may have been unlucky. */
function around(note: number): number[] {
  const by = tuningStep(note);
  return [tuned(note), tuned(note) - by, tuned(note) + by];
}

/** The looser belt up to the tighter one's tension, else the tighter one down to the looser one's, else both to the middle of the range. */
function notesFor(ask: Ask): { readonly notes: Notes; readonly sure: boolean } {
  const secondTighter = ask.number('d_T') > 0;
  const [tight, loose] = secondTighter ? [sides.second, sides.first] : [sides.first, sides.second];
  const middle = { f_1: tuned(ask.number('f_1a')), f_2: tuned(ask.number('f_2a')) };
  const found = [loose, tight]
    .flatMap((side): Notes[] => around(ask.number(side.alike)).map((note) => ({ [side.note]: note })))
    .concat(middle)
    .find((notes) => ask.after(notes) === 'within');
  return { notes: found ?? middle, sure: found !== undefined };
}

/** How a belt's tension goes for its new note. */
function turn(ask: Ask, { name, note, T, alike }: (typeof sides)['first' | 'second'], to: number): Movement {
  const tighter = to > ask.number(note);
  // Towards the other belt by the difference, towards the middle by what is wanting there.
  const alone = Math.abs(to - ask.number(alike)) <= 2 * tuningStep(to);
  const goal = alone ? ask.number(T === 'T_1' ? 'T_2' : 'T_1') : ask.number('T_aim');
  return {
    part: `tensioner of the ${name} belt`,
    direction: tighter ? 'tighter' : 'looser',
    amount: Math.abs(goal - ask.number(T)),
  };
}

/** Both are told their notes: one of them alone would leave the other out of its range, or the two apart. */
function both(ask: Ask, f_1: number, f_2: number): Order {
  const movements = [turn(ask, sides.first, f_1), turn(ask, sides.second, f_2)];
  return tell(
    'tuneBoth',
    { first: hertz(f_1), second: hertz(f_2) },
    {
      steps: [step('oneAfterOther'), step('notSameNote'), ...onTeeth(ask)],
      movements: movements.filter(({ amount }) => amount > 0),
      effect: { f_1, f_2 },
    },
  );
}

function adjust(ask: Ask): Order {
  const { notes, sure } = notesFor(ask);
  const { f_1, f_2 } = notes;
  if (!sure) {
    const stiff = (['epsilon_1', 'epsilon_2'] as const).some((of) => ask.after(notes, of) !== 'within');
    if (stiff) return tooStiff();
    const about = step('wouldBe', { first: hertz(f_1 ?? ask.number('f_1')), second: hertz(f_2 ?? ask.number('f_2')) });
    return tell('finerFirst', {}, { steps: [cure(ask, 'd_T'), about, ...onTeeth(ask)], measureAgain: true });
  }
  if (f_1 !== undefined && f_2 !== undefined) return both(ask, f_1, f_2);
  const side = f_1 === undefined ? sides.second : sides.first;
  const note = f_1 ?? f_2 ?? 0;
  const slacken = note < ask.number(side.note);
  const change = { slacken, moved: side.name, note: hertz(note) };
  return tell(
    'even',
    { tight: ask.number('d_T') > 0 ? 'second' : 'first', by: ask.quantity('d_T'), ...change },
    {
      steps: [step('aLittle', change), step('notSameNote'), ...onTeeth(ask)],
      movements: [turn(ask, side, note)],
      effect: { [side.note]: note },
    },
  );
}

/** They pull alike; what is left to say is whether both pull enough, and not too much. */
function alike(ask: Ask): Order {
  const [first, second] = [ask.check('T_1'), ask.check('T_2')];
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
  if (ask.verdict === 'beyond') return adjust(ask);
  if (state === 'within') return alike(ask);
  return tell('again', {}, { steps: [cure(ask, 'd_T'), ...onTeeth(ask)], measureAgain: true });
}

/** The least tension of a belt lies below what it may carry. */
export function contradiction(ask: Ask) {
  const pairs = [['T_b', 'T_a'] as const, ...(ask.choice('belts') === 'same' ? [] : [['T_b2', 'T_a2'] as const])];
  const odd = pairs.find(([least, most]) => ask.number(least) >= ask.number(most));
  if (!odd) return undefined;
  const [least, most] = odd;
  return contradict('leastOverMost', { least: ask.quantity(least), most: ask.quantity(most) }, [least, most]);
}
