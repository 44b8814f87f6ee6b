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
  /** The picture's middle, through which the lens looks. */
  readonly centre: Point;
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

/** Adds one line of pixels to a column, `perValue` of them to each value. A function of its own: it is hot. */
function addLine(
  { width, height, luminance }: GreyPicture,
  start: Point,
  along: Point,
  perValue: number,
  weight: number,
  column: Float64Array,
  clipped: { bright: number; dark: number },
): void {
  let bright = 0;
  let dark = 0;
  for (let row = 0; row < column.length; row += 1) {
    let sum = 0;
    for (let k = 0; k < perValue; k += 1) {
      const i = row * perValue + k;
      const x = Math.min(width - 1, Math.max(0, start.x + i * along.x));
      const y = Math.min(height - 1, Math.max(0, start.y + i * along.y));
      const x0 = Math.max(0, Math.min(width - 2, Math.floor(x)));
      const y0 = Math.max(0, Math.min(height - 2, Math.floor(y)));
      const right = x - x0;
      const down = y - y0;
      const at = y0 * width + x0;
      const corner = luminance[at] ?? 0;
      const upper = corner + right * ((luminance[at + 1] ?? 0) - corner);
      const below = luminance[at + width] ?? 0;
      const lower = below + right * ((luminance[at + width + 1] ?? 0) - below);
      if (corner >= BRIGHTEST) bright += 1;
      if (corner <= DARKEST) dark += 1;
      sum += upper + down * (lower - upper);
    }
    column[row] = (column[row] ?? 0) + weight * sum;
  }
  clipped.bright += bright;
  clipped.dark += dark;
}

/**
 * Grey values along a strip, by bilinear sampling: about one a pixel (at most 4096 lengthwise), gathered into at most 48
 * columns side by side so that a tilt of the ridges can still be taken out. What lies outside the picture is cut off.
 * @returns undefined where nothing of the strip's middle line is inside the picture, or it has no length
 */
export function readStrip(picture: GreyPicture, strip: Strip): StripReading | undefined {
  const { width, height } = picture;
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
  const clipped = { bright: 0, dark: 0 };
  const lines = columnCount * perColumn;
  const first = -(values * perValue - 1) / 2;
  for (let line = 0; line < lines; line += 1) {
    const c = Math.floor(line / perColumn);
    if (line % perColumn === 0) offsets.push((c - (columnCount - 1) / 2) * perColumn);
    const v = line - (lines - 1) / 2;
    const start = {
      x: (from.x + to.x) / 2 + first * along.x + v * beside.x,
      y: (from.y + to.y) / 2 + first * along.y + v * beside.y,
    };
    const column = columns[c];
    if (column) addLine(picture, start, along, perValue, 1 / (perValue * perColumn), column, clipped);
  }
  const samples = values * perValue * columnCount * perColumn;
  return {
    from,
    to,
    step: perValue,
    columns,
    offsets,
    bright: clipped.bright / samples,
    dark: clipped.dark / samples,
    side: Math.max(width, height),
    centre: { x: (width - 1) / 2, y: (height - 1) / 2 },
  };
}
