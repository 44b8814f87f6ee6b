/** Rounding of a quotient that a float missed by a hair. */
const HAIR = 1e-9;

/**
 * An amount rounded to what a hand or a tool can set.
 * @param si the amount wanted, any unit
 * @param step least change that can be set, in the same unit, above zero
 * @param to `up` and `down` by size: away from zero, and towards it
 */
export function settable(si: number, step: number, to: 'up' | 'down' | 'nearest'): number {
  const steps = Math.abs(si) / step;
  const near = Math.round(steps);
  const isWhole = Math.abs(steps - near) < HAIR * Math.max(1, steps);
  const whole = isWhole || to === 'nearest' ? near : to === 'up' ? Math.ceil(steps) : Math.floor(steps);
  // A step such as 0.1 has no exact double: the product is brought back to the nearest short number.
  return Math.sign(si) * Number((whole * step).toPrecision(12));
}

/**
 * The first amount that passes, from `from` on towards `to`, in steps that can be set; undefined where none is met. It looks ever farther
 * apart, a dozen times at most, so the amount may be larger than need be, never too small.
 */
export function firstThat(passes: (si: number) => boolean, from: number, to: number, step: number): number | undefined {
  const all = Math.abs(to - from) / step;
  const way = Math.sign(to - from) * step;
  for (let n = 0; ; n = n === 0 ? 1 : n * 2) {
    const si = n >= all ? to : Number((from + n * way).toPrecision(12));
    if (passes(si)) return si;
    if (n >= all) return undefined;
  }
}
