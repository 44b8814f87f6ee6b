import { telling, type Order, type Told } from '../../engine/order';
import { against, judged, largerName, percentOf, spanIn, type Against, type Ask } from './judging';
import { advisedWay, type Judged, type WayId } from './model';
import { stepsOf, tighten } from './steps';
import type words from './words/en';

const { tell, step } = telling<typeof words>();

/** Mend it this way; `but` is what stands against it. */
function mend(ask: Ask, id: WayId, but: readonly Against[], steps: readonly Told[]): Order {
  const size = ask.choice('size');
  const larger = largerName(ask);
  const how = { percent: percentOf(ask, id), but };
  switch (id) {
    case 'longer':
      return tell('longer', { ...how, size }, { steps });
    case 'insert':
      return tell('insert', { ...how, size, drill: ask.quantity('D_d'), length: ask.quantity('L_i') }, { steps });
    case 'next':
      return tell('next', { ...how, size: larger, drill: ask.quantity('D_t') }, { steps });
    case 'bolt':
      return tell('bolt', { ...how, size, drill: ask.quantity('D_c') }, { steps });
    case 'replace':
      return tell('replace', how, { steps });
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

function contradiction(ask: Ask): Order | undefined {
  const [reach, left, depth] = [ask.number('L_r'), ask.number('L_e'), ask.number('L_h')];
  if (left > reach * 1.02) {
    return tell('moreLeftThanReach', {}, { steps: [step('withinReachOnly')], measureAgain: true });
  }
  if (ask.choice('hole') === 'blind' && reach > depth * 1.02) {
    return tell('deeperThanHole', {}, { steps: [step('meetsBottom')], measureAgain: true });
  }
  return undefined;
}

/** What the hand does, for every verdict. */
export function instruct(ask: Ask): Order {
  const wrong = contradiction(ask);
  if (wrong) return wrong;
  const picked = ask.choice('way');
  const all = judged(ask);
  if (picked !== 'advised') {
    const own = all.find((one) => one.id === picked);
    return mend(ask, picked, own ? against(ask, picked, own.objections) : [], stepsOf(ask, picked));
  }
  if (ask.verdict === 'within') {
    return tell(
      'leave',
      { torque: ask.quantity('T_e') },
      { steps: [step('clearMouth'), tighten(ask, 'T_e'), step('stopIfTurning')] },
    );
  }
  const best = advisedWay(all, spanIn(ask));
  const steps = [reason(ask, all, best), ...stepsOf(ask, best)];
  if (ask.verdict === 'too close') {
    return tell('inDoubt', { torque: ask.quantity('T_e'), way: best }, { steps: [step('measureLeft'), ...steps] });
  }
  return mend(ask, best, [], steps);
}
