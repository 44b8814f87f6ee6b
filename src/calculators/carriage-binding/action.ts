import type { Context, Instruction, Movement, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'q' | 'q_e' | 'q_lim' | 'd' | 'd_b' | 'd_m' | 'L_m' | 'x_d' | 'x_L' | 'mu' | 'e' | 's' | 's_0' | 'dx' | 'dx_0'
  | 'N_c' | 'F_c' | 'F' | 'F_m' | 'F_t' | 'R' | 'k_F' | 'L'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** What goes on this guide, and what does not. */
const CARE: Readonly<Record<keyof (typeof choices)['pair']['options'], string>> = {
  bronze:
    'Wipe the rod and give each bush a drop of thin mineral oil, no grease; run it end to end ten times and wipe off the rest.',
  filled: 'Wipe the rod and leave the bushes dry: oil and grease hold dust and swell some plastics.',
  polyacetal: 'Wipe the rod; a thin film of PTFE or silicone grease is right, mineral oil does little.',
  printed: 'A thin film of PTFE grease helps for a while; bushes of sintered bronze or filled plastic are the cure.',
  balls:
    'Wash the balls out, then light bearing grease into them; a ball bush that still catches is worn: replace it. Oil is for short strokes only.',
  wheels:
    'No lubricant on wheels or rail: wipe both with a dry cloth. A drop of thin oil belongs in a dry bearing alone.',
  stuck:
    'Find the wheel that slides: mark each with a pen and roll. Clean or replace its bearing, or ease its eccentric bush. No lubricant on wheels or rail.',
};

/** In the order of effort: clean, free a side, square, move the drive, lengthen. */
function cure(ctx: Ask): string[] {
  return [`First, motors off: ${CARE[ctx.choice('pair')]}`, freeing(ctx), ...squaring(ctx), ...reshaping(ctx)];
}

function freeing(ctx: Ask): string {
  const far = ctx.choice('drive') === 'one' ? 'farther from the drive' : 'that does not set the line';
  return `On two rods or rails leave one tight and free the other, the one ${far}: slacken its holders a quarter turn, run the carriage to one end and tighten there, then the other end.`;
}

/** Only where the gantry is forced out of square by more than the play. */
function squaring(ctx: Ask): string[] {
  if (ctx.number('N_c') <= 0) return [];
  return [
    `Square the gantry: one end is ${ctx.text('dx')} ahead, the play allows ${ctx.text('dx_0')}. Slacken the drive of the end that leads, push that end back until both are alike, tighten. The clamping costs ${ctx.text('F_c')}.`,
  ];
}

function reshaping(ctx: Ask): string[] {
  if (!doubtful(ctx.check('q'))) return [];
  if (ctx.choice('drive') === 'both') {
    return [
      `Let the sides pull so that they cancel: ${ctx.text('s_0')} on the left instead of ${ctx.text('s')}. Equal belt tension, pulleys tight on their shafts, both drives started from the same stop.`,
      `Or spread the guide: with all the pull on one side the drive would have to stand within ${ctx.text('d_m')} of it.`,
    ];
  }
  return [
    `Move the drive’s point to within ${ctx.text('d_m')} of the guide: it stands at ${ctx.text('d')}.`,
    `Or lengthen the guide to ${ctx.text('L_m')}: a second bush or wheel farther along, outer ends that far apart. It has ${ctx.text('L')}.`,
    'Or drive both sides of the guide, tied by a shaft or one belt.',
  ];
}

function movementsOf(ctx: Ask): Movement[] {
  const found: Movement[] = [];
  if (doubtful(ctx.check('q'))) {
    if (ctx.choice('drive') === 'both') {
      const direction = ctx.number('d') > 0 ? 'more on the right' : 'more on the left';
      found.push({ part: 'share of the pull', direction, amount: Math.abs(ctx.number('s') - ctx.number('s_0')) });
    } else if (ctx.number('x_d') > 0) {
      found.push({ part: 'drive’s point', direction: 'towards the guide', amount: ctx.number('x_d') });
    }
  }
  const ahead = ctx.number('dx') - ctx.number('dx_0');
  if (ctx.number('N_c') > 0 && ahead > 0) {
    found.push({ part: 'leading end of the gantry', direction: 'back', amount: ahead });
  }
  return found;
}

function binds(ctx: Ask): Instruction {
  const movements = movementsOf(ctx);
  const share = ctx.text('q', { magnitude: true });
  const bound = Math.abs(ctx.number('q')) >= 1;
  const what = bound
    ? `it binds at an offset of ${ctx.text('d_b')} and is pushed at ${ctx.text('d', { magnitude: true })}`
    : `friction eats ${share} of the push, allowed ${ctx.text('q_lim')}`;
  const todo =
    ctx.choice('drive') === 'both'
      ? `Bring more of the pull to the ${ctx.number('d') > 0 ? 'right' : 'left'}`
      : `Move the drive ${ctx.text('x_d')} towards the guide, or lengthen the guide by ${ctx.text('x_L')}`;
  const steps = cure(ctx);
  if (bound)
    steps.push(
      'More force does not help: what binds by its offset binds at any force. Do not raise the motor’s current.',
    );
  return { headline: `${todo}: ${what}.`, steps, movements };
}

function hangsUp(ctx: Ask): Instruction {
  const why =
    Math.abs(ctx.number('q_e')) < 1
      ? `friction eats ${ctx.text('q_e', { magnitude: true })} of its weight on the way down`
      : 'it hangs by its own friction on the way down';
  return {
    headline: `Support it, then bring its mass to within ${ctx.text('d_m')} of the guide: ${why}.`,
    steps: [
      `Its mass centre stands ${ctx.text('e', { magnitude: true })} out. It may hang where it is, then drop all at once.`,
      ...cure(ctx),
      'Or lengthen the guide in the same proportion.',
    ],
    movements: movementsOf(ctx),
  };
}

function tooHeavy(ctx: Ask): Instruction {
  const clamped = ctx.number('F_c') > ctx.number('R') / 4;
  const needs = `it needs ${ctx.text('F')} of the drive’s ${ctx.text('F_m')}`;
  return {
    headline: clamped
      ? `Square the gantry before anything else: clamped in its guide, ${needs}.`
      : `Leave the guide; lower the acceleration or the mass: ${needs}.`,
    steps: [
      ...cure(ctx),
      `Without the offset it would need ${ctx.text('R')}; the offset makes that ${ctx.text('k_F')} times as much.`,
    ],
    movements: movementsOf(ctx),
  };
}

function unsettled(ctx: Ask): Instruction {
  const steps =
    ctx.choice('by') === 'pair'
      ? [
          'Pull it with a luggage scale, motors and belt off: once in the guide’s line, once as far out as it still moves, and choose the two pulls as the source of the friction.',
        ]
      : ['Repeat both pulls five times at the same slow speed; take the far one farther out.'];
  steps.push(
    `It would bind at ${ctx.text('d_b')}; the drive stands at ${ctx.text('d', { magnitude: true })}.`,
    `Meanwhile, motors off: ${CARE[ctx.choice('pair')]}`,
  );
  return { headline: 'Leave the drive where it is and measure: it is too close to call.', steps, measureAgain: true };
}

/** What the hand does, for every state of the checks; binding comes first. */
export function instruct(ctx: Ask): Instruction {
  if (ctx.number('mu') <= 0) {
    return {
      headline: 'Pull again: the pull far out must be the larger.',
      steps: ['Same slow speed, same side of the guide, hook at right angles to nothing: straight along the travel.'],
      measureAgain: true,
    };
  }
  if (ctx.check('q') === 'beyond') return binds(ctx);
  if (ctx.check('q_e') === 'beyond') return hangsUp(ctx);
  // Bound by its best value, though the doubt reaches back: no force to name.
  if (ctx.check('F_t') === 'beyond') return Math.abs(ctx.number('q')) < 1 ? tooHeavy(ctx) : binds(ctx);
  if (ctx.verdict !== 'within') return unsettled(ctx);
  return {
    headline: `Leave the guide: friction eats ${ctx.text('q', { magnitude: true })} of the push, and the drive has force to spare.`,
    steps: [
      `It would bind at an offset of ${ctx.text('d_b')}; the drive stands at ${ctx.text('d', { magnitude: true })}. It needs ${ctx.text('F')}.`,
      'If it sticks all the same, look for a bent rod, a guide out of parallel, or dirt: push it along and feel where.',
      CARE[ctx.choice('pair')],
    ],
  };
}
