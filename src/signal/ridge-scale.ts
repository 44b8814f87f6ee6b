import type { StripReading } from './ridge-strip';
import type { Lie } from './ridge-tilt';
import type { Point, Scale } from './ridge-types';

/** How the wall lies under the strip: x along it, y beside it, both from its middle, square on: (u, v) / (1 + c u + d v). */
export interface Plane {
  readonly bend: number;
  readonly sideBend: number;
  readonly shear: number;
}

/** The marks seen square on, in the strip's middle pixels. */
interface MarkedLength {
  /** Middle pixels that the stated distance spans. */
  readonly length: number;
  /** Share of it lying along the ridges, 0 to 1. */
  readonly beside: number;
}

/** From the strip's fan to the plane: fan = d + c * shear (from the phase being the same all along a ridge). */
export const planeOf = (lie: Omit<Lie, 'fanSpread'>, bend: number): Plane => ({
  bend,
  sideBend: lie.fan - bend * lie.shear,
  shear: lie.shear,
});

/** A picture's place in the strip's own directions. */
function inStrip(reading: StripReading, p: Point): { readonly u: number; readonly v: number } {
  const { from, to } = reading;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const dx = p.x - (from.x + to.x) / 2;
  const dy = p.y - (from.y + to.y) / 2;
  return { u: dx * along.x + dy * along.y, v: dy * along.x - dx * along.y };
}

/** A place of the strip in the picture. */
export function inPicture(reading: StripReading, u: number, v: number): Point {
  const { from, to } = reading;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return {
    x: (from.x + to.x) / 2 + u * along.x - v * along.y,
    y: (from.y + to.y) / 2 + u * along.y + v * along.x,
  };
}

function marked(reading: StripReading, scale: Scale, plane: Plane): MarkedLength | undefined {
  const place = (p: Point) => {
    const { u, v } = inStrip(reading, p);
    const depth = 1 + plane.bend * u + plane.sideBend * v;
    return depth > 0.2 ? { x: u / depth, y: v / depth } : undefined;
  };
  const a = place(scale.from);
  const b = place(scale.to);
  if (!a || !b) return undefined;
  // A ridge runs along (shear, 1); square to it is (1, -shear).
  const norm = Math.hypot(1, plane.shear);
  const across = Math.abs(b.x - a.x - plane.shear * (b.y - a.y)) / norm;
  const whole = Math.hypot(b.x - a.x, b.y - a.y);
  return {
    length: scale.measured === 'across' ? across : whole,
    beside: whole > 0 ? Math.sqrt(Math.max(0, 1 - (across / whole) ** 2)) : 0,
  };
}

/** Metres per middle pixel with what makes it uncertain. */
export interface Measured {
  readonly metres: number;
  /** Share per unit of bend: what an error of the bend does to it. */
  readonly byBend: number;
  /** Standard uncertainty of the marks' places, as a share. */
  readonly marks: number;
  /** Half-width of the distance's rectangle, as a share. */
  readonly distance: number;
}

/** Marks nearer than this, px, give no scale. */
const LEAST_MARKED = 8;
/** Share left by what the plane's first order leaves out, measured on rendered walls up to 5° off square. */
const LEFT_OUT = 0.0004;
/** Foreshortening that cannot be seen from the ridges: 5° off square shortens one direction against the other by this. */
const FORESHORTENED = 1 - Math.cos((5 * Math.PI) / 180);

/**
 * Metres on the wall per pixel in the strip's middle, from two marks anywhere in the picture.
 * @param sideSpread 1/px: standard uncertainty of the plane's bend to the side
 */
export function measure(reading: StripReading, scale: Scale, plane: Plane, sideSpread: number): Measured | undefined {
  const here = marked(reading, scale, plane);
  if (!here || here.length < LEAST_MARKED || !(scale.distance > 0)) return undefined;
  const changed = (by: Partial<Plane>, step: number) =>
    ((marked(reading, scale, { ...plane, ...by })?.length ?? here.length) / here.length - 1) / step;
  const tiny = 1e-4 / reading.side;
  const byBend = -changed({ bend: plane.bend + tiny }, tiny);
  const bySide = -changed({ sideBend: plane.sideBend + tiny }, tiny);
  // Each mark is off by a rectangle's standard deviation along the line that is measured.
  const pointing = (Math.SQRT2 * scale.pointing) / Math.sqrt(3) / here.length;
  const foreshortened = scale.measured === 'points' ? FORESHORTENED * here.beside ** 2 : 0;
  return {
    metres: scale.distance / here.length,
    byBend,
    marks: Math.hypot(pointing, bySide * sideSpread, foreshortened, LEFT_OUT),
    distance: scale.halfWidth / scale.distance,
  };
}

/** The normal distribution's probability below z (Abramowitz and Stegun, 7.1.26, good to 1.5e-7; from memory). */
function below(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail =
    t *
    (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) *
    Math.exp(-x * x);
  return z >= 0 ? 1 - tail / 2 : tail / 2;
}

/**
 * Half-width that holds 95 % of a normal error (standard deviation s) and a rectangular one (half-width a) added: the
 * probability is the mean of the normal one over the rectangle, in closed form with the integral z P(z) + p(z).
 */
export function halfWidth95(s: number, a: number): number {
  if (s <= 0) return 0.95 * a;
  const integral = (x: number) => {
    const z = x / s;
    return s * (z * below(z) + Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI));
  };
  const inside = (q: number) =>
    a < 1e-6 * s
      ? 2 * below(q / s) - 1
      : (integral(q + a) - integral(q - a) - (integral(-q + a) - integral(-q - a))) / (2 * a);
  let low = 0;
  let high = 4 * s + a;
  for (let k = 0; k < 50; k += 1) {
    const middle = (low + high) / 2;
    if (inside(middle) < 0.95) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
