import { believe } from '../../diagnosis/belief';
import { propose } from '../../diagnosis/order';
import { causeOf, inspectionOf, symptomOf } from '../../diagnosis/pick';
import type { WordedCatalogue } from '../../diagnosis/catalogue';
import type { Step } from '../../diagnosis/types';
import type { Case, Reading } from '../../machine/schema';
import { cureOf, ENDS, entryWords, HAZARDS, lower, minutesWords, oddsWords, percent, stepTitle } from './said';
import { worth } from './worth';
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
  readonly reading: Reading;
}

/** Below this a suspicion stands on no sheet. */
const FAINT = 0.02;

function found(catalogue: WordedCatalogue, one: Case): string[] {
  const cure = cureOf(one);
  if (cure !== undefined) {
    const { title, part } = causeOf(catalogue, cure);
    return [`${title}. Part: ${part}.`];
  }
  const belief = believe(catalogue, one);
  return [
    ...belief.ranked.flatMap((id) => {
      const share = belief.causes[id] ?? 0;
      return share < FAINT ? [] : [`${causeOf(catalogue, id).title}: ${oddsWords(share)} (${percent(share)})`];
    }),
    `Something not listed: ${oddsWords(belief.none)} (${percent(belief.none)})`,
  ];
}

/** What is to be done in a step, in lines; its cautions stand apart. */
function stepLines(
  catalogue: WordedCatalogue,
  step: Step,
): { readonly lines: string[]; readonly cautions: readonly string[] } {
  if (step.kind === 'check') {
    const { title, minutes, toolNames, how, cautions } = inspectionOf(catalogue, step.check);
    const takes = [minutesWords(minutes), ...toolNames].join(', ');
    return { lines: [`${title} (${takes}).`, ...how], cautions };
  }
  if (step.kind === 'mend') {
    const { mend, proof } = causeOf(catalogue, step.cause);
    return {
      lines: [`${mend.headline} (${minutesWords(mend.minutes)}).`, ...mend.steps, `Proof: ${proof}`],
      cautions: [mend.risk],
    };
  }
  if (step.kind === 'closed') return { lines: [`Prove it: ${causeOf(catalogue, step.cause).proof}`], cautions: [] };
  if (step.kind === 'make safe') return { lines: ['Switch off and pull the plug before anything else.'], cautions: [] };
  return { lines: [`${stepTitle(catalogue, step)}, with this sheet.`], cautions: [] };
}

function next(
  catalogue: WordedCatalogue,
  one: Case,
): { readonly lines: string[]; readonly cautions: readonly string[] } {
  const cure = cureOf(one);
  if (one.closed !== null && cure !== undefined) {
    const { mend } = causeOf(catalogue, cure);
    return {
      lines: ['Nothing for now. If it comes back, open the case again.', `Mind: ${lower(mend.risk)}`],
      cautions: [],
    };
  }
  return stepLines(catalogue, propose(catalogue, one, { worth: worth() }).step);
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
  const numbers = (id: string | undefined): readonly string[] => {
    const kept = readings.find((reading) => reading.id === id);
    return kept ? kept.lines.map((line) => `   ${kept.title}: ${line}`) : [];
  };
  const facts = Object.entries(one.facts).map(([id, holds]) => {
    const question = catalogue.facts.find((fact) => fact.id === id)?.question ?? id;
    return `${question} ${holds ? 'Yes.' : 'No.'}`;
  });
  const looked = one.log.flatMap((entry) => {
    if (entry.kind !== 'answer') return [];
    const { what, said } = entryWords(catalogue, entry);
    const lines = numbers(entry.reading?.id);
    // The reading says it better where it is here: a link brings the words only.
    const note = entry.note === '' || lines.length > 0 ? '' : ` ${entry.note}`;
    return [`${printTime(entry.at)}. ${what}: ${lower(said)}.${note}`, ...lines];
  });
  const done = one.log.flatMap((entry) => {
    if (entry.kind === 'answer') return [];
    const { what, said } = entryWords(catalogue, entry);
    return [`${printTime(entry.at)}. ${what}: ${said}.`];
  });
  const ended = one.closed
    ? [`${ENDS[one.closed.how]}, ${printTime(one.closed.at)}. ${one.closed.proof}`, ...numbers(one.closed.reading?.id)]
    : [];
  const todo = next(catalogue, one);
  const hazard =
    symptom.hazard && one.closed === null
      ? [
          `${HAZARDS[symptom.hazard]} It stays unplugged until a step says otherwise; mains parts are for a qualified person.`,
        ]
      : [];
  const part = (title: string, lines: readonly string[]): SheetPart[] => (lines.length > 0 ? [{ title, lines }] : []);
  return {
    title: symptom.title,
    head: [machine, one.owner === '' ? '' : `asked by ${one.owner}`, printTime(one.opened)].filter(Boolean).join(', '),
    cautions: [...hazard, ...todo.cautions],
    parts: [
      ...part('Complaint', one.complaint === '' ? [] : [`“${one.complaint}”`]),
      ...part('What is known of the machine', facts),
      ...part(cureOf(one) === undefined ? 'Still suspected' : 'What was found', found(catalogue, one)),
      ...part('How it was measured', looked),
      ...part('What was done', done),
      ...part('How it ended', ended),
      ...part('What to do next', todo.lines),
    ],
  };
}

/** The sheet as plain text, to send. */
export function sheetText(sheet: CaseSheet): string {
  const block = ({ title, lines }: SheetPart): string => [title.toUpperCase(), ...lines].join('\n');
  return [
    [sheet.title, sheet.head].join('\n'),
    ...(sheet.cautions.length > 0 ? [block({ title: 'First', lines: sheet.cautions })] : []),
    ...sheet.parts.map(block),
  ].join('\n\n');
}
