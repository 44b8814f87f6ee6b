import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Amount, type Movement, type Order, type Told } from '../../engine/order';
import { length } from '../../quantity/kinds';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
type Result = Parameters<Ask['known']>[0];
/** The three checks of the column, in the order they are spoken of. */
type Fault = 'sigma' | 'x' | 'r_f';
const { tell, step } = telling<typeof words>();

/** More than this all round is no rim any more but another print, m. */
const WIDEST_RIM = 0.015;

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';
const ofLength = (si: number): Amount => ({ si, width: 0, kind: length.mm.kind.id, unit: length.mm.unit.id });

/** The end of a result's interval that is sure to do, to two digits; undefined where that end is none. SI. */
function sure(ask: Ask, symbol: Result, end: 'low' | 'high'): { si: number; shown: Amount } | undefined {
  const si = ask.known(symbol)?.[end];
  if (si === undefined || si <= 0) return undefined;
  const size = 10 ** (Math.floor(Math.log10(si)) - 1);
  return { si, shown: ofLength((end === 'low' ? Math.floor(si / size) : Math.ceil(si / size)) * size) };
}

const HEIGHT_FOR = { x: 'L_x', r_f: 'L_f', sigma: 'L_h' } as const;

/** The least of the heights that are surely all right, among the checks that are open. */
function shorter(ask: Ask): { si: number; shown: Amount } | undefined {
  const heights = (['x', 'r_f', 'sigma'] as const).flatMap((of) =>
    open(ask.check(of)) ? [sure(ask, HEIGHT_FOR[of], 'low')] : [],
  );
  if (heights.includes(undefined)) return undefined;
  return heights.reduce((least, one) => (least && one && least.si <= one.si ? least : one), undefined);
}

/** How wide the foot has to be, with the movement. */
function widen(ask: Ask) {
  const foot = sure(ask, 'B_n', 'high');
  const rim = sure(ask, 'r_n', 'high');
  if (!foot || !rim) return undefined;
  const now = ask.choice('foot');
  const how = rim.si > WIDEST_RIM ? 'newPad' : now === 'bare' ? 'newRim' : now === 'pad' ? 'widerPad' : 'widerRim';
  const amount = Math.max(rim.si - ask.number('r'), 0);
  const movement: Movement = { part: 'rim round the foot', direction: 'wider', amount };
  return { foot: { how, width: how === 'newPad' ? foot.shown : rim.shown } as const, movement };
}

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

/** @param toBeSafe where whether it is needed is too close to call */
function remedies(ask: Ask, toBeSafe: boolean): { steps: Told[]; movements: Movement[] } {
  const steps: Told[] = [];
  const movements: Movement[] = [];
  const [sways, shaken, loose] = [open(ask.check('x')), open(ask.check('r_f')), open(ask.check('sigma'))];
  const foot = loose ? widen(ask) : undefined;
  if (foot) {
    steps.push(step('foot', { ...foot.foot, toBeSafe }));
    movements.push(foot.movement);
  } else if (loose) steps.push(step('anyFoot', { toBeSafe }));
  const end = shorter(ask);
  if (end) {
    steps.push(step('shorten', { to: end.shown, toBeSafe }));
    movements.push({ part: 'column', direction: 'shorter', amount: Math.max(ask.number('L') - end.si, 0) });
  }
  if (sways || shaken) {
    steps.push(
      step('thicken', { to: ask.quantity('b_x'), from: ask.quantity('b'), toBeSafe }),
      step('bridge', { toBeSafe }),
    );
    if (ask.choice('core') === 'shell') steps.push(step('oneMoreWall', { toBeSafe }));
  }
  if (shaken) steps.push(step('slowDown', { toBeSafe }));
  if (ask.choice('warmth') !== 'cool') steps.push(step('printTwo', { toBeSafe }));
  return { steps, movements };
}

/** What is wrong with it. */
const faults = (ask: Ask, state: VerdictState): readonly Fault[] =>
  (['sigma', 'x', 'r_f'] as const).filter((of) => ask.check(of) === state);

/** What to change on the piece, for every state of the checks. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  const [sway, allowed] = [ask.quantity('x'), ask.quantity('x_lim')];
  const [pull, holds] = [ask.quantity('sigma'), ask.quantity('sigma_h')];
  for (const asked of ['r_f', 'r_min'] as const) ask.number(asked);
  if (ask.verdict === 'within') {
    return tell('print', { sway, allowed }, { steps: [step('footHolds', { pull, holds }), step('lookAtMachine')] });
  }
  if (ask.verdict === 'too close') {
    const { steps, movements } = remedies(ask, true);
    const all = { steps: [...cures(ask), ...steps], movements, measureAgain: true };
    return tell('makeSure', { faults: faults(ask, 'too close') }, all);
  }
  const rest = remedies(ask, false);
  if (ask.check('sigma') === 'beyond') {
    return tell('changeFoot', { faults: faults(ask, 'beyond'), foot: widen(ask)?.foot }, rest);
  }
  return tell('widen', { faults: faults(ask, 'beyond'), to: ask.quantity('b_x') }, rest);
}
