import { divide, intersect, inv, lusolve, mean, multiply, std, subtract, transpose } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

type Point = readonly [x: number, y: number, z: number];

const given = (points: readonly Point[]): Record<string, string> =>
  Object.fromEntries(
    points.flatMap(([x, y, z], i) => [
      [`x_${i + 1}`, `${x} ± 0`],
      [`y_${i + 1}`, `${y} ± 0`],
      [`z_${i + 1}`, `${z} ± 0`],
    ]),
  );

/** Coefficients of 1 and the columns by mathjs's LU solver on the normal equations. */
function normal(columns: readonly (readonly number[])[], z: readonly number[]): number[] {
  const A = transpose([z.map(() => 1), ...columns.map((one) => [...one])]);
  const solved = lusolve(multiply(transpose(A), A), multiply(transpose(A), [...z]));
  return (solved as number[][]).map((row) => row[0] ?? NaN);
}

class Fit {
  readonly x: number[];
  readonly y: number[];
  readonly z: number[];
  /** Of the plane in mm: height at the corner, slopes along x and y. */
  readonly c: number;
  readonly a: number;
  readonly b: number;

  constructor(points: readonly Point[]) {
    this.x = points.map((point) => point[0]);
    this.y = points.map((point) => point[1]);
    this.z = points.map((point) => point[2]);
    const [c = NaN, a = NaN, b = NaN] = normal([this.x, this.y], this.z);
    [this.c, this.a, this.b] = [c, a, b];
  }

  /** Height of the plane over a place: mathjs's intersection of an upright line with the plane. */
  at(x: number, y: number): number {
    const hit = intersect([x, y, -1], [x, y, 1], [-this.a, -this.b, 1, this.c] as never) as number[];
    return hit[2] ?? NaN;
  }

  /** Residuals by the projection A (AᵀA)⁻¹ Aᵀ. */
  residuals(): number[] {
    const A = transpose([this.x.map(() => 1), this.x, this.y]);
    const hat = multiply(multiply(A, inv(multiply(transpose(A), A))), transpose(A));
    return subtract(this.z, multiply(hat, this.z));
  }
}

const FIVE: readonly Point[] = [
  [20, 20, 0.1],
  [180, 20, -0.05],
  [180, 180, 0.02],
  [20, 180, 0.15],
  [100, 100, 0.06],
];
/** Unevenly spread, so that x and y go along with each other. */
const SEVEN: readonly Point[] = [
  [12, 31, 0.21],
  [205, 18, -0.04],
  [198, 190, 0.13],
  [70, 160, 0.35],
  [110, 90, 0.12],
  [33, 77, 0.26],
  [160, 205, 0.22],
];
const five = new Fit(FIVE);
const seven = new Fit(SEVEN);

const degrees = (low: number, target: number, pitch: number): number => ((target - low) / pitch) * 360;
const sides = { W: '200 ± 0', D: '210 ± 0', b_a: '30 ± 0', P_s: '0.7', d_b: '20 ± 0' } as const;
const e = (): number[] => seven.residuals();
const heights = (...places: readonly (readonly [number, number])[]): number[] => places.map(([x, y]) => seven.at(x, y));
const CORNERS = [
  [30, 30],
  [170, 30],
  [170, 180],
  [30, 180],
] as const;
const FRONT = [
  [30, 30],
  [170, 30],
  [100, 180],
] as const;
const BACK = [
  [30, 180],
  [170, 180],
  [100, 30],
] as const;
const TYPED = [
  [-15, 4],
  [240, 12],
  [118, 236],
  [20, 199],
] as const;
const typedPlaces = (n: number): Record<string, string> =>
  Object.fromEntries(
    TYPED.slice(0, n).flatMap(([x, y], i) => {
      const letter = 'abcd'.charAt(i);
      return [
        [`X_${letter}`, `${x} ± 0`],
        [`Y_${letter}`, `${y} ± 0`],
      ];
    }),
  );

type Places = readonly (readonly [number, number])[];

