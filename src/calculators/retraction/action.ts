import { symbolText } from '../../engine/evaluate';
import type { VerdictState } from '../../engine/calculator';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import type { Ask } from './asking';
import { judgePiece } from './model';
import { lengthFor, mostSet, ofLength, startAt } from './setting';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

function dominant(ask: Ask): Told {
  const [first] = ask.known('x_r')?.budget ?? [];
  if (!first) return step('restsOnEntries');
  const share = Math.round(first.share * 100);
  return step('mostOfTheDoubt', { share, of: first.symbol, symbol: symbolText(first.symbol) });
}

/** The piece the person planned, and why it serves or not. */
function onPiece(ask: Ask): Told {
  const [x_1, x_b, d_s] = [ask.known('x_1'), ask.known('x_b'), ask.known('d_s')];
  if (!x_1 || !x_b || !d_s) return step('pieceUnknown');
  const [b, b_min, g, d_v] = [ask.number('b'), ask.number('b_min'), ask.number('g'), ask.number('d_v')];
  const { state, reasons } = judgePiece({ b, b_min, g, x_1, x_b, d_s, d_v });
  if (state === 'shows') return step('pieceShows');
  return step(state === 'may show' ? 'pieceMayShow' : 'pieceCannotShow', { reasons });
}

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** A mistake in the shape or a flow outside the model: nothing to change on this figure. */
function unfit(ask: Ask): Order | undefined {
  if (doubtful(ask.check('D_t')) || doubtful(ask.check('d_0'))) {
    return tell('measureBores', {}, { steps: [step('boresDoNotFit')] });
  }
  if (!doubtful(ask.check('gamma_w'))) return undefined;
  return tell('flowTooSlow', {}, { steps: [step('noPowerLaw'), step('printComb'), onPiece(ask)] });
}

/** What to make of a figure above all that a drive can push. */
function tooHard(ask: Ask): Told[] {
  return [
    step('pushTooHard', { push: ask.quantity('F_g'), most: ask.quantity('F_max') }),
    ask.choice('source') === 'table' ? step('flowValuesWrong') : step('readScaleAgain'),
  ];
}

function movedTo(ask: Ask, to: number): Movement[] {
  const by = to - ask.number('x_set');
  return by === 0
    ? []
    : [{ part: 'retraction length', direction: by > 0 ? 'longer' : 'shorter', amount: Math.abs(by) }];
}

/** Down to what this hot end stands: that rests on no model. */
function lowered(ask: Ask, say: 'lowerAndSlower' | 'lowerToMost', to: number, steps: readonly Told[]): Order {
  const lengths = { from: ask.quantity('x_set'), to: ofLength(to) };
  return tell(say, lengths, { steps, movements: movedTo(ask, to), effect: { x_set: to } });
}

/** A measured push that no drive gives, or one that would pull the soft end into the cold part: the length is not the cure. */
function overAsked(ask: Ask): Order | undefined {
  const pushes = ask.check('F_g') === 'beyond';
  const [set, most] = [ask.number('x_set'), ask.number('x_max')];
  const over = pushes || ask.number('x_r') > most;
  const lower = set > most && (over || ask.check('x_set') !== 'beyond');
  if (!over && !lower) return undefined;
  const shorterTube = ask.choice('drive') === 'tube' ? [step('shorterTube')] : [];
  const steps = [
    ...(pushes ? tooHard(ask) : []),
    ...(over ? [step('lessPressure'), ...shorterTube] : []),
    step('neverMore', { most: ask.quantity('x_max') }),
    onPiece(ask),
  ];
  if (!lower) return tell('printSlower', { set: ask.quantity('x_set') }, { steps });
  return lowered(ask, over ? 'lowerAndSlower' : 'lowerToMost', lengthFor(ask), steps);
}

