/** A ratio of whole numbers. */
export interface Fraction {
  readonly numerator: number;
  readonly denominator: number;
}

/** Two ratios that agree to nine digits are one: what is typed has fewer, and the engine rounds to whole steps alike. */
const SAME = 1e-9;

const agrees = (x: number, f: Fraction): boolean =>
  Math.abs(x - f.numerator / f.denominator) <= SAME * Math.max(1, Math.abs(x));

/**
 * Convergents of a ratio's continued fraction, coarsest first, up to the first that agrees with it to nine digits or
 * to the last whose denominator is at most `largest` (Hardy & Wright, An Introduction to the Theory of Numbers,
 * ch. 10, from memory).
 *
 * @param x a ratio above or at zero, no unit
 */
export function convergents(x: number, largest: number): Fraction[] {
  const found: Fraction[] = [];
  let before: Fraction = { numerator: 0, denominator: 1 };
  let last: Fraction = { numerator: 1, denominator: 0 };
  let rest = x;
  for (;;) {
    const whole = Math.floor(rest);
    const next: Fraction = {
      numerator: whole * last.numerator + before.numerator,
      denominator: whole * last.denominator + before.denominator,
    };
    if (!Number.isFinite(whole) || next.denominator > largest) return found;
    found.push(next);
    if (agrees(x, next)) return found;
    [before, last, rest] = [last, next, 1 / (rest - whole)];
  }
}

/** The ratio as a fraction in lowest terms that agrees to nine digits, or undefined where its denominator is too large. */
export function asFraction(x: number, largest: number): Fraction | undefined {
  const last = convergents(x, largest).at(-1);
  return last && agrees(x, last) ? last : undefined;
}
