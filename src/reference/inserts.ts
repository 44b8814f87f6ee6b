import { cite } from './citation';
import type { MetricThread } from './threads';
import say from './words/en';

const { works: work, places: place } = say;

export const insertHole = cite(work.insertHole, place.basicSizes, true);
export const insertLength = cite(work.insertLength, place.insertLengths, true);

/** How far the minor diameter of an insert’s hole may lie above its basic size, µm, by pitch in mm: TD1 of class 5, ISO 965-1. */
const minorTolerance: Readonly<Record<number, number>> = {
  0.35: 80,
  0.4: 90,
  0.45: 100,
  0.5: 112,
  0.7: 140,
  0.75: 150,
  0.8: 160,
  1: 190,
  1.25: 212,
};

/**
 * The threaded hole that a wire thread insert lies in, mm: an M profile larger by 3/2 H, so that the coil fills the
 * difference. `minor` to `minorMax` is the window the drill must hit. ASME B18.29.2M, inch sizes B18.29.1; ISO 965-1, class 5.
 */
export function insertThread({ d, P }: Pick<MetricThread, 'd' | 'P'>) {
  const H = (Math.sqrt(3) / 2) * P;
  const minor = d + H / 4;
  const tolerance = minorTolerance[P];
  return {
    major: d + (3 / 2) * H,
    pitch: d + (3 / 4) * H,
    minor,
    minorMax: tolerance === undefined ? undefined : minor + tolerance / 1000,
  };
}

/**
 * Drill before the insert’s tap, mm: the standard tenth of a millimetre inside the derived window. Printed charts differ by
 * 0.1 mm: 3.1 for M3, and 4.1 for M4 in one of two, lie below the window; such kits count on the drill cutting oversize in
 * aluminium. Follow the kit.
 */
export const insertDrill: Readonly<Record<string, number>> = {
  M2: 2.1,
  'M2.5': 2.6,
  M3: 3.2,
  M4: 4.2,
  M5: 5.2,
  M6: 6.3,
  M8: 8.4,
  'M3×0.35': 3.1,
  'M4×0.5': 4.2,
  'M5×0.5': 5.2,
  'M6×0.75': 6.2,
  'M8×1': 8.3,
  // Numbered and fractional drills, from memory; each lies inside the derived window.
  '4-40': 3.05,
  '6-32': 3.73,
  '8-32': 4.39,
  '10-24': 5.16,
  '10-32': 5.11,
  '1/4-20': 6.75,
};

/** Standard insert lengths in screw diameters; each is also the least thickness for a through hole. */
export const insertLengths = [1, 1.5, 2, 2.5, 3] as const;
