import { hann, powerOfTwo } from './ridge-noise';
import { lineOverWaves } from './ridge-line';
import { fitWaves, lensMoves, SLOW, type Fitted, type Model } from './ridge-model';
import { sortOut, tied, type Candidate, type Layers } from './ridge-roles';
import { halfWidth95, inPicture, inStrip, measure, type Measured } from './ridge-scale';
import { findWaves, straightened, type Bent } from './ridge-search';
import { slowColumns, without } from './ridge-solve';
import type { StripReading } from './ridge-strip';
import { findLie, refined, straighten, type Lie } from './ridge-tilt';
import type {
  DrawnProfile,
  DrawnSpectrum,
  Point,
  RidgeFinding,
  RidgeLine,
  RidgeOptions,
  RidgeRefusal,
  Scale,
} from './ridge-types';
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
/** A lens's radial term, before anything is seen, over the square of that reach: a wide one has 0.1 (common practice). */
const LENS_SPREAD = 0.08 / 0.7 ** 2;
/** rad: further off square than this the interval no longer holds (bench of the eye): the camera is asked to stand squarer. */
const MOST_OFF = (18 * Math.PI) / 180;
/** F of the ridges' line over slow waves without a period, which reach this twice in ten thousand. */
const LEAST_LINE = 30;
/** Standard uncertainties by which ridges bow that are taken for those of a round wall. */
const MOST_ROUND = 3;
/** m: where the layer height is not known, what repeats nearer than this may be the layers themselves (common practice). */
const THICKEST_LAYER = 3.5e-3;
/** Beyond this layers leave nothing in the picture, not even as a false pattern. */
const FINEST_SEEN = 1.6;

