import type { Derivatives } from './functions';

/**
 * A value with its derivatives with respect to the inputs, each input measured in its own standard uncertainty: gradient,
 * and among the uncertain inputs the second derivatives f_ij and the third derivatives f_ijj, which is all that
 * JCGM 100, 5.1.2 asks for. Forward mode: every operation carries them along (Griewank & Walther, Evaluating
 * Derivatives, ch. 13, from memory).
 */
export interface Taylor {
  readonly value: number;
  /** Inputs it depends on, by number, ascending; uncertain inputs have the lower numbers. */
  readonly on: readonly number[];
  /** How many of `on` are uncertain. */
  readonly uncertain: number;
  /** f_i, one for each of `on`. */
  readonly first: readonly number[];
  /** f_ij, row by row, `uncertain` x `uncertain`. */
  readonly second: readonly number[];
  /** f_ijj, row i, column j. */
  readonly third: readonly number[];
  /** Exact inputs along which there is no finite slope, as for sqrt at 0. */
  readonly blind: readonly number[];
}

const NONE: readonly number[] = [];

const zeros = (n: number): number[] => new Array<number>(n).fill(0);

export function constantTaylor(value: number): Taylor {
  return { value, on: NONE, uncertain: 0, first: NONE, second: NONE, third: NONE, blind: NONE };
}

/** The input with this number itself. @param scale its standard uncertainty; 1 for an exact one */
export function variable(value: number, number: number, isUncertain: boolean, scale: number): Taylor {
  const square = isUncertain ? [0] : NONE;
  return {
    value,
    on: [number],
    uncertain: isUncertain ? 1 : 0,
    first: [scale],
    second: square,
    third: square,
    blind: NONE,
  };
}

export function isConstant(a: Taylor): boolean {
  return a.on.length === 0 && a.blind.length === 0;
}

/** Both ascending lists merged into one. */
function union(a: readonly number[], b: readonly number[]): readonly number[] {
  if (a === b || b.length === 0) return a;
  if (a.length === 0) return b;
  const merged: number[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    const [x, y] = [a[i] ?? Infinity, b[j] ?? Infinity];
    merged.push(Math.min(x, y));
    if (x <= y) i += 1;
    if (y <= x) j += 1;
  }
  return merged.length === a.length ? a : merged.length === b.length ? b : merged;
}

/** `a` written out for the inputs `on`, zeros where it does not depend on one. */
function spreadOver(a: Taylor, on: readonly number[], uncertain: number): Taylor {
  if (a.on === on) return a;
  const first = zeros(on.length);
  const second = zeros(uncertain * uncertain);
  const third = zeros(uncertain * uncertain);
  const places = a.on.map((number) => on.indexOf(number));
  places.forEach((place, i) => {
    first[place] = a.first[i] ?? 0;
    if (i >= a.uncertain) return;
    for (let j = 0; j < a.uncertain; j += 1) {
      const to = place * uncertain + (places[j] ?? 0);
      second[to] = a.second[i * a.uncertain + j] ?? 0;
      third[to] = a.third[i * a.uncertain + j] ?? 0;
    }
  });
  return { ...a, on, uncertain, first, second, third };
}

/** Both written out for the inputs of either. */
function aligned(a: Taylor, b: Taylor): readonly [Taylor, Taylor] {
  if (a.on === b.on) return [a, b];
  const on = union(a.on, b.on);
  // Uncertain inputs have the lower numbers, so they come first in the union too.
  const last = Math.max(a.on[a.uncertain - 1] ?? -1, b.on[b.uncertain - 1] ?? -1);
  const uncertain = on.findIndex((number) => number > last);
  const count = uncertain < 0 ? on.length : uncertain;
  return [spreadOver(a, on, count), spreadOver(b, on, count)];
}

