import { gram, inverse, times } from './ridge-solve';
import type { GreyPicture, Point } from './ridge-types';

/** Places along an edge where it is looked for, and the share of it next to each corner that is left out. */
const PLACES = 160;
const CORNER = 0.08;
/** Pixels beside a place, along the edge, that its grey values are a mean of. */
const BESIDE = [-2, -1, 0, 1, 2] as const;
const LEAST_REACH = 6;
/** Share of its length by which a wide lens bows an edge at most. */
const MOST_BOW = 0.03;

/** An edge in the picture, as points on it. */
export interface Edge {
  readonly points: readonly Point[];
  /** px: how wide the change from light to dark is, in the median. */
  readonly width: number;
}

function greyAt({ width, height, luminance }: GreyPicture, x: number, y: number): number {
  const x0 = Math.min(width - 2, Math.max(0, Math.floor(x)));
  const y0 = Math.min(height - 2, Math.max(0, Math.floor(y)));
  const [right, down] = [Math.min(1, Math.max(0, x - x0)), Math.min(1, Math.max(0, y - y0))];
  const at = y0 * width + x0;
  const upper = (luminance[at] ?? 0) * (1 - right) + (luminance[at + 1] ?? 0) * right;
  const lower = (luminance[at + width] ?? 0) * (1 - right) + (luminance[at + width + 1] ?? 0) * right;
  return upper * (1 - down) + lower * down;
}

/** Where along a line of grey values they rise most, to a part of a pixel, and over how many pixels they do. */
function riseOf(greys: readonly number[]): { readonly at: number; readonly width: number } | undefined {
  const rises = greys.slice(1).map((grey, i) => grey - (greys[i] ?? 0));
  const top = rises.reduce((best, rise, i) => (rise > (rises[best] ?? 0) ? i : best), 0);
  const most = rises[top] ?? 0;
  if (most < 2) return undefined;
  let [from, to] = [top, top];
  while ((rises[from - 1] ?? 0) > 0.1 * most) from -= 1;
  while ((rises[to + 1] ?? 0) > 0.1 * most) to += 1;
  if (from <= 0 || to >= rises.length - 1) return undefined;
  let [sum, moment, squares] = [0, 0, 0];
  for (let i = from; i <= to; i += 1) {
    const rise = Math.max(0, rises[i] ?? 0);
    sum += rise;
    moment += rise * (i + 0.5);
    squares += rise ** 2;
  }
  return { at: moment / sum, width: sum ** 2 / squares };
}

/**
 * Points on the edge near a→b; what lies to its right as one goes, clockwise round a thing, is its inside.
 * @param reach px: how far beside the line it may lie
 * @param lightInside whether the inside is the lighter
 */
export function edgeNear(picture: GreyPicture, a: Point, b: Point, reach: number, lightInside: boolean): Edge {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  const sign = lightInside ? 1 : -1;
  const into = { x: -along.y * sign, y: along.x * sign };
  const half = Math.max(LEAST_REACH, Math.ceil(Math.max(reach, MOST_BOW * length)));
  const points: Point[] = [];
  const widths: number[] = [];
  for (let k = 0; k < PLACES; k += 1) {
    const t = length * (CORNER + ((1 - 2 * CORNER) * (k + 0.5)) / PLACES);
    const at = { x: a.x + t * along.x, y: a.y + t * along.y };
    const greys = Array.from({ length: 2 * half + 1 }, (_, i) => {
      const p = { x: at.x + (i - half) * into.x, y: at.y + (i - half) * into.y };
      return BESIDE.reduce<number>((sum, s) => sum + greyAt(picture, p.x + s * along.x, p.y + s * along.y), 0) / 5;
    });
    const rise = riseOf(greys);
    if (!rise) continue;
    points.push({ x: at.x + (rise.at - half) * into.x, y: at.y + (rise.at - half) * into.y });
    widths.push(rise.width);
  }
  return { points, width: widths.sort((p, q) => p - q)[widths.length >> 1] ?? Infinity };
}

/** A straight line: through `at`, along a unit vector. */
export interface Line {
  readonly at: Point;
  readonly along: Point;
  /** px²: of the points beside it, in the mean. */
  readonly scatter: number;
  /** rad: standard uncertainty of its direction. */
  readonly turn: number;
}

