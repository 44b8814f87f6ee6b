/** Exponents of length, mass, time, temperature and electric current. Angles and counts are dimensionless, as in the SI. */
export type Dimension = readonly [L: number, M: number, T: number, K: number, A: number];

export const dimensionless: Dimension = [0, 0, 0, 0, 0];

const EXPONENT_TOLERANCE = 1e-9;

/** True when both exponents sets agree (cube roots and the like leave rounding in them). */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every((exponent, i) => Math.abs(exponent - (b[i] ?? 0)) < EXPONENT_TOLERANCE);
}

/** Dimension of a product of `a` and `b` raised to `power` (-1 for a quotient). */
export function combine(a: Dimension, b: Dimension, power = 1): Dimension {
  return [a[0] + power * b[0], a[1] + power * b[1], a[2] + power * b[2], a[3] + power * b[3], a[4] + power * b[4]];
}

/** Dimension of `a` raised to `power`. */
export function raise(a: Dimension, power: number): Dimension {
  return combine(dimensionless, a, power);
}

/** A dimension in SI base units, as `kg·m·s^-2`; `1` when dimensionless. */
export function describeDimension(d: Dimension): string {
  const bases = ['m', 'kg', 's', 'K', 'A'];
  const parts = bases.flatMap((base, i) => {
    const exponent = d[i] ?? 0;
    if (Math.abs(exponent) < EXPONENT_TOLERANCE) return [];
    return [Math.abs(exponent - 1) < EXPONENT_TOLERANCE ? base : `${base}^${exponent}`];
  });
  return parts.length > 0 ? parts.join('·') : '1';
}
