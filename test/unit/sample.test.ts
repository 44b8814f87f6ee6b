import { describe, expect, it } from 'vitest';
import { propagate } from '../../src/formula/propagate';
import { GENERATOR } from '../../src/formula/sample';
import { buildSystem } from '../../src/formula/system';
import { times } from '../support/sweep';

const POINTS = 1021;

/** Component-by-component search for the lattice with the least P_2, weights 1/j: the sum of products of Bernoulli B_2. */
function search(dimensions: number): number[] {
  const omega = Float64Array.from({ length: POINTS }, (_, k) => {
    const x = k / POINTS;
    return 2 * Math.PI ** 2 * (x * x - x + 1 / 6);
  });
  const product = new Float64Array(POINTS).fill(1);
  const found: number[] = [];
  for (let j = 1; j <= dimensions; j += 1) {
    let [least, best] = [Infinity, 1];
    for (let candidate = 1; candidate < POINTS; candidate += 1) {
      if (found.includes(candidate) || found.includes(POINTS - candidate)) continue;
      let sum = 0;
      for (let k = 0; k < POINTS; k += 1) sum += product[k]! * (1 + omega[(k * candidate) % POINTS]! / j);
      if (sum < least - 1e-9) [least, best] = [sum, candidate];
    }
    found.push(best);
    for (let k = 0; k < POINTS; k += 1) product[k]! *= 1 + omega[(k * best) % POINTS]! / j;
  }
  return found;
}

describe('the lattice that is sampled on', () => {
  it('is what the search finds', () => {
    const dimensions = times(GENERATOR.length, 3);
    expect(GENERATOR.slice(0, dimensions)).toEqual(search(dimensions));
  });

  /*
   * Against closed forms: products of independent rectangular variables centred on 0 have the variance (a²/3)^n; the sum of
   * squares of n standard normals is chi-squared (mean n, variance 2n; NIST/SEMATECH handbook, tables 1.3.6.7.4, from
   * memory: 5 degrees, 2.5 % and 97.5 %: 0.831 and 12.833).
   */
  it.each([2, 3])('standard deviation of a product of %i inputs at 0', (n) => {
    const names = Array.from({ length: n }, (_, i) => `x_${i}`);
    const inputs = Object.fromEntries(names.map((name) => [name, { value: 0, u: 1, shape: 'rectangular' as const }]));
    const { y } = propagate(buildSystem([`y = ${names.join(' * ')}`], names), inputs);
    expect(y).toMatchObject({ ok: true, method: 'sampled' });
    if (y?.ok) expect(Math.abs(y.u - 1)).toBeLessThan(0.02);
  });

  it('chi-squared with five degrees of freedom', () => {
    const names = ['a', 'b', 'c', 'd', 'e'];
    const inputs = Object.fromEntries(names.map((name) => [name, { value: 0, u: 1, shape: 'normal' as const }]));
    const { y } = propagate(buildSystem([`y = ${names.map((name) => `${name} ^ 2`).join(' + ')}`], names), inputs);
    expect(y).toMatchObject({ ok: true, method: 'sampled' });
    if (!y?.ok) return;
    expect(Math.abs(y.u / Math.sqrt(10) - 1)).toBeLessThan(0.03);
    // What counts is the end's place against the half-width that is printed. Five normal inputs, each squared at its
    // zero, are harder than anything on a sheet: 0.3 % at the low end, 5.2 % at the high one.
    const halfWidth = (12.833 - 0.831) / 2;
    expect(Math.abs(y.low - 0.831) / halfWidth).toBeLessThan(0.01);
    expect(Math.abs(y.high - 12.833) / halfWidth).toBeLessThan(0.055);
  });
});
