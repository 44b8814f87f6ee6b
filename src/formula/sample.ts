import { workOut, type Column } from './column';
import { DomainError } from './evaluate';
import { HALF_OVER_U, type Inputs, type Shape } from './outcome';
import type { Step, System } from './system';
import say from './words/en';

/**
 * Draws per propagation: the points of a shifted rank-1 lattice. They give standard deviations to about 1 % and the ends of
 * an interval to about 5 % of its half-width, as twice as many stratified random draws do (seen with scipy), and a sheet
 * of sampled results follows a thumb (`npm run bench`).
 */
const DRAWS = 1021;
/**
 * The lattice's generating vector, one number per uncertain input: component-by-component search for the least worst-case
 * error P_2 with weights 1/j (Sloan & Reztsov, Math. Comp. 71 (2002), from memory); test/unit/sample.test.ts repeats it.
 */
export const GENERATOR: readonly number[] = [
  1, 374, 156, 285, 305, 253, 486, 347, 399, 478, 228, 352, 15, 208, 213, 332, 82, 280, 99, 290, 233, 109, 270, 119,
  223, 337, 295, 114, 176, 124, 404, 166, 171, 508, 62, 451, 456, 57, 47, 5, 446, 394, 275, 342, 52, 503, 389, 10, 461,
  67, 181, 104, 238, 161, 498, 409, 218, 466, 327, 441, 384, 42, 72, 186,
];
/** Draws that tell whether a result moves at all. */
const FEW = 16;
/** Each axis is shifted by another multiple of the golden section, rounded so that its points stand amid N equal strata. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Inverse of the standard normal distribution (Acklam's rational approximation, relative error below 1.2e-9, from memory). */
function normalQuantile(p: number): number {
  const a = [-39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716];
  const b = [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572];
  const c = [-0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968];
  const d = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416];
  const horner = (coefficients: readonly number[], x: number, last: number): number =>
    coefficients.reduce((sum, k) => sum * x + k, 0) * x + last;
  const tail = 0.02425;
  if (p < tail || p > 1 - tail) {
    const q = Math.sqrt(-2 * Math.log(Math.min(p, 1 - p)));
    const x = horner(c, q, 2.938163982698783) / horner(d, q, 1);
    return p < tail ? x : -x;
  }
  const q = p - 0.5;
  const r = q * q;
  return (horner(a, r, 2.506628277459239) * q) / horner(b, r, 1);
}

/** Inverse of the distribution with mean 0 and standard deviation 1. */
function quantile(p: number, shape: Shape): number {
  if (shape === 'normal') return normalQuantile(p);
  const end = HALF_OVER_U[shape];
  if (shape === 'rectangular') return end * (2 * p - 1);
  return p < 0.5 ? end * (Math.sqrt(2 * p) - 1) : end * (1 - Math.sqrt(2 * (1 - p)));
}

/** Standardised draws (mean 0, standard deviation 1) along one axis of the lattice. */
function axis(index: number, shape: Shape): Float64Array {
  const step = GENERATOR[index];
  if (step === undefined) throw new RangeError(`More than ${GENERATOR.length} uncertain inputs`);
  const shift = Math.floor((((index + 1) * GOLDEN) % 1) * DRAWS);
  return Float64Array.from({ length: DRAWS }, (_, k) => {
    const p = (((k * step + shift) % DRAWS) + 0.5) / DRAWS;
    return quantile(p, shape);
  });
}

const cache = new Map<string, Float64Array>();

function cachedAxis(index: number, shape: Shape): Float64Array {
  const key = `${index}${shape}`;
  const found = cache.get(key) ?? axis(index, shape);
  cache.set(key, found);
  return found;
}

export interface Sampled {
  readonly u: number;
  readonly low: number;
  readonly high: number;
}

function spread(results: Float64Array): number {
  let mean = 0;
  for (const y of results) mean += y / results.length;
  let variance = 0;
  for (const y of results) variance += (y - mean) ** 2 / (results.length - 1);
  return Math.sqrt(variance);
}

/** The value at rank `rank`, counted from 0, of `values`, which are put into another order. Hoare's selection. */
function select(values: Float64Array, rank: number): number {
  let [left, right] = [0, values.length - 1];
  while (left < right) {
    const pivot = values[(left + right) >> 1] ?? NaN;
    let [i, j] = [left, right];
    while (i <= j) {
      while ((values[i] ?? NaN) < pivot) i += 1;
      while ((values[j] ?? NaN) > pivot) j -= 1;
      if (i > j) break;
      const held = values[i] ?? NaN;
      values[i] = values[j] ?? NaN;
      values[j] = held;
      i += 1;
      j -= 1;
    }
    if (rank <= j) right = j;
    else if (rank >= i) left = i;
    else break;
  }
  return values[rank] ?? NaN;
}

/**
 * Propagation of distributions by sampling (JCGM 101, clauses 5 and 7), quasi-random, so that the same readings always
 * give the same result. All results of one propagation are
 * worked out on the same draws of the inputs, so that they stay correlated.
 */
export class Draws {
  private readonly columns = new Map<string, Column>();
  private readonly few = new Map<string, Column>();
  private readonly uncertain: readonly string[];

  /** @param fixed whole numbers among the results, which do not move; it may grow */
  constructor(
    private readonly system: System,
    private readonly inputs: Inputs,
    private readonly fixed: ReadonlyMap<string, number>,
  ) {
    this.uncertain = system.inputs.filter((name) => (inputs[name]?.u ?? 0) > 0);
  }

  private inputColumn(name: string): Column {
    const input = this.inputs[name];
    if (!input) return NaN;
    const { value, u, shape } = input;
    if (u === 0) return value;
    return cachedAxis(this.uncertain.indexOf(name), shape).map((z) => value + u * z);
  }

  private work(step: Step, columns: Map<string, Column>, input: (name: string) => Column): Column {
    for (const [name, value] of this.fixed) columns.set(name, value);
    try {
      return workOut(this.system, step.formula.symbol, columns, input);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      throw new DomainError(say.inside(error.problem), error.symbols);
    }
  }

  /**
   * Standard deviation about the mean and the 2.5 % and 97.5 % quantiles of a step's result.
   * @throws DomainError where some draw has no value
   */
  result(step: Step): Sampled {
    const made = this.work(step, this.columns, (name) => this.inputColumn(name));
    if (typeof made === 'number') return { u: 0, low: made, high: made };
    const values = made.slice();
    // Between ranks, each draw standing for the middle of its share.
    const quantile = (p: number): number => {
      const rank = p * DRAWS - 0.5;
      const below = select(values, Math.floor(rank));
      return below + (rank - Math.floor(rank)) * (select(values, Math.ceil(rank)) - below);
    };
    return { u: spread(made), low: quantile(0.025), high: quantile(0.975) };
  }

  /**
   * A rough standard deviation from a few draws: enough to tell whether a result moves at all.
   * @throws DomainError where some draw has no value
   */
  roughSpread(step: Step): number {
    const made = this.work(step, this.few, (name) => {
      const column = this.inputColumn(name);
      return typeof column === 'number' ? column : column.subarray(0, FEW);
    });
    return typeof made === 'number' ? 0 : spread(made);
  }

  /** Standard deviation of a step's result with one input moving and the others still. */
  dueTo(step: Step, name: string): number {
    const still = (other: string): Column =>
      other === name ? this.inputColumn(name) : (this.inputs[other]?.value ?? NaN);
    const made = this.work(step, new Map(), still);
    return typeof made === 'number' ? 0 : spread(made);
  }
}
