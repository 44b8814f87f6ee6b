import type { Context, Instruction, Movement, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'm' | 'm_p' | 'm_t' | 'm_2' | 'm_lim' | 'm_b' | 'm_bl' | 'n' | 'n_s' | 'F' | 'F_2' | 'F_m' | 'F_p' | 'F_s' | 'F_b' | 'M_z'
  | 'T_R' | 'T_k' | 'P_n' | 'P_h' | 'h_e' | 'x' | 'v' | 'v_m' | 's' | 's_c'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

/** Starts may miss a whole number by this much: leads are stamped rounded. */
const STARTS_OFF = 0.03;
/** A carriage nearer than this to the middle need not be moved, m. */
const NEAR_MIDDLE = 0.005;

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';
const opposite = { left: 'right', right: 'left' } as const;

const twoMotors = (ctx: Ask): boolean => ctx.choice('screws') === 'two' && ctx.choice('drive') === 'motors';

/** Entries that do not fit together. */
function misfit(ctx: Ask): Instruction | undefined {
  const again = (headline: string, step: string): Instruction => ({ headline, steps: [step], measureAgain: true });
  if (twoMotors(ctx) && ctx.number('F_2') <= 0) {
    return again(
      'Weigh again: the carriage would lift the other side.',
      'The mass that the Z drive carries includes the carriage, and the carriage stands between the screws.',
    );
  }
  if (ctx.choice('screw') === 'ball') return undefined;
  const starts = ctx.number('n_s');
  if (Math.abs(starts - Math.round(starts)) > STARTS_OFF * starts || Math.round(starts) < 1) {
    return again(
      `Look at the screw again: a lead of ${ctx.text('P_h')} is no whole number of pitches.`,
      'Count the grooves that end at the screw’s face; lead = pitch × starts. Turn the screw once: the nut travels one lead.',
    );
  }
  if (ctx.number('T_R') <= 0) {
    return again(
      'Look at lead and friction again: no torque could raise the load.',
      'A thread this steep with this much friction jams in both directions.',
    );
  }
  return undefined;
}

/** Which side goes first, and the slide of the carriage that makes both alike. */
function unequal(ctx: Ask): { readonly steps: string[]; readonly movements: Movement[] } {
  if (!twoMotors(ctx)) return { steps: [], movements: [] };
  const side = ctx.choice('side');
  const steps = [
    `Two motors sink each for itself. A side that has slipped by more than half of ${ctx.text('h_e')} comes back that much out, or a multiple: level the gantry anew before the next print.`,
  ];
  if (ctx.number('x') < NEAR_MIDDLE) return { steps, movements: [] };
  const towards = opposite[side];
  steps.unshift(
    `Slide the carriage ${ctx.text('x')} to the ${towards}, to the middle, before switching off: the ${side} screw carries ${ctx.text('F')}, the other ${ctx.text('F_2')}, so the ${side} side lets go first (margins ${ctx.text('m')} and ${ctx.text('m_2')}).`,
  );
  return { steps, movements: [{ part: 'carriage', direction: towards, amount: ctx.number('x') }] };
}

const PARK =
  'Before every switching-off, drive the gantry down onto blocks or its rest, low, so that it has no way to fall. In pauses keep the motors’ holding current on.';
const GREASE =
  'Never count on dry or dirty thread to hold. With the load on a support, clean it and give it the same thin grease as before, then measure again: fresh grease lowers the margin, and so does shaking.';

function remedies(ctx: Ask): string[] {
  const steps = [
    `Brake: one that closes without current on each screw, ${ctx.text('T_k')} or more, brings the margin to ${ctx.text('m_lim')}.`,
    `Counterweight or constant-force spring: leave at most ${ctx.number('F_m') > 0 ? ctx.text('F_m') : 'none'} of the ${ctx.text('F')} on the screw; guard it, and never hang it by the cable.`,
  ];
  if (ctx.choice('screw') !== 'ball') {
    steps.push(
      `Lower lead: ${ctx.text('P_n')} or less at this diameter and friction holds by the thread alone. Change screws and nuts in pairs, and the drive’s steps with them.`,
    );
  } else steps.push('A ball screw hardly ever holds by itself: a trapezoidal screw of low lead would.');
  return steps;
}

function tooLittle(ctx: Ask): Instruction {
  const { steps, movements } = unequal(ctx);
  const holds = ctx.number('m') >= 1;
  const what = holds
    ? `it holds by a margin of only ${ctx.text('m')}, wanted ${ctx.text('m_lim')}`
    : `with the motors off it runs down, at a margin of ${ctx.text('m')}`;
  return {
    headline: `Support the gantry before switching off: ${what}.`,
    steps: [PARK, ...steps, ...remedies(ctx), GREASE],
    movements,
  };
}

const CURES: Readonly<Record<string, string>> = {
  mu: 'The friction is the weakest number: measure the torque that just raises the load, and ask which friction gives it.',
  T_d: 'The motor’s idle torque is the weakest number: take it from its data sheet, or with a thread round the pulley of the bare motor.',
  T_b: 'The bearings’ drag is the weakest number: measure it with the screw uncoupled.',
  M_z: 'The mass is the weakest number: weigh what the screws carry.',
};

function trial(ctx: Ask): string {
  const where = {
    one: 'beside the nut',
    two: ctx.choice('drive') === 'belt' ? 'midway between the screws' : 'beside each nut in turn',
    more: 'beside each nut in turn',
  }[ctx.choice('screws')];
  return `Trial: gantry a finger’s breadth above blocks, motors off. Pull down ${where} with ${ctx.text('F_p')} on a luggage scale and tap the frame. It must not creep in five minutes.`;
}

function unsettled(ctx: Ask): Instruction {
  const { steps, movements } = unequal(ctx);
  const weakest = ctx.known('m')?.budget[0]?.symbol;
  const cure = weakest === undefined ? undefined : CURES[weakest];
  return {
    headline: `Support the gantry for now: the margin, ${ctx.text('m')}, is too close to the ${ctx.text('m_lim')} wanted.`,
    steps: [PARK, trial(ctx), ...(cure === undefined ? [] : [cure]), ...steps, GREASE],
    movements,
  };
}

/** What to do about a screw that a stalled motor could bend. */
function buckling(ctx: Ask): Instruction {
  const certain = ctx.check('m_b') === 'beyond';
  const theory = ctx.number('s') > ctx.number('s_c') ? 'Euler' : 'Johnson';
  return {
    headline: `Leave the nut; ${certain ? 'lower' : 'better lower'} the motor’s current: stalled, it pushes with ${ctx.text('F_s')}, and the screw buckles at ${ctx.text('F_b')}.`,
    steps: [
      `The margin is ${ctx.text('m_b')}, wanted ${ctx.text('m_bl')} (by ${theory}). The push is that of the full holding torque against a stop.`,
      'Lower the current in the motor’s driver in proportion; then raise the gantry at its fastest ten times: no step may be lost.',
      'Or hold the ends truer: a pair of bearings or a rigid coupling in line at the lower end, a bearing at the top. Or fit a thicker screw.',
      'After a collision take the screw out and roll it on a flat: a bend stays.',
    ],
  };
}

function whirling(ctx: Ask): Instruction {
  const certain = ctx.check('n') === 'beyond';
  return {
    headline: `${certain ? 'Lower' : 'Better lower'} the fastest Z move from ${ctx.text('v')} to ${ctx.text('v_m')}: the screw would whirl.`,
    steps: [
      'Or hold the ends truer, with a bearing at the top; or take a thicker screw, or one of a larger lead if it still holds.',
      'Stop at once if the screw whips: hands and cables away.',
    ],
    movements: certain
      ? [{ part: 'fastest Z move', direction: 'slower', amount: ctx.number('v') - ctx.number('v_m') }]
      : [],
  };
}

function holds(ctx: Ask): Instruction {
  const by =
    ctx.number('m_t') >= ctx.number('m_lim')
      ? `the thread alone, ${ctx.text('m_t')}`
      : `thread ${ctx.text('m_t')}, the rest is bearings and the motor’s idle torque`;
  const { steps, movements } = unequal(ctx);
  return {
    headline: `Leave the screws as they are: the gantry should stay, at a margin of ${ctx.text('m')}.`,
    steps: [
      trial(ctx),
      `Where it comes from: ${by}. Shaking and fresh grease take from it, so support the gantry all the same before a hand goes under it.`,
      ...(ctx.number('m_t') < 1 && twoMotors(ctx) ? steps : []),
    ],
    movements: ctx.number('m_t') < 1 ? movements : [],
  };
}

/** What the hand does, for every state of the three checks; holding comes first. */
export function instruct(ctx: Ask): Instruction {
  const wrong = misfit(ctx);
  if (wrong) return wrong;
  ctx.number('m');
  if (ctx.check('m') === 'beyond') return tooLittle(ctx);
  if (ctx.check('m_b') === 'beyond') return buckling(ctx);
  if (ctx.check('n') === 'beyond') return whirling(ctx);
  if (doubtful(ctx.check('m'))) return unsettled(ctx);
  if (doubtful(ctx.check('m_b'))) return buckling(ctx);
  if (doubtful(ctx.check('n'))) return whirling(ctx);
  return holds(ctx);
}
