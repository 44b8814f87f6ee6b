import type { StripReading } from './ridge-strip';
import { dot, slowColumns, without } from './ridge-solve';

/**
 * How ridges lie in a strip: one that crosses the middle line at u (px from its middle) stands, v px beside it, at
 * u + v * (shear + fan * u). Perspective makes them fan out.
 */
export interface Lie {
  readonly shear: number;
  /** 1/px. */
  readonly fan: number;
  /** 1/px: standard uncertainty of the fan; Infinity where the strip is too narrow to tell. */
  readonly fanSpread: number;
}

type Slope = Omit<Lie, 'fanSpread'>;

/** A wall's grain runs from column to column: the fan's uncertainty is taken this much larger than for noise without. */
const GRAIN = 2;
/** Tangent of the steepest tilt looked for, about 12°. */
const STEEPEST = 0.21;
/** Camera off square by 32° over a lens's reach of 0.7 of the picture's longer side, 1/px times that side. */
const MOST_FAN = 0.9;
/** px: the first search's shift of the outermost column; finer than the finest pattern left by the smoothing. */
const FIRST_SHIFT = 1;
const HALVINGS = 6;

/** px: where ridges lie at the strip's corners is sure to no better: pixels and the blocks of a JPEG pull at them all alike. */
const LEAST_SHIFT = 0.15;

/** Values put between two of a column's own, so that reading between them dims nothing and no tilt looks better for it. */
const FINER = 4;

/** A strip's columns with values in between. */
export interface FineColumns {
  readonly columns: readonly Float64Array[];
  readonly offsets: readonly number[];
  readonly step: number;
  /** Values in each of the strip's own columns. */
  readonly length: number;
}

/** Between two values by the cubic through four (Catmull and Rom's). */
function refine(column: Float64Array): Float64Array {
  const n = column.length;
  return Float64Array.from({ length: (n - 1) * FINER + 1 }, (_, j) => {
    const i = Math.floor(j / FINER);
    const t = j / FINER - i;
    const b = column[i] ?? 0;
    if (t === 0) return b;
    const c = column[i + 1] ?? b;
    const a = column[i - 1] ?? 2 * b - c;
    const d = column[i + 2] ?? 2 * c - b;
    return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
  });
}

/** The columns made fine enough to be read along any lie. */
export function refined({ columns, offsets, step }: StripReading): FineColumns {
  return { columns: columns.map(refine), offsets, step, length: columns[0]?.length ?? 0 };
}

/** Mean of the columns along the ridges' lie. */
export function straighten({ columns, offsets, step, length: n }: FineColumns, lie: Slope): Float64Array {
  const sum = new Float64Array(n);
  const last = (n - 1) * FINER;
  columns.forEach((column, c) =>
    addColumn(sum, column, ((offsets[c] ?? 0) * FINER * lie.shear) / step, (offsets[c] ?? 0) * lie.fan, last),
  );
  for (let i = 0; i < n; i += 1) sum[i] = (sum[i] ?? 0) / columns.length;
  return sum;
}

/** Adds one fine column, moved by `start` and stretched by `slope` about its middle. A function of its own: it is hot. */
function addColumn(sum: Float64Array, column: Float64Array, start: number, slope: number, last: number): void {
  for (let i = 0; i < sum.length; i += 1) {
    const at = Math.min(last, Math.max(0, i * FINER + start + slope * (i * FINER - last / 2)));
    const low = Math.min(last - 1, at | 0);
    const a = column[low] ?? 0;
    sum[i] = (sum[i] ?? 0) + a + (at - low) * ((column[low + 1] ?? a) - a);
  }
}

/** Smoothed by 1-2-1: white noise then keeps nearly the same power wherever between two values it is read. */
function smooth(column: Float64Array): Float64Array {
  return column.map((value, i) => (2 * value + (column[i - 1] ?? value) + (column[i + 1] ?? value)) / 4);
}

/** The lie along which the columns' mean has the most power left: it smears least. */
export function findLie(reading: StripReading): Lie {
  const half = Math.max(...reading.offsets.map(Math.abs));
  const n = reading.columns[0]?.length ?? 0;
  if (half < 2 || n < 8) return { shear: 0, fan: 0, fanSpread: Infinity };
  const slow = slowColumns(n, 3);
  const flat = refined({ ...reading, columns: reading.columns.map((column) => smooth(without(column, slow))) });
  const power = (lie: Slope): number => {
    const mean = straighten(flat, lie);
    return dot(mean, mean);
  };
  const best = (candidates: readonly Slope[]): Slope =>
    candidates.map((lie) => ({ lie, is: power(lie) })).reduce((a, b) => (b.is > a.is ? b : a)).lie;
  const steps = (most: number, step: number) => {
    const each = Math.ceil(most / step);
    return Array.from({ length: 2 * each + 1 }, (_, k) => (k - each) * step);
  };

  const halfLength = (n * reading.step) / 2;
  const shift = FIRST_SHIFT * reading.step;
  let shearStep = shift / half;
  let fanStep = shift / (half * halfLength);
  let lie: Slope = best(steps(STEEPEST, shearStep).map((shear) => ({ shear, fan: 0 })));
  lie = best(steps(MOST_FAN / reading.side, fanStep).map((fan) => ({ shear: lie.shear, fan })));
  for (let k = 0; k < HALVINGS; k += 1) {
    const around = [-1, 0, 1];
    lie = best(
      around.flatMap((a) => around.map((b) => ({ shear: lie.shear + a * shearStep, fan: lie.fan + b * fanStep }))),
    );
    shearStep /= 2;
    fanStep /= 2;
  }
  const h = shift / (half * halfLength);
  const top = power(lie);
  const curve = (power({ ...lie, fan: lie.fan + h }) + power({ ...lie, fan: lie.fan - h }) - 2 * top) / h ** 2;
  // What each column has beside the mean is noise; the likelihood of a lie is then its power by that noise's.
  const all = reading.columns
    .map((column) => without(column, slow))
    .reduce((sum, column) => sum + dot(column, column), 0);
  const noise = Math.max(0, all / reading.columns.length - top) / n;
  const fanSpread = curve < 0 ? GRAIN * Math.sqrt((2 * noise) / (-curve * reading.columns.length)) : Infinity;
  return { ...lie, fanSpread: Math.hypot(fanSpread, LEAST_SHIFT / (half * halfLength)) };
}
