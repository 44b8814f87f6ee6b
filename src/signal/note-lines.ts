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

const MIN_DECAY = 1e-6;
const MAX_DECAY = 0.016;
/** How many times the power of before a standing line may have. */
const LOUDER = 2;

const tables = new Map<number, Bins>();

/** exp(-2πj k/N), k = 0 … N/2. */
function turns(size: number): Bins {
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
interface Shape {
  n0: number;
  n1: number;
  d1: number;
  d2: number;
}

/** With u = c (1 - p^N), p = exp(μ): u/(1 - p z) and its mirror image add up to 2 (Re u - Re(u p*) z)/(1 - 2 Re p z + |p|² z²). */
function shapeOf(line: Line, size: number, extra: number): Shape {
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

function subtractShape(bins: Bins, { n0, n1, d1, d2 }: Shape, size: number, from: number, to: number) {
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

/** Bins on each side that carry a line's information. */
function reach(a: number, size: number): number {
  return Math.min(18, 4 + Math.ceil(0.64 * a * size));
}

/** The bins from … to-1 of a line of unit amplitude, without its mirror image. */
function unitLine(line: Line, size: number, from: number, to: number): Bins {
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

/** The standing line nearest to a damped one, where it lies among the bins of the fit. */
function standingBeside(line: Line, others: readonly Line[], size: number): Line | undefined {
  let best: Line | undefined;
  let least = ((5 + 0.3 * line.a * size) * 2 * Math.PI) / size;
  for (const other of others) {
    const off = Math.abs(other.w - line.w);
    if (other.standing && off < least) {
      least = off;
      best = other;
    }
  }
  return best;
}

/**
 * Fits one line to the bins around it, less all `others`, by Gauss-Newton on c and μ (both complex, the model analytic in
 * both), weights 1/noise. Changes `line` in place; `scratch` is overwritten. A standing line keeps its decay and is no louder
 * than before the pluck; where one lies among the bins of a damped line its amplitude is integrated out, its phase unknown
 * and its power that of before.
 */
export function fitLine(
  line: Line,
  others: readonly Line[],
  plain: Bins,
  noise: Float64Array,
  size: number,
  rounds: number,
  scratch: Bins,
) {
  const half = reach(line.a, size);
  const centre = Math.round((line.w * size) / (2 * Math.PI));
  const from = Math.max(1, centre - half);
  const to = Math.min(noise.length, centre + half + 1);
  for (let k = from; k < to; k += 1) {
    scratch.re[k] = plain.re[k] ?? 0;
    scratch.im[k] = plain.im[k] ?? 0;
  }
  const beside = line.standing ? undefined : standingBeside(line, others, size);
  for (const other of others) {
    if (other !== line && other !== beside && other.shape) subtractShape(scratch, other.shape, size, from, to);
  }
  if (line.gain > 0) {
    const mirror = unitLine({ ...line, w: -line.w }, size, from, to);
    for (let k = from; k < to; k += 1) {
      const mre = mirror.re[k - from] ?? 0;
      const mim = mirror.im[k - from] ?? 0;
      scratch.re[k] = (scratch.re[k] ?? 0) - (line.re * mre + line.im * mim);
      scratch.im[k] = (scratch.im[k] ?? 0) - (line.re * mim - line.im * mre);
    }
  }
  const bins = scratch;
  const stands = beside ? unitLine(beside, size, from, to) : scratch;
  const table = turns(size);
  const binWidth = (2 * Math.PI) / size;
  for (let round = 0; round <= rounds; round += 1) {
    const shrink = Math.exp(-line.a * size);
    let uu = beside && beside.prior > 0 ? 1 / beside.prior : 1;
    let ugre = 0,
      ugim = 0,
      uhre = 0,
      uhim = 0,
      uyre = 0,
      uyim = 0;
    const endRe = shrink * Math.cos(line.w * size);
    const endIm = shrink * Math.sin(line.w * size);
    const near = Math.exp(-line.a);
    const poleRe = near * Math.cos(line.w);
    const poleIm = near * Math.sin(line.w);
    let g11 = 0,
      g12re = 0,
      g12im = 0,
      g22 = 0,
      b1re = 0,
      b1im = 0,
      b2re = 0,
      b2im = 0;
    for (let k = from; k < to; k += 1) {
      const zre = table.re[k] ?? 0;
      const zim = table.im[k] ?? 0;
      const pre = poleRe * zre - poleIm * zim;
      const pim = poleRe * zim + poleIm * zre;
      const dre = 1 - pre;
      const scale = 1 / (dre * dre + pim * pim);
      // g = (1 - Q)/(1 - q)
      const ure = 1 - endRe;
      const uim = -endIm;
      const gre = (ure * dre - uim * pim) * scale;
      const gim = (ure * pim + uim * dre) * scale;
      // g' = (g q - N Q)/(1 - q)
      const vre = gre * pre - gim * pim - size * endRe;
      const vim = gre * pim + gim * pre - size * endIm;
      const hre = (vre * dre - vim * pim) * scale;
      const him = (vre * pim + vim * dre) * scale;
      const weight = 1 / (noise[k] ?? 0);
      const yre = bins.re[k] ?? 0;
      const yim = bins.im[k] ?? 0;
      g11 += weight * (gre * gre + gim * gim);
      g22 += weight * (hre * hre + him * him);
      g12re += weight * (gre * hre + gim * him);
      g12im += weight * (gre * him - gim * hre);
      b1re += weight * (gre * yre + gim * yim);
      b1im += weight * (gre * yim - gim * yre);
      b2re += weight * (hre * yre + him * yim);
      b2im += weight * (hre * yim - him * yre);
      if (beside) {
        const sre = stands.re[k - from] ?? 0;
        const sim = stands.im[k - from] ?? 0;
        uu += weight * (sre * sre + sim * sim);
        ugre += weight * (sre * gre + sim * gim);
        ugim += weight * (sre * gim - sim * gre);
        uhre += weight * (sre * hre + sim * him);
        uhim += weight * (sre * him - sim * hre);
        uyre += weight * (sre * yre + sim * yim);
        uyim += weight * (sre * yim - sim * yre);
      }
    }
    if (beside) {
      // <a, b> less <a, u><u, b>/<u, u>
      g11 -= (ugre * ugre + ugim * ugim) / uu;
      g22 -= (uhre * uhre + uhim * uhim) / uu;
      g12re -= (ugre * uhre + ugim * uhim) / uu;
      g12im -= (ugre * uhim - ugim * uhre) / uu;
      b1re -= (ugre * uyre + ugim * uyim) / uu;
      b1im -= (ugre * uyim - ugim * uyre) / uu;
      b2re -= (uhre * uyre + uhim * uyim) / uu;
      b2im -= (uhre * uyim - uhim * uyre) / uu;
    }
    // Amplitude by projection, then one step in μ against what it leaves.
    line.re = b1re / g11;
    line.im = b1im / g11;
    let power = line.re * line.re + line.im * line.im;
    if (line.standing && power > LOUDER * line.prior && line.prior > 0) {
      const scale = Math.sqrt((LOUDER * line.prior) / power);
      line.re *= scale;
      line.im *= scale;
      power = LOUDER * line.prior;
    }
    const curve = g22 - (g12re * g12re + g12im * g12im) / g11;
    line.gain = power * g11;
    line.variance = curve > 0 && power > 0 ? 0.5 / (power * curve) : Infinity;
    if (round === rounds || !(curve > 0) || !(power > 0)) break;
    // Remainder of h: r = b2 - conj(g12) c, where g12 = <g, h>.
    const rre = b2re - (g12re * line.re + g12im * line.im);
    const rim = b2im - (g12re * line.im - g12im * line.re);
    const sre = (line.re * rre + line.im * rim) / (power * curve);
    const sim = (line.re * rim - line.im * rre) / (power * curve);
    const limit = 0.7 * binWidth;
    line.w += Math.max(-limit, Math.min(limit, sim));
    if (!line.standing) {
      const a = line.a - Math.max(-limit, Math.min(limit, sre));
      line.a = Math.min(MAX_DECAY, Math.max(line.a / 3, MIN_DECAY, a));
    }
    line.w = Math.max(line.lowest, Math.min(line.highest, line.w));
  }
  line.shape = shapeOf(line, size, 0);
}
