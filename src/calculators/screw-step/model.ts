import { asFraction, type Fraction } from '../../formula/fraction';

/** A pattern longer than this many layers is not one that a wall shows. */
export const LONGEST_REPEAT = 1000;

/** One layer of the pattern. Lengths in m; errors are what is printed less what was asked. */
export interface Layer {
  /** 1 for the first after a height that was met exactly. */
  readonly number: number;
  /** Error of the height of its top. */
  readonly height: number;
  /** Error of its thickness. */
  readonly thickness: number;
}

/** round(i * h / g), a half going up; in whole numbers where the ratio is a fraction, so that no float decides a half. */
function stepsAt(i: number, ratio: number, fraction: Fraction | undefined): number {
  if (!fraction) return Math.round(i * ratio);
  const { numerator, denominator } = fraction;
  return Math.floor((2 * i * numerator + denominator) / (2 * denominator));
}

/**
 * Errors of `count` layers when every height is rounded to the grid: round(i h / g) g − i h.
 *
 * @param h layer height, m
 * @param g travel of one step of the grid, m
 */
export function layerErrors(h: number, g: number, count: number): Layer[] {
  const fraction = asFraction(h / g, LONGEST_REPEAT);
  const ratio = fraction ? fraction.numerator / fraction.denominator : h / g;
  const errorAt = (i: number): number => (stepsAt(i, ratio, fraction) - i * ratio) * g;
  return Array.from({ length: count }, (_, i) => ({
    number: i + 1,
    height: errorAt(i + 1),
    thickness: (stepsAt(i + 1, ratio, fraction) - stepsAt(i, ratio, fraction) - ratio) * g,
  }));
}

/** What a layer height does on a grid of steps. Lengths in m. */
export interface Pattern {
  /** Layers after which the pattern begins again; undefined beyond LONGEST_REPEAT. 1: no rounding at all. */
  readonly repeat: number | undefined;
  /** Distance along Z after which the pattern begins again: `repeat` layers. */
  readonly period: number | undefined;
  /** Mean distance along Z from one odd layer to the next; undefined where no layer is odd. */
  readonly oddEvery: number | undefined;
  /** Largest error of a layer's thickness. */
  readonly largest: number;
  /** Nearest heights that are whole steps; `below` is undefined where it would be zero. Equal to h where h is whole. */
  readonly below: number | undefined;
  readonly above: number;
}

/**
 * The pattern of a layer height on a grid. A layer is floor(h/g) or ceil(h/g) steps thick, and where h/g is not whole both
 * occur, because their mean is h: so the largest error needs no search.
 *
 * @param h layer height, m
 * @param g travel of one step of the grid, m
 */
export function patternOf(h: number, g: number): Pattern {
  const fraction = asFraction(h / g, LONGEST_REPEAT);
  const repeat = fraction?.denominator;
  const ratio = fraction ? fraction.numerator / fraction.denominator : h / g;
  const low = Math.floor(ratio);
  const high = Math.ceil(ratio);
  const odd = Math.min(ratio - low, high - ratio);
  return {
    repeat,
    period: repeat === undefined ? undefined : repeat * h,
    oddEvery: odd > 0 ? h / odd : undefined,
    largest: Math.max(ratio - low, high - ratio) * g,
    below: low > 0 ? low * g : undefined,
    above: high * g,
  };
}

/** More than this no driver divides a step into. */
const MOST_MICROSTEPS = 256;

/** Settings of a driver that divide a step finer: it counts in powers of two. Common practice, no source. */
export function moreMicrosteps(m: number): readonly number[] {
  return Array.from({ length: 9 }, (_, i) => 2 ** i).filter((one) => one > m && one <= MOST_MICROSTEPS);
}

/** Layer heights in usual use, m. Common practice, no source. */
export const USUAL_HEIGHTS: readonly number[] = [
  0.04, 0.05, 0.06, 0.08, 0.1, 0.12, 0.15, 0.16, 0.18, 0.2, 0.24, 0.25, 0.28, 0.3, 0.32, 0.35, 0.4,
].map((mm) => mm / 1000);
