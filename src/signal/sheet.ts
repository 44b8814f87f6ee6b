import { halfWidth95 } from './ridge-scale';
import type { GreyPicture, Point } from './ridge-types';
import { edgeNear, lineThrough, mapped, meet, planeMap, type Edge, type Line } from './sheet-edge';
import { findPart, findSheet, madeSmall, type Four } from './sheet-find';

/** m: A4 (ISO 216:2007, table 1). */
const SHEET = { long: 0.297, short: 0.21 } as const;

export type SheetRefusal =
  'no sheet' | 'sheet cut off' | 'no part' | 'no square part' | 'part too small' | 'blurred' | 'too oblique' | 'askew'; // the part lies turned on the sheet

/** What one photo of a part on a sheet says. */
export interface SheetSeen {
  readonly status: 'seen';
  /** As a slope: by how much the corner front left is sharper than 90°, the sheet's own error and the lens's in it. */
  readonly skew: number;
  /** Standard uncertainty of that from the edges. */
  readonly u: number;
  /** rad: by how much the part lies turned on the sheet. */
  readonly turn: number;
  /** m: along the sheet's long side, and along its short one. */
  readonly size: readonly [number, number];
  /** Corners in picture pixels, to draw over it. */
  readonly sheet: readonly Point[];
  readonly part: readonly Point[];
}

export type SheetFinding =
  SheetSeen | { readonly status: 'refused'; readonly reason: SheetRefusal; readonly sheet?: readonly Point[] };

/** Grey values that a sheet and what it lies on, and a part and the sheet, are apart at least. */
const LEAST_APART = 25;
const LEAST_SHEET = 0.1;
const LEAST_PART = 0.03;
const LEAST_FILL = 0.93;
/** m: a shorter side says too little of an angle. */
const LEAST_SIDE = 0.04;
/** Share of the picture's longer side over which a sharp edge changes from light to dark at most. */
const MOST_WIDE = 0.007;
/** A lens's reach as a share of the picture's longer side (a phone's main camera; common practice). */
const REACH = 0.75;
const MOST_OBLIQUE = (25 * Math.PI) / 180;
const MOST_TURN = (12 * Math.PI) / 180;
/** Lenses looked for: Brown's radial coefficient in units of the reach. */
const MOST_LENS = 0.3;

interface Eye {
  readonly centre: Point;
  readonly reach: number;
}

/** What a lens that bends moved, put back. */
const straight = ({ centre, reach }: Eye, lens: number, { x, y }: Point): Point => {
  const [dx, dy] = [x - centre.x, y - centre.y];
  const by = 1 + lens * ((dx * dx + dy * dy) / reach ** 2);
  return { x: centre.x + by * dx, y: centre.y + by * dy };
};

/** Lines through the edges as a lens would show them; undefined where an edge is not there. */
function linesUnder(edges: readonly Edge[], eye: Eye, lens: number): readonly Line[] | undefined {
  const lines = edges.map(({ points }) => lineThrough(points.map((p) => straight(eye, lens, p))));
  return lines.every((line) => line !== undefined) ? lines : undefined;
}

