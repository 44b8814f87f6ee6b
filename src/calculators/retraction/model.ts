import type { Comb } from './piece';

/** An interval of about 95 %, SI. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface PlannedPiece {
  /** Side of a tooth and the least that prints whole, m. */
  readonly b: number;
  readonly b_min: number;
  /** Longest gap, m. */
  readonly g: number;
  /** Travel before a drop shows, m. */
  readonly x_1: Interval;
  /** Travel over which a nozzle that is not relieved oozes, m. */
  readonly x_b: Interval;
  /** Thickness of the hair drawn across the gap, m. */
  readonly d_s: Interval;
  /** Thinnest hair the eye finds, m. */
  readonly d_v: number;
}

export type PieceReason = 'thinTeeth' | 'beforeDrop' | 'beforeBleeding' | 'hairTooThin' | 'hairPerhapsTooThin';

export interface Judgement {
  readonly state: 'shows' | 'may show' | 'cannot show';
  /** Empty when it shows. */
  readonly reasons: readonly PieceReason[];
}

/**
 * Whether a planned comb can tell a relieved nozzle from one that is not: the teeth must hold four
 * lines, the longest gap must give a drop time to form (better, the pressure time to bleed), and the hair must be thick enough
 * to see. Where an interval straddles its bound the piece may show it. All lengths in m. Common practice, no source.
 */
export function judgePiece(piece: PlannedPiece): Judgement {
  const cannot: PieceReason[] = [];
  const may: PieceReason[] = [];
  if (piece.b < piece.b_min) cannot.push('thinTeeth');
  if (piece.g < piece.x_1.low) cannot.push('beforeDrop');
  else if (piece.g < piece.x_b.high) may.push('beforeBleeding');
  if (piece.d_s.high < piece.d_v) cannot.push('hairTooThin');
  else if (piece.d_s.low < piece.d_v) may.push('hairPerhapsTooThin');
  if (cannot.length > 0) return { state: 'cannot show', reasons: cannot };
  return may.length > 0 ? { state: 'may show', reasons: may } : { state: 'shows', reasons: [] };
}

/** What the size of an offered piece depends on. SI. */
export interface PieceValues {
  /** Line width. */
  readonly w: number;
  /** Layer height. */
  readonly h: number;
  /** Travel over which a nozzle that is not relieved oozes. */
  readonly x_b: number;
}

const MM = 1e-3;
const LEAST_SIDE = 5 * MM;
const LEAST_LINES = 4;
const HEIGHT = 10 * MM;
const LEAST_LAYERS = 10;
/** Half of them are left out where a length is cut in. */
const FOOT_LAYERS = 6;
/** Each half as long again as the one before it, in whole millimetres; all of them fit most beds. */
const GAPS = [3, 5, 8, 12, 18, 27, 40];
const LEAST_GAPS = 5;
const NOISE = 1e-9;

/** Least whole multiple of `step` that reaches `length`. */
function wholeSteps(length: number, step: number): number {
  return Math.ceil(length / step - NOISE) * step;
}

/**
 * Size of a sensible comb, m: teeth of whole lines (5 mm or four lines, whichever is more) and whole layers (10 mm or ten
 * layers), and gaps from 3 mm on up to the first that is as long as the nozzle oozes, 18 to 40 mm.
 */
export function sizePiece(values: PieceValues): Comb {
  const side = wholeSteps(Math.max(LEAST_SIDE, LEAST_LINES * values.w), values.w);
  const height = wholeSteps(Math.max(HEIGHT, LEAST_LAYERS * values.h), values.h);
  const long = GAPS.findIndex((gap) => gap * MM >= values.x_b - NOISE);
  const count = long < 0 ? GAPS.length : Math.max(long + 1, LEAST_GAPS);
  return { side, height, foot: FOOT_LAYERS * values.h, gaps: GAPS.slice(0, count).map((gap) => gap * MM) };
}
