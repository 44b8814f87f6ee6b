import type { Bins } from './note-lines';

/** Power of bins 0 … used-1. */
export const powerOf = ({ re, im }: Bins, used: number): Float64Array =>
  re.slice(0, used).map((x, k) => x * x + (im[k] ?? 0) ** 2);

/** Mean of ln of a unit exponential variable: minus the Euler-Mascheroni constant. */
const MEAN_LOG = -0.5772156649;

/** Half-width, in bins, of the stretch over which the floor at bin k is taken: a share of the frequency. */
const stretch = (k: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, Math.round(0.25 * k)));

function quantileOf(values: Float64Array, p: number): number {
  values.sort();
  return values[Math.floor(p * values.length)] ?? 0;
}

/** Noise power per bin under lines: a low quantile of the powers nearby, scaled to the mean of an exponential. */
export function roughFloor(power: Float64Array, least: number, most: number): Float64Array {
  const floor = new Float64Array(power.length);
  const quantile = 0.3;
  const scale = 1 / -Math.log(1 - quantile);
  let lastAt = 0;
  let last = 0;
  for (let k = 1; ; k = Math.min(power.length - 1, k + 1 + Math.floor(k / 8))) {
    const half = stretch(k, least, most);
    const from = Math.max(1, k - half);
    const now = Math.log(quantileOf(power.slice(from, Math.min(power.length, k + half + 1)), quantile) * scale + 1e-30);
    if (lastAt === 0) last = now;
    for (let i = lastAt; i <= k; i += 1) {
      floor[i] = Math.exp(lastAt === k ? now : last + ((now - last) * (i - lastAt)) / (k - lastAt));
    }
    lastAt = k;
    last = now;
    if (k === power.length - 1) return floor;
  }
}

/**
 * Noise power per bin, from what is left after the lines are taken out: mean of the logarithms nearby (a power law in
 * frequency passes it unchanged), each held within reason of the rough floor.
 */
export function smoothFloor(rest: Float64Array, rough: Float64Array, least: number, most: number): Float64Array {
  const size = rough.length;
  const sums = new Float64Array(size + 1);
  for (let k = 1; k < size; k += 1) {
    const power = rest[k] ?? 0;
    const held = Math.min(6 * (rough[k] ?? 0), Math.max(0.003 * (rough[k] ?? 0), power));
    sums[k + 1] = (sums[k] ?? 0) + Math.log(held + 1e-30);
  }
  const floor = new Float64Array(size);
  for (let k = 1; k < size; k += 1) {
    const half = stretch(k, least, most);
    const from = Math.max(1, k - half);
    const to = Math.min(size, k + half + 1);
    floor[k] = Math.exp(((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from) - MEAN_LOG);
  }
  floor[0] = floor[1] ?? 0;
  return floor;
}
