import { expanded } from '../../formula/outcome';
import { exact, telling, type Amount, type Told } from '../../engine/order';
import { length, temperature } from '../../quantity/kinds';
import { settable } from '../../engine/settable';
import { toSi } from '../../quantity/unit';
import { materials } from '../../reference/materials';
import {
  classFor,
  drillFor,
  largerName,
  longerAmount,
  reachOf,
  torqueFor,
  type Ask,
  type Torque,
  markedLength,
} from './judging';
import type { WayId } from './model';
import type words from './words/en';

const { step } = telling<typeof words>();

/** How tight, and how surely a wrench sets it: the scatter of the pull in whole percent. */
function tightness(ask: Ask, symbol: Torque) {
  const torque = ask.known(symbol);
  const scatter = torque && torque.value > 0 ? Math.round((expanded(torque) / torque.value) * 100) : undefined;
  return { torque: torqueFor(ask, symbol), scatter };
}

/** The step that tightens, no more and no less. */
export const tighten = (ask: Ask, symbol: Torque): Told => step('tighten', tightness(ask, symbol));

function insertSteps(ask: Ask): readonly Told[] {
  const size = ask.choice('size');
  const blind = ask.choice('hole') === 'blind';
  return [
    step('drillForInsert', { ...drillFor(ask.quantity('D_d')), blind, bore: ask.quantity('D_m') }),
    step('tapForInsert', { size, outside: ask.quantity('D_i'), blind }),
    step('windIn', { size, length: markedLength(ask) }),
    step('breakTang'),
    step('screwForInsert', { reach: markedLength(ask), ...tightness(ask, 'T_i') }),
  ];
}

function nextSteps(ask: Ask): readonly Told[] {
  const size = largerName(ask);
  return [
    step('drillForLarger', { ...drillFor(ask.quantity('D_t')), blind: ask.choice('hole') === 'blind' }),
    step('tapLarger', { size }),
    step('openClamped', { size }),
    step('screwLarger', { size, grade: classFor(ask), reach: reachOf(ask), ...tightness(ask, 'T_n') }),
  ];
}

/** A plastic that an iron may melt: how hot its tip (common practice), and where the plastic goes soft, °C. */
const MELTING = {
  pla: { tip: 210, softens: materials.pla.softens.value },
  petg: { tip: 230, softens: materials.petg.softens.value },
  abs: { tip: 245, softens: materials.abs.softens.value },
  pa: { tip: 275, softens: materials.pa66.softens.value },
  pc: { tip: 290, softens: materials.pc.softens.value },
} as const;
const isMelting = (name: string): name is keyof typeof MELTING => name in MELTING;

const celsius = (value: number): Amount => exact(toSi(value, temperature.C.unit), temperature.C);

function heatsetSteps(ask: Ask): readonly Told[] {
  const size = ask.choice('size');
  const plastic = ask.choice('part').replace('print-', '');
  const blind = ask.choice('hole') !== 'reached';
  const heat = isMelting(plastic) ? MELTING[plastic] : undefined;
  return [
    step('ironFirst'),
    step('drillForHeat', { ...drillFor(ask.quantity('D_h')), blind }),
    ...(heat ? [step('meltIn', { size, length: ask.quantity('L_s'), tip: celsius(heat.tip) })] : []),
    step('pressFlush'),
    ...(heat ? [step('letsGo', { softens: celsius(heat.softens) })] : []),
    step('screwForInsert', { reach: ask.quantity('L_s'), ...tightness(ask, 'T_h') }),
  ];
}

/** Room round a nut in its pocket and above it, m. */
const NUT_PLAY = 0.1e-3;
const NUT_DEPTH_PLAY = 0.2e-3;

function nutSteps(ask: Ask): readonly Told[] {
  const mm = (si: number): Amount => exact(si, length.mm);
  const tenths = (si: number): Amount => mm(settable(si, 1e-4, 'up'));
  return [
    step('drillForNut', drillFor(ask.quantity('D_c'))),
    step('cutPocket', {
      flats: tenths(ask.number('s_w') + NUT_PLAY),
      deep: tenths(ask.number('h_k') + NUT_DEPTH_PLAY),
      floor: tenths(ask.number('d')),
    }),
    step('drawNutIn', { size: ask.choice('size') }),
    tighten(ask, 'T_k'),
  ];
}

/** One way, step by step. */
export function stepsOf(ask: Ask, id: WayId): readonly Told[] {
  switch (id) {
    case 'longer':
      return [step('takeLonger', { by: longerAmount(ask) }), step('turnInByHand'), tighten(ask, 'T_l')];
    case 'insert':
      return insertSteps(ask);
    case 'next':
      return nextSteps(ask);
    case 'bolt':
      return [
        step('drillThrough', drillFor(ask.quantity('D_c'))),
        step('boltAndWashers', { size: ask.choice('size'), grade: ask.choice('grade') }),
        step('turnNut', tightness(ask, 'T_b')),
      ];
    case 'heatset':
      return heatsetSteps(ask);
    case 'nut':
      return nutSteps(ask);
    case 'replace':
      return [step('putNewIn'), tighten(ask, 'T_r')];
  }
}
