import type { StripReading } from './ridge-strip';
import type { Lie } from './ridge-tilt';
import type { Point, Scale } from './ridge-types';

/** How the wall lies under the strip and what the lens does: x along it, y beside it, both from its middle. */
interface Pose extends Omit<Lie, 'fanSpread' | 'round'> {
  readonly bend: number;
  readonly lens: number;
}

/** The marks and the ridges seen square on, in the strip's middle pixels. */
interface MarkedLength {
  /** What the stated distance spans. */
  readonly length: number;
  /** From ridge to ridge, for ridges of one a pixel along the strip. */
  readonly step: number;
  /** What one pixel along the strip is. */
  readonly along: number;
  /** Share of the marks' distance lying along the ridges, 0 to 1. */
  readonly beside: number;
  /** 1/px: how steeply the wall falls away. */
  readonly off: number;
}

/** A picture's place in the strip's own directions. */
export function inStrip(reading: StripReading, p: Point): { readonly u: number; readonly v: number } {
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

/**
 * The lens's reach is not known: as a share of the picture's longer side it is taken as this, and as likely as not by this
 * factor less or more (a phone's main camera has 0.7, zoomed twice 1.4; common practice, no source).
 */
const REACH = 0.75;
const REACH_FACTOR = 1.5;

const dot = (p: readonly number[], q: readonly number[]) => p.reduce((sum, one, i) => sum + one * (q[i] ?? 0), 0);

/**
 * What the marks span and how far apart ridges are, both in one unit, from a pose.
 *
 * A ray is r = r0 + u e1 + v e2, r0 from the lens to the strip's middle. Where it meets the plane n·P = h, with
 * bend = n·e1 / n·r0 and side = n·e2 / n·r0, stands P = h / n·r0 (r0 + x E1 + y E2), (x, y) = (u, v) / (1 + bend u + side v),
 * E1 = e1 - bend r0, E2 = e2 - side r0. So lengths on the wall follow from (x, y) by the products of E1 and E2, exactly.
 */
function marked(reading: StripReading, scale: Scale, pose: Pose, reach: number): MarkedLength | undefined {
  const centre = inStrip(reading, reading.centre);
  // A ridge keeps its phase along itself: from there the lens's own shear and fan are taken off, and the plane's found.
  const shear = pose.shear + 2 * pose.lens * centre.u * centre.v;
  const side = pose.fan - pose.bend * pose.shear - 2 * pose.lens * centre.v;
  const place = (p: Point) => {
    const at = inStrip(reading, p);
    const [du, dv] = [at.u - centre.u, at.v - centre.v];
    const moved = pose.lens * (du ** 2 + dv ** 2);
    const [u, v] = [at.u + moved * du, at.v + moved * dv];
    const depth = 1 + pose.bend * u + side * v;
    return depth > 0.2 ? { x: u / depth, y: v / depth } : undefined;
  };
  const a = place(scale.from);
  const b = place(scale.to);
  if (!a || !b) return undefined;
  // In the directions along the strip, beside it and of the line of sight.
  const r0 = [-centre.u, -centre.v, reach];
  const E1 = r0.map((one, i) => (i === 0 ? 1 : 0) - pose.bend * one);
  const E2 = r0.map((one, i) => (i === 1 ? 1 : 0) - side * one);
  const [g11, g12, g22] = [dot(E1, E1), dot(E1, E2), dot(E2, E2)];
  const lengthOf = (x: number, y: number) => Math.sqrt(g11 * x * x + 2 * g12 * x * y + g22 * y * y);
  // Ridges are lines x - shear y = n / F: square to them lies 1 / F over the length of their covector.
  const step = Math.sqrt((g11 * g22 - g12 ** 2) / (g22 + 2 * shear * g12 + shear ** 2 * g11));
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const across = Math.abs(dx - shear * dy) * step;
  const whole = lengthOf(dx, dy);
  return {
    length: scale.measured === 'across' ? across : whole,
    step,
    along: Math.sqrt(g11),
    beside: whole > 0 ? Math.sqrt(Math.max(0, 1 - (across / whole) ** 2)) : 0,
    off: Math.hypot(pose.bend, side),
  };
}

/** Metres per middle pixel with what makes it uncertain. */
export interface Measured {
  /** Along the strip. */
  readonly metres: number;
  /** Square to the ridges: over their frequency along the strip it is their period. */
  readonly across: number;
  /** Share per unit of bend, and of the lens's term: what an error of it does to `across`. */
  readonly byBend: number;
  readonly byLens: number;
  /** Standard uncertainty of the marks' places, as a share. */
  readonly marks: number;
  /** Half-width of the distance's rectangle, as a share. */
  readonly distance: number;
  /** rad: by how much the camera is off square to the wall, for a lens of usual reach. */
  readonly off: number;
}

/** Marks nearer than this, px, give no scale. */
const LEAST_MARKED = 8;
/** Share left by what the lens's first term leaves out, measured on rendered walls. */
const LEFT_OUT = 0.0004;
/** Foreshortening that cannot be seen from the ridges: 5° off square shortens one direction against the other by this. */
const FORESHORTENED = 1 - Math.cos((5 * Math.PI) / 180);

/**
 * Metres on the wall per pixel in the strip's middle, from two marks anywhere in the picture.
 * @param sideSpread 1/px: standard uncertainty of the ridges' fan
 */
export function measure(reading: StripReading, scale: Scale, pose: Pose, sideSpread: number): Measured | undefined {
  const reach = REACH * reading.side;
  const here = marked(reading, scale, pose, reach);
  if (!here || here.length < LEAST_MARKED || !(scale.distance > 0)) return undefined;
  const ratio = here.step / here.length;
  const otherwise = (by: Partial<Pose>, other = reach) =>
    ((now) => (now ? now.step / now.length / ratio - 1 : 0))(marked(reading, scale, { ...pose, ...by }, other));
  const tiny = 1e-4 / reading.side;
  const byBend = otherwise({ bend: pose.bend + tiny }) / tiny;
  const bySide = otherwise({ fan: pose.fan + tiny }) / tiny;
  const tinyLens = tiny / reading.side;
  const byLens = otherwise({ lens: pose.lens + tinyLens }) / tinyLens;
  // Each mark is off by a rectangle's standard deviation along the line that is measured.
  const pointing = (Math.SQRT2 * scale.pointing) / Math.sqrt(3) / here.length;
  const foreshortened = scale.measured === 'points' ? FORESHORTENED * here.beside ** 2 : 0;
  const byReach = Math.max(
    Math.abs(otherwise({}, reach * REACH_FACTOR)),
    Math.abs(otherwise({}, reach / REACH_FACTOR)),
  );
  return {
    metres: (scale.distance / here.length) * here.along,
    across: (scale.distance / here.length) * here.step,
    byBend,
    byLens,
    marks: Math.hypot(pointing, bySide * sideSpread, foreshortened, byReach, LEFT_OUT),
    distance: scale.halfWidth / scale.distance,
    off: Math.atan(here.off * reach),
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
