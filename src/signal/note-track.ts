import { addLine, phaseIn } from './note-drift';
import type { Line } from './note-lines';

/** A partial, by how much the note goes with it (Hz per Hz), and the power a sample of white noise as strong as that about it. */
export interface Pulling {
  readonly line: Line;
  readonly pull: number;
  readonly noise: number;
}

/** The note's own phase while it rings, window by window: what its partials' phases run ahead of their lines, each by its pull. */
export interface Track {
  /** Radians, and their variances from the noise. */
  readonly phases: Float64Array;
  readonly variances: Float64Array;
  /** From one window to the next, s; windows overlap by half. */
  readonly hop: number;
}

/** Windows: their length in seconds at least and in periods of the note at least, and how many there must be. */
const SHORT = 0.14;
const PERIODS = 4;
const FEWEST = 4;

const wrapped = (phase: number): number => phase - 2 * Math.PI * Math.round(phase / (2 * Math.PI));

/**
 * Follows a note through the windows of its ring.
 * @param left the sound from the stretch's beginning on, without its lines
 * @param note first partial, Hz
 * @returns undefined where it is too short to be followed
 */
export function trackOf(
  left: Float64Array,
  rate: number,
  partials: readonly Pulling[],
  note: number,
): Track | undefined {
  const size = Math.round(Math.max(SHORT, PERIODS / note) * rate);
  const hop = size >> 1;
  const steps = Math.floor((left.length - size) / hop) + 1;
  if (steps < FEWEST) return undefined;
  const phases = new Float64Array(steps);
  const variances = new Float64Array(steps);
  for (const { line, pull, noise } of partials) {
    const sound = left.slice();
    addLine(sound, line, 1);
    let last = 0;
    for (let i = 0; i < steps; i += 1) {
      const { phase, variance } = phaseIn(sound, i * hop, size, line.w, noise);
      last = i === 0 ? phase : last + wrapped(phase - last);
      phases[i] = (phases[i] ?? 0) + pull * last;
      variances[i] = (variances[i] ?? 0) + pull * pull * variance;
    }
  }
  return { phases, variances, hop: hop / rate };
}

/** What may move a note while it rings: a wandering phase (rad, forgotten over so many seconds), a share by which it starts sharp. */
interface Disturbance {
  readonly wander: number;
  readonly over: number;
  readonly sharp: number;
  /** How much of it is expected before anything is heard. */
  readonly prior: number;
}

const WANDERS = [0.03, 0.1, 0.3].flatMap((wander) => [0.08, 0.25].map((over) => ({ wander, over })));
const SHARPS = [0.001, 0.004];
/**
 * None at all; a room or a second belt (wander); a hard pluck that sinks (sharp); both. The priors, like FREE and COVERAGE in
 * note-fit.ts, were chosen on strings of seeds that no bench uses (700000 on), and held on others (720000 on).
 */
const DISTURBANCES: readonly Disturbance[] = [
  { wander: 0, over: 1, sharp: 0, prior: 0.15 },
  ...WANDERS.map((one) => ({ ...one, sharp: 0, prior: 0.05 })),
  ...SHARPS.map((sharp) => ({ wander: 0, over: 1, sharp, prior: 0.2 })),
  ...WANDERS.flatMap((one) => SHARPS.map((sharp) => ({ ...one, sharp, prior: 0.04 }))),
];
/** What a disturbance takes from the note's certainty counts so many times: none is quite of the kinds above. */
const FREE = 1.8;
/** Share of the noise that neighbouring windows, half over each other, have in common. */
const COMMON = 1 / 6;

/** Lower triangle L with L Lᵀ = the matrix, in its place, row by row. */
function cholesky(matrix: Float64Array, n: number): void {
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i * n + j] ?? 0;
      for (let k = 0; k < j; k += 1) sum -= (matrix[i * n + k] ?? 0) * (matrix[j * n + k] ?? 0);
      matrix[i * n + j] = i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / (matrix[j * n + j] ?? 1);
    }
  }
}

/** L⁻¹ v. */
function solved(lower: Float64Array, v: ArrayLike<number>): Float64Array {
  const n = v.length;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    let sum = v[i] ?? 0;
    for (let k = 0; k < i; k += 1) sum -= (lower[i * n + k] ?? 0) * (out[k] ?? 0);
    out[i] = sum / (lower[i * n + i] ?? 1);
  }
  return out;
}

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);

/** Slope of a track under one disturbance, rad/s, its variance, and the logarithm of how likely the track is then (REML). */
function slopeUnder({ phases, variances, hop }: Track, way: Float64Array, { wander, over, sharp }: Disturbance) {
  const n = phases.length;
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      const noise = Math.sqrt((variances[i] ?? 0) * (variances[j] ?? 0)) + (i === j ? 1e-8 : 0);
      matrix[i * n + j] =
        (i === j ? 1 : i - j === 1 ? COMMON : 0) * noise +
        wander ** 2 * Math.exp(((j - i) * hop) / over) +
        sharp ** 2 * (way[i] ?? 0) * (way[j] ?? 0);
    }
  }
  cholesky(matrix, n);
  const one = solved(matrix, new Float64Array(n).fill(1));
  const time = solved(
    matrix,
    phases.map((_, i) => i * hop),
  );
  const heard = solved(matrix, phases);
  const [a, b, c] = [dot(one, one), dot(one, time), dot(time, time)];
  const det = a * c - b * b;
  const [u, v] = [dot(one, heard), dot(time, heard)];
  const slope = (a * v - b * u) / det;
  const start = (c * u - b * v) / det;
  const left = dot(heard, heard) - start * u - slope * v;
  let logs = Math.log(det);
  for (let i = 0; i < n; i += 1) logs += 2 * Math.log(matrix[i * n + i] ?? 1);
  return { slope, variance: a / det, log: -0.5 * (logs + left) };
}

/**
 * By how much a note at rest lies off what its lines say, Hz, and what variance (Hz²) the moving of its phase adds. Rooms, a second
 * belt and a hard pluck move the phase of a note while it rings; how much they do is not known, so the answer is the mean over what
 * they may do, each by how likely it makes the track that was heard (restricted likelihood: Patterson & Thompson, Biometrika 58
 * (1971) 545; model averaging: Hoeting et al., Statistical Science 14 (1999) 382; both from memory).
 * @param decay of the note's amplitude, per second: a pluck's swing, which pulls it sharp, falls twice as fast
 * @param note Hz
 */
export function restOf(track: Track, decay: number, note: number): { shift: number; variance: number } {
  const fall = 2 * Math.max(1, decay);
  const way = track.phases.map((_, i) => ((1 - Math.exp(-fall * i * track.hop)) / fall) * 2 * Math.PI * note);
  const under = DISTURBANCES.map((one) => ({ ...slopeUnder(track, way, one), prior: one.prior }));
  const still = under[0] ?? { slope: 0, variance: 0 };
  const top = Math.max(...under.map(({ log }) => log));
  const weighed = under.map(({ slope, variance, log, prior }) => ({
    weight: prior * Math.exp(log - top),
    shift: (slope - still.slope) / (2 * Math.PI),
    variance: (FREE * Math.max(0, variance - still.variance)) / (2 * Math.PI) ** 2,
  }));
  const whole = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const shift = weighed.reduce((sum, one) => sum + one.weight * one.shift, 0) / whole;
  const variance =
    weighed.reduce((sum, one) => sum + one.weight * (one.variance + (one.shift - shift) ** 2), 0) / whole;
  return { shift, variance };
}
