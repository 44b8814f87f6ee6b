import type { GreyPicture, Point } from './ridge-types';

/** A picture made small by means over blocks of `by` pixels. */
export interface Small {
  readonly width: number;
  readonly height: number;
  readonly by: number;
  readonly grey: Float32Array;
}

/** px: longer side of the small one. */
const SMALL_SIDE = 360;

export function madeSmall({ width, height, luminance }: GreyPicture): Small {
  const by = Math.max(1, Math.round(Math.max(width, height) / SMALL_SIDE));
  const [w, h] = [Math.floor(width / by), Math.floor(height / by)];
  const grey = new Float32Array(w * h);
  for (let y = 0; y < h * by; y += 1) {
    const row = Math.floor(y / by) * w;
    for (let x = 0; x < w * by; x += 1) {
      const at = row + Math.floor(x / by);
      grey[at] = (grey[at] ?? 0) + (luminance[y * width + x] ?? 0);
    }
  }
  return { width: w, height: h, by, grey: grey.map((sum) => sum / by ** 2) };
}

/** A grey that parts light from dark best (Otsu 1979, from memory), and how far apart the two are in the mean. */
function parting(greys: readonly number[]): { readonly at: number; readonly apart: number } {
  const counts = new Float64Array(256);
  for (const grey of greys) {
    const k = Math.min(255, Math.max(0, Math.round(grey)));
    counts[k] = (counts[k] ?? 0) + 1;
  }
  const total = greys.reduce((sum, grey) => sum + grey, 0);
  let [below, sum, best, at, apart] = [0, 0, -1, 128, 0];
  counts.forEach((count, k) => {
    below += count;
    sum += count * k;
    const above = greys.length - below;
    if (below === 0 || above === 0) return;
    const gap = (total - sum) / above - sum / below;
    const between = below * above * gap ** 2;
    if (between > best) [best, at, apart] = [between, k, gap];
  });
  return { at: at + 0.5, apart };
}

/** Pixels of the largest region that hangs together and fulfils `is`. */
function largestRegion({ width, height }: Small, is: (at: number) => boolean): readonly number[] {
  const seen = new Uint8Array(width * height);
  let largest: number[] = [];
  for (let start = 0; start < seen.length; start += 1) {
    if (seen[start] || !is(start)) continue;
    const region = [start];
    seen[start] = 1;
    // What is pushed on the way is come to as well.
    for (const at of region) {
      const x = at % width;
      for (const next of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) {
        if (next < 0 || next >= seen.length || seen[next] || !is(next)) continue;
        seen[next] = 1;
        region.push(next);
      }
    }
    if (region.length > largest.length) largest = region;
  }
  return largest;
}

const cross = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Area of a polygon, above nothing where its corners go clockwise as seen (y down). */
const areaOf = (corners: readonly Point[]): number =>
  corners.reduce((sum, p, i) => ((q) => sum + (p.x * q.y - q.x * p.y) / 2)(corners[(i + 1) % corners.length] ?? p), 0);

const DIRECTIONS = 48;

/** Outermost pixels of a region in 48 directions, in turn round it. */
function outline({ width }: Small, region: readonly number[]): Point[] {
  const rows = new Map<number, [number, number]>();
  for (const at of region) {
    const [x, y] = [at % width, Math.floor(at / width)];
    const row = rows.get(y);
    if (row) rows.set(y, [Math.min(row[0], x), Math.max(row[1], x)]);
    else rows.set(y, [x, x]);
  }
  const ends = [...rows].flatMap(([y, [a, b]]) => [{ x: a, y }, { x: b, y }]); // prettier-ignore
  const found: Point[] = [];
  for (let k = 0; k < DIRECTIONS; k += 1) {
    const [c, s] = [Math.cos((2 * Math.PI * (k + 0.37)) / DIRECTIONS), Math.sin((2 * Math.PI * (k + 0.37)) / DIRECTIONS)]; // prettier-ignore
    const out = ends.reduce((a, b) => (b.x * c + b.y * s > a.x * c + a.y * s ? b : a));
    if (!found.includes(out)) found.push(out);
  }
  return found;
}

