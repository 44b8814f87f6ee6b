import { propose } from '../../src/diagnosis/order';
import { causeOf, inspectionOf, symptomOf } from '../../src/diagnosis/pick';
import { believe } from '../../src/diagnosis/belief';
import type { Catalogue, Course, Entry, Inspection, Proposal, Step } from '../../src/diagnosis/types';

/*
 * Random walks through a complaint: at each point the person takes the proposal or any other step that is offered; a quarter of the
 * checks, drawn at the start, is not doable and is skipped whenever it comes. In every second walk the
 * machine answers as one with a fault drawn from the shares does, in the others with anything. The rule is written here again, from its words, and not
 * taken from src/diagnosis/dangers.ts.
 */

/** Numbers in [0, 1), the same from the same seed (mulberry32). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const told = (check: Inspection, cause: string, answer: string): number =>
  ((check.given[cause] ?? check.otherwise)[answer] ?? 0) / (check.otherwise[answer] ?? 1);

interface Waiting {
  /** Above one in a hundred, no unplugged check has said anything of it, and it was not mended. */
  readonly unseen: readonly string[];
  /** Above one in a hundred, seen by an unplugged check that tells it, and not mended. */
  readonly found: readonly string[];
}

function waiting(catalogue: Catalogue, course: Course): Waiting {
  const belief = believe(catalogue, course);
  const mended = (id: string) => course.log.some((entry) => entry.kind === 'mended' && entry.cause === id);
  const dangers = symptomOf(catalogue, course.symptom)
    .causes.map(({ cause }) => cause)
    .filter((id) => causeOf(catalogue, id).danger && belief.causes[id]! > 0.01 && !mended(id));
  const odds = (id: string, least: number): number[] =>
    course.log.flatMap((entry) => {
      if (entry.kind !== 'answer') return [];
      const check = inspectionOf(catalogue, entry.check);
      const row = check.given[id];
      if (check.powered || !row) return [];
      const apart = Math.max(...Object.keys(row).map((answer) => Math.abs(row[answer]! - check.otherwise[answer]!)));
      return apart < least ? [] : [told(check, id, entry.answer)];
    });
  return {
    unseen: dangers.filter((id) => !odds(id, 0).some((one) => one > 1.5 || one < 1 / 1.5)),
    found: dangers.filter((id) => odds(id, 0.5).some((one) => one > 1.6)),
  };
}

/** Whether a step, or its trial, heats, powers or moves. */
function powered(catalogue: Catalogue, step: Step): boolean {
  if (step.kind === 'check') return inspectionOf(catalogue, step.check).powered;
  if (step.kind !== 'mend') return false;
  const { mend, replace } = causeOf(catalogue, step.cause);
  return [mend, replace].some((way) => way?.powered === true || way?.trialPowered === true);
}

export interface Walked {
  /** Powered steps offered while a danger waited, with the danger. */
  readonly breaches: readonly string[];
  readonly handedOver: boolean;
  readonly poweredSteps: number;
}

const offered = (proposal: Proposal): readonly Step[] => [proposal, ...proposal.others].map(({ step }) => step);

interface Person {
  readonly undoable: ReadonlySet<string>;
  /** The fault, which the answers follow; undefined where they are any. */
  readonly truth: string | undefined;
  readonly random: () => number;
}

function drawn(weights: Readonly<Record<string, number>>, random: () => number): string {
  let rest = random() * Object.values(weights).reduce((sum, one) => sum + one, 0);
  const entries = Object.entries(weights);
  return (entries.find(([, weight]) => (rest -= weight) < 0) ?? entries[0]!)[0];
}

function entryFor(catalogue: Catalogue, step: Step, { undoable, truth, random }: Person): Entry | undefined {
  if (step.kind === 'make safe') return { kind: 'made safe' };
  if (step.kind === 'check') {
    if (undoable.has(step.check)) return { kind: 'skip', check: step.check };
    const { answers, given, otherwise } = inspectionOf(catalogue, step.check);
    const any = Object.fromEntries(answers.map(({ id }) => [id, 1]));
    const answer = drawn(truth === undefined ? any : (given[truth] ?? otherwise), random);
    return { kind: 'answer', check: step.check, answer };
  }
  return step.kind === 'mend' ? { kind: 'mended', cause: step.cause, cured: false } : undefined;
}

/** One walk to its end. @param seed of the person, the checks that cannot be done, and the machine's answers */
export function walk(catalogue: Catalogue, symptom: string, seed: number): Walked {
  const random = generator(seed);
  const undoable = new Set(catalogue.inspections.filter(() => random() < 0.25).map(({ id }) => id));
  const facts = Object.fromEntries(catalogue.facts.filter(() => random() < 0.3).map(({ id }) => [id, random() < 0.5]));
  const shares = Object.fromEntries(symptomOf(catalogue, symptom).causes.map(({ cause, prior }) => [cause, prior]));
  const person: Person = { undoable, truth: seed % 2 === 0 ? drawn(shares, random) : undefined, random };
  const breaches: string[] = [];
  let course: Course = { symptom, facts, log: [] };
  let poweredSteps = 0;
  for (;;) {
    const proposal = propose(catalogue, course);
    const steps = offered(proposal);
    const gated = symptomOf(catalogue, symptom).hazard !== undefined;
    const safe = !gated || course.log.some(({ kind }) => kind === 'made safe');
    const { unseen, found } = waiting(catalogue, course);
    for (const step of steps) {
      if (!powered(catalogue, step)) continue;
      poweredSteps += 1;
      const others = found.filter((id) => step.kind !== 'mend' || step.cause !== id);
      if (!safe || unseen.length + others.length > 0)
        breaches.push(`${JSON.stringify(step)} while ${[...unseen, ...others].join(', ')}`);
    }
    // Mostly as proposed; sometimes what was offered beside it.
    const step = random() < 0.7 ? steps[0]! : steps[Math.floor(random() * steps.length)]!;
    const entry = entryFor(catalogue, step, person);
    if (!entry) return { breaches, handedOver: step.kind === 'hand over', poweredSteps };
    course = { ...course, log: [...course.log, entry] };
  }
}
