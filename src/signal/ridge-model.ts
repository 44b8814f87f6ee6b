import { floorOf, powerOf, powerOfTwo } from './ridge-noise';
import { dot, gram, inverse, slowColumns, times, type Symmetric } from './ridge-solve';
import type { Point } from './ridge-types';
import { spectrumOf } from './spectrum';

/*
 * A wall seen a little from one side: the place X on the wall of what stands u pixels from the strip's middle is
 *   X = u / (1 + c u)
 * exactly (a plane's central projection restricted to a line is a projective map of it; Hartley and Zisserman, Multiple
 * View Geometry, section 2.5, from memory), X in pixels of the middle. A regular pattern of F cycles per such pixel has
 * the phase 2 pi F X. A lens that bends straight lines moves what stands at u0 from the picture's centre by a cubic first
 * (Brown's radial term turned round), and that is put right before: U = u + k (u - u0) r². Slow shading is a cubic beside it.
 */

/** One wave of the model: `multiple` times the frequency of its family. */
export interface Wave {
  readonly family: number;
  readonly multiple: number;
}

export interface Model {
  readonly waves: readonly Wave[];
  /** Cycles per middle pixel, one for each family. */
  readonly frequencies: readonly number[];
  /** 1/px: how much the perspective bends the strip. */
  readonly bend: number;
  /** 1/px²: how much the lens does. */
  readonly lens: number;
}

export interface Fitted {
  readonly model: Model;
  /** Cosine and sine amplitude of each wave. */
  readonly amplitudes: readonly { readonly cos: number; readonly sin: number }[];
  readonly rest: Float64Array;
  /** Covariance of the frequencies, then of the bend, then of the lens. */
  readonly covariance: Symmetric;
}

/** What the fit knows beforehand. */
export interface Known {
  /** px from one value to the next. */
  readonly step: number;
  /** 1/px: standard deviation of the bend before anything is seen. */
  readonly bendSpread: number;
  /** 1/px²: standard deviation of the lens's term before anything is seen. */
  readonly lensSpread: number;
  /** px: where the picture's centre stands, along the strip from its middle and beside it. */
  readonly centre: Point;
  /** Noise power per value beside the waves. */
  readonly noise: number;
}

/** Shading up to this power is fitted; it takes what is slower than one and a half waves in the strip. */
export const SLOW = 3;
const ROUNDS = 8;
/** Longest step of a frequency in one round, in waves over the strip: beyond it the derivatives say nothing. */
const FARTHEST = 0.3;

/** Places u (px from the middle) of n values. */
function places(n: number, step: number): Float64Array {
  return Float64Array.from({ length: n }, (_, i) => (i - (n - 1) / 2) * step);
}

/** What the lens moves a place u of the strip by, for each unit of its term. */
export const lensMoves = (u: number, centre: Point): number => (u - centre.x) * ((u - centre.x) ** 2 + centre.y ** 2);

interface Columns {
  readonly linear: Float64Array[];
  readonly bent: Float64Array[];
}

/** cos and sin of every wave, and with amplitudes the derivatives by each frequency and by the bend. */
function columnsOf(model: Model, u: Float64Array, centre: Point, amplitudes: Fitted['amplitudes']): Columns {
  const linear: Float64Array[] = [];
  const bent = [...model.frequencies, 0, 0].map(() => new Float64Array(u.length));
  const byBend = bent[bent.length - 2] ?? new Float64Array(0);
  const byLens = bent[bent.length - 1] ?? new Float64Array(0);
  model.waves.forEach((wave, w) => {
    const cos = new Float64Array(u.length);
    const sin = new Float64Array(u.length);
    const turn = 2 * Math.PI * wave.multiple;
    const frequency = model.frequencies[wave.family] ?? 0;
    const byFrequency = bent[wave.family] ?? byBend;
    const { cos: A, sin: B } = amplitudes[w] ?? { cos: 0, sin: 0 };
    for (let i = 0; i < u.length; i += 1) {
      const at = u[i] ?? 0;
      const moves = lensMoves(at, centre);
      const U = at + model.lens * moves;
      const X = U / (1 + model.bend * U);
      const phase = turn * frequency * X;
      const c = Math.cos(phase);
      const s = Math.sin(phase);
      cos[i] = c;
      sin[i] = s;
      const slope = turn * (B * c - A * s);
      byFrequency[i] = (byFrequency[i] ?? 0) + slope * X;
      byBend[i] = (byBend[i] ?? 0) - slope * frequency * X * X;
      byLens[i] = (byLens[i] ?? 0) + slope * frequency * moves;
    }
    linear.push(cos, sin);
  });
  return { linear, bent };
}

function amplitudesFrom(weights: ArrayLike<number>, count: number): Fitted['amplitudes'] {
  return Array.from({ length: count }, (_, w) => ({ cos: weights[2 * w] ?? 0, sin: weights[2 * w + 1] ?? 0 }));
}

