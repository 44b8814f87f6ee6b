import { floorOf, powerOf, powerOfTwo } from './ridge-noise';
import { dot, gram, inverse, slowColumns, times, type Symmetric } from './ridge-solve';
import { spectrumOf } from './spectrum';

/*
 * A wall seen a little from one side: the place X on the wall of what stands u pixels from the strip's middle is
 *   X = u / (1 + c u)
 * exactly (a plane's central projection restricted to a line is a projective map of it; Hartley and Zisserman, Multiple
 * View Geometry, section 2.5, from memory), X in pixels of the middle. A regular pattern of F cycles per such pixel has
 * the phase 2 pi F X. Slow shading is a cubic beside it.
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
}

export interface Fitted {
  readonly model: Model;
  /** Cosine and sine amplitude of each wave. */
  readonly amplitudes: readonly { readonly cos: number; readonly sin: number }[];
  readonly rest: Float64Array;
  /** Covariance of the frequencies and, last, of the bend. */
  readonly covariance: Symmetric;
}

/** What the fit knows beforehand. */
export interface Known {
  /** px from one value to the next. */
  readonly step: number;
  /** 1/px: standard deviation of the bend before anything is seen. */
  readonly bendSpread: number;
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

interface Columns {
  readonly linear: Float64Array[];
  readonly bent: Float64Array[];
}

/** cos and sin of every wave, and with amplitudes the derivatives by each frequency and by the bend. */
function columnsOf(model: Model, u: Float64Array, amplitudes: Fitted['amplitudes']): Columns {
  const linear: Float64Array[] = [];
  const bent = [...model.frequencies, 0].map(() => new Float64Array(u.length));
  const byBend = bent[bent.length - 1] ?? new Float64Array(0);
  model.waves.forEach((wave, w) => {
    const cos = new Float64Array(u.length);
    const sin = new Float64Array(u.length);
    const turn = 2 * Math.PI * wave.multiple;
    const frequency = model.frequencies[wave.family] ?? 0;
    const byFrequency = bent[wave.family] ?? byBend;
    const { cos: A, sin: B } = amplitudes[w] ?? { cos: 0, sin: 0 };
    for (let i = 0; i < u.length; i += 1) {
      const at = u[i] ?? 0;
      const X = at / (1 + model.bend * at);
      const phase = turn * frequency * X;
      const c = Math.cos(phase);
      const s = Math.sin(phase);
      cos[i] = c;
      sin[i] = s;
      const slope = turn * (B * c - A * s);
      byFrequency[i] = (byFrequency[i] ?? 0) + slope * X;
      byBend[i] = (byBend[i] ?? 0) - slope * frequency * X * X;
    }
    linear.push(cos, sin);
  });
  return { linear, bent };
}

function amplitudesFrom(weights: ArrayLike<number>, count: number): Fitted['amplitudes'] {
  return Array.from({ length: count }, (_, w) => ({ cos: weights[2 * w] ?? 0, sin: weights[2 * w + 1] ?? 0 }));
}

/**
 * Least-squares fit of waves, shading, frequencies and bend together (Gauss and Newton), the bend held by what is known of
 * it beforehand.
 * @returns undefined where the waves cannot be told apart
 */
export function fitWaves(values: Float64Array, start: Model, known: Known): Fitted | undefined {
  const u = places(values.length, known.step);
  const slow = slowColumns(values.length, SLOW);
  const count = start.waves.length;
  const prior = known.noise / known.bendSpread ** 2;
  let model = start;
  let amplitudes: Fitted['amplitudes'] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    // The amplitudes at these frequencies, then a step of everything together.
    const { linear } = columnsOf(model, u, []);
    const flat = [...linear, ...slow];
    const flatInverse = inverse(gram(flat));
    if (!flatInverse) return undefined;
    const flatWeights = times(
      flatInverse,
      flat.map((column) => dot(column, values)),
    );
    amplitudes = amplitudesFrom(flatWeights, count);
    const { bent } = columnsOf(model, u, amplitudes);
    const all = [...bent, ...flat];
    const normal = gram(all);
    const last = bent.length - 1;
    const lastCell = last * normal.size + last;
    normal.cells[lastCell] = (normal.cells[lastCell] ?? 0) + prior;
    const inverted = inverse(normal);
    if (!inverted) return undefined;
    const rest = Float64Array.from(values);
    flat.forEach((column, k) => {
      const weight = flatWeights[k] ?? 0;
      for (let i = 0; i < rest.length; i += 1) rest[i] = (rest[i] ?? 0) - weight * (column[i] ?? 0);
    });
    const pull = all.map((column) => dot(column, rest));
    pull[last] = (pull[last] ?? 0) - prior * model.bend;
    const change = times(inverted, pull);
    const length = values.length * known.step;
    const held = (step: number) => Math.min(FARTHEST / length, Math.max(-FARTHEST / length, step));
    const far = Math.max(...bent.map((_, f) => Math.abs(change[f] ?? 0) * length));
    if (far < 1e-7 || round === ROUNDS - 1) {
      return {
        model,
        amplitudes,
        rest,
        covariance: covarianceOf(all, inverted, bent.length, rest, prior * known.noise),
      };
    }
    model = {
      ...model,
      frequencies: model.frequencies.map((frequency, f) => frequency + held(change[f] ?? 0)),
      bend: model.bend + held(change[last] ?? 0),
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
  priorPower: number,
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
  const bend = bent - 1;
  meat[bend * p + bend] = (meat[bend * p + bend] ?? 0) + priorPower;
  const cells = new Float64Array(bent * bent);
  for (let r = 0; r < bent; r += 1) {
    const row = inverted.cells.subarray(r * p, (r + 1) * p);
    const through = times({ size: p, cells: meat }, row);
    for (let c = 0; c < bent; c += 1) cells[r * bent + c] = dot(through, inverted.cells.subarray(c * p, (c + 1) * p));
  }
  return { size: bent, cells };
}
