/**
 * Damped lines in a discrete spectrum. Samples t = 0 … N-1 hold the sum of Re(2 c exp(μ t)), μ = -a + j w per sample; bin k
 * of their N-point transform holds c (1 - q^N)/(1 - q) with q = exp(μ - 2πj k/N), and a like term for the mirrored line.
 */
export interface Line {
  /** Decay and angular frequency per sample. */
  a: number;
  w: number;
  /** Complex amplitude: half the real one. */
  re: number;
  im: number;
  /** Variance of w (and of a) per sample squared, from the weighted fit. */
  variance: number;
  /** Energy over noise: how far the fit lowers the weighted squares. */
  gain: number;
  /** Stood before the pluck, undamped; `prior` is its power |c|² then. */
  readonly standing: boolean;
  readonly prior: number;
  /** As last fitted; none before the first fit. */
  shape?: Shape;
  /** Bounds of w. */
  readonly lowest: number;
  readonly highest: number;
}

export interface Bins {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

const tables = new Map<number, Bins>();

/** exp(-2πj k/N), k = 0 … N/2. */
export function turns(size: number): Bins {
  const made = tables.get(size);
  if (made) return made;
  const table = { re: new Float64Array(size / 2 + 1), im: new Float64Array(size / 2 + 1) };
  for (let k = 0; k <= size / 2; k += 1) {
    table.re[k] = Math.cos((2 * Math.PI * k) / size);
    table.im[k] = -Math.sin((2 * Math.PI * k) / size);
  }
  tables.set(size, table);
  return table;
}

/** A line with its mirror image in the z-plane: 2 (n0 + n1 z)/(1 + d1 z + d2 z²), z = exp(-2πj k/N). */
export interface Shape {
  n0: number;
  n1: number;
  d1: number;
  d2: number;
}

/** With u = c (1 - p^N), p = exp(μ): u/(1 - p z) and its mirror image add up to 2 (Re u - Re(u p*) z)/(1 - 2 Re p z + |p|² z²). */
export function shapeOf(line: Line, size: number, extra: number): Shape {
  const a = line.a + extra;
  const shrink = Math.exp(-a * size);
  const qre = 1 - shrink * Math.cos(line.w * size);
  const qim = -shrink * Math.sin(line.w * size);
  const ure = line.re * qre - line.im * qim;
  const uim = line.re * qim + line.im * qre;
  const near = Math.exp(-a);
  const pre = near * Math.cos(line.w);
  const pim = near * Math.sin(line.w);
  return { n0: 2 * ure, n1: -2 * (ure * pre + uim * pim), d1: -2 * pre, d2: near * near };
}

/** Takes a line's shape out of bins from … to-1. */
export function subtractShape(bins: Bins, { n0, n1, d1, d2 }: Shape, size: number, from: number, to: number) {
  const { re: cosines, im: sines } = turns(size);
  for (let k = from; k < to; k += 1) {
    const zre = cosines[k] ?? 0;
    const zim = sines[k] ?? 0;
    // z² = (2 zre² - 1) + 2j zre zim
    const dre = 1 + d1 * zre + d2 * (2 * zre * zre - 1);
    const dim = (d1 + 2 * d2 * zre) * zim;
    const nre = n0 + n1 * zre;
    const nim = n1 * zim;
    const scale = 1 / (dre * dre + dim * dim);
    bins.re[k] = (bins.re[k] ?? 0) - (nre * dre + nim * dim) * scale;
    bins.im[k] = (bins.im[k] ?? 0) - (nim * dre - nre * dim) * scale;
  }
}

/** Takes a line with its mirror image out of bins from … to-1 of an N-point transform, damped further by `extra`. */
export function subtractLine(bins: Bins, line: Line, size: number, extra: number, from: number, to: number) {
  subtractShape(bins, shapeOf(line, size, extra), size, from, to);
}

/** The bins from … to-1 of a line of unit amplitude, without its mirror image. */
export function unitLine(line: Line, size: number, from: number, to: number): Bins {
  const out = { re: new Float64Array(to - from), im: new Float64Array(to - from) };
  const { re: cosines, im: sines } = turns(size);
  const shrink = Math.exp(-line.a * size);
  const ure = 1 - shrink * Math.cos(line.w * size);
  const uim = -shrink * Math.sin(line.w * size);
  const near = Math.exp(-line.a);
  const pre = near * Math.cos(line.w);
  const pim = near * Math.sin(line.w);
  for (let k = from; k < to; k += 1) {
    const zre = cosines[k] ?? 0;
    const zim = sines[k] ?? 0;
    const dre = 1 - (pre * zre - pim * zim);
    const dim = -(pre * zim + pim * zre);
    const scale = 1 / (dre * dre + dim * dim);
    out.re[k - from] = (ure * dre + uim * dim) * scale;
    out.im[k - from] = (uim * dre - ure * dim) * scale;
  }
  return out;
}