/** Adds what is known beforehand to the cells of bend and lens, which stand from `first` on. */
function addPriors({ size, cells }: Symmetric, first: number, priors: readonly number[]): void {
  priors.forEach((prior, k) => {
    const at = (first + k) * (size + 1);
    cells[at] = (cells[at] ?? 0) + prior;
  });
}

/**
 * Least-squares fit of waves, shading, frequencies, bend and lens together (Gauss and Newton), bend and lens held by
 * what is known of them beforehand.
 * @returns undefined where the waves cannot be told apart
 */
export function fitWaves(values: Float64Array, start: Model, known: Known): Fitted | undefined {
  const u = places(values.length, known.step);
  const slow = slowColumns(values.length, SLOW);
  const count = start.waves.length;
  const priors = [known.noise / known.bendSpread ** 2, known.noise / known.lensSpread ** 2] as const;
  const length = values.length * known.step;
  const farthest = Math.max(...[-1, 1].map((side) => Math.abs(lensMoves((side * length) / 2, known.centre))));
  let model = start;
  let amplitudes: Fitted['amplitudes'] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    // The amplitudes at these frequencies, then a step of everything together.
    const { linear } = columnsOf(model, u, known.centre, []);
    const flat = [...linear, ...slow];
    const flatInverse = inverse(gram(flat));
    if (!flatInverse) return undefined;
    const flatWeights = times(
      flatInverse,
      flat.map((column) => dot(column, values)),
    );
    amplitudes = amplitudesFrom(flatWeights, count);
    const { bent } = columnsOf(model, u, known.centre, amplitudes);
    const all = [...bent, ...flat];
    const normal = gram(all);
    const [bend, lens] = [bent.length - 2, bent.length - 1];
    addPriors(normal, bend, priors);
    const inverted = inverse(normal);
    if (!inverted) return undefined;
    const rest = Float64Array.from(values);
    flat.forEach((column, k) => {
      const weight = flatWeights[k] ?? 0;
      for (let i = 0; i < rest.length; i += 1) rest[i] = (rest[i] ?? 0) - weight * (column[i] ?? 0);
    });
    const pull = all.map((column) => dot(column, rest));
    pull[bend] = (pull[bend] ?? 0) - priors[0] * model.bend;
    pull[lens] = (pull[lens] ?? 0) - priors[1] * model.lens;
    const change = times(inverted, pull);
    const held = (step: number, most = FARTHEST / length) => Math.min(most, Math.max(-most, step));
    const far = Math.max(...bent.slice(0, lens).map((_, f) => Math.abs(change[f] ?? 0) * length));
    if (far < 1e-7 || round === ROUNDS - 1) {
      return {
        model,
        amplitudes,
        rest,
        covariance: covarianceOf(
          all,
          inverted,
          bent.length,
          rest,
          priors.map((prior) => prior * known.noise),
        ),
      };
    }
    model = {
      ...model,
      frequencies: model.frequencies.map((frequency, f) => frequency + held(change[f] ?? 0)),
      bend: model.bend + held(change[bend] ?? 0),
      lens: model.lens + held(change[lens] ?? 0, (FARTHEST / farthest) * length),
    };
  }
  return undefined;
}

/**
 * Covariance of the bent parameters where the noise is not white: (H)^-1 (J' R J + P) (H)^-1, R from the spectrum of what
 * is left (White's sandwich form in the frequency domain; from memory), P what the knowledge beforehand adds.
 */
function covarianceOf(
  columns: readonly Float64Array[],
  inverted: Symmetric,
  bent: number,
  rest: Float64Array,
  priorPowers: readonly number[],
): Symmetric {
  const size = powerOfTwo(rest.length);
  const floor = floorOf(powerOf(rest, undefined, size), size / rest.length);
  const transforms = columns.map((column) => spectrumOf(column, size, 1));
  const p = columns.length;
  const meat = new Float64Array(p * p);
  for (let r = 0; r < p; r += 1) {
    for (let c = 0; c <= r; c += 1) {
      const a = transforms[r];
      const b = transforms[c];
      if (!a || !b) continue;
      let sum = 0;
      for (let k = 0; k <= size / 2; k += 1) {
        const both = k === 0 || k === size / 2 ? 1 : 2;
        const product = (a.re[k] ?? 0) * (b.re[k] ?? 0) + (a.im[k] ?? 0) * (b.im[k] ?? 0);
        sum += both * (floor[k] ?? 0) * product;
      }
      meat[r * p + c] = sum / size;
      meat[c * p + r] = sum / size;
    }
  }
  addPriors({ size: p, cells: meat }, bent - 2, priorPowers);
  const cells = new Float64Array(bent * bent);
  for (let r = 0; r < bent; r += 1) {
    const row = inverted.cells.subarray(r * p, (r + 1) * p);
    const through = times({ size: p, cells: meat }, row);
    for (let c = 0; c < bent; c += 1) cells[r * bent + c] = dot(through, inverted.cells.subarray(c * p, (c + 1) * p));
  }
  return { size: bent, cells };
}
