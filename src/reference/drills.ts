import { cite } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

export const iso2306 = cite(work.iso2306, place.charts, true);
export const iso273 = cite(work.iso273, place.charts, true);
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
  // Numbered drills, from memory.
  '4-40': 2.26,
  '6-32': 2.71,
  '8-32': 3.45,
  '10-24': 3.8,
  '10-32': 4.04,
  '1/4-20': 5.11,
  '5/16-18': 6.53,
};

/** Drills that have a name in place of a size in millimetres, mm: numbers, letters and parts of an inch. From memory. */
const namedDrills: readonly (readonly [mm: number, name: string])[] = [
  [2.26, '#43'],
  [2.71, '#36'],
  [3.05, '#31'],
  [3.26, '#30'],
  [3.45, '#29'],
  [3.73, '#26'],
  [3.8, '#25'],
  [3.91, '#23'],
  [4.04, '#21'],
  [4.39, '#17'],
  [4.57, '#15'],
  [5.11, '#7'],
  [5.16, '13/64″'],
  [5.22, '#5'],
  [6.53, 'F'],
  [6.75, '17/64″'],
  [7.14, '9/32″'],
];

/** Name of a drill of the inch series of this size, mm; undefined where it has none. */
export const drillName = (mm: number): string | undefined =>
  namedDrills.find(([size]) => Math.abs(size - mm) < 0.005)?.[1];

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

/** The same of inch screws by name: ASME B18.2.8 and B18.21.1, type A narrow, from memory. mm. */
export const unifiedHoles: Readonly<Record<string, { readonly clearance: number; readonly washer: number }>> = {
  '4-40': { clearance: 3.26, washer: 7.92 },
  '6-32': { clearance: 3.91, washer: 9.53 },
  '8-32': { clearance: 4.57, washer: 11.11 },
  '10-24': { clearance: 5.22, washer: 12.7 },
  '10-32': { clearance: 5.22, washer: 12.7 },
  '1/4-20': { clearance: 7.14, washer: 15.88 },
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
