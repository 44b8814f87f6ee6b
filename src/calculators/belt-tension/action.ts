import type { Context, Instruction, Movement, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'T' | 'T_0' | 'T_h' | 'T_lo' | 'T_hi' | 'T_aim' | 'L' | 'L_min' | 'epsilon' | 's' | 'dT' | 'dx' | 'psi' | 'y'
  | 'f_lo' | 'f_hi' | 'f_aim' | 'F_lo' | 'F_hi' | 'F_aim'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** What to do about the input that adds most to the doubt of the tension. */
const CURES: Readonly<Record<string, string>> = {
  m_0: 'Weigh a known length of this belt, two metres or more, instead of taking the table’s mass.',
  m_s: 'Weigh a longer piece, or on a finer scale.',
  l_s: 'Measure the piece weighed again, with a tape under light pull.',
  mu_1: 'Weigh a known length of this belt: the mass per metre is the weakest number.',
  w: 'Measure the belt’s width with a caliper.',
  f: 'Pluck five times and take the middle note.',
  L_1: 'Measure the free span again, from tangent point to tangent point.',
  L_2: 'Measure the free span again, from tangent point to tangent point.',
  EI: 'Measure the droop again: the bending stiffness is the weakest number here. Or bring the carriage where the span is longer.',
  F: 'Read the force with a finer scale, mean of five.',
  y: 'Read the deflection with a caliper against a straightedge.',
  C_0: 'Press less far: the stretch that pressing adds is the weakest number here.',
  L_t1: 'Measure the belt from clamp to clamp.',
  L_t2: 'Measure the belt from clamp to clamp.',
};

function cure(ctx: Ask): string {
  const first = ctx.known('T')?.budget[0]?.symbol;
  return (first === undefined ? undefined : CURES[first]) ?? 'Repeat the reading five times and take the mean.';
}

/** The model does not hold for this span, this stiffness or this deflection: nothing to turn. */
function outsideModel(ctx: Ask): Instruction | undefined {
  const measureAgain = true;
  if (ctx.choice('by') === 'press' && doubtful(ctx.check('s'))) {
    return {
      headline: 'Leave the tensioner: press less far and read again.',
      steps: [
        `A deflection of ${ctx.text('s')} of the span stretches the belt itself; a sixtieth of the span is usual.`,
      ],
      measureAgain,
    };
  }
  const longer =
    'Bring the carriage where this strand is longest, or take another strand of the same belt: the pull is the same all along a belt at rest.';
  if (doubtful(ctx.check('L'))) {
    const [span, least] = [ctx.text('L'), ctx.text('L_min')];
    return {
      headline: `Leave the tensioner: a free span of ${span} is too short for this check, which wants ${least} or more.`,
      steps: [
        longer,
        ...(ctx.choice('by') === 'note' ? ['If there is no longer one, count its bending stiffness.'] : []),
      ],
      measureAgain,
    };
  }
  if (!doubtful(ctx.check('epsilon'))) return undefined;
  return {
    headline: 'Leave the tensioner: this span is too stiff for its note to tell the tension.',
    steps: [longer, 'Or press its middle and read the force.'],
    measureAgain,
  };
}

function noRoom(ctx: Ask): Instruction {
  return {
    headline: 'Leave the tensioner: at this acceleration no tension suits this belt.',
    steps: [
      `To stay taut it would need ${ctx.text('T_lo')}, and it may carry ${ctx.text('T_hi')} at rest.`,
      'Lower the acceleration, take mass off, or fit a wider or stronger belt.',
    ],
  };
}

/** A note an octave off is four times the tension: said where that alone would explain the verdict. */
function octave(ctx: Ask, slack: boolean): string[] {
  if (ctx.choice('by') !== 'note') return [];
  const [low, high] = [ctx.number('T_lo'), ctx.number('T_hi')];
  const explains = (tension: number): boolean => tension >= low && tension <= high;
  if (!slack && explains(ctx.number('T_h'))) {
    return [
      'First make sure of the note: if it is the octave, half of it is right and the tension too. Pluck at the very middle, which hardly sounds the octave.',
    ];
  }
  if (slack && explains(4 * ctx.number('T_0'))) {
    return [
      'First make sure of the note: if the true one is twice as high, the tension is right. Hum or a fan near half the note misleads: switch them off and pluck again.',
    ];
  }
  return [];
}

/** Where to stop, in what is read. */
function until(ctx: Ask): string {
  if (ctx.choice('by') === 'note') {
    return `Pluck again after each step: aim at ${ctx.text('f_aim')}, anything from ${ctx.text('f_lo')} to ${ctx.text('f_hi')} will do.`;
  }
  return `Press to the same ${ctx.text('y')} after each step: aim at ${ctx.text('F_aim')} on the scale, anything from ${ctx.text('F_lo')} to ${ctx.text('F_hi')} will do.`;
}

const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

function adjust(ctx: Ask, slack: boolean): Instruction {
  const verb = slack ? 'Tighten' : 'Slacken';
  const why = slack ? 'The belt is too slack' : 'The belt is too tight';
  const adjuster = ctx.choice('adjuster');
  let way: string;
  let movement: Movement;
  if (adjuster === 'slide') {
    const direction = slack ? 'outwards' : 'inwards';
    way = `slide the motor or idler ${direction} by about ${ctx.text('dx', { magnitude: true })}`;
    movement = { part: 'motor or idler', direction, amount: Math.abs(ctx.number('dx')) };
  } else {
    const direction = slack ? adjuster : opposite[adjuster];
    way = `turn the tensioner’s screw ${direction}, seen from its head, by about ${ctx.text('psi', { magnitude: true })}`;
    movement = { part: 'tensioner’s screw', direction, amount: Math.abs(ctx.number('psi')) };
  }
  const hold = adjuster === 'slide' ? 'Motors off. Ease the clamping screws until it just moves.' : 'Motors off.';
  return {
    headline: `${why}: ${way}.`,
    steps: [
      ...octave(ctx, slack),
      `${hold} ${verb} by half of that first; then move the carriage to and fro once, so that all strands share.`,
      until(ctx),
      'The way rests on the belt’s stretch alone; frame and brackets give too, so the reading decides, not the way.',
    ],
    movements: [movement],
  };
}

/** What the hand does about one belt, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  // Asked first, so that a missing value is named.
  const tension = ctx.number('T');
  const found = outsideModel(ctx);
  if (found) return found;
  if (ctx.check('T_lo') === 'beyond') return noRoom(ctx);
  const state = ctx.check('T');
  if (state === 'beyond') return adjust(ctx, tension < ctx.number('T_lo'));
  if (state === 'too close' || ctx.verdict !== 'within') {
    const end = tension < ctx.number('T_aim') ? 'slack' : 'tight';
    return {
      headline: `Leave the tensioner and measure again: whether the belt is too ${end} is too close to call.`,
      steps: [cure(ctx), until(ctx)],
      measureAgain: true,
    };
  }
  return {
    headline: `Leave the tensioner: ${ctx.text('T')} is enough to hold and not too much.`,
    steps: [
      ctx.choice('by') === 'note'
        ? 'Write the note and the place of the carriage down; a new belt settles, so pluck again after a day and after a week.'
        : 'Write force, deflection and the place of the carriage down; a new belt settles, so press again after a day and after a week.',
    ],
  };
}
