import { believe } from './belief';
import { canClear, dangersOf, hazardOf, holding, looksLeft, mayTake, safetySaid } from './dangers';
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
  type Dangers,
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

/** Runner-up within this share of the best one's search. */
const CLOSE = 0.2;

/** The hazard that must be made safe before anything else, or undefined. */
export const unsafe = (catalogue: Catalogue, course: Course): Hazard | undefined =>
  safetySaid(course) === 'done' ? undefined : hazardOf(catalogue, course)?.hazard;

/**
 * The inspections that may be taken now, and those withheld: what heats, powers or moves waits until every danger that is still
 * believed in was looked at unplugged, by an inspection that tells it, with an answer that says something. Skipping that inspection
 * does not let anything pass it.
 * @throws RangeError for an id that the catalogue does not have
 */
export function openInspections<C extends Catalogue>(
  catalogue: C,
  course: Course,
): { readonly open: readonly C['inspections'][number][]; readonly withheld: readonly InspectionId[] } {
  return openUnder(catalogue, course, dangersOf(catalogue, course));
}

function openUnder<C extends Catalogue>(
  catalogue: C,
  course: Course,
  dangers: Dangers,
): { readonly open: readonly C['inspections'][number][]; readonly withheld: readonly InspectionId[] } {
  const all: readonly C['inspections'][number][] = inspectionsFor(catalogue, course.symptom);
  const past = new Set(
    course.log.flatMap((entry) => (entry.kind === 'answer' || entry.kind === 'skip' ? [entry.check] : [])),
  );
  const willing = all.filter(({ id }) => !past.has(id));
  const may = (check: InspectionId): boolean => mayTake(catalogue, dangers, { kind: 'check', check });
  return {
    open: willing.filter(({ id }) => may(id)),
    withheld: willing.filter(({ id }) => !may(id)).map(({ id }) => id),
  };
}

/** Causes whose mend is still to be tried. */
export function openMends(course: Course, belief: Belief): readonly CauseId[] {
  const tried = new Set(course.log.flatMap((entry) => (entry.kind === 'mended' ? [entry.cause] : [])));
  return belief.ranked.filter((id) => !tried.has(id) && (belief.causes[id] ?? 0) > NEGLIGIBLE);
}

/** Causes whose mend is still to be tried and may be taken now. */
export function allowedMends(catalogue: Catalogue, course: Course, belief: Belief): readonly CauseId[] {
  const dangers = dangersOf(catalogue, course);
  return openMends(course, belief).filter((cause) => mayTake(catalogue, dangers, { kind: 'mend', cause }));
}

interface Laid {
  readonly plan: Plan;
  readonly left: Left;
  readonly causes: readonly CauseId[];
  readonly inspections: readonly Inspection[];
}

/** What is withheld counts in the plan as far as mends go: without them no look would be worth taking. */
function lay(catalogue: Catalogue, course: Course, belief: Belief, open: readonly Inspection[], worth?: number): Laid {
  const causes = symptomOf(catalogue, course.symptom).causes.map(({ cause }) => cause);
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

const NO_DANGERS: Dangers = { unseen: [], found: [], unlisted: false };

const settled = (step: Step, effort: number, belief: Belief, dangers = NO_DANGERS): Proposal => ({
  step,
  effort,
  expected: effort,
  others: [],
  close: undefined,
  outlooks: [],
  parts: [],
  belief,
  withheld: [],
  withheldMends: [],
  dangers,
});

/** What is left to choose from, best first, and which of it comes first. */
function ranked(catalogue: Catalogue, laid: Laid, dangers: Dangers): readonly Prospect[] {
  const all = prospectsOf(laid);
  if (!holding(dangers)) return all;
  const over: Step = { kind: 'hand over', unplugged: true };
  const may = all
    .filter(({ step }) => mayTake(catalogue, dangers, step))
    .map((one) => (one.step.kind === 'hand over' ? { ...one, step: over } : one));
  const first = (chosen: (one: Prospect) => boolean): readonly Prospect[] => {
    const best = may.find(chosen);
    return best ? [best, ...may.filter((one) => one !== best)] : may;
  };
  if (!canClear(dangers, laid.inspections)) return first(({ step }) => step.kind === 'hand over');
  const [best] = all;
  // What would be best waits for a look at a danger: the look comes first, not the best of what happens to need no power.
  const looks = looksLeft(dangers, laid.inspections);
  if (best && mayTake(catalogue, dangers, best.step)) return may;
  return looks.size > 0
    ? first(({ step }) => step.kind === 'check' && looks.has(step.check))
    : first(({ step }) => step.kind === 'mend' && dangers.found.includes(step.cause));
}

/** A case that is not safe yet: nothing but making it so, or handing it over where that cannot be done. */
function notSafe(catalogue: Catalogue, course: Course, belief: Belief): Proposal | undefined {
  const said = safetySaid(course);
  const hazard = said === 'done' ? undefined : hazardOf(catalogue, course);
  if (!hazard && said !== 'cannot') return undefined;
  const dangers = dangersOf(catalogue, course);
  if (said === 'cannot') return settled({ kind: 'hand over', unplugged: true }, HAND_OVER, belief, dangers);
  return hazard && settled({ kind: 'make safe', ...hazard }, 1, belief, dangers);
}

/**
 * The next step by least expected effort to the end of the case (inspections, mends tried in vain, the mend that cures), looking
 * one step ahead and taking the rest as looking at one cause after the other. All other steps come with theirs. Nothing that heats,
 * powers or moves is among them while a danger is not cleared.
 * @param worth what an hour of the person is worth, in the money that costs are in
 * @throws RangeError for an id that the catalogue does not have
 */
export function propose(catalogue: Catalogue, course: Course, { worth }: { readonly worth?: number } = {}): Proposal {
  const belief = believe(catalogue, course);
  const cure = course.log.find((entry) => entry.kind === 'mended' && entry.cured);
  if (cure?.kind === 'mended') return settled({ kind: 'closed', cause: cure.cause }, 0, belief);
  const stop = notSafe(catalogue, course, belief);
  if (stop) return stop;
  const dangers = dangersOf(catalogue, course);
  const { open, withheld } = openUnder(catalogue, course, dangers);
  const laid = lay(catalogue, course, belief, open, worth);
  const [best, ...others] = ranked(catalogue, laid, dangers);
  if (!best) return settled({ kind: 'hand over' }, HAND_OVER, belief);
  const spared = unsparing(laid.plan, laid.left);
  const next = others[0];
  // Where a look at a danger comes first, what is quicker is not as good.
  const near = next && next.expected >= best.expected;
  const close = near && next.expected - spared < (1 + CLOSE) * (best.expected - spared) ? next : undefined;
  const outlooks = best.step.kind === 'check' ? outlooksOf(catalogue, course, belief, best.step.check) : [];
  const parts = best.step.kind === 'mend' ? [best.step.cause] : partsOf(belief, outlooks);
  const withheldMends = openMends(course, belief).filter(
    (cause) => !mayTake(catalogue, dangers, { kind: 'mend', cause }),
  );
  return { ...best, others, close, outlooks, parts, belief, withheld, withheldMends, dangers };
}
