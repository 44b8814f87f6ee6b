import { rankCombs, type Comb, type Peak } from './note-comb';
import { decimate, type Decimated } from './note-decimate';
import { pluckStretch, refit, standingNoise, steadyStretch, takeLines, type Stretch } from './note-extract';
import { settle } from './note-fit';
import type { Line } from './note-lines';
import { powerOf, roughFloor, smoothFloor } from './note-noise';
import { decay, isHum, peakOf, shadow, signalToNoise, stands } from './note-peaks';
import { clippedUntil, meanPower } from './note-refuse';
import { shownSpectrum, type ShownSpectrum } from './note-show';

export interface Partial_ {
  readonly order: number;
  /** Hz. */
  readonly frequency: number;
  /** At the start, full scale 1. */
  readonly amplitude: number;
}

export interface NoteFound {
  readonly status: 'found';
  /** First partial, Hz: what is heard, and what the belt's formula asks for. */
  readonly frequency: number;
  /** Half-width of the 95 % interval, Hz. */
  readonly halfWidth: number;
  /** B of f_n = n f_0 sqrt(1 + B n²). */
  readonly inharmonicity: number;
  readonly partials: readonly Partial_[];
  /** Power of the partials over that of the noise, both below 2 kHz and over the stretch analysed. */
  readonly snrDb: number;
  readonly spectrum: ShownSpectrum;
}

export interface NoteRefused {
  readonly status: 'refused';
  readonly reason: 'too quiet' | 'too noisy' | 'too short' | 'out of range' | 'overdriven';
  readonly spectrum?: ShownSpectrum;
}

export interface NoteOptions {
  /** Sound from before the pluck, half a second if there is as much: what stood then is not taken for the belt. */
  readonly before?: Float32Array;
  /** Range of notes, Hz; 20 and 500 if not said. */
  readonly low?: number;
  readonly high?: number;
}

/** Seconds left out after the onset (the pick, and an onset found late) and at both ends (the decimation's edges). */
const SKIP = 0.012;
const EDGE = 0.004;
/** Shortest stretch that tells a note, s. */
const SHORTEST = 0.2;
/** A comb below this evidence, or no more than the margin ahead of another note, is none (nepers). */
const LEAST_EVIDENCE = 7;
const MARGIN = 1;
/** Gain from which a line may be a partial. */
const LEAST_GAIN = 8;
/** What decays more slowly than this, per second, rings on for ever: a fan. */
const SLOWEST_DECAY = 0.2;
/** Mean power below 2 kHz under which nothing was heard: -75 dB of full scale. */
const QUIET = 10 ** -7.5;

const powerOfTwo = (n: number): number => (n < 1 ? 0 : 2 ** Math.floor(Math.log2(n)));

interface Background {
  readonly noise: Float64Array;
  readonly standing: readonly Line[];
}

/** Noise per bin of the stretch and the lines that stood before it. */
function backgroundOf(stretch: Stretch, before: Decimated | undefined): Background {
  const edge = before ? Math.ceil(EDGE * before.rate) : 0;
  const size = before ? powerOfTwo(before.samples.length - 2 * edge) : 0;
  if (!before || size < 0.1 * before.rate) {
    const power = powerOf(stretch.plain, stretch.used);
    return { noise: roughFloor(power, 20, 60), standing: [] };
  }
  const from = before.samples.length - edge - size;
  const { noise, lines } = standingNoise(steadyStretch(before.samples, before.rate, from, size));
  // Level by the numbers of samples, bins interpolated.
  const ratio = size / stretch.size;
  const carried = new Float64Array(stretch.used).map((_, k) => {
    const at = Math.min(noise.length - 1.001, k * ratio);
    const low = Math.floor(at);
    return ((noise[low] ?? 0) * (low + 1 - at) + (noise[low + 1] ?? 0) * (at - low)) / ratio;
  });
  return { noise: carried, standing: lines.map(stands) };
}

