import { expanded } from '../../formula/outcome';
import { telling, type Told } from '../../engine/order';
import type { Ask } from './asked';
import type words from './words/en';

const { step } = telling<typeof words>();

/** Two frequencies this near are taken for the same, whatever their doubt. Common practice, no source. */
const ALIKE = 0.15;

type Fit = 'fits' | 'softer' | 'stiffer' | undefined;

/** Whether the ripples fit a part’s frequency; `softer` where they come from something softer than it. */
function fit(ask: Ask, symbol: 'r_b' | 'r_f'): Fit {
  const share = ask.known(symbol);
  if (!share) return undefined;
  if (Math.abs(share.value - 1) <= Math.max(expanded(share), ALIKE)) return 'fits';
  return share.value < 1 ? 'softer' : 'stiffer';
}

/** Which part swings, as far as the frequencies tell, and what stiffens it. */
export function culprit(ask: Ask): Told[] {
  const [belt, frame] = [fit(ask, 'r_b'), fit(ask, 'r_f')];
  const heard = step('ripplesAre', {
    heard: ask.aside('f'),
    belt: belt === undefined ? undefined : ask.aside('f_b'),
    frame: frame === undefined ? undefined : ask.aside('f_f'),
  });
  if (belt === 'fits' && frame === 'fits') return [heard, step('bothFit'), step('frame'), step('belt')];
  if (frame === 'fits') return [heard, step('frame')];
  if (belt === 'fits') return [heard, step('belt')];
  if (belt === 'softer' || frame === 'softer') {
    const than = belt === 'softer' ? 'belt' : 'frame';
    return [heard, step('somethingSofter', { than, frameUnknown: frame === undefined })];
  }
  if (belt === 'stiffer' || frame === 'stiffer') return [heard, step('smallParts')];
  return [heard, step('frame'), step('belt')];
}
