import type { Choices } from './spec';
import type { Effect, Movement } from './order';
import type { SignPicture } from './signs';

/** What stands in a field as the person sees it, SI: where pictures stand for the sign, the picture that was tapped and the size. */
export type Seen = number | { readonly picture: SignPicture; readonly size: number };

/** How much is seen, whichever picture; undefined where nothing is. */
export const sizeSeen = (seen: Seen | undefined): number | undefined => (typeof seen === 'object' ? seen.size : seen);

/** A reading that has no side. @throws Error where there is none such */
export function numberSeen(given: Readonly<Record<string, Seen>>, symbol: string): number {
  const seen = given[symbol];
  if (typeof seen !== 'number') throw new Error(`${symbol} is no number`);
  return seen;
}

/** An order to carry out, on a machine that reads so. */
export interface ToCarry {
  /** Inputs in force that have a value. */
  readonly given: Readonly<Record<string, Seen>>;
  readonly choices: Choices;
  readonly movements: readonly Movement[];
  /** Inputs that the order sets to a value or expects to read: for what is set and not moved. */
  readonly effect: Effect;
}

/**
 * A second model of the machine, by other means than the check's formulas: coordinates, rotations, equilibrium. It is built from
 * what is seen, carries out the movements, and is read again the same way, so that an order that turns the wrong way, or a picture that
 * means the other side, is found. Kept in a folder's `second.ts`, run by test/sweep/every/orders.test.ts, never shipped.
 */
export interface SecondModel {
  /** The inputs that have changed, as they are read anew. */
  readonly carry: (order: ToCarry) => Readonly<Record<string, Seen>>;
  /** For each contradiction that the words know by its key: entries, as typed, that are asked about. */
  readonly contradictions?: Readonly<
    Record<string, { readonly given: Readonly<Record<string, string>>; readonly choices?: Choices }>
  >;
}
