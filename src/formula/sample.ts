import type { InputValue, Shape } from './outcome';

/** Draws per propagation: enough for two digits of uncertainty (quantiles repeat to about 3 %). */
const DRAWS = 2000;
const SEED = 20_260_401;

/** A small seeded generator (mulberry32, public domain), so that the same readings always give the same result. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Inverse of the standard normal distribution (Acklam's rational approximation, relative error below 1.2e-9, from memory). */
function normalQuantile(p: number): number {
  const a = [-39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716];
  const b = [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572];
  const c = [-0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968];
  const d = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416];
  const horner = (coefficients: readonly number[], x: number, last: number): number =>
    coefficients.reduce((sum, k) => sum * x + k, 0) * x + last;
  const tail = 0.02425;
  if (p < tail || p > 1 - tail) {
    const q = Math.sqrt(-2 * Math.log(Math.min(p, 1 - p)));
    const x = horner(c, q, 2.938163982698783) / horner(d, q, 1);
    return p < tail ? x : -x;
  }
  const q = p - 0.5;
  const r = q * q;
  return (horner(a, r, 2.506628277459239) * q) / horner(b, r, 1);
}

/** A column of standardised draws (mean 0, standard deviation 1), one in each of DRAWS equal strata, shuffled. */
function column(shape: Shape, random: () => number): Float64Array {
  const draws = new Float64Array(DRAWS);
  for (let i = 0; i < DRAWS; i += 1) {
    const p = (i + random()) / DRAWS;
    draws[i] = shape === 'normal' ? normalQuantile(p) : Math.sqrt(3) * (2 * p - 1);
  }
  for (let i = DRAWS - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    const held = draws[i] ?? 0;
    draws[i] = draws[j] ?? 0;
    draws[j] = held;
  }
  return draws;
}

const cache = new Map<string, Float64Array>();

function cachedColumn(index: number, shape: Shape): Float64Array {
  const key = `${index}${shape}`;
  const found = cache.get(key);
  if (found) return found;
  const made = column(shape, generator(SEED + index * 7919 + (shape === 'normal' ? 1 : 0)));
  cache.set(key, made);
  return made;
}

export interface Sampled {
  readonly u: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Propagation of distributions by stratified sampling (JCGM 101, clauses 5 and 7): standard deviation about the mean and
 * the 2.5 % and 97.5 % quantiles of `f`.
 *
 * @param inputs uncertain inputs, in a fixed order
 * @param f result for a set of input values in that order (SI); may throw
 */
export function propagateBySampling(inputs: readonly InputValue[], f: (x: readonly number[]) => number): Sampled {
  const columns = inputs.map((input, i) => cachedColumn(i, input.shape));
  const results = new Float64Array(DRAWS);
  const x = inputs.map((input) => input.value);
  for (let k = 0; k < DRAWS; k += 1) {
    inputs.forEach((input, i) => {
      x[i] = input.value + input.u * (columns[i]?.[k] ?? 0);
    });
    results[k] = f(x);
  }
  let mean = 0;
  for (const y of results) mean += y / DRAWS;
  let variance = 0;
  for (const y of results) variance += (y - mean) ** 2 / (DRAWS - 1);
  results.sort();
  const quantile = (p: number): number => results[Math.round(p * (DRAWS - 1))] ?? NaN;
  return { u: Math.sqrt(variance), low: quantile(0.025), high: quantile(0.975) };
}
