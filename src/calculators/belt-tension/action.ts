import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

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

/** The model does not hold for this span, this stiffness or this deflection: nothing to turn. */
function outsideModel(ask: Ask): Order | undefined {
  const measureAgain = true;
  if (ask.choice('by') === 'press' && doubtful(ask.check('s'))) {
    return tell('pressLess', {}, { steps: [step('stretchesBelt', { share: ask.quantity('s') })], measureAgain });
  }
  if (doubtful(ask.check('L'))) {
    const steps =
      ask.choice('by') === 'note' ? [step('longestStrand'), step('countStiffness')] : [step('longestStrand')];
    return tell('tooShort', { span: ask.quantity('L'), least: ask.quantity('L_min') }, { steps, measureAgain });
  }
  if (!doubtful(ask.check('epsilon'))) return undefined;
  return tell('tooStiff', {}, { steps: [step('longestStrand'), step('pressMiddle')], measureAgain });
}

function noRoom(ask: Ask): Order {
  const needs = step('wouldNeed', { least: ask.quantity('T_lo'), most: ask.quantity('T_hi') });
  return tell('noTension', {}, { steps: [needs, step('lowerAcceleration')] });
}

/** A note an octave off is four times the tension: said where that alone would explain the verdict. */
function octave(ask: Ask, slack: boolean): Told[] {
  if (ask.choice('by') !== 'note') return [];
  const [low, high] = [ask.number('T_lo'), ask.number('T_hi')];
  const explains = (tension: number): boolean => tension >= low && tension <= high;
  if (!slack && explains(ask.number('T_h'))) return [step('octaveHigh')];
  return slack && explains(4 * ask.number('T_0')) ? [step('octaveLow')] : [];
}

/** Where to stop, in what is read. */
function until(ask: Ask): Told {
  if (ask.choice('by') === 'note') {
    const [aim, low, high] = [ask.quantity('f_aim'), ask.quantity('f_lo'), ask.quantity('f_hi')];
    return step('pluckUntil', { aim, low, high });
  }
  const deflection = ask.quantity('y');
  const [aim, low, high] = [ask.quantity('F_aim'), ask.quantity('F_lo'), ask.quantity('F_hi')];
  return step('pressUntil', { deflection, aim, low, high });
}

const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

function adjust(ask: Ask, slack: boolean): Order {
  const adjuster = ask.choice('adjuster');
  const slides = adjuster === 'slide';
  const steps = [...octave(ask, slack), step('byHalf', { slides, slack }), until(ask), step('stretchAlone')];
  if (slides) {
    const direction = slack ? 'outwards' : 'inwards';
    const movements = [{ part: 'motor or idler', direction, amount: Math.abs(ask.number('dx')) }];
    return tell('slide', { slack, by: ask.quantity('dx') }, { steps, movements });
  }
  const way = slack ? adjuster : opposite[adjuster];
  const movements = [{ part: 'tensioner’s screw', direction: way, amount: Math.abs(ask.number('psi')) }];
  return tell('turn', { slack, way, by: ask.quantity('psi') }, { steps, movements });
}

/** What the hand does about one belt, for every state of the checks. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  const tension = ask.number('T');
  const found = outsideModel(ask);
  if (found) return found;
  if (ask.check('T_lo') === 'beyond') return noRoom(ask);
  const state = ask.check('T');
  if (state === 'beyond') return adjust(ask, tension < ask.number('T_lo'));
  if (state === 'too close' || ask.verdict !== 'within') {
    const slack = tension < ask.number('T_aim');
    return tell('again', { slack }, { steps: [cure(ask), until(ask)], measureAgain: true });
  }
  return tell('leave', { tension: ask.quantity('T') }, { steps: [step('note', { by: ask.choice('by') })] });
}
