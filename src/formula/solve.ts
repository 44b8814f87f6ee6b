import { resultOf } from './number';
import { propagate, type Inputs } from './propagate';
import type { InputValue } from './outcome';
import type { System } from './system';

/** One value of the unknown input that gives the target. SI. */
export interface Root {
  readonly value: number;
  /** Standard uncertainty, from the other inputs' (first order); undefined where the result is flat in the unknown. */
  readonly u: number | undefined;
}

export type Solution =
  | { readonly ok: true; readonly roots: readonly Root[] }
  /** `low` and `high` are the least and greatest result found in the range; undefined when there was none at all. */
  | { readonly ok: false; readonly reason: 'no root'; readonly low: number; readonly high: number }
  | { readonly ok: false; readonly reason: 'no result' };

export interface Question {
  readonly unknown: string;
  readonly target: string;
  /** SI value the target should take. */
  readonly value: number;
  /** Stated range of the unknown, SI. */
  readonly range: readonly [number, number];
}

const SCAN_POINTS = 240;
const MAX_ITERATIONS = 100;

/** Points across a range: evenly spaced, or by equal ratios where the range spans more than two decades of one sign. */
function scan([low, high]: readonly [number, number]): number[] {
  const geometric = low > 0 && high / low > 100;
  return Array.from({ length: SCAN_POINTS + 1 }, (_, i) => {
    const t = i / SCAN_POINTS;
    return geometric ? low * (high / low) ** t : low + (high - low) * t;
  });
}

/** Bisection with a secant try (Dekker): keeps the bracket, ends when it can shrink no further. */
function bracketedRoot(f: (x: number) => number, a: number, fa: number, b: number, fb: number): number {
  let [left, fLeft, right, fRight] = [a, fa, b, fb];
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    const middle = (left + right) / 2;
    const secant = left - (fLeft * (right - left)) / (fRight - fLeft);
    const inside = secant > Math.min(left, right) && secant < Math.max(left, right);
    for (const x of inside ? [secant, middle] : [middle]) {
      if (x <= Math.min(left, right) || x >= Math.max(left, right)) continue;
      const fx = f(x);
      if (fx === 0) return x;
      if (!Number.isFinite(fx)) return NaN;
      if (fx < 0 === fLeft < 0) [left, fLeft] = [x, fx];
      else [right, fRight] = [x, fx];
    }
    if (Math.abs(right - left) <= 4 * Number.EPSILON * Math.max(Math.abs(left), Math.abs(right))) break;
  }
  return Math.abs(fLeft) < Math.abs(fRight) ? left : right;
}

/**
 * Asks for one input instead of a result: every value of `unknown` in its range for which `target` takes `value`.
 * A bracketing search on the same formulas; a jump across the target (a rounding step) is not a root.
 *
 * @param inputs the other inputs; the unknown's own entry is ignored
 */
export function solve(system: System, inputs: Inputs, question: Question): Solution {
  const values = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input?.value]));
  const result = resultOf(system, values, question.unknown, question.target);
  const points = scan(question.range).map((x) => ({ x, y: result(x) }));
  const valid = points.filter((point) => Number.isFinite(point.y));
  if (valid.length === 0) return { ok: false, reason: 'no result' };
  const low = Math.min(...valid.map((point) => point.y));
  const high = Math.max(...valid.map((point) => point.y));
  const tolerance = 1e-9 * Math.max(Math.abs(question.value), high - low, Number.MIN_VALUE);

  const found: number[] = [];
  const off = (x: number): number => result(x) - question.value;
  for (let i = 0; i < points.length; i += 1) {
    const here = points[i];
    const next = points[i + 1];
    if (!here || !Number.isFinite(here.y)) continue;
    const fHere = here.y - question.value;
    if (fHere === 0) found.push(here.x);
    if (!next || !Number.isFinite(next.y)) continue;
    const fNext = next.y - question.value;
    if (fHere * fNext >= 0) continue;
    const root = bracketedRoot(off, here.x, fHere, next.x, fNext);
    if (Math.abs(off(root)) <= tolerance) found.push(root);
  }
  if (found.length === 0) return { ok: false, reason: 'no root', low, high };
  return { ok: true, roots: found.map((value) => ({ value, u: uncertaintyOfRoot(system, inputs, question, value) })) };
}

/** First order: target fixed, so c_x dx + sum of the other contributions = 0. */
function uncertaintyOfRoot(system: System, inputs: Inputs, question: Question, root: number): number | undefined {
  const at: Record<string, InputValue | undefined> = {
    ...inputs,
    [question.unknown]: { value: root, u: 0, shape: 'rectangular' },
  };
  const outcome = propagate(system, at)[question.target];
  const slope = outcome?.ok ? outcome.gradient[question.unknown] : undefined;
  if (!outcome?.ok || slope === undefined || slope === 0) return undefined;
  return outcome.u / Math.abs(slope);
}
