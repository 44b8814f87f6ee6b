import { formatValue } from '../../quantity/format';
import { length } from '../../quantity/kinds';
import type { Instruction, VerdictState } from '../../engine/calculator';
import { advised, coins, hours, judged, percent, type Ask, type Judged } from './judging';

const open = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** A length to a tenth of a millimetre. */
const tenths = (ctx: Ask, si: number): string =>
  formatValue(Math.round(si * 1e4) / 1e4, 0, length.mm.unit, { mark: ctx.mark });

/** Whole layers between which the last sound one lies. */
function between(ctx: Ask): { low: number; high: number } {
  const sound = ctx.number('n_g');
  const known = ctx.known('n_g') ?? { low: sound, high: sound };
  // A whole number of layers, but for the dust of rounding.
  return { low: Math.max(Math.round(known.low - 0.4), 0), high: Math.max(Math.round(known.high + 0.4), 0) };
}

/** Where the last sound layer lies, as far as it is known. */
function place(ctx: Ask): string {
  const { low, high } = between(ctx);
  const z = (n: number): string => tenths(ctx, ctx.number('h_1') + (n - 1) * ctx.number('h'));
  if (low >= high) return `The last sound layer is number ${low}, at Z = ${z(low)}.`;
  return `The last sound layer lies between ${Math.max(low, 1)} and ${high}, Z = ${z(Math.max(low, 1))} to ${z(high)}.`;
}

const CAUSE =
  'Find the cause before anything else: strand broken or tangled, gear slipping, nozzle blocked. Feed 100 mm hot and look at it before a restart.';
const MEASURE =
  'Where exactly to go on is not to be had from times and weights: cut down to a sound, closed layer, measure its height, and take layer and Z from “Resume height”.';
const SPARE = 'What it has cost so far is spent whatever is done now: it does not count.';

function contradiction(ctx: Ask): Instruction | undefined {
  const [lost, sound] = [ctx.number('n_l'), ctx.number('n_g')];
  const doubt = (ctx.known('n_g')?.high ?? sound) - sound;
  const again = (headline: string, step: string): Instruction => ({ headline, steps: [step], measureAgain: true });
  if (ctx.number('n_t') < ctx.number('n_s') - 0.5) {
    return again(
      'Check the heights: it stopped above the height of the whole.',
      'Z at the stop counts from the bed, without any lift for a move.',
    );
  }
  if (lost < -Math.max(doubt, 0.5)) {
    return again(
      'Check the filament used: by it the part is higher than where the nozzle stopped.',
      'A broad foot, a rim or supports take more plastic than layers higher up: say so in the line “plastic in a layer so far”.',
    );
  }
  if (sound < Math.min(0.5, -doubt)) {
    return again(
      'Check the readings: by them nothing at all was printed.',
      'The gap, or the time without feed, is larger than all there was.',
    );
  }
  return undefined;
}

function missing(ctx: Ask): string {
  const lost = Math.max(ctx.number('n_l'), 0);
  return `about ${Math.round(lost)} layers, ${tenths(ctx, Math.max(ctx.number('z_l'), 0))}, are missing`;
}

function resumeSteps(ctx: Ask): string[] {
  return [
    place(ctx),
    ctx.choice('band') === 'left'
      ? 'Soak the thin band with thin glue, let it set, and cut off what stands above it.'
      : `Cut off the starved band, ${tenths(ctx, ctx.number('z_b'))} high or so, down to closed lines; the part must not move.`,
    CAUSE,
    MEASURE,
  ];
}

function glueSteps(ctx: Ask): string[] {
  return [
    place(ctx),
    'Saw off the starved layers, sand the top flat on a plate, and measure what is left.',
    'Take the second part’s height from “Resume height”, print it, try it dry, then glue.',
    CAUSE,
  ];
}

function anewSteps(ctx: Ask, all: readonly Judged[]): string[] {
  const price = (id: Judged['id']): string => coins(ctx, all.find((one) => one.id === id)?.cost ?? 0);
  const against = all.filter((one) => one.why !== '').map((one) => one.why);
  const costs = `A new one costs ${price('anew')}, work and risk counted; gluing ${price('glue')}${ctx.choice('stands') === 'off' ? '' : `, going on ${price('resume')}`}.`;
  return [costs, ...new Set(against), SPARE, CAUSE, `Weigh the spool: a new one takes ${ctx.text('m_a')}.`];
}

/** Why the verdict is open, and what would close it. */
function doubts(ctx: Ask): string[] {
  const steps: string[] = [];
  const joint = ctx.choice('stands') === 'stuck' ? 's_r' : 's_g';
  if (open(ctx.check(joint))) {
    steps.push(
      `Strength: the seam holds about ${percent(ctx.number(joint))} of a sound layer and ${percent(ctx.number('s_n'))} is wanted. Make two bars of this plastic with the same joint and break them by hand against a whole one.`,
    );
  }
  if (open(ctx.check('z_b'))) {
    steps.push('Band: cut into it with a knife at one corner and see how deep the open lines go.');
  }
  const cost = ctx.choice('stands') === 'stuck' ? 'C_r' : 'C_g';
  if (open(ctx.check(cost))) {
    steps.push(
      `Cost: ${coins(ctx, ctx.number(cost))} against ${coins(ctx, ctx.number('C_n'))} for a new one. Read the time left from the job instead of the layer time.`,
    );
  }
  return steps;
}

function carryOut(ctx: Ask, all: readonly Judged[]): Instruction {
  const best = advised(all);
  const time = hours(ctx, all.find((one) => one.id === best)?.time ?? 0);
  if (best === 'resume') {
    return {
      headline: `Go on with this part: ${missing(ctx)}; ${time} h to the end.`,
      steps: resumeSteps(ctx),
      movements: [
        { part: 'nozzle, to the last sound layer', direction: 'down', amount: Math.max(ctx.number('z_l'), 0) },
      ],
    };
  }
  if (best === 'glue') {
    return {
      headline: `Cut it flat, print the rest as a second part and glue it on: ${missing(ctx)}; ${time} h to the end.`,
      steps: glueSteps(ctx),
    };
  }
  return { headline: `Print it again: ${missing(ctx)}, and saving it does not pay.`, steps: anewSteps(ctx, all) };
}

/** What to do with the part, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  const wrong = contradiction(ctx);
  if (wrong) return wrong;
  const all = judged(ctx);
  const plan = carryOut(ctx, all);
  if (ctx.verdict !== 'too close') return plan;
  return {
    headline: `Whether the seam is worth it is too close to call: ${missing(ctx)}. Surely right is: ${SURE[advised(all)]}.`,
    steps: [...doubts(ctx), ...plan.steps],
    ...(plan.movements ? { movements: plan.movements } : {}),
  };
}

const SURE: Readonly<Record<Judged['id'], string>> = {
  resume: 'go on with it',
  glue: 'cut it, print the rest and glue it on',
  anew: 'print it again',
};
