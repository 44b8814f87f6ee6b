import { causeOf, inspectionOf } from '../../diagnosis/pick';
import type { WordedCatalogue } from '../../diagnosis/catalogue';
import type { CauseId, Inspection, Course, Entry, Prospect, Step } from '../../diagnosis/types';

/** Shares that people say, as words; what lies between takes the nearest by its odds. */
const SAID = [
  [0.98, 'almost certain'],
  [0.9, 'about 9 in 10'],
  [0.8, 'about 4 in 5'],
  [2 / 3, 'about 2 in 3'],
  [0.6, 'about 3 in 5'],
  [0.5, 'about 1 in 2'],
  [0.4, 'about 2 in 5'],
  [1 / 3, 'about 1 in 3'],
  [0.25, 'about 1 in 4'],
  [0.2, 'about 1 in 5'],
  [1 / 7, 'about 1 in 7'],
  [0.1, 'about 1 in 10'],
  [0.05, 'about 1 in 20'],
  [0.02, 'about 1 in 50'],
] as const;

const logOdds = (p: number): number => Math.log(p / (1 - p));

/** A share as it is said: the numbers of the catalogue are judgements, and no finer words would be honest. */
export function oddsWords(share: number): string {
  if (share < 0.01) return 'less than 1 in 100';
  if (share > 0.99) return 'almost certain';
  const near = (said: number): number => Math.abs(logOdds(said) - logOdds(share));
  return SAID.reduce((best, one) => (near(one[0]) < near(best[0]) ? one : best), SAID[0])[1];
}

export const percent = (share: number): string => {
  const whole = Math.round(100 * share);
  return whole < 1 ? 'under 1 %' : whole > 99 ? 'over 99 %' : `${whole} %`;
};

/** Minutes as they are said: to the five above a quarter of an hour. */
export function minutesWords(minutes: number): string {
  if (minutes < 1.5) return '1 minute';
  const whole = minutes < 15 ? Math.round(minutes) : 5 * Math.round(minutes / 5);
  return `${whole} minutes`;
}

export const KINDS = {
  calculator: 'measure',
  look: 'look',
  listen: 'listen',
  feel: 'feel',
  do: 'try',
} as const satisfies Readonly<Record<Inspection['kind'], string>>;

export const HAZARDS = {
  heat: 'This complaint can come from something that burns.',
  shock: 'This complaint can come from something that gives a shock.',
} as const;

export const lower = (words: string): string => `${words.charAt(0).toLowerCase()}${words.slice(1)}`;

/** What a step is called in a list. */
export function stepTitle(catalogue: WordedCatalogue, step: Step): string {
  switch (step.kind) {
    case 'make safe':
      return 'Switch off and unplug';
    case 'check':
      return inspectionOf(catalogue, step.check).title;
    case 'mend':
      return `Mend: ${lower(causeOf(catalogue, step.cause).mend.headline)}`;
    case 'hand over':
      return 'Hand the case to someone else';
    case 'closed':
      return 'Prove the mend';
  }
}

export const sameStep = (a: Step, b: Step): boolean =>
  a.kind === b.kind &&
  (a.kind === 'check' ? b.kind === 'check' && a.check === b.check : true) &&
  (a.kind === 'mend' ? b.kind === 'mend' && a.cause === b.cause : true);

const names = (catalogue: WordedCatalogue, causes: readonly CauseId[]): string => {
  const titles = causes.map((id) => `“${lower(causeOf(catalogue, id).title)}”`);
  return titles.length < 2 ? titles.join('') : `${titles.slice(0, -1).join(', ')} and ${titles.at(-1) ?? ''}`;
};

/** Why a step is proposed, in sentences: what it tells apart, what it costs, and what would be as good. */
export function whyNext(
  catalogue: WordedCatalogue,
  {
    step,
    expected,
    close,
    parts,
    belief,
  }: Prospect & {
    readonly close: Prospect | undefined;
    readonly parts: readonly CauseId[];
    readonly belief: { readonly causes: Readonly<Record<CauseId, number>> };
  },
): readonly string[] {
  const sentences: string[] = [];
  if (step.kind === 'check') {
    const shown = parts.slice(0, 3);
    const rest = parts.length - shown.length;
    const more = rest > 0 ? ` (and ${rest} more)` : '';
    if (shown.length > 0) sentences.push(`Its answer says most about ${names(catalogue, shown)}${more}.`);
  } else if (step.kind === 'mend') {
    const share = belief.causes[step.cause] ?? 0;
    sentences.push(`This fault is now ${oddsWords(share)}: trying the mend costs less than making surer first.`);
  }
  sentences.push(`With this first, the case should take about ${minutesWords(expected)} more, mend and all.`);
  if (close) {
    sentences.push(
      `As good: ${lower(stepTitle(catalogue, close.step))} (about ${minutesWords(close.expected)}). Take whichever is handier.`,
    );
  }
  return sentences;
}

/** An entry of a case as one line. @throws RangeError for an id that the catalogue does not have */
export function entryWords(
  catalogue: WordedCatalogue,
  entry: Entry & { readonly note: string },
): { readonly what: string; readonly said: string; readonly note: string } {
  const { note } = entry;
  switch (entry.kind) {
    case 'made safe':
      return { what: 'Switched off and unplugged', said: 'confirmed', note };
    case 'answer': {
      const check = inspectionOf(catalogue, entry.check);
      return {
        what: check.title,
        said: check.answers.find(({ id }) => id === entry.answer)?.label ?? entry.answer,
        note,
      };
    }
    case 'skip':
      return { what: inspectionOf(catalogue, entry.check).title, said: 'skipped', note };
    case 'ruled out':
      return {
        what: causeOf(catalogue, entry.cause).title,
        said: entry.sure === 'certain' ? 'ruled out for certain' : 'ruled out, fairly sure',
        note,
      };
    case 'mended':
      return {
        // Which of its ways was gone stands in the note.
        what: note === '' ? causeOf(catalogue, entry.cause).mend.headline : note,
        said: entry.cured ? 'it cured' : 'it did not cure',
        note: '',
      };
  }
}

/** How a case ended. */
export const ENDS = {
  cured: 'Mended',
  replaced: 'Part replaced',
  'handed over': 'Handed over',
  'given up': 'Given up',
} as const;

/** The mend that cured, if one did. */
export const cureOf = (course: Course): CauseId | undefined => {
  const cure = course.log.find((entry) => entry.kind === 'mended' && entry.cured);
  return cure?.kind === 'mended' ? cure.cause : undefined;
};
