import type { Told } from './order';

/** How one way stands against what is wanted; one at most is advised. */
export type Standing = 'advised' | 'will do' | 'doubtful' | 'falls short' | 'not possible';

/** One of several ways to the same end, as data: `id` names its words. */
export interface ComparedWay {
  readonly id: string;
  readonly standing: Standing;
  /** One for each of the columns. */
  readonly facts: readonly Told[];
  /** Why it stands so; may be empty. */
  readonly why: readonly Told[];
  /** Tools and parts it takes. */
  readonly needs: readonly Told[];
}

/** Several ways to the same end. */
export interface ComparedWays {
  /** Keys of what they are compared by. */
  readonly columns: readonly string[];
  readonly ways: readonly ComparedWay[];
}

/** One of several ways to the same end, in words. */
export interface Way {
  readonly name: string;
  readonly standing: Standing;
  /** As printed, one for each of the columns. */
  readonly facts: readonly string[];
  /** Why it stands so, in a sentence or two; may be empty. */
  readonly why: string;
  /** Tools and parts it takes. */
  readonly needs: readonly string[];
}

/** Several ways to the same end, to be shown side by side. */
export interface Ways {
  readonly title: string;
  /** What they are compared by: short, a column each; at most five fit a phone. */
  readonly columns: readonly string[];
  readonly ways: readonly Way[];
  /** What the columns mean. */
  readonly note: string;
}
