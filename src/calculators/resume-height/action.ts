import { expanded } from '../../formula/outcome';
import { length } from '../../quantity/kinds';
import type { AskOf, VerdictState } from '../../engine/calculator';
import {
  exact,
  telling,
  type Amount,
  type Contradiction,
  type Movement,
  type Order,
  type Told,
} from '../../engine/order';
import { settable } from '../../engine/settable';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
const { tell, step, contradict } = telling<typeof words>();

/** Layer heights are set to a hundredth of a millimetre; no first layer is thinner than the least that is asked for. */
const LAYER_STEP = 1e-5;
const THINNEST = 4e-5;
/** A first layer thinner than this share of the set one hardly holds. */
const THIN = 0.6;

interface Fit {
  /** Nearest whole number of layers. */
  readonly nearest: number;
  /** How far the best value lies above it, and its expanded uncertainty, in layers. */
  readonly over: number;
  readonly doubt: number;
  /** Most misfit allowed, in layers. */
  readonly allowed: number;
}

const mustHold = (ask: Ask): boolean => ask.choice('duty') === 'safety';
const isGlue = (ask: Ask): boolean => ask.choice('plan') === 'glue';

function fitOf(ask: Ask): Fit | undefined {
  const layers = ask.known(isGlue(ask) ? 'x_2' : 'x');
  if (!layers) return undefined;
  const nearest = Math.round(layers.value);
  const allowed = (isGlue(ask) ? ask.number('e_lim') : ask.number('d_lim')) / ask.number('h');
  return { nearest, over: layers.value - nearest, doubt: expanded(layers), allowed };
}

/** Whether whole layers meet the height, whatever of the doubt is true. What must hold gets no seam, however well they meet. */
export function judge(ask: Ask): VerdictState {
  const fit = fitOf(ask);
  if (!fit) return 'none';
  if (mustHold(ask)) return 'beyond';
  const off = Math.abs(fit.over);
  if (off + fit.doubt <= fit.allowed) return 'within';
  return off - fit.doubt > fit.allowed ? 'beyond' : 'too close';
}

/** A length to a hundredth, without the dust of rounding. */
const hundredths = (si: number): Amount => exact(Math.round(si * 1e5) / 1e5, length.mm);

const CURES = {
  H: 'fivePlaces',
  Z_r: 'feelThrice',
  g_f: 'steelFeeler',
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

/** What is read once the first new layer lies, by the same means. */
function readAfter(ask: Ask): Record<string, number> {
  const top = ask.number('Z_n') / (1 + ask.number('c'));
  if (ask.choice('plan') === 'nozzle') return { Z_r: top + ask.number('g_f') };
  return { H: top - (ask.choice('zero') === 'close' ? 1 : -1) * ask.number('s') };
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
      effect: readAfter(ask),
    },
  );
}

function fitsNone(ask: Ask): Order {
  const below = Math.floor(ask.number('x'));
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

/** A first layer that takes up what whole layers leave over, and how many layers there are then; undefined where it would be too thin. */
function oddFirst(ask: Ask, fit: Fit): { readonly first: number; readonly layers: number } | undefined {
  const [h, set] = [ask.number('h'), ask.number('h_1')];
  const first = (layers: number): number =>
    settable(set + (fit.nearest + fit.over - layers) * h, LAYER_STEP, 'nearest');
  const nearest = Math.max(fit.nearest, 1);
  const layers = first(nearest) < THIN * set && nearest > 1 ? nearest - 1 : nearest;
  return first(layers) >= THINNEST ? { first: first(layers), layers } : undefined;
}

function glueOn(ask: Ask, fit: Fit, state: VerdictState): Order {
  const set = ask.number('h_1');
  const odd = state === 'beyond' ? oddFirst(ask, fit) : undefined;
  const layers = odd?.layers ?? Math.max(fit.nearest, 1);
  const left = (fit.nearest + fit.over - layers) * ask.number('h');
  const isOpen = state === 'too close';
  const movements: Movement[] = odd
    ? [
        {
          part: 'first layer of the second part',
          direction: odd.first > set ? 'thicker' : 'thinner',
          amount: Math.abs(odd.first - set),
        },
      ]
    : [];
  const rest = {
    steps: [
      ...(isOpen ? settleBy(ask, fit) : []),
      step('cutDrawing', { at: hundredths(ask.number('Z_k')) }),
      step('wholeEnds', { off: hundredths(Math.abs(left)), low: left > 0, layers }),
      ...(odd ? [step('oddFirst', { first: hundredths(odd.first), set: ask.quantity('h_1') })] : []),
      step('sandTop'),
      step('dowels'),
    ],
    movements,
    ...(odd ? { effect: { h_1: odd.first } } : {}),
    measureAgain: isOpen,
  };
  return tell(isOpen ? 'restAbout' : 'glueOn', { height: hundredths(ask.number('H_2')), layers }, rest);
}

/** Of the part that stands the layers are as they are; those of the second part are set. */
export const levers = {
  h_1: {
    step: () => LAYER_STEP,
    from: (ask: Ask) => (isGlue(ask) ? THINNEST : ask.number('h_1')),
    to: (ask: Ask) => (isGlue(ask) ? 3 * ask.number('h_1') : ask.number('h_1')),
  },
};

/** Heights that leave no layer. */
export function contradiction(ask: Ask): Contradiction | undefined {
  if (ask.number(isGlue(ask) ? 'x_2' : 'x') >= 0.5) return undefined;
  if (isGlue(ask)) {
    const heights = { height: ask.quantity('H'), whole: ask.quantity('H_t') };
    return contradict('noRoomAbove', heights, ['H', 'H_t']);
  }
  const height = ask.choice('plan') === 'nozzle' ? 'Z_r' : 'H';
  return contradict('lessThanFirst', { height: ask.quantity(height), first: ask.quantity('h_1') }, [height, 'h_1']);
}

/** Where to go on, or what to print instead, for every verdict. */
export function instruct(ask: Ask): Order {
  // Asked first, so that a missing value is named.
  ask.number(isGlue(ask) ? 'x_2' : 'x');
  if (mustHold(ask)) return tell('neverSeam', {}, { steps: [step('printWhole')] });
  const fit = fitOf(ask);
  const state = judge(ask);
  if (fit && isGlue(ask)) return glueOn(ask, fit, state);
  if (!fit || state === 'beyond') return fitsNone(ask);
  return state === 'within' ? goOn(ask) : notSettled(ask, fit);
}
