import { cos, inv, matrix, mean, multiply, rotationMatrix, sin, variance, type Matrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { batchMeans, fromAttitude } from '../../src/signal/level';
import { levelOf, student } from '../../src/signal/level-reversal';
import { ar1, seeded } from '../support/level-support';
import { some } from '../support/sweep';

const DEG = Math.PI / 180;
const column = (m: Matrix) => m.valueOf() as unknown as number[];

describe('rotations, against mathjs’s rotation matrices', () => {
  // DeviceOrientation Event Specification: the phone's axes in the earth's are Rz(α)·Rx(β)·Ry(γ); up in the phone's axes is
  // the inverse of that on (0, 0, 1).
  it.each([
    [0, 1, 0],
    [123, -4, 7],
    [300, 9, -9],
    [45, 0.3, 0.2],
  ])('α %d°, β %d°, γ %d°: both tilts', (alpha, beta, gamma) => {
    const turned = multiply(
      multiply(rotationMatrix(alpha * DEG, matrix([0, 0, 1])), rotationMatrix(beta * DEG, matrix([1, 0, 0]))),
      rotationMatrix(gamma * DEG, matrix([0, 1, 0])),
    );
    const up = column(multiply(inv(turned), matrix([0, 0, 1])));
    const samples = Array.from({ length: 40 }, () => ({ alpha, beta, gamma }));
    expect(fromAttitude(samples)?.across.sine).toBeCloseTo(up[0]!, 12);
    expect(fromAttitude(samples)?.along.sine).toBeCloseTo(up[1]!, 12);
  });

  // A turn that misses half a turn by τ on a plane that leans by q across: the mean of the two falls short by
  // q·sin(τ)/2 + p·(1 − cos τ)/2. Worked with whole rotations by mathjs.
  it('a turn that misses half a turn brings in half its sine of the tilt across', () => {
    const [p, q, tau] = [0.004, 0.02, 3 * DEG];
    const up = matrix([q, p, Math.sqrt(1 - p * p - q * q)]);
    const seen = (turn: number) => column(multiply(inv(rotationMatrix(turn, matrix([0, 0, 1]))), up));
    const tilts = (turn: number) => {
      const [x, y] = seen(turn) as [number, number];
      return { along: { sine: y + 0.03, u: 0, steps: 0 }, across: { sine: x - 0.02, u: 0, steps: 0 } };
    };
    const level = levelOf([{ first: tilts(0), second: tilts(Math.PI + tau) }], { laying: 0, direction: 3 * DEG });
    const missed = Math.sin(Math.atan(level.slope)) - p;
    expect(missed).toBeCloseTo(-(q * sin(tau) + p * (1 - cos(tau))) / 2, 9);
    // Half of q·sin τ goes into the zero error, the other half into the tilt.
    expect(level.zero).toBeCloseTo(0.03 + (q * sin(tau) + p * (1 - cos(tau))) / 2, 9);
    // 3° is the 95 % limit of one laying's direction; a turn is the difference of two. Within the stated ±.
    expect(Math.abs(missed)).toBeLessThan(level.halfWidth);
  });
});

describe('batch means', () => {
  /*
   * Variance of the mean of a stationary first-order autoregressive series, in closed form (any textbook of time series,
   * e.g. Priestley, Spectral Analysis and Time Series, from memory): the sum of all autocovariances σ²ρ^|i−j| over n².
   * Summed here in full, not by the closed form's own shortcut.
   */
  const truth = (n: number, rho: number, sd: number) => {
    let total = n;
    for (let lag = 1; lag < n; lag += 1) total += 2 * (n - lag) * rho ** lag;
    return (sd ** 2 * total) / n ** 2;
  };
  it('the full sum is the closed form', () => {
    const [n, rho] = [400, 0.9];
    const closed = ((1 + rho) / (1 - rho) - (2 * rho * (1 - rho ** n)) / (n * (1 - rho) ** 2)) / n;
    expect(truth(n, rho, 1) / closed).toBeCloseTo(1, 10);
  });
  // Above one by design: likeness of batches is never taken below none, which adds 2·0.32/√(2π) = 0.25 where there is none
  // (standard deviation of a correlation of ten: 1/√10 = 0.32).
  it.each(
    some(
      [
        [0.5, 0.95, 1.35],
        [0, 0.95, 1.35],
        [0.9, 0.9, 1.35],
        [0.95, 0.8, 1.35],
      ] as const,
      4,
    ),
  )('of noise with ρ = %d: the mean stated variance is %d to %d of the true one', (rho, least, most) => {
    const random = seeded(Math.round(1000 * rho) + 1);
    const found = Array.from({ length: 1500 }, () => batchMeans(ar1(random, 400, rho, 0.03)));
    const stated = mean(found.map(({ variance: one }) => one));
    const ratio = stated / truth(400, rho, 0.03);
    expect(ratio).toBeGreaterThan(least);
    expect(ratio).toBeLessThan(most);
    // The series itself is what the closed form speaks of: its means scatter as it says (χ² with 1499: ± 7.3 %).
    const scatter = Number(variance(found.map(({ mean: one }) => one)));
    expect(scatter / truth(400, rho, 0.03)).toBeGreaterThan(0.9);
    expect(scatter / truth(400, rho, 0.03)).toBeLessThan(1.1);
  });
  it('the mean is mathjs’s mean', () => {
    const values = ar1(seeded(5), 400, 0.5, 1);
    expect(batchMeans(values).mean).toBeCloseTo(mean(values), 12);
  });
});

// Published tables of Student's t, 0.975 (JCGM 100, table G.2, 95 %): two decimals.
it.each([
  [3, 3.18],
  [4, 2.78],
  [5, 2.57],
  [8, 2.31],
  [10, 2.23],
  [20, 2.09],
  [50, 2.01],
])('Student’s t with %d degrees of freedom is %d', (nu, t) => {
  expect(Math.abs(student(nu) - t)).toBeLessThan(0.006);
});
