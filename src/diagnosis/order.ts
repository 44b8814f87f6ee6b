import { believe } from './belief';
import { causeOf, inspectionOf, inspectionsFor, rowOf, symptomOf } from './pick';
import { inspectFirst, mendFirst, tellsOf, unsparing, type Left, type Plan } from './plan';
import {
  NONE,
  type Belief,
  type Catalogue,
  type CauseId,
  type Inspection,
  type InspectionId,
  type Course,
  type Hazard,
  type Prospect,
  type Outlook,
  type Proposal,
  type Step,
} from './types';
import { effortOf } from './worth';

/** Half a working day: what it takes to hand a case to someone else, whatever the fault (common practice). */
export const HAND_OVER = 180;

/** Below this share a suspicion is not worth a line. */
const NEGLIGIBLE = 1e-6;

/** A danger believed less than this does not hold up the powered inspections. */
const REMOTE = 0.005;

/** Runner-up within this share of the best one's search. */
const CLOSE = 0.2;

/** The hazard that must be made safe before anything else, or undefined. */
export function unsafe(catalogue: Catalogue, course: Course): Hazard | undefined {
  const { hazard } = symptomOf(catalogue, course.symptom);
  return course.log.some(({ kind }) => kind === 'made safe') ? undefined : hazard;
}

/** A cold inspection that parts a danger from the rest by this much (difference of shares of one answer) settles it. */
const TELLING = 0.5;

/** An answer whose odds lie within this factor of even says too little to have looked. */
const FLAT = 1.6;

function telling(inspection: Inspection, cause: CauseId): number {
  const row = rowOf(inspection, cause);
  return Math.max(...Object.entries(row).map(([answer, p]) => Math.abs(p - (inspection.otherwise[answer] ?? 0))));
}

function saysSomething(inspection: Inspection, cause: CauseId, answer: string): boolean {
  const odds = (rowOf(inspection, cause)[answer] ?? 0) / (inspection.otherwise[answer] ?? 1);
  return odds > FLAT || odds < 1 / FLAT;
}

/** Whether a danger still waits for a look with the machine unplugged. */
function waitsForCold(
  all: readonly Inspection[],
  answers: ReadonlyMap<InspectionId, string>,
  danger: CauseId,
): boolean {
  const cold = all.filter((inspection) => !inspection.powered && telling(inspection, danger) >= TELLING);
  const looked = cold.some((inspection) => {
    const answer = answers.get(inspection.id);
    return answer !== undefined && saysSomething(inspection, danger, answer);
  });
  return !looked && cold.some(({ id }) => !answers.has(id));
}

/**
 * The inspections that may be taken now, and those withheld: with a hazard, powered inspections wait until every danger still
 * believed in has been looked at cold, by one that tells it, with an answer that says something. Skipping such an inspection
 * does not let a powered one pass it.
 * @throws RangeError for an id that the catalogue does not have
 */
export function openInspections<C extends Catalogue>(
  catalogue: C,
  course: Course,
  belief: Belief,
): { readonly open: readonly C['inspections'][number][]; readonly withheld: readonly InspectionId[] } {
  const all: readonly C['inspections'][number][] = inspectionsFor(catalogue, course.symptom);
  const answers = new Map(
    course.log.flatMap((entry) => (entry.kind === 'answer' ? [[entry.check, entry.answer] as const] : [])),
  );
  const skipped = new Set(course.log.flatMap((entry) => (entry.kind === 'skip' ? [entry.check] : [])));
  const holding =
    symptomOf(catalogue, course.symptom).hazard !== undefined &&
    belief.ranked
      .filter((id) => causeOf(catalogue, id).danger && (belief.causes[id] ?? 0) > REMOTE)
      .some((danger) => waitsForCold(all, answers, danger));
  const willing = all.filter(({ id }) => !answers.has(id) && !skipped.has(id));
  return {
    open: willing.filter((inspection) => !(holding && inspection.powered)),
    withheld: willing.filter((inspection) => holding && inspection.powered).map(({ id }) => id),
  };
}

/** Causes whose mend is still to be tried. */
export function openMends(course: Course, belief: Belief): readonly CauseId[] {
  const tried = new Set(course.log.flatMap((entry) => (entry.kind === 'mended' ? [entry.cause] : [])));
  return belief.ranked.filter((id) => !tried.has(id) && (belief.causes[id] ?? 0) > NEGLIGIBLE);
}

interface Laid {
  readonly plan: Plan;
  readonly left: Left;
  readonly causes: readonly CauseId[];
  readonly inspections: readonly Inspection[];
}

