import { shapeOf, subtractShape, turns, unitLine, type Bins, type Line } from './note-lines';

const MIN_DECAY = 1e-6;
const MAX_DECAY = 0.016;
/** How many times the power of before a standing line may have. */
const LOUDER = 2;
/** The farthest one step goes, in bins. */
const STRIDE = 0.7;

interface Complex {
  readonly re: number;
  readonly im: number;
}

/** Bins from … to-1 of an N-point transform. */
interface Span {
  readonly size: number;
  readonly from: number;
  readonly to: number;
}

/** The sums of one step: <a, b> is the sum of conj(a) b / noise; g the line at unit amplitude, h its derivative by μ, y the bins. */
interface Sums {
  readonly gg: number;
  readonly hh: number;
  readonly gh: Complex;
  readonly gy: Complex;
  readonly hy: Complex;
}

/** What one fit works with: the weights 1/noise, the line at unit amplitude, and its derivative by μ. */
interface Work {
  readonly weights: Float64Array;
  readonly g: Bins;
  readonly h: Bins;
}

const works = new Map<number, Work>();

/** Kept by length and overwritten by the next fit: making them anew takes a fifth of the time of a fit. */
function workOf(length: number): Work {
  const made = works.get(length);
  if (made) return made;
  const bins = (): Bins => ({ re: new Float64Array(length), im: new Float64Array(length) });
  const work = { weights: new Float64Array(length), g: bins(), h: bins() };
  works.set(length, work);
  return work;
}

/** Bins on each side that carry a line's information. */
function reach(a: number, size: number): number {
  return Math.min(18, 4 + Math.ceil(0.64 * a * size));
}

