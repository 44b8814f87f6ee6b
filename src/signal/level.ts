/** A mean with the standard uncertainty that its noise leaves, and the most that the sensor's steps may hide. */
export interface Averaged {
  readonly mean: number;
  /** Standard uncertainty from noise, autocorrelation included. */
  readonly u: number;
  /** Half-width of what is lost between two steps of the numbers passed on. */
  readonly steps: number;
}

const BATCHES = 10;
/** Numbers nearer than this are one number: a step of 0.1 comes as 0.30000000000000004 too. */
const SAME = 1e-7;
/** A level that fewer than this share of the samples stand on is a knock, not noise. */
const RARE = 0.01;
/** The specification of the orientation events allows no finer numbers than 0.1 m/s² and 0.1°. */
const SPECIFIED_STEP = 0.1;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const meanOf = (values: readonly number[]): number => sum(values) / values.length;
const varianceOf = (values: readonly number[]): number => {
  const mean = meanOf(values);
  return sum(values.map((value) => (value - mean) ** 2)) / (values.length - 1);
};

/**
 * Variance of the mean of correlated samples by batch means: ten batches in a row, the variance of their means over ten.
 * Source: Law & Kelton, Simulation Modeling and Analysis, batch means (from memory). Nine degrees of freedom.
 * Where one batch still resembles the next by r, 1 + 2r as for any series, r freed of its bias of −1/10 (Bartlett, from
 * memory). Wander slower than a batch or two is left to the spread of whole readings.
 * @param values at least 20 samples at even distances, any unit
 */
export function batchMeans(values: readonly number[]): { readonly mean: number; readonly variance: number } {
  const size = Math.floor(values.length / BATCHES);
  if (size < 2) throw new RangeError('At least 20 samples are needed.');
  const used = values.slice(values.length - size * BATCHES);
  const means = Array.from({ length: BATCHES }, (_, i) => meanOf(used.slice(i * size, (i + 1) * size)));
  const mean = meanOf(means);
  const variance = varianceOf(means);
  const products = means.slice(1).map((value, i) => (value - mean) * ((means[i] ?? mean) - mean));
  const alike = variance > 0 ? sum(products) / (variance * (BATCHES - 1)) + 1 / BATCHES : 0;
  return { mean, variance: (variance / BATCHES) * (1 + 2 * Math.max(0, alike)) };
}

/** The distinct numbers that come up more than now and then, and their least distance. */
function levelsOf(values: readonly number[]): { readonly count: number; readonly step: number } {
  const sorted = [...values].sort((a, b) => a - b);
  const tally: { value: number; times: number }[] = [];
  for (const value of sorted) {
    const last = tally.at(-1);
    if (last && value - last.value < SAME) last.times += 1;
    else tally.push({ value, times: 1 });
  }
  const gaps = tally.slice(1).map(({ value }, i) => value - (tally[i]?.value ?? value));
  // One number only does not tell its step, and a sensor with a fine one would flicker.
  const step = gaps.length > 0 ? Math.min(...gaps) : SPECIFIED_STEP;
  return { count: tally.filter(({ times }) => times > RARE * values.length).length, step };
}

/**
 * Most that rounding to steps may move a mean. Noise over three levels or more dithers it away: the first harmonic of the
 * rounding error is (step/π)·exp(−2π²σ²/step²), with σ² = s² − step²/12 (Widrow & Kollár, Quantization Noise, 2008, from
 * memory). On one or two levels the noise cannot be told, and `stuck` steps stand.
 */
function stepsLeft(values: readonly number[], stuck: number): number {
  const { count, step } = levelsOf(values);
  if (count <= 2) return step * stuck;
  const noise = Math.max(0, varianceOf(values) - step ** 2 / 12);
  return Math.min(step / 2, (step / Math.PI) * Math.exp((-2 * Math.PI ** 2 * noise) / step ** 2));
}

/**
 * Averages one axis at rest. The nine degrees of freedom widen u by √(9/7), as JCGM 101, 6.4.9, has it.
 * @param stuck steps that the truth may lie from a number that stays the same: half of one for plain rounding
 */
export function average(values: readonly number[], stuck = 0.5): Averaged {
  const { mean, variance } = batchMeans(values);
  const free = BATCHES - 1;
  return { mean, u: Math.sqrt((variance * free) / (free - 2)), steps: stepsLeft(values, stuck) };
}

/** A tilt as the sine of the angle to the horizontal, with its noise and the half-width of its steps. */
export interface Tilt {
  readonly sine: number;
  readonly u: number;
  readonly steps: number;
}

/** How the phone lies: along its long edge, positive with the earpiece end high; across it, positive with the right edge high. */
export interface Pose {
  readonly along: Tilt;
  readonly across: Tilt;
}

/** Acceleration including gravity in the phone's axes, m/s². */
export interface Acceleration {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Attitude as the browser's orientation event states it, degrees. */
export interface Attitude {
  readonly alpha: number;
  readonly beta: number;
  readonly gamma: number;
}

const DEG = Math.PI / 180;
/** Orientation events come only once an angle has changed by a step, so the last one may be a whole step old. */
export const HELD = 1;
/** Flat enough for a slope along the long edge to be what the sensor's axis says: 15° from lying. */
const LEAST_Z = Math.cos(15 * DEG);

/**
 * A reading from the acceleration of a phone that lies on its back.
 *
 * The specification has the axis pointing up positive; some browsers turn all three signs round. A phone that lies with
 * its screen up tells which: z is then positive by the one and negative by the other.
 * @returns undefined where the phone does not lie on its back
 */
export function fromAcceleration(samples: readonly Acceleration[]): Pose | undefined {
  const [x, y, z] = (['x', 'y', 'z'] as const).map((axis) => average(samples.map((sample) => sample[axis])));
  if (!x || !y || !z) return undefined;
  const size = Math.hypot(x.mean, y.mean, z.mean);
  if (!(Math.abs(z.mean) > LEAST_Z * size)) return undefined;
  const tilt = ({ mean, u, steps }: Averaged): Tilt => ({
    sine: (Math.sign(z.mean) * mean) / size,
    u: u / size,
    steps: steps / size,
  });
  return { along: tilt(y), across: tilt(x) };
}

/**
 * A reading from the browser's orientation angles: up, seen in the phone's axes, is (−cos β sin γ, sin β, cos β cos γ)
 * (DeviceOrientation Event Specification: intrinsic rotations α, β, γ about z, x, y).
 * @returns undefined where the phone does not lie on its back
 */
export function fromAttitude(samples: readonly Attitude[]): Pose | undefined {
  const beta = average(
    samples.map((sample) => sample.beta),
    HELD,
  );
  const gamma = average(
    samples.map((sample) => sample.gamma),
    HELD,
  );
  const [cosB, cosG] = [Math.cos(beta.mean * DEG), Math.cos(gamma.mean * DEG)];
  if (!(cosB * cosG > LEAST_Z)) return undefined;
  return {
    along: { sine: Math.sin(beta.mean * DEG), u: beta.u * DEG * cosB, steps: beta.steps * DEG * cosB },
    across: {
      sine: -cosB * Math.sin(gamma.mean * DEG),
      u: gamma.u * DEG * cosB * cosG,
      steps: gamma.steps * DEG * cosB * cosG,
    },
  };
}
