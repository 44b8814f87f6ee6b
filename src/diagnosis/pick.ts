import type { Catalogue, Cause, CauseId, Check, CheckId, Course, Fact, Likelihoods, Symptom } from './types';

interface Index {
  readonly symptoms: ReadonlyMap<string, Symptom>;
  readonly causes: ReadonlyMap<string, Cause>;
  readonly facts: ReadonlyMap<string, Fact>;
  readonly checks: ReadonlyMap<string, Check>;
}

const indexes = new WeakMap<Catalogue, Index>();

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

function indexOf(catalogue: Catalogue): Index {
  const known = indexes.get(catalogue);
  if (known) return known;
  const { symptoms, causes, facts, checks } = catalogue;
  const made = { symptoms: byId(symptoms), causes: byId(causes), facts: byId(facts), checks: byId(checks) };
  indexes.set(catalogue, made);
  return made;
}

function found<T>(map: ReadonlyMap<string, T>, id: string, what: string): T {
  const item = map.get(id);
  if (item === undefined) throw new RangeError(`The catalogue has no ${what} “${id}”.`);
  return item;
}

/** @throws RangeError for an id that the catalogue does not have, as do the three below */
export const symptomOf = (catalogue: Catalogue, id: string): Symptom =>
  found(indexOf(catalogue).symptoms, id, 'symptom');
export const causeOf = (catalogue: Catalogue, id: CauseId): Cause => found(indexOf(catalogue).causes, id, 'cause');
export const checkOf = (catalogue: Catalogue, id: CheckId): Check => found(indexOf(catalogue).checks, id, 'check');
const factOf = (catalogue: Catalogue, id: string): Fact => found(indexOf(catalogue).facts, id, 'fact');

/** How a check's answers fall where this is the cause. */
export const rowOf = (check: Check, cause: CauseId): Likelihoods => check.given[cause] ?? check.otherwise;

/** The checks that tell at least one cause of a symptom from the others, in the catalogue's order. */
export function checksFor(catalogue: Catalogue, symptom: string): readonly Check[] {
  const suspects = symptomOf(catalogue, symptom).causes.map(({ cause }) => cause);
  return catalogue.checks.filter((check) => suspects.some((cause) => check.given[cause] !== undefined));
}

/** The facts that bear on a symptom, those that can move the most belief first. */
export function factsFor(catalogue: Catalogue, symptom: string): readonly Fact[] {
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
export function unreadable(catalogue: Catalogue, course: Course): string | undefined {
  try {
    const symptom = symptomOf(catalogue, course.symptom);
    for (const fact of Object.keys(course.facts)) factOf(catalogue, fact);
    for (const entry of course.log) {
      if (entry.kind === 'ruled out' || entry.kind === 'mended') {
        const { title } = causeOf(catalogue, entry.cause);
        if (!symptom.causes.some(({ cause }) => cause === entry.cause))
          return `“${title}” is no cause of this symptom.`;
      } else if (entry.kind === 'answer') {
        const { answers, title } = checkOf(catalogue, entry.check);
        if (!answers.some(({ id }) => id === entry.answer)) return `“${title}” has no answer “${entry.answer}”.`;
      } else if (entry.kind === 'skip') checkOf(catalogue, entry.check);
    }
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}
