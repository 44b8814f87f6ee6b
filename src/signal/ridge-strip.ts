import type { GreyPicture, Point, Strip } from './ridge-types';

/** A strip read out of a picture: columns of grey values that run along it, side by side. */
export interface StripReading {
  /** Ends of the middle line, in picture pixels, after cutting what lies outside the picture. */
  readonly from: Point;
  readonly to: Point;
  /** px along the strip from one value to the next. */
  readonly step: number;
  /** Value i of a column stands at (i - (n - 1) / 2) * step from the middle of the line. */
  readonly columns: readonly Float64Array[];
  /** px from the middle line to each column's own middle, to the right of from→to as the picture is seen. */
  readonly offsets: readonly number[];
  /** Shares of the strip that are as bright, or as dark, as a picture can be. */
  readonly bright: number;
  readonly dark: number;
  /** px: the picture's longer side, from which the lens's reach is judged. */
  readonly side: number;
}

const MOST_VALUES = 4096;
const MOST_COLUMNS = 48;
const BRIGHTEST = 254;
const DARKEST = 1;

/** The part of a→b inside the picture (Liang and Barsky's clipping), undefined where there is none. */
function cut(a: Point, b: Point, width: number, height: number): readonly [Point, Point] | undefined {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let first = 0;
  let last = 1;
  for (const [slope, room] of [
    [-dx, a.x],
    [dx, width - 1 - a.x],
    [-dy, a.y],
    [dy, height - 1 - a.y],
  ] as const) {
    if (slope === 0 && room < 0) return undefined;
    if (slope < 0) first = Math.max(first, room / slope);
    if (slope > 0) last = Math.min(last, room / slope);
  }
  if (!(first < last)) return undefined;
  const at = (t: number): Point => ({ x: a.x + t * dx, y: a.y + t * dy });
  return [at(first), at(last)];
}

/** How far from `p` one can go along ±n and stay inside the picture. */
function roomBeside(p: Point, n: Point, width: number, height: number): number {
  const along = (at: number, step: number, most: number) =>
    Math.abs(step) < 1e-9 ? Infinity : Math.min(at, most - at) / Math.abs(step);
  return Math.max(0, Math.min(along(p.x, n.x, width - 1), along(p.y, n.y, height - 1)));
}

/**
 * Grey values along a strip, by bilinear sampling: about one a pixel (at most 4096 lengthwise), gathered into at most 48
 * columns side by side so that a tilt of the ridges can still be taken out. What lies outside the picture is cut off.
 * @returns undefined where nothing of the strip's middle line is inside the picture, or it has no length
 */
export function readStrip(picture: GreyPicture, strip: Strip): StripReading | undefined {
  const { width, height, luminance } = picture;
  const ends = cut(strip.from, strip.to, width, height);
  if (!ends) return undefined;
  const [from, to] = ends;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(length >= 1)) return undefined;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const beside = { x: -along.y, y: along.x };
  const room = Math.min(roomBeside(from, beside, width, height), roomBeside(to, beside, width, height));
  const across = Math.max(1, Math.floor(Math.min(strip.width, 2 * room)));
  const perValue = Math.max(1, Math.ceil((length + 1) / MOST_VALUES));
  const values = Math.floor((length + 1) / perValue);
  const perColumn = Math.ceil(across / MOST_COLUMNS);
  const columnCount = Math.floor(across / perColumn);

  const columns = Array.from({ length: columnCount }, () => new Float64Array(values));
  const offsets: number[] = [];
  let bright = 0;
  let dark = 0;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  for (let c = 0; c < columnCount; c += 1) {
    const column = columns[c] ?? new Float64Array(0);
    offsets.push((c - (columnCount - 1) / 2) * perColumn);
    for (let k = 0; k < perColumn; k += 1) {
      const v = c * perColumn + k - (columnCount * perColumn - 1) / 2;
      for (let i = 0; i < values * perValue; i += 1) {
        const u = i - (values * perValue - 1) / 2;
        const x = Math.min(width - 1, Math.max(0, middle.x + u * along.x + v * beside.x));
        const y = Math.min(height - 1, Math.max(0, middle.y + u * along.y + v * beside.y));
        const x0 = Math.min(width - 2, Math.floor(x));
        const y0 = Math.min(height - 2, Math.floor(y));
        const fx = x - x0;
        const fy = y - y0;
        const at = y0 * width + x0;
        const a = luminance[at] ?? 0;
        const b = luminance[at + 1] ?? 0;
        const d = luminance[at + width] ?? 0;
        const e = luminance[at + width + 1] ?? 0;
        if (a >= BRIGHTEST) bright += 1;
        if (a <= DARKEST) dark += 1;
        const grey = a * (1 - fx) * (1 - fy) + b * fx * (1 - fy) + d * (1 - fx) * fy + e * fx * fy;
        const row = (i / perValue) | 0;
        column[row] = (column[row] ?? 0) + grey / (perValue * perColumn);
      }
    }
  }
  const samples = values * perValue * columnCount * perColumn;
  return {
    from,
    to,
    step: perValue,
    columns,
    offsets,
    bright: bright / samples,
    dark: dark / samples,
    side: Math.max(width, height),
  };
}
