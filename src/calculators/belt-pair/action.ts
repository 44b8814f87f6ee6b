import { expanded } from '../../formula/outcome';
import type { Context, Instruction, VerdictState } from '../../engine/calculator';
import type { choices } from './choices';

type Symbols =
  | 'T_1' | 'T_2' | 'T_lo1' | 'T_lo2' | 'T_hi1' | 'T_hi2' | 'd_T' | 'f_1e' | 'f_2e' | 'L_1' | 'L_2' | 'L_min'
  | 'epsilon_1' | 'epsilon_2' | 'n' | 'n_w' | 'r_x' | 'x_1'; // prettier-ignore
type Ask = Context<Symbols, typeof choices>;

const doubtful = (state: VerdictState): boolean => state === 'beyond' || state === 'too close';

/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;

/** One belt's symbols and name, so that everything mirrors when the two are swapped. */
const sides = {
  first: { T: 'T_1', least: 'T_lo1', most: 'T_hi1', note: 'f_1e', name: 'first' },
  second: { T: 'T_2', least: 'T_lo2', most: 'T_hi2', note: 'f_2e', name: 'second' },
} as const;

const CURES: Readonly<Record<string, string>> = {
  f_1: 'Pluck the first belt five times and take the middle note.',
  f_2: 'Pluck the second belt five times and take the middle note.',
  L_1: 'Measure the first belt’s span again; best bring the carriage where both spans are alike.',
  L_2: 'Measure the second belt’s span again; best bring the carriage where both spans are alike.',
  m_0: 'Weigh a known length of the belt instead of taking the table’s mass.',
  m_02: 'Weigh a known length of each belt instead of taking the table’s masses.',
  m_s: 'Weigh a longer piece, or on a finer scale.',
  m_s2: 'Weigh a longer piece, or on a finer scale.',
  mu_a: 'Weigh a known length of the belt.',
  mu_b: 'Weigh a known length of the second belt.',
  EI_1: 'Choose longer spans: the bending stiffness is the weakest number here.',
  EI_2: 'Choose longer spans: the bending stiffness is the weakest number here.',
};

function cure(ctx: Ask, of: 'd_T' | 'T_1' | 'T_2'): string {
  const first = ctx.known(of)?.budget[0]?.symbol;
  return (first === undefined ? undefined : CURES[first]) ?? 'Repeat both readings five times and take the means.';
}

const teethText = (n: number): string => `${n} ${n === 1 ? 'tooth' : 'teeth'}`;

/** What the offset of the tensioners tells, where it was measured. */
function onTeeth(ctx: Ask): string[] {
  const found = ctx.known('n');
  if (!found) return [];
  if (ctx.check('d_T') !== 'within') {
    return ['Measure the offset of the tensioners again once both pull alike: now part of it is stretch.'];
  }
  const longer = found.value > 0 ? 'second' : 'first';
  const measured = ctx.text('n', { magnitude: true });
  const whole = ctx.known('n_w');
  // Known well, but between two teeth: no better tool makes a tooth of it.
  const between = `The tensioners stand ${measured} teeth apart, which is no whole number: look for a clamp that slipped, a bent bracket or loops cut unlike.`;
  if (!whole) {
    if (expanded(found) < NEAR_WHOLE) return [between];
    return [
      `How many teeth the tensioners stand apart cannot be told from this offset: one tooth is ${ctx.text('x_1')}. Measure it with a caliper.`,
    ];
  }
  if (Math.abs(found.value - whole.value) > NEAR_WHOLE) return [between];
  const teeth = Math.abs(whole.value);
  if (teeth === 0) return ['No whole tooth lies between the two loops: leave the clamps.'];
  return [
    `The ${longer} belt’s loop is ${teethText(teeth)} longer. Slacken it, draw it ${teethText(teeth)} further through its clamp, tighten to the same note: the tensioners then stand level.`,
  ];
}

function outsideModel(ctx: Ask): Instruction | undefined {
  const longer = 'Bring the carriage where both free spans are long and much alike.';
  if (doubtful(ctx.check('L_1')) || doubtful(ctx.check('L_2'))) {
    return {
      headline: `Leave both tensioners: a free span is too short for this check, which wants ${ctx.text('L_min')} or more.`,
      steps: [longer, 'If there is no longer one, count the bending stiffness.'],
      measureAgain: true,
    };
  }
  if (!doubtful(ctx.check('epsilon_1')) && !doubtful(ctx.check('epsilon_2'))) return undefined;
  return {
    headline: 'Leave both tensioners: a span is too stiff for its note to tell the tension.',
    steps: [longer],
    measureAgain: true,
  };
}

