import { expanded } from '../../formula/outcome';
import type { Context, Instruction, Movement } from '../../engine/calculator';
import type { choices } from './inputs';

type Symbols = 'epsilon' | 'e_0' | 'e_D' | 'd_e' | 'i_q' | 'dy' | 'dx' | 'l_0' | 'd_1' | 'A' | 'B' | 'e_lim';
type Ask = Context<Symbols, typeof choices>;

/** The front left corner is too sharp: right end too far back, or back too far right. */
const isSharp = (ctx: Ask): boolean => ctx.number('epsilon') >= 0;

/** What the square has shown of itself. */
function ofSquare(ctx: Ask): string[] {
  if (ctx.choice('way') !== 'reversal') return [];
  const own = ctx.known('i_q');
  if (!own) return [];
  if (Math.abs(own.value) <= expanded(own)) return ['The square itself is true as far as these readings tell.'];
  return [
    `The square itself is ${own.value > 0 ? 'wider' : 'narrower'} than 90° by ${ctx.text('i_q', { magnitude: true })}: write it on the square.`,
  ];
}

function skewed(ctx: Ask): string {
  const skew = ctx.known('epsilon');
  if (skew && Math.abs(skew.value) <= expanded(skew)) return 'Square as far as these readings tell.';
  const corners = isSharp(ctx)
    ? 'front left and back right sharper than 90°'
    : 'front left and back right wider than 90°';
  return `Out by ${ctx.text('epsilon', { magnitude: true })}, ${corners}.`;
}

/**
 * True where the diagonals are longer or shorter than those of any parallelogram with these sides: beyond doubt, and so far
 * that the one reading it may come from would shift the skew by half of what is allowed.
 */
function isOpen(ctx: Ask): boolean {
  const rest = ctx.choice('way') === 'diagonals' ? ctx.known('d_e') : undefined;
  if (!rest || Math.abs(rest.value) <= expanded(rest)) return false;
  // One diagonal misread by twice the mean: d(sin ε) = 2 d · 2 d_e / (4 A B).
  const shift = (ctx.number('l_0') * ctx.number('d_1') * Math.abs(rest.value)) / (ctx.number('A') * ctx.number('B'));
  return shift > ctx.number('e_lim') / 2;
}

function measureSides(ctx: Ask): Instruction {
  const longer = ctx.number('d_e') > 0 ? 'longer' : 'shorter';
  return {
    headline: 'Measure again before moving anything: these sides and diagonals do not fit together.',
    steps: [
      `The diagonals are ${ctx.text('d_e', { magnitude: true })} ${longer} on the mean than those of any parallelogram with these sides.`,
      'A reading is wrong, or opposite sides differ in length: measure all four sides and both diagonals, each twice.',
      'Where opposite sides do differ, enter their means: the result is then the skew between the middle lines, and no one corner has just that angle.',
    ],
    movements: [],
    measureAgain: true,
  };
}

function frame(ctx: Ask): Instruction {
  const way = isSharp(ctx) ? 'left' : 'right';
  const long = isSharp(ctx) ? 'front left and back right' : 'back left and front right';
  const amount = ctx.text('dx', { magnitude: true });
  const movements: Movement[] = [{ part: 'back of the frame', direction: way, amount: Math.abs(ctx.number('dx')) }];
  return {
    headline: `Bring the back of the frame ${amount} to the ${way}, seen from above.`,
    steps: [
      skewed(ctx),
      'Take the load off, stand the frame on a flat plate, and slacken the screws of the corners by half a turn, not more.',
      `Draw the corners ${long} together, with a strap or a long clamp across them, until both diagonals are alike: the back goes ${amount} to the ${way}.`,
      'Tighten crosswise, a little at a time, and measure the diagonals again before the last pull: tightening moves them.',
      ...ofSquare(ctx),
    ],
    movements,
  };
}

function beam(ctx: Ask): Instruction {
  const [way, back] = isSharp(ctx) ? (['forward', 'back'] as const) : (['back', 'forward'] as const);
  const amount = ctx.text('dy', { magnitude: true });
  const movements: Movement[] = [{ part: 'right end of the beam', direction: way, amount: Math.abs(ctx.number('dy')) }];
  const onBed = `Over the bed’s depth that is ${ctx.text('e_D', { magnitude: true })} sideways.`;
  if (ctx.choice('of') === 'bed') {
    return {
      headline: `Bring the right end of the beam ${way} by ${amount}, seen from above.`,
      steps: [
        `${skewed(ctx)} ${onBed}`,
        'See first that nothing gives: rails or rollers of the bed without play, uprights tight on the base.',
        `Slacken the right upright’s foot, shift it ${way} by ${amount}, tighten; or the left one ${back} by as much. The same is had by turning the bed’s rails on the base.`,
        'If two screws lift the beam, see that it still climbs freely: uprights twisted against each other bind.',
        ...ofSquare(ctx),
      ],
      movements,
    };
  }
  return {
    headline: `Bring the right end of the beam ${way} by ${amount}, seen from above.`,
    steps: [
      `${skewed(ctx)} ${onBed}`,
      'See first what lets a beam run askew: belts that pull unequally (Belt pair), a loose wheel or bearing (Wheel preload), a slipped pulley.',
      `With equal belts: slacken the screws between the beam and its right carriage, bring the right end ${way} by ${amount}, tighten; or the left end ${back} by as much, or half at each.`,
      'Where a belt drives each end, the same is had by letting one belt slip by a tooth, or by turning one pulley on its shaft. Motors off.',
      'Push the beam by hand to the front and to the back: both ends should meet their stops together and run freely.',
      ...ofSquare(ctx),
    ],
    movements,
  };
}

/** What to bring which way, and by how much at its end. */
export function action(ctx: Ask): Instruction {
  // Asked for first, so that the screen says what is still needed.
  ctx.number('e_0');
  if (isOpen(ctx)) return measureSides(ctx);
  if (ctx.verdict === 'within') {
    return {
      headline: 'Leave it: the axes are square enough.',
      steps: [
        skewed(ctx),
        ...ofSquare(ctx),
        'Note the reading; measure again after a belt, a wheel or the frame was touched.',
      ],
      movements: [],
    };
  }
  if (ctx.verdict === 'too close') {
    return {
      headline: 'Measure again before moving anything: whether it is square enough is too close to call.',
      steps: [
        'A piece twice as large halves the doubt; so does a finer tool. Take each reading twice, turned round in between.',
        ...ofSquare(ctx),
      ],
      measureAgain: true,
    };
  }
  return ctx.choice('of') === 'frame' ? frame(ctx) : beam(ctx);
}
