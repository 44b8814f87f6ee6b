import type { Pose, Tilt } from './level';

/** Two readings at one place, the second with the phone turned half a turn on what it lies on. */
export interface Pair {
  readonly first: Pose;
  readonly second: Pose;
  /** The second was read before the first: pairs that come in turn so cancel a drift. */
  readonly turnedFirst?: boolean;
}

/** What cannot be seen in the readings: 95 % limits. */
export interface Assumptions {
  /** By how much one laying of the phone differs from the next, as a slope. */
  readonly laying: number;
  /** How far the phone's long edge lies off the bar, each time, rad. Half a turn is off by the difference of two. */
  readonly direction: number;
}

/** Sensor's axis against the phone's edge, and leakage of one axis into the other: 95 % limit, rad. Common practice, no source. */
export const AXIS = (2 * Math.PI) / 180;
/** Scale of the axis: 95 % limit, share. Common practice, no source. */
export const SCALE = 0.03;
/** A sensor that warms drifts from one reading to the next by up to this, as a slope: 95 % limit. Common practice, no source. */
export const WARMING = 0.5e-3;
/** From so many pairs on, their own spread says how well they repeat, whatever was assumed. */
export const ENOUGH_PAIRS = 5;

/** Shares of the uncertainty, standard, as slopes. */
export interface Parts {
  /** Noise and laying: from the spread of the pairs, or as assumed. */
  readonly repeat: number;
  readonly steps: number;
  readonly direction: number;
  readonly scale: number;
  /** What a warming sensor leaves where the order of the readings does not cancel it. */
  readonly drift: number;
}

export interface Level {
  /** Rise over run along the bar: positive where the end is high that the earpiece pointed at in the first readings. */
  readonly slope: number;
  /** Half-width of the 95 % interval. */
  readonly halfWidth: number;
  /** The same across the bar: positive where the side is high that the phone's right edge lay at in the first readings. */
  readonly across: number;
  /** The sensor's own error along and across, taken as a slope. */
  readonly zero: number;
  readonly zeroAcross: number;
  readonly parts: Parts;
  /** The repeatability is the pairs' own, not assumed. */
  readonly seen: boolean;
  /** Largest distance of one pair's zero error from the mean of all, over what its uncertainty explains (95 %). One pair: undefined. */
  readonly disagreement: number | undefined;
}

const Z = 1.959963984540054;

/** The 97.5 % point of Student's t, for ν of 3 or more within 0.1 % (Abramowitz & Stegun 26.7.5, from memory). */
export function student(nu: number): number {
  const [z3, z5, z7, z9] = [Z ** 3, Z ** 5, Z ** 7, Z ** 9];
  return (
    Z +
    (z3 + Z) / (4 * nu) +
    (5 * z5 + 16 * z3 + 3 * Z) / (96 * nu ** 2) +
    (3 * z7 + 19 * z5 + 17 * z3 - 15 * Z) / (384 * nu ** 3) +
    (79 * z9 + 776 * z7 + 1482 * z5 - 1920 * z3 - 945 * Z) / (92160 * nu ** 4)
  );
}

const meanOf = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0) / values.length;

interface Axis {
  readonly mean: number;
  readonly zero: number;
  /** Standard uncertainty of the mean from noise and laying as assumed. */
  readonly expected: number;
  /** The same from the spread of the pairs; 0 for one pair. */
  readonly spread: number;
  /** Of the steps, which no repeating averages out. */
  readonly steps: number;
  /** Standard uncertainty that a drift leaves: none where the pairs' order cancels it. */
  readonly drift: number;
  /** What was fitted to the pairs: their mean, and the drift where it can be told. */
  readonly fitted: number;
  readonly disagreement: number;
}

/**
 * Reversal along one axis: tilt (r1 − r2)/2, zero error (r1 + r2)/2 (Evans, Hocken & Estler, CIRP Annals 1996, from memory).
 *
 * A zero error that grows by d from each reading to the next makes a tilt wrong by −d/2, and by +d/2 where the second was
 * read before the first. Where both orders occur d is fitted by least squares beside the tilt, and drops out (A B B A;
 * Cox, Planning of Experiments, 1958, on trends, from memory).
 * @param orders of each pair: 1, or -1 where the second was read before the first
 */
