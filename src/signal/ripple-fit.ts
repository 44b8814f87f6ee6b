import { lensMoves } from './ridge-model';
import { floorOf, powerOf, powerOfTwo } from './ridge-noise';
import { dot, gram, inverse, slowColumns, times, type Symmetric } from './ridge-solve';
import type { Point } from './ridge-types';

/** Fewer are not told from shading. */
export const LEAST_RIPPLES = 3;
/** Shading up to this power is fitted beside the ripples. */
export const SLOW = 3;
const ROUNDS = 12;
/** How fast they may die away, or grow, over the strip's length. */
const DECAYS = [-9, -6, -4, -2.5, -1.2, 0, 1.2, 2.5, 4, 6, 9] as const;

/** Frequency, decay, bend and the lens's term, all over the strip's length. */
export type Bent = readonly [frequency: number, decay: number, bend: number, lens: number];

/** The strip in its own length: places along it, -1/2 to 1/2, the picture's centre, and how sure bend and lens are beforehand. */
export interface Lain {
  readonly places: Float64Array;
  readonly centre: Point;
  readonly spreads: readonly [bend: number, lens: number];
}

/** Places along the strip, -1/2 to 1/2. */
export const placesOf = (n: number) => Float64Array.from({ length: n }, (_, i) => (i - (n - 1) / 2) / n);

/** cos and sin of a damped wave seen at a bend, brightest end at 1, and where it stands on the wall. */
export function waveOf({ places, centre }: Lain, [frequency, decay, bend, lens]: Bent) {
  const top = Math.abs(decay) / 2;
  const on = places.map((u) => {
    const U = u + lens * lensMoves(u, centre);
    return U / (1 + bend * U);
  });
  const damp = on.map((X) => Math.exp(-decay * X - top));
  const cos = on.map((X, i) => (damp[i] ?? 0) * Math.cos(2 * Math.PI * frequency * X));
  const sin = on.map((X, i) => (damp[i] ?? 0) * Math.sin(2 * Math.PI * frequency * X));
  return { on, cos, sin };
}

interface Flat {
  readonly weights: Float64Array;
  readonly rest: Float64Array;
  readonly left: number;
}

/** Least squares of the linear part. */
function flatFit(values: Float64Array, columns: readonly Float64Array[]): Flat | undefined {
  const inverted = inverse(gram(columns));
  if (!inverted) return undefined;
  const weights = times(
    inverted,
    columns.map((column) => dot(column, values)),
  );
  const rest = Float64Array.from(values);
  columns.forEach((column, k) => {
    const weight = weights[k] ?? 0;
    for (let i = 0; i < rest.length; i += 1) rest[i] = (rest[i] ?? 0) - weight * (column[i] ?? 0);
  });
  return { weights, rest, left: dot(rest, rest) };
}

/** Frequency and decay under which least is left, on a grid. */
export function roughly(values: Float64Array, lain: Lain, finest: number): Bent | undefined {
  const slow = slowColumns(values.length, SLOW);
  let best: Bent | undefined;
  let least = Infinity;
  for (let frequency = LEAST_RIPPLES; frequency < finest; frequency += 0.25) {
    for (const decay of DECAYS) {
      const bent: Bent = [frequency, decay, 0, 0];
      const { cos, sin } = waveOf(lain, bent);
      const fit = flatFit(values, [cos, sin, ...slow]);
      if (fit && fit.left < least) [least, best] = [fit.left, bent];
    }
  }
  return best;
}

export interface Fitted {
  readonly bent: Bent;
  readonly rest: Float64Array;
  readonly wave: Float64Array;
  /** Of frequency, decay, bend and lens. */
  readonly covariance: Symmetric;
  readonly noise: number;
}

/** Noise of what is left at the ripples' own frequency, for each value as if it were white. */
function noiseAt(rest: Float64Array, frequency: number): number {
  const size = powerOfTwo(rest.length);
  const floor = floorOf(powerOf(rest, undefined, size), size / rest.length);
  return floor[Math.min(floor.length - 1, Math.round((frequency * size) / rest.length))] ?? 0;
}

/** All of it fitted together (Gauss and Newton), bend and lens held by what is known beforehand. */
export function closely(values: Float64Array, lain: Lain, start: Bent): Fitted | undefined {
  const slow = slowColumns(values.length, SLOW);
  let bent = start;
  for (let round = 0; round < ROUNDS; round += 1) {
    const { on, cos, sin } = waveOf(lain, bent);
    const flat = flatFit(values, [cos, sin, ...slow]);
    if (!flat) return undefined;
    const [A = 0, B = 0] = flat.weights;
    const wave = cos.map((c, i) => A * c + B * (sin[i] ?? 0));
    const turned = cos.map((c, i) => 2 * Math.PI * (B * c - A * (sin[i] ?? 0)));
    const [frequency, decay] = bent;
    const byFrequency = turned.map((t, i) => t * (on[i] ?? 0));
    const byDecay = wave.map((w, i) => -w * (on[i] ?? 0));
    const moved = turned.map((t, i) => frequency * t - decay * (wave[i] ?? 0));
    const byBend = moved.map((m, i) => -m * (on[i] ?? 0) ** 2);
    const byLens = moved.map((m, i) => m * lensMoves(lain.places[i] ?? 0, lain.centre));
    const noise = noiseAt(flat.rest, frequency);
    const columns = [byFrequency, byDecay, byBend, byLens, cos, sin, ...slow];
    const normal = gram(columns);
    const priors = lain.spreads.map((spread) => noise / spread ** 2);
    const size = normal.size;
    priors.forEach((prior, k) => {
      const at = (2 + k) * (size + 1);
      normal.cells[at] = (normal.cells[at] ?? 0) + prior;
    });
    const inverted = inverse(normal);
    if (!inverted) return undefined;
    const pull = columns.map((column) => dot(column, flat.rest));
    priors.forEach((prior, k) => (pull[2 + k] = (pull[2 + k] ?? 0) - prior * (bent[2 + k] ?? 0)));
    const change = times(inverted, pull);
    const far = Math.max(Math.abs(change[0] ?? 0), Math.abs(change[1] ?? 0) / 4, Math.abs(change[2] ?? 0));
    if (far < 1e-6 || round === ROUNDS - 1) {
      const cells = Float64Array.from(
        { length: 16 },
        (_, k) => noise * (inverted.cells[(k >> 2) * size + (k & 3)] ?? 0),
      );
      return { bent, rest: flat.rest, wave, covariance: { size: 4, cells }, noise };
    }
    const share = Math.min(1, 0.3 / far);
    bent = [
      frequency + share * (change[0] ?? 0),
      Math.min(14, Math.max(-14, decay + share * (change[1] ?? 0))),
      bent[2] + share * (change[2] ?? 0),
      bent[3] + share * (change[3] ?? 0),
    ];
  }
  return undefined;
}
