export interface Spot {
  /** Its line in the table. */
  readonly n: number;
  readonly x: number;
  readonly y: number;
  /** Above the mean of all, SI. */
  readonly rise: number;
  /** The highest or the lowest. */
  readonly extreme: boolean;
}

/** A piece of a contour, and a tick from its middle to the side that falls, where there is one. SI. */
export interface Piece {
  readonly from: Place;
  readonly to: Place;
  readonly tick: Place | undefined;
}

interface Place {
  readonly x: number;
  readonly y: number;
}
interface Node extends Place {
  readonly z: number;
}
type Read = readonly { readonly n: number; readonly x: number; readonly y: number; readonly z: number }[];

const CELLS = 24;
/** Most contours between the lowest and the highest. */
const MOST = 7;
/** Every so manieth piece bears a tick, which is as long as this share of the bed. */
const TICK_EACH = 4;
const TICK = 0.022;

/** Height at a place, each reading weighted by one over the square of its distance (Shepard 1968, from memory). */
function heightAt(read: Read, mean: number, x: number, y: number, near: number): number {
  let [weights, sum] = [0, 0];
  for (const spot of read) {
    const weight = 1 / ((spot.x - x) ** 2 + (spot.y - y) ** 2 + near);
    weights += weight;
    sum += weight * (spot.z - mean);
  }
  return sum / weights;
}

/** The smallest of 1, 2, 5, 10 ... that parts a span into few enough steps. */
export function intervalFor(span: number): number {
  const decade = 10 ** Math.floor(Math.log10(span / MOST));
  return decade * ([1, 2, 5].find((step) => span / (step * decade) <= MOST) ?? 10);
}

/** Where a level crosses the side from one corner to another; undefined where it does not. */
function crossing(a: Node, b: Node, level: number): Place | undefined {
  if (a.z < level === b.z < level) return undefined;
  const share = (level - a.z) / (b.z - a.z);
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

/** The direction in which a triangle falls, as long as one. */
function fallOf([a, b, c]: readonly [Node, Node, Node]): Place | undefined {
  const [ux, uy, uz] = [b.x - a.x, b.y - a.y, b.z - a.z];
  const [vx, vy, vz] = [c.x - a.x, c.y - a.y, c.z - a.z];
  const turned = ux * vy - uy * vx;
  const [gx, gy] = [(uz * vy - uy * vz) / turned, (ux * vz - uz * vx) / turned];
  const size = Math.hypot(gx, gy);
  return size > 0 ? { x: -gx / size, y: -gy / size } : undefined;
}

/** The contour of a level through a triangle. */
function pieceIn(triangle: readonly [Node, Node, Node], level: number, tick: number): Piece[] {
  const [a, b, c] = triangle;
  const [from, to] = [crossing(a, b, level), crossing(b, c, level), crossing(c, a, level)].filter((one) => one);
  const fall = fallOf(triangle);
  if (!from || !to) return [];
  const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
  return [{ from, to, tick: tick > 0 && fall ? { x: x + tick * fall.x, y: y + tick * fall.y } : undefined }];
}

function contours(read: Read, mean: number, W: number, D: number): Piece[] {
  const near = (W * D) / (100 * CELLS);
  const node = (i: number, j: number): Node => {
    const [x, y] = [(i * W) / CELLS, (j * D) / CELLS];
    return { x, y, z: heightAt(read, mean, x, y, near) };
  };
  const lattice = Array.from({ length: CELLS + 1 }, (_, i) => Array.from({ length: CELLS + 1 }, (__, j) => node(i, j)));
  const heights = lattice.flat().map(({ z }) => z);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  if (!(high > low)) return [];
  const step = intervalFor(high - low);
  const first = Math.ceil(low / step);
  const levels = Array.from({ length: Math.floor(high / step) - first + 1 }, (_, k) => (first + k) * step);
  return lattice.slice(0, -1).flatMap((column, i) =>
    column.slice(0, -1).flatMap((a, j) => {
      const [b, c, d] = [lattice[i + 1]?.[j], lattice[i + 1]?.[j + 1], lattice[i]?.[j + 1]];
      if (!b || !c || !d) return [];
      const tick = (i + 2 * j) % TICK_EACH === 0 ? TICK * Math.min(W, D) : 0;
      return levels.flatMap((level) => [...pieceIn([a, b, c], level, tick), ...pieceIn([a, c, d], level, 0)]);
    }),
  );
}

/**
 * The readings as a levelling plan: spots above their mean, and contours of the heights between them: a picture, not a result.
 *
 * @param read heights upwards, SI
 * @param W width and D depth of the bed, SI
 */
export function levellingPlan(
  read: Read,
  W: number,
  D: number,
): { readonly spots: readonly Spot[]; readonly contours: readonly Piece[] } {
  const mean = read.reduce((sum, { z }) => sum + z, 0) / Math.max(read.length, 1);
  const rises = read.map(({ z }) => z - mean);
  const [high, low] = [Math.max(...rises), Math.min(...rises)];
  const spots = read.map(({ n, x, y, z }) => {
    const rise = z - mean;
    return { n, x, y, rise, extreme: high > low && (rise === high || rise === low) };
  });
  return { spots, contours: high > low ? contours(read, mean, W, D) : [] };
}
