import type { Choices } from './calculator';

/**
 * A check of some formulas against something that is not ours: a published value, a handbook's example, a general-purpose
 * library, a fact of the trade. Kept in a folder's `outside.ts`, run by test/outside/proofs.test.ts, never shipped.
 */
export interface OutsideProof {
  /** Where the expected numbers come from: work and place (with "from memory"), library and function, or the fact. */
  readonly source: string;
  /** As typed, in the input's unit where none is written: `8 mm`. What is left out keeps its typical value. */
  readonly given: Readonly<Record<string, string>>;
  readonly choices?: Choices;
  /** By result: expected value and absolute tolerance, in the result's unit. A function computes it independently. */
  readonly expect: Readonly<Record<string, readonly [value: number | (() => number), tolerance: number]>>;
}
