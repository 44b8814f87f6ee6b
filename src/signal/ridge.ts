import { hann, powerOfTwo } from './ridge-noise';
import { fitWaves, SLOW, type Fitted } from './ridge-model';
import { sortOut, tied, type Candidate, type Layers } from './ridge-roles';
import { halfWidth95, inPicture, measure, planeOf } from './ridge-scale';
import { findWaves, straightened } from './ridge-search';
import { slowColumns, without } from './ridge-solve';
import type { StripReading } from './ridge-strip';
import { findLie, refined, straighten, type Lie } from './ridge-tilt';
import type {
  DrawnProfile, DrawnSpectrum, RidgeFinding, RidgeLine, RidgeOptions, RidgeRefusal, Scale,
} from './ridge-types'; // prettier-ignore
import { spectrumOf } from './spectrum';

export type * from './ridge-types';
export { readStrip, type StripReading } from './ridge-strip';

/** Fewer ridges than this in the strip are not told from shading. */
const LEAST_RIDGES = 3;
/** px: fewer along the strip hold no ridges. */
const LEAST_LENGTH = 32;
/** px: a ridge narrower than this is not seen as it is. */
const LEAST_PIXELS = 3;
/** Share of the strip that may be as bright, or as dark, as a picture can be. */
const MOST_CLIPPED = 0.2;
/** A camera off square by 5°, before anything is seen, and a lens whose reach is 0.7 of the picture's longer side. */
const BEND_SPREAD = Math.tan((5 * Math.PI) / 180) / 0.7;
/** Beyond this layers leave nothing in the picture, not even as a false pattern. */
const FINEST_SEEN = 1.6;

function drawnProfile(values: Float64Array, step: number, bend: number, metres: number): DrawnProfile {
  return { step: step * metres, values: straightened(without(values, slowColumns(values.length, SLOW)), step, bend) };
}

/**
 * Amplitude spectrum of a profile: Hann's window, zeros to at least twice the length, scaled so that a sine of amplitude A
 * peaks at A.
 * @returns amplitude at k times step cycles per metre, in the profile's own unit
 */
function drawnSpectrum({ step, values }: DrawnProfile): DrawnSpectrum {
  const size = powerOfTwo(2 * values.length);
  const window = hann(values.length);
  const total = window.reduce((sum, w) => sum + w, 0);
  const {
    re,
    im,
    step: perBin,
  } = spectrumOf(
    values.map((value, i) => value * (window[i] ?? 0)),
    size,
    1 / step,
  );
  return { step: perBin, amplitude: re.map((value, k) => (2 * Math.hypot(value, im[k] ?? 0)) / total) };
}

const cell = (fitted: Fitted, r: number, c: number) => fitted.covariance.cells[r * fitted.covariance.size + c] ?? 0;

function candidatesOf(fitted: Fitted, overNoise: readonly number[]): Candidate[] {
  return fitted.model.frequencies.map((frequency, i) => ({
    frequency,
    u: Math.sqrt(cell(fitted, i, i)),
    amplitude: Math.hypot(fitted.amplitudes[i]?.cos ?? 0, fitted.amplitudes[i]?.sin ?? 0),
    overNoise: overNoise[i] ?? 0,
  }));
}

/** Where each ridge's first harmonic is brightest, drawn across the strip. */
function crestsOf(reading: StripReading, lie: Lie, fitted: Fitted, first: number) {
  const { model, amplitudes } = fitted;
  const frequency = model.frequencies[0] ?? 1;
  const start = Math.atan2(amplitudes[first]?.sin ?? 0, amplitudes[first]?.cos ?? 0) / (2 * Math.PI);
  const half = Math.hypot(reading.to.x - reading.from.x, reading.to.y - reading.from.y) / 2;
  const beside = Math.max(...reading.offsets.map(Math.abs));
  const placeOf = (n: number) => {
    const X = (n + start) / frequency;
    return X / (1 - model.bend * X);
  };
  const firstOne = Math.ceil((frequency * -half) / (1 - model.bend * half) - start);
  const lastOne = Math.floor((frequency * half) / (1 + model.bend * half) - start);
  return Array.from({ length: Math.max(0, lastOne - firstOne + 1) }, (_, k) => {
    const u = placeOf(firstOne + k);
    const slope = lie.shear + lie.fan * u;
    return {
      from: inPicture(reading, u - beside * slope, -beside),
      to: inPicture(reading, u + beside * slope, beside),
    };
  });
}

/**
 * The period of the ridges in a strip of a picture, square to them, with its uncertainty.
 *
 * The tilt and fan of the ridges are taken out first; then waves, slow shading (a cubic) and the perspective along the
 * strip (a projective map, exact for a flat wall) are fitted together, so that the marks may stand anywhere along it.
 * Not counted: a lens that bends straight lines, and a wall that is not flat.
 *
 * @param reading from readStrip; undefined as that gives it
 * @returns the finding, or the reason why there is none; never a guess
 */