/** The test piece was printed: what it showed is set. */
function asPiece(ask: Ask): Order {
  const [set, most] = [ask.quantity('x_set'), ask.number('x_max')];
  if (ask.check('dx_p') === 'within' && set.si <= most)
    return tell('leave', { set }, { steps: [step('heatAndDamp'), onPiece(ask)] });
  const to = Math.min(ask.number('x_p'), most);
  const rest = { steps: [step('neverMore', { most: ask.quantity('x_max') }), step('heatAndDamp')] };
  return tell(
    'setAsPiece',
    { longer: to > set.si, set, to: ofLength(to) },
    { ...rest, movements: movedTo(ask, to), effect: { x_set: to } },
  );
}

/** Listed flow values settle no length: the piece does. */
function fromTable(ask: Ask): Order {
  const [most, usual] = [ask.quantity('x_max'), ask.quantity('x_step')];
  const never = step('neverMore', { most });
  if (ask.check('dx_p') !== 'none') return asPiece(ask);
  if (ask.number('x_set') > most.si)
    return lowered(ask, 'lowerToMost', mostSet(ask), [never, step('printComb'), onPiece(ask)]);
  return tell(
    'printPiece',
    { start: ofLength(startAt(ask)), usual },
    {
      steps: [
        step('printComb'),
        step('listedValues', { points: ask.quantity('x_r') }),
        never,
        step('pushNarrows'),
        ...((ask.known('F_g')?.low ?? 0) > ask.number('F_max') ? tooHard(ask) : []),
        dominant(ask),
        onPiece(ask),
      ],
      measureAgain: true,
    },
  );
}

/** Where the doubt reaches further than a drive can push. */
function onPush(ask: Ask): Told[] {
  return ask.check('F_g') === 'too close' ? [step('reachesPush', { most: ask.quantity('F_max') })] : [];
}

/** The other nozzle is no part of the verdict, but its figures have no value with this bore above the cone. */
function onOther(ask: Ask): Told[] {
  if (ask.number('d_2') < ask.number('d_0')) return [];
  return [step('otherTooWide', { other: ask.quantity('d_2'), above: ask.quantity('d_0') })];
}

/** What to do about the retraction length: nothing, raise it, lower it, or print before touching it. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number('x_d');
  const found = unfit(ask) ?? (ask.choice('source') === 'table' ? fromTable(ask) : (overAsked(ask) ?? setLength(ask)));
  return { ...found, steps: [...found.steps, ...onOther(ask)] };
}

function setLength(ask: Ask): Order {
  const state = ask.check('x_set');
  const set = ask.quantity('x_set');
  if (state === 'within') {
    return tell('leave', { set }, { steps: [step('heatAndDamp'), ...onPush(ask), onPiece(ask)] });
  }
  const to = lengthFor(ask);
  const longer = to > set.si;
  const change = { longer, set, wanted: ask.quantity('x_r'), step: ask.quantity('x_step') };
  const never = longer ? [step('neverBeyond', { most: ask.quantity('x_max') })] : [];
  if (state === 'too close') {
    return tell(
      'printFirst',
      {},
      {
        measureAgain: true,
        steps: [
          step('startAt', { ...change, most: ask.quantity('x_hi') }),
          ...never,
          step('printComb'),
          ...onPush(ask),
          dominant(ask),
          onPiece(ask),
        ],
      },
    );
  }
  const tooLong = ask.choice('drive') === 'head' ? step('airAndCold') : step('airAndWear');
  const slow = ask.number('t_x') > (ask.known('t_b')?.high ?? Infinity);
  return tell(
    'setLength',
    { longer, set, to: ofLength(to), stored: ask.quantity('x_r') },
    {
      steps: [
        longer ? step('underPressure') : tooLong,
        ...never,
        step('printComb'),
        ...onPush(ask),
        ...(slow ? [step('pullFaster', { takes: ask.quantity('t_x') })] : []),
        dominant(ask),
        onPiece(ask),
      ],
      movements: movedTo(ask, to),
      effect: { x_set: to },
    },
  );
}
