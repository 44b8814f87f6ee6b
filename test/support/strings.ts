/**
 * A second, physical model of a plucked span, made by other means than the sum of decaying partials that the estimator was
 * tuned on (plucks.ts): a stiff string with losses, stepped by finite differences between two pulleys that give and lose.
 * u_tt = c² u_xx - κ² u_xxxx - 2 σ0 u_t + 2 σ1 u_txx, explicit scheme and stability limit of Bilbao, Numerical Sound Synthesis
 * (2009), chapter 7; tension that rises with the swing: Kirchhoff & Carrier (both from memory).
 */
import { random, RATE } from './plucks';

interface Span {
  /** Note of the span between rigid, lossless ends, Hz, and its stiffness B. */
  readonly note: number;
  readonly stiffness: number;
  /** Decay of every partial, and what comes on top with the square of the order, per second. */
  readonly loss: number;
  readonly innerLoss: number;
  /** Each pulley: how far it gives (share of the span), its mass (spans of belt) and its own loss (of its critical damping). */
  readonly ends: readonly { readonly give: number; readonly mass: number; readonly loss: number }[];
  /** Where it is plucked and how wide the finger is; where the microphone stands and how wide it hears: shares of the span. */
  readonly plucked: number;
  readonly finger: number;
  readonly microphone: number;
  readonly ear: number;
  /** The note's rise at the first swing, as a share. */
  readonly glide: number;
  /** A nail that leaves: where, from which share of the first swing on it touches, and after how many seconds it never does. */
  readonly nail?: { readonly at: number; readonly gap: number; readonly gone: number };
}

/** The model runs at half the rate of the sound: what a belt says lies below 4 kHz. */
export const STEP_RATE = RATE / 2;

/** Coefficients of one step and the number of pieces the span is cut into. */
function gridOf({ note, stiffness, loss, innerLoss, glide }: Span) {
  const k = 1 / STEP_RATE;
  const c = 2 * note * Math.sqrt(1 + 2 * glide);
  const kappa = (2 * note * Math.sqrt(stiffness)) / Math.PI;
  const sigma1 = innerLoss / Math.PI ** 2;
  const sum = (c * k) ** 2 + 4 * sigma1 * k;
  const least = Math.sqrt((sum + Math.sqrt(sum * sum + 16 * (kappa * k) ** 2)) / 2);
  const pieces = Math.max(8, Math.floor(1 / least));
  const h = 1 / pieces;
  return {
    pieces,
    k,
    h,
    lambda: ((2 * note * k) / h) ** 2,
    mu: ((kappa * k) / (h * h)) ** 2,
    sigma0: loss,
    nu: (2 * sigma1 * k) / (h * h),
  };
}

/** The span pulled aside: a triangle as blunt as the finger, height 1. */
function pulled(pieces: number, at: number, finger: number): Float64Array {
  const shape = (x: number): number => (x < at ? x / at : (1 - x) / (1 - at));
  const points = 9;
  return Float64Array.from({ length: pieces + 1 }, (_, i) => {
    let sum = 0;
    for (let j = 0; j < points; j += 1) {
      const x = i / pieces + finger * (j / (points - 1) - 0.5);
      sum += shape(Math.min(1, Math.max(0, x))) / points;
    }
    return sum;
  });
}

/** Force per step squared of a nail one is pressed against. */
function nailOf(span: Span, shape: Float64Array) {
  if (!span.nail) return undefined;
  const at = Math.round(span.nail.at * (shape.length - 1));
  return { at, gap: span.nail.gap * (shape[at] ?? 0), leaves: (shape[at] ?? 0) / (span.nail.gone * STEP_RATE) };
}

/** Mean square slope of the span: what stretches it. */
function slopeOf(u: Float64Array, h: number): number {
  let sum = 0;
  for (let i = 1; i < u.length; i += 1) sum += (u[i]! - u[i - 1]!) ** 2 / h;
  return sum;
}

/** One pulley's step: a mass on a spring with a loss, pulled by the belt. */
function endStep(end: Span['ends'][number], lambda: number, h: number, k: number) {
  // Belt: mass 1 per span, tension lambda (h/k)²; a mass no less than half a piece of belt keeps the step stable.
  const mass = Math.max(end.mass, 2 * h);
  const tension = lambda * (h / k) ** 2;
  const spring = tension / end.give;
  const stiff = Math.min((spring * k * k) / mass, 1.5);
  const damp = end.loss * Math.sqrt(stiff);
  const pull = (tension * k * k) / (h * mass);
  return (now: number, before: number, neighbour: number): number =>
    (2 * now - (1 - damp) * before - stiff * now + pull * (neighbour - now)) / (1 + damp);
}

/**
 * What a microphone near the span hears: the speed of the belt before it, `seconds` long at STEP_RATE from the moment the
 * finger lets go; not scaled.
 */
