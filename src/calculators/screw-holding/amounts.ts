import { exact, type Amount, type Movement } from '../../engine/order';
import { settable } from '../../engine/settable';
import { ratio, speed } from '../../quantity/kinds';
import { byBelt, twoMotors, type Ask } from './asking';

/** A carriage nearer than this to the middle need not be moved, m; a push sets it no better. */
const NEAR_MIDDLE = 0.005;
/** Steps of the current in the driver, of the fastest move, and of that move where it is slow. */
const CURRENT_STEP = 0.05;
const SPEED_STEP = 0.5e-3;
const FINE_SPEED_STEP = 0.1e-3;
/** A drive keeps twice the torque that lifts its load: common practice for stepping motors. */
const LIFTING = 2;

/** What the hand sets: each undefined where it is left, or where no setting would do. */
export interface Amounts {
  readonly slides: boolean;
  readonly current: { readonly to: Amount } | undefined;
  readonly speed: { readonly from: Amount; readonly to: Amount } | undefined;
  readonly movements: readonly Movement[];
  readonly effect: Readonly<Record<string, number>> | undefined;
}

const opposite = { left: 'right', right: 'left' } as const;
const percent = (si: number): Amount => exact(si, ratio.percent);

/** Least share of the current that still lifts the load. */
function leastCurrent(ask: Ask): number {
  const lifted = LIFTING * ask.number('F') * (byBelt(ask) ? 2 : 1);
  return settable((ask.number('k_I') * lifted) / ask.number('F_s'), CURRENT_STEP, 'up');
}

/** Half a millimetre a second, less where that would be much of it. */
function speedStep(ask: Ask): number {
  const least = ask.known('v_m')?.low ?? 0;
  return least >= 4 * SPEED_STEP ? SPEED_STEP : FINE_SPEED_STEP;
}

/** Only towards where it helps: inwards, down, slower; a move faster than the limit whirls whatever else is set. */
export const levers = {
  x: { step: () => NEAR_MIDDLE, from: () => 0, to: (ask: Ask) => ask.number('x') },
  k_I: { step: () => CURRENT_STEP, from: leastCurrent, to: (ask: Ask) => ask.number('k_I') },
  v: { step: speedStep, from: () => FINE_SPEED_STEP, to: (ask: Ask) => Math.min(ask.number('v'), ask.number('v_m')) },
};

/** The current that surely keeps a stalled motor from bending the screw, from the least margin that it may have. */
function currentOf(ask: Ask): number | undefined {
  const margin = ask.known('m_b');
  if (!margin || ask.check('m_b') === 'within') return undefined;
  const share = settable((ask.number('k_I') * margin.low) / ask.number('m_bl'), CURRENT_STEP, 'down');
  return share >= leastCurrent(ask) && share >= CURRENT_STEP && share < ask.number('k_I') ? share : undefined;
}

/** The fastest move that surely does not whirl. */
function speedOf(ask: Ask): number | undefined {
  const most = ask.known('v_m');
  if (!most || ask.check('n') === 'within') return undefined;
  const to = settable(Math.max(most.low, 0), speedStep(ask), 'down');
  return to >= FINE_SPEED_STEP && to < ask.number('v') ? to : undefined;
}

/** A carriage off the middle loads the nearer screw. It is left where the thread alone holds. */
function slides(ask: Ask): boolean {
  if (!twoMotors(ask) || ask.number('x') < NEAR_MIDDLE) return false;
  return ask.check('m') !== 'within' || ask.number('m_t') < 1;
}

/** Everything that can be set by hand and would help, rounded to what a hand sets. */
export function amounts(ask: Ask): Amounts {
  const [slide, current, slower] = [slides(ask), currentOf(ask), speedOf(ask)];
  const movements: Movement[] = [];
  const effect: Record<string, number> = {};
  if (slide) {
    movements.push({ part: 'carriage', direction: opposite[ask.choice('side')], amount: ask.number('x') });
    effect.x = 0;
  }
  if (current !== undefined) {
    movements.push({ part: 'motor current', direction: 'lower', amount: ask.number('k_I') - current });
    effect.k_I = current;
  }
  if (slower !== undefined) {
    movements.push({ part: 'fastest Z move', direction: 'slower', amount: ask.number('v') - slower });
    effect.v = slower;
  }
  return {
    slides: slide,
    current: current === undefined ? undefined : { to: percent(current) },
    speed: slower === undefined ? undefined : { from: ask.quantity('v'), to: slowed(ask, slower) },
    movements,
    effect: movements.length > 0 ? effect : undefined,
  };
}

const slowed = (ask: Ask, si: number): Amount => ({
  si,
  width: 0,
  kind: speed.mm_s.kind.id,
  unit: ask.quantity('v').unit,
});
