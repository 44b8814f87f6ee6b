/** The rate that decimation aims at, Hz: whole partials up to 2 kHz and no more samples than these need. */
const AIM = 4600;
/** Highest frequency kept whole, Hz. */
const BAND = 2000;

export interface Decimated {
  readonly samples: Float64Array;
  readonly rate: number;
}

/** Stages by which to divide the rate, each at most 6, or [] where the rate is low already. */
function stagesFor(rate: number): readonly number[] {
  for (let whole = Math.floor(rate / AIM); whole > 1; whole -= 1) {
    const stages: number[] = [];
    let rest = whole;
    for (let factor = 6; factor > 1; factor -= 1) {
      while (rest % factor === 0) {
        stages.push(factor);
        rest /= factor;
      }
    }
    if (rest === 1) return stages;
  }
  return [];
}

const filters = new Map<string, Float64Array>();

/** Half of a symmetric low-pass (Blackman-windowed sinc), centre first; stops what would fold back below BAND. */
function halfFilter(rate: number, factor: number): Float64Array {
  const key = `${rate}/${factor}`;
  const made = filters.get(key);
  if (made) return made;
  const stop = rate / factor - BAND;
  const half = Math.ceil((2.75 * rate) / Math.max(200, stop - BAND));
  const cut = (stop + BAND) / 2 / rate;
  const taps = new Float64Array(half + 1);
  let sum = 0;
  for (let k = 0; k <= half; k += 1) {
    const x = (Math.PI * k) / (half + 1);
    const window = 0.42 + 0.5 * Math.cos(x) + 0.08 * Math.cos(2 * x);
    taps[k] = window * (k === 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * k) / (Math.PI * k));
    sum += (taps[k] ?? 0) * (k === 0 ? 1 : 2);
  }
  for (let k = 0; k <= half; k += 1) taps[k] = (taps[k] ?? 0) / sum;
  filters.set(key, taps);
  return taps;
}

function stage(samples: ArrayLike<number>, rate: number, factor: number): Float64Array {
  const taps = halfFilter(rate, factor);
  const half = taps.length - 1;
  const padded = new Float64Array(samples.length + 2 * half);
  padded.set(samples, half);
  const out = new Float64Array(Math.ceil(samples.length / factor));
  for (let m = 0; m < out.length; m += 1) {
    const centre = m * factor + half;
    let sum = (taps[0] ?? 0) * (padded[centre] ?? 0);
    for (let k = 1; k <= half; k += 1) {
      sum += (taps[k] ?? 0) * ((padded[centre - k] ?? 0) + (padded[centre + k] ?? 0));
    }
    out[m] = sum;
  }
  return out;
}

/**
 * Samples at a lower rate (about 4.6 to 5.5 kHz), without delay, whole up to 2 kHz; what folds back lies 70 dB down. The
 * first and last 4 ms feel the edges.
 */
export function decimate(samples: ArrayLike<number>, rate: number): Decimated {
  let now: Float64Array = new Float64Array(samples);
  let at = rate;
  for (const factor of stagesFor(rate)) {
    now = stage(now, at, factor);
    at /= factor;
  }
  return { samples: now, rate: at };
}