/** The comb that explains the lines, or why there is none. */
function chooseComb(
  stretch: Stretch,
  lines: readonly Line[],
  rest: Float64Array,
  low: number,
  high: number,
): Comb | 'too noisy' | 'out of range' {
  const peaks: Peak[] = lines
    .filter((line) => !line.standing && line.gain > LEAST_GAIN && !isHum(line, lines, stretch.rate))
    .map((line) => peakOf(line, stretch.rate))
    .sort((a, b) => a.frequency - b.frequency);
  const combs = rankCombs({
    peaks,
    standing: lines.filter((line) => line.standing).map((line) => peakOf(line, stretch.rate).frequency),
    low: 0.7 * low,
    high: 2 * high,
    left: (frequency) => rest[Math.round((frequency * stretch.size) / stretch.rate)] ?? 0,
    top: Math.min(1950, 0.45 * stretch.rate),
  });
  const [best, second] = combs;
  if (!best || best.score < LEAST_EVIDENCE || decay(best.matches, stretch.rate) < SLOWEST_DECAY) return 'too noisy';
  if (second && best.score - second.score < MARGIN) return 'too noisy';
  return best.frequency < 0.98 * low || best.frequency > 1.02 * high ? 'out of range' : best;
}

function measure(stretch: Stretch, noise: Float64Array, lines: readonly Line[], rest: Float64Array, comb: Comb) {
  refit(stretch, noise, lines, new Set(comb.matches.map(({ peak }) => peak.line)));
  const matches = comb.matches.map(({ order, peak }) => ({ order, peak: peakOf(peak.line, stretch.rate) }));
  // What the lines leave tells of the noise during the pluck: twice as many bins as before it, so two parts in three.
  const later = smoothFloor(rest, noise, 8, 80);
  const variances = matches.map(({ peak }) => {
    const k = Math.round((peak.frequency * stretch.size) / stretch.rate);
    const noisier = ((later[k] ?? 0) / (noise[k] ?? 0)) ** (2 / 3);
    return peak.spread ** 2 * noisier + shadow(peak, lines, stretch.rate) ** 2;
  });
  return { matches, fit: settle(matches, variances) };
}

/**
 * Names the note of a plucked belt: the frequency of its first partial, with a 95 % interval of its own, or why there is none.
 *
 * Decaying lines are taken out of the spectrum, each fitted together with the others (damped RELAX: Li & Stoica, IEEE Trans.
 * Signal Process. 44 (1996) 281, from memory) against the noise from before the pluck, whose own lines (mains, fans) are
 * fitted beside them. The comb of a stiff string, f_n = n f_0 sqrt(1 + B n²) (Fletcher, J. Acoust. Soc. Am. 36 (1964) 203, from
 * memory), that explains them best names the note; weighted least squares over its partials measures it.
 * @param samples from the onset on, about one second, full scale 1
 * @param rate samples per second, 8000 or more
 */
export function estimateNote(samples: Float32Array, rate: number, options: NoteOptions = {}): NoteFound | NoteRefused {
  const { before, low = 20, high = 500 } = options;
  const clipped = clippedUntil(samples);
  const slow = decimate(clipped > 0 ? samples.subarray(clipped) : samples, rate);
  const skip = Math.ceil(SKIP * slow.rate);
  const size = powerOfTwo(slow.samples.length - skip - Math.ceil(EDGE * slow.rate));
  if (size < SHORTEST * slow.rate) {
    return { status: 'refused', reason: clipped > SHORTEST * rate ? 'overdriven' : 'too short' };
  }
  const stretch = pluckStretch(slow.samples, slow.rate, skip, size);
  const spectrum = shownSpectrum(stretch);
  const power = meanPower(slow.samples);
  if (power < 1e-14) return { status: 'refused', reason: 'too quiet', spectrum };
  const { noise, standing } = backgroundOf(stretch, before && decimate(before, rate));
  const { lines, rest } = takeLines(stretch, noise, standing, false);
  const left = powerOf(rest, stretch.used);
  const comb = chooseComb(stretch, lines, left.map((x, k) => x / (noise[k] ?? 0)), low, high); // prettier-ignore
  if (typeof comb === 'string') {
    return { status: 'refused', reason: power < QUIET && comb === 'too noisy' ? 'too quiet' : comb, spectrum };
  }
  const { matches, fit } = measure(stretch, noise, lines, left, comb);
  if (!fit) return { status: 'refused', reason: 'too noisy', spectrum };
  return {
    status: 'found',
    frequency: fit.frequency,
    halfWidth: fit.halfWidth,
    inharmonicity: fit.inharmonicity,
    partials: matches.map(({ order, peak: { frequency, line } }) => {
      return { order, frequency, amplitude: 2 * Math.hypot(line.re, line.im) };
    }),
    snrDb: signalToNoise(matches, noise, stretch),
    spectrum,
  };
}
