import { expanded } from '../../formula/outcome';
import type { AskOf } from '../../engine/calculator';
import { telling, type Effect, type Order, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import type words from './words/en';

export type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** Least shift that a hand sets, by a feeler's leaf: 0.1 mm. Common practice, no source. */
export const HAND = 1e-4;

/** The front left corner is too sharp: right end too far back, or back too far right. */
const isSharp = (ask: Ask): boolean => ask.number('epsilon') >= 0;

/** What the square has shown of itself. */
function ofSquare(ask: Ask): Told[] {
  const own = ask.choice('way') === 'reversal' ? ask.known('i_q') : undefined;
  if (!own) return [];
  if (Math.abs(own.value) <= expanded(own)) return [step('squareTrue')];
  return [step('squareOut', { wider: own.value > 0, by: ask.quantity('i_q') })];
}

/** The skew as measured; without an angle where it is square as far as the readings tell. */
function skew(ask: Ask) {
  const known = ask.known('epsilon');
  if (known && Math.abs(known.value) <= expanded(known)) return undefined;
  return { by: ask.quantity('epsilon'), sharp: isSharp(ask) };
}

/**
 * True where the diagonals are longer or shorter than those of any parallelogram with these sides: beyond doubt, and so far
 * that the one reading it may come from would shift the skew by half of what is allowed.
 */
function isOpen(ask: Ask): boolean {
  const rest = ask.choice('way') === 'diagonals' ? ask.known('d_e') : undefined;
  if (!rest || Math.abs(rest.value) <= expanded(rest)) return false;
  // One diagonal misread by twice the mean: d(sin ε) = 2 d · 2 d_e / (4 A B).
  const shift = (ask.number('l_0') * ask.number('d_1') * Math.abs(rest.value)) / (ask.number('A') * ask.number('B'));
  return shift > ask.number('e_lim') / 2;
}

function measureSides(ask: Ask): Order {
  const longer = ask.number('d_e') > 0;
  const steps = [step('noParallelogram', { by: ask.quantity('d_e'), longer }), step('allSides'), step('enterMeans')];
  return tell('doNotFit', {}, { steps, measureAgain: true });
}

/** What is read once the skew, as a rise over run, has become so. */
function readingsAt(ask: Ask, slope: number): Effect {
  if (ask.choice('way') === 'photo') return { i_p: slope };
  if (ask.choice('way') === 'square') return { m: (ask.number('i_e') + slope) * ask.number('l') };
  if (ask.choice('way') === 'reversal') {
    const [mean, own] = [slope * ask.number('l'), ask.number('m_s')];
    return { m_1: mean + own, m_2: mean - own };
  }
  // The sum of the squares of a parallelogram's diagonals does not change with its skew, their difference does.
  const half = (ask.number('d_1') ** 2 + ask.number('d_2') ** 2) / 2;
  const skewed = 2 * ask.number('A') * ask.number('B') * Math.sin(Math.atan(slope));
  return { d_1: Math.sqrt(half + skewed), d_2: Math.sqrt(half - skewed) };
}

/** How far an end is brought, as a hand sets it, and what is read then; `over` is what it is the end of. */
function brought(ask: Ask, over: 'S_b' | 'L_f') {
  const slope = Math.tan(ask.number('epsilon'));
  const out = ask.quantity(over === 'S_b' ? 'dy' : 'dx');
  const amount = settable(Math.abs(out.si), HAND, 'nearest');
  const after = slope - (Math.sign(slope) * amount) / ask.number(over);
  return { amount, by: { ...out, si: amount, width: 0 }, effect: readingsAt(ask, after) };
}

/** Out by less than anything can be shifted. */
const tooFine = (ask: Ask): Order =>
  tell('tooFine', {}, { steps: [step('skewed', { skew: skew(ask) }), step('note')] });

function frame(ask: Ask): Order {
  const sharp = isSharp(ask);
  const way = sharp ? 'left' : 'right';
  const { amount, by, effect } = brought(ask, 'L_f');
  if (amount === 0) return tooFine(ask);
  return tell(
    'bringBack',
    { by, way },
    {
      steps: [
        step('skewed', { skew: skew(ask) }),
        step('slackenCorners'),
        step('drawTogether', { sharp, by, way }),
        step('tightenCrosswise'),
        ...ofSquare(ask),
      ],
      movements: [{ part: 'back of the frame', direction: way, amount }],
      effect,
    },
  );
}

function beam(ask: Ask): Order {
  const [way, back] = isSharp(ask) ? (['forward', 'back'] as const) : (['back', 'forward'] as const);
  const { amount, by, effect } = brought(ask, 'S_b');
  if (amount === 0) return tooFine(ask);
  const first = step('skewedOverBed', { skew: skew(ask), onBed: ask.quantity('e_D') });
  const rest =
    ask.choice('of') === 'bed'
      ? [step('nothingGives'), step('shiftUpright', { way, back, by }), step('climbsFreely')]
      : [step('whatLetsAskew'), step('shiftCarriage', { way, back, by }), step('slipTooth'), step('pushByHand')];
  return tell(
    'bringEnd',
    { by, way },
    {
      steps: [first, ...rest, ...ofSquare(ask)],
      movements: [{ part: 'right end of the beam', direction: way, amount }],
      effect,
    },
  );
}

/** What to bring which way, and by how much at its end. */
export function action(ask: Ask): Order {
  // Asked for first, so that the screen says what is still needed.
  ask.number('e_0');
  if (isOpen(ask)) return measureSides(ask);
  if (ask.verdict === 'within') {
    return tell('leave', {}, { steps: [step('skewed', { skew: skew(ask) }), ...ofSquare(ask), step('note')] });
  }
  if (ask.verdict === 'too close') {
    return tell('again', {}, { steps: [step('largerPiece'), ...ofSquare(ask)], measureAgain: true });
  }
  return ask.choice('of') === 'frame' ? frame(ask) : beam(ask);
}
