import { evaluate as mathjs, lusolve } from 'mathjs';
import { describe, expect, it } from 'vitest';
import calc from '../../src/calculators/wheel-preload/index';
import { evaluate } from '../../src/engine/evaluate';
import type { Known } from '../../src/formula/outcome';
import { situation } from '../support/calculators';

type Given = Readonly<Record<string, string>>;

function result(symbol: string, given: Given, choices: Given = {}): Known {
  const outcome = evaluate(calc, situation(calc, given, choices)).outcomes[symbol];
  if (!outcome?.ok) throw new Error(`${symbol} has no result`);
  return outcome;
}

/** A flat tread with no weight on it: each half carries half of F_slip/mu. */
function flat(load: number, radius: number, wheel: readonly [E: number, nu: number], rail: readonly [number, number]) {
  return {
    F_slip: `${2 * load * 0.2} N ± 0`,
    mu: '0.2 ± 0',
    beta: '90 deg ± 0',
    d: '0 mm ± 0',
    r_w: `${radius} mm ± 0`,
    E_w: `${wheel[0]} GPa ± 0`,
    nu_w: `${wheel[1]} ± 0`,
    E_r: `${rail[0]} GPa ± 0`,
    nu_r: `${rail[1]} ± 0`,
  };
}

const POM = [2.8, 0.35] as const;
const ALUMINIUM = [70, 0.33] as const;
const STEEL = [206, 0.3] as const;