/** Heights and turns at these adjusters, all brought to the mean of them. */
function atAdjusters(places: Places): OutsideProof['expect'] {
  const each = places.flatMap(([x, y], i) => [
    [`X_${i + 1}`, [x, 1e-9]],
    [`Y_${i + 1}`, [y, 1e-9]],
    [`H_${i + 1}`, [() => seven.at(x, y), 1e-9]],
    [`psi_${i + 1}`, [() => degrees(seven.at(x, y), mean(heights(...places)), 0.7), 1e-6]],
  ]) as (readonly [string, readonly [number | (() => number), number]])[];
  return {
    ...Object.fromEntries(each),
    H_0: [() => mean(heights(...places)), 1e-9],
    dh_m: [() => mean(heights(...places)) - seven.at(100, 105), 1e-9],
  };
}

/** Plane and x y through the readings of four columns, by LU on the normal equations: height over a place. */
const four = normal([seven.x, seven.y, seven.x.map((x, i) => (x - 100) * ((seven.y[i] ?? NaN) - 105))], seven.z);
const warped = (x: number, y: number): number => {
  const [c = NaN, a = NaN, b = NaN, t = NaN] = four;
  return c + a * x + b * y + t * (x - 100) * (y - 105);
};
/** The twist at the front left adjuster, 70 and 75 mm from the middle. */
const twist = (): number => (four[3] ?? NaN) * 70 * 75;
const leftOfTwist = (): number[] => seven.z.map((z, i) => z - warped(seven.x[i] ?? NaN, seven.y[i] ?? NaN));
const share = (x: number, y: number) => (): number => (warped(x, y) - seven.at(x, y)) / twist();
/** Saint-Venant's torsion of a strip of 150 mm breadth and 2 mm, twisted 1 mm at each corner over 140 mm: N. */
const torsion = (): number => {
  const G = 70e9 / (2 * (1 + 0.3));
  return (G * ((0.15 * 0.002 ** 3) / 3) * ((4 * 0.001) / 0.15)) / 0.14 / 0.15;
};
const LIBRARY = 'mathjs 15.2: least squares by LU on the normal equations, upright lines met with that plane';

