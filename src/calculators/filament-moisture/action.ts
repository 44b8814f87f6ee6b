import type { Known } from '../../formula/outcome';
import { formatNumber } from '../../quantity/format';
import type { Context, Instruction } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 't_q' | 't' | 'T_b' | 'T_max' | 'T_g' | 'u_e' | 'u_max' | 'U_b' | 'q' | 'W_e'
  | 'W_o' | 'W_lim' | 'q_t' | 'w_l' | 'W_2' | 'W_0'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

const HOUR = 3600;
/** From here on days are easier to grasp than hours. */
const LONG = 72 * HOUR;
const WEIGH =
  'Weigh it warm from the oven every hour or two, on the same scale: it is done when two weighings in a row agree.';
const AWAY = 'Put it into a shut bag with desiccant at once: it takes water up again from the first hour.';

/** A time to two digits: the band is wide. */
function timeText(seconds: number, ctx: Ask): string {
  if (seconds >= LONG) return `${formatNumber(seconds / (24 * HOUR), 2, ctx.mark)} days`;
  return `${formatNumber(seconds / HOUR, 2, ctx.mark)} h`;
}

const ends = (known: Known | undefined, value: number): readonly [number, number] =>
  known ? [Math.max(known.low, 0), known.high] : [value, value];

/** "0.4 to 9 h". */
function timeBand(ctx: Ask): string {
  const [low, high] = ends(ctx.known('t_q'), ctx.number('t_q'));
  return `${timeText(low, ctx)} to ${timeText(high, ctx)}`;
}

function shareBand(symbol: 'W_o' | 'W_2', ctx: Ask): string {
  const [low, high] = ends(ctx.known(symbol), ctx.number(symbol));
  return `${formatNumber(100 * low, 2, ctx.mark)} to ${formatNumber(100 * high, 2, ctx.mark)} %`;
}

function tooHot(ctx: Ask): Instruction | undefined {
  const state = ctx.check('T_b');
  if (state === 'within' || state === 'none') return undefined;
  if (state === 'too close') {
    return {
      headline: `Measure the air beside the spool before drying: whether ${ctx.text('T_b')} stays below ${ctx.text('T_max')} is too close to call.`,
      steps: [
        'Hang a probe where the filament will be and watch it through several swings of the oven; type the swing after ±.',
        'Or set it 10 K lower and dry longer: a strand that has gone oval or stuck to its neighbour is scrap.',
      ],
      measureAgain: true,
    };
  }
  return {
    headline: `Turn the oven down to ${ctx.text('T_max')} or less: this filament goes soft at ${ctx.text('T_g')}.`,
    steps: [
      'Soft strands go oval and stick to each other, and a wound spool pulls itself tight.',
      'Cooler means longer: look at the time again with the lower temperature.',
    ],
    movements: [{ part: 'oven', direction: 'cooler', amount: Math.max(ctx.number('T_b') - ctx.number('T_max'), 0) }],
  };
}

function tooDamp(ctx: Ask): Instruction | undefined {
  const state = ctx.check('u_e');
  if (state === 'within' || state === 'none') return undefined;
  if (state === 'too close') {
    return {
      headline: 'Put a hygrometer into the oven: whether its air is dry enough is too close to call.',
      steps: [`Worked out: ${ctx.text('U_b')}; that holds ${ctx.text('u_e')} of the water back.`, WEIGH],
      measureAgain: true,
    };
  }
  return {
    headline: `Dry the air first: at ${ctx.text('T_b')} the room’s air has ${ctx.text('U_b')} and holds ${ctx.text('u_e')} of the water back, however long it lasts.`,
    steps: [
      `Warmer, if ${ctx.text('T_max')} is not yet reached; or fresh desiccant in a shut box; or a day with drier air.`,
      'A vent lets the water out: a shut oven with a wet spool makes its own damp.',
    ],
  };
}

