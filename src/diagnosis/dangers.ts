import { believe } from './belief';
import { dangerIn } from './danger';
import { causeOf, inspectionOf, rowOf, symptomOf } from './pick';
import type {
  Catalogue,
  Cause,
  CauseId,
  Course,
  Dangers,
  FirstAct,
  Hazard,
  Inspection,
  InspectionId,
  Step,
} from './types';

/** A danger believed up to this holds nothing back. */
const REMOTE = 0.01;

/** A cold inspection that parts a danger from the rest by this much (difference of shares of one answer) settles it. */
const TELLING = 0.5;

/** An answer whose odds lie within this factor of even says too little to have looked. */
const FLAT = 1.6;

function telling(inspection: Inspection, cause: CauseId): number {
  const row = rowOf(inspection, cause);
  return Math.max(...Object.entries(row).map(([answer, p]) => Math.abs(p - (inspection.otherwise[answer] ?? 0))));
}

/** Whether an inspection, unplugged, shows this danger. */
const looksAt = (inspection: Inspection, danger: CauseId): boolean =>
  !inspection.powered && telling(inspection, danger) >= TELLING;

/** Whether its clear answer also clears the danger: on the mains side a look does not, a qualified person's test does. */
const clears = (inspection: Inspection, danger: Cause): boolean =>
  danger.qualified !== true || inspection.qualified === true;

/** What was seen of a danger with the machine unplugged. */
function seenOf(catalogue: Catalogue, course: Course, danger: Cause): 'found' | 'cleared' | 'unseen' {
  let seen: 'cleared' | 'unseen' = 'unseen';
  for (const entry of course.log) {
    if (entry.kind !== 'answer') continue;
    const inspection = inspectionOf(catalogue, entry.check);
    if (!looksAt(inspection, danger.id)) continue;
    const odds = (rowOf(inspection, danger.id)[entry.answer] ?? 0) / (inspection.otherwise[entry.answer] ?? 1);
    if (odds > FLAT) return 'found';
    if (odds < 1 / FLAT && clears(inspection, danger)) seen = 'cleared';
  }
  return seen;
}

/** The hazard of a case and what is done first: by the complaint's words, else by its symptom; undefined where there is none. */
export function hazardOf(
  catalogue: Catalogue,
  course: Course,
): { readonly hazard: Hazard; readonly first: FirstAct } | undefined {
  const symptom = symptomOf(catalogue, course.symptom);
  const said = dangerIn(course.complaint ?? '');
  if (said) return { hazard: said.shock ? 'shock' : (symptom.hazard ?? 'heat'), first: said.first };
  return symptom.hazard && { hazard: symptom.hazard, first: symptom.first ?? 'unplug' };
}

/** The last word on switching off and unplugging: an entry of the log, or undefined where nothing was said of it. */
export function safetySaid(course: Course): 'done' | 'will do' | 'cannot' | undefined {
  const last = course.log.findLast(({ kind }) => kind === 'made safe' || kind === 'not safe');
  return last?.kind === 'not safe' ? last.why : last && 'done';
}

/**
 * The dangers of a case that nothing has cleared. A person's word that it is not this one moves the suspicion, but clears no
 * danger: only a look with the machine unplugged does, or the mend of it.
 * @throws RangeError for an id that the catalogue does not have
 */
export function dangersOf(catalogue: Catalogue, course: Course): Dangers {
  const symptom = symptomOf(catalogue, course.symptom);
  const dangerous = symptom.causes.map(({ cause }) => causeOf(catalogue, cause)).filter(({ danger }) => danger);
  const unlisted = symptom.hazard === undefined && dangerIn(course.complaint ?? '') !== undefined;
  if (dangerous.length === 0) return { unseen: [], found: [], unlisted };
  const ids = new Set(dangerous.map(({ id }) => id));
  const log = course.log.filter((entry) => entry.kind !== 'ruled out' || !ids.has(entry.cause));
  const belief = believe(catalogue, { ...course, log });
  const mended = new Set(log.flatMap((entry) => (entry.kind === 'mended' ? [entry.cause] : [])));
  const left = dangerous.filter(({ id }) => !mended.has(id) && (belief.causes[id] ?? 0) > REMOTE);
  const those = (seen: 'found' | 'unseen'): readonly CauseId[] =>
    left.filter((danger) => seenOf(catalogue, course, danger) === seen).map(({ id }) => id);
  return { unseen: those('unseen'), found: those('found'), unlisted };
}

/** Whether a step, or the trial that belongs to it, heats, powers or moves the machine. */
function needsPower(catalogue: Catalogue, step: Step): boolean {
  if (step.kind === 'check') return inspectionOf(catalogue, step.check).powered;
  if (step.kind !== 'mend') return false;
  const { mend, replace } = causeOf(catalogue, step.cause);
  return [mend, ...(replace ? [replace] : [])].some(({ powered, trialPowered }) => powered || trialPowered);
}

/** Whether anything that heats, powers or moves is held back. */
export const holding = ({ unseen, found, unlisted }: Dangers): boolean =>
  unlisted || unseen.length > 0 || found.length > 0;

/**
 * Whether a step may be taken now. What needs power waits while a danger is not cleared; of a danger that was seen, and is the
 * only one left, the mend may be taken, as its trial comes after it.
 */
export function mayTake(catalogue: Catalogue, dangers: Dangers, step: Step): boolean {
  if (!holding(dangers) || !needsPower(catalogue, step)) return true;
  const { unseen, found, unlisted } = dangers;
  if (unlisted || unseen.length > 0 || found.length > 1) return false;
  return step.kind === 'mend' && step.cause === found[0];
}

/** Whether, unplugged, some answer of an inspection speaks against a danger. */
const maySpare = (inspection: Inspection, danger: CauseId): boolean =>
  !inspection.powered &&
  Object.entries(rowOf(inspection, danger)).some(([answer, p]) => p * FLAT < (inspection.otherwise[answer] ?? 0));

/** The open inspections that look, unplugged, at a danger nobody has seen yet. */
export const looksLeft = (dangers: Dangers, open: readonly Inspection[]): ReadonlySet<InspectionId> =>
  new Set(
    open.filter((inspection) => dangers.unseen.some((danger) => maySpare(inspection, danger))).map(({ id }) => id),
  );

/** Whether the dangers can still be cleared here, by what is open; else the machine goes to a qualified person. */
export const canClear = (dangers: Dangers, open: readonly Inspection[]): boolean =>
  !dangers.unlisted &&
  dangers.found.length < 2 &&
  dangers.unseen.every((danger) => open.some((inspection) => maySpare(inspection, danger)));
