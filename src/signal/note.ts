import { decimate } from './note-decimate';
import { pluckStretch, powerOf, standingNoise, stretchOf, takeLines, type Stretch } from './note-extract';
import { rankCombs, type Peak } from './note-comb';
import { settle } from './note-fit';
import { roughFloor, smoothFloor } from './note-noise';
import type { Line } from './note-lines';

export interface Partial_ {
  readonly order: number;
  /** Hz. */
  readonly frequency: number;
  readonly amplitude: number;
}

/** For showing: bin k stands at `k * step` Hz, 0 to about 2 kHz. */
export interface ShownSpectrum {
  readonly step: number;
  readonly decibels: Float32Array;
}

export interface NoteFound {
  readonly status: 'found';
  /** First partial, Hz. */
  readonly frequency: number;
  /** Half-width of the 95 % interval, Hz. */
  readonly halfWidth: number;
  readonly inharmonicity: number;
  readonly partials: readonly Partial_[];
  readonly snrDb: number;
  readonly spectrum: ShownSpectrum;
  readonly debug?: unknown;
}

export interface NoteRefused {
  readonly status: 'refused';
  readonly reason: 'too quiet' | 'too noisy' | 'too short' | 'out of range' | 'overdriven';
  readonly spectrum?: ShownSpectrum;
  readonly debug?: unknown;
}

export interface NoteOptions {
  readonly before?: Float32Array;
  readonly low?: number;
  readonly high?: number;
}

const SKIP = 0.012;
const EDGE = 0.004;
const MARGIN = 1;
const LEAST = 6;

const powerOfTwo = (n: number): number => 2 ** Math.floor(Math.log2(n));

/** A line on a harmonic of the mains (its frequency held to 0.4 %) that does not decay. */
function hum(frequency: number, decay: number): boolean {
  const off = [50, 60].map((mains) => Math.abs(frequency - mains * Math.round(frequency / mains)));
  return decay < 1 && frequency > 40 && Math.min(...off) < Math.max(0.3, 0.002 * frequency);
}

function shown(stretch: Stretch): ShownSpectrum {
  const { used, size, rate, share } = stretch;
  const whole = Math.sqrt(share) * size;
  const decibels = new Float32Array(used);
  for (let k = 0; k < used; k += 1) {
    const amplitude = (2 * Math.hypot(stretch.damped.re[k] as number, stretch.damped.im[k] as number)) / whole;
    decibels[k] = 20 * Math.log10(amplitude + 1e-9);
  }
  return { step: rate / size, decibels };
}

/** Noise of one stretch, given per bin of another: level by the numbers of samples, bins interpolated. */
function carried(noise: Float64Array, fromSize: number, stretch: Stretch): Float64Array {
  const out = new Float64Array(stretch.used);
  const ratio = fromSize / stretch.size;
  for (let k = 0; k < out.length; k += 1) {
    const at = Math.min(noise.length - 1.001, k * ratio);
    const low = Math.floor(at);
    const part = at - low;
    out[k] = ((noise[low] as number) * (1 - part) + (noise[low + 1] as number) * part) / ratio;
  }
  return out;
}

export function estimateNote(samples: Float32Array, rate: number, options: NoteOptions = {}): NoteFound | NoteRefused {
  const { before, low = 20, high = 500 } = options;
  const slow = decimate(samples, rate);
  const skip = Math.ceil(SKIP * slow.rate);
  const edge = Math.ceil(EDGE * slow.rate);
  const size = powerOfTwo(slow.samples.length - skip - edge);
  if (size < 0.2 * slow.rate) return { status: 'refused', reason: 'too short' };
  const stretch = pluckStretch(slow.samples, slow.rate, skip, size);
  const spectrum = shown(stretch);

  let noise: Float64Array;
  let standing: Line[] = [];
  const calm = before && decimate(before, rate);
  const calmSize = calm ? powerOfTwo(calm.samples.length - 2 * edge) : 0;
  if (calm && calmSize >= 0.1 * calm.rate) {
    const from = calm.samples.length - edge - calmSize;
    const quiet = standingNoise(stretchOf(calm.samples, calm.rate, from, calmSize, 0));
    noise = carried(quiet.noise, calmSize, stretch);
    standing = quiet.lines.map((line) => {
      const within = 3 * Math.sqrt(line.variance) + 1e-5;
      return { ...line, prior: line.re ** 2 + line.im ** 2, lowest: line.w - within, highest: line.w + within };
    });
  } else {
    const hann = powerOf(stretch.plain).slice(0, stretch.used);
    noise = roughFloor(hann, 20, 60);
  }
  const { lines, rest } = takeLines(stretch, noise, standing, false);
  const toHertz = stretch.rate / (2 * Math.PI);
  const stood = lines.filter((line) => line.standing).map((line) => line.w * toHertz);
  const peaks: Peak[] = lines
    .filter((line) => !line.standing && line.gain > 8)
    .map((line) => ({
      frequency: line.w * toHertz,
      spread: Math.sqrt(line.variance) * toHertz,
      gain: line.gain,
      line,
    }))
    .filter(({ frequency, line }) => !hum(frequency, line.a * stretch.rate))
    .filter(({ line }) =>
      lines.every((other) => {
        const near = other.standing && Math.abs(other.w - line.w) * toHertz < 2;
        return !near || line.re ** 2 + line.im ** 2 > other.prior;
      }),
    )
    .sort((a, b) => a.frequency - b.frequency);
  const binHertz = stretch.rate / size;
  const left = (f: number): number => {
    const k = Math.round(f / binHertz);
    if (k < 1 || k >= stretch.used) return 0;
    return ((rest.re[k] as number) ** 2 + (rest.im[k] as number) ** 2) / (noise[k] as number);
  };
  const combs = rankCombs({ peaks, standing: stood, low, high, left, top: Math.min(1950, 0.45 * stretch.rate) });
  const best = combs[0];
  const debug: any = { combs, peaks, stood, noise, rest, stretch };
  if (!best || best.score < LEAST) return { status: 'refused', reason: 'too noisy', spectrum, debug };
  const second = combs[1];
  if (second && best.score - second.score < MARGIN) return { status: 'refused', reason: 'too noisy', spectrum, debug };

  const after = smoothFloor(rest, noise, 8, 80);
  const variances = best.matches.map(({ peak }) => {
    const k = Math.round(peak.frequency / binHertz);
    return peak.spread ** 2 * ((after[k] as number) / (noise[k] as number)) ** (2 / 3);
  });
  debug.variances = variances;
  const fit = settle(best.matches, variances);
  if (!fit) return { status: 'refused', reason: 'too noisy', spectrum, debug };
  debug.fit = fit;
  return {
    status: 'found',
    frequency: fit.frequency,
    halfWidth: fit.halfWidth,
    inharmonicity: fit.inharmonicity,
    partials: best.matches.map(({ order, peak }) => ({
      order,
      frequency: peak.frequency,
      amplitude: 2 * Math.hypot(peak.line.re, peak.line.im),
    })),
    snrDb: 0,
    spectrum,
    debug,
  };
}
