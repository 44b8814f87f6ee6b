import { lineF } from './ridge-line';
import { halfWidth95, inStrip, measure } from './ridge-scale';
import { dot, slowColumns, times, without } from './ridge-solve';
import type { StripReading } from './ridge-strip';
import { findLie, refined, straighten } from './ridge-tilt';
import type { DrawnProfile, GreyPicture, Scale } from './ridge-types';
import {
  closely,
  LEAST_RIPPLES,
  placesOf,
  roughly,
  SLOW,
  waveOf,
  type Bent,
  type Fitted,
  type Lain,
} from './ripple-fit';
import { isBlurred } from './sharpness';

export type RippleRefusal =
  'too short' | 'no ripples' | 'too few ripples' | 'blurred' | 'angle' | 'overexposed' | 'too dark' | 'no scale';

/** Ripples that die away beside an edge. */
export interface RipplesFound {
  readonly status: 'found';
  /** m, from ripple to ripple along the wall. */
  readonly period: number;
  /** m, 95 %. */
  readonly halfWidth: number;
  /** Standard uncertainties as shares of the period. */
  readonly shares: { readonly fit: number; readonly marks: number; readonly distance: number };
  /** How many ripples stand above what the picture's noise hides, or reach the strip's end. */
  readonly ripples: number;
  /** Ripples until they are half as high, with the half-width of its 95 % interval; undefined where they hardly die away. */
  readonly halving: { readonly value: number; readonly halfWidth: number } | undefined;
  readonly profile: DrawnProfile;
}

export type RippleFinding =
  RipplesFound | { readonly status: 'refused'; readonly reason: RippleRefusal; readonly profile?: DrawnProfile };

/** Values that the profile is gathered into: a ripple then has eight or more. */
const VALUES = 640;
const LEAST_LENGTH = 64;
const LEAST_PIXELS = 5;
const MOST_CLIPPED = 0.2;
/** Fewer that hardly die away in the strip are not told from slow waves. */
const LEAST_UNDAMPED = 6;
/** F of the ripples, their damping undone, over slow waves without a period. */
const LEAST_LINE = 20;
/** Ripples lower than this share of the first say nothing more of that. */
const LEAST_HEIGHT = 0.15;
/** Of what is left beside slow shading, smoothed, this share at least must be the ripples. */
const LEAST_SHARE = 0.75;
/** Gain of the likelihood beyond the first ripple and a half at which they are believed. */
const BELIEVED = 25;
/** A camera off square by 5°, before anything is seen, and a lens whose reach is 0.7 of the picture's longer side. */
const BEND_SPREAD = Math.tan((5 * Math.PI) / 180) / 0.7;
/** A lens's radial term, before anything is seen, over the square of that reach: a wide one has 0.1 (common practice). */
const LENS_SPREAD = 0.08 / 0.7 ** 2;
/** rad: further off square than this the interval does not hold: few ripples say little of the perspective along them. */
const MOST_OFF = (14 * Math.PI) / 180;
/** Beyond this many ripples to half they hardly die away in any strip. */
const MOST_HALVING = 30;
/** Share by which light that falls off along the wall may change how they die away: common practice. */
const BY_LIGHT = 0.2;

/** Grey values over their own slow light, which falls off along a wall and with it how high ripples look. */
function evenly(seen: Float64Array): Float64Array {
  const flat = without(seen, slowColumns(seen.length, SLOW));
  return flat.map((value, i) => (100 * value) / Math.max(1, (seen[i] ?? 0) - value));
}

/** Values gathered by means, so that at most VALUES are left. */
function gathered(values: Float64Array): { readonly values: Float64Array; readonly by: number } {
  const by = Math.max(1, Math.floor(values.length / VALUES));
  const count = Math.floor(values.length / by);
  const out = Float64Array.from({ length: count }, (_, i) => {
    let sum = 0;
    for (let k = 0; k < by; k += 1) sum += values[i * by + k] ?? 0;
    return sum / by;
  });
  return { values: out, by };
}

/** Mean over a quarter of a ripple to each side: what is finer says nothing of ripples. */
function smoothed(values: Float64Array, half: number): Float64Array {
  return values.map((_, i) => {
    let [sum, count] = [0, 0];
    for (let k = Math.max(0, i - half); k <= Math.min(values.length - 1, i + half); k += 1) {
      sum += values[k] ?? 0;
      count += 1;
    }
    return sum / count;
  });
}

/** How much the ripples are a line once their damping is undone, where they are high. */
function lineOf(values: Float64Array, lain: Lain, bent: Bent): number {
  const [frequency, decay] = bent;
  const { on } = waveOf(lain, bent);
  const seen = without(values, slowColumns(values.length, SLOW));
  const top = Math.abs(decay) / 2;
  const high = [...seen.keys()].filter((i) => Math.exp(-decay * (on[i] ?? 0) - top) >= LEAST_HEIGHT);
  return lineF(
    Float64Array.from(high, (i) => (seen[i] ?? 0) * Math.exp(decay * (on[i] ?? 0) + top)),
    Float64Array.from(high, (i) => 2 * Math.PI * frequency * (on[i] ?? 0)),
  );
}

