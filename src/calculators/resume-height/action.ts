import { expanded } from '../../formula/outcome';
import { formatValue } from '../../quantity/format';
import { length } from '../../quantity/kinds';
import type { Context, Instruction, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';
import type { formulas } from './formulas';
import type { inputs } from './inputs';

type Results = (typeof formulas)[number]['text'] extends infer T
  ? T extends `${infer S} =${string}`
    ? S
    : never
  : never;
type Ask = Context<Results | keyof typeof inputs, typeof choices>;

interface Fit {
  /** Nearest whole number of layers. */
  readonly nearest: number;
  /** How far the best value lies above it, and its expanded uncertainty, in layers. */
  readonly over: number;
  readonly doubt: number;
  /** Most misfit allowed, in layers. */
  readonly allowed: number;
}

const isGlue = (ctx: Ask): boolean => ctx.choice('plan') === 'glue';

function fitOf(ctx: Ask): Fit | undefined {
  const layers = ctx.known(isGlue(ctx) ? 'x_2' : 'x');
  if (!layers) return undefined;
  const nearest = Math.round(layers.value);
  const allowed = (isGlue(ctx) ? ctx.number('e_lim') : ctx.number('d_lim')) / ctx.number('h');
  return { nearest, over: layers.value - nearest, doubt: expanded(layers), allowed };
}

/** Whether whole layers meet the height, whatever of the doubt is true. */
export function judge(ctx: Ask): VerdictState {
  const fit = fitOf(ctx);
  if (!fit) return 'none';
  const off = Math.abs(fit.over);
  if (off + fit.doubt <= fit.allowed) return 'within';
  return off - fit.doubt > fit.allowed ? 'beyond' : 'too close';
}

/** A length to a hundredth, without the dust of rounding. */
const mm = (ctx: Ask, si: number): string =>
  formatValue(Math.round(si * 1e5) / 1e5, 0, length.mm.unit, { mark: ctx.mark });

const WARM =
  'Warm it as it was: part untouched, bed at its printing heat for half an hour; then choose “as warm as it was” and measure. Nearly all of the shrinkage then drops out.';
const CURES: Readonly<Record<string, string>> = {
  H: 'Measure five places of the top and take the mean, or feel it with the nozzle.',
  Z_r: 'Feel the same place three times, coming down each time, with a steel leaf.',
  g_f: 'Take a steel feeler leaf instead of paper.',
  s: 'Feel the top with the nozzle instead: how far the first layer was pressed then drops out.',
  T_m: WARM,
  T_p: WARM,
  dT: 'Give the bed an hour at its printing heat, hood shut, and measure then.',
  alpha: WARM,
};

/** What would settle it: the weakest number first, and how well the top has to be known. */
function settleBy(ctx: Ask, fit: Fit): string[] {
  const lead = ctx.known(isGlue(ctx) ? 'x_2' : 'x')?.budget[0]?.symbol;
  const cure = lead === undefined ? undefined : CURES[lead];
  const room = (fit.allowed - Math.abs(fit.over)) * ctx.number('h');
  const need = room > 2e-6 ? [`It would be settled if the top were known to ± ${mm(ctx, room)}.`] : [];
  return [...(cure === undefined ? [] : [cure]), ...need];
}

const STAY =
  'Leave the part alone on the bed. If it has moved at all, or rocks, do not go on: print the rest as a second part.';
const HOME =
  'Motors were off: find X and Y again, and Z beside the part, never on it. First try the travel round the part with the nozzle 5 mm higher.';

function startUp(ctx: Ask): string[] {
  return [
    'Cut off strings and thin layers down to the sound one, and blow the chips away.',
    STAY,
    HOME,
    `Bed at its printing heat for half an hour, then the nozzle. Let it prime beside the part, wipe it, and start layer ${ctx.number('N_n')}; everything below is left out of the job.`,
    'Slowly for the first new layer, and 5 to 10 °C hotter: the joint is cold on one side and is the weakest of the part.',
  ];
}

function goOn(ctx: Ask): Instruction {
  const off = ctx.number('d');
  const step = `The top stands ${mm(ctx, Math.abs(off))} ${off >= 0 ? 'higher' : 'lower'} than its layer should: the first new layer comes out ${mm(ctx, Math.max(ctx.number('h_n'), 0))} thick instead of ${ctx.text('h')}.`;
  return {
    headline: `Go on with layer ${ctx.number('N_n')}, nozzle at Z = ${ctx.text('Z_n')}.`,
    steps: [step, ...startUp(ctx)],
    movements: [{ part: 'first new layer', direction: off >= 0 ? 'thinner' : 'thicker', amount: Math.abs(off) }],
  };
}

function fitsNone(ctx: Ask, fit: Fit): Instruction {
  const below = Math.floor(fit.nearest + fit.over);
  return {
    headline: `Do not start yet: the top lies between layers ${below} and ${below + 1} and fits neither.`,
    steps: [
      'Look for a blob or a curled corner where you measured, and for half a layer: the nozzle may have stopped in the middle of one. Cut back to a whole layer and measure again.',
      'Compare layer height and first layer with the job; layers of several heights cannot be counted like this.',
      `If it stays so: start layer ${below + 1} at Z = ${ctx.text('Z_a')} and shift all that follows by as much. The whole then ends off by the misfit.`,
    ],
    measureAgain: true,
  };
}

function notSettled(ctx: Ask, fit: Fit): Instruction {
  const exact = fit.nearest + fit.over;
  const [low, high] = [Math.round(exact - fit.doubt), Math.round(exact + fit.doubt)];
  const numbered = ctx.known('N') !== undefined || low === high;
  return {
    headline: numbered
      ? `Measure again before starting: layer ${fit.nearest + 1} comes next, but how well it fits is not settled.`
      : `Measure again before starting: the last layer may be any from ${Math.max(low, 0)} to ${high}.`,
    steps: [
      ...settleBy(ctx, fit),
      numbered
        ? `If a visible seam does not matter: layer ${fit.nearest + 1}, nozzle at Z = ${mm(ctx, ctx.number('h_1') + fit.nearest * ctx.number('h'))}.`
        : 'One layer too high leaves a gap that never closes; one too low drives the nozzle into the part. Do not guess.',
      STAY,
    ],
    measureAgain: true,
  };
}

function glueOn(ctx: Ask, fit: Fit, state: VerdictState): Instruction {
  const [layers, h] = [Math.max(fit.nearest, 1), ctx.number('h')];
  const left = (fit.nearest + fit.over - layers) * h;
  const first = ctx.number('h_1') + left;
  const whole = `The whole ends ${mm(ctx, Math.abs(left))} ${left > 0 ? 'too low' : 'too high'} with ${layers} whole layers.`;
  const odd =
    state !== 'beyond' || first <= 0
      ? []
      : [`A first layer of ${mm(ctx, first)} instead of ${ctx.text('h_1')} takes that up.`];
  const headline =
    state === 'too close'
      ? `Measure again if the height matters: the rest comes to ${ctx.text('H_2')}, about ${layers} layers.`
      : `Print the rest as a second part of ${ctx.text('H_2')}, ${layers} layers, and glue it on.`;
  return {
    headline,
    steps: [
      ...(state === 'too close' ? settleBy(ctx, fit) : []),
      `Cut the drawing at ${ctx.text('Z_k')} and print what lies above, cut face down.`,
      whole,
      ...odd,
      'Cut the torn layers off the first part, sand its top flat on a plate, and measure it after that, not before.',
      'Two dowels of filament in matching holes keep the halves from sliding. Try them dry; then glue, press and let it set under weight.',
    ],
    movements: [{ part: 'height of the whole', direction: left > 0 ? 'lower' : 'higher', amount: Math.abs(left) }],
    ...(state === 'too close' ? { measureAgain: true } : {}),
  };
}

/** Where to go on, or what to print instead, for every verdict. */
export function instruct(ctx: Ask): Instruction {
  // Asked first, so that a missing value is named.
  const exact = ctx.number(isGlue(ctx) ? 'x_2' : 'x');
  const fit = fitOf(ctx);
  if (!fit || exact < 0.5) {
    return {
      headline: isGlue(ctx)
        ? 'Check the heights: what is left above the part is less than a first layer.'
        : 'Check the height: it is less than half of a first layer.',
      steps: ['Compare with the drawing and the layer heights set.'],
      measureAgain: true,
    };
  }
  const state = judge(ctx);
  if (isGlue(ctx)) return glueOn(ctx, fit, state);
  if (state === 'within') return goOn(ctx);
  return state === 'beyond' ? fitsNone(ctx, fit) : notSettled(ctx, fit);
}
