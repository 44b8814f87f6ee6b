import { count, length } from '../../../quantity/kinds';
import { formatNumber, formatValue } from '../../../quantity/format';
import { parseQuantity, type DecimalMark } from '../../../quantity/parse';
import type { Unit } from '../../../quantity/unit';
import { toolById } from '../../../reference/tools';
import type { Scale } from '../../../signal/ridge-types';
import say from './words/en';

const MM = 1e-3;
/** The graduations of a workshop rule lie within this of where they should: common practice. */
const RULE_HALF = 0.1 * MM;
/** A layer's mean height holds to this share where nothing else is known: common practice. */
const LAYER_SHARE = 0.005;
const MOST = 2;

const CALIPER_HALF = toolById('caliper')?.half ?? RULE_HALF;

/** How far a rule stands before a wall is read by eye within this, how far away the camera is within this share. */
const BEFORE_HALF = 0.5 * MM;
const AWAY_SHARE = 0.1;

/** How a distance is measured by each standard, its half-width, m, where no ± is typed, and whether it may stand before the wall. */
const standards = {
  rule: { measured: 'points', half: RULE_HALF, loose: true },
  jaws: { measured: 'points', half: CALIPER_HALF, loose: true },
  height: { measured: 'across', half: CALIPER_HALF, loose: false },
  layers: { measured: 'across', half: 0, loose: false },
} as const;

/** Whether what serves as the scale may stand nearer to the camera than the wall. */
export const mayStandBefore = (standard: Standard): boolean => standards[standard].loose;

export type Standard = keyof typeof standards;
export const ALL_STANDARDS = ['rule', 'jaws', 'height', 'layers'] as const satisfies readonly Standard[];

export interface ScaleEntry {
  readonly standard: Standard;
  /** The distance as typed. */
  readonly text: string;
  /** The number of layers as typed. */
  readonly layers: string;
  /** The layer height as typed; empty where the machine's own is meant. */
  readonly layer: string;
  /** Whether the scale lies on the wall or stands before it; by how much, and how far the camera is from the wall, as typed. */
  readonly place?: 'flat' | 'before';
  readonly before?: string;
  readonly away?: string;
}

/** SI. */
export interface Length {
  readonly value: number;
  readonly half: number;
}

export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly blank: boolean; readonly reason: string };

const refuse = (reason: string): Read<never> => ({ ok: false, blank: false, reason });
const blank = (reason: string): Read<never> => ({ ok: false, blank: true, reason });

function readLength(text: string, unit: Unit, mark: DecimalMark, half: (value: number) => number): Read<Length> {
  const typed = parseQuantity(text, length.mm.kind, unit, mark);
  if (!typed.ok) return text.trim() === '' ? blank(typed.reason) : refuse(typed.reason);
  if (!(typed.value > 0)) return refuse(say.scale.refusal.nothing);
  if (typed.value > MOST) {
    return refuse(say.scale.refusal.tooLong(formatValue(MOST, 0, length.m.unit)));
  }
  const given = typed.half ?? half(typed.value);
  if (given >= typed.value) return refuse(say.scale.refusal.wideLength);
  return { ok: true, value: { value: typed.value, half: given } };
}

/**
 * The layer height: as typed, else the machine's.
 * @param kept what is known of the machine on the bench, SI
 */
export function readLayer(text: string, kept: Length | undefined, unit: Unit, mark: DecimalMark): Read<Length> {
  if (text.trim() !== '') return readLength(text, unit, mark, (value) => value * LAYER_SHARE);
  if (!kept) return blank(say.scale.refusal.noLayer);
  return { ok: true, value: { value: kept.value, half: Math.max(kept.half, kept.value * LAYER_SHARE) } };
}

/**
 * What a scale that stands before the wall spans on the wall itself: by like triangles l / (1 - d / D), d before it, D from
 * the lens to it.
 */
function broughtToWall(scale: Length, entry: ScaleEntry, unit: Unit, mark: DecimalMark): Read<Length> {
  if (entry.place !== 'before' || !mayStandBefore(entry.standard)) return { ok: true, value: scale };
  const before = readLength(entry.before ?? '', unit, mark, (value) => Math.min(BEFORE_HALF, value / 2));
  if (!before.ok) return before.blank ? blank(say.scale.refusal.noBefore) : before;
  const away = readLength(entry.away ?? '', unit, mark, (value) => value * AWAY_SHARE);
  if (!away.ok) return away.blank ? blank(say.scale.refusal.noAway) : away;
  const nearer = before.value.value / away.value.value;
  if (!(nearer < 0.5)) return refuse(say.scale.refusal.nearer);
  const doubt = Math.hypot(before.value.half / before.value.value, away.value.half / away.value.value);
  const value = scale.value / (1 - nearer);
  return {
    ok: true,
    value: { value, half: value * Math.hypot(scale.half / scale.value, (nearer * doubt) / (1 - nearer)) },
  };
}

/**
 * The distance between the marks, from what was typed.
 * @returns SI, with the half-width typed after ± or that of the standard; or a sentence that says what is wrong
 */
export function readDistance(
  entry: ScaleEntry,
  kept: Length | undefined,
  unit: Unit,
  mark: DecimalMark,
): Read<Pick<Scale, 'distance' | 'halfWidth' | 'measured'>> {
  const { measured, half } = standards[entry.standard];
  if (entry.standard !== 'layers') {
    const typed = readLength(entry.text, unit, mark, () => half);
    const read = typed.ok ? broughtToWall(typed.value, entry, unit, mark) : typed;
    return read.ok ? { ok: true, value: { distance: read.value.value, halfWidth: read.value.half, measured } } : read;
  }
  const layers = parseQuantity(entry.layers, count.one.kind, count.one.unit, mark);
  if (!layers.ok) return entry.layers.trim() === '' ? blank(layers.reason) : refuse(layers.reason);
  if (layers.value < 1) return refuse(say.scale.refusal.noneBetween);
  const layer = readLayer(entry.layer, kept, unit, mark);
  if (!layer.ok) return layer;
  const miscount = layers.half ?? 0;
  const share = Math.hypot(miscount / layers.value, layer.value.half / layer.value.value);
  if (share >= 1) return refuse(say.scale.refusal.wideCount);
  const distance = layers.value * layer.value.value;
  return { ok: true, value: { distance, halfWidth: distance * share, measured } };
}

/** What is taken for granted where no ± was typed, as a sentence. */
export function takenFor(standard: Standard, unit: Unit, mark: DecimalMark): string {
  if (standard === 'layers') return say.scale.taken.layers(formatNumber(LAYER_SHARE * 100, 2, mark));
  const half = formatValue(standards[standard].half, 0, unit, { mark });
  return standard === 'rule' ? say.scale.taken.rule(half) : say.scale.taken.caliper(half);
}
