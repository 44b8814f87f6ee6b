import { exact, type Told } from '../../engine/order';
import { settable } from '../../engine/settable';
import { force, length, torque } from '../../quantity/kinds';
import type { Amounts } from './amounts';
import { byBelt, step, twoMotors, type Ask } from './asking';
import { MADE } from './choices';

/** Least steps: of a brake's torque as sold, of a weight left on a screw, of what a luggage scale is read to, of a turning torque. */
const BRAKE_STEP = 5e-3;
const WEIGHT_STEP = 0.5;
const PULL_STEP = 1;
const TORQUE_STEP = 1e-3;
/** Where the thread for the torque trial is wound: a coupling's radius, m. */
const RADIUS = 0.01;

/** Least friction in the thread that may be, at two standard uncertainties. */
function leastFriction(ask: Ask): number {
  const { si, width } = ask.quantity('mu');
  return si - (2 / Math.sqrt(3)) * width;
}

/** The largest lead made at this diameter that holds by the thread alone, with the least friction that may be. */
function leadThatHolds(ask: Ask): Told {
  const [d, alpha, wanted, mu] = [ask.number('d'), ask.number('alpha'), ask.number('m_lim'), leastFriction(ask)];
  const holds = MADE.filter(([outer, lead, pitch]) => {
    const locks = (lead / (Math.PI * (outer - pitch / 2))) * Math.cos(alpha);
    return Math.abs(outer - d * 1e3) < 0.3 && lead < ask.number('P_h') * 1e3 && mu >= wanted * locks;
  });
  const most = Math.max(...holds.map(([, lead]) => lead));
  return holds.length > 0 ? step('leadMade', { lead: exact(most * 1e-3, length.mm) }) : step('noLeadMade');
}

/** What would make it hold: torque and weight from their sure ends. */
export function remedies(ask: Ask): Told[] {
  const [brake, most] = [ask.known('T_k'), ask.known('F_m')];
  const torqueWanted = settable(brake?.high ?? ask.number('T_k'), BRAKE_STEP, 'up');
  const left = most && most.low > WEIGHT_STEP ? settable(most.low, WEIGHT_STEP, 'down') : undefined;
  return [
    step('brake', { torque: exact(torqueWanted, torque.N_mm), wanted: ask.quantity('m_lim') }),
    step('counterweight', {
      most: left === undefined ? undefined : exact(left, force.N),
      load: ask.quantity('F'),
    }),
    ask.choice('screw') === 'ball' ? step('ballScrew') : leadThatHolds(ask),
  ];
}

/** Which side goes first, and the slide of the carriage that makes both alike. */
export function sinking(ask: Ask, { slides }: Amounts): Told[] {
  if (!twoMotors(ask)) return [];
  const near = ask.choice('side');
  const apart = step('sinkApart', { step: ask.quantity('h_e') });
  if (!slides) return [apart];
  const slide = step('slideCarriage', {
    by: ask.quantity('x'),
    towards: near === 'left' ? 'right' : 'left',
    near,
    load: ask.quantity('F'),
    other: ask.quantity('F_2'),
    margin: ask.quantity('m'),
    otherMargin: ask.quantity('m_2'),
  });
  return [slide, apart];
}

/**
 * The pull that tells, from the upper end of its doubt. Undefined where none does: friction that grows with the load may hold any
 * pull, or the pull is more than scale and frame, or the screw, should bear.
 */
function pullThatTells(ask: Ask): number | undefined {
  const [share, pull, buckles] = [ask.known('m_p'), ask.known('F_p'), ask.known('F_b')];
  if (!share || !pull || share.high >= 1) return undefined;
  const most = Math.min(ask.number('F_x'), (buckles?.low ?? 0) / ask.number('m_bl') - ask.number('F'));
  const wanted = settable(Math.max(pull.high, 0), PULL_STEP, 'up');
  return pull.low >= 0 && wanted <= most ? wanted : undefined;
}

/** The trial that shows whether it holds: by a pull, else by a torque on the screw while a prop stands under the load. */
export function trial(ask: Ask): Told[] {
  const pull = pullThatTells(ask);
  const screws = ask.choice('screws');
  if (pull !== undefined) {
    const where = screws === 'one' ? 'nut' : byBelt(ask) ? 'midway' : 'eachNut';
    return [step('trial', { where, pull: exact(pull, force.N) })];
  }
  const known = ask.known('T_t');
  const wanted = settable(known?.high ?? ask.number('T_t'), TORQUE_STEP, 'up');
  return [
    step('noPullTells'),
    step('torqueTrial', {
      torque: exact(wanted, torque.N_mm),
      radius: exact(RADIUS, length.mm),
      pull: exact(settable(wanted / RADIUS, 0.1, 'up'), force.N),
      each: screws === 'more' || twoMotors(ask),
    }),
  ];
}