describe('contact pressure', () => {
  // J. Carvill, Mechanical Engineer's Data Handbook (1993), p. 52: two rollers, full width
  // w = sqrt(16 F ((1 − ν1²)/E1 + (1 − ν2²)/E2) / (π L (1/r1 + 1/r2))), stress 4 F/(π w L). mathjs carries the units.
  it.each([
    [20, 12, 5, POM],
    [3, 10.5, 1.5, POM],
    [60, 30, 8, [0.06, 0.48]],
  ] as const)('of a roller as in Carvill: %f N, radius %f mm, length %f mm', (load, radius, l, wheel) => {
    const given = { ...flat(load, radius, wheel, ALUMINIUM), l_f: `${l} mm ± 0` };
    const soft = `((1 - ${wheel[1]}^2) / (${wheel[0]} GPa) + (1 - 0.33^2) / (70 GPa))`;
    const width = `sqrt(16 * ${load} N * ${soft} * ${radius} mm / (pi * ${l} mm))`;
    expect(2e3 * result('b', given).value).toBeCloseTo(mathjs(`number(${width}, mm)`) as number, 9);
    const stress = mathjs(`number(4 * ${load} N / (pi * ${width} * ${l} mm), MPa)`) as number;
    expect(result('p_0', given).value / 1e6 / stress).toBeCloseTo(1, 9);
  });

  /*
   * Elastic half-plane, Johnson ch. 2 (from memory): under pressure p(x) the slope of the surface is
   * (2/πE*) ∫ p(s)/(x − s) ds (principal value); for a roller it must be x/R over the whole width, and ∫p dx the load.
   * Checked with Chebyshev quadrature of the second kind at its own collocation points, exact for this kernel.
   */
  it('of a roller leaves the surface curved as the roller is, and carries the load', () => {
    const [load, R, l] = [20, 0.012, 0.005];
    const given = { ...flat(load, R * 1e3, POM, ALUMINIUM), l_f: `${l * 1e3} mm ± 0` };
    const [b, p0, E] = ['b', 'p_0', 'E_s'].map((name) => result(name, given).value) as [number, number, number];
    const n = 40;
    const nodes = Array.from({ length: n }, (_, i) => ((i + 1) * Math.PI) / (n + 1));
    const carried = nodes.reduce((sum, t) => sum + (Math.PI / (n + 1)) * Math.sin(t) ** 2 * p0 * b, 0);
    expect(carried * l).toBeCloseTo(load, 9);
    for (const k of [0, 7, 20, 40]) {
      const x = Math.cos(((k + 0.5) * Math.PI) / (n + 1));
      const principal = nodes.reduce(
        (sum, t) => sum + ((Math.PI / (n + 1)) * Math.sin(t) ** 2 * p0) / (x - Math.cos(t)),
        0,
      );
      expect((2 / (Math.PI * E)) * principal).toBeCloseTo((x * b) / R, 9);
    }
  });

  // Hertz's classic case, ball of 5 mm on a flat, steel, 100 N; the constants worked with Debian's scipy 1.10 from
  // Johnson's equations (4.22) to (4.24) (from memory): a 0.1491 mm, p0 2148 MPa, E* 113.19 GPa.
  it('of a steel ball on steel', () => {
    const given = { ...flat(100, 5, STEEL, STEEL), r_e: '5 mm ± 0' };
    expect(result('E_s', given).value / 1e9).toBeCloseTo(113.19, 2);
    expect(result('a_c', given, { contact: 'edge' }).value * 1e3).toBeCloseTo(0.1491, 4);
    expect(Math.abs(result('p_0', given, { contact: 'edge' }).value / 1e6 - 2148)).toBeLessThan(0.5);
  });

  /*
   * Timoshenko & Goodier, Theory of Elasticity, art. 142, table of m and n against θ (from memory; three decimals),
   * cos θ = (B − A)/(B + A); a = m K, b = n K with K = (3P/(4E*(A + B)))^(1/3), p0 = 3P/(2πab). Exact up to the printed
   * digits, whereas ours is Greenwood's closed form: he leaves a fraction of a percent at these ratios.
   */
  it.each([
    [90, 1, 1, 0.0005],
    [80, 1.128, 0.893, 0.001],
    [70, 1.284, 0.802, 0.001],
    [60, 1.486, 0.717, 0.001],
    [50, 1.754, 0.641, 0.0025],
    [45, 1.926, 0.604, 0.003],
    [40, 2.136, 0.567, 0.005],
    [30, 2.731, 0.493, 0.01],
  ])('of crossed cylinders as in Timoshenko’s table at θ = %f°', (theta, m, n, tolerance) => {
    const cos = Math.cos((theta * Math.PI) / 180);
    const [long, P] = [0.012, 20];
    const A = 1 / (2 * long);
    const B = (A * (1 + cos)) / (1 - cos);
    const given = { ...flat(P, 12, POM, ALUMINIUM), r_e: `${1e3 / (2 * B)} mm ± 0` };
    const K = Math.cbrt((3 * P) / (4 * result('E_s', given).value * (A + B)));
    const wanted = (3 * P) / (2 * Math.PI * m * n * K * K);
    // Three printed decimals of m and n leave 0.1 %.
    const found = result('p_0', given, { contact: 'edge' }).value;
    expect(Math.abs(found / wanted - 1)).toBeLessThan(tolerance + 0.001);
  });

  // Complete elliptic integrals by the arithmetic-geometric mean; first held against Abramowitz & Stegun, table 17.1.
  function elliptic(m: number): { K: number; E: number } {
    let [a, g, c, power, sum] = [1, Math.sqrt(1 - m), Math.sqrt(m), 0.5, m / 2];
    while (Math.abs(c) > 1e-16) {
      [a, g, c] = [(a + g) / 2, Math.sqrt(a * g), (a - g) / 2];
      power *= 2;
      sum += power * c * c;
    }
    const K = Math.PI / (2 * a);
    return { K, E: K * (1 - sum) };
  }

  it('the elliptic integrals are those of the table', () => {
    expect(elliptic(0.5).K).toBeCloseTo(1.854074677301372, 12);
    expect(elliptic(0.5).E).toBeCloseTo(1.350643881047676, 12);
  });

  // What the citation says of the closed form: low, by no more than 2.3 % at a ratio of 30. Exact: Johnson (4.26).
  it.each([
    [5, 0.003],
    [10, 0.008],
    [30, 0.023],
    [100, 0.05],
  ])('of an edge, radii %f to 1, is low by less than %f', (proportion, most) => {
    const [P, long] = [20, 0.015];
    const given = { ...flat(P, 15, POM, ALUMINIUM), r_e: `${15 / proportion} mm ± 0` };
    const ratioOf = (k: number): number => {
      const { K, E } = elliptic(1 - k * k);
      return (E / k ** 2 - K) / (K - E);
    };
    let [low, high] = [1e-4, 0.9999];
    for (let i = 0; i < 200; i += 1) {
      const middle = (low + high) / 2;
      if (ratioOf(middle) > proportion) low = middle;
      else high = middle;
    }
    const k = (low + high) / 2;
    const sum = (1 + proportion) / (2 * long);
    const b = Math.cbrt((3 * P * elliptic(1 - k * k).E * k) / (2 * Math.PI * result('E_s', given).value * sum));
    const exact = (3 * P * k) / (2 * Math.PI * b * b);
    const off = result('p_0', given, { contact: 'edge' }).value / exact - 1;
    expect(off).toBeLessThan(0);
    expect(off).toBeGreaterThan(-most);
  });

  // The two ways to write the upper limit are one: at the most preload the pressure is the allowable.
  it.each(['line', 'edge'])('is the allowable one at the most preload: %s', (contact) => {
    const given = { d: '10 mm ± 0', r_e: '8 mm', mu: '0.25 ± 0', beta: '45 deg ± 0' };
    const most = result('N_max', { ...given, F_slip: '1 N' }, { contact }).value;
    const slip = (most / Math.SQRT1_2) * 0.25;
    const p = result('p_0', { ...given, F_slip: `${slip} N` }, { contact }).value;
    expect(p / 35e6).toBeCloseTo(1, 9);
  });
});

// V-belt handbooks (Machinery's Handbook, from memory): a V grips as if the friction were mu/sin(half angle).
// Here mathjs solves the balance of the two flanks across and along the axle.
it.each([30, 45, 60, 75])('a V of half angle %f° slips at the sum of its flanks’ friction', (beta) => {
  const [sin, cos] = [mathjs(`sin(${beta} deg)`) as number, mathjs(`cos(${beta} deg)`) as number];
  const [N, mu] = [17, 0.25];
  const [left, right] = lusolve(
    [
      [sin, sin],
      [cos, -cos],
    ],
    [N, 0],
  ).flat() as [number, number];
  const given = { F_slip: `${mu * (left + right)} N`, mu: `${mu}`, beta: `${beta} deg`, d: '0 mm' };
  expect(result('N', given).value).toBeCloseTo(N, 9);
  expect(result('Q', given).value).toBeCloseTo(left, 9);
});

