/**
 * How much of a sweep to try. `vitest.config.ts` says so by project: `fast` tries a part of each, `slow` all of it.
 */
export const isWhole: boolean = import.meta.env.SWEEP === 'whole';

/** A count for the whole sweep, and for the part of it. */
export const times = (whole: number, part: number): number => (isWhole ? whole : part);

/** All of a list for the whole sweep, one in so many for the part of it; at least the first. */
export const some = <T>(list: readonly T[], oneIn: number): readonly T[] =>
  isWhole ? list : list.filter((_, at) => at % oneIn === 0);

/** The one calculator to try, by its id (`npm run calculator -- screw-lead`); undefined for all. */
export const onlyCalculator: string | undefined = process.env.CALCULATOR;
