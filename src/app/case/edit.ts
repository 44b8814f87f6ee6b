import type { WordedInspection } from '../../diagnosis/catalogue';
import type { Entry, FactId } from '../../diagnosis/types';
import type { Case, Reading } from '../../machine/schema';

type CaseEntry = Case['log'][number];

/** What is added to a case: an entry, what was said of it, and the reading it rests on. */
export type NewEntry = Entry & {
  readonly note?: string;
  readonly reading?: { readonly at: string; readonly id: string };
};

export function stamped({ reading, ...entry }: NewEntry, at: string): CaseEntry {
  const said = { at, note: entry.note ?? '' };
  return entry.kind === 'answer' && reading ? { ...entry, ...said, reading } : { ...entry, ...said };
}

/** With one entry more. @param at ISO 8601 */
export const withEntry =
  (entry: NewEntry, at: string) =>
  (old: Case): Case => ({ ...old, log: [...old.log, stamped(entry, at)] });

/** Without one entry; left as it is where another tab has changed the log meanwhile. */
export const without =
  (entry: CaseEntry) =>
  (old: Case): Case => ({ ...old, log: old.log.filter((one) => !same(one, entry)) });

/** With another answer to a check that was answered: in the same place, and by hand, whatever reading it rested on. */
export const answeredOtherwise =
  (entry: CaseEntry, answer: string) =>
  (old: Case): Case => ({
    ...old,
    log: old.log.map((one) =>
      same(one, entry) && one.kind === 'answer'
        ? { kind: one.kind, check: one.check, answer, at: one.at, note: '' }
        : one,
    ),
  });

const same = (a: CaseEntry, b: CaseEntry): boolean => JSON.stringify(a) === JSON.stringify(b);

/** With a fact answered, or open again. */
export const withFact =
  (fact: FactId, holds: boolean | undefined) =>
  (old: Case): Case => {
    const rest = Object.entries(old.facts).filter(([id]) => id !== fact);
    return { ...old, facts: Object.fromEntries(holds === undefined ? rest : [...rest, [fact, holds]]) };
  };

/** The answers that a verdict can stand for: one, several among which the person picks, or none. */
export const answersTo = (check: WordedInspection, verdict: Reading['verdict']): WordedInspection['answers'] =>
  check.answers.filter((answer) => answer.verdict === verdict);
