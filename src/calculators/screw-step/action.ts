import { length, torque } from '../../quantity/kinds';
import type { ChoiceSpec, Context, Instruction, Movement } from '../../engine/calculator';
import { patternOf, type Pattern } from './model';
import { printPlain } from './print';

type Symbols = 'h' | 'q' | 'q_m' | 'g' | 'm' | 'e' | 'tau_h' | 'tau_f' | 'tau_inc' | 'e_lim' | 'k_h' | 'x_f' | 'x_a' | 's'; // prettier-ignore
type Ask = Pick<Context<Symbols, Readonly<Record<string, ChoiceSpec>>>, 'number' | 'text' | 'check' | 'mark'>;
type Grid = 'full' | 'micro';

/** Length and torque in words, as the person writes decimals; the rough ones to three digits. */
function printers(ctx: Ask) {
  return {
    mm: (si: number) => printPlain(si, length.mm, ctx.mark),
    about: (si: number) => printPlain(si, length.mm, ctx.mark, 3),
    torque: (si: number) => printPlain(si, torque.N_mm, ctx.mark, 3),
  };
}

/** The pattern in words: how often an odd layer comes and when it all begins again. `mm` prints a length. */
function patternWords(pattern: Pattern, h: number, mm: (si: number) => string): string {
  const { repeat, period, oddEvery } = pattern;
  if (oddEvery === undefined) return 'No layer is rounded.';
  if (repeat === undefined || period === undefined) {
    return `An odd layer comes about every ${mm(oddEvery)}, without a regular repeat: if the ridges on the wall are spaced otherwise, rounding is not their cause.`;
  }
  const spacing = `The pattern repeats every ${repeat} layers, ${mm(period)}`;
  const inside = Math.round(oddEvery / h) === repeat ? '' : `, with an odd layer about every ${mm(oddEvery)}`;
  return `${spacing}${inside}: if the ridges on the wall are spaced otherwise, rounding is not their cause.`;
}

function frictionWords(ctx: Ask): string {
  const oneStep = printers(ctx).torque(ctx.number('tau_inc'));
  return ctx.number('tau_f') > ctx.number('tau_inc')
    ? `Friction (${ctx.text('tau_f')}) is more than one microstep of lag makes (${oneStep}): it swallows single microsteps, and a finer setting gains nothing.`
    : `One microstep of lag makes ${oneStep}, more than the friction of ${ctx.text('tau_f')}: every microstep moves.`;
}

/** Friction at which the smallest reliable move is what is allowed, N·m. */
function mostFriction(ctx: Ask): number {
  return ctx.number('tau_h') * Math.sin((Math.PI / 2) * Math.min(1, ctx.number('e_lim') / ctx.number('q')));
}

function freeing(ctx: Ask): string {
  return `Bring the friction at the motor below ${printers(ctx).torque(mostFriction(ctx))}: clean and grease the drive, let the nut or belt align itself, ease over-tight guides, look for a bent screw.`;
}

/** What microsteps would leave of the rounding, where they leave little enough. */
function leftByMicrosteps(ctx: Ask, grid: Grid): string | undefined {
  const finest = patternOf(ctx.number('h'), ctx.number('q_m')).largest;
  if (grid !== 'full' || ctx.number('m') <= 1 || finest > ctx.number('e_lim')) return undefined;
  return finest === 0 ? 'no layer is rounded' : `no layer is off by more than ${printers(ctx).about(finest)}`;
}

/** No whole step lies near enough to the layer: the drive has to change, not the layer. */
function tooCoarse(ctx: Ask, grid: Grid, pattern: Pattern): Instruction {
  const [h, g] = [ctx.number('h'), ctx.number('g')];
  const { mm, about } = printers(ctx);
  const kept = leftByMicrosteps(ctx, grid);
  const full = grid === 'full';
  const finest = 2 * ctx.number('k_h') * h;
  const ratio = Number((Math.ceil((g / finest) * 10) / 10).toFixed(1));
  const whole = pattern.below === undefined ? mm(pattern.above) : `${mm(pattern.below)} and ${mm(pattern.above)}`;
  return {
    headline: `Leave the layer height: one of the ${full ? 'full steps' : 'microsteps'} is too coarse for it. ${
      full ? 'Hold microsteps' : 'Set more microsteps'
    }, gear down or use a smaller lead.`,
    steps: [
      `The whole steps nearest to ${mm(h)} are at ${whole}.`,
      ...(kept === undefined ? [] : [`Where the driver keeps its current on and holds microsteps, ${kept}.`]),
      `Gearing down ${String(ratio).replace('.', ctx.mark === 'comma' ? ',' : '.')} times or more, or a lead or pinion smaller by as much, brings a step down to ${about(finest)}: then a whole one lies near any such layer.`,
      frictionWords(ctx),
      patternWords(pattern, h, about),
    ],
  };
}

