import type { VerdictState } from '../../engine/calculator';
import { telling, type Effect, type Movement, type Order, type Told } from '../../engine/order';
import { firstThat, settable } from '../../engine/settable';
import {
  ACCELERATION_STEP,
  hertz,
  newton,
  SCALE_STEP,
  SLIDE_STEP,
  slower,
  TURN_STEP,
  tuningStep,
  turns,
  way,
  type Ask,
} from './asked';
import type words from './words/en';

const { tell, step, contradict } = telling<typeof words>();

/** What to do about the input that adds most to the doubt of the tension. */
const CURES = {
  m_0: 'weighLength',
  m_s: 'weighLonger',
  l_s: 'measurePiece',
  mu_1: 'weighForMass',
  w: 'measureWidth',
  f: 'pluckFive',
  L_1: 'measureSpan',
  L_2: 'measureSpan',
  chi: 'longerForEnds',
  EI_0: 'droopForStiffness',
  EI: 'measureDroop',
  F: 'finerScale',
  y: 'readDeflection',
  C_0: 'pressLessFar',
  L_t1: 'measureBelt',
  L_t2: 'measureBelt',
} as const;

function cure(ask: Ask): Told {
  const first = ask.known('T')?.budget[0]?.symbol;
  const found = Object.entries(CURES).find(([symbol]) => symbol === first)?.[1];
  return step(found ?? 'repeatFive');
}

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** The model does not hold for this stiffness or this deflection: nothing to turn. */
function outsideModel(ask: Ask): Order | undefined {
  const measureAgain = true;
  const pressing = ask.choice('by') === 'press';
  if (pressing && doubtful(ask.check('s'))) {
    return tell('pressLess', {}, { steps: [step('stretchesBelt', { share: ask.quantity('s') })], measureAgain });
  }
  // Without a stiffness against the tension the span is all stiffness; pressed, a slack belt has none either.
  const state = ask.check('epsilon');
  return doubtful(state) || (state === 'none' && !pressing) ? tooStiff(ask) : undefined;
}

/** The span is too stiff to tell its tension by, now or where it is to go. */
function tooStiff(ask: Ask): Order {
  const steps = [step('longestRun'), ...(ask.choice('by') === 'press' ? [] : [step('pressMiddle')])];
  return tell('tooStiff', {}, { steps, measureAgain: true });
}

/** The reading that the middle of the range gives, as a hand can set it. */
function target(ask: Ask): { readonly effect: Effect; readonly aim: 'f' | 'F'; readonly at: number } {
  const aim = ask.choice('by') === 'note' ? 'f' : 'F';
  const wished = ask.number(aim === 'f' ? 'f_aim' : 'F_aim');
  const at = settable(wished, aim === 'f' ? tuningStep(wished) : SCALE_STEP, 'nearest');
  return { effect: { [aim]: at }, aim, at };
}

/** Where no tension suits at this acceleration: a lower one that leaves room, for the tension there is or for the middle. */
function noRoom(ask: Ask): Order {
  const now = ask.number('a');
  const lack = ask.number('T_lo') - ask.number('T_hi');
  const mass = ask.choice('which') === 'first' ? ask.number('M') : ask.number('M_2');
  const guess = settable(Math.max(0, now - Math.max(0, lack) / (2 * mass)), ACCELERATION_STEP, 'down');
  const aim = target(ask);
  const needs = step('wouldNeed', { least: ask.quantity('T_lo'), most: ask.quantity('T_hi') });
  for (const also of [{}, aim.effect]) {
    const a = firstThat((si) => ask.after({ ...numbers(also), a: si }) === 'within', guess, 0, ACCELERATION_STEP);
    if (a === undefined) continue;
    const movements: Movement[] = [{ part: 'acceleration', direction: 'down', amount: now - a }];
    const retuned = Object.keys(also).length > 0;
    const slack = ask.number('T') < ask.number('T_aim');
    if (retuned) movements.push(movementOf(ask, slack));
    const steps = [needs, ...(retuned ? [tune(ask, slack, aim.at)] : []), step('lighterStronger')];
    return tell('lowerFirst', { to: slower(a) }, { steps, movements, effect: { ...also, a } });
  }
  return tell('noTension', {}, { steps: [needs, step('lowerAcceleration')] });
}

const numbers = (effect: Effect): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(effect).flatMap(([name, to]) => (typeof to === 'number' ? [[name, to]] : [])));

