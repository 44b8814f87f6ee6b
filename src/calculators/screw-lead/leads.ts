const INCH = 25.4;

/** Pitches of trapezoidal screws, mm: ISO 2904:1977, from memory. With one to six starts, common practice. */
const TRAPEZOIDAL = [1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12];
/** Pitches of single-start metric screws, mm: ISO 261:1998, from memory. */
const METRIC = [0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6];
/** Threads to the inch of trapezoidal screws: ASME B1.5-1997, from memory. With one to five starts, common practice. */
const ACME = [16, 14, 12, 10, 8, 6, 5, 4, 3, 2.5, 2];
/** Threads to the inch of single-start screws: ASME B1.1-2003, from memory. */
const UNIFIED = [40, 32, 28, 24, 20, 18, 13];

const withStarts = (pitches: readonly number[], most: number): readonly number[] =>
  pitches.flatMap((pitch) => Array.from({ length: most }, (_, i) => pitch * (i + 1)));

const inMetres = [
  ...withStarts(TRAPEZOIDAL, 6),
  ...METRIC,
  ...withStarts(
    ACME.map((threads) => INCH / threads),
    5,
  ),
  ...UNIFIED.map((threads) => INCH / threads),
].map((mm) => Number((mm / 1000).toPrecision(9)));

/** Leads that screws of a Z drive are made with, m. */
const MADE: readonly number[] = [...new Set(inMetres)];

/** As many made leads as are asked for, the nearest by ratio first. SI. */
export function nearestMade(lead: number, count: number): readonly number[] {
  const away = (made: number): number => Math.abs(Math.log(made / lead));
  return [...MADE].sort((one, two) => away(one) - away(two)).slice(0, count);
}
