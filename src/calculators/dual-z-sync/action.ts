import { expanded, type Known } from '../../formula/outcome';
import type { AskOf } from '../../engine/calculator';
import { telling, type Movement, type Order, type Told } from '../../engine/order';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
type Side = 'left' | 'right';
type Turn = 'clockwise' | 'anticlockwise';
const { tell, step } = telling<typeof words>();

/** Least turn of a screw that a hand sets with a grub screw. Common practice, no source. */
const HAND_TURN = (2 * Math.PI) / 180;
/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;
const FULL_TURN = 2 * Math.PI;

// Seen from above, a right-hand screw turned clockwise runs away from the eye, so a nut that cannot turn climbs it.
const loweringTurn = { right: 'anticlockwise', left: 'clockwise' } as const;
const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

/** The high side's screw, and the way that lets that side down. */
function side(ask: Ask): { readonly high: Side; readonly lower: Turn } {
  return { high: ask.number('dh_s') >= 0 ? 'right' : 'left', lower: loweringTurn[ask.choice('hand')] };
}

/** The whole turn of the screw: full turns, and the degrees beyond them. */
function turned(ask: Ask) {
  const turns = Math.floor(Math.abs(ask.number('psi')) / FULL_TURN);
  const degrees = Math.round(((Math.abs(ask.number('psi')) - turns * FULL_TURN) * 180) / Math.PI);
  return { turns, degrees, angle: ask.quantity('psi') };
}

/** The whole difference taken out where the screw is clamped: for motors, and where no tooth explains it. */
function atTheGrubScrew(ask: Ask, drive: 'belt' | 'motors', more: readonly Told[]): Order {
  const { high, lower } = side(ask);
  const amount = Math.abs(ask.number('psi'));
  const by = turned(ask);
  if (amount < HAND_TURN) return tell('tooLittle', { high }, { steps: [step('leastTurn', { by }), ...more] });
  return tell(
    'turnScrew',
    { high, way: lower, by },
    {
      steps: [step('atGrubScrew', { drive, high, way: lower, by }), ...more],
      movements: [{ part: `${high} screw`, direction: lower, amount }],
    },
  );
}

/** What stands beside a count of teeth that no slipped tooth explains. */
function oddities(ask: Ask, teeth: number, whole: number): readonly Told[] {
  if (teeth >= ask.number('z')) return [step('moreThanSlip', { by: turned(ask) })];
  return Math.abs(ask.number('n') - whole) > NEAR_WHOLE ? [step('notNearWhole', { teeth: ask.quantity('n') })] : [];
}

function byTeeth(ask: Ask, whole: number): Order {
  const { high, lower } = side(ask);
  const teeth = Math.abs(whole);
  const remainder = ask.number('phi');
  const fine = Math.sign(remainder) * Math.sign(ask.number('dh_s')) >= 0 ? lower : opposite[lower];
  const movements: Movement[] = [];
  const steps: Told[] = [];
  if (teeth > 0) {
    movements.push({
      part: `${high} screw`,
      direction: lower,
      amount: (teeth * FULL_TURN * ask.number('h_t')) / ask.number('P_h'),
    });
    steps.push(step('byTeeth', { high, way: lower, teeth }));
  }
  if (Math.abs(remainder) >= HAND_TURN) {
    movements.push({ part: `${high} screw`, direction: fine, amount: Math.abs(remainder) });
    const onBed = (Math.abs(ask.number('r')) * ask.number('W')) / ask.number('S');
    const mayStay = teeth > 0 && onBed <= ask.number('dh_lim');
    steps.push(step('remainder', { after: teeth > 0, high, way: fine, by: ask.quantity('phi'), mayStay }));
  } else {
    steps.push(step('leaveRemainder'));
  }
  steps.push(...oddities(ask, teeth, whole));
  if (movements.length === 0) return tell('tooLittle', { high }, { steps });
  return teeth > 0
    ? tell('turnTeeth', { high, way: lower, teeth }, { steps, movements })
    : tell('turn', { high, way: fine, by: ask.quantity('phi') }, { steps, movements });
}

/** The side is plain, the count of teeth is not: only a better reading tells it. */
function countAgain(ask: Ask, count: Known): Order {
  const { high } = side(ask);
  // Magnitudes first: a half rounds away from zero on either side.
  const ends = [count.low, count.high].map((end) => Math.round(Math.abs(end)));
  const from = count.low * count.high < 0 ? 0 : Math.min(...ends);
  const to = Math.max(...ends);
  return tell('countAgain', { high, from, to }, { steps: [step('turnNothing')], measureAgain: true });
}

/** Which side comes down, by how much, and where to take hold. */
export function action(ask: Ask): Order {
  if (ask.verdict === 'within') return tell('leave', {}, { steps: [step('note')] });
  if (ask.verdict === 'too close') return tell('again', {}, { steps: [step('mayMakeWorse')] });
  if (ask.choice('drive') === 'motors') return atTheGrubScrew(ask, 'motors', [step('notTheMotor')]);
  const count = ask.known('n');
  // Known well, but between two teeth: no better tool makes a tooth of it.
  if (count && !ask.known('n_w') && expanded(count) < NEAR_WHOLE) {
    return atTheGrubScrew(ask, 'belt', [step('noWholeNumber', { teeth: ask.quantity('n') })]);
  }
  if (count && !ask.known('n_w')) return countAgain(ask, count);
  return byTeeth(ask, ask.number('n_w'));
}
