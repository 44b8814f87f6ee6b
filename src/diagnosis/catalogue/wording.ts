import type { Answer, Cause, Inspection, Remedy } from '../types';
import type * as data from './data';

/*
 * What words the catalogue needs, by the ids of its data: one that is missing or misspelt does not compile, in any language.
 */

/** At least one: an order without a step is none. */
type Lines = readonly [string, ...string[]];

export interface SymptomWords {
  readonly title: string;
  /** As an owner would write it. */
  readonly complaint: string;
  /** What else people call it, for the search. */
  readonly sayings: readonly string[];
}

export interface RemedyWords {
  readonly headline: string;
  readonly steps: Lines;
  /** What can go wrong with it, in one sentence. */
  readonly risk: string;
}

export interface CauseWords {
  /** The part at fault. */
  readonly part: string;
  readonly title: string;
  readonly mend: RemedyWords;
  /** How to show that the mend has cured it. */
  readonly proof: string;
}

export interface FactWords {
  readonly question: string;
}

export interface InspectionWords<A extends string = string> {
  readonly title: string;
  readonly how: Lines;
  /** Come before `how`. Written out where there are none, so that none is forgotten. */
  readonly cautions: readonly string[];
  readonly answers: Readonly<Record<A, string>>;
}

type IdOf<T extends { readonly id: string }> = T['id'];

export type SymptomsWords<T extends readonly { readonly id: string }[]> = Readonly<
  Record<IdOf<T[number]>, SymptomWords>
>;

export type FactsWords<T extends readonly { readonly id: string }[]> = Readonly<Record<IdOf<T[number]>, FactWords>>;

/** A replacement is worded where there is one, and only there. */
export type CausesWords<T extends readonly Cause[]> = {
  readonly [C in T[number] as C['id']]: CauseWords &
    (C extends { readonly replace: Remedy } ? { readonly replace: RemedyWords } : unknown);
};

export type InspectionsWords<T extends readonly Pick<Inspection, 'id' | 'answers'>[]> = {
  readonly [C in T[number] as C['id']]: InspectionWords<IdOf<C['answers'][number] & Answer>>;
};

/** All words of the catalogue in one language. */
export interface CatalogueWords {
  readonly symptoms: SymptomsWords<typeof data.symptoms>;
  readonly causes: CausesWords<typeof data.causes>;
  readonly facts: FactsWords<typeof data.facts>;
  readonly inspections: InspectionsWords<typeof data.inspections>;
  readonly tools: Readonly<Record<(typeof data.inspections)[number]['tools'][number], string>>;
}
