import { believe } from '../../diagnosis/belief';
import { hazardOf } from '../../diagnosis/dangers';
import { propose } from '../../diagnosis/order';
import { causeOf, inspectionOf, symptomOf } from '../../diagnosis/pick';
import { firstActs } from '../../diagnosis/stop';
import type { WordedCatalogue } from '../../diagnosis/catalogue';
import type { Step } from '../../diagnosis/types';
import type { Case } from '../../machine/schema';
import { cureOf } from './course';
import { tickLines } from './safety';
import { entryWords, minutesWords, oddsWords, percent } from './said';
import { worth } from './worth';
import say from './words/en';
import { printTime } from '../desk/time';

interface SheetPart {
  readonly title: string;
  readonly lines: readonly string[];
}

/** A case as one sheet: the same words on paper and as text. */
export interface CaseSheet {
  readonly title: string;
  readonly head: string;
  readonly cautions: readonly string[];
  readonly parts: readonly SheetPart[];
}

/** A reading with its numbers, as lines. */
export interface ReadingLines {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly string[];
}

/** What is to be done, in lines; its cautions stand apart. */
interface Todo {
  readonly lines: readonly string[];
  readonly cautions: readonly string[];
}

/** Below this a suspicion stands on no sheet. */
const FAINT = 0.02;

function found(catalogue: WordedCatalogue, one: Case): string[] {
  const cure = cureOf(one);
  if (cure !== undefined) {
    const { title, part } = causeOf(catalogue, cure);
    return [say.sheet.cause(title, part)];
  }
  const suspect = (title: string, share: number) => say.sheet.suspect(title, oddsWords(share), percent(share));
  const belief = believe(catalogue, one);
  return [
    ...belief.ranked.flatMap((id) => {
      const share = belief.causes[id] ?? 0;
      return share < FAINT ? [] : [suspect(causeOf(catalogue, id).title, share)];
    }),
    suspect(say.suspects.none, belief.none),
  ];
}

function stepLines(catalogue: WordedCatalogue, step: Step): Todo {
  switch (step.kind) {
    case 'check': {
      const { title, minutes, toolNames, how, cautions } = inspectionOf(catalogue, step.check);
      return { lines: [say.sheet.check(title, [minutesWords(minutes), ...toolNames]), ...how], cautions };
    }
    case 'mend': {
      const { mend, proof } = causeOf(catalogue, step.cause);
      const headline = say.sheet.mend(mend.headline, minutesWords(mend.minutes));
      return { lines: [headline, ...mend.steps, say.sheet.proof(proof)], cautions: [mend.risk] };
    }
    case 'closed':
      return { lines: [say.sheet.prove(causeOf(catalogue, step.cause).proof)], cautions: [] };
    case 'make safe':
      return { lines: tickLines(firstActs(step.first)), cautions: [] };
    case 'hand over':
      return { lines: [step.unplugged ? say.sheet.keepUnplugged : say.sheet.handOver], cautions: [] };
  }
}

function next(catalogue: WordedCatalogue, one: Case): Todo {
  const cure = cureOf(one);
  if (one.closed !== null && cure !== undefined) {
    const { mend } = causeOf(catalogue, cure);
    return { lines: [say.sheet.nothing, say.sheet.mind(mend.risk)], cautions: [] };
  }
  return stepLines(catalogue, propose(catalogue, one, { worth: worth() }).step);
}

/** The numbers of one reading, each line set in under what it belongs to. */
function numbersOf(readings: readonly ReadingLines[], id: string | undefined): readonly string[] {
  const kept = readings.find((reading) => reading.id === id);
  return kept ? kept.lines.map((line) => `   ${say.sheet.number(kept.title, line)}`) : [];
}

/** What was measured, with its numbers, and what else was done. */
function history(catalogue: WordedCatalogue, one: Case, readings: readonly ReadingLines[]) {
  const measured: string[] = [];
  const done: string[] = [];
  for (const entry of one.log) {
    const { what, said } = entryWords(catalogue, entry);
    const at = printTime(entry.at);
    if (entry.kind === 'answer') {
      const lines = numbersOf(readings, entry.reading?.id);
      // The reading says it better where it is here: a link brings the words only.
      measured.push(say.sheet.looked(at, what, said, lines.length > 0 ? '' : entry.note), ...lines);
    } else done.push(say.sheet.done(at, what, said));
  }
  return { measured, done };
}

/**
 * A case as one clear sheet.
 * @param readings those that its entries and its proof rest on, as far as they are there
 */
export function caseSheet(
  catalogue: WordedCatalogue,
  one: Case,
  machine: string,
  readings: readonly ReadingLines[],
): CaseSheet {
  const symptom = symptomOf(catalogue, one.symptom);
  const facts = Object.entries(one.facts).map(([id, holds]) =>
    say.sheet.fact(catalogue.facts.find((fact) => fact.id === id)?.question ?? id, holds),
  );
  const { measured, done } = history(catalogue, one, readings);
  const ended = one.closed
    ? [
        say.sheet.ended(say.ends[one.closed.how], printTime(one.closed.at), one.closed.proof),
        ...numbersOf(readings, one.closed.reading?.id),
      ]
    : [];
  const todo = next(catalogue, one);
  const known = hazardOf(catalogue, one);
  const hazard = known && one.closed === null ? [say.sheet.unplugged[known.hazard]] : [];
  const { parts } = say.sheet;
  return {
    title: symptom.title,
    head: say.sheet.head(machine, one.owner, printTime(one.opened)),
    cautions: [...hazard, ...todo.cautions],
    parts: [
      { title: parts.complaint, lines: one.complaint === '' ? [] : [say.quote(one.complaint)] },
      { title: parts.facts, lines: facts },
      { title: cureOf(one) === undefined ? parts.suspected : parts.found, lines: found(catalogue, one) },
      { title: parts.measured, lines: measured },
      { title: parts.done, lines: done },
      { title: parts.ended, lines: ended },
      { title: parts.next, lines: todo.lines },
    ].filter(({ lines }) => lines.length > 0),
  };
}

/** The sheet as plain text, to send. */
export function sheetText(sheet: CaseSheet): string {
  const block = ({ title, lines }: SheetPart): string => [title.toUpperCase(), ...lines].join('\n');
  return [
    [sheet.title, sheet.head].join('\n'),
    ...(sheet.cautions.length > 0 ? [block({ title: say.cautions, lines: sheet.cautions })] : []),
    ...sheet.parts.map(block),
  ].join('\n\n');
}
