import { inv, lusolve, multiply, qr, transpose, type Matrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { generator } from '../../../test/support/calculators';
import { times } from '../../../test/support/sweep';
import { fitPlane, inOneLine, type Point } from './plane';

const point = (x: number, y: number, z: number, u = 0, u_x = 0, u_y = 0): Point => ({ line: 0, x, y, z, u, u_x, u_y });

/** Up to 25 random points of a bed of 0.3 m, heights of a tenth of a millimetre, each with a doubt of its own. */
function bed(random: () => number): Point[] {
  const n = 3 + Math.floor(random() * 23);
  return Array.from({ length: n }, () =>
    point(0.3 * random(), 0.3 * random(), 2e-4 * (random() - 0.5), 1e-5 * (0.2 + random())),
  );
}

const columns = (points: readonly Point[]): number[][] => points.map(({ x, y }) => [1, x, y]);
const slopes = ({ p, kappa, i_y }: ReturnType<typeof fitPlane>): [number, number] => [p + kappa * i_y, i_y];

describe('the plane against mathjs 15.2', () => {
  it('agrees with LU on the normal equations and with QR on the over-determined system to 1e-9', () => {
    const random = generator(41);
    let compared = 0;
    for (let i = 0; i < times(200, 30); i += 1) {
      const points = bed(random);
      if (inOneLine(points)) continue;
      const A = columns(points);
      const z = points.map((one) => one.z);
      const byLu = (lusolve(multiply(transpose(A), A), multiply(transpose(A), z)) as number[][]).map((row) => row[0]!);
      const { Q, R } = qr(A) as unknown as { Q: number[][]; R: number[][] };
      const byQr = (
        lusolve(R.slice(0, 3) as unknown as Matrix, multiply(transpose(Q), z).slice(0, 3)) as unknown as number[][]
      ).map((row) => row[0]!);
      const plane = fitPlane(points);
      const [a, b] = slopes(plane);
      const at = (x: number, y: number): number => plane.h + a * (x - plane.x_m) + b * (y - plane.y_m);
      // Relative to the largest height: coefficients near zero have no digits of their own.
      const size = Math.max(...z.map(Math.abs));
      for (const [c, a_0, b_0] of [byLu, byQr] as [number, number, number][]) {
        for (const [x, y] of [
          [0, 0],
          [0.3, 0],
          [0, 0.3],
          [0.3, 0.3],
        ] as const) {
          expect(Math.abs(at(x, y) - (c + a_0 * x + b_0 * y))).toBeLessThanOrEqual(1e-9 * size);
        }
      }
      points.forEach(({ x, y, z: read }, k) => {
        expect(Math.abs(plane.residuals[k]! - (read - at(x, y)))).toBeLessThanOrEqual(1e-9 * size);
      });
      compared += 1;
    }
    expect(compared).toBeGreaterThan(times(150, 20));
  });

  it('takes the coefficients’ covariance apart without losing any of it', () => {
    const random = generator(43);
    for (let i = 0; i < 50; i += 1) {
      const points = bed(random);
      if (inOneLine(points)) continue;
      const A = columns(points);
      // Least squares, all alike, of heights that are not equally certain: (AᵀA)⁻¹ Aᵀ diag(u²) A (AᵀA)⁻¹.
      const pseudo = multiply(inv(multiply(transpose(A), A)), transpose(A));
      const weighted = pseudo.map((row) => row.map((one, j) => one * points[j]!.u ** 2));
      const cov = multiply(weighted, transpose(pseudo));
      const { u_h, u_p, u_y, kappa, x_m, y_m } = fitPlane(points);
      for (const [x, y] of [
        [0, 0],
        [0.3, 0.1],
        [0.05, 0.28],
        [0.15, 0.15],
      ] as const) {
        const at = [1, x, y];
        const theirs = at.reduce(
          (sum, one, r) => sum + at.reduce((part, two, s) => part + one * two * cov[r]![s]!, 0),
          0,
        );
        // Uncorrelated: the squares simply add.
        const ours = u_h ** 2 + ((x - x_m) * u_p) ** 2 + ((y - y_m + kappa * (x - x_m)) * u_y) ** 2;
        expect(Math.abs(ours / theirs - 1)).toBeLessThan(1e-6);
      }
    }
  });
});

describe('the plane against NIST’s certified values', () => {
  // NIST Statistical Reference Datasets, linear regression, Pontius: y = B0 + B1 x + B2 x², that is a plane over x and x².
  // Data and certified values from memory; agreement to ten digits shows that they were remembered rightly.
  it('Pontius', () => {
    const first = [
      0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146, 1.20001, 1.30822,
      1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844,
    ];
    const second = [
      0.11052, 0.22018, 0.32939, 0.43886, 0.54798, 0.65739, 0.76596, 0.87474, 0.983, 1.0915, 1.20004, 1.30818, 1.41613,
      1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829,
    ];
    const points = [first, second].flatMap((run) =>
      run.map((y, i) => point(150_000 * (i + 1), (150_000 * (i + 1)) ** 2, y)),
    );
    const plane = fitPlane(points);
    const [b1, b2] = slopes(plane);
    const b0 = plane.h - b1 * plane.x_m - b2 * plane.y_m;
    expect(Math.abs(b0 / 0.673565789473684e-3 - 1)).toBeLessThan(1e-9);
    expect(Math.abs(b1 / 0.732059160401003e-6 - 1)).toBeLessThan(1e-9);
    expect(Math.abs(b2 / -0.316081871345029e-14 - 1)).toBeLessThan(1e-9);
    const s = Math.sqrt(plane.residuals.reduce((sum, e) => sum + e * e, 0) / (40 - 3));
    expect(Math.abs(s / 0.205177424076185e-3 - 1)).toBeLessThan(1e-9);
  });
});

describe('points that fix no plane', () => {
  const at = (...places: [number, number][]) => places.map(([x, y]) => ({ x, y }));

  it('lie in one line or in one place', () => {
    expect(inOneLine(at([0, 0], [1, 1], [2, 2]))).toBe(true);
    expect(inOneLine(at([0, 0.1], [0, 0.2], [0, 0.3], [0, 0.4]))).toBe(true);
    expect(inOneLine(at([0.1, 0], [0.2, 0], [0.3, 0]))).toBe(true);
    expect(inOneLine(at([0.1, 0.1], [0.1, 0.1], [0.1, 0.1]))).toBe(true);
    // Sideways by a tenth of a millimetre on 200.
    expect(inOneLine(at([0, 0], [0.1, 0.0001], [0.2, 0]))).toBe(true);
    expect(inOneLine(at([0, 0], [0.1, 0.001], [0.2, 0]))).toBe(false);
  });
});

describe('a place that is uncertain', () => {
  it('counts by the slope there', () => {
    const level = fitPlane([point(0, 0, 0, 1e-5, 1e-3, 1e-3), point(0.1, 0, 0), point(0, 0.1, 0)]);
    expect(level.us).toEqual([1e-5, 0, 0]);
    const steep = fitPlane([point(0, 0, 0, 3e-5, 1e-3, 0), point(0.1, 0, 4e-3), point(0, 0.1, 0)]);
    expect(steep.us[0]).toBeCloseTo(5e-5, 12);
  });
});
