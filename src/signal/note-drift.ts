import type { Line } from './note-lines';

/** Seconds over which a line's fall is followed, and the share of one of three windows. */
const WHOLE = 0.6;
const WINDOW = 0.43;

const windows = new Map<number, { readonly bell: Float64Array; readonly squares: number }>();

/** A bell (Hann) of so many samples, and the sum of its squares. */
function windowOf(size: number) {
  const made = windows.get(size);
  if (made) return made;
  const bell = Float64Array.from({ length: size }, (_, t) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (t + 0.5)) / size));
  const window = { bell, squares: bell.reduce((sum, x) => sum + x * x, 0) };
  windows.set(size, window);
  return window;
}

/** Phase and power of a line in one window, and the variance that noise of this power a sample gives the phase. */
export function phaseIn(samples: Float64Array, from: number, size: number, w: number, noise: number) {
  const { bell, squares } = windowOf(size);
  let re = 0;
  let im = 0;
  // Phasors turned, not computed anew: exact to 1e-12 over a second.
  const [turnRe, turnIm] = [Math.cos(w), -Math.sin(w)];
  let [lineRe, lineIm] = [Math.cos(w * from), -Math.sin(w * from)];
  for (let t = 0; t < size; t += 1) {
    const x = (bell[t] ?? 0) * (samples[from + t] ?? 0);
    re += x * lineRe;
    im += x * lineIm;
    const next = lineRe * turnRe - lineIm * turnIm;
    lineIm = lineRe * turnIm + lineIm * turnRe;
    lineRe = next;
  }
  return {
    phase: Math.atan2(im, re),
    power: re * re + im * im,
    variance: (noise * squares) / (2 * (re * re + im * im) + 1e-30),
  };
}

/** Adds a damped line, `times` over, to samples from the first on. */
export function addLine(samples: Float64Array, { a, w, re, im }: Line, times: number) {
  const shrink = Math.exp(-a);
  const [turnRe, turnIm] = [shrink * Math.cos(w), shrink * Math.sin(w)];
  let [nowRe, nowIm] = [2 * times * re, 2 * times * im];
  for (let t = 0; t < samples.length; t += 1) {
    samples[t] = (samples[t] ?? 0) + nowRe;
    const next = nowRe * turnRe - nowIm * turnIm;
    nowIm = nowRe * turnIm + nowIm * turnRe;
    nowRe = next;
  }
}

/** What lines leave of a sound. */
export function withoutLines(samples: Float64Array, lines: readonly Line[]): Float64Array {
  const left = samples.slice();
  for (const line of lines) addLine(left, line, -1);
  return left;
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
