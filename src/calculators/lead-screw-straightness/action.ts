import type { Context, Instruction, Movement } from '../../engine/calculator';
import type { choices } from './inputs';

type Names =
  's_r' | 's_L' | 's_lim' | 'l_r' | 'w_x' | 'w_lim' | 'w_t' | 'w_n' | 'y_0' | 'y_y' | 'p_r' | 'f_L' | 'f_max';
type Asked = Context<Names, typeof choices>;

/** Share of the doubt below which a better reading of one input changes little. */
const WORTH_MEASURING = 0.1;

const HALF_TURN: Movement = { part: 'coupling', direction: 'either way on the screw', amount: Math.PI };

/** Only in the machine with both ends clamped can the bow itself not be told: the clamps hold it straight. */
function bowKnown(ctx: Asked): boolean {
  return !(ctx.choice('method') === 'mounted' && ctx.choice('ends') === 'clamped');
}

function couplingStep(ctx: Asked): string {
  const refit =
    ctx.choice('method') === 'mounted' ? '' : 'With the screw back in the machine (rolling cannot show this): ';
  const start = refit === '' ? 'Draw' : 'draw';
  return (
    `${refit}${start} one pen line across screw and coupling and mark the high point. Loosen the coupling on the screw, turn it half ` +
    'a turn on the screw, tighten, find the high point again. High point still at the screw’s mark: the screw is bent. ' +
    'High point gone over with the coupling: the coupling is off centre; replace the coupling, keep the screw.'
  );
}

const CARRIED_BELOW =
  'Only if the lower end carries the load (where a thrust bearing at the top does, the screw drops)';

/** Freeing the top, where it is held and the sum says that it helps. */
function freeingStep(ctx: Asked): string | undefined {
  if (ctx.choice('ends') === 'free') return undefined;
  if (!bowKnown(ctx)) {
    return `${CARRIED_BELOW}: slacken the top bearing’s screws for a trial, turn the screw one turn and read the carriage: keep it free only if the reading falls.`;
  }
  const [now, freed] = [Math.abs(ctx.number('w_x')), Math.abs(ctx.number('w_t'))];
  const change = `from about ${ctx.text('w_x', { magnitude: true })} to at most about ${ctx.text('w_t', { magnitude: true })}, nut at mid-height`;
  if (freed >= now) return `Leave the top bearing tight: freeing it would take the wobble ${change}.`;
  return (
    `${CARRIED_BELOW}: slacken the top bearing’s screws by half a turn so that the end finds its own place, or take the bearing off: ` +
    `the wobble goes ${change}.`
  );
}

const SWAP =
  'With the screw out, read again at a quarter and at three quarters of the span. A smooth bow shows three quarters of the middle’s reading at ' +
  'both, and swapping ends changes nothing. If one place shows more, the bend sits there: swap the screw end for end, if ' +
  'both ends are turned alike and the bend then lies outside the nut’s travel.';

function floatStep(ctx: Asked): string {
  return (
    `Float the nut: let it slide sideways by ${ctx.text('y_0', { magnitude: true })} or more each way, held only against turning ` +
    'and against lifting. This works whether the screw or the coupling is at fault.'
  );
}

function replaceStep(ctx: Asked): string {
  return (
    `Replace the screw last: ask for a bow of at most ${ctx.text('s_lim')} in ${ctx.text('l_r')} and roll it on a flat before fitting. ` +
    `One right at that limit would still give a wobble of ${ctx.text('w_n')}.`
  );
}

function straightenStep(ctx: Asked): string {
  return (
    `Do not straighten it by hand: its middle must be pushed about ${ctx.text('y_y')} aside before anything stays, ` +
    `to take out ${ctx.text('s_L', { magnitude: true })}, and it mostly ends as a kink. Only a soft rolled screw with one smooth bow, on two ` +
    'blocks under a press, in small pushes with a reading after each and a spare at hand, is worth a try.'
  );
}

/** Measuring the guide, where its stiffness adds enough to the doubt to be worth it. */
function guideStep(ctx: Asked): string | undefined {
  const share = ctx.known('w_x')?.budget.find((part) => part.symbol === 'k_g')?.share ?? 0;
  if (share < WORTH_MEASURING) return undefined;
  return 'Measure the guide’s stiffness at the nut: pull with a luggage scale, dial indicator opposite, three times.';
}

function readingStep(ctx: Asked): string {
  if (ctx.choice('method') === 'flat' && ctx.choice('touch') === 'none') {
    return 'A flat cannot settle it: the screw’s own weight closes the gap. Use two V-blocks and a dial indicator, or a shorter span.';
  }
  if (ctx.choice('method') === 'flat')
    return 'Measure on two V-blocks with a dial indicator: a bow shows twice as large, and weight drops out.';
  if (ctx.choice('method') === 'mounted')
    return 'Read the swing just above the coupling too, and where its high point faces; better, take the screw out and use V-blocks.';
  return 'Read the swing close beside a V-block and enter it as the crests’ unevenness; take the middle’s swing three times.';
}

