/** Zeros of the Bessel function J₀ (Abramowitz and Stegun, table 9.5). */
const ZEROS = [2.404825558, 5.52007811, 8.653727913, 11.791534439] as const;
/** Beyond this the short-time form no longer holds. */
const SHORT = 0.7;

/**
 * Share of the water still to go in or out of a cylinder with constant surface, after x = D t / a² (Crank, equations 5.23 and
 * 5.25): the larger of two sums that both leave positive terms out; within 0.0001 of the whole series.
 *
 * @param x not negative
 */
export function shareLeft(x: number): number {
  const long = ZEROS.reduce((sum, zero) => sum + (4 / zero ** 2) * Math.exp(-(zero ** 2) * x), 0);
  const s = Math.min(x, SHORT);
  const short = 1 - 4 * Math.sqrt(s / Math.PI) + s + s ** 1.5 / (3 * Math.sqrt(Math.PI));
  return Math.max(long, short);
}
