import { causeOf, inspectionOf, rowOf, symptomOf } from './pick';
import { NONE, type Belief, type Catalogue, type CauseId, type Inspection, type Course, type Entry } from './types';

/** Share of machines that have a second fault behind the same symptom (common practice, no source). */
export const SECOND = 0.1;

/** What being fairly sure leaves of a suspicion. */
const FAIRLY = 0.1;

/** One way the machine may be: the fault still at work, and the one that was at work beside it until it was mended. */
interface Hypothesis {
  readonly fault: CauseId;
  readonly beside: CauseId | undefined;
  readonly prior: number;
}

/** Shares before any inspection: the catalogue's, moved by the facts. Not yet adding up to one. */
function priorsOf(catalogue: Catalogue, course: Course): ReadonlyMap<CauseId, number> {
  const symptom = symptomOf(catalogue, course.symptom);
  const priors = new Map<CauseId, number>();
  for (const { cause, prior } of symptom.causes) {
    let weight = prior;
    for (const { fact, factor, otherwise = 1 } of causeOf(catalogue, cause).raisedBy) {
      const holds = course.facts[fact];
      if (holds !== undefined) weight *= holds ? factor : otherwise;
    }
    priors.set(cause, weight);
  }
  priors.set(NONE, symptom.none);
  return priors;
}

function hypothesesOf(priors: ReadonlyMap<CauseId, number>, log: readonly Entry[]): Hypothesis[] {
  const total = [...priors.values()].reduce((sum, weight) => sum + weight, 0);
  const alone = [...priors].map(([fault, weight]) => ({ fault, beside: undefined, prior: weight / total }));
  const mended = log.flatMap((entry) => (entry.kind === 'mended' && !entry.cured ? [entry.cause] : []));
  const pairs = mended.flatMap((beside, i) => {
    const share = SECOND * ((priors.get(beside) ?? 0) / total);
    return alone
      .filter(({ fault }) => fault !== beside && !mended.slice(0, i).includes(fault))
      .map(({ fault, prior }) => ({ fault, beside, prior: share * prior }));
  });
  return [...alone, ...pairs];
}

/** With two faults at work, the one that the inspection is about decides its answer; where it is about both, either may. */
function chanceOf(inspection: Inspection, answer: string, fault: CauseId, beside: CauseId | undefined): number {
  const one = rowOf(inspection, fault)[answer] ?? 0;
  if (beside === undefined || inspection.given[beside] === undefined) return one;
  const other = rowOf(inspection, beside)[answer] ?? 0;
  return inspection.given[fault] === undefined ? other : (one + other) / 2;
}

function likelihood(catalogue: Catalogue, log: readonly Entry[], { fault, beside }: Hypothesis): number {
  let chance = 1;
  let stillBeside = beside;
  for (const entry of log) {
    if (entry.kind === 'answer') {
      chance *= chanceOf(inspectionOf(catalogue, entry.check), entry.answer, fault, stillBeside);
    } else if (entry.kind === 'ruled out' && (entry.cause === fault || entry.cause === stillBeside)) {
      chance *= entry.sure === 'certain' ? 0 : FAIRLY;
    } else if (entry.kind === 'mended') {
      const { works } = causeOf(catalogue, entry.cause).mend;
      if (entry.cause === stillBeside) {
        chance *= works;
        stillBeside = undefined;
      } else if (entry.cause === fault) chance *= 1 - works;
    }
  }
  return chance;
}

/**
 * What is suspected after all that is in the course, by Bayes' rule over: each cause alone, none of the listed, and, after a
 * mend that did not cure, each cause as a second fault beside the mended one. Answers are taken as independent given the
 * faults. A mend that cured leaves its cause alone.
 * @throws RangeError for an id that the catalogue does not have
 */
export function believe(catalogue: Catalogue, course: Course): Belief {
  const suspects = symptomOf(catalogue, course.symptom).causes.map(({ cause }) => cause);
  const shares = new Map<CauseId, number>();
  const cure = course.log.find((entry) => entry.kind === 'mended' && entry.cured);
  if (cure?.kind === 'mended') shares.set(cure.cause, 1);
  else {
    for (const hypothesis of hypothesesOf(priorsOf(catalogue, course), course.log)) {
      const weight = hypothesis.prior * likelihood(catalogue, course.log, hypothesis);
      shares.set(hypothesis.fault, (shares.get(hypothesis.fault) ?? 0) + weight);
    }
  }
  // `none` can never be ruled out, so the sum is above zero as long as no answer has a chance of zero.
  const total = [...shares.values()].reduce((sum, weight) => sum + weight, 0);
  const share = (id: CauseId): number => (shares.get(id) ?? 0) / total;
  const causes = Object.fromEntries(suspects.map((id) => [id, share(id)]));
  return { causes, none: share(NONE), ranked: [...suspects].sort((a, b) => share(b) - share(a)) };
}
