import type { Fitted, Model, Wave } from './ridge-model';
import type { LineRole } from './ridge-types';

/** A wave that was found, before anything is said of what it is. */
export interface Candidate {
  /** Cycles per middle pixel along the strip, and its standard uncertainty. */
  readonly frequency: number;
  readonly u: number;
  readonly amplitude: number;
  readonly overNoise: number;
}

/** What the picture says of the layers' own line. */
export interface Layers {
  /** Cycles per middle pixel that layers of the stated height have. */
  readonly frequency: number;
  /** Share by which scale and height may be out. */
  readonly tolerance: number;
}

export interface Sorted {
  readonly roles: readonly LineRole[];
  /** Of each wave, how many times its family's first one it is. */
  readonly multiples: readonly number[];
  /** Index of the ridges' first wave; undefined where all is layers or nothing. */
  readonly ridges: number | undefined;
}

const MOST_MULTIPLE = 8;
const LAYER_MULTIPLES = 3;
/** A wave of half, a third or a quarter of the strongest one's frequency is the ridges' first if it is at least this strong. */
const LEAST_FIRST = 0.12;
const SUBMULTIPLES = [4, 3, 2] as const;
/** A ridge is made of layers: nothing finer than one and a half of them is one. */
const LAYERS_PER_RIDGE = 1.5;

/** Whether `b` is `times` times `a` within what the fit leaves open, 3 standard uncertainties, at least `loose` waves. */
function isMultiple(a: Candidate, b: Candidate, times: number, loose: number): boolean {
  return Math.abs(times * a.frequency - b.frequency) < 3 * Math.hypot(times * a.u, b.u) + loose;
}

/**
 * Tells the ridges from their harmonics and from the layers' own line.
 * @param length px: of the strip
 */
export function sortOut(candidates: readonly Candidate[], layers: Layers | undefined, length: number): Sorted {
  const loose = 0.1 / length;
  const roles: LineRole[] = candidates.map(() => 'other');
  const multiples = candidates.map(() => 1);
  if (layers) {
    candidates.forEach((one, i) => {
      for (let m = 1; m <= LAYER_MULTIPLES; m += 1) {
        const off = Math.abs(one.frequency - m * layers.frequency);
        if (off < m * layers.frequency * layers.tolerance + 1 / length) {
          roles[i] = 'layers';
          multiples[i] = m;
        }
      }
    });
  }
  const finest = layers ? layers.frequency / LAYERS_PER_RIDGE : Infinity;
  const could = (i: number) => roles[i] !== 'layers' && (candidates[i]?.frequency ?? Infinity) < finest;
  let ridges: number | undefined;
  candidates.forEach((one, i) => {
    if (could(i) && (ridges === undefined || one.amplitude > (candidates[ridges]?.amplitude ?? 0))) ridges = i;
  });
  const strongest = ridges === undefined ? undefined : candidates[ridges];
  if (ridges === undefined || !strongest) return { roles, multiples, ridges };
  for (const times of SUBMULTIPLES) {
    const first = candidates.findIndex(
      (one, i) =>
        could(i) && one.amplitude >= LEAST_FIRST * strongest.amplitude && isMultiple(one, strongest, times, loose),
    );
    if (first >= 0) {
      ridges = first;
      break;
    }
  }
  const first = candidates[ridges];
  candidates.forEach((one, i) => {
    if (!first || i === ridges || roles[i] === 'layers') return;
    for (let m = 2; m <= MOST_MULTIPLE; m += 1) {
      if (isMultiple(first, one, m, loose)) {
        roles[i] = 'harmonic';
        multiples[i] = m;
      }
    }
  });
  roles[ridges] = 'ridges';
  return { roles, multiples, ridges };
}

/** The model in which the ridges' harmonics hang on one frequency, family 0, and the layers' on another. */
export function tied(fitted: Fitted, sorted: Sorted): Model {
  const frequencies: number[] = [fitted.model.frequencies[sorted.ridges ?? 0] ?? 0];
  let layers: number | undefined;
  const tiedAlready = new Set<number>();
  const waves = sorted.roles.map((role, i): Wave => {
    const own = fitted.model.frequencies[i] ?? 0;
    const multiple = sorted.multiples[i] ?? 1;
    // A wave whose strength changes along the strip shows as several close by: only the strongest hangs on its family.
    // The layers' multiples below nothing, the ridges' above.
    const place = role === 'layers' ? -multiple : multiple;
    if (role !== 'other' && tiedAlready.has(place)) {
      frequencies.push(own);
      return { family: frequencies.length - 1, multiple: 1 };
    }
    tiedAlready.add(place);
    if (role === 'ridges' || role === 'harmonic') return { family: 0, multiple };
    if (role === 'layers' && layers !== undefined) return { family: layers, multiple };
    frequencies.push(own / multiple);
    if (role === 'layers') layers = frequencies.length - 1;
    return { family: frequencies.length - 1, multiple };
  });
  return { waves, frequencies, bend: fitted.model.bend, lens: fitted.model.lens };
}
