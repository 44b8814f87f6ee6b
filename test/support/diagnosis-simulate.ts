import { believe } from '../../src/diagnosis/belief';
import { HAND_OVER, allowedMends, openInspections, openMends, propose, unsafe } from '../../src/diagnosis/order';
import { causeOf, inspectionOf, rowOf, symptomOf } from '../../src/diagnosis/pick';
import {
  NONE,
  type Belief,
  type Catalogue,
  type CauseId,
  type Inspection,
  type Course,
  type Entry,
  type Step,
} from '../../src/diagnosis/types';
import { effortOf } from '../../src/diagnosis/worth';

/*
 * Cases drawn from the catalogue's own priors and reliabilities. Every order meets the same cases: the same fault, the same
 * answer to the same check, the same luck with the same mend. A case ends when a mend has cured the true cause, or when it is
 * handed over; both count. Effort is minutes of every check and mend, parts counted at the usual hourly worth.
 */

export type Order = (catalogue: Catalogue, course: Course, belief: Belief) => Step;

/** A number in [0, 1) from words: the same words, the same number (FNV-1a, then a mixing step). */
function luck(...words: readonly (string | number)[]): number {
  let hash = 2166136261;
  for (const letter of words.join('/')) hash = Math.imul(hash ^ letter.charCodeAt(0), 16777619);
  hash = Math.imul(hash ^ (hash >>> 16), 2246822507);
  hash = Math.imul(hash ^ (hash >>> 13), 3266489909);
  return ((hash ^ (hash >>> 16)) >>> 0) / 4294967296;
}

function drawn(shares: readonly (readonly [string, number])[], at: number): string {
  let rest = at * shares.reduce((sum, [, share]) => sum + share, 0);
  for (const [id, share] of shares) {
    rest -= share;
    if (rest < 0) return id;
  }
  return shares.at(-1)![0];
}

export interface Ended {
  readonly effort: number;
  /** Effort until the true cause's mend was begun; all of it where that never came. */
  readonly search: number;
  readonly checks: number;
  readonly cured: boolean;
}

interface World {
  readonly catalogue: Catalogue;
  readonly symptom: string;
  readonly truth: CauseId;
  readonly seed: string;
}

function entryFor(world: World, step: Step): Entry | undefined {
  if (step.kind === 'make safe') return { kind: 'made safe' };
  if (step.kind === 'check') {
    const row = rowOf(inspectionOf(world.catalogue, step.check), world.truth);
    return { kind: 'answer', check: step.check, answer: drawn(Object.entries(row), luck(world.seed, step.check)) };
  }
  if (step.kind !== 'mend') return undefined;
  const { works } = causeOf(world.catalogue, step.cause).mend;
  return { kind: 'mended', cause: step.cause, cured: step.cause === world.truth && luck(world.seed, 'mend') < works };
}

function effortOfStep(catalogue: Catalogue, step: Step): number {
  if (step.kind === 'make safe') return 1;
  if (step.kind === 'check') return inspectionOf(catalogue, step.check).minutes;
  return step.kind === 'mend' ? effortOf(causeOf(catalogue, step.cause).mend) : HAND_OVER;
}

/** Runs one case to its end. `world` holds the truth; the order knows `catalogue` only. */
function run(catalogue: Catalogue, world: World, order: Order): Ended {
  let course: Course = { symptom: world.symptom, facts: {}, log: [] };
  let effort = 0;
  let checks = 0;
  let search: number | undefined;
  for (;;) {
    const hazard = unsafe(catalogue, course);
    const step: Step = hazard
      ? { kind: 'make safe', hazard, first: 'unplug' }
      : order(catalogue, course, believe(catalogue, course));
    const cost = effortOfStep(catalogue, step);
    const entry = entryFor(world, step);
    if (step.kind === 'mend' && step.cause === world.truth) search ??= effort;
    effort += cost;
    if (step.kind === 'check') checks += 1;
    const cured = entry?.kind === 'mended' ? entry.cured : false;
    if (!entry || cured) return { effort, search: search ?? effort, checks, cured };
    course = { ...course, log: [...course.log, entry] };
  }
}

/** Remembers an order's steps: many cases run through the same answers. */
export function remembered(order: Order): Order {
  const known = new Map<string, Step>();
  return (catalogue, course, belief) => {
    const key = JSON.stringify([course.symptom, course.log]);
    const step = known.get(key) ?? order(catalogue, course, belief);
    known.set(key, step);
    return step;
  };
}

/** `cases` of every symptom, in the catalogue's order of symptoms. The truth follows `world`. */
export function simulate(catalogue: Catalogue, order: Order, cases: number, seed: string, world = catalogue): Ended[] {
  return catalogue.symptoms.flatMap(({ id: symptom }) => {
    const { causes, none } = symptomOf(world, symptom);
    const shares = [...causes.map(({ cause, prior }) => [cause, prior] as const), [NONE, none] as const];
    return Array.from({ length: cases }, (_, i) => {
      const own = `${seed}/${symptom}/${i}`;
      // Evenly spread over the shares, each within its own strip: less scatter, no bias.
      const truth = drawn(shares, (i + luck(own, 'truth')) / cases);
      return run(catalogue, { catalogue: world, symptom, truth, seed: own }, order);
    });
  });
}

/** Ours: the step that `propose` gives. */
export const ours: Order = (catalogue, course) => propose(catalogue, course).step;