/** a + b with the given value (the caller has cleared it of rounding). */
export function addTaylors(a: Taylor, b: Taylor, value: number): Taylor {
  if (isConstant(b)) return { ...a, value };
  if (isConstant(a)) return { ...b, value };
  const [p, q] = aligned(a, b);
  const add = (x: readonly number[], y: readonly number[]): number[] => x.map((xi, i) => xi + (y[i] ?? 0));
  return {
    value,
    on: p.on,
    uncertain: p.uncertain,
    first: add(p.first, q.first),
    second: add(p.second, q.second),
    third: add(p.third, q.third),
    blind: union(a.blind, b.blind),
  };
}

export function scaleTaylor(a: Taylor, k: number): Taylor {
  const scale = (x: readonly number[]): number[] => x.map((xi) => k * xi);
  return { ...a, value: k * a.value, first: scale(a.first), second: scale(a.second), third: scale(a.third) };
}

/** u v by Leibniz's rule. */
export function multiplyTaylors(a: Taylor, b: Taylor): Taylor {
  if (isConstant(b)) return scaleTaylor(a, b.value);
  if (isConstant(a)) return scaleTaylor(b, a.value);
  const [p, q] = aligned(a, b);
  const { on, uncertain: n } = p;
  const [u, v] = [p.value, q.value];
  const first = on.map((_, i) => (p.first[i] ?? 0) * v + u * (q.first[i] ?? 0));
  const second = zeros(n * n);
  const third = zeros(n * n);
  for (let i = 0; i < n; i += 1) {
    const [ui, vi] = [p.first[i] ?? 0, q.first[i] ?? 0];
    for (let j = 0; j < n; j += 1) {
      const [ij, jj] = [i * n + j, j * n + j];
      const [uj, vj] = [p.first[j] ?? 0, q.first[j] ?? 0];
      const [uij, vij] = [p.second[ij] ?? 0, q.second[ij] ?? 0];
      second[ij] = uij * v + ui * vj + uj * vi + u * vij;
      third[ij] =
        (p.third[ij] ?? 0) * v +
        ui * (q.second[jj] ?? 0) +
        2 * (uij * vj + uj * vij) +
        (p.second[jj] ?? 0) * vi +
        u * (q.third[ij] ?? 0);
    }
  }
  return { value: u * v, on, uncertain: n, first, second, third, blind: union(a.blind, b.blind) };
}

/** True when an uncertain input moves `a`. */
export function moves(a: Taylor): boolean {
  return a.first.slice(0, a.uncertain).some((slope) => slope !== 0) || a.second.some((x) => x !== 0);
}

/** `a` as a constant, its exact inputs marked as blind: there the slope is not finite. */
export function blinded(a: Taylor, value: number): Taylor {
  return { ...constantTaylor(value), blind: union(a.blind, a.on.slice(a.uncertain)) };
}

/** f(u) by the chain rule. A term whose factor is zero stays zero where a derivative is infinite. */
export function composeTaylor([f, f1, f2, f3]: Derivatives, a: Taylor): Taylor {
  if (a.on.length === 0) return { ...a, value: f };
  const term = (derivative: number, factor: number): number => (factor === 0 ? 0 : derivative * factor);
  const n = a.uncertain;
  const second = zeros(n * n);
  const third = zeros(n * n);
  for (let i = 0; i < n; i += 1) {
    const ui = a.first[i] ?? 0;
    for (let j = 0; j < n; j += 1) {
      const ij = i * n + j;
      const uj = a.first[j] ?? 0;
      const uij = a.second[ij] ?? 0;
      second[ij] = term(f1, uij) + term(f2, ui * uj);
      third[ij] =
        term(f1, a.third[ij] ?? 0) + term(f2, 2 * uij * uj + ui * (a.second[j * n + j] ?? 0)) + term(f3, ui * uj * uj);
    }
  }
  return { ...a, value: f, first: a.first.map((ui) => term(f1, ui)), second, third };
}

/** x^p and its derivatives for a constant exponent; a falling factor of zero wins over an infinite power. */
export function powerDerivatives(x: number, p: number): Derivatives {
  const derivative = (order: number): number => {
    let factor = 1;
    for (let k = 0; k < order; k += 1) factor *= p - k;
    return factor === 0 ? 0 : factor * x ** (p - order);
  };
  return [x ** p, derivative(1), derivative(2), derivative(3)];
}
