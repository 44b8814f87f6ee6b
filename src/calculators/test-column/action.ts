import type { VerdictState } from '../../engine/calculator';
import { telling, type Order, type Told } from '../../engine/order';
import type { Ask } from './asking';
import { footFor, heightFor, ofLength, widthFor, type Foot } from './change';
import type words from './words/en';

/** The three checks of the column, in the order they are spoken of. */
type Fault = 'sigma' | 'x' | 'r_f';
const { tell, step } = telling<typeof words>();

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

const MEASURE = {
  F: 'measureDrag',
  sigma_a: 'pushTestBlock',
  q_p: 'pushForPeel',
  f_m: 'measureRipples',
  q_T: 'touchInPause',
} as const;

function cures(ask: Ask): Told[] {
  const leads = (['x', 'r_f', 'sigma'] as const).flatMap((of) => {
    if (ask.check(of) !== 'too close') return [];
    return [ask.known(of)?.budget[0]?.symbol, of === 'sigma' ? ask.known('sigma_h')?.budget[0]?.symbol : undefined];
  });
  return [...new Set(leads)].flatMap((lead) => {
    const how = Object.entries(MEASURE).find(([symbol]) => symbol === lead)?.[1];
    return how === undefined ? [] : [step(how)];
  });
}

/** Widths and heights with which the whole check passes, and a foot that holds. */
interface Cures {
  readonly foot: Foot | undefined;
  readonly b: number | undefined;
  readonly L: number | undefined;
}

const footStep = ({ how, width }: Foot, toBeSafe: boolean): Told => step('foot', { how, width, toBeSafe });

/** @param toBeSafe where whether it is needed is too close to call */
function remedies(ask: Ask, { foot, b, L }: Cures, toBeSafe: boolean): Told[] {
  const [sways, shaken, loose] = [open(ask.check('x')), open(ask.check('r_f')), open(ask.check('sigma'))];
  const steps: Told[] = [];
  if (loose) steps.push(foot ? footStep(foot, toBeSafe) : step('anyFoot', { toBeSafe }));
  if (L !== undefined) steps.push(step('shorten', { to: ofLength(L), toBeSafe }));
  if (b !== undefined) steps.push(step('thicken', { to: ofLength(b), from: ask.quantity('b'), toBeSafe }));
  if (sways || shaken) {
    steps.push(step('bridge', { toBeSafe }));
    if (ask.choice('core') === 'shell') steps.push(step('oneMoreWall', { toBeSafe }));
  }
  if (shaken) steps.push(step('slowDown', { toBeSafe }));
  if (ask.choice('warmth') !== 'cool') steps.push(step('printTwo', { toBeSafe }));
  return steps;
}

/** What is wrong with it. */
const faults = (ask: Ask, state: VerdictState): readonly Fault[] =>
  (['sigma', 'x', 'r_f'] as const).filter((of) => ask.check(of) === state);

/** The one change of the drawing after which the whole check passes: the least of another piece first. */
function change(ask: Ask): Order {
  const found = faults(ask, 'beyond');
  const looseOnly = found.length === 1 && found[0] === 'sigma' && faults(ask, 'too close').length === 0;
  const foot = looseOnly ? footFor(ask, 'whole check') : undefined;
  const [b, L] = [widthFor(ask), heightFor(ask)];
  const steps = remedies(ask, { foot: foot ?? footFor(ask, 'foot'), b, L }, false);
  if (foot) {
    const { how, width } = foot;
    const movements = [{ part: 'rim', direction: 'wider', amount: foot.r - ask.number('r') }];
    return tell(
      'changeFoot',
      { faults: found, foot: { how, width } },
      { steps, movements, effect: { ...foot.change } },
    );
  }
  if (b !== undefined) {
    const movements = [{ part: 'column', direction: 'thicker', amount: b - ask.number('b') }];
    return tell('widen', { faults: found, to: ofLength(b) }, { steps, movements, effect: { b } });
  }
  if (L !== undefined) {
    const movements = [{ part: 'column', direction: 'shorter', amount: ask.number('L') - L }];
    const lengths = { from: ask.quantity('L'), to: ofLength(L) };
    return tell('lower', { faults: found, ...lengths }, { steps, movements, effect: { L } });
  }
  return tell('drawAnew', { faults: found }, { steps: [...steps, step('inPieces')] });
}

/** What to change on the piece, for every state of the checks. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  const [sway, allowed] = [ask.quantity('x'), ask.quantity('x_lim')];
  const [pull, holds] = [ask.quantity('sigma'), ask.quantity('sigma_h')];
  for (const asked of ['r_f', 'r_min'] as const) ask.number(asked);
  if (ask.verdict === 'within') {
    return tell('print', { sway, allowed }, { steps: [step('footHolds', { pull, holds }), step('lookAtMachine')] });
  }
  if (ask.verdict === 'beyond') return change(ask);
  const found = { foot: footFor(ask, 'foot'), b: widthFor(ask), L: heightFor(ask) };
  const steps = [...cures(ask), ...remedies(ask, found, true)];
  return tell('makeSure', { faults: faults(ask, 'too close') }, { steps, measureAgain: true });
}
