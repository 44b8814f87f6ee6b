export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Smaller than this against the largest, a pivot is none. */
const SINGULAR = 1e-9;

/** Solves A c = b by elimination, the largest pivot first; undefined where the lines do not fix it. */
function solve(A: readonly (readonly number[])[], b: readonly number[]): number[] | undefined {
  const rows = A.map((row, i) => [...row, b[i] ?? 0]);
  const n = rows.length;
  const most = Math.max(...A.flat().map(Math.abs));
  for (let k = 0; k < n; k += 1) {
    const best = rows.slice(k).reduce((one, row) => (Math.abs(row[k] ?? 0) > Math.abs(one[k] ?? 0) ? row : one));
    const pivot = best[k] ?? 0;
    if (Math.abs(pivot) < SINGULAR * most) return undefined;
    rows.splice(rows.indexOf(best), 1);
    rows.splice(k, 0, best);
    for (const row of rows) {
      if (row === best) continue;
      const share = (row[k] ?? 0) / pivot;
      for (let j = k; j <= n; j += 1) row[j] = (row[j] ?? 0) - share * (best[j] ?? 0);
    }
  }
  return rows.map((row, i) => (row[n] ?? 0) / (row[i] ?? 1));
}

/**
 * How far a plate rises anywhere when it is lifted at three places, as a stiff one does, or at four, where it twists: the plane, or
 * the plane and x y, through the lifts. Undefined where the places do not fix it.
 */
export function liftThrough(
  places: readonly Place[],
  lifts: readonly number[],
): ((x: number, y: number) => number) | undefined {
  const n = places.length;
  const [x_c, y_c] = [places.reduce((sum, { x }) => sum + x, 0) / n, places.reduce((sum, { y }) => sum + y, 0) / n];
  const size = Math.max(...places.map(({ x, y }) => Math.hypot(x - x_c, y - y_c)));
  const basis = (x: number, y: number): number[] => {
    const [u, v] = [(x - x_c) / size, (y - y_c) / size];
    return n === 4 ? [1, u, v, u * v] : [1, u, v];
  };
  const found =
    size > 0
      ? solve(
          places.map(({ x, y }) => basis(x, y)),
          lifts,
        )
      : undefined;
  return found && ((x, y) => basis(x, y).reduce((sum, one, i) => sum + one * (found[i] ?? 0), 0));
}
