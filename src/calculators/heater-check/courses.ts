import { simulate, type Lump, type Moment } from './curve';

const STEPS = 160;

/** What the three courses are worked out from, SI. */
export interface Setting {
  readonly lump: Lump;
  /** Working temperature, and the time it should take from cold. */
  readonly Tw: number;
  readonly tw: number;
  /** From the fault until the guard acts. */
  readonly tx: number;
  readonly tau: number;
  /** Time constant of the fallen sensor. */
  readonly ts: number;
  /** Where a stuck heater ends, and where it is stopped. */
  readonly Te: number;
  readonly Tu: number;
}

export type Courses = ReturnType<typeof coursesOf>;

/** Block and reading over time: healthy up to the fault, then sensor fallen out, and heater stuck on. */
export function coursesOf({ lump, Tw, tw, tx, tau, ts, Te, Tu }: Setting) {
  const { Ta } = lump;
  // The exact curve reaches the working temperature a little sooner than the straight-line loss says.
  const rise = simulate(lump, { t: 0, T: Ta }, tw, STEPS).filter(({ T }) => T <= Tw);
  const there = (rise.at(-1)?.t ?? tw) + tw / STEPS;
  const fault = there + 0.25 * tw;
  const after = Math.max(5 * tx, 1.2 * tau);
  const stuck = simulate(lump, { t: fault, T: Tw }, after, STEPS).filter(({ T }) => T <= Tu);
  const guarded = simulate(lump, { t: fault, T: Tw }, tx, STEPS);
  const trip = guarded.at(-1) ?? { t: fault, T: Tw };
  const cooling = simulate({ ...lump, P: 0 }, trip, after - tx, STEPS);
  const reading = Array.from({ length: STEPS }, (_, i) => {
    const t = (i / STEPS) * after;
    return { t: fault + t, T: Ta + (Tw - Ta) * Math.exp(-t / ts) };
  });
  const healthy = [...rise, { t: there, T: Tw }, { t: fault, T: Tw }];
  const [top, bottom] = [Math.max(Te, Tw, trip.T) + 40, Math.min(Ta, 273.15)];
  return { healthy, stuck, guarded, cooling, reading, trip, fault, Tw, end: fault + after, top, bottom };
}

/** Recorded readings, slid along to where the course that they follow passes the first of them. */
export function slidAlong(points: readonly Moment[], { cooling, healthy, end }: Courses): readonly Moment[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [];
  const falls = last.T < first.T;
  const from = (falls ? cooling : healthy).find(({ T }) => (falls ? T <= first.T : T >= first.T))?.t ?? 0;
  return points.map(({ t, T }) => ({ t: from + t - first.t, T })).filter(({ t }) => t <= end);
}
