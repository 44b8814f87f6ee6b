import type { Context, Instruction } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'T_d' | 'T_s' | 'dT_d' | 'T_o' | 'U_s' | 'rho_v' | 'U_b' | 'U_lim' | 'T_b' | 'dT' | 'dg' | 'dg_lim'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

/** From here on bare steel rusts in the open: ISO 9223 counts the hours above 80 % as wet (from memory). */
const RUST = 0.8;
/** 0 °C, K. */
const FREEZING = 273.15;

function cold(ctx: Ask): Instruction {
  const above = ctx.number('dT_d');
  const wait = ctx.text('T_o');
  const frost =
    ctx.number('T_d') < FREEZING
      ? ['The dew point lies below freezing: frost instead of dew, and up to 1 K sooner than shown.']
      : [];
  if (ctx.verdict === 'within') {
    const rust =
      ctx.number('U_s') > RUST
        ? ['Bare steel rusts at this humidity even without drops: oil the screws and rods thinly, or warm it further.']
        : [];
    return {
      headline: `Unwrap it: its surface is ${ctx.text('dT_d')} above the dew point of ${ctx.text('T_d')}.`,
      steps: [
        ...rust,
        'Let it come to room temperature all the same before tramming: it still grows while it warms.',
        ...frost,
      ],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: `Leave it wrapped until its surface has ${wait}: whether this air wets it now is too close to call.`,
      steps: [
        'Read air, humidity and surface again, each with its tool left there for ten minutes. The hygrometer is usually the weakest.',
        'A mirror or a piece of sheet metal as cold as it shows dew first: lay one beside it.',
      ],
      measureAgain: true,
    };
  }
  const wet = above < 0;
  return {
    headline: wet
      ? `Leave it wrapped and switched off: unwrapped now, it gets wet. Wait until its surface has ${wait}.`
      : `Leave it wrapped until its surface has ${wait}: it is too near the dew point.`,
    steps: [
      'Bring it to room temperature first, in its closed bag or under a sheet taped shut: the water then settles outside.',
      'Spools stay in their bag; a strand with dew on it takes the water in.',
      'A bed already in the machine: wipe it dry, then warm it with its own heater before the first layer, once the electronics are dry.',
      'Or make the air drier: what counts is the dew point, so heating the room alone does not help, airing in frost does.',
      ...frost,
    ],
    movements: [{ part: 'surface', direction: 'warmer', amount: Math.max(ctx.number('T_o') - ctx.number('T_s'), 0) }],
  };
}

function box(ctx: Ask): Instruction {
  const [inside, most, enough] = [ctx.text('U_b'), ctx.text('U_lim'), ctx.text('T_o')];
  const dry = 'Fresh desiccant in a shut box dries further than heat; a warm box with a vent keeps to this figure.';
  if (ctx.verdict === 'within') {
    return {
      headline: `Keep the box at ${ctx.text('T_b')}: the room’s air has ${inside} in it, no more than the ${most} wanted.`,
      steps: [
        'Let it breathe: a wet spool in a shut box makes its own damp.',
        'A damp spell raises it in proportion; look at the hygrometer again then.',
      ],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: `Put a hygrometer inside the box: whether ${inside} stays below ${most} is too close to call.`,
      steps: [dry, `At ${enough} by this reading the air is just dry enough.`],
      measureAgain: true,
    };
  }
  return {
    headline: `Warm the box to ${enough}, or dry its air: at ${ctx.text('T_b')} the room’s air has ${inside} in it, and ${most} is wanted.`,
    steps: ['Stay below the temperature at which the material or its spool goes soft.', dry],
    movements: [{ part: 'box', direction: 'warmer', amount: Math.max(ctx.number('T_o') - ctx.number('T_b'), 0) }],
  };
}

function swing(ctx: Ask): Instruction {
  const gap = ctx.number('dg');
  const [moved, allowed, swung] = [ctx.text('dg', { magnitude: true }), ctx.text('dg_lim'), ctx.text('dT')];
  const habit = 'Tram and set Z zero with the machine warmed through, as it prints: bed on for half an hour or more.';
  if (ctx.verdict === 'within') {
    return {
      headline: `Leave Z zero: the gap moves by ${moved} over a swing of ${swung}, within the ${allowed} allowed.`,
      steps: [habit, 'If the first layer still changes over the day, the day’s warmth is not the reason.'],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: `Read the frame’s temperature better before touching Z zero: a change of ${moved} against ${allowed} is too close to call.`,
      steps: [
        'Hold the sensor to an upright for ten minutes, at both ends of the day.',
        'Or measure the gap itself with a feeler, cold in the morning and warm in the evening.',
      ],
      measureAgain: true,
    };
  }
  const wider = gap > 0;
  return {
    headline: `Set Z zero again for printing at this temperature: the gap is ${moved} ${wider ? 'wider' : 'narrower'} than when it was set.`,
    steps: [
      `Bring nozzle and bed ${moved} ${wider ? 'nearer to' : 'farther from'} each other, then prove it with a feeler. The bed’s screws stay as they are: both sides move alike.`,
      habit,
      'Tram again at the other end of the day, or note both settings and take the one that fits.',
      'Keep the machine off the outer wall, out of the sun and away from the radiator; a hood halves the swing.',
      'Finding zero on the bed itself, just before the print, takes this change away.',
    ],
    movements: [{ part: 'Z zero', direction: wider ? 'nearer' : 'farther', amount: Math.abs(gap) }],
  };
}

/** What to do about the air, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  const ask = ctx.choice('ask');
  if (ask === 'swing') return swing(ctx);
  return ask === 'box' ? box(ctx) : cold(ctx);
}
