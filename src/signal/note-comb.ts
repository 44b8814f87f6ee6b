import type { Line } from './note-lines';

/** A line as the comb sees it, in hertz. */
export interface Peak {
  readonly frequency: number;
  /** Standard uncertainty of the frequency from the noise alone. */
  readonly spread: number;
  readonly gain: number;
  readonly line: Line;
}

export interface Match {
  readonly order: number;
  readonly peak: Peak;
}

export interface Comb {
  /** First partial, Hz, and inharmonicity. */
  frequency: number;
  inharmonicity: number;
  score: number;
  matches: readonly Match[];
}

export interface Scene {
  readonly peaks: readonly Peak[];
  /** Frequencies at which sound stood before the pluck: a partial there counts neither for nor against. */
  readonly standing: readonly number[];
  readonly low: number;
  readonly high: number;
  /** Power over noise of what is left at a frequency, for partials too weak to have been taken as lines. */
  readonly left: (frequency: number) => number;
  readonly top: number;
}

const STIFFNESSES = [0, 3e-4, 8e-4, 1.5e-3, 2.6e-3];
const MOST_ORDERS = 40;
/** So many partials in a row missing end a comb: what lies farther on is chance. */
const WIDEST_GAP = 6;
/** Prior of the inharmonicity: mean and standard deviation. */
const STIFFNESS_PRIOR = { mean: 6e-4, deviation: 8e-4 };

/** Frequency of partial n over that of the first: n sqrt((1 + B n²)/(1 + B)). */
export const partialRatio = (n: number, b: number): number => n * Math.sqrt((1 + b * n * n) / (1 + b));

/** What a line of this gain is worth as evidence, in nepers of likelihood: a chance line seldom falls on a comb's tooth. */
const worth = (gain: number): number => Math.min(4, 0.5 * (gain - 7)) + Math.max(0, Math.log10(gain / 20));

/**
 * Least squares of (f_n/n)² = f_0² (1 + B n²), the prior on B as one more observation. Returns f_1, B, f_1's variance, and by how much
 * f_1 goes with each partial (Hz per Hz).
 */
export function fitComb(matches: readonly Match[], variances: readonly number[]) {
  const first = matches[0];
  if (!first) return undefined;
  // Two passes: the prior on B weighs by f_0².
  let f0 = first.peak.frequency / first.order;
  let b = STIFFNESS_PRIOR.mean;
  let cov = { ff: 0, fb: 0, bb: 0 };
  for (let pass = 0; pass < 4; pass += 1) {
    let hff = 0;
    let hfb = 0;
    let hbb = 1 / STIFFNESS_PRIOR.deviation ** 2;
    let gf = 0;
    let gb = (STIFFNESS_PRIOR.mean - b) * hbb;
    matches.forEach(({ order: n, peak }, i) => {
      const root = Math.sqrt(1 + b * n * n);
      const df = n * root;
      const db = (f0 * n * n * n) / (2 * root);
      const weight = 1 / (variances[i] ?? 0);
      const miss = peak.frequency - f0 * n * root;
      hff += weight * df * df;
      hfb += weight * df * db;
      hbb += weight * db * db;
      gf += weight * df * miss;
      gb += weight * db * miss;
    });
    const det = hff * hbb - hfb * hfb;
    f0 += (hbb * gf - hfb * gb) / det;
    b = Math.max(-1e-4, b + (hff * gb - hfb * gf) / det);
    cov = { ff: hbb / det, fb: -hfb / det, bb: hff / det };
  }
  const root = Math.sqrt(1 + b);
  const db = f0 / (2 * root);
  const variance = root * root * cov.ff + 2 * root * db * cov.fb + db * db * cov.bb;
  const pulls = matches.map(({ order: n }, i) => {
    const own = Math.sqrt(1 + b * n * n);
    const [df, dB] = [n * own, (f0 * n * n * n) / (2 * own)];
    return (root * (cov.ff * df + cov.fb * dB) + db * (cov.fb * df + cov.bb * dB)) / (variances[i] ?? 0);
  });
  return { frequency: f0 * root, inharmonicity: b, variance, pulls };
}

