import { fitComb, partialRatio, type Match } from './note-comb';

/** A weak line may be a chance one that fell on a tooth: it helps to name the note, not to measure it. */
const LEAST_GAIN = 16;

/**
 * Half-width of a note's 95 % interval over its standard deviation. Student's t at 95 % for the some twenty bins from which the
 * noise about a partial is known is 2.1; the rest is for tails that no normal distribution has.
 */
export const COVERAGE = 2.3;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? 0;
};

/** Of the partials no more than this share is taken for strays. */
const STRAYS = 0.34;

type Kept = readonly { readonly match: Match; readonly variance: number }[];

/** Not all of what bends is the pulleys': of what a room or a phone does the first partial has its part. */
const OWN = 0.25;

/** A line on the first tooth is surely the first partial where it has this share of the strongest's gain: a weaker one may be chance's. */
const SURELY = 0.01;
const firstOf = (kept: Kept): Match | undefined => {
  const [first] = kept;
  const most = Math.max(...kept.map(({ match }) => match.peak.gain));
  return first?.match.order === 1 && first.match.peak.gain >= SURELY * most ? first.match : undefined;
};

/** The fit with a share by which every partial but the first may lie off the law, and how far each of them misses it. */
function fitWith(kept: Kept, bend: number) {
  const first = firstOf(kept);
  const variances = kept.map(({ match, variance }) => {
    return variance + ((match === first ? OWN : 1) * bend * match.peak.frequency) ** 2;
  });
  const fit = fitComb(
    kept.map(({ match }) => match),
    variances,
  );
  if (!fit) return undefined;
  const misses = kept.map(({ match: { order, peak } }, i) => {
    const predicted = fit.frequency * partialRatio(order, fit.inharmonicity);
    return (peak.frequency - predicted) / Math.sqrt(variances[i] ?? 0);
  });
  const freedom = Math.max(1, kept.length - 2);
  return { fit, misses, ratio: misses.reduce((sum, miss) => sum + miss * miss, 0) / freedom };
}

/**
 * First partial from the partials of a comb, with its variance (Hz²): weighted least squares on the stiff string's law,
 * stray partials left out. Where the partials scatter more than their noise, pulleys that give bend the law: each but the
 * first, which is what is asked for, is then let off by the share that makes the scatter its own (R. C. Paule & J. Mandel,
 * J. Res. Natl. Bur. Stand. 87 (1982) 377, from memory), and what scatter is left widens the spread (Birge's ratio).
 */
export function settle(matches: readonly Match[], variances: readonly number[]) {
  let kept: Kept = matches.map((match, i) => ({ match, variance: variances[i] ?? 0 }));
  const strong = kept.filter(({ match }) => match.peak.gain >= LEAST_GAIN);
  if (strong.length > 0) kept = strong;
  for (let strays = Math.floor(STRAYS * kept.length); strays > 0 && kept.length > 3; strays -= 1) {
    const found = fitWith(kept, 0);
    if (!found) return undefined;
    const { misses } = found;
    const first = firstOf(kept);
    const scale = Math.max(1, median(misses.map(Math.abs)) / 0.6745);
    const far = misses.map((miss, i) => (kept[i]?.match === first ? 0 : Math.abs(miss)));
    const worst = far.indexOf(Math.max(...far));
    if ((far[worst] ?? 0) <= 4 * scale) break;
    kept = kept.filter((_, i) => i !== worst);
  }
  let [low, high] = [0, 0.01];
  let found = fitWith(kept, 0);
  // Scatter that chance gives one time in six or more often is let be.
  const chance = 1 + Math.sqrt(2 / Math.max(1, kept.length - 2));
  for (let pass = 0; pass < 14 && found && (pass > 0 || found.ratio > chance); pass += 1) {
    const bend = (low + high) / 2;
    found = fitWith(kept, bend);
    if (found && found.ratio > 1) low = bend;
    else high = bend;
  }
  if (!found) return undefined;
  const { fit, ratio } = found;
  const pulls = kept.map(({ match }, i) => ({ match, pull: fit.pulls[i] ?? 0 }));
  return { ...fit, pulls, variance: fit.variance * Math.max(1, ratio) };
}