/** A note an octave off is four times the tension: said where that alone would explain the verdict. */
function octave(ask: Ask, slack: boolean): Told[] {
  if (ask.choice('by') !== 'note') return [];
  const [low, high] = [ask.aside('T_lo').si, ask.aside('T_hi').si];
  const explains = (tension: number): boolean => tension >= low && tension <= high;
  if (!slack && explains(ask.aside('T_h').si)) return [step('octaveHigh')];
  return slack && explains(4 * ask.aside('T_0').si) ? [step('octaveLow')] : [];
}

/** Where to stop, in what is read. */
function until(ask: Ask): Told {
  const note = ask.choice('by') === 'note';
  const { at } = target(ask);
  const ends = (['lo', 'hi'] as const).map((end) => ask.known(note ? `f_${end}` : `F_${end}`)?.value ?? at);
  // Both ends on the safe side.
  const by = note ? tuningStep(at) : SCALE_STEP;
  const print = note ? hertz : newton;
  const [low, high] = [settable(ends[0] ?? at, by, 'up'), settable(ends[1] ?? at, by, 'down')].map(print);
  if (!low || !high) throw new RangeError('two ends');
  if (note) return step('pluckUntil', { aim: print(at), low, high });
  return step('pressUntil', { deflection: ask.aside('y'), aim: print(at), low, high });
}

const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

/** Which way the tensioner goes. */
function directionOf(ask: Ask, slack: boolean) {
  const adjuster = ask.choice('adjuster');
  if (adjuster === 'slide') return slack ? 'outwards' : 'inwards';
  return slack ? adjuster : opposite[adjuster];
}

/** The way by the belt's stretch alone, for a first step; the reading decides. */
function movementOf(ask: Ask, slack: boolean): Movement {
  const direction = directionOf(ask, slack);
  if (ask.choice('adjuster') === 'slide') {
    const amount = Math.abs(settable(ask.known('dx')?.value ?? 0, SLIDE_STEP, 'down'));
    return { part: 'motor or idler', direction, amount };
  }
  const amount = Math.abs(settable(ask.known('psi')?.value ?? 0, TURN_STEP, 'down'));
  return { part: 'tensioner’s screw', direction, amount };
}

function tune(ask: Ask, slack: boolean, at: number): Told {
  const print = ask.choice('by') === 'note' ? hertz : newton;
  return step('tuneTo', { how: directionOf(ask, slack), to: print(at), pressing: ask.choice('by') === 'press' });
}

function adjust(ask: Ask): Order {
  const { effect, aim, at } = target(ask);
  // By what is read: that of the middle lies above where the belt is slack.
  const slack = ask.number(aim) < at;
  const movement = movementOf(ask, slack);
  const slides = ask.choice('adjuster') === 'slide';
  const first = settable(movement.amount / 2, slides ? SLIDE_STEP : TURN_STEP, 'down');
  const by = first > 0 ? (slides ? way(first) : turns(first)) : undefined;
  if (ask.after(numbers(effect), 'epsilon') !== 'within') return tooStiff(ask);
  if (ask.after(numbers(effect)) !== 'within') {
    return tell('finerFirst', { slack }, { steps: [cure(ask), until(ask)], measureAgain: true });
  }
  const steps = [...octave(ask, slack), step('startWith', { slides, slack, by }), until(ask), step('stretchAlone')];
  const how = movement.direction as ReturnType<typeof directionOf>;
  const rest = { steps, movements: [movement], effect };
  if (aim === 'f') return tell('tune', { slack, how, to: hertz(at) }, rest);
  return tell('press', { slack, how, to: newton(at), deflection: ask.quantity('y') }, rest);
}

/** What the hand does about one belt, for every state of the checks. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  const tension = ask.number('T');
  const found = outsideModel(ask);
  if (found) return found;
  if (ask.check('T_lo') === 'beyond') return noRoom(ask);
  const state = ask.check('T');
  if (state === 'beyond') return adjust(ask);
  if (state === 'too close' || ask.verdict !== 'within') {
    const slack = tension < ask.number('T_aim');
    return tell('again', { slack }, { steps: [cure(ask), until(ask)], measureAgain: true });
  }
  return tell('leave', { tension: ask.quantity('T') }, { steps: [step('note', { by: ask.choice('by') })] });
}

/** The least tension of a belt lies below what it may carry. */
export function contradiction(ask: Ask) {
  const [least, most] = ['T_b', 'T_a'] as const;
  if (ask.number(least) < ask.number(most)) return undefined;
  return contradict('leastOverMost', { least: ask.quantity(least), most: ask.quantity(most) }, [least, most]);
}