export function findRidges(reading: StripReading | undefined, scale: Scale, options: RidgeOptions): RidgeFinding {
  const refuse = (reason: RidgeRefusal, lines: readonly RidgeLine[] = [], profile?: DrawnProfile): RidgeFinding => ({
    status: 'refused',
    reason,
    lines,
    ...(profile ? { profile, spectrum: drawnSpectrum(profile) } : {}),
  });
  const { step = 1 } = reading ?? {};
  const length = (reading?.columns[0]?.length ?? 0) * step;
  if (!reading || length < LEAST_LENGTH) return refuse('too short');
  const lie = findLie(reading);
  const values = straighten(refined(reading), lie);
  const bendSpread = BEND_SPREAD / reading.side;
  const sideSpread = Math.min(bendSpread, lie.fanSpread);
  const flat = measure(reading, scale, planeOf(lie, 0), sideSpread);
  if (!flat) return refuse('no scale');
  const plain = drawnProfile(values, step, 0, flat.metres);
  if (reading.bright > MOST_CLIPPED) return refuse('overexposed', [], plain);
  if (reading.dark > MOST_CLIPPED) return refuse('too dark', [], plain);

  const cosine = 1 / Math.hypot(1, lie.shear);
  const found = findWaves(values, { step, bendSpread });
  const layersFor = (metres: number, share: number): Layers | undefined =>
    options.layer === undefined
      ? undefined
      : { frequency: (metres * cosine) / options.layer, tolerance: Math.max(0.02, 3 * share) };
  const nothing = (metres: number): RidgeRefusal =>
    (layersFor(metres, 0)?.frequency ?? 0) > 1 / (LEAST_PIXELS * step) ? 'too coarse' : 'nothing regular';
  if (!found) return refuse(nothing(flat.metres), [], plain);

  const loose = measure(reading, scale, planeOf(lie, found.fitted.model.bend), sideSpread) ?? flat;
  const profile = drawnProfile(values, step, found.fitted.model.bend, loose.metres);
  const candidates = candidatesOf(found.fitted, found.overNoise);
  const layers = layersFor(loose.metres, Math.hypot(loose.marks, loose.distance));
  const sorted = sortOut(candidates, layers, length);
  const strongest = Math.max(...candidates.map((one) => one.amplitude));
  const linesWith = (frequencyOf: (i: number) => number, metres: number): RidgeLine[] =>
    candidates
      .map((one, i) => ({
        frequency: frequencyOf(i),
        period: (metres * cosine) / frequencyOf(i),
        strength: one.amplitude / strongest,
        overNoise: one.overNoise,
        role: sorted.roles[i] ?? 'other',
      }))
      .sort((a, b) => b.strength - a.strength);
  const first = sorted.ridges;
  const lines = linesWith((i) => candidates[i]?.frequency ?? 0, loose.metres);
  if (first === undefined)
    return refuse(layers && sorted.roles.includes('layers') ? 'only layers' : nothing(loose.metres), lines, profile);
  const fundamental = candidates[first]?.frequency ?? 0;
  if (fundamental * length < LEAST_RIDGES) return refuse('too few ridges', lines, profile);
  if (fundamental * LEAST_PIXELS * step > 1 || (layers && isFalsePattern(fundamental, layers)))
    return refuse('too coarse', lines, profile);

  const fitted = fitWaves(values, tied(found.fitted, sorted), { step, bendSpread, noise: found.noise });
  if (!fitted) return refuse('nothing regular', lines, profile);
  const { model } = fitted;
  const measured = measure(reading, scale, planeOf(lie, model.bend), sideSpread);
  if (!measured) return refuse('no scale', lines, profile);
  const frequency = model.frequencies[0] ?? 0;
  const bend = model.frequencies.length;
  const fit = Math.sqrt(
    cell(fitted, 0, 0) / frequency ** 2 -
      (2 * measured.byBend * cell(fitted, 0, bend)) / frequency +
      measured.byBend ** 2 * cell(fitted, bend, bend),
  );
  const period = (measured.metres * cosine) / frequency;
  const final = drawnProfile(values, step, model.bend, measured.metres);
  return {
    status: 'found',
    period,
    halfWidth: period * halfWidth95(Math.hypot(fit, measured.marks), measured.distance),
    shares: { fit, marks: measured.marks, distance: measured.distance / Math.sqrt(3) },
    ridges: (frequency * length) / (1 - (model.bend * length) ** 2 / 4),
    crests: crestsOf(reading, lie, fitted, first),
    tilt: Math.atan(lie.shear),
    lines: linesWith(
      (i) => (model.frequencies[model.waves[i]?.family ?? 0] ?? 0) * (model.waves[i]?.multiple ?? 1),
      measured.metres,
    ),
    profile: final,
    spectrum: drawnSpectrum(final),
  };
}

/** Whether a wave may be the beat of too fine layers with the pixels. */
function isFalsePattern(frequency: number, layers: Layers): boolean {
  if (layers.frequency < 0.5 || layers.frequency > FINEST_SEEN) return false;
  const beat = Math.abs(layers.frequency - Math.round(layers.frequency));
  return Math.abs(frequency - beat) < layers.frequency * layers.tolerance;
}
