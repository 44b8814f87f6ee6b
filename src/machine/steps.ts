/*
 * Work on many records, written once as a generator that stops after each small piece: run to its end at once where nobody
 * waits (tests, few records), or in slices between which the page lives on.
 */

/** Gives the share that is done, from 0 to 1, after each piece. */
export type Steps<T> = Generator<number, T, void>;

/** Who waits for long work: told how far it is, and able to end it. */
export interface Watch {
  readonly tell: (share: number) => void;
  readonly signal: AbortSignal;
}

/** Thrown where the person ended the work. */
export class Cancelled extends Error {}

/** Longest stretch without the page: with what follows it (a piece, a paint) well below what a person notices. */
const SLICE_MS = 24;

/** Lets the page do something else: unlike a promise's next step. */
export const breathe = () => new Promise<void>((resolve) => setTimeout(resolve));

/** Runs all of it at once. */
export function finish<T>(steps: Steps<T>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/**
 * Runs it in slices.
 * @throws Cancelled
 */
export async function inSlices<T>(steps: Steps<T>, watch?: Watch): Promise<T> {
  let until = performance.now() + SLICE_MS;
  let step = steps.next();
  while (!step.done) {
    if (performance.now() > until) {
      watch?.tell(step.value);
      await breathe();
      goOn(watch);
      until = performance.now() + SLICE_MS;
    }
    step = steps.next();
  }
  return step.value;
}

/** @throws Cancelled */
export function goOn(watch: Watch | undefined): void {
  if (watch?.signal.aborted) throw new Cancelled();
}

/** The same watch for one part of a longer work. */
export function partOf(watch: Watch, from: number, to: number): Watch;
export function partOf(watch: Watch | undefined, from: number, to: number): Watch | undefined;
export function partOf(watch: Watch | undefined, from: number, to: number): Watch | undefined {
  return watch && { ...watch, tell: (share) => watch.tell(from + share * (to - from)) };
}