/** How far a line may lie from a tooth of the comb, as a standard deviation: noise, and strings that bend the law a little. */
const slack = (peak: Peak, predicted: number): number => Math.sqrt(peak.spread ** 2 + (0.15 + 0.0012 * predicted) ** 2);

function nearest(peaks: readonly Peak[], frequency: number): Peak | undefined {
  let low = 0;
  let high = peaks.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if ((peaks[mid]?.frequency ?? Infinity) < frequency) low = mid + 1;
    else high = mid;
  }
  const above = peaks[low];
  const below = peaks[low - 1];
  if (!above || !below) return above ?? below;
  return above.frequency - frequency < frequency - below.frequency ? above : below;
}

/** Scores a comb against the lines; `loose` widens the teeth for a stiffness taken from a grid. */
function score(scene: Scene, frequency: number, b: number, loose: number): Comb {
  const matches: Match[] = [];
  const missing: number[] = [];
  let sum = 0;
  for (let n = 1; n <= MOST_ORDERS; n += 1) {
    const predicted = frequency * partialRatio(n, b);
    if (predicted > scene.top || n - (matches.at(-1)?.order ?? 2) > WIDEST_GAP) break;
    const peak = nearest(scene.peaks, predicted);
    if (peak) {
      const off = (peak.frequency - predicted) / (slack(peak, predicted) + loose * predicted);
      if (Math.abs(off) < 3 && matches.at(-1)?.peak !== peak) {
        matches.push({ order: n, peak });
        sum += Math.max(0, worth(peak.gain) - (off * off) / 2);
        continue;
      }
    }
    missing.push(n);
  }
  // A partial missing among strong ones is a surprise; among weak ones, or beyond the last, it is none.
  const last = matches.at(-1)?.order ?? 0;
  let next = 0;
  for (const n of missing) {
    if (n > last) break;
    while ((matches[next]?.order ?? Infinity) < n) next += 1;
    const above = matches[next]?.peak.gain ?? 0;
    const below = matches[next - 1]?.peak.gain ?? above;
    const predicted = frequency * partialRatio(n, b);
    if (scene.standing.some((f) => Math.abs(f - predicted) < 3)) continue;
    const expected = Math.log10(Math.sqrt(above * below) / 10);
    const left = scene.left(predicted);
    sum -= Math.min(3, 0.4 + 0.8 * expected) - Math.min(1.5, Math.max(0, (left - 2) / 3));
  }
  return { frequency, inharmonicity: b, score: sum, matches };
}

const apart = (a: number, b: number): boolean => Math.abs(a / b - 1) > 0.015;

/** The combs that explain the lines best, best first, no two within 1.5 %. */
export function rankCombs(scene: Scene): Comb[] {
  const strong = [...scene.peaks].sort((a, b) => b.gain - a.gain).slice(0, 8);
  const rough: Comb[] = [];
  for (const peak of strong) {
    for (let n = 1; n <= 12; n += 1) {
      for (const b of STIFFNESSES) {
        const frequency = peak.frequency / partialRatio(n, b);
        if (frequency > scene.high * 1.02 || frequency < scene.low * 0.98) continue;
        rough.push(score(scene, frequency, b, 0.0015));
      }
    }
  }
  rough.sort((a, b) => b.score - a.score);
  const kept: Comb[] = [];
  for (const comb of rough) {
    if (kept.length >= 10) break;
    if (kept.filter((k) => !apart(k.frequency, comb.frequency)).length < 2) kept.push(comb);
  }
  const fine = kept.map((comb) => {
    let now = comb;
    for (let pass = 0; pass < 3; pass += 1) {
      const fit = fitComb(
        now.matches,
        now.matches.map(({ peak, order }) => slack(peak, order * now.frequency) ** 2),
      );
      if (!fit) break;
      now = score(scene, fit.frequency, fit.inharmonicity, 0);
    }
    return now;
  });
  fine.sort((a, b) => b.score - a.score);
  return fine.filter((comb, i) => fine.slice(0, i).every((better) => apart(better.frequency, comb.frequency)));
}
