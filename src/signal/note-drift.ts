import type { Line } from './note-lines';

/** Seconds over which a line's fall is followed, and the share of one of three windows. */
const WHOLE = 0.6;
const WINDOW = 0.43;
/** How many times the noise's own part a change of frequency must be to be one. */
const SURE = 1.5;

/** Phase and power of a line in one window, and the variance that noise of this power a sample gives the phase. */
function phaseIn(samples: Float64Array, from: number, size: number, w: number, noise: number) {
  let re = 0;
  let im = 0;
  let squares = 0;
  // Phasors turned, not computed anew: exact to 1e-12 over a second.
  const [turnRe, turnIm] = [Math.cos(w), -Math.sin(w)];
  const [stepRe, stepIm] = [Math.cos((2 * Math.PI) / size), Math.sin((2 * Math.PI) / size)];
  let [lineRe, lineIm] = [Math.cos(w * from), -Math.sin(w * from)];
  let [bellRe, bellIm] = [Math.cos(Math.PI / size), Math.sin(Math.PI / size)];
  for (let t = 0; t < size; t += 1) {
    const window = 0.5 - 0.5 * bellRe;
    const x = window * (samples[from + t] ?? 0);
    re += x * lineRe;
    im += x * lineIm;
    squares += window * window;
    [lineRe, lineIm] = [lineRe * turnRe - lineIm * turnIm, lineRe * turnIm + lineIm * turnRe];
    [bellRe, bellIm] = [bellRe * stepRe - bellIm * stepIm, bellRe * stepIm + bellIm * stepRe];
  }
  return {
    phase: Math.atan2(im, re),
    power: re * re + im * im,
    variance: (noise * squares) / (2 * (re * re + im * im) + 1e-30),
  };
}

const wrapped = (phase: number): number => phase - 2 * Math.PI * Math.round(phase / (2 * Math.PI));

/** Windows along which a line's phase is followed, their length in its own periods at least and in seconds at least. */
const STEPS = 6;
const PERIODS = 4;
const SHORT = 0.14;
/** What scatter of phases and what a belt has sunk to at the end are worth: seen on strings of seeds that no bench uses. */
const SCATTERS = 3.5;
const LATE = 2.5;

/**
 * How a line's phase runs over the windows, where it does not run evenly and noise alone would not do it: mean square of what a
 * straight line leaves, and how much faster it runs at the end than on the whole, per window. undefined where it runs evenly.
 */
function unevenness(phases: readonly { readonly phase: number; readonly variance: number }[]) {
  let [w, wx, wy, wxx, wxy] = [0, 0, 0, 0, 0];
  let last = phases[0]?.phase ?? 0;
  const points = phases.map(({ phase, variance }, x) => {
    last += wrapped(phase - last);
    return { x, y: last, weight: 1 / (variance + 1e-9) };
  });
  for (const { x, y, weight } of points) {
    w += weight;
    wx += weight * x;
    wy += weight * y;
    wxx += weight * x * x;
    wxy += weight * x * y;
  }
  const slope = (w * wxy - wx * wy) / (w * wxx - wx * wx);
  const start = (wy - slope * wx) / w;
  const squares = points.reduce((sum, { x, y, weight }) => sum + weight * (y - start - slope * x) ** 2, 0);
  const freedom = points.length - 2;
  if (squares <= SURE * freedom) return undefined;
  const [third, , end] = points.slice(-3);
  return { square: (squares - freedom) / w, faster: ((end?.y ?? 0) - (third?.y ?? 0)) / 2 };
}

/** Adds a damped line, `times` over, to samples from the first on. */
function addLine(samples: Float64Array, { a, w, re, im }: Line, times: number) {
  const shrink = Math.exp(-a);
  const [turnRe, turnIm] = [shrink * Math.cos(w), shrink * Math.sin(w)];
  let [nowRe, nowIm] = [2 * times * re, 2 * times * im];
  for (let t = 0; t < samples.length; t += 1) {
    samples[t] = (samples[t] ?? 0) + nowRe;
    [nowRe, nowIm] = [nowRe * turnRe - nowIm * turnIm, nowRe * turnIm + nowIm * turnRe];
  }
}

/** What lines leave of a sound. */
export function withoutLines(samples: Float64Array, lines: readonly Line[]): Float64Array {
  const left = samples.slice();
  for (const line of lines) addLine(left, line, -1);
  return left;
}

/**
 * How far a line's frequency moves while it rings, Hz, beyond what noise may make of it: a belt that sinks after a hard pluck,
 * another that beats with it, a room or a phone that works on the sound. Rings that are steady give 0.
 * @param left the sound from the stretch's beginning on, without its lines
 * @param noise power a sample, of white noise as strong as that about the line
 * @param note first partial, Hz
 */
export function driftOf(left: Float64Array, rate: number, line: Line, noise: number, note: number): number {
  const size = Math.round(Math.max(SHORT, PERIODS / note) * rate);
  const hop = size >> 1;
  const steps = Math.min(STEPS, Math.floor((left.length - size) / hop) + 1);
  if (steps < 4) return 0;
  const sound = left.slice(0, size + (steps - 1) * hop);
  addLine(sound, line, 1);
  const phases = Array.from({ length: steps }, (_, i) => phaseIn(sound, i * hop, size, line.w, noise));
  const uneven = unevenness(phases);
  if (!uneven) return 0;
  const perWindow = rate / (2 * Math.PI * hop);
  return perWindow * Math.max((SCATTERS * Math.sqrt(uneven.square)) / (steps - 1), LATE * Math.abs(uneven.faster));
}

/**
 * How fast lines die away at first and later on, per second: a pluck falls from its first moment on, and evenly; a tone that is
 * held does not fall, or falls when it ends.
 * @param frequencies of the lines, Hz
 */
export function fallOf(samples: Float64Array, rate: number, frequencies: readonly number[]) {
  // Of a short piece the windows are short.
  const whole = Math.min(samples.length, Math.round(WHOLE * rate));
  const size = Math.round(WINDOW * whole);
  const apart = Math.floor((whole - size) / 2);
  const [a = 0, b = 0, c = 0] = [0, 1, 2].map((i) =>
    frequencies.reduce((sum, f) => sum + phaseIn(samples, i * apart, size, (2 * Math.PI * f) / rate, 0).power, 1e-30),
  );
  const perSecond = (from: number, to: number): number => (0.5 * Math.log(from / to) * rate) / apart;
  return { first: perSecond(a, b), later: perSecond(b, c) };
}