function drawnProfile(values: Float64Array, step: number, bent: Bent, metres: number): DrawnProfile {
  return { step: step * metres, values: straightened(without(values, slowColumns(values.length, SLOW)), step, bent) };
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

/** px, along the strip. */
const lengthOf = (reading: StripReading): number => (reading.columns[0]?.length ?? 0) * reading.step;

/** The picture's middle in the strip's directions. */
const centreOf = (reading: StripReading): Point => (({ u, v }) => ({ x: u, y: v }))(inStrip(reading, reading.centre));

/** How many ridges on from the strip's middle a place of the strip is. */
const turnsAt =
  ({ frequencies: [frequency = 1], bend, lens }: Model, centre: Point) =>
  (u: number): number => {
    const U = u + lens * lensMoves(u, centre);
    return (frequency * U) / (1 + bend * U);
  };

/** Where each ridge's first harmonic is brightest, drawn across the strip. */
function crestsOf(reading: StripReading, lie: Lie, fitted: Fitted, first: number) {
  const { model, amplitudes } = fitted;
  const frequency = model.frequencies[0] ?? 1;
  const start = Math.atan2(amplitudes[first]?.sin ?? 0, amplitudes[first]?.cos ?? 0) / (2 * Math.PI);
  const half = Math.hypot(reading.to.x - reading.from.x, reading.to.y - reading.from.y) / 2;
  const beside = Math.max(...reading.offsets.map(Math.abs));
  const centre = centreOf(reading);
  const turns = turnsAt(model, centre);
  const placeOf = (n: number) => {
    const X = (n + start) / frequency;
    const U = X / (1 - model.bend * X);
    return U - model.lens * lensMoves(U, centre);
  };
  const firstOne = Math.ceil(turns(-half) - start);
  const lastOne = Math.floor(turns(half) - start);
  return Array.from({ length: Math.max(0, lastOne - firstOne + 1) }, (_, k) => {
    const u = placeOf(firstOne + k);
    const slope = lie.shear + lie.fan * u;
    return {
      from: inPicture(reading, u - beside * slope, -beside),
      to: inPicture(reading, u + beside * slope, beside),
    };
  });
}

/** A strip as it is looked at: straightened, with what its place and lie say of the wall. */
function sightOf(reading: StripReading, scale: Scale) {
  const lie = findLie(reading);
  const bendSpread = BEND_SPREAD / reading.side;
  const sideSpread = Math.min(bendSpread, lie.fanSpread);
  return {
    lie,
    known: { step: reading.step, bendSpread, lensSpread: LENS_SPREAD / reading.side ** 2, centre: centreOf(reading) },
    step: reading.step,
    values: straighten(refined(reading), lie),
    /** Metres per pixel and how sure they are, where the strip is bent so; undefined where the marks do not tell. */
    measured: ({ bend, lens }: Pick<Model, 'bend' | 'lens'>) =>
      measure(reading, scale, { ...lie, bend, lens }, sideSpread),
  };
}

type Sight = ReturnType<typeof sightOf>;

const layersAt = ({ layer }: RidgeOptions, across: number, share: number): Layers | undefined =>
  layer === undefined ? undefined : { frequency: across / layer, tolerance: Math.max(0.02, 3 * share) };

/** Why no wave is seen: layers finer than the pixels tell, or none there. */
const nothingAt = (sight: Sight, options: RidgeOptions, across: number): RidgeRefusal =>
  (layersAt(options, across, 0)?.frequency ?? 0) > 1 / (LEAST_PIXELS * sight.step) ? 'too coarse' : 'nothing regular';

/** Strongest first. `along`: metres per pixel, square to the ridges. */
function linesOf(
  candidates: readonly Candidate[],
  roles: readonly RidgeLine['role'][],
  frequencyOf: (i: number) => number,
  along: number,
): RidgeLine[] {
  const strongest = Math.max(...candidates.map((one) => one.amplitude));
  return candidates
    .map((one, i) => ({
      frequency: frequencyOf(i),
      period: along / frequencyOf(i),
      strength: one.amplitude / strongest,
      overNoise: one.overNoise,
      role: roles[i] ?? 'other',
    }))
    .sort((a, b) => b.strength - a.strength);
}

/** The period from the last fit, with its interval, and what there is to draw. */
function foundIn(reading: StripReading, sight: Sight, fitted: Fitted, measured: Measured) {
  const { model } = fitted;
  const length = lengthOf(reading);
  const frequency = model.frequencies[0] ?? 0;
  // By how much the period changes, as a share, with the frequency, the bend and the lens's term.
  const by = [
    [0, -1 / frequency],
    [model.frequencies.length, measured.byBend],
    [model.frequencies.length + 1, measured.byLens],
  ] as const;
  const variance = by.reduce(
    (sum, [r, a]) => sum + by.reduce((part, [c, b]) => part + a * b * cell(fitted, r, c), 0),
    0,
  );
  const fit = Math.sqrt(Math.max(0, variance));
  const period = measured.across / frequency;
  const turns = turnsAt(model, sight.known.centre);
  const profile = drawnProfile(sight.values, sight.step, { ...model, centre: sight.known.centre }, measured.metres);
  return {
    status: 'found',
    period,
    halfWidth: period * halfWidth95(Math.hypot(fit, measured.marks), measured.distance),
    shares: { fit, marks: measured.marks, distance: measured.distance / Math.sqrt(3) },
    ridges: turns(length / 2) - turns(-length / 2),
    tilt: Math.atan(sight.lie.shear),
    profile,
    spectrum: drawnSpectrum(profile),
  } as const;
}

function refuse(reason: RidgeRefusal, lines: readonly RidgeLine[] = [], profile?: DrawnProfile): RidgeFinding {
  const drawn = profile ? { profile, spectrum: drawnSpectrum(profile) } : {};
  return { status: 'refused', reason, lines, ...drawn };
}

/**
 * The period of the ridges in a strip of a picture, square to them, with its uncertainty.
 *
 * The tilt and fan of the ridges are taken out first; then waves, slow shading (a cubic) and the perspective along the
 * strip (a projective map, exact for a flat wall) are fitted together with the lens's first radial term, so that the marks
 * may stand anywhere along it. Not counted: a wall that is not flat along the strip, and marks that stand out of its plane.
 *
 * @param reading from readStrip; undefined as that gives it
 * @returns the finding, or the reason why there is none; never a guess
 */
export function findRidges(reading: StripReading | undefined, scale: Scale, options: RidgeOptions): RidgeFinding {
  if (!reading || lengthOf(reading) < LEAST_LENGTH) return refuse('too short');
  const sight = sightOf(reading, scale);
  const { step, values, known } = sight;
  const flat = sight.measured({ bend: 0, lens: 0 });
  if (!flat) return refuse('no scale');
  const plain = drawnProfile(values, step, { bend: 0, lens: 0, centre: known.centre }, flat.metres);
  if (reading.bright > MOST_CLIPPED) return refuse('overexposed', [], plain);
  if (reading.dark > MOST_CLIPPED) return refuse('too dark', [], plain);
  const found = findWaves(values, known);
  if (!found) return refuse(nothingAt(sight, options, flat.across), [], plain);

  const loose = sight.measured(found.fitted.model) ?? flat;
  const profile = drawnProfile(values, step, { ...found.fitted.model, centre: known.centre }, loose.metres);
  const candidates = candidatesOf(found.fitted, found.overNoise);
  const layers = layersAt(options, loose.across, Math.hypot(loose.marks, loose.distance));
  const sorted = sortOut(candidates, layers, lengthOf(reading));
  const seen = (i: number) => candidates[i]?.frequency ?? 0;
  const lines = linesOf(candidates, sorted.roles, seen, loose.across);
  const no = (reason: RidgeRefusal) => refuse(reason, lines, profile);
  const first = sorted.ridges;
  if (first === undefined)
    return no(layers && sorted.roles.includes('layers') ? 'only layers' : nothingAt(sight, options, loose.across));
  if (seen(first) * lengthOf(reading) < LEAST_RIDGES) return no('too few ridges');
  if (seen(first) * LEAST_PIXELS * step > 1 || (layers && isFalsePattern(seen(first), layers))) return no('too coarse');

  const fitted = fitWaves(values, tied(found.fitted, sorted), { ...known, noise: found.noise });
  if (!fitted) return no('nothing regular');
  const { model } = fitted;
  const measured = sight.measured(model);
  if (!measured) return no('no scale');
  if (lineOverWaves(values, step, known.centre, fitted, sorted.roles) < LEAST_LINE) return no('no period');
  if (sight.lie.round > MOST_ROUND) return no('round');
  if (measured.off > MOST_OFF) return no('angle');
  if (!layers && measured.across / (model.frequencies[0] ?? 1) < THICKEST_LAYER) return no('layers unknown');
  const settled = (i: number) =>
    (model.frequencies[model.waves[i]?.family ?? 0] ?? 0) * (model.waves[i]?.multiple ?? 1);
  return {
    ...foundIn(reading, sight, fitted, measured),
    crests: crestsOf(reading, sight.lie, fitted, first),
    lines: linesOf(candidates, sorted.roles, settled, measured.across),
  };
}

/** Whether a wave may be the beat of too fine layers with the pixels. */
function isFalsePattern(frequency: number, layers: Layers): boolean {
  if (layers.frequency < 0.5 || layers.frequency > FINEST_SEEN) return false;
  const beat = Math.abs(layers.frequency - Math.round(layers.frequency));
  return Math.abs(frequency - beat) < layers.frequency * layers.tolerance;
}