function changeHeight(ctx: Ask, grid: Grid, pattern: Pattern): Instruction {
  const h = ctx.number('h');
  const { mm, about } = printers(ctx);
  const steps = grid === 'full' ? 'full steps' : 'microsteps';
  const { below, above } = pattern;
  const lower = below !== undefined && h - below <= above - h;
  const nearer = lower ? below : above;
  const by = Math.abs(nearer - h);
  // A share met exactly is allowed, whatever a float makes of it.
  if (by > ctx.number('k_h') * h * (1 + 1e-9)) return tooCoarse(ctx, grid, pattern);
  const movement: Movement = { part: 'layer height', direction: lower ? 'down' : 'up', amount: by };
  const other = lower ? above : below;
  const kept = leftByMicrosteps(ctx, grid);
  return {
    headline: `Set the layer height to ${mm(nearer)}, ${mm(by)} ${lower ? 'lower' : 'higher'}: a whole number of ${steps}.`,
    steps: [
      other === undefined
        ? `There is no whole step below: one of the ${steps} is ${ctx.text('g')}.`
        : `${mm(other)} will do as well: ${mm(Math.abs(other - h))} ${lower ? 'higher' : 'lower'}.`,
      'Keep the layer below about three quarters of the nozzle bore (common practice).',
      patternWords(pattern, h, about),
      ...(kept === undefined
        ? []
        : [
            `Leave the height alone if the driver keeps its current on and holds microsteps: then ${kept}. ${frictionWords(ctx)}`,
          ]),
    ],
    movements: [movement],
  };
}

/** What to do about the layer height and the drive, for every state of the two checks. */
export function instruct(ctx: Ask, grid: Grid): Instruction {
  const h = ctx.number('h');
  // Asked first, so that a missing value is named whatever the checks say.
  for (const symbol of ['q', 'q_m', 'm', 'tau_h', 'e_lim', 'tau_inc'] as const) ctx.number(symbol);
  const rounding = ctx.check('s');
  const friction = ctx.check('x_f');
  const stuck = friction === 'beyond' || friction === 'none';
  if (rounding === 'beyond') {
    const found = changeHeight(ctx, grid, patternOf(h, ctx.number('g')));
    return stuck ? { ...found, steps: [...found.steps, `Friction is too high as well. ${freeing(ctx)}`] } : found;
  }
  if (stuck) {
    const headline =
      friction === 'none'
        ? 'Free the Z drive before anything else: its friction may be more than the motor can hold.'
        : `Free the Z drive: friction lets it rest up to ${ctx.text('x_f')} from where it should, whatever the layer height.`;
    return {
      headline,
      steps: [
        freeing(ctx),
        'Check that the driver gives the motor the current it is rated for; less current means less holding torque in proportion. More than rated overheats it.',
        frictionWords(ctx),
      ],
      movements: [
        {
          part: 'friction of the Z drive',
          direction: 'down',
          amount: Math.max(0, ctx.number('tau_f') - mostFriction(ctx)),
        },
      ],
    };
  }
  if (rounding !== 'within') {
    return {
      headline: 'Change nothing yet: enter the drive and the layer height as marked, without a ±.',
      steps: [
        'Rounding follows from the nominal values that the controller counts with. A lead or a height with an uncertainty cannot tell whether a layer is a whole number of steps.',
      ],
    };
  }
  if (friction === 'too close') {
    return {
      headline: 'Leave the layer height; measure the friction at the motor better before freeing anything.',
      steps: ['The reading does not tell whether friction takes too much of a layer.', freeing(ctx)],
    };
  }
  const pattern = patternOf(h, ctx.number('g'));
  const exact = pattern.repeat === 1;
  return {
    headline: exact
      ? `Leave it: every layer is a whole number of ${grid === 'full' ? 'full steps' : 'microsteps'}.`
      : `Leave it: no layer is off by more than ${ctx.text('e')}, too little to matter.`,
    steps: [
      ...(exact ? [] : [patternWords(pattern, h, printers(ctx).about)]),
      frictionWords(ctx),
      `The motor’s own error, up to ${ctx.text('x_a')} either way, remains at any height.`,
    ],
  };
}
