import { fitLine } from './note-line-fit';
import { subtractLine, type Bins, type Line } from './note-lines';
import { powerOf, roughFloor, smoothFloor } from './note-noise';
import { spectrumOf } from './spectrum';

/** Damping of the spectrum in which lines are looked for, per second: near that of a plucked belt. */
const SEARCH_DECAY = 5;
/** Lines are taken while their power is so many times the noise. */
const THRESHOLD = 9;
const MOST_LINES = 30;
/** A line of this gain is none of the noise's. */
const CLEAR = 40;

/** A stretch of sound as its transform: plain (for fitting) and damped (for finding). */
export interface Stretch {
  readonly size: number;
  readonly rate: number;
  /** Bins that are used: 0 … used-1. */
  readonly used: number;
  readonly plain: Bins;
  readonly damped: Bins;
  /** Damping per sample, and the noise's energy in the damped transform as a share of that in the plain one. */
  readonly damping: number;
  readonly share: number;
}

/** Transforms `size` samples from `from` on; `damping` per second. */
function stretchOf(samples: Float64Array, rate: number, from: number, size: number, damping: number): Stretch {
  const part = samples.slice(from, from + size);
  let mean = 0;
  for (let t = 0; t < size; t += 1) mean += (part[t] ?? 0) / size;
  const step = Math.exp(-damping / rate);
  const faded = new Float64Array(size);
  let fade = 1;
  let share = 0;
  for (let t = 0; t < size; t += 1) {
    const x = (part[t] ?? 0) - mean;
    part[t] = x;
    faded[t] = x * fade;
    share += (fade * fade) / size;
    fade *= step;
  }
  const plain = spectrumOf(part, size, rate);
  return {
    size,
    rate,
    used: Math.min(size / 2, Math.floor((2000 * size) / rate)),
    plain,
    damped: damping > 0 ? spectrumOf(faded, size, rate) : plain,
    damping: damping / rate,
    share,
  };
}

/** Damping of the spectrum in which a pluck's lines are looked for. */
export const pluckStretch = (samples: Float64Array, rate: number, from: number, size: number): Stretch =>
  stretchOf(samples, rate, from, size, SEARCH_DECAY);

/** A stretch in which nothing decays. */
export const steadyStretch = (samples: Float64Array, rate: number, from: number, size: number): Stretch =>
  stretchOf(samples, rate, from, size, 0);

const copy = (bins: Bins, used: number): Bins => ({ re: bins.re.slice(0, used), im: bins.im.slice(0, used) });

const powerAt = (bins: Bins, noise: Float64Array, k: number): number =>
  ((bins.re[k] ?? 0) ** 2 + (bins.im[k] ?? 0) ** 2) / (noise[k] ?? 0);

/** The strongest line left, relative to the noise, as a bin; undefined where none passes the threshold. */
function strongest(stretch: Stretch, left: Bins, noise: Float64Array, barred: Uint8Array, lowest: number) {
  let best = THRESHOLD * stretch.share;
  let at: number | undefined;
  for (let k = lowest; k < stretch.used - 1; k += 1) {
    const power = powerAt(left, noise, k);
    if (power > best && barred[k] === 0) {
      best = power;
      at = k;
    }
  }
  return at;
}

/** Whether a line is what a far stronger one beside it left behind. */
function satellite(line: Line, lines: readonly Line[], size: number): boolean {
  return lines.some((other) => {
    const near = ((2 + 0.3 * other.a * size) * 2 * Math.PI) / size;
    return !line.standing && other.gain > 30 * line.gain && Math.abs(other.w - line.w) < near;
  });
}

/** Lines taken out one by one, the strongest first; whenever the strongest left has sunk by 15 dB all are fitted again. */
export function takeLines(
  stretch: Stretch,
  noise: Float64Array,
  standing: readonly Line[],
  undamped: boolean,
): { lines: Line[]; rest: Bins } {
  const { size, used, plain, damping } = stretch;
  const scratch = { re: new Float64Array(used), im: new Float64Array(used) };
  let lines: Line[] = [];
  /** RELAX: each line fitted with all others taken away. */
  const relax = (rounds: number) => {
    for (const line of lines) fitLine(line, lines, plain, noise, size, rounds, scratch);
  };
  const without = (bins: Bins, extra: number): Bins => {
    const left = copy(bins, used);
    for (const line of lines) subtractLine(left, line, size, extra, 0, used);
    return left;
  };
  const take = (line: Line, rounds: number) => {
    fitLine(line, lines, plain, noise, size, rounds, scratch);
    lines.push(line);
  };
  for (const line of standing) take({ ...line, gain: 0 }, 2);
  relax(2);
  let left = without(stretch.damped, damping);
  const barred = new Uint8Array(used);
  const lowest = Math.ceil((8 * size) / stretch.rate);
  const bin = (2 * Math.PI) / size;
  let level = Infinity;
  while (lines.length < MOST_LINES + standing.length) {
    let at = strongest(stretch, left, noise, barred, lowest);
    if (at !== undefined && powerAt(left, noise, at) < level / 30) {
      if (level < Infinity) {
        relax(2);
        left = without(stretch.damped, damping);
        at = strongest(stretch, left, noise, barred, lowest);
      }
      if (at !== undefined) level = powerAt(left, noise, at);
    }
    if (at === undefined) break;
    // One bin is taken once: what a line leaves behind is no line.
    barred[at] = 1;
    const a = undamped ? 1e-7 : damping;
    const w = at * bin;
    const bounds = { lowest: w - 3 * bin, highest: w + 3 * bin };
    const line = { a, w, re: 0, im: 0, variance: Infinity, gain: 0, standing: undamped, prior: 0, ...bounds };
    take(line, 5);
    subtractLine(left, line, size, damping, 0, used);
  }
  relax(2);
  lines = lines.filter((line) => !satellite(line, lines, size));
  relax(2);
  return { lines, rest: without(plain, 0) };
}

/** The lines fitted again with the weak ones that are none of `wanted` left in the noise, where they belong. */
export function refit(stretch: Stretch, noise: Float64Array, lines: readonly Line[], wanted: ReadonlySet<Line>) {
  const kept = lines.filter((line) => line.standing || wanted.has(line) || line.gain > CLEAR);
  const scratch = { re: new Float64Array(stretch.used), im: new Float64Array(stretch.used) };
  for (let sweep = 0; sweep < 2; sweep += 1) {
    for (const line of kept) fitLine(line, kept, stretch.plain, noise, stretch.size, 3, scratch);
  }
}

/** Noise per bin of a stretch of `size` samples, and the undamped lines, of the sound before the pluck. */
export function standingNoise(stretch: Stretch): { noise: Float64Array; lines: Line[] } {
  const rough = roughFloor(powerOf(stretch.plain, stretch.used), 6, 30);
  const first = takeLines(stretch, rough, [], true);
  return { noise: smoothFloor(powerOf(first.rest, stretch.used), rough, 5, 40), lines: first.lines };
}
