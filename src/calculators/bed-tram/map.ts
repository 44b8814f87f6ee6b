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

export interface Tile {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
  /** −1 lowest to 1 highest. */
  readonly share: number;
}

const TILES = 9;

/**
 * The readings as spots above their mean, and the bed in tiles shaded by the heights around, each weighted by one over the
 * square of its distance (Shepard 1968, from memory): a picture, not a result.
 *
 * @param read heights upwards, SI
 * @param W width and D depth of the bed, SI
 */
export function heightMap(
  read: readonly { readonly n: number; readonly x: number; readonly y: number; readonly z: number }[],
  W: number,
  D: number,
): { readonly spots: readonly Spot[]; readonly tiles: readonly Tile[] } {
  const mean = read.reduce((sum, { z }) => sum + z, 0) / Math.max(read.length, 1);
  const rises = read.map(({ z }) => z - mean);
  const [high, low] = [Math.max(...rises), Math.min(...rises)];
  const most = Math.max(high, -low);
  const spots = read.map(({ n, x, y, z }) => {
    const rise = z - mean;
    return { n, x, y, rise, extreme: high > low && (rise === high || rise === low) };
  });
  if (!(most > 0)) return { spots, tiles: [] };
  const [wide, deep] = [W / TILES, D / TILES];
  const tiles = Array.from({ length: TILES * TILES }, (_, i) => {
    const x = (i % TILES) * wide;
    const y = Math.floor(i / TILES) * deep;
    let [weights, sum] = [0, 0];
    for (const spot of spots) {
      const weight = 1 / ((spot.x - x - wide / 2) ** 2 + (spot.y - y - deep / 2) ** 2 + (wide * deep) / 100);
      weights += weight;
      sum += weight * spot.rise;
    }
    return { x, y, wide, high: deep, share: sum / weights / most };
  });
  return { spots, tiles };
}
