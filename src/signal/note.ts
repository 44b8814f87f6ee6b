import { rankCombs, type Comb, type Peak } from './note-comb';
import { decimate, type Decimated } from './note-decimate';
import { fallOf, withoutLines } from './note-drift';
import { pluckStretch, refit, standingNoise, steadyStretch, takeLines, type Stretch } from './note-extract';
import { COVERAGE, settle } from './note-fit';
import type { Line } from './note-lines';
import { powerOf, roughFloor, smoothFloor } from './note-noise';
import { decay, isHum, peakOf, shadow, signalToNoise, stands } from './note-peaks';
import { clearestPeriod, type Period } from './note-period';
import { clippedUntil, meanPower } from './note-refuse';
import { shownSpectrum, type ShownSpectrum } from './note-show';
import { restOf, trackOf } from './note-track';

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
  /** Its partials alone would name another note; the sound's period spoke for this one, and the interval is twice as wide. */
  readonly doubted?: boolean;
  readonly spectrum: ShownSpectrum;
}

export interface NoteRefused {
  readonly status: 'refused';
  readonly reason:
    'too quiet' | 'too noisy' | 'too short' | 'out of range' | 'overdriven' | 'contradicted' | 'held' | 'muffled';
  /** What the partials and what the period say where they contradict each other, Hz. */
  readonly heard?: { readonly partials: number; readonly period: number };
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
/** Partials further below the noise than this, dB, are chance's. */
const FAINTEST = -10;
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

/** A period at least so clear has a say; it contradicts a note that is farther off than the share. */
const CLEAR = 0.9;
const CONTRADICTS = 0.03;
/** A comb without its first partial needs one at least so clear that speaks for it. */
const DIM = 0.45;
/** Seconds of sound in which the period is looked for. */
const REPEATS = 0.34;
/** Least frequency at which a period is looked for, Hz, whatever range is asked for. */
const LOWEST = 18;

interface Chosen {
  readonly comb: Comb;
  readonly doubted: boolean;
}

/** A belt dies away by so much a second, in nepers; slower, the tone is held; faster, the belt is muffled, or it was a knock. */
const HELD = 0.8;
const MUFFLED = 20;
/** A tone that falls later so many times faster than at first, and by so much more, was held and then ended. */
const ENDS = 1.5;
const ENDS_BY = 4;

/** Why a tone of this comb is no pluck's: it does not die away as one does. */
function notPlucked(stretch: Stretch, samples: Float64Array, { matches }: Comb): 'held' | 'muffled' | undefined {
  const strongest = [...matches].sort((a, b) => b.peak.gain - a.peak.gain).slice(0, 4);
  const fall = fallOf(
    samples,
    stretch.rate,
    strongest.map(({ peak }) => peak.frequency),
  );
  if (fall.first > MUFFLED) return 'muffled';
  return fall.first < HELD || fall.later > ENDS * fall.first + ENDS_BY ? 'held' : undefined;
}

/** The period of the sound less the lines that stood before, where there is one. */
function periodOf(stretch: Stretch, samples: Float64Array, from: number, lines: readonly Line[]) {
  const sound = samples.slice(from, from + Math.round(REPEATS * stretch.rate));
  for (const { re, im, w, standing } of lines) {
    if (standing) sound.forEach((x, t) => (sound[t] = x - 2 * (re * Math.cos(w * t) - im * Math.sin(w * t))));
  }
  const period = clearestPeriod(sound, stretch.rate, LOWEST);
  return period && period.clarity > DIM ? period : undefined;
}

/** Where a period is a multiple of a comb's note, the comb is borne out by its first partial and so many of the others between. */
const BORNE_OUT = 0.75;

/** Whether a comb is right although the sound repeats itself more often: strong even partials sound like the octave. */
function isBorneOut({ frequency, matches }: Comb, period: Period): boolean {
  const times = Math.round(period.frequency / frequency);
  if (times < 2 || Math.abs(period.frequency / frequency / times - 1) > CONTRADICTS) return false;
  const between = Array.from({ length: matches.at(-1)?.order ?? 0 }, (_, i) => i + 1).filter((n) => n % times !== 0);
  const present = between.filter((n) => matches.some(({ order }) => order === n));
  return present.includes(1) && present.length >= BORNE_OUT * between.length;
}

/** The comb that explains the lines, or why there is none; where a clear period contradicts it, the best that does not. */
function chooseComb(
  stretch: Stretch,
  lines: readonly Line[],
  rest: Float64Array,
  period: Period | undefined,
  { low, high }: { low: number; high: number },
): Chosen | Omit<NoteRefused, 'status' | 'spectrum'> {
  const peaks: Peak[] = lines
    .filter((line) => !line.standing && line.gain > LEAST_GAIN && !isHum(line, lines, stretch.rate))
    .map((line) => peakOf(line, stretch.rate))
    .sort((a, b) => a.frequency - b.frequency);
  const ranked = (from: number, to: number) =>
    rankCombs({
      peaks,
      standing: lines.filter((line) => line.standing).map((line) => peakOf(line, stretch.rate).frequency),
      low: from,
      high: to,
      left: (frequency) => rest[Math.round((frequency * stretch.size) / stretch.rate)] ?? 0,
      top: Math.min(1950, 0.45 * stretch.rate),
    }).filter((comb) => comb.score >= LEAST_EVIDENCE && decay(comb.matches, stretch.rate) >= SLOWEST_DECAY);
  const isWithin = (frequency: number) => frequency >= 0.98 * low && frequency <= 1.02 * high;
  const isClear = period !== undefined && period.clarity > CLEAR;
  const agrees = (comb: Comb): boolean => {
    if (!isClear && comb.matches[0]?.order === 1) return true;
    if (!period) return false;
    return Math.abs(comb.frequency / period.frequency - 1) <= CONTRADICTS || isBorneOut(comb, period);
  };
  const [best, second] = ranked(0.7 * low, 2 * high);
  const isSure = best && !(second && best.score - second.score < MARGIN);
  if (isSure && agrees(best))
    return isWithin(best.frequency) ? { comb: best, doubted: false } : { reason: 'out of range' };
  // A sound repeats itself after two and three of its periods too: partials between must speak for the longer one.
  const times = isClear && best ? Math.round(best.frequency / period.frequency) : 1;
  const isLonger =
    isClear && best && times > 1 && Math.abs(best.frequency / period.frequency / times - 1) <= CONTRADICTS;
  const other =
    isClear &&
    ranked((1 - CONTRADICTS) * period.frequency, (1 + CONTRADICTS) * period.frequency).find(
      (comb) => agrees(comb) && (!isLonger || comb.matches.filter(({ order }) => order % times !== 0).length >= 2),
    );
  if (isLonger && isSure && !other && isWithin(best.frequency)) return { comb: best, doubted: false };
  if (other) return isWithin(other.frequency) ? { comb: other, doubted: true } : { reason: 'out of range' };
  if (isClear && !isWithin(period.frequency)) return { reason: 'out of range' };
  if (!isSure || !period) return { reason: 'too noisy' };
  return { reason: 'contradicted', heard: { partials: best.frequency, period: period.frequency } };
}

/** Bins to each side that tell whether a line is what it was taken for. */
const BESIDE = 6;

/** Power left beside a partial over the noise's: more than one where its line is no damped sine (a room, beats, a glide). */
function leftBeside(rest: Float64Array, noise: Float64Array, k: number): number {
  let left = 0;
  let expected = 0;
  for (let i = Math.max(1, k - BESIDE); i <= Math.min(rest.length - 1, k + BESIDE); i += 1) {
    left += rest[i] ?? 0;
    expected += noise[i] ?? 0;
  }
  // Four of the bins' numbers went into the fit.
  const ratio = (left / expected) * ((2 * BESIDE + 1) / (2 * BESIDE - 1));
  return ratio * (1 + Math.min(MOST, Math.max(0, ratio - STRANGE)));
}

/** What is left beside a line beyond this share of the noise is no noise, and pulls the line one way: it counts up to fourfold. */
const STRANGE = 1.3;
const MOST = 3;
/** The phase of so many partials is followed at most: those that pull the note most, and none that hardly does. */
const FOLLOWED = 6;
const LEAST_PULL = 0.02;

/** The note of a comb, with the half-width of its 95 % interval, and the partials it was measured by. */
function measure(
  stretch: Stretch,
  samples: Float64Array,
  noise: Float64Array,
  lines: readonly Line[],
  rest: Float64Array,
  comb: Comb,
) {
  refit(stretch, noise, lines, new Set(comb.matches.map(({ peak }) => peak.line)));
  const matches = comb.matches.map(({ order, peak }) => ({ order, peak: peakOf(peak.line, stretch.rate) }));
  // What the lines leave tells of the noise during the pluck: twice as many bins as before it, so two parts in three.
  const later = smoothFloor(rest, noise, 8, 80);
  const variances = matches.map(({ peak }) => {
    const k = Math.round((peak.frequency * stretch.size) / stretch.rate);
    const noisier = Math.max(((later[k] ?? 0) / (noise[k] ?? 0)) ** (2 / 3), leftBeside(rest, noise, k));
    return peak.spread ** 2 * noisier + shadow(peak, lines, stretch.rate) ** 2;
  });
  const fit = settle(matches, variances);
  if (!fit) return { matches, fit };
  const followed = fit.pulls
    .filter(({ match, pull }) => Math.abs(pull) * match.order > LEAST_PULL)
    .sort((a, b) => Math.abs(b.pull) * b.match.order - Math.abs(a.pull) * a.match.order)
    .slice(0, FOLLOWED)
    .map(({ match: { peak }, pull }) => {
      const k = Math.round((peak.frequency * stretch.size) / stretch.rate);
      return { line: peak.line, pull, noise: (later[k] ?? 0) / stretch.size };
    });
  // Other lines stay: a room or another belt splits a partial into several, and these move its phase.
  const partials = new Set(matches.map(({ peak }) => peak.line));
  const steady = withoutLines(
    samples,
    lines.filter((line) => line.standing || partials.has(line)),
  );
  const track = trackOf(steady, stretch.rate, followed, comb.frequency);
  const { shift, variance } = track
    ? restOf(track, decay(matches, stretch.rate), fit.frequency)
    : { shift: 0, variance: fit.variance };
  const halfWidth = COVERAGE * Math.sqrt(fit.variance + variance);
  return { matches, fit: { ...fit, frequency: fit.frequency + shift, halfWidth } };
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
  const period = periodOf(stretch, slow.samples, skip, lines);
  const chosen = chooseComb(
    stretch,
    lines,
    left.map((x, k) => x / (noise[k] ?? 0)),
    period,
    { low, high },
  );
  if (!('comb' in chosen)) {
    const isQuiet = power < QUIET && chosen.reason === 'too noisy';
    return { status: 'refused', ...chosen, ...(isQuiet ? { reason: 'too quiet' } : {}), spectrum };
  }
  const ringing = slow.samples.subarray(skip);
  const why = notPlucked(stretch, ringing, chosen.comb);
  if (why) return { status: 'refused', reason: why, spectrum };
  const { matches, fit } = measure(stretch, ringing, noise, lines, left, chosen.comb);
  const snrDb = signalToNoise(matches, noise, stretch);
  if (!fit || snrDb < FAINTEST) return { status: 'refused', reason: 'too noisy', spectrum };
  return {
    status: 'found',
    frequency: fit.frequency,
    halfWidth: (chosen.doubted ? 2 : 1) * fit.halfWidth,
    inharmonicity: fit.inharmonicity,
    partials: matches.map(({ order, peak: { frequency, line } }) => {
      return { order, frequency, amplitude: 2 * Math.hypot(line.re, line.im) };
    }),
    snrDb,
    ...(chosen.doubted ? { doubted: true } : {}),
    spectrum,
  };
}
