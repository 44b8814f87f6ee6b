import { cite } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

export const iso2306 = cite(work.iso2306, place.charts, false);
export const iso273 = cite(work.iso273, place.charts, false);
export const iso7089 = cite(work.iso7089, place.washer, true);

/** Drill before the tap, mm, by thread. One chart gives M2.5 as 2.0 and another as 2.1; a chart gives M3×0.35 as 2.6. */
export const tapDrill: Readonly<Record<string, number>> = {
  M2: 1.6,
  'M2.5': 2.05,
  M3: 2.5,
  M4: 3.3,
  M5: 4.2,
  M6: 5,
  M8: 6.8,
  M10: 8.5,
  'M3×0.35': 2.65,
  'M4×0.5': 3.5,
  'M5×0.5': 4.5,
  'M6×0.75': 5.2,
  'M8×1': 7,
};

/** Clearance holes, mm, by the screw's diameter: fine, medium, coarse. */
export const clearanceHole: Readonly<Record<number, readonly [fine: number, medium: number, coarse: number]>> = {
  2: [2.2, 2.4, 2.6],
  2.5: [2.7, 2.9, 3.1],
  3: [3.2, 3.4, 3.6],
  4: [4.3, 4.5, 4.8],
  5: [5.3, 5.5, 5.8],
  6: [6.4, 6.6, 7],
  8: [8.4, 9, 10],
  10: [10.5, 11, 12],
};

/** Outside diameter of a plain washer, mm, by the screw's diameter. */
export const washerOutside: Readonly<Record<number, number>> = {
  2: 5,
  2.5: 6,
  3: 7,
  4: 9,
  5: 10,
  6: 12,
  8: 16,
  10: 20,
};
