import { causeOf, inspectionOf } from '../../diagnosis/pick';
import type { WordedCatalogue } from '../../diagnosis/catalogue';
import type { CauseId, Entry, Prospect, Step } from '../../diagnosis/types';
import say from './words/en';

/** Shares as people say them: so many out of so many. */
const PARTS = [
  [9, 10],
  [4, 5],
  [2, 3],
  [3, 5],
  [1, 2],
  [2, 5],
  [1, 3],
  [1, 4],
  [1, 5],
  [1, 7],
  [1, 10],
  [1, 20],
  [1, 50],
] as const;

const SURE = { share: 0.98, words: say.odds.sure };
const SAID = [SURE, ...PARTS.map(([part, of]) => ({ share: part / of, words: say.odds.about(part, of) }))];

const logOdds = (p: number): number => Math.log(p / (1 - p));

/** A share as it is said, nearest by its odds: the catalogue's numbers are judgements, and no finer words would be honest. */
export function oddsWords(share: number): string {
  if (share < 0.01) return say.odds.under;
  if (share > 0.99) return say.odds.sure;
  const near = (said: number): number => Math.abs(logOdds(said) - logOdds(share));
  return SAID.reduce((best, one) => (near(one.share) < near(best.share) ? one : best), SURE).words;
}

export const percent = (share: number): string => {
  const whole = Math.round(100 * share);
  return whole < 1 ? say.percent.under : whole > 99 ? say.percent.over : say.percent.whole(whole);
};

/** Minutes as they are said: to the five above a quarter of an hour. */
export function minutesWords(minutes: number): string {
  return say.minutes(Math.max(1, minutes < 15 ? Math.round(minutes) : 5 * Math.round(minutes / 5)));
}

/** What a step is called in a list. */
export function stepTitle(catalogue: WordedCatalogue, step: Step): string {
  const { names } = say.step;
  switch (step.kind) {
    case 'make safe':
      return names.safe;
    case 'check':
      return inspectionOf(catalogue, step.check).title;
    case 'mend':
      return names.mend(causeOf(catalogue, step.cause).mend.headline);
    case 'hand over':
      return step.unplugged ? say.askOther.unplugged.title : names.handOver;
    case 'closed':
      return names.proof;
  }
}

/** Causes named where a check is said to tell them apart. */
const NAMED = 3;

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
    const named = parts.slice(0, NAMED).map((id) => causeOf(catalogue, id).title);
    if (named.length > 0) sentences.push(say.why.tells(named, parts.length - named.length));
  } else if (step.kind === 'mend') {
    sentences.push(say.why.tryIt(oddsWords(belief.causes[step.cause] ?? 0)));
  }
  sentences.push(say.why.takes(minutesWords(expected)));
  if (close) sentences.push(say.why.asGood(stepTitle(catalogue, close.step), minutesWords(close.expected)));
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
      return { what: say.log.safe, said: say.log.confirmed, note };
    case 'not safe':
      return { what: say.log.safe, said: entry.why === 'cannot' ? say.log.cannot : say.log.willDo, note };
    case 'answer': {
      const check = inspectionOf(catalogue, entry.check);
      return {
        what: check.title,
        said: check.answers.find(({ id }) => id === entry.answer)?.label ?? entry.answer,
        note,
      };
    }
    case 'skip':
      return { what: inspectionOf(catalogue, entry.check).title, said: say.log.skipped, note };
    case 'ruled out':
      return { what: causeOf(catalogue, entry.cause).title, said: say.log[entry.sure], note };
    case 'mended': {
      const { mend, replace } = causeOf(catalogue, entry.cause);
      const said = entry.cured ? say.log.cured : say.log.not;
      // An earlier version kept the words of its remedy as the note.
      if (entry.remedy === undefined) return { what: note || mend.headline, said, note: '' };
      return { what: (entry.remedy === 'replace' ? (replace ?? mend) : mend).headline, said, note };
    }
  }
}
