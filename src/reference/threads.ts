import { cite } from './citation';
import say from './words/en';

const { works: work, places: place } = say;

/** One thread. Lengths in mm; tolerances in µm, for the screw 6g and for the hole 6H, of inch threads 2A and 2B. */
export interface MetricThread {
  readonly name: string;
  readonly d: number;
  readonly P: number;
  /** Fundamental deviation of the screw, g: all its diameters lie at least so far below the basic ones. */
  readonly es: number;
  /** Tolerances: major diameter of the screw, its pitch diameter, pitch and minor diameter of the hole. */
  readonly Td: number;
  readonly Td2: number;
  readonly TD2: number;
  readonly TD1: number;
}

export const isoProfile = cite(work.isoProfile, place.basicProfile, true);
/** Hole tolerances on the pitch diameter and g deviations and the others are from memory of ISO 965-1. */
export const isoTolerances = cite('ISO 965-1:2013', place.tolerances, true);
export const unifiedArea = cite(work.unified, place.unifiedArea, true);
export const iso898Area = cite('ISO 898-1:2013', place.stressArea, true);

const row = (name: string, d: number, P: number, es: number, tolerances: readonly [number, number, number, number]) => {
  const [Td, Td2, TD2, TD1] = tolerances;
  return { name, d, P, es, Td, Td2, TD2, TD1 };
};

/** Coarse series, each followed by the next larger: what a stripped hole is opened to. ISO 261; tolerances ISO 965-1. */
export const coarseThreads: readonly MetricThread[] = [
  row('M2', 2, 0.4, 19, [95, 67, 90, 112]),
  row('M2.5', 2.5, 0.45, 20, [100, 71, 95, 125]),
  row('M3', 3, 0.5, 20, [106, 75, 100, 140]),
  row('M4', 4, 0.7, 22, [140, 90, 118, 180]),
  row('M5', 5, 0.8, 24, [150, 95, 125, 200]),
  row('M6', 6, 1, 26, [180, 112, 150, 236]),
  row('M8', 8, 1.25, 28, [212, 118, 160, 265]),
  row('M10', 10, 1.5, 32, [236, 132, 180, 300]),
];

/** Fine threads, M3 to M8. ISO 261; tolerances ISO 965-1. */
export const fineThreads: readonly MetricThread[] = [
  row('M3×0.35', 3, 0.35, 19, [85, 67, 90, 100]),
  row('M4×0.5', 4, 0.5, 20, [106, 75, 100, 140]),
  row('M5×0.5', 5, 0.5, 20, [106, 75, 100, 140]),
  row('M6×0.75', 6, 0.75, 22, [140, 100, 132, 190]),
  row('M8×1', 8, 1, 26, [180, 112, 150, 236]),
];

const INCH = 25.4;

/**
 * An inch thread with the limits of class 2A and 2B by the formulas of ASME B1.1, 5.8 (from memory), in inches, with the engagement of one
 * diameter: pitch diameter 0.0015 ∛D + 0.0015 √D + 0.015 ∛P², for the hole 1.3 times that; allowance 0.3 times; major diameter
 * 0.06 ∛P²; minor diameter of the hole 0.05 ∛P² + 0.03 P/D − 0.002 below a quarter inch, from there 0.25 P − 0.4 P².
 */
function unified(name: string, D: number, perInch: number): MetricThread {
  const P = 1 / perInch;
  const Td2 = 0.0015 * Math.cbrt(D) + 0.0015 * Math.sqrt(D) + 0.015 * Math.cbrt(P) ** 2;
  const minor = D < 0.25 ? 0.05 * Math.cbrt(P) ** 2 + (0.03 * P) / D - 0.002 : 0.25 * P - 0.4 * P ** 2;
  const um = (inches: number): number => inches * INCH * 1000;
  const tolerances = [um(0.06 * Math.cbrt(P) ** 2), um(Td2), um(1.3 * Td2), um(minor)] as const;
  return row(name, D * INCH, P * INCH, um(0.3 * Td2), tolerances);
}

/** Inch threads, coarse ones each followed by the next larger, then the fine one of number 10. */
export const unifiedThreads: readonly MetricThread[] = [
  unified('4-40', 0.112, 40),
  unified('6-32', 0.138, 32),
  unified('8-32', 0.164, 32),
  unified('10-24', 0.19, 24),
  unified('1/4-20', 0.25, 20),
  unified('5/16-18', 0.3125, 18),
  unified('10-32', 0.19, 32),
];

/** The next larger coarse inch thread; undefined past the largest listed. */
export function nextLargerInch(d: number): MetricThread | undefined {
  return unifiedThreads.find((thread) => thread.d > d + 0.01 && thread.name !== '10-32');
}

/**
 * Basic dimensions of a metric thread, all from H = √3 P / 2. Lengths in mm, area in mm².
 * Height H of the sharp triangle, pitch diameter d2 = D2, minor diameter of the hole D1, of the screw's root d3, and the
 * nominal stress area As. ISO 68-1, ISO 724, ISO 898-1.
 */
export function basicProfile({ d, P }: Pick<MetricThread, 'd' | 'P'>) {
  const H = (Math.sqrt(3) / 2) * P;
  const d2 = d - (3 / 4) * H;
  const d3 = d - (17 / 12) * H;
  return { H, d2, D1: d - (5 / 4) * H, d3, As: (Math.PI / 4) * ((d2 + d3) / 2) ** 2 };
}

/**
 * The limits that leave the least overlap between screw (6g) and hole (6H), in mm: screw's least major diameter `Ds` and
 * pitch diameter `Es`, hole's greatest pitch diameter `En` and minor diameter `Kn`. ISO 965-1.
 */
export function looseLimits(thread: MetricThread) {
  const { d2, D1 } = basicProfile(thread);
  return {
    Ds: thread.d - (thread.es + thread.Td) / 1000,
    Es: d2 - (thread.es + thread.Td2) / 1000,
    En: d2 + thread.TD2 / 1000,
    Kn: D1 + thread.TD1 / 1000,
  };
}

/** The next larger coarse thread; undefined past the largest listed. */
export function nextLarger(d: number): MetricThread | undefined {
  return coarseThreads.find((thread) => thread.d > d);
}
