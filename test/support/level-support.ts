/** A generator with a seed (mulberry32, public domain), so that every run draws the same. */
export function seeded(seed: number) {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (sd = 1): number => sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal, between: (low: number, high: number) => low + (high - low) * uniform() };
}
export type Random = ReturnType<typeof seeded>;

/** First-order autoregressive noise of standard deviation `sd`, started in its stationary state. */
export function ar1(random: Random, n: number, rho: number, sd: number): number[] {
  let x = random.normal(sd);
  return Array.from({ length: n }, () => {
    x = rho * x + random.normal(sd * Math.sqrt(1 - rho * rho));
    return x;
  });
}

export type Vector = readonly [number, number, number];
type Matrix = readonly [Vector, Vector, Vector];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const apply = (m: Matrix, v: Vector): Vector => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];
/** Rotation of coordinates about z: what a frame turned anticlockwise by `angle` sees. */
export const about = (angle: number): Matrix => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    [c, s, 0],
    [-s, c, 0],
    [0, 0, 1],
  ];
};
/** Small tilts of the sensor in the phone: about x, then about y. */
export const tilted = (a: number, b: number): Matrix => {
  const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
  return [
    [cb, sa * sb, -ca * sb],
    [0, ca, sa],
    [sb, -sa * cb, ca * cb],
  ];
};
/** Up, seen from a place whose right-hand x and forward y rise by these slopes (sines). */
export const upOf = (x: number, y: number): Vector => [x, y, Math.sqrt(1 - x * x - y * y)];