/** The lens under which the edges are straightest, by golden section (Kiefer 1953). */
function lensOf(edges: readonly Edge[], eye: Eye): number {
  const bent = (lens: number) => linesUnder(edges, eye, lens)?.reduce((sum, line) => sum + line.scatter, 0) ?? Infinity;
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [-MOST_LENS, MOST_LENS];
  for (let k = 0; k < 24; k += 1) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (bent(a) < bent(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

const edgesOf = (picture: GreyPicture, { corners }: Four, by: number, light: boolean): Edge[] =>
  corners.map((a, i) => edgeNear(picture, a, corners[(i + 1) % 4] ?? a, 2.5 * by, light));

const cornersOf = (lines: readonly Line[]): readonly Point[] | undefined => {
  const corners = lines.map((line, i) => ((before) => before && meet(before, line))(lines[(i + 3) % 4]));
  return corners.every((corner) => corner !== undefined) ? corners : undefined;
};

const apart = (a: Point | undefined, b: Point | undefined): number => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0);

/** The map from the picture onto the sheet, long side along x; undefined where its corners are none. */
function ontoSheet(corners: readonly Point[]) {
  const [a, b, c, d] = corners;
  const long = apart(a, b) + apart(c, d) >= apart(b, c) + apart(d, a);
  const { long: L, short: S } = SHEET;
  const [w, h] = long ? [L, S] : [S, L];
  const map = planeMap(corners, [{ x: 0, y: 0 }, { x: w, y: 0 }, { x: w, y: h }, { x: 0, y: h }]); // prettier-ignore
  return map && { map, long };
}

const folded = (angle: number, period: number): number => angle - period * Math.round(angle / period);
const ofLine = (map: Float64Array, { at, along }: Line, scale: number): number => {
  const [p, q] = [-1, 1].map((s) => mapped(map, { x: at.x + s * scale * along.x, y: at.y + s * scale * along.y }));
  return p && q ? Math.atan2(q.y - p.y, q.x - p.x) : 0;
};

/** How the part's sides lie on the sheet: angles of the pairs along x and along y, the sheet's long side turned to x. */
function sidesOn(map: Float64Array, long: boolean, lines: readonly Line[], scale: number) {
  const angles = lines.map((line) => folded(ofLine(map, line, scale) - (long ? 0 : Math.PI / 2), Math.PI));
  const along = angles.filter((angle) => Math.abs(angle) < Math.PI / 4);
  const across = angles.filter((angle) => Math.abs(angle) >= Math.PI / 4).map((a) => folded(a - Math.PI / 2, Math.PI));
  if (along.length !== 2 || across.length !== 2) return undefined;
  const mean = (two: readonly number[]) => ((two[0] ?? 0) + (two[1] ?? 0)) / 2;
  return { x: mean(along), y: mean(across) };
}

const refused = (reason: SheetRefusal, sheet?: readonly Point[]) =>
  ({ status: 'refused', reason, ...(sheet ? { sheet } : {}) }) as const;

/** Sheet and part as their outlines say, or why not. */
function outlines(picture: GreyPicture) {
  const small = madeSmall(picture);
  const sheet = findSheet(small);
  if (!sheet || sheet.apart < LEAST_APART || sheet.share < LEAST_SHEET) return refused('no sheet');
  if (sheet.cut) return refused('sheet cut off');
  if (sheet.fill < LEAST_FILL) return refused('no sheet');
  const part = findPart(small, sheet);
  if (!part || part.apart < LEAST_APART || part.share < LEAST_PART * sheet.share)
    return refused('no part', sheet.corners);
  if (part.fill < LEAST_FILL) return refused('no square part', sheet.corners);
  return { status: 'outlined', by: small.by, sheet, part } as const;
}

/**
 * How far a part that lies on a sheet of A4 is from square, from one photo: a sheet's corners make the map of its plane, and
 * straight edges the lens. Edges of a part's upper face keep their directions, whatever its height: planes that are parallel
 * are seen alike.
 * @returns finding, or the reason why there is none; never a guess
 */
export function findSkew(picture: GreyPicture): SheetFinding {
  const found = outlines(picture);
  if (found.status === 'refused') return found;
  const { by, sheet, part } = found;
  const side = Math.max(picture.width, picture.height);
  const reach = REACH * side;
  const eye: Eye = { centre: { x: (picture.width - 1) / 2, y: (picture.height - 1) / 2 }, reach };
  const edges = [...edgesOf(picture, sheet, by, true), ...edgesOf(picture, part, by, false)];
  if (edges.filter(({ width }) => width > MOST_WIDE * side).length > 3) return refused('blurred', sheet.corners);
  const lines = linesUnder(edges, eye, lensOf(edges, eye));
  const [paper, sides] = [lines?.slice(0, 4), lines?.slice(4)];
  const corners = paper && cornersOf(paper);
  const partCorners = sides && cornersOf(sides);
  // Coordinates of the order of one, so that the map's equations are well told apart.
  const near = (p: Point): Point => ({ x: (p.x - eye.centre.x) / reach, y: (p.y - eye.centre.y) / reach });
  const onto = corners && ontoSheet(corners.map(near));
  if (!lines || !onto) return refused('no sheet');
  if (!partCorners) return refused('no square part', sheet.corners);
  if (Math.atan(Math.hypot(onto.map[6] ?? 0, onto.map[7] ?? 0)) > MOST_OBLIQUE)
    return refused('too oblique', sheet.corners);
  const nearLines = sides.map((line) => ({ ...line, at: near(line.at) }));
  const on = sidesOn(onto.map, onto.long, nearLines, 0.01);
  if (!on) return refused('no square part', sheet.corners);
  if (Math.abs(on.x + on.y) / 2 > MOST_TURN) return refused('askew', sheet.corners);
  const flat = partCorners.map((p) => mapped(onto.map, near(p)));
  const lengths = flat.map((p, i) => apart(p, flat[(i + 1) % 4]));
  const [one, two] = [((lengths[0] ?? 0) + (lengths[2] ?? 0)) / 2, ((lengths[1] ?? 0) + (lengths[3] ?? 0)) / 2];
  if (Math.min(one, two) < LEAST_SIDE) return refused('part too small', sheet.corners);
  return {
    status: 'seen',
    // Picture and sheet have y down: a corner front left that is sharper turns y's own direction back towards x.
    skew: Math.tan(on.y - on.x),
    u: Math.sqrt(lines.reduce((sum, { turn }) => sum + turn ** 2, 0) / 4),
    turn: (on.x + on.y) / 2,
    size: [one, two],
    sheet: sheet.corners,
    part: part.corners,
  };
}

/** Share by which a sheet's long side may be out against its short one, as a rectangle: half of what ISO 216 lets a size be. */
const STRETCH = 0.005;
/** Of a photo, as a slope: a sheet that does not lie flat, edges of a print, what a lens's first term leaves. Common practice. */
const LEFT_OUT = 1.05e-3;
/** Of sheet and lens, as a slope, at most: beyond it the part was not turned over, or the sheet is no sheet of A4. */
const MOST_OF_SHEET = 2.5e-3;

export type Skew =
  | {
      readonly status: 'found';
      /** Slope, the corner front left sharper than 90° above nothing, and the half-width of its 95 % interval. */
      readonly skew: number;
      readonly halfWidth: number;
      /** What sheet and lens had added to each photo: a slope. */
      readonly sheet: number;
    }
  | { readonly status: 'refused'; readonly reason: 'not turned over' };

/**
 * Skew from two photos, the part turned over between them, left for right: what comes of the sheet and of the lens stays, what
 * comes of the part changes its sign (reversal: Evans, Hocken and Estler, CIRP Annals 45 (1996) 617).
 * @param first as it was printed, seen from above; @param second turned over
 */
export function skewOf(first: SheetSeen, second: SheetSeen): Skew {
  const sheet = (first.skew + second.skew) / 2;
  if (Math.abs(sheet) > MOST_OF_SHEET) return { status: 'refused', reason: 'not turned over' };
  const lies = Math.abs(Math.sin(2 * first.turn) - Math.sin(2 * second.turn)) / 2;
  const u = Math.hypot(first.u / 2, second.u / 2, LEFT_OUT / Math.SQRT2);
  return { status: 'found', skew: (first.skew - second.skew) / 2, halfWidth: halfWidth95(u, STRETCH * lies), sheet };
}
