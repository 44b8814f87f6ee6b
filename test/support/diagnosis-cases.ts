import { believe } from '../../src/diagnosis/belief';
import { propose } from '../../src/diagnosis/order';
import { inspectionOf } from '../../src/diagnosis/pick';
import type { Catalogue, Course, Entry } from '../../src/diagnosis/types';
import type { WrittenCase } from '../cases/diagnosis';

/** What was done before the true cause's mend was proposed, wrong mends with the checks. */
export interface Found {
  readonly steps: readonly string[];
  /** Steps after which the true cause led the belief and stayed there. */
  readonly ledAfter: number;
  readonly found: boolean;
}

/** The answer a written case gives; where it names none, that of a machine without a listed fault. */
function answerOf(catalogue: Catalogue, written: WrittenCase, id: string): string {
  const named = written.answers[id];
  if (named !== undefined) return named;
  const { otherwise } = inspectionOf(catalogue, id);
  return Object.entries(otherwise).sort(([, a], [, b]) => b - a)[0]![0];
}

/** Follows the proposals until the true cause's mend is proposed, or the case is given up. */
export function follow(catalogue: Catalogue, written: WrittenCase): Found {
  let course: Course = { symptom: written.symptom, facts: written.facts, log: [] };
  const steps: string[] = [];
  let ledAfter = 0;
  for (;;) {
    if (believe(catalogue, course).ranked[0] !== written.truth) ledAfter = steps.length + 1;
    const { step } = propose(catalogue, course);
    if (step.kind === 'mend' && step.cause === written.truth) return { steps, ledAfter, found: true };
    if (step.kind === 'hand over' || step.kind === 'closed') return { steps, ledAfter, found: false };
    let entry: Entry = { kind: 'made safe' };
    if (step.kind === 'check') {
      const answer = answerOf(catalogue, written, step.check);
      entry = { kind: 'answer', check: step.check, answer };
      steps.push(`${step.check}: ${answer}`);
    } else if (step.kind === 'mend') {
      entry = { kind: 'mended', cause: step.cause, cured: false };
      steps.push(`mend ${step.cause}: in vain`);
    }
    course = { ...course, log: [...course.log, entry] };
  }
}