function lay(catalogue: Catalogue, course: Course, belief: Belief, worth: number | undefined): Laid {
  const causes = symptomOf(catalogue, course.symptom).causes.map(({ cause }) => cause);
  const { open } = openInspections(catalogue, course, belief);
  const mends = openMends(course, belief);
  const hypotheses = [...causes, NONE];
  const laid = open.map((inspection) => ({
    effort: inspection.minutes,
    rows: inspection.answers.map(({ id }) => hypotheses.map((cause) => rowOf(inspection, cause)[id] ?? 0)),
  }));
  const plan: Plan = {
    mends: causes.map((id) => {
      const { mend } = causeOf(catalogue, id);
      return { effort: effortOf(mend, worth), works: mend.works };
    }),
    inspections: laid,
    tells: tellsOf(laid, causes.length),
    handOver: HAND_OVER,
  };
  const bits = causes.reduce((sum, id, i) => (mends.includes(id) ? sum | (1 << i) : sum), 0);
  const p = [...causes.map((id) => belief.causes[id] ?? 0), belief.none];
  return { plan, left: { p, mends: bits, inspections: 2 ** open.length - 1 }, causes, inspections: open };
}

function prospectsOf({ plan, left, causes, inspections }: Laid): Prospect[] {
  const ofInspections = inspections.map((inspection, i): Prospect => ({
    step: { kind: 'check', check: inspection.id },
    effort: inspection.minutes,
    expected: inspectFirst(plan, left, i),
  }));
  const ofMends = causes.flatMap((cause, i): Prospect[] => {
    if ((left.mends & (1 << i)) === 0) return [];
    const effort = plan.mends[i]?.effort ?? 0;
    return [{ step: { kind: 'mend', cause }, effort, expected: mendFirst(plan, left, i) }];
  });
  const over: Prospect = { step: { kind: 'hand over' }, effort: plan.handOver, expected: plan.handOver };
  return [...ofInspections, ...ofMends, over].sort((a, b) => a.expected - b.expected);
}

function outlooksOf(catalogue: Catalogue, course: Course, belief: Belief, id: InspectionId): Outlook[] {
  const known = inspectionOf(catalogue, id);
  return known.answers.map(({ id: answer }) => {
    const of = (cause: CauseId): number => rowOf(known, cause)[answer] ?? 0;
    const chance = Object.entries(belief.causes).reduce(
      (sum, [cause, p]) => sum + p * of(cause),
      belief.none * of(NONE),
    );
    const log = [...course.log, { kind: 'answer', check: id, answer } as const];
    return { answer, chance, belief: believe(catalogue, { ...course, log }) };
  });
}

/** Causes that an answer can move by more than a tenth of what the most moved one does. */
function partsOf(belief: Belief, outlooks: readonly Outlook[]): CauseId[] {
  const moved = (id: CauseId): number =>
    Math.max(0, ...outlooks.map((outlook) => Math.abs((outlook.belief.causes[id] ?? 0) - (belief.causes[id] ?? 0))));
  const most = Math.max(0, ...belief.ranked.map(moved));
  return belief.ranked.filter((id) => moved(id) > most / 10).sort((a, b) => moved(b) - moved(a));
}

const settled = (step: Step, effort: number, belief: Belief): Proposal => ({
  step,
  effort,
  expected: effort,
  others: [],
  close: undefined,
  outlooks: [],
  parts: [],
  belief,
  withheld: [],
});

/**
 * The next step by least expected effort to the end of the case (inspections, mends tried in vain, the mend that cures), looking
 * one step ahead and taking the rest as looking at one cause after the other. All other steps come with theirs.
 * @param worth what an hour of the person is worth, in the money that costs are in
 * @throws RangeError for an id that the catalogue does not have
 */
export function propose(catalogue: Catalogue, course: Course, { worth }: { readonly worth?: number } = {}): Proposal {
  const belief = believe(catalogue, course);
  const cure = course.log.find((entry) => entry.kind === 'mended' && entry.cured);
  if (cure?.kind === 'mended') return settled({ kind: 'closed', cause: cure.cause }, 0, belief);
  const hazard = unsafe(catalogue, course);
  if (hazard) return settled({ kind: 'make safe', hazard }, 1, belief);
  const laid = lay(catalogue, course, belief, worth);
  const [best, ...others] = prospectsOf(laid);
  if (!best) return settled({ kind: 'hand over' }, HAND_OVER, belief);
  const spared = unsparing(laid.plan, laid.left);
  const next = others[0];
  const close = next && next.expected - spared < (1 + CLOSE) * (best.expected - spared) ? next : undefined;
  const outlooks = best.step.kind === 'check' ? outlooksOf(catalogue, course, belief, best.step.check) : [];
  const parts = best.step.kind === 'mend' ? [best.step.cause] : partsOf(belief, outlooks);
  const { withheld } = openInspections(catalogue, course, belief);
  return { ...best, others, close, outlooks, parts, belief, withheld };
}
