import { spectrumOf } from './spectrum';

export interface Period {
  /** Hz. */
  readonly frequency: number;
  /** 1 where the sound repeats itself wholly, 0 where not at all. */
  readonly clarity: number;
}

/** A key maximum counts from this share of the highest on. */
const KEY = 0.9;

/** The sound's likeness to itself, lag by lag: normalised square difference, -1 to 1. */
function likeness(samples: Float64Array, lags: number): Float64Array {
  const size = 2 ** Math.ceil(Math.log2(samples.length + lags));
  const { re, im } = spectrumOf(samples, size, 1);
  const power = new Float64Array(size);
  for (let k = 0; k < re.length; k += 1) {
    power[k] = (re[k] ?? 0) ** 2 + (im[k] ?? 0) ** 2;
    if (k > 0) power[size - k] = power[k] ?? 0;
  }
  // A power spectrum is real and even: forth is back.
  const { re: sums } = spectrumOf(power, size, 1);
  const out = new Float64Array(lags);
  let both = 2 * samples.reduce((sum, x) => sum + x * x, 0);
  for (let lag = 0; lag < lags; lag += 1) {
    out[lag] = both > 0 ? (2 * (sums[lag] ?? 0)) / size / both : 0;
    both -= (samples[lag] ?? 0) ** 2 + (samples[samples.length - 1 - lag] ?? 0) ** 2;
  }
  return out;
}

/** The highest place between each rise through zero and the fall after it. */
function keyMaxima(values: Float64Array): number[] {
  const found: number[] = [];
  let best: number | undefined;
  let hasFallen = false;
  for (let lag = 1; lag < values.length - 1; lag += 1) {
    const value = values[lag] ?? 0;
    if (value <= 0) {
      if (best !== undefined) found.push(best);
      best = undefined;
      hasFallen = true;
    } else if (hasFallen && value > (values[lag - 1] ?? 0) && value >= (values[lag + 1] ?? 0)) {
      if (best === undefined || value > (values[best] ?? 0)) best = lag;
    }
  }
  if (best !== undefined) found.push(best);
  return found;
}

/**
 * How often a second a sound repeats itself, and how clearly: the first key maximum of the normalised square difference
 * function (McLeod & Wyvill, A smarter way to find pitch, ICMC 2005, from memory). Knows nothing of partials, so it errs
 * otherwise than a comb does.
 * @param samples a third of a second, full scale 1
 * @param low least frequency looked for, Hz
 */
export function clearestPeriod(samples: Float64Array, rate: number, low: number): Period | undefined {
  const mean = samples.reduce((sum, x) => sum + x, 0) / Math.max(1, samples.length);
  const lags = Math.min(Math.ceil(rate / low) + 2, samples.length >> 1);
  const values = likeness(
    samples.map((x) => x - mean),
    lags,
  );
  const maxima = keyMaxima(values);
  const highest = Math.max(0, ...maxima.map((lag) => values[lag] ?? 0));
  const lag = maxima.find((at) => (values[at] ?? 0) >= KEY * highest);
  if (lag === undefined) return undefined;
  const [before, here, after] = [values[lag - 1] ?? 0, values[lag] ?? 0, values[lag + 1] ?? 0];
  const bend = before - 2 * here + after;
  const off = bend < 0 ? (0.5 * (before - after)) / bend : 0;
  return { frequency: rate / (lag + off), clarity: Math.min(1, here - 0.25 * (before - after) * off) };
}