/** Chance over effort of the mends alone, without a check, until handing over is cheaper. */
export const mendsOnly: Order = (catalogue, course, belief) => {
  const gain = (id: CauseId): number => (belief.causes[id] ?? 0) * causeOf(catalogue, id).mend.works;
  const ratio = (id: CauseId): number => gain(id) / effortOf(causeOf(catalogue, id).mend);
  const [best] = [...allowedMends(catalogue, course, belief)].sort((a, b) => ratio(b) - ratio(a));
  return best !== undefined && ratio(best) > 1 / HAND_OVER ? { kind: 'mend', cause: best } : { kind: 'hand over' };
};

type Next = (
  open: readonly Inspection[],
  belief: Belief,
  catalogue: Catalogue,
  course: Course,
) => Inspection | undefined;

/**
 * One of the other orders. All share this rule: belief by the same Bayes' rule; the most believed cause is mended as soon as
 * its share is `sure`; a check that tells only causes below one in a hundred is passed over; when no check is left, the mends
 * go on in the order of chance over effort. What a danger withholds is withheld from them too. `next` says which check comes first.
 */
export const byRule =
  (next: Next, sure: number): Order =>
  (catalogue, course, belief) => {
    const mends = openMends(course, belief);
    const allowed = new Set(allowedMends(catalogue, course, belief));
    const [top] = mends.slice(0, 1).filter((id) => allowed.has(id));
    if (top !== undefined && (belief.causes[top] ?? 0) >= sure) return { kind: 'mend', cause: top };
    const { open } = openInspections(catalogue, course);
    const worth = open.filter(({ given }) => mends.some((id) => given[id] && (belief.causes[id] ?? 0) > 0.01));
    const check = next(worth, belief, catalogue, course);
    return check ? { kind: 'check', check: check.id } : mendsOnly(catalogue, course, belief);
  };

/** How well a check tells a cause: the largest difference of an answer's share. */
function telling(check: Inspection, cause: CauseId): number {
  const row = rowOf(check, cause);
  return Math.max(...Object.entries(row).map(([answer, p]) => Math.abs(p - (check.otherwise[answer] ?? 0))));
}

/** The catalogue's own order. */
export const fixedList = (open: readonly Inspection[]): Inspection | undefined => open[0];

/** The check that tells the most believed cause best; where none is left for it, the next cause's. */
export const mostLikely = (open: readonly Inspection[], belief: Belief): Inspection | undefined => {
  for (const id of belief.ranked) {
    const [best] = open
      .filter((check) => check.given[id] !== undefined)
      .sort((a, b) => telling(b, id) - telling(a, id) || a.minutes - b.minutes);
    if (best) return best;
  }
  return undefined;
};

/** Our order of the checks, put under the others' rule: what the order alone is worth. Remembers its rankings, as `remembered`. */
export function ourChecks(): Next {
  const known = new Map<string, readonly string[]>();
  return (open, _, catalogue, course) => {
    const key = JSON.stringify([course.symptom, course.log]);
    let ranking = known.get(key);
    if (!ranking) {
      const proposal = propose(catalogue, course);
      ranking = [proposal, ...proposal.others].flatMap(({ step }) => (step.kind === 'check' ? [step.check] : []));
      known.set(key, ranking);
    }
    const first = ranking.find((id) => open.some((check) => check.id === id));
    return open.find(({ id }) => id === first);
  };
}

/** The quickest check; among equals the catalogue's order. */
export const cheapest = (open: readonly Inspection[]): Inspection | undefined =>
  [...open].sort((a, b) => a.minutes - b.minutes)[0];

export interface Mean {
  readonly mean: number;
  /** Standard error of the mean. */
  readonly se: number;
}

export function meanOf(values: readonly number[]): Mean {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  return { mean, se: Math.sqrt(variance / values.length) };
}

/** Mean of a less b, case by case: the cases are the same. */
export const difference = (a: readonly Ended[], b: readonly Ended[], of: (ended: Ended) => number): Mean =>
  meanOf(a.map((ended, i) => of(ended) - of(b[i]!)));

/** A number from the normal distribution, mean 0 and standard deviation 1 (Box & Muller). */
const normal = (...words: readonly string[]): number =>
  Math.sqrt(-2 * Math.log(1 - luck(...words, 'r'))) * Math.cos(2 * Math.PI * luck(...words, 'a'));

function whole(weights: Readonly<Record<string, number>>): Record<string, number> {
  const total = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
  return Object.fromEntries(Object.entries(weights).map(([id, weight]) => [id, weight / total]));
}

/** The world where the catalogue's judgements are wrong: every share and every chance of an answer off by a factor of two or so. */
export function disturbed(catalogue: Catalogue, seed: string): Catalogue {
  const off = (...words: readonly string[]): number => Math.exp(Math.LN2 * normal(seed, ...words));
  const row = (id: string, cause: string, given: Readonly<Record<string, number>>): Record<string, number> =>
    whole(Object.fromEntries(Object.entries(given).map(([answer, p]) => [answer, p * off(id, cause, answer)])));
  return {
    ...catalogue,
    symptoms: catalogue.symptoms.map((symptom) => {
      const weights = Object.fromEntries(
        symptom.causes.map(({ cause, prior }) => [cause, prior * off(symptom.id, cause)]),
      );
      const shares = whole({ ...weights, [NONE]: symptom.none * off(symptom.id, NONE) });
      const causes = symptom.causes.map(({ cause }) => ({ cause, prior: shares[cause]! }));
      return { ...symptom, causes, none: shares[NONE]! };
    }),
    inspections: catalogue.inspections.map((check) => ({
      ...check,
      given: Object.fromEntries(
        Object.entries(check.given).map(([cause, given]) => [cause, row(check.id, cause, given)]),
      ),
      otherwise: row(check.id, NONE, check.otherwise),
    })),
  };
}
