import { expanded, type Known } from '../../formula/outcome';
import type { AskOf } from '../../engine/calculator';
import { telling, type Contradiction, type Effect, type Movement, type Order, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import type { formulas } from './formulas';
import type { choices, inputs } from './inputs';
import type words from './words/en';

type Ask = AskOf<{ inputs: typeof inputs; choices: typeof choices; formulas: typeof formulas }>;
type Side = 'left' | 'right';
type Turn = 'clockwise' | 'anticlockwise';
const { tell, step, contradict } = telling<typeof words>();

const DEGREE = Math.PI / 180;
/** Least turn of a screw that a hand sets with a grub screw. Common practice, no source. */
export const HAND_TURN = 5 * DEGREE;
/** How far from a whole number a tooth count may lie and still be a tooth count. */
const NEAR_WHOLE = 0.25;
const FULL_TURN = 2 * Math.PI;
/** Rise over run at which nuts and guides jam; nothing stands so without being broken. Common practice, no source. */
const JAMS = 0.06;

// Seen from above, a right-hand screw turned clockwise runs away from the eye, so a nut that cannot turn climbs it.
const loweringTurn = { right: 'anticlockwise', left: 'clockwise' } as const;
const opposite = { clockwise: 'anticlockwise', anticlockwise: 'clockwise' } as const;

/** The high side's screw, and the way that lets that side down. */
function side(ask: Ask): { readonly high: Side; readonly lower: Turn } {
  return { high: ask.number('dh_s') >= 0 ? 'right' : 'left', lower: loweringTurn[ask.choice('hand')] };
}

/** Full turns of the screw, and the degrees beyond them. */
function turned(amount: number) {
  const degrees = Math.round(amount / DEGREE);
  return { turns: Math.floor(degrees / 360), degrees: degrees % 360 };
}

/** What is read once the high side's screw has let it down by so much of a turn, radians. */
function loweredBy(ask: Ask, amount: number): Effect {
  const down = Math.sign(ask.number('dh_s')) * (amount / FULL_TURN) * ask.number('P_h');
  const left = ask.number('dh_s') - down;
  return ask.choice('by') === 'heights'
    ? { dh: (left * ask.number('S_m')) / ask.number('S') }
    : { i_g: ask.number('i_f') + left / ask.number('S') };
}

/** The whole difference taken out where the screw is clamped: for motors, and where no tooth explains it. */
function atTheGrubScrew(ask: Ask, drive: 'belt' | 'motors', more: readonly Told[]): Order {
  const { high, lower } = side(ask);
  const amount = settable(Math.abs(ask.number('psi')), HAND_TURN, 'nearest');
  if (amount === 0)
    return tell('tooLittle', { high }, { steps: [step('leastSet', { by: ask.quantity('psi') }), ...more] });
  const by = turned(amount);
  return tell(
    'turnAtGrub',
    { high, way: lower, by },
    {
      steps: [step('atGrub', { drive, high, way: lower, by }), ...more],
      movements: [{ part: `${high} screw`, direction: lower, amount }],
      effect: loweredBy(ask, amount),
    },
  );
}

/** What stands beside a count of teeth that no slipped tooth explains. */
function oddities(ask: Ask, teeth: number, whole: number): readonly Told[] {
  if (teeth >= ask.number('z')) return [step('beyondSlip', { teeth })];
  return Math.abs(ask.number('n') - whole) > NEAR_WHOLE ? [step('notNearWhole', { teeth: ask.quantity('n') })] : [];
}

/** Whether so much left at the screws is within the limit across the bed, whatever of the doubt is true. */
function mayStay(ask: Ask, left: number): boolean {
  const doubt = expandedOf(ask.known('dh_bed'));
  return (Math.abs(left) * ask.number('W')) / ask.number('S') + doubt <= ask.number('dh_lim');
}

const expandedOf = (known: Known | undefined): number => (known ? expanded(known) : 0);

function byTeeth(ask: Ask, whole: number): Order {
  const { high, lower } = side(ask);
  const teeth = Math.abs(whole);
  const perTooth = (FULL_TURN * ask.number('h_t')) / ask.number('P_h');
  const stays = teeth > 0 && mayStay(ask, ask.number('r'));
  const more = stays ? 0 : settable(ask.number('phi'), HAND_TURN, 'nearest') * Math.sign(ask.number('dh_s'));
  const left = (turn: number): number => Math.abs(ask.number('dh_s')) - (turn / FULL_TURN) * ask.number('P_h');
  const atGrub = settable(Math.abs(ask.number('psi')), HAND_TURN, 'nearest');
  // Steps counted from no turn at all may do where steps counted from a whole tooth do not.
  if (!mayStay(ask, left(teeth * perTooth + more)) && mayStay(ask, left(atGrub))) {
    return atTheGrubScrew(ask, 'belt', oddities(ask, teeth, whole));
  }
  const fine = more >= 0 ? lower : opposite[lower];
  const by = turned(Math.abs(more));
  const movements: Movement[] = [
    ...(teeth > 0 ? [{ part: `${high} screw`, direction: lower, amount: teeth * perTooth }] : []),
    ...(more === 0 ? [] : [{ part: `${high} screw`, direction: fine, amount: Math.abs(more) }]),
  ];
  const steps: Told[] = [
    ...(teeth > 0 ? [step('byTeeth', { high, way: lower, teeth })] : []),
    more === 0 ? step('leaveRest', { stays }) : step('thenTurn', { after: teeth > 0, high, way: fine, by }),
    ...oddities(ask, teeth, whole),
  ];
  if (movements.length === 0) return tell('tooLittle', { high }, { steps });
  const rest = { steps, movements, effect: loweredBy(ask, teeth * perTooth + more) };
  return teeth > 0
    ? tell('turnTeeth', { high, way: lower, teeth }, rest)
    : tell('turnBy', { high, way: fine, by }, rest);
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

/** A tilt that no gantry stands in. */
export function contradiction(ask: Ask): Contradiction | undefined {
  if (Math.abs(ask.number('i')) <= JAMS) return undefined;
  const of = ask.choice('by') === 'heights' ? ['dh', 'S_m'] : ['i_g', 'i_f'];
  return contradict('jammed', { rise: ask.quantity('dh_s'), run: ask.quantity('S') }, of);
}

/** Which side comes down, by how much, and where to take hold. */
export function action(ask: Ask): Order {
  if (ask.verdict === 'within') return tell('leave', {}, { steps: [step('note')] });
  if (ask.verdict === 'too close') return tell('again', {}, { steps: [step('mayMakeWorse')], measureAgain: true });
  if (ask.choice('drive') === 'motors') return atTheGrubScrew(ask, 'motors', [step('notTheMotor')]);
  const count = ask.known('n');
  // Known well, but between two teeth: no better tool makes a tooth of it.
  if (count && !ask.known('n_w') && expanded(count) < NEAR_WHOLE) {
    return atTheGrubScrew(ask, 'belt', [step('noWholeNumber', { teeth: ask.quantity('n') })]);
  }
  if (count && !ask.known('n_w')) return countAgain(ask, count);
  return byTeeth(ask, ask.number('n_w'));
}