/** How many ripples the strip shows, and whether they are there at all. */
function judge(values: Float64Array, lain: Lain, { bent, rest, wave, noise }: Fitted) {
  const [frequency, decay] = bent;
  const n = values.length;
  const quarter = Math.max(1, Math.round(n / frequency / 8));
  const [left, seen] = [smoothed(rest, quarter), smoothed(without(values, slowColumns(n, SLOW)), quarter)];
  const share = 1 - dot(left, left) / Math.max(1e-30, dot(seen, seen));
  // From the high end on: what the first ripple and a half says, shading could.
  const first = (1.5 / frequency) * n;
  const beyond = wave.filter((_, i) => (decay >= 0 ? i : n - 1 - i) > first);
  const gain = dot(beyond, beyond) / Math.max(1e-30, noise);
  const high = Math.max(...wave.map(Math.abs));
  // A ripple is seen while it stands above the noise of the mean over its half.
  const hidden = 2 * Math.sqrt(noise / Math.max(1, n / frequency / 2));
  const until = Math.abs(decay) < 1e-6 ? 1 : Math.log(Math.max(1, high / hidden)) / Math.abs(decay);
  return { share, gain, ripples: frequency * Math.min(1, until), line: lineOf(values, lain, bent) };
}

/**
 * Ripples beside an edge, as a damped sine along a strip that begins at the edge, with their spacing and how they die away.
 *
 * Bend (perspective along the strip) is held by what is known beforehand, the fan across it is seen; scale as for ridges.
 * @param reading from readStrip; undefined as that gives it
 * @param picture the whole, to tell a blurred one by the scale's marks
 * @returns the finding, or the reason why there is none; never a guess
 */
export function findRipples(reading: StripReading | undefined, scale: Scale, picture: GreyPicture): RippleFinding {
  const long = (reading?.columns[0]?.length ?? 0) * (reading?.step ?? 1);
  if (!reading || long < LEAST_LENGTH) return { status: 'refused', reason: 'too short' };
  const lie = findLie(reading);
  const side = Math.min(BEND_SPREAD / reading.side, lie.fanSpread);
  const flat = measure(reading, scale, { ...lie, bend: 0, lens: 0 }, side);
  if (!flat) return { status: 'refused', reason: 'no scale' };
  const { values: seen, by } = gathered(straighten(refined(reading), lie));
  const values = evenly(seen);
  const length = values.length * by * reading.step;
  const profile = { step: by * reading.step * flat.metres, values: without(values, slowColumns(values.length, SLOW)) };
  const no = (reason: RippleRefusal): RippleFinding => ({ status: 'refused', reason, profile });
  if (reading.bright > MOST_CLIPPED) return no('overexposed');
  if (reading.dark > MOST_CLIPPED) return no('too dark');
  const centre = inStrip(reading, reading.centre);
  const lain: Lain = {
    places: placesOf(values.length),
    centre: { x: centre.u / length, y: centre.v / length },
    spreads: [(BEND_SPREAD / reading.side) * length, LENS_SPREAD * (length / reading.side) ** 2],
  };
  const start = roughly(values, lain, Math.min(values.length / 8, length / LEAST_PIXELS));
  const fitted = start && closely(values, lain, start);
  const nothing = () => no(isBlurred(picture, [scale.from, scale.to]) ? 'blurred' : 'no ripples');
  if (!fitted || !(fitted.bent[0] > 0)) return nothing();
  const [frequency, decay, bend, lens] = fitted.bent;
  const { share, gain, ripples, line } = judge(values, lain, fitted);
  if (share < LEAST_SHARE || gain < BELIEVED || line < LEAST_LINE) return nothing();
  if (ripples < (Math.abs(decay) > Math.LN2 ? LEAST_RIPPLES : LEAST_UNDAMPED)) return no('too few ripples');
  const measured = measure(reading, scale, { ...lie, bend: bend / length, lens: lens / length ** 2 }, side);
  if (!measured) return no('no scale');
  if (measured.off > MOST_OFF) return no('angle');
  return { ...spacing(fitted, measured, length), ripples, halving: halvingOf(decay, frequency, fitted), profile };
}

function spacing(fitted: Fitted, measured: NonNullable<ReturnType<typeof measure>>, length: number) {
  const [frequency] = fitted.bent;
  // By how much the spacing changes, as a share, with the frequency, the bend and the lens's term.
  const by = [-1 / frequency, 0, measured.byBend / length, measured.byLens / length ** 2];
  const through = times(fitted.covariance, by);
  const fit = Math.sqrt(
    Math.max(
      0,
      by.reduce((sum, one, i) => sum + one * (through[i] ?? 0), 0),
    ),
  );
  const period = (measured.across * length) / frequency;
  return {
    status: 'found',
    period,
    halfWidth: period * halfWidth95(Math.hypot(fit, measured.marks), measured.distance),
    shares: { fit, marks: measured.marks, distance: measured.distance / Math.sqrt(3) },
  } as const;
}

function halvingOf(decay: number, frequency: number, { covariance }: Fitted): RipplesFound['halving'] {
  const value = (Math.LN2 * frequency) / Math.abs(decay);
  const share = Math.hypot((1.96 * Math.sqrt(covariance.cells[5] ?? 0)) / Math.abs(decay), BY_LIGHT);
  return value < MOST_HALVING && share < 0.7 ? { value, halfWidth: value * share } : undefined;
}

/**
 * What swings, from the spacing of its ripples and the speed along the wall: f = v / λ.
 * @param speed m/s, and the half-width of its 95 % interval
 * @param period m, likewise
 * @returns Hz, likewise
 */
export function ringing(
  speed: readonly [number, number],
  period: readonly [number, number],
): readonly [number, number] {
  const value = speed[0] / period[0];
  return [value, value * Math.hypot(speed[1] / speed[0], period[1] / period[0])];
}
