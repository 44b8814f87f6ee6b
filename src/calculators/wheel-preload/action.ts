import type { choices } from './choices';
import type { Context, Instruction, Movement } from '../../engine/calculator';

type Symbols = 'N' | 'N_min' | 'N_max' | 'theta_0' | 'phi_s' | 'dtheta';
type Ask = Pick<Context<Symbols, typeof choices>, 'number' | 'known' | 'text' | 'verdict' | 'check' | 'choice'>;

/** Gain below a quarter of the best: within about 15° of a dead centre. */
const DEAD_CENTRE = Math.sin((15 * Math.PI) / 180);
/** Least turn of a bush that a hand sets with a spanner. */
const HAND_TURN = (1 * Math.PI) / 180;

const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;
/** Whole degrees, tenths below two: the stiffness behind an estimate supports no more. */
function degrees(angle: number): string {
  const shown = (angle * 180) / Math.PI;
  return `${Number(shown.toFixed(shown < 2 ? 1 : 0))}°`;
}

function noRoom(ctx: Ask): Instruction {
  const change = [
    'Set the wheels farther apart along the rail, or bring the mass nearer to them: both lower the moment.',
    'Lower the acceleration, or add wheels that share the force.',
    'Fit wheels of a stiffer material or a larger radius.',
  ];
  if (ctx.choice('contact') === 'line') {
    const headline = 'Leave the bush alone: the wheels would mark before they hold. Change the carriage.';
    return { headline, steps: change };
  }
  const direction = ctx.choice('side');
  return {
    headline: 'Let a band wear in on the wheels, then judge as a line: an edge marks under almost any load.',
    steps: [
      `Leave the bush where the wheel turns with the carriage. If it spins freely, turn the bush ${direction}, seen from the bolt head (towards the rail), a few degrees at a time, until it just turns.`,
      'After a week of use look for the bright band: choose the flank that lies along it, enter its width and judge again.',
      'Only if a line leaves no room either, change the carriage: wheels farther apart along the rail, less mass farther in, less acceleration.',
    ],
  };
}

function settleFirst(ctx: Ask): Instruction {
  const steps =
    ctx.choice('by') === 'bush'
      ? ['Do the slip test: the turn of the bush gives the preload only roughly.']
      : [
          'Wipe rail and wheels, repeat the slip test five times at one place and take the mean, with ± half the span.',
          'Measure the friction coefficient of this wheel on this rail by tilting.',
        ];
  if (ctx.number('N') ** 2 > ctx.number('N_min') * ctx.number('N_max')) {
    steps.push('Measure the bright band on the flank with a caliper: the pressure hangs on its width.');
  }
  return { headline: 'Leave the bush where it is and measure again: it is too close to call.', steps };
}

/** Turn to try before the next slip test, SI: the estimate, at most the largest turn and what is left of the arc. */
function nextTurn(ctx: Ask, left: number): { readonly amount: number; readonly estimated: boolean } {
  const most = Math.min(ctx.number('phi_s'), left);
  const estimate = ctx.known('dtheta');
  if (!estimate || Math.abs(estimate.value) > most) return { amount: most, estimated: false };
  return { amount: Math.abs(estimate.value), estimated: true };
}

function endOfThrow(raise: boolean): Instruction {
  if (raise) {
    return {
      headline: 'Leave the bush: it is at the end of its throw and the wheel still presses too little.',
      steps: [
        'Look for a worn wheel, a worn bearing or a bent plate; replace the wheels of that carriage as a set.',
        'Check that the fixed wheels sit fully on their spacers; then start again from fully retracted.',
      ],
    };
  }
  return {
    headline: 'Leave the bush: it is fully retracted and the wheel still presses too hard.',
    steps: [
      'Check that wheel and rail belong together and that no spacer or the bush sits askew; measure the plate’s holes.',
    ],
  };
}

function turnBush(ctx: Ask, raise: boolean): Instruction {
  const present = ctx.number('theta_0');
  const nearEnd = Math.sin(present) < DEAD_CENTRE;
  const left = raise ? Math.PI - present : present;
  if (nearEnd && left < Math.PI / 2) return endOfThrow(raise);
  const closing = ctx.choice('side');
  const direction = raise ? closing : opposite[closing];
  const towards = raise ? 'towards the rail' : 'away from the rail';
  const { amount, estimated } = nextTurn(ctx, left);
  const by = estimated ? `about ${degrees(amount)}` : degrees(amount);
  const movements: Movement[] = [{ part: 'eccentric bush', direction, amount }];
  const wrong = raise ? 'too little' : 'too hard';
  const steps = [
    'Motors off. Ease the wheel’s bolt by a quarter turn, no more; hold the bush with an open-ended spanner.',
    `Turn the bush ${direction}, seen from the bolt head (${towards}), by ${by}. Hold it there and tighten the bolt.`,
    'Slip test again at the same place. Repeat until the verdict is within; never turn on without a test.',
  ];
  if (amount < HAND_TURN) steps.push('This is less than a hand sets surely: nudge it and let the slip test decide.');
  if (!estimated) {
    steps.push(
      'The estimate goes further than one turn between tests allows, or past the dead centre: go on in turns like this.',
    );
  }
  if (nearEnd) {
    const slack = raise ? 'fully retracted' : 'its far end';
    steps.push(
      `The bush stands near ${slack}, where it hardly moves the wheel: the first degrees do little, the later ones much.`,
    );
  }
  if (ctx.check('N_min') !== 'within') {
    steps.push('There is little room between holding and marking: watch the flanks for a widening band.');
  }
  steps.push('The turn rests on a rough stiffness: the slip test proves it, not the number.');
  return {
    headline: `The wheel presses ${wrong}: turn the bush ${direction}, seen from the bolt head, by ${by}, ${towards}.`,
    steps,
    movements,
  };
}

/** What the hand does, for every state of the two checks. */
export function instruct(ctx: Ask): Instruction {
  const [carried, least, most] = [ctx.number('N'), ctx.number('N_min'), ctx.number('N_max')];
  const beyond = ctx.check('N') === 'beyond';
  if (ctx.check('N_min') === 'beyond' || (beyond && most <= least)) return noRoom(ctx);
  if (beyond) return turnBush(ctx, carried < least);
  if (ctx.verdict !== 'within') return settleFirst(ctx);
  return {
    headline: 'Leave the bush: the wheels hold and do not mark.',
    steps: [
      'Mark the bush’s angle with a pen, note the slip force, and test again after a week: plastic wheels settle.',
    ],
  };
}
