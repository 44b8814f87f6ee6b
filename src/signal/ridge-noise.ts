import { spectrumOf } from './spectrum';

/** The smallest power of two that is at least `n`. */
export const powerOfTwo = (n: number): number => 2 ** Math.ceil(Math.log2(Math.max(2, n)));

/** Hann's window. */
export function hann(n: number): Float64Array {
  return Float64Array.from({ length: n }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / n));
}

/** Power spectrum per value: white noise of variance s² gives s² on the average in every bin, windowed or not. */
export function powerOf(values: Float64Array, window: Float64Array | undefined, size: number): Float64Array {
  const weighted = window ? values.map((value, i) => value * (window[i] ?? 0)) : values;
  const total = window ? window.reduce((sum, w) => sum + w * w, 0) : values.length;
  const { re, im } = spectrumOf(weighted, size, 1);
  return re.map((value, k) => (value ** 2 + (im[k] ?? 0) ** 2) / total);
}

/** Independent bins that a floor is taken from at least. */
const LEAST_BINS = 20;
const WIDTH = 1.25;
const KNOTS_PER_OCTAVE = 4;

/**
 * The noise's power beside any lines: at each bin the median of those around it over ln 2 (of exponentially distributed
 * powers the mean), within a factor of 1.25 or over 20 independent bins. A wall's noise grows towards slow waves: what is
 * taken from faster ones counts by the ratio of the frequencies, as if it were pink, so that it is not called too small.
 * @param padding bins per independent bin
 */
export function floorOf(power: Float64Array, padding: number): Float64Array {
  const bins = power.length;
  const knots: { at: number; log: number }[] = [];
  const first = Math.max(1, padding);
  for (let at = first; at < bins * 2 ** (1 / KNOTS_PER_OCTAVE); at *= 2 ** (1 / KNOTS_PER_OCTAVE)) {
    const centre = Math.min(at, bins - 1);
    const from = Math.max(1, Math.floor(Math.min(centre / WIDTH, bins - LEAST_BINS * padding)));
    const to = Math.min(bins - 1, Math.ceil(Math.max(centre * WIDTH, from + LEAST_BINS * padding)));
    const nearby = Float64Array.from(power.subarray(from, to + 1), (value, k) => (value * (from + k)) / centre).sort();
    const median = nearby[nearby.length >> 1] ?? 0;
    knots.push({ at: centre, log: Math.log(Math.max(1e-30, median / Math.LN2)) });
  }
  let knot = 0;
  return Float64Array.from(power, (_, k) => {
    while (knot < knots.length - 2 && (knots[knot + 1]?.at ?? Infinity) < k) knot += 1;
    const a = knots[knot] ?? { at: 1, log: 0 };
    const b = knots[knot + 1] ?? a;
    if (b.at <= a.at) return Math.exp(a.log);
    const share = Math.min(1, Math.max(0, Math.log(Math.max(1, k) / a.at) / Math.log(b.at / a.at)));
    return Math.exp(a.log + share * (b.log - a.log));
  });
}
