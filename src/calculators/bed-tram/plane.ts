/** A point of the bed, SI, with the standard uncertainty of its height and of its place. */
export interface Point {
  /** Its line in the table. */
  readonly line: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly u: number;
  readonly u_x: number;
  readonly u_y: number;
}

/**
 * A fitted plane z = h + p (x − x_m) + i_y (y − y_m + κ (x − x_m)), with the centre and κ so chosen that h, p and i_y are
 * uncorrelated; the slope along x alone is p + κ i_y.
 */
export interface Plane {
  readonly h: number;
  readonly p: number;
  readonly i_y: number;
  readonly kappa: number;
  readonly x_m: number;
  readonly y_m: number;
  readonly u_h: number;
  readonly u_p: number;
  readonly u_y: number;
  /** What of each point the plane leaves, in the points' order. */
  readonly residuals: readonly number[];
  /** How residual i follows height j: the identity less the projection onto planes. */
  readonly leaves: readonly (readonly number[])[];
  /** Standard uncertainty of each height, its place's counted in by the slope. */
  readonly us: readonly number[];
}

const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
const dot = (a: readonly number[], b: readonly number[]): number => sum(a.map((one, i) => one * (b[i] ?? 0)));

/** Across one line no narrower than this share of along it: else the points are as good as in one line. */
const NARROWEST = 1e-3;

/** True where the points fix no plane: all in one place or in one line. */
export function inOneLine(points: readonly Pick<Point, 'x' | 'y'>[]): boolean {
  const n = points.length;
  const [x_c, y_c] = [sum(points.map(({ x }) => x)) / n, sum(points.map(({ y }) => y)) / n];
  const xs = points.map(({ x }) => x - x_c);
  const ys = points.map(({ y }) => y - y_c);
  const [xx, yy, xy] = [dot(xs, xs), dot(ys, ys), dot(xs, ys)];
  const both = xx + yy;
  return !(xx * yy - xy * xy > (NARROWEST * both) ** 2);
}

/**
 * Plane of least squares, all points alike, by Gram and Schmidt's orthogonal basis over 1, x, y (Golub and Van Loan, Matrix
 * Computations, section 5.2, from memory); then the basis is turned so that the coefficients stay uncorrelated where the
 * heights are not equally certain. A place that is uncertain counts by the slope there.
 *
 * @param points at least three, not in one line, SI
 */
export function fitPlane(points: readonly Point[]): Plane {
  const n = points.length;
  const x_c = sum(points.map(({ x }) => x)) / n;
  const y_c = sum(points.map(({ y }) => y)) / n;
  const zs = points.map(({ z }) => z);
  const xi = points.map(({ x }) => x - x_c);
  const level = points.map(({ y }) => y - y_c);
  const lambda = dot(xi, level) / dot(xi, xi);
  const eta = level.map((one, i) => one - lambda * (xi[i] ?? 0));
  // Each coefficient as a sum over the heights.
  const ofHeight = points.map(() => 1 / n);
  const ofP = xi.map((one) => one / dot(xi, xi));
  const ofY = eta.map((one) => one / dot(eta, eta));
  const mean = dot(ofHeight, zs);
  const rest = zs.map((z) => z - mean);
  const p = dot(ofP, rest);
  const i_y = dot(
    ofY,
    rest.map((z, i) => z - p * (xi[i] ?? 0)),
  );
  const i_x = p - lambda * i_y;
  const us = points.map(({ u, u_x, u_y }) => Math.hypot(u, i_x * u_x, i_y * u_y));

  // Covariance of (i_y, p, h) = L D Lᵀ: by L the coefficients part from one another.
  const cov = (a: readonly number[], b: readonly number[]): number =>
    sum(us.map((u, j) => u * u * (a[j] ?? 0) * (b[j] ?? 0)));
  const share = (part: number, of: number): number => (of > 0 ? part / of : 0);
  const d_y = cov(ofY, ofY);
  const l_py = share(cov(ofP, ofY), d_y);
  const d_p = Math.max(cov(ofP, ofP) - l_py ** 2 * d_y, 0);
  const l_hy = share(cov(ofHeight, ofY), d_y);
  const l_hp = share(cov(ofHeight, ofP) - l_hy * l_py * d_y, d_p);
  const d_h = Math.max(cov(ofHeight, ofHeight) - l_hy ** 2 * d_y - l_hp ** 2 * d_p, 0);
  const kappa = l_py - lambda;
  const apart = p - l_py * i_y;

  const leaves = points.map((_, i) =>
    points.map((__, j) => (i === j ? 1 : 0) - 1 / n - (xi[i] ?? 0) * (ofP[j] ?? 0) - (eta[i] ?? 0) * (ofY[j] ?? 0)),
  );
  return {
    h: mean - l_hy * i_y - l_hp * apart,
    p: apart,
    i_y,
    kappa,
    x_m: x_c - l_hp,
    y_m: y_c - l_hy + kappa * l_hp,
    u_h: Math.sqrt(d_h),
    u_p: Math.sqrt(d_p),
    u_y: Math.sqrt(d_y),
    residuals: rest.map((z, i) => z - p * (xi[i] ?? 0) - i_y * (eta[i] ?? 0)),
    leaves,
    us,
  };
}

/** Height of a plane over a place. */
export function heightOn({ h, p, i_y, kappa, x_m, y_m }: Plane, x: number, y: number): number {
  return h + (p + kappa * i_y) * (x - x_m) + i_y * (y - y_m);
}

/** Standard uncertainty of a sum over the heights. */
export function spreadOf(weights: readonly number[], us: readonly number[]): number {
  return Math.hypot(...weights.map((one, j) => one * (us[j] ?? 0)));
}