function spanOf(line: Line, size: number, bins: number): Span {
  const half = reach(line.a, size);
  const centre = Math.round((line.w * size) / (2 * Math.PI));
  return { size, from: Math.max(1, centre - half), to: Math.min(bins, centre + half + 1) };
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

/** What `line` is fitted to: the bins less the other lines (`beside` is dealt with apart) and less its own mirror image. */
function remainder(
  line: Line,
  others: readonly Line[],
  beside: Line | undefined,
  plain: Bins,
  { size, from, to }: Span,
  scratch: Bins,
): Bins {
  for (let k = from; k < to; k += 1) {
    scratch.re[k] = plain.re[k] ?? 0;
    scratch.im[k] = plain.im[k] ?? 0;
  }
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
  return { re: scratch.re.subarray(from, to), im: scratch.im.subarray(from, to) };
}

/** The line at unit amplitude, g = (1 - Q)/(1 - q), and its derivative by μ, h = (g q - N Q)/(1 - q), written into `g` and `h`. */
function writeModel(line: Line, { size, from, to }: Span, g: Bins, h: Bins) {
  const table = turns(size);
  const shrink = Math.exp(-line.a * size);
  const endRe = shrink * Math.cos(line.w * size);
  const endIm = shrink * Math.sin(line.w * size);
  const near = Math.exp(-line.a);
  const poleRe = near * Math.cos(line.w);
  const poleIm = near * Math.sin(line.w);
  const ure = 1 - endRe;
  const uim = -endIm;
  for (let k = from; k < to; k += 1) {
    const zre = table.re[k] ?? 0;
    const zim = table.im[k] ?? 0;
    const pre = poleRe * zre - poleIm * zim;
    const pim = poleRe * zim + poleIm * zre;
    const dre = 1 - pre;
    const scale = 1 / (dre * dre + pim * pim);
    const gre = (ure * dre - uim * pim) * scale;
    const gim = (ure * pim + uim * dre) * scale;
    const vre = gre * pre - gim * pim - size * endRe;
    const vim = gre * pim + gim * pre - size * endIm;
    g.re[k - from] = gre;
    g.im[k - from] = gim;
    h.re[k - from] = (vre * dre - vim * pim) * scale;
    h.im[k - from] = (vre * pim + vim * dre) * scale;
  }
}

/** The sum of conj(a) b / noise, from `start` on. */
function inner(a: Bins, b: Bins, weights: Float64Array, start = 0): Complex {
  let re = start;
  let im = 0;
  for (let k = 0; k < weights.length; k += 1) {
    const weight = weights[k] ?? 0;
    const are = a.re[k] ?? 0;
    const aim = a.im[k] ?? 0;
    const bre = b.re[k] ?? 0;
    const bim = b.im[k] ?? 0;
    re += weight * (are * bre + aim * bim);
    im += weight * (are * bim - aim * bre);
  }
  return { re, im };
}

/** All in one pass: the innermost of the whole estimate. */
function sumsOf(g: Bins, h: Bins, y: Bins, weights: Float64Array): Sums {
  let gg = 0,
    hh = 0,
    ghRe = 0,
    ghIm = 0,
    gyRe = 0,
    gyIm = 0,
    hyRe = 0,
    hyIm = 0;
  for (let k = 0; k < weights.length; k += 1) {
    const weight = weights[k] ?? 0;
    const gre = g.re[k] ?? 0;
    const gim = g.im[k] ?? 0;
    const hre = h.re[k] ?? 0;
    const him = h.im[k] ?? 0;
    const yre = y.re[k] ?? 0;
    const yim = y.im[k] ?? 0;
    gg += weight * (gre * gre + gim * gim);
    hh += weight * (hre * hre + him * him);
    ghRe += weight * (gre * hre + gim * him);
    ghIm += weight * (gre * him - gim * hre);
    gyRe += weight * (gre * yre + gim * yim);
    gyIm += weight * (gre * yim - gim * yre);
    hyRe += weight * (hre * yre + him * yim);
    hyIm += weight * (hre * yim - him * yre);
  }
  return {
    gg,
    hh,
    gh: { re: ghRe, im: ghIm },
    gy: { re: gyRe, im: gyIm },
    hy: { re: hyRe, im: hyIm },
  };
}

/** <a, b> less <a, u><u, b>/<u, u>. */
const without = (ab: Complex, ua: Complex, ub: Complex, uu: number): Complex => ({
  re: ab.re - (ua.re * ub.re + ua.im * ub.im) / uu,
  im: ab.im - (ua.re * ub.im - ua.im * ub.re) / uu,
});

/** The sums with the amplitude of a standing line (at unit amplitude `u`) integrated out: its phase unknown, its power `prior`. */
function integratedOut(sums: Sums, u: Bins, prior: number, g: Bins, h: Bins, y: Bins, weights: Float64Array): Sums {
  const uu = inner(u, u, weights, prior > 0 ? 1 / prior : 1).re;
  const ug = inner(u, g, weights);
  const uh = inner(u, h, weights);
  const uy = inner(u, y, weights);
  return {
    gg: sums.gg - (ug.re * ug.re + ug.im * ug.im) / uu,
    hh: sums.hh - (uh.re * uh.re + uh.im * uh.im) / uu,
    gh: without(sums.gh, ug, uh, uu),
    gy: without(sums.gy, ug, uy, uu),
    hy: without(sums.hy, uh, uy, uu),
  };
}

/** Sets the line's amplitude by projection, with its gain and variance. @returns its power, and the curve along μ */
function setAmplitude(line: Line, { gg, hh, gh, gy }: Sums) {
  line.re = gy.re / gg;
  line.im = gy.im / gg;
  let power = line.re * line.re + line.im * line.im;
  if (line.standing && power > LOUDER * line.prior && line.prior > 0) {
    const scale = Math.sqrt((LOUDER * line.prior) / power);
    line.re *= scale;
    line.im *= scale;
    power = LOUDER * line.prior;
  }
  const curve = hh - (gh.re * gh.re + gh.im * gh.im) / gg;
  line.gain = power * gg;
  line.variance = curve > 0 && power > 0 ? 0.5 / (power * curve) : Infinity;
  return { power, curve };
}

/** One step in μ against what the amplitude leaves of h: hy - conj(<g, h>) c. */
function step(line: Line, { gh, hy }: Sums, powerCurve: number, size: number) {
  const rre = hy.re - (gh.re * line.re + gh.im * line.im);
  const rim = hy.im - (gh.re * line.im - gh.im * line.re);
  const sre = (line.re * rre + line.im * rim) / powerCurve;
  const sim = (line.re * rim - line.im * rre) / powerCurve;
  const limit = STRIDE * ((2 * Math.PI) / size);
  line.w += Math.max(-limit, Math.min(limit, sim));
  if (!line.standing) {
    const a = line.a - Math.max(-limit, Math.min(limit, sre));
    line.a = Math.min(MAX_DECAY, Math.max(line.a / 3, MIN_DECAY, a));
  }
  line.w = Math.max(line.lowest, Math.min(line.highest, line.w));
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
  const span = spanOf(line, size, noise.length);
  const beside = line.standing ? undefined : standingBeside(line, others, size);
  const y = remainder(line, others, beside, plain, span, scratch);
  const u = beside && unitLine(beside, size, span.from, span.to);
  const { weights, g, h } = workOf(span.to - span.from);
  for (let k = span.from; k < span.to; k += 1) weights[k - span.from] = 1 / (noise[k] ?? 0);
  for (let round = 0; round <= rounds; round += 1) {
    writeModel(line, span, g, h);
    const raw = sumsOf(g, h, y, weights);
    const sums = beside && u ? integratedOut(raw, u, beside.prior, g, h, y, weights) : raw;
    const { power, curve } = setAmplitude(line, sums);
    if (round === rounds || !(curve > 0) || !(power > 0)) break;
    step(line, sums, power * curve, size);
  }
  line.shape = shapeOf(line, size, 0);
}