function leave(ctx: Asked): Instruction {
  const hidden = ctx.choice('method') === 'flat' && ctx.choice('touch') === 'none';
  return {
    headline: 'Leave the screw as it is: its bow does not reach the print.',
    steps: [
      hidden
        ? `A flat shows only that the bow is small; even the most it can hide stays within the limits.`
        : `The carriage is pushed about by ${ctx.text('w_x', { magnitude: true })}, less than the ${ctx.text('w_lim')} allowed.`,
      `If ridges every ${ctx.text('p_r')} remain, look at the coupling.`,
      couplingStep(ctx),
    ],
    movements: [],
  };
}

function keepBowed(ctx: Asked): Instruction {
  const settled = ctx.check('s_r') === 'beyond';
  return {
    headline: settled
      ? 'Leave the screw in: it is bowed more than its class allows, but the bow does not reach the print.'
      : 'Leave the screw in; measure again only if you want to send it back.',
    steps: [
      `Bow ${ctx.text('s_r', { magnitude: true })} in ${ctx.text('l_r')} (allowed ${ctx.text('s_lim')}); wobble at the carriage ${ctx.text('w_x', { magnitude: true })} (allowed ${ctx.text('w_lim')}).`,
      settled ? 'If it is new, send it back; else replace it when the drive is next apart.' : readingStep(ctx),
      straightenStep(ctx),
    ],
    movements: [],
  };
}

function measureAgain(ctx: Asked): Instruction {
  const bent = ctx.check('s_r') === 'beyond';
  const first = bent
    ? [
        `The screw is bowed more than its class allows (${ctx.text('s_r', { magnitude: true })} in ${ctx.text('l_r')}): if it is new, send it back.`,
      ]
    : [];
  const guide = guideStep(ctx);
  return {
    headline: `Do not buy a screw yet: measure ${guide === undefined ? 'the screw' : 'the guide and the screw'} again.`,
    steps: [...first, ...(guide === undefined ? [] : [guide]), readingStep(ctx), couplingStep(ctx)],
    movements: [HALF_TURN],
  };
}

/** A bow that the flat arc does not follow, and that no press takes out: no length here is to be trusted. */
function tooBowed(ctx: Asked): Instruction {
  return {
    headline: `Check the reading first: a bow of more than ${ctx.text('f_max')} of the length is seen by eye.`,
    steps: [
      'Sight along the screw, or lay it against a straightedge. If it looks straight, the reading is wrong: look at its unit, at swing against bow, and at the distance between the supports.',
      'Take the supports nearly as far apart as the screw is long; a short span makes a small slip a large bow.',
      'If it is really bowed that far, replace it: no straightening makes such a screw true. Nothing else here holds for it.',
    ],
    movements: [],
  };
}

function act(ctx: Asked): Instruction {
  const bow = ctx.check('s_r');
  const free = freeingStep(ctx);
  const helps = free?.startsWith(CARRIED_BELOW) ?? false;
  const first = helps ? 'free the top bearing' : 'float the nut';
  const wobble = ctx.text('w_x', { magnitude: true });
  const headline =
    bow === 'beyond'
      ? `The screw is bent: check the coupling, ${first}, and replace the screw if ridges stay.`
      : bow === 'within'
        ? `Keep the screw: check the coupling, then ${first}; a new one of this class may be no straighter.`
        : `The carriage wobbles by ${wobble}: check the coupling, then ${first}, before buying a screw.`;
  return {
    headline,
    steps: [
      couplingStep(ctx),
      ...(free === undefined ? [] : [free]),
      SWAP,
      floatStep(ctx),
      ...(bow === 'within' ? [] : [replaceStep(ctx)]),
      ...(bowKnown(ctx) ? [straightenStep(ctx)] : []),
    ],
    movements: [HALF_TURN, { part: 'nut', direction: 'free sideways, each way', amount: Math.abs(ctx.number('y_0')) }],
  };
}

/** The instruction: the quickest and most reversible work first, a new screw last. */
export function advise(ctx: Asked): Instruction {
  // Asked first so that a missing value is named instead of being taken for "within".
  ctx.number('w_x');
  ctx.number('w_lim');
  ctx.number('s_lim');
  if (bowKnown(ctx)) ctx.number('s_r');
  if (['beyond', 'too close'].includes(ctx.check('f_L'))) return tooBowed(ctx);
  const wobble = ctx.check('w_x');
  if (wobble === 'beyond') return act(ctx);
  if (wobble === 'too close') return measureAgain(ctx);
  const bow = ctx.check('s_r');
  return bow === 'beyond' || bow === 'too close' ? keepBowed(ctx) : leave(ctx);
}
