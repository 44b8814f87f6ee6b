import { expanded } from '../../formula/outcome';
import { length } from '../../quantity/kinds';
import type { AskOf, VerdictState } from '../../engine/calculator';
import { telling, type Amount, type Order, type Told } from '../../engine/order';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step } = telling<typeof words>();

interface Fit {
  /** Nearest whole number of layers. */
  readonly nearest: number;
  /** How far the best value lies above it, and its expanded uncertainty, in layers. */
  readonly over: number;
  readonly doubt: number;
  /** Most misfit allowed, in layers. */
  readonly allowed: number;
}

const isGlue = (ask: Ask): boolean => ask.choice('plan') === 'glue';

function fitOf(ask: Ask): Fit | undefined {
  const layers = ask.known(isGlue(ask) ? 'x_2' : 'x');
  if (!layers) return undefined;
  const nearest = Math.round(layers.value);
  const allowed = (isGlue(ask) ? ask.number('e_lim') : ask.number('d_lim')) / ask.number('h');
  return { nearest, over: layers.value - nearest, doubt: expanded(layers), allowed };
}

/** Whether whole layers meet the height, whatever of the doubt is true. */
export function judge(ask: Ask): VerdictState {
  const fit = fitOf(ask);
  if (!fit) return 'none';
  const off = Math.abs(fit.over);
  if (off + fit.doubt <= fit.allowed) return 'within';
  return off - fit.doubt > fit.allowed ? 'beyond' : 'too close';
}

/** A length to a hundredth, without the dust of rounding. */
const hundredths = (si: number): Amount => ({
  si: Math.round(si * 1e5) / 1e5,
  width: 0,
  kind: length.mm.kind.id,
  unit: length.mm.unit.id,
});

const CURES = {
  H: 'fivePlaces',
  Z_r: 'feelThrice',
  g_f: 'steelLeaf',
  s: 'feelInstead',
  T_m: 'warmIt',
  T_p: 'warmIt',
  dT: 'hourAtHeat',
  alpha: 'warmIt',
} as const;

/** What would settle it: the weakest number first, and how well the top has to be known. */
function settleBy(ask: Ask, fit: Fit): Told[] {
  const lead = ask.known(isGlue(ask) ? 'x_2' : 'x')?.budget[0]?.symbol;
  const cure = Object.entries(CURES).find(([symbol]) => symbol === lead)?.[1];
  const room = (fit.allowed - Math.abs(fit.over)) * ask.number('h');
  return [
    ...(cure === undefined ? [] : [step(cure)]),
    ...(room > 2e-6 ? [step('knownTo', { half: hundredths(room) })] : []),
  ];
}

function goOn(ask: Ask): Order {
  const off = ask.number('d');
  const next = ask.number('N_n');
  const stands = {
    off: hundredths(Math.abs(off)),
    higher: off >= 0,
    first: hundredths(Math.max(ask.number('h_n'), 0)),
    layer: ask.quantity('h'),
  };
  return tell(
    'goOn',
    { layer: next, at: ask.quantity('Z_n') },
    {
      steps: [
        step('topStands', stands),
        step('cutOff'),
        step('leavePart'),
        step('findAxes'),
        step('heatUp', { layer: next }),
        step('slowly'),
      ],
      movements: [{ part: 'first new layer', direction: off >= 0 ? 'thinner' : 'thicker', amount: Math.abs(off) }],
    },
  );
}

function fitsNone(ask: Ask, fit: Fit): Order {
  const below = Math.floor(fit.nearest + fit.over);
  const steps = [
    step('lookForBlob'),
    step('compareWithJob'),
    step('shiftAll', { layer: below + 1, at: ask.quantity('Z_a') }),
  ];
  return tell('between', { below }, { steps, measureAgain: true });
}

function notSettled(ask: Ask, fit: Fit): Order {
  const exact = fit.nearest + fit.over;
  const [low, high] = [Math.round(exact - fit.doubt), Math.round(exact + fit.doubt)];
  const numbered = ask.known('N') !== undefined || low === high;
  const cures = settleBy(ask, fit);
  if (!numbered) {
    const steps = [...cures, step('doNotGuess'), step('leavePart')];
    return tell('anyOf', { from: Math.max(low, 0), to: high }, { steps, measureAgain: true });
  }
  const layer = fit.nearest + 1;
  const at = hundredths(ask.number('h_1') + fit.nearest * ask.number('h'));
  const steps = [...cures, step('ifSeamIsFine', { layer, at }), step('leavePart')];
  return tell('notSettled', { layer }, { steps, measureAgain: true });
}

function glueOn(ask: Ask, fit: Fit, state: VerdictState): Order {
  const [layers, h] = [Math.max(fit.nearest, 1), ask.number('h')];
  const left = (fit.nearest + fit.over - layers) * h;
  const first = ask.number('h_1') + left;
  const isOpen = state === 'too close';
  const odd = state === 'beyond' && first > 0;
  const rest = {
    steps: [
      ...(isOpen ? settleBy(ask, fit) : []),
      step('cutDrawing', { at: ask.quantity('Z_k') }),
      step('wholeEnds', { off: hundredths(Math.abs(left)), low: left > 0, layers }),
      ...(odd ? [step('oddFirst', { first: hundredths(first), set: ask.quantity('h_1') })] : []),
      step('sandTop'),
      step('dowels'),
    ],
    movements: [{ part: 'height of the whole', direction: left > 0 ? 'lower' : 'higher', amount: Math.abs(left) }],
    measureAgain: isOpen,
  };
  return tell(isOpen ? 'restAbout' : 'glueOn', { height: ask.quantity('H_2'), layers }, rest);
}

/** Where to go on, or what to print instead, for every verdict. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  const exact = ask.number(isGlue(ask) ? 'x_2' : 'x');
  const fit = fitOf(ask);
  if (!fit || exact < 0.5) {
    return tell(
      isGlue(ask) ? 'checkHeights' : 'checkHeight',
      {},
      { steps: [step('compareDrawing')], measureAgain: true },
    );
  }
  const state = judge(ask);
  if (isGlue(ask)) return glueOn(ask, fit, state);
  if (state === 'within') return goOn(ask);
  return state === 'beyond' ? fitsNone(ask, fit) : notSettled(ask, fit);
}