/** Stretches that an edge's scatter is gathered into: roughness runs on from point to point, not over a tenth of the edge. */
const STRETCHES = 10;

function through(points: readonly Point[]) {
  const n = points.length;
  const at = { x: points.reduce((s, p) => s + p.x, 0) / n, y: points.reduce((s, p) => s + p.y, 0) / n };
  let [xx, xy, yy] = [0, 0, 0];
  for (const { x, y } of points) {
    xx += (x - at.x) ** 2;
    xy += (x - at.x) * (y - at.y);
    yy += (y - at.y) ** 2;
  }
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  const along = { x: Math.cos(angle), y: Math.sin(angle) };
  const off = points.map(({ x, y }) => (y - at.y) * along.x - (x - at.x) * along.y);
  return { at, along, off };
}

/** The line through points by least squares of what lies beside it, outliers left out. */
export function lineThrough(points: readonly Point[]): Line | undefined {
  let kept = points;
  for (let round = 0; round < 3; round += 1) {
    if (kept.length < 40) return undefined;
    const { off } = through(kept);
    const limit = 4 * ([...off].map(Math.abs).sort((p, q) => p - q)[off.length >> 1] ?? 0) + 0.05;
    kept = kept.filter((_, i) => Math.abs(off[i] ?? 0) <= limit);
  }
  if (kept.length < 40) return undefined;
  const { at, along, off } = through(kept);
  const scatter = off.reduce((sum, one) => sum + one ** 2, 0) / kept.length;
  const each = kept.length / STRETCHES;
  const means = Array.from({ length: STRETCHES }, (_, k) => {
    const part = off.slice(Math.floor(k * each), Math.floor((k + 1) * each));
    return part.reduce((sum, one) => sum + one, 0) / Math.max(1, part.length);
  });
  const rough = Math.sqrt(means.reduce((sum, one) => sum + one ** 2, 0) / (STRETCHES - 2));
  const [first, last] = [kept[0], kept[kept.length - 1]];
  const length = first && last ? Math.hypot(last.x - first.x, last.y - first.y) : 1;
  return { at, along, scatter, turn: (rough * Math.sqrt(12 / STRETCHES)) / length };
}

/** Where two lines meet; undefined where they run alike. */
export function meet(p: Line, q: Line): Point | undefined {
  const by = p.along.x * q.along.y - p.along.y * q.along.x;
  if (Math.abs(by) < 0.2) return undefined;
  const t = ((q.at.x - p.at.x) * q.along.y - (q.at.y - p.at.y) * q.along.x) / by;
  return { x: p.at.x + t * p.along.x, y: p.at.y + t * p.along.y };
}

/** A map of a plane seen onto the plane itself: (x, y) goes to (h0 x + h1 y + h2, h3 x + h4 y + h5) / (h6 x + h7 y + 1). */
export type PlaneMap = Float64Array;

/**
 * The projective map that takes four points onto four others (Hartley and Zisserman, Multiple View Geometry, section 4.1,
 * from memory); undefined where three of them stand on a line.
 */
export function planeMap(from: readonly Point[], to: readonly Point[]): PlaneMap | undefined {
  const columns = Array.from({ length: 8 }, () => new Float64Array(8));
  const wanted = new Float64Array(8);
  from.forEach(({ x, y }, i) => {
    const { x: u, y: v } = to[i] ?? { x: 0, y: 0 };
    [x, y, 1, 0, 0, 0, -u * x, -u * y].forEach((one, k) => ((columns[k] ?? wanted)[2 * i] = one));
    [0, 0, 0, x, y, 1, -v * x, -v * y].forEach((one, k) => ((columns[k] ?? wanted)[2 * i + 1] = one));
    wanted[2 * i] = u;
    wanted[2 * i + 1] = v;
  });
  const inverted = inverse(gram(columns));
  return (
    inverted &&
    times(
      inverted,
      columns.map((column) => column.reduce((sum, one, i) => sum + one * (wanted[i] ?? 0), 0)),
    )
  );
}

export function mapped(map: PlaneMap, { x, y }: Point): Point {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = map;
  const depth = g * x + h * y + 1;
  return { x: (a * x + b * y + c) / depth, y: (d * x + e * y + f) / depth };
}