export function ringOf(span: Span, seconds: number): Float64Array {
  const { pieces, k, h, lambda, mu, sigma0, nu } = gridOf(span);
  const shape = pulled(pieces, span.plucked, span.finger);
  const nail = nailOf(span, shape);
  const first = slopeOf(shape, h);
  const weights = Float64Array.from({ length: pieces + 1 }, (_, i) =>
    Math.exp(-(((i / pieces - span.microphone) / span.ear) ** 2)),
  );
  const ends = span.ends.map((end) => endStep(end, lambda, h, k));
  const [left, right] = [ends[0]!, ends[1]!];
  let before: Float64Array = shape;
  let u: Float64Array = shape.slice();
  let next: Float64Array = new Float64Array(pieces + 1);
  const length = Math.round(seconds * STEP_RATE);
  const out = new Float64Array(length);
  const shrink = 1 / (1 + sigma0 * k);
  let pull = lambda;
  for (let t = 0; t < length; t += 1) {
    if (span.glide > 0 && t % 8 === 0) pull = lambda * (1 + (2 * span.glide * slopeOf(u, h)) / first);
    let heard = 0;
    next[0] = left(u[0]!, before[0]!, u[1]!);
    next[pieces] = right(u[pieces]!, before[pieces]!, u[pieces - 1]!);
    for (let i = 1; i < pieces; i += 1) {
      const here = u[i]!;
      const [a, b] = [u[i - 1]!, u[i + 1]!];
      // Hinged ends: the point beyond is the mirror image of the one before.
      const aa = i > 1 ? u[i - 2]! : 2 * u[0]! - u[1]!;
      const bb = i < pieces - 1 ? u[i + 2]! : 2 * u[pieces]! - u[pieces - 1]!;
      const bend = a + b - 2 * here;
      const bendBefore = before[i - 1]! + before[i + 1]! - 2 * before[i]!;
      const value =
        shrink *
        (2 * here -
          (1 - sigma0 * k) * before[i]! +
          pull * bend -
          mu * (aa + bb - 4 * (a + b) + 6 * here) +
          nu * (bend - bendBefore));
      next[i] = value;
      heard += weights[i]! * (value - here);
    }
    if (nail) {
      // Stiff and lossy: it throws the belt back with half of its speed.
      const over = u[nail.at]! - nail.gap - nail.leaves * t;
      if (over > 0) next[nail.at]! -= 0.25 * over + 0.3 * Math.max(0, u[nail.at]! - before[nail.at]!);
    }
    out[t] = heard;
    [before, u, next] = [u, next, before];
  }
  return out;
}

/**
 * Frequency of the line nearest to `near` in a noise-free sound, Hz: the phase it gains between two halves that overlap, each
 * under a four-term Blackman-Harris window (F. J. Harris, Proc. IEEE 66 (1978) 51, from memory).
 */
export function lineNear(sound: Float64Array, rate: number, near: number): number {
  const size = Math.floor(Math.min(sound.length * 0.75, rate * Math.max(0.4, 14 / near)));
  const shift = Math.min(sound.length - size, Math.floor(rate / (4 * near)) + Math.floor(0.1 * size));
  let at = near;
  for (let pass = 0; pass < 6; pass += 1) {
    const phase = (from: number): number => {
      let [re, im] = [0, 0];
      for (let t = 0; t < size; t += 1) {
        const x = (2 * Math.PI * (t + 0.5)) / size;
        const window = 0.35875 - 0.48829 * Math.cos(x) + 0.14128 * Math.cos(2 * x) - 0.01168 * Math.cos(3 * x);
        const w = (2 * Math.PI * at * (t + from)) / rate;
        re += window * sound[t + from]! * Math.cos(w);
        im -= window * sound[t + from]! * Math.sin(w);
      }
      return Math.atan2(im, re);
    };
    const gained = phase(shift) - phase(0);
    const wrapped = gained - 2 * Math.PI * Math.round(gained / (2 * Math.PI));
    at += (wrapped * rate) / (2 * Math.PI * shift);
  }
  return at;
}

export interface Struck {
  /** At STEP_RATE, from the moment the finger lets go. */
  readonly sound: Float64Array;
  /** First partial of the span at rest, Hz. */
  readonly frequency: number;
}

export type Manner = 'plain' | 'nail' | 'glide' | 'beats';

/** A belt of a machine at random: note from `low` to `high`, one or two belts, plucked in some manner. */
export function strike(low: number, high: number, manner: Manner, seed: number): Struck {
  const uniform = random(seed * 6151 + 29);
  const between = (a: number, b: number): number => a + (b - a) * uniform();
  const logBetween = (a: number, b: number): number => a * (b / a) ** uniform();
  const end = () => ({ give: logBetween(2e-4, 3e-3), mass: logBetween(0.2, 2), loss: logBetween(0.003, 0.05) });
  const plain: Span = {
    note: logBetween(low * 1.01, high),
    stiffness: logBetween(1e-4, 2e-3),
    loss: logBetween(2, 8),
    innerLoss: logBetween(0.02, 0.3),
    ends: [end(), end()],
    plucked: between(0.32, 0.5),
    finger: between(0.01, 0.06),
    microphone: between(0.35, 0.65),
    ear: between(0.04, 0.2),
    glide: 0,
  };
  const seconds = 1.4;
  const rest = ringOf(plain, seconds);
  const frequency = lineNear(rest, STEP_RATE, plain.note);
  if (manner === 'nail') {
    const nail = { at: between(0.3, 0.6), gap: between(0.2, 0.8), gone: between(0.1, 0.4) };
    return { sound: ringOf({ ...plain, nail }, seconds), frequency };
  }
  if (manner === 'glide') return { sound: ringOf({ ...plain, glide: logBetween(0.001, 0.015) }, seconds), frequency };
  if (manner === 'beats') {
    const other = ringOf({ ...plain, note: plain.note * (1 + between(-0.03, 0.03)) }, seconds);
    const share = 10 ** (-between(8, 20) / 20);
    return { sound: rest.map((x, t) => x + share * other[t]!), frequency };
  }
  return { sound: rest, frequency };
}