/** The four of these corners that enclose most, in their turn. */
function fourOf(corners: readonly Point[]): { readonly four: readonly Point[]; readonly area: number } {
  let [best, four]: [number, readonly Point[]] = [0, []];
  const n = corners.length;
  const farthest = (a: Point, c: Point, from: number, to: number) => {
    let [most, at]: [number, Point | undefined] = [0, undefined];
    for (let k = from; k < to; k += 1) {
      const b = corners[k % n];
      const area = b ? Math.abs(cross(a, b, c)) / 2 : 0;
      if (area > most) [most, at] = [area, b];
    }
    return { most, at };
  };
  corners.forEach((a, i) => {
    for (let k = i + 2; k < n; k += 1) {
      const c = corners[k];
      if (!c) continue;
      const b = farthest(a, c, i + 1, k);
      const d = farthest(a, c, k + 1, i + n);
      if (b.at && d.at && b.most + d.most > best) [best, four] = [b.most + d.most, [a, b.at, c, d.at]];
    }
  });
  return { four, area: best };
}

export interface Four {
  /** Corners in picture pixels, clockwise as seen. */
  readonly corners: readonly [Point, Point, Point, Point];
  /** Share of its outline's area that the four corners enclose: 1 for what has four straight sides. */
  readonly fill: number;
  /** Share of the picture. */
  readonly share: number;
  /** It runs out of the picture. */
  readonly cut: boolean;
}

function fourIn(small: Small, region: readonly number[]): Four | undefined {
  if (region.length < 60) return undefined;
  const around = outline(small, region);
  const { four, area } = fourOf(around);
  const whole = Math.abs(areaOf(around));
  const clockwise = areaOf(four) > 0 ? four : [...four].reverse();
  const [a, b, c, d] = clockwise.map(({ x, y }) => ({ x: (x + 0.5) * small.by - 0.5, y: (y + 0.5) * small.by - 0.5 }));
  if (!a || !b || !c || !d) return undefined;
  const { width, height } = small;
  const edge = region.filter((at) => at < width || at >= width * (height - 1) || at % width === 0 || at % width === width - 1); // prettier-ignore
  return { corners: [a, b, c, d], fill: area / whole, share: area / (width * height), cut: edge.length > 3 };
}

/** A sheet of paper: the largest light thing; `apart`: by how much it is lighter than what it lies on. */
export function findSheet(small: Small): (Four & { readonly apart: number }) | undefined {
  const { at: limit, apart } = parting([...small.grey]);
  const four = fourIn(
    small,
    largestRegion(small, (at) => (small.grey[at] ?? 0) > limit),
  );
  return four && { ...four, apart };
}

/** How far in from the sheet's edges a part is looked for, as a share of its size. */
const INSET = 0.04;

/** The largest dark thing on the sheet; `apart`: by how much it is darker. */
export function findPart(small: Small, sheet: Four): (Four & { readonly apart: number }) | undefined {
  const middle = { x: 0, y: 0 };
  for (const { x, y } of sheet.corners) [middle.x, middle.y] = [middle.x + x / 4, middle.y + y / 4];
  const corners = sheet.corners.map(({ x, y }) => ({
    x: ((1 - INSET) * x + INSET * middle.x + 0.5) / small.by - 0.5,
    y: ((1 - INSET) * y + INSET * middle.y + 0.5) / small.by - 0.5,
  }));
  const inside = (at: number) => {
    const p = { x: at % small.width, y: Math.floor(at / small.width) };
    return corners.every((a, i) => cross(a, corners[(i + 1) % 4] ?? a, p) > 0);
  };
  const on = Uint8Array.from(small.grey, (_, at) => (inside(at) ? 1 : 0));
  const { at: limit, apart } = parting([...small.grey].filter((_, at) => on[at]));
  const four = fourIn(
    small,
    largestRegion(small, (at) => on[at] === 1 && (small.grey[at] ?? 255) < limit),
  );
  return four && { ...four, apart };
}
