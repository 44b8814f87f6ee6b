import type { Derivatives } from './functions';

/**
 * A value along a line through the inputs, x(t) = c0 + c1 t + c2 t² + c3 t³: forward-mode differentiation to third order.
 * Derivatives in mixed directions follow from jets along e_i + e_j and e_i - e_j (Griewank & Walther, Evaluating
 * Derivatives, ch. 13, from memory).
 */
export interface Jet {
  readonly c0: number;
  readonly c1: number;
  readonly c2: number;
  readonly c3: number;
}

export function constantJet(value: number): Jet {
  return { c0: value, c1: 0, c2: 0, c3: 0 };
}

export function isConstant(a: Jet): boolean {
  return a.c1 === 0 && a.c2 === 0 && a.c3 === 0;
}

export function addJets(a: Jet, b: Jet): Jet {
  return { c0: a.c0 + b.c0, c1: a.c1 + b.c1, c2: a.c2 + b.c2, c3: a.c3 + b.c3 };
}

export function scaleJet(a: Jet, k: number): Jet {
  return { c0: k * a.c0, c1: k * a.c1, c2: k * a.c2, c3: k * a.c3 };
}

export function multiplyJets(a: Jet, b: Jet): Jet {
  return {
    c0: a.c0 * b.c0,
    c1: a.c0 * b.c1 + a.c1 * b.c0,
    c2: a.c0 * b.c2 + a.c1 * b.c1 + a.c2 * b.c0,
    c3: a.c0 * b.c3 + a.c1 * b.c2 + a.c2 * b.c1 + a.c3 * b.c0,
  };
}

/** a / b; the caller has checked that b is not zero. */
export function divideJets(a: Jet, b: Jet): Jet {
  const c0 = a.c0 / b.c0;
  const c1 = (a.c1 - c0 * b.c1) / b.c0;
  const c2 = (a.c2 - c0 * b.c2 - c1 * b.c1) / b.c0;
  const c3 = (a.c3 - c0 * b.c3 - c1 * b.c2 - c2 * b.c1) / b.c0;
  return { c0, c1, c2, c3 };
}

/** f(u(t)) by Faà di Bruno's formula. A term whose factor is zero stays zero where a derivative is infinite. */
export function composeJet(d: Derivatives, u: Jet): Jet {
  if (isConstant(u)) return constantJet(d[0]);
  const term = (derivative: number, factor: number): number => (factor === 0 ? 0 : derivative * factor);
  return {
    c0: d[0],
    c1: term(d[1], u.c1),
    c2: term(d[1], u.c2) + term(d[2] / 2, u.c1 ** 2),
    c3: term(d[1], u.c3) + term(d[2], u.c1 * u.c2) + term(d[3] / 6, u.c1 ** 3),
  };
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
