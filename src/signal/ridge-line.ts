import { lensMoves, SLOW, type Fitted } from './ridge-model';
import { slowColumns, without } from './ridge-solve';
import type { LineRole, Point } from './ridge-types';

/** Tapers that a line is told from slow waves by: they gather three cycles over the strip to each side of it. */
const TAPERS = 5;

/** The profile over its own slow light, without the waves that stand where nobody would look for this one's neighbours. */
function alone(values: Float64Array, turns: (f: number) => Float64Array, fitted: Fitted, roles: readonly LineRole[]) {
  const { model, amplitudes } = fitted;
  const flat = without(values, slowColumns(values.length, SLOW));
  const rest = Float64Array.from(flat);
  model.waves.forEach((wave, w) => {
    if (roles[w] === 'other' || roles[w] === 'ridges') return;
    const phase = turns((model.frequencies[wave.family] ?? 0) * wave.multiple);
    const { cos, sin } = amplitudes[w] ?? { cos: 0, sin: 0 };
    for (let i = 0; i < rest.length; i += 1) {
      rest[i] = (rest[i] ?? 0) - cos * Math.cos(phase[i] ?? 0) - sin * Math.sin(phase[i] ?? 0);
    }
  });
  return rest.map((value, i) => value / Math.max(1, (values[i] ?? 0) - (flat[i] ?? 0)));
}

/**
 * How much more a wave is a line than a hill of slow waves without a period: Thomson's harmonic F-test (Proc. IEEE 70 (1982)
 * 1055, from memory) with the sine tapers of Riedel and Sidorenko (1995, from memory).
 * @param phase rad, of the wave at each value
 * @returns F, with 2 and 8 degrees of freedom where the spectrum there is smooth: over 18 once in a thousand
 */
export function lineF(profile: Float64Array, phase: Float64Array): number {
  const n = profile.length;
  const tapered = Array.from({ length: TAPERS }, (_, k) => {
    let [re, im, weight] = [0, 0, 0];
    for (let i = 0; i < n; i += 1) {
      const taper = Math.sin((Math.PI * (k + 1) * (i + 1)) / (n + 1));
      re += taper * (profile[i] ?? 0) * Math.cos(phase[i] ?? 0);
      im += taper * (profile[i] ?? 0) * Math.sin(phase[i] ?? 0);
      weight += taper;
    }
    return { re, im, weight };
  });
  const weights = tapered.reduce((sum, { weight }) => sum + weight ** 2, 0);
  const line = {
    re: tapered.reduce((sum, { re, weight }) => sum + re * weight, 0) / weights,
    im: tapered.reduce((sum, { im, weight }) => sum + im * weight, 0) / weights,
  };
  const beside = tapered.reduce(
    (sum, { re, im, weight }) => sum + (re - line.re * weight) ** 2 + (im - line.im * weight) ** 2,
    0,
  );
  return ((TAPERS - 1) * (line.re ** 2 + line.im ** 2) * weights) / Math.max(beside, 1e-30);
}

/**
 * How much more the ridges' wave is a line than slow waves without a period, as lineF.
 * @param fitted the last fit; its family 0 is the ridges'
 * @param step px from one value to the next
 * @param centre the picture's, in the strip's directions
 */
export function lineOverWaves(
  values: Float64Array,
  step: number,
  centre: Point,
  fitted: Fitted,
  roles: readonly LineRole[],
): number {
  const n = values.length;
  const { bend, lens, frequencies } = fitted.model;
  const turns = (f: number) =>
    Float64Array.from({ length: n }, (_, i) => {
      const u = (i - (n - 1) / 2) * step;
      const U = u + lens * lensMoves(u, centre);
      return (2 * Math.PI * f * U) / (1 + bend * U);
    });
  return lineF(alone(values, turns, fitted, roles), turns(frequencies[0] ?? 0));
}
