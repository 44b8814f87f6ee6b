import { resultOf } from './column';
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
/** A value left at a bracketed root, against the change across its bracket: more is a jump or a pole, not a root. */
export const JUMP = 1e-6;
/** What rounding may leave of a result that should equal the value asked for. */
export const ROUNDING = 1e-12;

export interface Point {
  readonly x: number;
  /** Result less the value asked for; NaN where there is no result. */
  readonly off: number;
}

export type Off = (x: number) => Point;

/** Points across a range: evenly spaced, or by equal ratios where the range spans more than two decades of one sign. */
export function scan([low, high]: readonly [number, number]): number[] {
  const geometric = low > 0 && high / low > 100;
  return Array.from({ length: SCAN_POINTS + 1 }, (_, i) => {
    const t = i / SCAN_POINTS;
    if (t === 1) return high;
    return geometric ? low * (high / low) ** t : low + (high - low) * t;
  });
}

/** Halves [here, there] until it can shrink no further; returns the last point on the side of `here`. */
export function edge(at: Off, here: Point, there: Point, belongs: (point: Point) => boolean): Point {
  let [inside, outside] = [here, there.x];
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    const middle = at((inside.x + outside) / 2);
    if (middle.x === inside.x || middle.x === outside) break;
    if (belongs(middle)) inside = middle;
    else outside = middle.x;
  }
  return inside;
}

/** The point nearest to the value asked for between two others (golden section), where there is one turning point. */
function turning(at: Off, from: number, to: number, sign: number): Point {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [left, right] = [at(b - ratio * (b - a)), at(a + ratio * (b - a))];
  for (let i = 0; i < MAX_ITERATIONS && left.x < right.x; i += 1) {
    if (sign * left.off < sign * right.off) {
      [b, right] = [right.x, left];
      left = at(b - ratio * (b - a));
    } else {
      [a, left] = [left.x, right];
      right = at(a + ratio * (b - a));
    }
    if (sign * left.off <= 0) return left;
  }
  return sign * left.off < sign * right.off ? left : right;
}

/** Scanned points with results, and between them the edges of the domain and the turning points that come near. */
export function refine(at: Off, scanned: readonly Point[]): Point[] {
  const valid = (point: Point): boolean => Number.isFinite(point.off);
  const points: Point[] = [];
  scanned.forEach((here, i) => {
    const [before, after] = [scanned[i - 1], scanned[i + 1]];
    if (!valid(here)) return;
    if (before && !valid(before)) points.push(edge(at, here, before, valid));
    points.push(here);
    if (after && !valid(after)) points.push(edge(at, here, after, valid));
    if (!before || !after || !valid(before) || !valid(after)) return;
    const sign = Math.sign(here.off);
    const sameSide = sign !== 0 && before.off * sign > 0 && after.off * sign > 0;
    if (sameSide && here.off * sign <= before.off * sign && here.off * sign < after.off * sign) {
      points.push(turning(at, before.x, after.x, sign));
    }
  });
  return points.sort((a, b) => a.x - b.x);
}

/** Bisection with a secant try (Dekker): keeps the bracket, ends when it can shrink no further. */
export function bracketedRoot(at: Off, here: Point, there: Point): Point {
  let [left, right] = [here, there];
  for (let i = 0; i < MAX_ITERATIONS; i += 1) {
    const middle = (left.x + right.x) / 2;
    const secant = left.x - (left.off * (right.x - left.x)) / (right.off - left.off);
    for (const x of [secant, middle]) {
      if (!(x > left.x && x < right.x)) continue;
      const point = at(x);
      if (point.off === 0 || Number.isNaN(point.off)) return point;
      if (point.off < 0 === left.off < 0) left = point;
      else right = point;
    }
    if (right.x - left.x <= 4 * Number.EPSILON * Math.max(Math.abs(left.x), Math.abs(right.x))) break;
  }
  return Math.abs(left.off) < Math.abs(right.off) ? left : right;
}

/** Where the value asked for is met; of a whole stretch on which it is met, the two ends. */
function rootsAmong(at: Off, points: readonly Point[], close: (off: number) => boolean): number[] {
  const found: number[] = [];
  points.forEach((here, i) => {
    const [before, after] = [points[i - 1], points[i + 1]];
    if (close(here.off)) {
      const [met, metBefore, metAfter] = [
        (p: Point) => close(p.off),
        before && close(before.off),
        after && close(after.off),
      ];
      if (metBefore && metAfter) return;
      if (metBefore) found.push(after ? edge(at, here, after, met).x : here.x);
      else if (metAfter) found.push(before ? edge(at, here, before, met).x : here.x);
      else found.push(here.x);
      return;
    }
    if (!after || close(after.off) || here.off * after.off > 0) return;
    const root = bracketedRoot(at, here, after);
    const across = Math.abs(after.off - here.off);
    if (close(root.off) || Math.abs(root.off) <= JUMP * across) found.push(root.x);
  });
  return found;
}

/**
 * Asks for one input instead of a result: every value of `unknown` in its range for which `target` takes `value`.
 * A bracketing search on the same formulas; a jump across the target (a rounding step) or a pole is not a root. Where a
 * whole stretch gives the target (a rounded result), its two ends are returned. Roots closer together than a 240th of
 * the range are found only where they lie about one turning point; of a saw (what rounding leaves), perhaps not all.
 *
 * @param inputs the other inputs; the unknown's own entry is ignored
 */
export function solve(system: System, inputs: Inputs, question: Question): Solution {
  const values = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input?.value]));
  const result = resultOf(system, values, question.unknown, question.target);
  const at: Off = (x) => ({ x, off: result(x) - question.value });
  const points = refine(at, scan(question.range).map(at));
  if (points.length === 0) return { ok: false, reason: 'no result' };
  const close = (off: number): boolean => Math.abs(off) <= ROUNDING * Math.abs(question.value);
  const roots = rootsAmong(at, points, close);
  if (roots.length === 0) {
    const results = points.map((point) => point.off + question.value);
    return { ok: false, reason: 'no root', low: Math.min(...results), high: Math.max(...results) };
  }
  return { ok: true, roots: roots.map((value) => ({ value, u: uncertaintyOfRoot(system, inputs, question, value) })) };
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
