import type { AskOf } from '../../engine/calculator';
import { length } from '../../quantity/kinds';
import { exact, telling, type Order, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

/** Share of the doubt below which a better reading of one input changes little. */
const WORTH_MEASURING = 0.1;

/** Float of a nut that a hand makes by a slot or a washer: tenths of a millimetre. Common practice, no source. */
export const FLOAT_STEP = 1e-4;

/** Only in the machine with both ends clamped can the bow itself not be told: the clamps hold it straight. */
function bowKnown(ask: Ask): boolean {
  return !(ask.choice('method') === 'mounted' && ask.choice('ends') === 'clamped');
}

/** On a flat and without a gap, which shows no more than what it can hide. */
const unseen = (ask: Ask): boolean => ask.choice('method') === 'flat' && ask.choice('touch') === 'none';

const coupling = (ask: Ask): Told => step('coupling', { refit: ask.choice('method') !== 'mounted' });

/** Freeing the top, where it is held, and whether it is to be tried. */
function freeing(ask: Ask): { readonly helps: boolean; readonly steps: readonly Told[] } {
  if (ask.choice('ends') === 'free') return { helps: false, steps: [] };
  if (!bowKnown(ask)) return { helps: true, steps: [step('tryFreeing')] };
  const helps = Math.abs(ask.number('w_t')) < Math.abs(ask.number('w_x'));
  const freed = { from: ask.quantity('w_x'), to: ask.quantity('w_t') };
  return { helps, steps: [helps ? step('freeTop', freed) : step('keepTopTight', freed)] };
}

const straightening = (ask: Ask): Told => step('notByHand', { push: ask.quantity('y_y'), out: ask.quantity('s_L') });

/** Whether the guide's stiffness adds enough to the doubt to be worth a measurement. */
function guideMatters(ask: Ask): boolean {
  const share = ask.known('w_x')?.budget.find((part) => part.symbol === 'k_g')?.share ?? 0;
  return share >= WORTH_MEASURING;
}

function betterReading(ask: Ask): Told {
  if (unseen(ask)) return step('flatCannot');
  const method = ask.choice('method');
  if (method === 'flat') return step('takeBlocks');
  return method === 'mounted' ? step('readAtCoupling') : step('readAtBlock');
}

function leave(ask: Ask): Order {
  const small = unseen(ask)
    ? step('hiddenIsSmall')
    : step('pushed', { by: ask.quantity('w_x'), allowed: ask.quantity('w_lim') });
  return tell('leave', {}, { steps: [small, step('ridgesRemain', { period: ask.quantity('p_r') }), coupling(ask)] });
}

function keepBowed(ask: Ask): Order {
  const settled = ask.check('s_r') === 'beyond';
  const found = step('bowAndWobble', {
    bow: ask.quantity('s_r'),
    per: ask.quantity('l_r'),
    bowAllowed: ask.quantity('s_lim'),
    wobble: ask.quantity('w_x'),
    allowed: ask.quantity('w_lim'),
  });
  if (settled) return tell('bowedNoHarm', {}, { steps: [found, step('sendBackOrLater'), straightening(ask)] });
  return tell('leaveIn', {}, { steps: [found, betterReading(ask), straightening(ask)], measureAgain: true });
}

function measureAgain(ask: Ask): Order {
  const bent = ask.check('s_r') === 'beyond';
  const guide = guideMatters(ask);
  return tell(
    'measureAgain',
    { guide },
    {
      steps: [
        ...(bent ? [step('sendBack', { bow: ask.quantity('s_r'), per: ask.quantity('l_r') })] : []),
        ...(guide ? [step('measureGuide')] : []),
        betterReading(ask),
        coupling(ask),
      ],
      measureAgain: true,
    },
  );
}

/** A bow that the flat arc does not follow, and that no press takes out: no length here is to be trusted. */
function tooBowed(ask: Ask): Order {
  return tell(
    'checkReading',
    { share: ask.quantity('f_max') },
    { steps: [step('sight'), step('farSupports'), step('replaceIfBowed')], measureAgain: true },
  );
}

const millimetres = (si: number) => exact(si, length.mm);

/** Float of the nut, each way, that lets the screw swing freely whatever of the doubt is true. */
function floatFor(ask: Ask): number {
  const swing = ask.known('y_0');
  const most = Math.max(Math.abs(swing?.low ?? 0), Math.abs(swing?.high ?? 0), Math.abs(ask.number('y_0')));
  return settable(most, FLOAT_STEP, 'up');
}

function act(ask: Ask): Order {
  const bow = ask.check('s_r');
  const free = freeing(ask);
  const first = free.helps ? 'free' : 'float';
  const float = floatFor(ask);
  const rest = {
    steps: [
      coupling(ask),
      ...free.steps,
      step('swapEnds'),
      step('floatTheNut', { by: millimetres(float) }),
      ...(bow === 'within'
        ? []
        : [step('replaceLast', { bow: ask.quantity('s_lim'), per: ask.quantity('l_r'), wobble: ask.quantity('w_n') })]),
      ...(bowKnown(ask) ? [straightening(ask)] : []),
    ],
    movements: [{ part: 'nut', direction: 'free sideways, each way', amount: float }],
    effect: { j: float },
  };
  if (bow === 'beyond') return tell('bent', { first }, rest);
  if (bow === 'within') return tell('keep', { first }, rest);
  return tell('wobbles', { first, wobble: ask.quantity('w_x') }, rest);
}

/** The instruction: the quickest and most reversible work first, a new screw last. */
export function advise(ask: Ask): Order {
  // Asked first so that a missing value is named instead of being taken for "within".
  ask.need('w_x');
  ask.need('w_lim');
  ask.need('s_lim');
  if (bowKnown(ask)) ask.need('s_r');
  const bowed = ask.check('f_L');
  if (bowed === 'beyond' || bowed === 'too close') return tooBowed(ask);
  const wobble = ask.check('w_x');
  if (wobble === 'beyond') return act(ask);
  if (wobble === 'too close') return measureAgain(ask);
  const bow = ask.check('s_r');
  return bow === 'beyond' || bow === 'too close' ? keepBowed(ask) : leave(ask);
}