/** The looser belt is tightened to the tighter one's tension, unless that is more than it may carry. */
function even(ctx: Ask): Instruction {
  const secondTighter = ctx.number('d_T') > 0;
  const tight = secondTighter ? sides.second : sides.first;
  const loose = secondTighter ? sides.first : sides.second;
  const amount = Math.abs(ctx.number('T_2') - ctx.number('T_1'));
  const by = ctx.text('d_T', { magnitude: true });
  const overloaded = ctx.number(tight.T) > Math.min(ctx.number(tight.most), ctx.number(loose.most));
  const slack = ctx.number(loose.T) < ctx.number(loose.least);
  if (overloaded && slack) {
    return {
      headline: `Slacken the ${tight.name} belt and tighten the ${loose.name}: one is overloaded, the other slack.`,
      steps: [
        'Set one of them by the check “Belt tension” to the middle of its range, then come back here for the other.',
      ],
      movements: [
        { part: `tensioner of the ${tight.name} belt`, direction: 'looser', amount: amount / 2 },
        { part: `tensioner of the ${loose.name} belt`, direction: 'tighter', amount: amount / 2 },
      ],
    };
  }
  const moved = overloaded ? tight : loose;
  const [verb, direction] = overloaded ? (['Slacken', 'looser'] as const) : (['Tighten', 'tighter'] as const);
  const both =
    ctx.number(tight.T) < ctx.number(tight.least)
      ? ['Both are slack: set the tighter one by the check “Belt tension” first, then bring the other to it.']
      : [];
  return {
    headline: `The ${tight.name} belt pulls ${by} harder: ${verb.toLowerCase()} the ${moved.name} until it sounds ${ctx.text(moved.note)}.`,
    steps: [
      ...both,
      `${verb} the ${moved.name} belt a little, move the carriage to and fro once, pluck again; stop at ${ctx.text(moved.note)}. Then pluck the other again: on crossed belts each moves the other.`,
      'Equal tension is not the same note where the spans differ, nor the same place of the tensioners where the loops do.',
      ...onTeeth(ctx),
    ],
    movements: [{ part: `tensioner of the ${moved.name} belt`, direction, amount }],
  };
}

/** They pull alike; what is left to say is whether both pull enough, and not too much. */
function alike(ctx: Ask): Instruction {
  const [first, second] = [ctx.check('T_1'), ctx.check('T_2')];
  if (first === 'beyond' || second === 'beyond') {
    const off = first === 'beyond' ? sides.first : sides.second;
    const slack = ctx.number(off.T) < ctx.number(off.least);
    const direction = slack ? 'tighter' : 'looser';
    const edge = slack ? ctx.number(off.least) : ctx.number(off.most);
    const amount = Math.abs(edge - ctx.number(off.T));
    return {
      headline: `The belts pull alike but too ${slack ? 'little' : 'much'}: ${slack ? 'tighten' : 'slacken'} both by the same way.`,
      steps: [
        'Set the first by the check “Belt tension”, then come back here for the note of the second.',
        ...onTeeth(ctx),
      ],
      movements: Object.values(sides).map((side) => ({
        part: `tensioner of the ${side.name} belt`,
        direction,
        amount,
      })),
    };
  }
  if (first !== 'within' || second !== 'within') {
    return {
      headline: 'Leave both tensioners: the belts pull alike; whether they pull enough is too close to call.',
      steps: [cure(ctx, first === 'within' ? 'T_2' : 'T_1'), ...onTeeth(ctx)],
      measureAgain: true,
    };
  }
  const teeth = ctx.known('n_w');
  const uneven =
    teeth !== undefined && teeth.value !== 0 && Math.abs((ctx.known('n')?.value ?? 0) - teeth.value) <= NEAR_WHOLE;
  return {
    headline: uneven
      ? `Leave the tension: the belts pull alike. But the ${teeth.value > 0 ? 'second' : 'first'} loop is ${teethText(Math.abs(teeth.value))} longer.`
      : 'Leave both tensioners: the belts pull alike.',
    steps: [
      'Write both notes and the place of the carriage down, and pluck again after a week: new belts settle unlike.',
      ...onTeeth(ctx),
    ],
  };
}

/** What the hand does about two belts, for every state of the checks. */
export function instruct(ctx: Ask): Instruction {
  // Asked first, so that a missing value is named.
  ctx.number('d_T');
  const found = outsideModel(ctx);
  if (found) return found;
  const state = ctx.check('d_T');
  if (state === 'beyond') return even(ctx);
  if (state === 'within') return alike(ctx);
  return {
    headline: 'Leave both tensioners and measure again: whether the belts pull alike is too close to call.',
    steps: [cure(ctx, 'd_T'), ...onTeeth(ctx)],
    measureAgain: true,
  };
}