function dry(ctx: Ask): Instruction {
  const found = tooHot(ctx) ?? tooDamp(ctx);
  if (found) return found;
  const [low, high] = ends(ctx.known('t_q'), ctx.number('t_q'));
  const set = ctx.number('t');
  const [time, warm] = [timeText(set, ctx), ctx.text('T_b')];
  const band = `${timeBand(ctx)} leave ${ctx.text('q')} of what this oven can take out, by the slowest and fastest rates published.`;
  if (ctx.verdict === 'within') {
    return {
      headline: `Dry it for ${time} at ${warm}: enough even by the slowest rate published.`,
      steps: [band, 'Weigh it before and after all the same: the loss is the proof.', AWAY],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: `Dry it for ${time} at ${warm}, then let the scale decide: what is known of this plastic does not settle the time.`,
      steps: [band, WEIGH, AWAY],
      measureAgain: true,
    };
  }
  return {
    headline: `Dry it longer than ${time}: at ${warm} it takes ${timeBand(ctx)}.`,
    steps: [
      `Start with ${timeText(low, ctx)}, then go by the scale.`,
      WEIGH,
      'Loose coils dry sooner than a wound spool.',
      AWAY,
    ],
    movements: [{ part: 'drying time', direction: 'longer', amount: Math.max(high - set, 0) }],
  };
}

function stored(ctx: Ask): Instruction {
  const band = `${shareBand('W_o', ctx)} of its mass by now; ${ctx.text('W_lim')} is allowed.`;
  if (ctx.verdict === 'within') {
    return { headline: 'Print from it: it cannot have taken up too much yet.', steps: [`Water: ${band}`, AWAY] };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: 'Listen to it, or weigh it, before a long print: whether it is too wet is too close to call.',
      steps: [
        `Water: ${band}`,
        'Feed 10 cm into the air: hissing, popping or a foamy strand means wet.',
        'Weighed before and after drying, a loose strand of 10 g on a 0.001 g scale tells 0.02 %.',
      ],
      measureAgain: true,
    };
  }
  return {
    headline: 'Dry it before printing: even by the slowest rate published it took up too much.',
    steps: [`Water: ${band}`, 'Change the question above to the time of drying.'],
    movements: [{ part: 'water in the filament', direction: 'less', amount: ctx.number('W_o') - ctx.number('W_lim') }],
  };
}

function weighed(ctx: Ask): Instruction {
  const [had, left] = [ctx.text('W_0'), shareBand('W_2', ctx)];
  if (ctx.number('w_l') <= 0) {
    return {
      headline: 'Weigh again: it did not get lighter, so nothing is shown.',
      steps: [
        'Nothing dried, or the scale is too coarse: 0.1 % of 1 kg is 1 g.',
        'Weigh a loose strand on a jeweller’s scale, and touch nothing but the strand in between.',
      ],
      measureAgain: true,
    };
  }
  if (ctx.verdict === 'within') {
    return {
      headline: `Stop drying: it had ${had} of water, and ${left} are left, less than allowed.`,
      steps: [AWAY],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: 'Dry it for the same time again and weigh again: whether it is dry enough is too close to call.',
      steps: [
        `Left by this weighing: ${left}; allowed ${ctx.text('W_lim')}.`,
        'If the second drying takes out less than a tenth of the first, it is done.',
        'A finer scale, or a heavier piece on the same one, narrows it.',
      ],
      measureAgain: true,
    };
  }
  return {
    headline: `Dry it again, for the same time or longer: ${left} of water are left, ${ctx.text('W_lim')} is allowed.`,
    steps: [WEIGH, AWAY],
    movements: [{ part: 'water in the filament', direction: 'less', amount: ctx.number('W_2') - ctx.number('W_lim') }],
  };
}

/** What to do about the filament, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  const ask = ctx.choice('ask');
  if (ask === 'store') return stored(ctx);
  return ask === 'weigh' ? weighed(ctx) : dry(ctx);
}
