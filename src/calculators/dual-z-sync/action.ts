import { expanded, type Known } from '../../formula/outcome';
import type { Context, Instruction, Movement } from '../../engine/calculator';
import type { choices } from './inputs';

type Symbols = 'dh_s' | 'n' | 'n_w' | 'phi' | 'psi' | 'r' | 'h_t' | 'P_h' | 'S' | 'W' | 'z' | 'dh_lim';
type Ask = Context<Symbols, typeof choices>;
type Turn = 'clockwise' | 'anticlockwise';

/** Least turn of a screw that a hand sets with a grub screw. Common practice, no source. */
const HAND_TURN = (2 * Math.PI) / 180;
/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;
const FULL_TURN = 2 * Math.PI;

// Seen from above, a right-hand screw turned clockwise runs away from the eye, so a nut that cannot turn climbs it.
const loweringTurn = { right: 'anticlockwise', left: 'clockwise' } as const;
const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

const OTHER_CAUSES = 'look also for a slipped grub screw, a bent mount or a loose wheel';

/** The high side's screw, and the way that lets that side down. */
function side(ctx: Ask): { readonly high: 'left' | 'right'; readonly lower: Turn } {
  return { high: ctx.number('dh_s') >= 0 ? 'right' : 'left', lower: loweringTurn[ctx.choice('hand')] };
}

/** "2 turns and 180°", or the plain angle below one turn. */
function turnText(ctx: Ask): string {
  const turns = Math.floor(Math.abs(ctx.number('psi')) / FULL_TURN);
  if (turns === 0) return ctx.text('psi', { magnitude: true });
  const rest = Math.round(((Math.abs(ctx.number('psi')) - turns * FULL_TURN) * 180) / Math.PI);
  return `${turns} ${turns === 1 ? 'turn' : 'turns'} and ${rest}°`;
}

/** The whole difference taken out where the screw is clamped: for motors, and where no tooth explains it. */
function atTheGrubScrew(ctx: Ask, where: string, hold: string, more: readonly string[]): Instruction {
  const { high, lower } = side(ctx);
  const amount = Math.abs(ctx.number('psi'));
  if (amount < HAND_TURN) {
    return {
      headline: `The ${high} side is high by less than a hand can set: leave it, or even it out at the bed.`,
      steps: [`It would be ${turnText(ctx)} of screw; about 2° is the least a hand sets.`, ...more],
      movements: [],
    };
  }
  return {
    headline: `The ${high} side is high: turn the ${high} screw ${lower}, seen from above, by ${turnText(ctx)}.`,
    steps: [
      `Loosen ${where} on the ${high} side, ${hold}, turn the screw ${lower} (seen from above) by ${turnText(ctx)}, tighten.`,
      ...more,
    ],
    movements: [{ part: `${high} screw`, direction: lower, amount }],
  };
}

function byTeeth(ctx: Ask, whole: number): Instruction {
  const { high, lower } = side(ctx);
  const teeth = Math.abs(whole);
  const remainder = ctx.number('phi');
  const fine = Math.sign(remainder) * Math.sign(ctx.number('dh_s')) >= 0 ? lower : opposite[lower];
  const movements: Movement[] = [];
  const steps: string[] = [];
  const toothText = `${teeth} ${teeth === 1 ? 'tooth' : 'teeth'}`;
  if (teeth > 0) {
    const amount = (teeth * FULL_TURN * ctx.number('h_t')) / ctx.number('P_h');
    movements.push({ part: `${high} screw`, direction: lower, amount });
    steps.push(
      `Slacken the sync belt, lift it off the ${high} pulley, turn that screw ${lower} (seen from above) by ${toothText}, put the belt back.`,
    );
  }
  if (Math.abs(remainder) >= HAND_TURN) {
    movements.push({ part: `${high} screw`, direction: fine, amount: Math.abs(remainder) });
    const onBed = (Math.abs(ctx.number('r')) * ctx.number('W')) / ctx.number('S');
    const may = teeth > 0 && onBed <= ctx.number('dh_lim') ? '; or leave it, what remains is within the limit' : '';
    steps.push(
      `${teeth > 0 ? 'Then loosen' : 'Loosen'} the pulley’s grub screw on the ${high} side, turn that screw ${fine} by ${ctx.text('phi', { magnitude: true })}, tighten${may}.`,
    );
  } else {
    steps.push('Leave the remainder: it is less than a hand can set (about 2°).');
  }
  if (teeth >= ctx.number('z')) {
    steps.push(`That is ${turnText(ctx)} of screw, more than a slipped tooth: ${OTHER_CAUSES}.`);
  } else if (Math.abs(ctx.number('n') - whole) > NEAR_WHOLE) {
    steps.push(`${ctx.text('n', { magnitude: true })} is not near a whole number of teeth: ${OTHER_CAUSES}.`);
  }
  const by = teeth > 0 ? toothText : ctx.text('phi', { magnitude: true });
  return {
    headline:
      movements.length > 0
        ? `The ${high} side is high: turn the ${high} screw ${teeth > 0 ? lower : fine}, seen from above, by ${by}.`
        : `The ${high} side is high by less than a hand can set: leave it, or even it out at the bed.`,
    steps,
    movements,
  };
}

/** The side is plain, the count of teeth is not: only a better reading tells it. */
function countAgain(ctx: Ask, count: Known): Instruction {
  const { high } = side(ctx);
  // Magnitudes first: a half rounds away from zero on either side.
  const ends = [count.low, count.high].map((end) => Math.round(Math.abs(end)));
  const from = count.low * count.high < 0 ? 0 : Math.min(...ends);
  const to = Math.max(...ends);
  return {
    headline: `The ${high} side is high, but how many teeth cannot be told from this reading: anything between ${from} and ${to}. Measure with a better tool before turning.`,
    steps: ['Turn nothing yet: the wrong count of teeth may make it worse.'],
    measureAgain: true,
  };
}

/** Which side comes down, by how much, and where to take hold. */
export function action(ctx: Ask): Instruction {
  if (ctx.verdict === 'within') {
    return {
      headline: 'Leave it: the gantry is level enough.',
      steps: ['Note the reading for this machine; measure again after the belt or a screw was touched.'],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: 'Measure again with a better tool before turning anything.',
      steps: ['The reading does not tell whether the gantry is out; turning now may make it worse.'],
    };
  }
  if (ctx.choice('drive') === 'motors') {
    return atTheGrubScrew(ctx, 'the coupling’s grub screw', 'hold the motor still', [
      'Do not turn the motor by hand instead: switched on, it springs to the nearest of its own places, four full steps apart.',
    ]);
  }
  const count = ctx.known('n');
  // Known well, but between two teeth: no better tool makes a tooth of it.
  if (count && !ctx.known('n_w') && expanded(count) < NEAR_WHOLE) {
    return atTheGrubScrew(ctx, 'the pulley’s grub screw', 'leave the belt on', [
      `${ctx.text('n', { magnitude: true })} teeth are no whole number: ${OTHER_CAUSES}.`,
    ]);
  }
  if (count && !ctx.known('n_w')) return countAgain(ctx, count);
  return byTeeth(ctx, ctx.number('n_w'));
}
