import { twoBlocks, type Blocks } from './piece';

/** An interval of about 95 %, SI. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface PlannedPiece {
  /** Side of a block and the least that prints whole, m. */
  readonly b: number;
  readonly b_min: number;
  /** Gap between the blocks, m. */
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

export interface Judgement {
  readonly state: 'shows' | 'may show' | 'cannot show';
  /** Whole sentences; empty when it shows. */
  readonly reasons: readonly string[];
}

/**
 * Whether a planned piece of two blocks can tell a relieved nozzle from one that is not: the blocks must hold four
 * lines, the gap must give a drop time to form (better, the pressure time to bleed), and the hair must be thick enough
 * to see. Where an interval straddles its bound the piece may show it. All lengths in m. Common practice, no source.
 */
export function judgePiece(piece: PlannedPiece): Judgement {
  const cannot: string[] = [];
  const may: string[] = [];
  if (piece.b < piece.b_min) cannot.push('The blocks are thinner than four lines: make them wider.');
  if (piece.g < piece.x_1.low) cannot.push('The gap is crossed before a drop can form: widen it.');
  else if (piece.g < piece.x_b.high) {
    may.push('The gap may be crossed before the pressure has bled away: widen it, or travel more slowly.');
  }
  if (piece.d_s.high < piece.d_v) {
    cannot.push('The hair would be thinner than the eye can find: narrow the gap, or print faster before it.');
  } else if (piece.d_s.low < piece.d_v)
    may.push('The hair may be too thin to see: look with a lens against the light.');
  if (cannot.length > 0) return { state: 'cannot show', reasons: cannot };
  return may.length > 0 ? { state: 'may show', reasons: may } : { state: 'shows', reasons: [] };
}

/** What the size of an offered piece depends on. SI. */
export interface PieceValues {
  /** Nozzle bore. */
  readonly d: number;
  /** Line width. */
  readonly w: number;
  /** Layer height. */
  readonly h: number;
  /** Travel over which a nozzle that is not relieved oozes. */
  readonly x_b: number;
}

const MM = 1e-3;
const LEAST_SIDE = 8 * MM;
const LEAST_LINES = 4;
const HEIGHT = 10 * MM;
const LEAST_LAYERS = 10;
/** A gap an eye can judge, and one that most beds can hold. */
const GAP = { least: 20 * MM, most: 120 * MM };
const NOISE = 1e-9;

/** Least whole multiple of `step` that reaches `length`. */
function wholeSteps(length: number, step: number): number {
  return Math.ceil(length / step - NOISE) * step;
}

/**
 * Size of a sensible piece, m: a side of whole lines (8 mm or four lines, whichever is more), a height of whole layers
 * (10 mm or ten layers), and a gap as long as the nozzle oozes, to the next millimetre, between 20 and 120 mm.
 */
export function sizePiece(values: PieceValues): Blocks {
  const side = wholeSteps(Math.max(LEAST_SIDE, LEAST_LINES * values.w), values.w);
  const height = wholeSteps(Math.max(HEIGHT, LEAST_LAYERS * values.h), values.h);
  const gap = Math.min(Math.max(wholeSteps(values.x_b, MM), GAP.least), GAP.most);
  return { side, height, gap };
}

export interface TestPiece {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly note: string;
}

const inMm = (x: number): string => String(Number((x / MM).toFixed(2)));

/** The offered piece as a binary STL file in mm, with a name and a sentence on its size. Values in SI. */
export function testPiece(values: PieceValues): TestPiece {
  const size = sizePiece(values);
  const short = values.x_b > GAP.most + NOISE;
  const note =
    `Two blocks ${inMm(size.side)} mm square, ${inMm(size.height)} mm high, ${inMm(size.gap)} mm apart. ` +
    (short
      ? 'The nozzle oozes for longer than this gap: travel more slowly to see all of it.'
      : 'A nozzle that is not relieved stops oozing within the gap.');
  return { name: `two-blocks-${inMm(values.d)}-mm-nozzle.stl`, bytes: twoBlocks(size), note };
}
