/**
 * Shape of an input's probability: the limits of an instrument are rectangular (JCGM 100, 4.3.7); the difference of two such
 * readings is triangular (JCGM 101, 6.4.5).
 */
export type Shape = 'rectangular' | 'triangular' | 'normal';

/** Half-width over standard uncertainty of the shapes that have ends. */
export const HALF_OVER_U: Readonly<Record<Exclude<Shape, 'normal'>, number>> = {
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
};

/** An input as the propagation sees it. SI. */
export interface InputValue {
  readonly value: number;
  /** Standard uncertainty. */
  readonly u: number;
  readonly shape: Shape;
}

/** What one input adds to a result's uncertainty. */
export interface Contribution {
  readonly symbol: string;
  /** Standard uncertainty of the result due to this input alone. */
  readonly u: number;
  /** Share of the result's variance, 0 to 1. */
  readonly share: number;
}

export type Method = 'exact' | 'first order' | 'second order' | 'sampled';

/** A result: its value, its uncertainty and where that comes from. SI. */
export interface Known {
  readonly ok: true;
  readonly value: number;
  /** Combined standard uncertainty. */
  readonly u: number;
  /** Interval of about 95 %: value ± 2u, or the sampled quantiles where the distribution leans. */
  readonly low: number;
  readonly high: number;
  readonly method: Method;
  /** Largest first. */
  readonly budget: readonly Contribution[];
  /** Partial derivatives with respect to the inputs. */
  readonly gradient: Readonly<Record<string, number>>;
}

/** Why there is no result. `symbols` are the inputs to look at. */
export type Failure =
  | { readonly kind: 'missing'; readonly symbols: readonly string[] }
  | { readonly kind: 'domain'; readonly symbols: readonly string[]; readonly problem: string }
  | {
      /** A whole number that the uncertainty does not settle. */
      readonly kind: 'undetermined';
      readonly symbol: string;
      readonly symbols: readonly string[];
      readonly from: number;
      readonly to: number;
      /** Of the number before rounding: which input keeps it open. Largest first. */
      readonly budget: readonly Contribution[];
    };

export interface Unknown {
  readonly ok: false;
  readonly failure: Failure;
}

export type Outcome = Known | Unknown;

/** Coverage factor for the expanded uncertainty, about 95 % (JCGM 100, 6.3.3). */
export const COVERAGE = 2;

/** Expanded uncertainty of a result: half its interval. */
export function expanded(result: Known): number {
  return (result.high - result.low) / 2;
}

/** The inputs of a propagation, by symbol; undefined where none was given. */
export type Inputs = Readonly<Record<string, InputValue | undefined>>;