const checks: readonly OutsideProof[] = [
  {
    source: 'mathjs 15.2, LU on the normal equations of five points; a −0.875, b 0.375 mm/m by hand as well',
    given: { ...given(FIVE), W: '160 ± 0', D: '160 ± 0' },
    choices: { by: 'height' },
    expect: {
      i_x: [() => 1000 * five.a, 1e-9],
      i_y: [() => 1000 * five.b, 1e-9],
      h_m: [() => mean(five.z), 1e-9],
      t_x: [() => five.at(180, 100) - five.at(20, 100), 1e-9],
      t_y: [() => five.at(100, 180) - five.at(100, 20), 1e-9],
      t_p: [() => five.at(180, 180) - five.at(20, 20), 1e-9],
      t_q: [() => five.at(180, 20) - five.at(20, 180), 1e-9],
      F: [0.01, 1e-9],
    },
  },
  {
    source: 'mathjs 15.2: regressions of z and of y on x alone (LU), residuals by the projection matrix (inv), std',
    // A plate too stiff to twist: nothing but the plane.
    given: { ...given(SEVEN), d_b: '20 ± 0' },
    choices: { by: 'height' },
    expect: {
      i_x: [() => 1000 * seven.a, 1e-9],
      i_y: [() => 1000 * seven.b, 1e-9],
      i_p: [() => 1000 * (normal([seven.x], seven.z)[1] ?? NaN), 1e-9],
      kappa: [() => -(normal([seven.x], seven.y)[1] ?? NaN), 1e-9],
      x_m: [() => mean(seven.x), 1e-9],
      y_m: [() => mean(seven.y), 1e-9],
      h_m: [() => seven.at(mean(seven.x), mean(seven.y)), 1e-9],
      F: [() => Math.max(...e()) - Math.min(...e()), 1e-9],
      e_h: [() => Math.max(...e()), 1e-9],
      e_l: [() => Math.min(...e()), 1e-9],
      e_r: [() => std(e(), 'uncorrected') as unknown as number, 1e-9],
      k_h: [() => e().indexOf(Math.max(...e())) + 1, 0],
      k_l: [() => e().indexOf(Math.min(...e())) + 1, 0],
      F_r: [() => Math.max(...e()) - Math.min(...e()), 1e-9],
    },
  },
  {
    source: `${LIBRARY}; four corners, mean kept`,
    given: { ...given(SEVEN), ...sides },
    choices: { by: 'height', layout: 'corners', keep_4: 'all' },
    expect: {
      ...atAdjusters(CORNERS),
      // The mean of a rectangle's corners is the plane over its middle.
      dh_m: [0, 1e-9],
      w_1: [divide(1, 4), 0],
      w_2: [divide(1, 4), 0],
      w_3: [divide(1, 4), 0],
      w_4: [divide(1, 4), 0],
    },
  },
  {
    source: `${LIBRARY}; two in front, one behind`,
    given: { ...given(SEVEN), ...sides },
    choices: { by: 'height', layout: 'front' },
    expect: atAdjusters(FRONT),
  },
  {
    source: `${LIBRARY}; one in front, two behind`,
    given: { ...given(SEVEN), ...sides },
    choices: { by: 'height', layout: 'back' },
    expect: atAdjusters(BACK),
  },
  {
    source: `${LIBRARY}; three places typed`,
    given: { ...given(SEVEN), ...sides, ...typedPlaces(3) },
    choices: { by: 'height', layout: 'three' },
    expect: atAdjusters(TYPED.slice(0, 3)),
  },
  {
    source: `${LIBRARY}; four places typed`,
    given: { ...given(SEVEN), ...sides, ...typedPlaces(4) },
    choices: { by: 'height', layout: 'four', keep_4: 'all' },
    expect: atAdjusters(TYPED),
  },
  {
    source:
      'Common practice, no source: a quarter of the first layer for tilt, half for warp; of 0.2 mm 0.05 and 0.1 mm',
    given: { ...given(FIVE), h_1: '0.2' },
    expect: { t_lim: [0.05, 1e-9], F_lim: [0.1, 1e-9] },
  },
  {
    source: `${LIBRARY}; a thin plate on four springs: plane and x y by four columns`,
    given: { ...given(SEVEN), ...sides, d_b: '1 ± 0' },
    choices: { by: 'height', layout: 'corners', keep_4: 'all' },
    expect: {
      tau: [twist, 1e-9],
      v_0: [share(100, 105), 1e-6],
      v_1: [share(30, 30), 1e-6],
      v_2: [share(170, 30), 1e-6],
      v_3: [share(170, 180), 1e-6],
      v_4: [share(30, 180), 1e-6],
      a_x: [140, 1e-9],
      a_y: [150, 1e-9],
      F_r: [() => Math.max(...leftOfTwist()) - Math.min(...leftOfTwist()), 1e-9],
      H_1: [() => warped(30, 30), 1e-9],
      H_3: [() => warped(170, 180), 1e-9],
      psi_2: [() => degrees(warped(170, 30), mean(...CORNERS.map(([x, y]) => warped(x, y))), 0.7), 1e-6],
      dh_m: [() => mean(...CORNERS.map(([x, y]) => warped(x, y))) - warped(100, 105), 1e-9],
    },
  },
  {
    source:
      'Saint-Venant’s torsion of a thin strip, b t³ / 3 (Timoshenko and Goodier, Theory of Elasticity, from memory)',
    given: {
      ...given([
        [30, 30, 0.1],
        [170, 30, -0.1],
        [170, 180, 0.1],
        [30, 180, -0.1],
      ]),
      ...sides,
      d_b: '2 ± 0',
      E_b: '70 ± 0',
      nu_b: '0.3',
      k_s: '5 ± 0',
      y_s: '4 ± 0',
    },
    choices: { by: 'height' },
    expect: {
      // D (1 − ν) for ν = 0.3, and E t³ / 12 / (1 − ν²) by hand: 70e9 · 8e-9 / 12 / 0.91.
      D_b: [51.282051, 1e-6],
      K_b: [torsion, 1e-9],
      F_b: [() => 0.1 * torsion(), 1e-9],
      F_k: [20, 1e-9],
    },
  },
];
export default checks;
