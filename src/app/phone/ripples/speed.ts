import { formatNumber } from '../../../quantity/format';
import { speed } from '../../../quantity/kinds';
import { parseQuantity, type DecimalMark } from '../../../quantity/parse';
import type { Read } from '../photo/scale';
import say from './words/en';

/** A speed that was set is held to this share where no ± is typed: common practice. */
const SHARE = 0.01;

/** SI. */
export interface Speed {
  readonly value: number;
  readonly half: number;
}

/**
 * The speed along the wall: as typed, else the machine's.
 * @param kept what is known of the machine on the bench, SI
 */
export function readSpeed(text: string, kept: Speed | undefined, mark: DecimalMark): Read<Speed> {
  if (text.trim() === '') {
    if (!kept || !(kept.value > 0)) return { ok: false, blank: true, reason: say.result.noSpeed };
    return { ok: true, value: { value: kept.value, half: Math.max(kept.half, SHARE * kept.value) } };
  }
  const typed = parseQuantity(text, speed.mm_s.kind, speed.mm_s.unit, mark);
  if (!typed.ok) return { ok: false, blank: false, reason: typed.reason };
  if (!(typed.value > 0)) return { ok: false, blank: false, reason: say.speed.nothing };
  const half = typed.half ?? SHARE * typed.value;
  if (half >= typed.value) return { ok: false, blank: false, reason: say.speed.wide };
  return { ok: true, value: { value: typed.value, half } };
}

/** What is taken for granted where no ± was typed, as a sentence. */
export const takenForSpeed = (mark: DecimalMark): string => say.speed.taken(formatNumber(SHARE * 100, 2, mark));
