import { catalogue, type WordedInspection } from '../../diagnosis/catalogue';
import { openInspections, propose, unsafe } from '../../diagnosis/order';
import { inspectionOf, unreadable } from '../../diagnosis/pick';
import type { Case } from '../../machine/schema';
import { worth } from './worth';

interface Expected {
  readonly machine: string;
  readonly case: string;
  readonly check: string;
}

/** The check whose calculator was opened last from a case. */
let expected: Expected | undefined;

/** Notes for which check of which case the calculator is opened. */
export function expectAnswer(of: Expected): void {
  expected = of;
}

export interface Waiting {
  readonly case: Case;
  readonly check: WordedInspection;
}

function waitsFor(one: Case, calculator: string): WordedInspection | undefined {
  if (one.closed !== null || unreadable(catalogue, one) !== undefined || unsafe(catalogue, one)) return undefined;
  if (one.log.some((entry) => entry.kind === 'mended' && entry.cured)) return undefined;
  const { open } = openInspections(catalogue, one);
  const mine = open.filter((check) => check.calculator === calculator);
  if (mine.length === 0) return undefined;
  if (expected?.case === one.id && expected.machine === one.machine) {
    const asked = mine.find(({ id }) => id === expected?.check);
    if (asked) return asked;
  }
  const { step } = propose(catalogue, one, { worth: worth() });
  return step.kind === 'check' && mine.some(({ id }) => id === step.check)
    ? inspectionOf(catalogue, step.check)
    : undefined;
}

/**
 * The open case that waits for a reading of this calculator: the one it was opened from, else one whose next step it is.
 * @param cases of one machine, the one last touched first
 */
export function waitingCase(cases: readonly Case[], calculator: string): Waiting | undefined {
  const waiting = cases.flatMap((one) => {
    const check = waitsFor(one, calculator);
    return check ? [{ case: one, check }] : [];
  });
  return waiting.find((one) => one.case.id === expected?.case) ?? waiting[0];
}
