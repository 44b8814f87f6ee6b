import type { WordedCatalogue } from './catalogue';
import type { Catalogue, CauseId, Inspection, InspectionId, Course, Likelihoods } from './types';
import say from './words/en';

/* What is picked is as the catalogue that it is picked from has it: with words where that has words. */

type SymptomIn<C extends Catalogue> = C['symptoms'][number];
type CauseIn<C extends Catalogue> = C['causes'][number];
type FactIn<C extends Catalogue> = C['facts'][number];
type InspectionIn<C extends Catalogue> = C['inspections'][number];

interface Index<C extends Catalogue> {
  readonly symptoms: ReadonlyMap<string, SymptomIn<C>>;
  readonly causes: ReadonlyMap<string, CauseIn<C>>;
  readonly facts: ReadonlyMap<string, FactIn<C>>;
  readonly inspections: ReadonlyMap<string, InspectionIn<C>>;
}

const indexes = new WeakMap<Catalogue, Index<Catalogue>>();

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

function indexOf<C extends Catalogue>(catalogue: C): Index<C> {
  // Made below, of the lists of this very catalogue.
  const known = indexes.get(catalogue) as Index<C> | undefined;
  if (known) return known;
  const made: Index<C> = {
    symptoms: byId<SymptomIn<C>>(catalogue.symptoms),
    causes: byId<CauseIn<C>>(catalogue.causes),
    facts: byId<FactIn<C>>(catalogue.facts),
    inspections: byId<InspectionIn<C>>(catalogue.inspections),
  };
  indexes.set(catalogue, made);
  return made;
}

function found<T>(map: ReadonlyMap<string, T>, id: string, missing: (id: string) => string): T {
  const item = map.get(id);
  if (item === undefined) throw new RangeError(missing(id));
  return item;
}

/** @throws RangeError for an id that the catalogue does not have, as do the three below */
export const symptomOf = <C extends Catalogue>(catalogue: C, id: string): SymptomIn<C> =>
  found(indexOf(catalogue).symptoms, id, say.unlisted.symptom);
export const causeOf = <C extends Catalogue>(catalogue: C, id: CauseId): CauseIn<C> =>
  found(indexOf(catalogue).causes, id, say.unlisted.cause);
export const inspectionOf = <C extends Catalogue>(catalogue: C, id: InspectionId): InspectionIn<C> =>
  found(indexOf(catalogue).inspections, id, say.unlisted.inspection);
const factOf = <C extends Catalogue>(catalogue: C, id: string): FactIn<C> =>
  found(indexOf(catalogue).facts, id, say.unlisted.fact);

/** How an inspection's answers fall where this is the cause. */
export const rowOf = (inspection: Inspection, cause: CauseId): Likelihoods =>
  inspection.given[cause] ?? inspection.otherwise;

/** The inspections that tell at least one cause of a symptom from the others, in the catalogue's order. */
export function inspectionsFor<C extends Catalogue>(catalogue: C, symptom: string): readonly InspectionIn<C>[] {
  const suspects = symptomOf(catalogue, symptom).causes.map(({ cause }) => cause);
  return catalogue.inspections.filter((inspection: InspectionIn<C>) =>
    suspects.some((cause) => inspection.given[cause] !== undefined),
  );
}

/** The facts that bear on a symptom, those that can move the most belief first. */
export function factsFor<C extends Catalogue>(catalogue: C, symptom: string): readonly FactIn<C>[] {
  const weights = new Map<string, number>();
  for (const { cause, prior } of symptomOf(catalogue, symptom).causes) {
    for (const { fact, factor, otherwise = 1 } of causeOf(catalogue, cause).raisedBy) {
      const moved = prior * (Math.abs(factor - 1) + Math.abs(otherwise - 1));
      weights.set(fact, (weights.get(fact) ?? 0) + moved);
    }
  }
  return [...weights].sort(([, a], [, b]) => b - a).map(([id]) => factOf(catalogue, id));
}

/**
 * Whether a stored or received course can be read with this catalogue.
 * @returns undefined where it can, else one sentence why not
 */
export function unreadable(catalogue: WordedCatalogue, course: Course): string | undefined {
  try {
    const symptom = symptomOf(catalogue, course.symptom);
    for (const fact of Object.keys(course.facts)) factOf(catalogue, fact);
    for (const entry of course.log) {
      if (entry.kind === 'ruled out' || entry.kind === 'mended') {
        const { title } = causeOf(catalogue, entry.cause);
        if (!symptom.causes.some(({ cause }) => cause === entry.cause)) return say.unreadable.noCause(title);
      } else if (entry.kind === 'answer') {
        const { answers, title } = inspectionOf(catalogue, entry.check);
        if (!answers.some(({ id }) => id === entry.answer)) return say.unreadable.noAnswer(title, entry.answer);
      } else if (entry.kind === 'skip') inspectionOf(catalogue, entry.check);
    }
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}
