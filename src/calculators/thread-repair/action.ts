import { telling, type Contradiction, type Order, type Told } from '../../engine/order';
import {
  against,
  drillFor,
  judged,
  largerName,
  longerBy,
  percentOf,
  spanIn,
  torqueFor,
  type Against,
  type Ask,
  markedLength,
} from './judging';
import { advisedWay, type Judged, type WayId } from './model';
import { stepsOf, tighten } from './steps';
import type words from './words/en';

const { tell, step, contradict } = telling<typeof words>();

/** Mend it this way; `but` is what stands against it. */
function mend(ask: Ask, id: WayId, but: readonly Against[], steps: readonly Told[]): Order {
  const size = ask.choice('size');
  const larger = largerName(ask);
  const how = { percent: percentOf(ask, id), but };
  const rest = { steps, ...readAfter(ask, id) };
  switch (id) {
    case 'longer':
      return tell('longer', { ...how, size }, rest);
    case 'insert':
      return tell('insert', { ...how, size, ...drillFor(ask.quantity('D_d')), length: markedLength(ask) }, rest);
    case 'next':
      return tell('next', { ...how, size: larger, ...drillFor(ask.quantity('D_t')) }, rest);
    case 'bolt':
      return tell('bolt', { ...how, size, ...drillFor(ask.quantity('D_c')) }, rest);
    case 'heatset':
      return tell('heatset', { ...how, size, ...drillFor(ask.quantity('D_h')), length: ask.quantity('L_s') }, rest);
    case 'nut':
      return tell('nut', { ...how, size, flats: ask.quantity('s_w') }, rest);
    case 'replace':
      return tell('replace', how, rest);
  }
}

/** Why this way and not the others. */
function reason(ask: Ask, all: readonly Judged[], id: WayId): Told {
  const percent = percentOf(ask, id);
  const mine = all.find((one) => one.id === id);
  if (mine?.standing === 'will do') {
    return step('whyCheapest', { percent, only: all.filter((one) => one.standing === 'will do').length === 1 });
  }
  return step('whyStrongest', { percent, but: mine ? against(ask, id, mine.objections) : [] });
}

/** True where one length surely lies above others added up, each as well as it was measured. */
function surelyAbove(ask: Ask, more: readonly Length[], most: Length): boolean {
  const sum = more.reduce((total, symbol) => total + ask.number(symbol), 0);
  const doubt = [...more, most].reduce((total, symbol) => total + ask.quantity(symbol).width, 0);
  return sum - ask.number(most) > Math.max(doubt, SLACK * sum);
}
type Length = 'L_r' | 'L_e' | 'L_b' | 'L_h';
/** What a thread's runout and a chamfer may hide, as a share. */
const SLACK = 0.02;

/** Lengths of one hole that cannot all be right. */
export function contradiction(ask: Ask): Contradiction | undefined {
  const print = { reach: ask.quantity('L_r'), left: ask.quantity('L_e'), depth: ask.quantity('L_h') };
  if (surelyAbove(ask, ['L_e'], 'L_r')) return contradict('leftBeyondReach', print, ['L_e', 'L_r']);
  if (surelyAbove(ask, ['L_e'], 'L_h')) return contradict('leftBeyondHole', print, ['L_e', 'L_h']);
  if (ask.choice('hole') === 'blind' && surelyAbove(ask, ['L_r'], 'L_h')) {
    return contradict('reachBeyondHole', print, ['L_r', 'L_h']);
  }
  if (ask.number('L_b') > 0 && surelyAbove(ask, ['L_r', 'L_b'], 'L_h')) {
    return contradict('threadBeyondHole', { ...print, below: ask.quantity('L_b') }, ['L_r', 'L_b', 'L_h']);
  }
  return undefined;
}

/** What is read once it is mended so: given where the thread left then surely suffices, and only for what this check reads again. */
function readAfter(ask: Ask, id: WayId): Pick<Order, 'movements' | 'effect'> {
  const [reach, left, below, by] = [ask.number('L_r'), ask.number('L_e'), ask.number('L_b'), longerBy(ask)];
  if (id === 'longer' && by > 0) {
    const effect = { L_r: reach + by, L_e: left + by, L_b: Math.max(below - by, 0) };
    if (ask.after(effect) !== 'within') return { movements: [] };
    return { movements: [{ part: 'screw', direction: 'longer', amount: by }], effect };
  }
  const effect = { L_e: Math.min(reach, ask.number('L_h')) };
  return id === 'replace' && ask.after(effect) === 'within' ? { movements: [], effect } : { movements: [] };
}

/** What the hand does, for every verdict. */
export function instruct(ask: Ask): Order {
  const picked = ask.choice('way');
  const all = judged(ask);
  if (picked !== 'advised') {
    const own = all.find((one) => one.id === picked);
    return mend(ask, picked, own ? against(ask, picked, own.objections) : [], stepsOf(ask, picked));
  }
  if (ask.verdict === 'within') {
    return tell(
      'leave',
      { torque: torqueFor(ask, 'T_e') },
      { steps: [step('clearMouth'), tighten(ask, 'T_e'), step('stopIfTurning')] },
    );
  }
  const best = advisedWay(all, spanIn(ask));
  const steps = [reason(ask, all, best), ...stepsOf(ask, best)];
  if (ask.verdict === 'too close') {
    return tell('inDoubt', { torque: torqueFor(ask, 'T_e'), way: best }, { steps: [step('measureLeft'), ...steps] });
  }
  return mend(ask, best, [], steps);
}
