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
  /** By how many standard uncertainties the ridges bow across the strip, the more the further from its middle: a round wall's. */
  readonly round: number;
}

type Slope = Pick<Lie, 'shear' | 'fan'>;
/** Beside a lie: what a round wall adds, v² (sag + bow u). */
type Bow = Slope & { readonly sag: number; readonly bow: number };

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
export function straighten(
  { columns, offsets, step, length: n }: FineColumns,
  { shear, fan, sag = 0, bow = 0 }: Slope & Partial<Bow>,
): Float64Array {
  const sum = new Float64Array(n);
  const last = (n - 1) * FINER;
  columns.forEach((column, c) => {
    const v = offsets[c] ?? 0;
    addColumn(sum, column, (v * FINER * (shear + v * sag)) / step, v * (fan + v * bow), last);
  });
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

/** Times that a column is smoothed by 1-2-1: five make a bell of 1.6 values, which leaves little finer than 5. */
const SMOOTHINGS = 5;

/**
 * Smoothed until little finer than 5 values is left. Layers of 3 or 4 pixels are often the strongest pattern in a wall:
 * read between two values they are dimmed by how far between, and a lie that needs no reading between would look best.
 */
function smooth(column: Float64Array): Float64Array {
  let now = column;
  for (let k = 0; k < SMOOTHINGS; k += 1) {
    const before = now;
    now = before.map((value, i) => (2 * value + (before[i - 1] ?? value) + (before[i + 1] ?? value)) / 4);
  }
  return now;
}

const steps = (most: number, step: number): number[] => {
  const each = Math.ceil(most / step);
  return Array.from({ length: 2 * each + 1 }, (_, k) => (k - each) * step);
};
const AROUND = [-1, 0, 1];

/** Noise that smoothing left of one value's, turned round: a bell of σ values keeps one part in 2 σ √π of its power. */
const SMOOTHED = 2 * Math.sqrt((SMOOTHINGS / 2) * Math.PI);

/** How curved the power is about its top at `h` to each side, as a standard uncertainty: its likelihood's, by the noise's power. */
function spreadOf(power: (by: number) => number, h: number, noise: number, columns: number): number {
  const curve = (power(h) + power(-h) - 2 * power(0)) / h ** 2;
  return curve < 0 ? GRAIN * Math.sqrt((2 * noise) / (-curve * columns)) : Infinity;
}

/** The lie along which the columns' mean has the most power left: it smears least. */
export function findLie(reading: StripReading): Lie {
  const half = Math.max(...reading.offsets.map(Math.abs));
  const n = reading.columns[0]?.length ?? 0;
  if (half < 2 || n < 8) return { shear: 0, fan: 0, fanSpread: Infinity, round: 0 };
  const slow = slowColumns(n, 3);
  const smoothed = reading.columns.map((column) => smooth(without(column, slow)));
  const flat = refined({ ...reading, columns: smoothed });
  // What a lie reads from beyond the strip's ends is made up: it is left out, for every lie alike.
  let margin = 0;
  const power = (lie: Slope & Partial<Bow>): number => {
    const mean = straighten(flat, lie).subarray(margin, n - margin);
    return dot(mean, mean);
  };
  const best = <T extends Slope>(candidates: readonly T[], start: T): T =>
    candidates.map((lie) => ({ lie, is: power(lie) })).reduce((a, b) => (b.is > a.is ? b : a), { lie: start, is: 0 }).lie; // prettier-ignore

  const halfLength = (n * reading.step) / 2;
  const shift = FIRST_SHIFT * reading.step;
  let shearStep = shift / half;
  let fanStep = shift / (half * halfLength);
  let lie: Slope = { shear: 0, fan: 0 };
  // In turns: the best shear without the fan may be far from the true one.
  for (let turn = 0; turn < 2; turn += 1) {
    lie = best(steps(STEEPEST, shearStep).map((shear) => ({ ...lie, shear })), lie); // prettier-ignore
    lie = best(steps(MOST_FAN / reading.side, fanStep).map((fan) => ({ ...lie, fan })), lie); // prettier-ignore
  }
  margin = Math.min(
    n >> 2,
    Math.ceil((half * (Math.abs(lie.shear) + Math.abs(lie.fan) * halfLength)) / reading.step) + 2,
  );
  for (let k = 0; k < HALVINGS; k += 1) {
    lie = best(AROUND.flatMap((a) => AROUND.map((b) => ({ shear: lie.shear + a * shearStep, fan: lie.fan + b * fanStep }))), lie); // prettier-ignore
    shearStep /= 2;
    fanStep /= 2;
  }
  // What each column has beside the mean is noise; the likelihood of a lie is then its power by that noise's.
  const all = smoothed.reduce(
    (sum, column) => sum + ((inner) => dot(inner, inner))(column.subarray(margin, n - margin)),
    0,
  );
  const noise = (SMOOTHED * Math.max(0, all / smoothed.length - power(lie))) / (n - 2 * margin);
  const spread = (of: (by: number) => Slope & Partial<Bow>, h: number) => spreadOf((by) => power(of(by)), h, noise, smoothed.length); // prettier-ignore
  const fanSpread = spread((by) => ({ ...lie, fan: lie.fan + by }), shift / (half * halfLength));
  let bowed: Bow = { ...lie, sag: 0, bow: 0 };
  let [sagStep, bowStep] = [shift / half ** 2, shift / (half ** 2 * halfLength)];
  for (let k = 0; k < HALVINGS; k += 1) {
    bowed = best(AROUND.flatMap((a) => AROUND.map((b) => ({ ...bowed, sag: bowed.sag + a * sagStep, bow: bowed.bow + b * bowStep }))), bowed); // prettier-ignore
    sagStep /= 1.5;
    bowStep /= 1.5;
  }
  const bowSpread = spread((by) => ({ ...bowed, bow: bowed.bow + by }), shift / (half ** 2 * halfLength));
  return {
    ...lie,
    fanSpread: Math.hypot(fanSpread, LEAST_SHIFT / (half * halfLength)),
    round: Math.abs(bowed.bow) / Math.hypot(bowSpread, LEAST_SHIFT / (half ** 2 * halfLength)),
  };
}
