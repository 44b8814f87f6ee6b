import { DomainError } from './evaluate';
import type { Inputs } from './frame';
import { plainSystem, type PlainSystem } from './number';
import type { Shape } from './outcome';
import type { Step, System } from './system';

/** Draws per propagation: enough for two digits of uncertainty (quantiles repeat to about 3 %). */
const DRAWS = 2000;
/** Draws for the share of one input alone, where two digits are not needed. */
const ALONE = 400;
const SEED = 20_260_401;

/** A small seeded generator (mulberry32, public domain), so that the same readings always give the same result. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

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

/** A column of standardised draws (mean 0, standard deviation 1), one in each of DRAWS equal strata, shuffled. */
function column(shape: Shape, random: () => number): Float64Array {
  const draws = new Float64Array(DRAWS);
  for (let i = 0; i < DRAWS; i += 1) {
    const p = (i + random()) / DRAWS;
    draws[i] = shape === 'normal' ? normalQuantile(p) : Math.sqrt(3) * (2 * p - 1);
  }
  for (let i = DRAWS - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    const held = draws[i] ?? 0;
    draws[i] = draws[j] ?? 0;
    draws[j] = held;
  }
  return draws;
}

const cache = new Map<string, Float64Array>();

function cachedColumn(index: number, shape: Shape): Float64Array {
  const key = `${index}${shape}`;
  const found = cache.get(key);
  if (found) return found;
  const made = column(shape, generator(SEED + index * 7919 + (shape === 'normal' ? 1 : 0)));
  cache.set(key, made);
  return made;
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

interface Mover {
  readonly at: number;
  readonly value: number;
  readonly u: number;
  readonly draws: Float64Array;
}

/**
 * Propagation of distributions by stratified sampling (JCGM 101, clauses 5 and 7). All results of one propagation are
 * worked out on the same draws of the inputs, so that they stay correlated.
 */
export class Draws {
  private readonly plain: PlainSystem;
  private readonly columns = new Map<string, Float64Array>();

  /** @param fixed whole numbers among the results, which do not move; it may grow */
  constructor(
    private readonly system: System,
    private readonly inputs: Inputs,
    private readonly fixed: ReadonlyMap<string, number>,
  ) {
    this.plain = plainSystem(system);
  }

  private slot(name: string): number {
    return this.plain.slot.get(name) ?? -1;
  }

  private mover(name: string): Mover | undefined {
    const input = this.inputs[name];
    if (!input || input.u === 0) return undefined;
    const draws = cachedColumn(this.system.inputs.indexOf(name), input.shape);
    return { at: this.slot(name), value: input.value, u: input.u, draws };
  }

  /** Best values of the inputs and whole numbers, each in its place. */
  private row(): Float64Array {
    const row = new Float64Array(this.plain.slot.size).fill(NaN);
    for (const name of this.system.inputs) row[this.slot(name)] = this.inputs[name]?.value ?? NaN;
    for (const [name, value] of this.fixed) row[this.slot(name)] = value;
    return row;
  }

  /** A step and the earlier ones it rests on, in order, without the whole numbers. */
  private chain(step: Step): Step[] {
    const wanted = new Set([step.formula.symbol]);
    const found: Step[] = [];
    for (const other of [...this.system.steps].reverse()) {
      const { symbol, uses } = other.formula;
      if (!wanted.has(symbol) || this.fixed.has(symbol)) continue;
      for (const name of uses) wanted.add(name);
      found.push(other);
    }
    return found.reverse();
  }

  private work(steps: readonly Step[], row: Float64Array): void {
    try {
      for (const { formula } of steps)
        row[this.slot(formula.symbol)] = this.plain.run.get(formula.symbol)?.(row) ?? NaN;
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      throw new DomainError(`${error.problem} for some values inside the stated uncertainty`, error.symbols);
    }
  }

  /** One value of a step per draw. */
  private column(step: Step): Float64Array {
    const { symbol } = step.formula;
    const found = this.columns.get(symbol);
    if (found) return found;
    const chain = this.chain(step);
    const movers = [...step.inputs].flatMap((name) => this.mover(name) ?? []);
    const ready = chain.flatMap(({ formula }) => {
      const column = this.columns.get(formula.symbol);
      return column ? [{ at: this.slot(formula.symbol), column }] : [];
    });
    const open = chain.filter(({ formula }) => !this.columns.has(formula.symbol));
    const made = open.map(({ formula }) => ({ at: this.slot(formula.symbol), column: new Float64Array(DRAWS) }));
    const row = this.row();
    for (let k = 0; k < DRAWS; k += 1) {
      for (const { at, value, u, draws } of movers) row[at] = value + u * (draws[k] ?? 0);
      for (const { at, column } of ready) row[at] = column[k] ?? NaN;
      this.work(open, row);
      for (const { at, column } of made) column[k] = row[at] ?? NaN;
    }
    open.forEach(({ formula }, i) => this.columns.set(formula.symbol, made[i]?.column ?? new Float64Array(DRAWS)));
    return this.columns.get(symbol) ?? new Float64Array(DRAWS);
  }

  /**
   * Standard deviation about the mean and the 2.5 % and 97.5 % quantiles of a step's result.
   * @throws DomainError where some draw has no value
   */
  result(step: Step): Sampled {
    const sorted = this.column(step).slice().sort();
    const quantile = (p: number): number => sorted[Math.round(p * (DRAWS - 1))] ?? NaN;
    return { u: spread(sorted), low: quantile(0.025), high: quantile(0.975) };
  }

  /** Standard deviation of a step's result with one input moving and the others still. */
  dueTo(step: Step, name: string): number {
    const mover = this.mover(name);
    if (!mover) return 0;
    const chain = this.chain(step);
    const row = this.row();
    this.work(chain, row);
    const moving = chain.filter((other) => other.inputs.has(name));
    const results = new Float64Array(ALONE);
    for (let k = 0; k < ALONE; k += 1) {
      row[mover.at] = mover.value + mover.u * (mover.draws[k] ?? 0);
      this.work(moving, row);
      results[k] = row[this.slot(step.formula.symbol)] ?? NaN;
    }
    return spread(results);
  }
}
