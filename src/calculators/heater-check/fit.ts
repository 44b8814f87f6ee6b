/** One reading of a curve, SI, with standard uncertainties. */
export interface Point {
  readonly t: number;
  readonly T: number;
  readonly ut: number;
  readonly uT: number;
}

export interface Fit {
  /** Temperature at which rate and loss rate do not correlate, K: a fixed number of this fit. */
  readonly at: number;
  /** Rate of change at that temperature, K/s, and its standard uncertainty. */
  readonly rate: number;
  readonly uRate: number;
  /** Loss rate G/C, 1/s, and its standard uncertainty. */
  readonly k: number;
  readonly uk: number;
  /** Temperature at the first reading, K. */
  readonly start: number;
  /** Rate at the first reading, K/s. */
  readonly startRate: number;
}

type Row = readonly [number, number, number];
type Matrix = readonly [Row, Row, Row];

/** Below this a reading that claims to be exact does not outweigh all others. */
const LEAST_U = 1e-4;
const ROUNDS = 40;

/** (1 − e^(−ks)) / k, which is s where there is no loss. */
function reach(k: number, s: number): number {
  return Math.abs(k * s) < 1e-9 ? s : -Math.expm1(-k * s) / k;
}

/** Its derivative with respect to k. */
function reachByLoss(k: number, s: number): number {
  const x = k * s;
  // Series near zero, where the closed form loses its digits.
  if (Math.abs(x) < 1e-3) return s * s * (-1 / 2 + x / 3 - (x * x) / 8);
  return (s * Math.exp(-x) - reach(k, s)) / k;
}

function determinant([[a, b, c], [d, e, f], [g, h, i]]: Matrix): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}

/** Inverse of a symmetric matrix, undefined where it has none. */
function inverse(m: Matrix): Matrix | undefined {
  const det = determinant(m);
  const [[a, b, c], [, e, f], [, , i]] = m;
  if (!(Math.abs(det) > 1e-12 * Math.abs(a * e * i))) return undefined;
  const [p, q, r] = [(e * i - f * f) / det, (c * f - b * i) / det, (b * f - c * e) / det];
  const [s, t, u] = [(a * i - c * c) / det, (b * c - a * f) / det, (a * e - b * b) / det];
  return [
    [p, q, r],
    [q, s, t],
    [r, t, u],
  ];
}

/** Normal equations of a step in start, rate and loss; times count from the first reading. */
function normal(points: readonly Point[], weights: readonly number[], start: number, rate: number, k: number) {
  const sum = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0];
  points.forEach(({ t, T }, i) => {
    const x: Row = [1, reach(k, t), rate * reachByLoss(k, t)];
    const off = T - start - rate * x[1];
    const w = weights[i] ?? 0;
    [x[0] * x[0], x[0] * x[1], x[0] * x[2], x[1] * x[1], x[1] * x[2], x[2] * x[2]].forEach((product, n) => {
      sum[n] = (sum[n] ?? 0) + w * product;
    });
    x.forEach((one, n) => (sum[6 + n] = (sum[6 + n] ?? 0) + w * one * off));
    sum[9] = (sum[9] ?? 0) + w * off * off;
  });
  const [aa = 0, ab = 0, ac = 0, bb = 0, bc = 0, cc = 0, a = 0, b = 0, c = 0, chi2 = 0] = sum;
  const matrix: Matrix = [
    [aa, ab, ac],
    [ab, bb, bc],
    [ac, bc, cc],
  ];
  return { matrix, right: [a, b, c] as const, chi2 };
}

const times = ([x, y, z]: Row, [a, b, c]: Row): number => x * a + y * b + z * c;

/**
 * Least squares of the exact solution T = start + rate (1 − e^(−ks)) / k of dT/dt = rate − k (T − start), by Gauss and
 * Newton with halved steps; each reading weighted by its doubts in temperature and time. Where the readings scatter more
 * than they claim, all uncertainties grow by the Birge ratio. Undefined where they do not determine the curve.
 *
 * @param readings at least four, of different times
 */
export function fitCurve(readings: readonly Point[]): Fit | undefined {
  const sorted = [...readings].sort((a, b) => a.t - b.t);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || sorted.length < 4 || !(last.t > first.t)) return undefined;
  const points = sorted.map((point) => ({ ...point, t: point.t - first.t }));
  const span = last.t - first.t;
  let [start, rate, k] = [first.T, (last.T - first.T) / span, 0.5 / span];
  const weigh = () => points.map(({ t, ut, uT }) => 1 / (uT ** 2 + (rate * Math.exp(-k * t) * ut) ** 2 + LEAST_U ** 2));
  let weights = weigh();
  for (let round = 0; round < ROUNDS; round += 1) {
    // Weights follow the slope for a while, then stay, so that the last steps converge.
    if (round < ROUNDS / 2) weights = weigh();
    const { matrix, right, chi2 } = normal(points, weights, start, rate, k);
    const covariance = inverse(matrix);
    if (!covariance) return undefined;
    const step = covariance.map((row) => times(row, right));
    let share = 1;
    for (; share > 1e-4; share /= 2) {
      const next = [start + share * (step[0] ?? 0), rate + share * (step[1] ?? 0), k + share * (step[2] ?? 0)] as const;
      if (Math.abs(next[2] * span) > 50) continue;
      if (normal(points, weights, ...next).chi2 <= chi2 * (1 + 1e-12)) {
        [start, rate, k] = next;
        break;
      }
    }
  }
  const { matrix, chi2 } = normal(points, weights, start, rate, k);
  const covariance = inverse(matrix);
  if (!covariance || ![start, rate, k].every(Number.isFinite)) return undefined;
  const birge = Math.max(1, chi2 / (points.length - 3));
  const [[, , startLoss], [, rateRate, rateLoss], [, , lossLoss]] = covariance;
  const [startStart, startRate] = [covariance[0][0], covariance[0][1]];
  // Rate at `at` is rate − k (at − start): chosen so that its covariance with k is nil.
  const above = (rateLoss + k * startLoss) / lossLoss;
  const gradient: Row = [k, 1, -above];
  const rows: Matrix = [
    [startStart, startRate, startLoss],
    [startRate, rateRate, rateLoss],
    [startLoss, rateLoss, lossLoss],
  ];
  const variance = times(gradient, [times(rows[0], gradient), times(rows[1], gradient), times(rows[2], gradient)]);
  return {
    at: start + above,
    rate: rate - k * above,
    uRate: Math.sqrt(Math.max(variance, 0) * birge),
    k,
    uk: Math.sqrt(lossLoss * birge),
    start,
    startRate: rate,
  };
}
