import { expanded } from '../../formula/outcome';
import { telling, type Told } from '../../engine/order';
import { classFor, largerName, rough, type Ask } from './judging';
import { SYMBOLS, type WayId } from './model';
import type words from './words/en';

const { step } = telling<typeof words>();

type Torque = 'T_e' | (typeof SYMBOLS)[WayId]['torque'];

/** How tight, and how surely a wrench sets it: the scatter of the pull in whole percent. */
function tightness(ask: Ask, symbol: Torque) {
  const torque = ask.known(symbol);
  const scatter = torque && torque.value > 0 ? Math.round((expanded(torque) / torque.value) * 100) : undefined;
  return { torque: ask.quantity(symbol), scatter };
}

/** The step that tightens, no more and no less. */
export const tighten = (ask: Ask, symbol: Torque): Told => step('tighten', tightness(ask, symbol));

function insertSteps(ask: Ask): readonly Told[] {
  const size = ask.choice('size');
  const blind = ask.choice('hole') === 'blind';
  return [
    step('drillForInsert', { drill: ask.quantity('D_d'), blind, bore: ask.quantity('D_m') }),
    step('tapForInsert', { size, outside: ask.quantity('D_i'), blind }),
    step('windIn', { size, length: ask.quantity('L_i') }),
    step('breakTang'),
    step('screwForInsert', { reach: ask.quantity('L_i'), ...tightness(ask, 'T_i') }),
  ];
}

function nextSteps(ask: Ask): readonly Told[] {
  const size = largerName(ask);
  return [
    step('drillForLarger', { drill: ask.quantity('D_t'), blind: ask.choice('hole') === 'blind' }),
    step('tapLarger', { size }),
    step('openClamped', { size }),
    step('screwLarger', { size, grade: classFor(ask), reach: rough(ask, 'L_r'), ...tightness(ask, 'T_n') }),
  ];
}

/** One way, step by step. */
export function stepsOf(ask: Ask, id: WayId): readonly Told[] {
  switch (id) {
    case 'longer':
      return [step('takeLonger', { by: rough(ask, 'L_b') }), step('turnInByHand'), tighten(ask, 'T_l')];
    case 'insert':
      return insertSteps(ask);
    case 'next':
      return nextSteps(ask);
    case 'bolt':
      return [
        step('drillThrough', { drill: ask.quantity('D_c') }),
        step('boltAndWashers', { size: ask.choice('size'), grade: ask.choice('grade') }),
        step('turnNut', tightness(ask, 'T_b')),
      ];
    case 'replace':
      return [step('putNewIn'), tighten(ask, 'T_r')];
  }
}
