import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { settable } from '../../src/engine/settable';

describe('an amount that a hand can set', () => {
  it.each([
    [82.2857, 5, 'down', 80],
    [82.2857, 5, 'up', 85],
    [82.2857, 5, 'nearest', 80],
    [-82.2857, 5, 'down', -80],
    [-82.2857, 5, 'up', -85],
    [0.3, 0.1, 'up', 0.3],
    [0.30000000000000004, 0.1, 'up', 0.3],
    [0.6, 0.25, 'down', 0.5],
    [0, 0.25, 'up', 0],
  ] as const)('%f in steps of %f, %s, is %f', (wanted, step, to, given) => {
    expect(settable(wanted, step, to)).toBe(given);
  });

  it('is a whole number of steps, less than one away, on the side asked for', () => {
    const step = fc.constantFrom(0.05, 0.1, 0.25, 0.5, 1, 5, Math.PI / 36);
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), step, (wanted, by) => {
        for (const to of ['up', 'down', 'nearest'] as const) {
          const given = settable(wanted, by, to);
          expect(Math.abs(given / by - Math.round(given / by))).toBeLessThan(1e-6);
          expect(Math.abs(given - wanted)).toBeLessThan((to === 'nearest' ? 0.5 : 1) * by + 1e-6);
          const slack = 1e-6 * by * Math.max(1, Math.abs(wanted / by));
          if (to === 'up') expect(Math.abs(given)).toBeGreaterThanOrEqual(Math.abs(wanted) - slack);
          if (to === 'down') expect(Math.abs(given)).toBeLessThanOrEqual(Math.abs(wanted) + slack);
        }
      }),
    );
  });
});
