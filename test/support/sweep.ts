/**
 * How much of a sweep to try. `vitest.config.ts` says so by project: `fast` tries a part of each, `slow` all of it; what looks for
 * faults put into the code (`vitest.mutation.config.ts`) a larger part.
 */
export const isWhole: boolean = import.meta.env.SWEEP === 'whole';
const LARGER = import.meta.env.SWEEP === 'larger' ? 4 : 1;

/** A count or a stride for the whole sweep, and for the part of it. */
export function times(whole: number, part: number): number {
  if (isWhole) return whole;
  return part < whole ? Math.min(whole, LARGER * part) : Math.max(whole, Math.ceil(part / LARGER));
}

/** All of a list for the whole sweep, one in so many for the part of it; at least the first. */
export const some = <T>(list: readonly T[], oneIn: number): readonly T[] =>
  isWhole ? list : list.filter((_, at) => at % Math.ceil(oneIn / LARGER) === 0);

/** The one calculator to try, by its id (`npm run calculator -- screw-lead`); undefined for all. */
export const onlyCalculator: string | undefined = process.env.CALCULATOR;