describe('the bush', () => {
  // Published trigonometry: versed sines of 30°, 45°, 60°, 90°, 120° to seven places (any five-figure table or better).
  it.each([
    [30, 0.1339746],
    [45, 0.2928932],
    [60, 0.5],
    [90, 1],
    [120, 1.5],
    [180, 2],
  ])('from fully retracted to %f° closes e times the versed sine', (angle, versine) => {
    const given = { e: '0.8 mm', theta_0: '0 deg', theta: `${angle} deg` };
    expect(result('u', given).value * 1e3).toBeCloseTo(0.8 * versine, 7);
    expect(result('x', { e: '0.8 mm', theta_0: `${angle} deg` }).value * 1e3).toBeCloseTo(0.8 * versine, 7);
  });

  // The wheel's centre carried round by a complex rotation in mathjs.
  it('closes what a rotated point rises', () => {
    const given = { e: '1.1 mm', theta_0: '52 deg', theta: '131 deg' };
    const rise = mathjs('1.1 * (re(exp(i * 52 deg / rad)) - re(exp(i * 131 deg / rad)))') as number;
    expect(result('u', given).value * 1e3).toBeCloseTo(rise, 9);
  });

  it('gains most at 90°, as a difference of neighbouring angles shows', () => {
    const gain = (at: number): number =>
      result('u', { theta_0: `${at - 0.5} deg ± 0`, theta: `${at + 0.5} deg ± 0` }).value;
    const best = [30, 60, 85, 90, 95, 120, 150].reduce((a, b) => (gain(b) > gain(a) ? b : a));
    expect(best).toBe(90);
    // A chord of one degree against the derivative: sin(0.5°)/0.5° falls short by 1.3e-5.
    expect(gain(60) / result('u_1', { theta_0: '60 deg' }).value).toBeCloseTo(1, 4);
  });

  it('turned by the angle worked out closes the gap still to close', () => {
    const given = { F_slip: '1 N', theta_0: '70 deg' };
    const to = (result('theta_n', given).value * 180) / Math.PI;
    const u = result('u', { ...given, theta: `${to} deg` }).value;
    expect(u / result('du', given).value).toBeCloseTo(1, 9);
  });

  /*
   * At a dead centre the first derivative is zero, but the gap is not exact. By hand: an angle uniform in ±w has
   * variance of θ²/2 of w⁴/45, so two of them give u = e w² sqrt(2/45), and e's own share is nil.
   */
  it.each([0, 180])('at %f° is never ±0', (at) => {
    const given = { e: '0.8 mm ± 0', theta_0: `${at} deg ± 2 deg`, theta: `${at} deg ± 2 deg` };
    const gap = result('u', given);
    const w = (2 * Math.PI) / 180;
    expect(gap.value).toBeCloseTo(0, 12);
    expect(gap.u / (0.8e-3 * w * w * Math.sqrt(2 / 45))).toBeGreaterThan(0.95);
    expect(gap.u / (0.8e-3 * w * w * Math.sqrt(2 / 45))).toBeLessThan(1.05);
    expect(gap.high - gap.low).toBeGreaterThan(gap.u);
    expect(result('x', given).u).toBeGreaterThan(0);
  });

  it('at 90° does not pretend an exact share of the best gain', () => {
    expect(result('q', { theta_0: '90 deg ± 5 deg' }).u).toBeGreaterThan(0);
  });
});

// Statics with mathjs units; references: loss of contact when the preload of a line falls below moment/wheelbase.
it('the least preload is the moment over the wheelbase, with its margin', () => {
  const given = {
    M: '0.7 kg',
    d: '55 mm',
    h: '25 mm',
    a: '3000 mm/s²',
    s: '48 mm',
    n_w: '2',
    k: '1.4',
    N_0: '0 N',
    R: '300 mm',
  };
  const moment = '(0.7 kg * (9.80665 m/s^2 * 55 mm + 3000 mm/s^2 * 25 mm))';
  const read = (expression: string, unit: string) => mathjs(`number(${expression}, ${unit})`) as number;
  expect(result('M_o', given).value).toBeCloseTo(read(moment, 'N m'), 12);
  expect(result('F_o', given).value).toBeCloseTo(read(`${moment} / (48 mm)`, 'N'), 10);
  expect(result('N_min', given).value).toBeCloseTo(read(`1.4 * ${moment} / (48 mm) / 2`, 'N'), 10);
  expect(result('N_min', { ...given, N_0: '2 N' }).value - result('N_min', given).value).toBeCloseTo(2, 12);
  expect(result('y', { ...given, j: '0.04 mm' }).value * 1e3).toBeCloseTo(0.25, 12);
});