function reverse(pairs: readonly (readonly [Tilt, Tilt])[], orders: readonly number[], laying: number): Axis {
  const n = pairs.length;
  const turning = meanOf(orders);
  const free = 1 - turning ** 2;
  const isTold = free > 0;
  const tilts = pairs.map(([one, two]) => (one.sine - two.sine) / 2);
  const zeros = pairs.map(([one, two]) => (one.sine + two.sine) / 2);
  const plain = meanOf(tilts);
  const slope = isTold ? meanOf(tilts.map((tilt, i) => (tilt - plain) * (orders[i] ?? 1))) / free : 0;
  const mean = plain - slope * turning;
  const zero = meanOf(zeros);
  const noise = meanOf(pairs.map(([one, two]) => (one.u ** 2 + two.u ** 2) / 4));
  const steps = Math.sqrt(meanOf(pairs.map(([one, two]) => (one.steps ** 2 + two.steps ** 2) / 12)));
  const once = noise + laying ** 2 / 2;
  const fitted = isTold ? 2 : 1;
  const left = meanOf(tilts.map((tilt, i) => (tilt - mean - slope * (orders[i] ?? 1)) ** 2));
  const scatter = n > fitted ? left / (n - fitted) / (isTold ? free : 1) : 0;
  // A drift moves the zero error too, by two readings from pair to pair.
  const explained = 2 * Math.sqrt((once + steps ** 2) * (1 - 1 / n)) + WARMING * (n - 1);
  return {
    mean,
    zero,
    expected: Math.sqrt(once / n / (isTold ? free : 1)),
    spread: Math.sqrt(scatter),
    steps,
    drift: isTold ? 0 : WARMING / 4,
    fitted,
    disagreement: explained > 0 ? Math.max(...zeros.map((one) => Math.abs(one - zero))) / explained : 0,
  };
}

/**
 * Slope from pairs of readings, the sensor's own error cancelled by turning.
 *
 * Second-order effects: the long edge lies off the bar by δ, different each time, and the sensor's axis off the edge, the
 * same each time: each brings in the tilt across the bar times its sine; the loss along the bar, 1 − cos δ, is below
 * 0.2 % for 3° and drowns in the scale. Standard uncertainties add in squares (JCGM 100, 5.1.2); limits of 95 % are taken
 * as two standard uncertainties; with five pairs or more Student's t with the effective degrees of freedom (G.4.1).
 * @param pairs at least one, all from one source of numbers
 * @returns slopes as ratios
 */
export function levelOf(pairs: readonly Pair[], assumed: Assumptions): Level {
  const n = pairs.length;
  const laying = assumed.laying / 2;
  const orders = pairs.map(({ turnedFirst }) => (turnedFirst === true ? -1 : 1));
  const along = reverse(
    pairs.map(({ first, second }) => [first.along, second.along]),
    orders,
    laying,
  );
  const across = reverse(
    pairs.map(({ first, second }) => [first.across, second.across]),
    orders,
    laying,
  );
  const seen = n >= ENOUGH_PAIRS;
  const repeat = seen ? along.spread : Math.max(along.expected, along.spread);
  const uAcross = Math.hypot(Math.max(across.expected, across.spread), across.steps);
  // What differs from laying to laying is in the pairs' spread already, once that is used.
  const off = Math.hypot(AXIS / 2, seen ? 0 : assumed.direction / 2 / Math.sqrt(2 * n));
  const direction = Math.hypot(across.mean, uAcross) * off;
  const scale = Math.abs(along.mean) * (SCALE / 2);
  const u = Math.hypot(repeat, along.steps, direction, scale, along.drift);
  const effective = seen && repeat > 0 ? (n - along.fitted) * (u / repeat) ** 4 : Infinity;
  const cos = Math.sqrt(1 - along.mean ** 2);
  return {
    slope: along.mean / cos,
    halfWidth: ((Number.isFinite(effective) ? student(effective) : 2) * u) / cos ** 3,
    across: across.mean / Math.sqrt(1 - across.mean ** 2),
    zero: along.zero,
    zeroAcross: across.zero,
    parts: { repeat, steps: along.steps, direction, scale, drift: along.drift },
    seen,
    disagreement: n > 1 ? Math.max(along.disagreement, across.disagreement) : undefined,
  };
}
