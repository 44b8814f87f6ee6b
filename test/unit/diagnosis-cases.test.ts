import MiniSearch from 'minisearch';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/diagnosis/catalogue';
import { causeOf, unreadable } from '../../src/diagnosis/pick';
import { writtenCases } from '../cases/diagnosis';
import { follow } from '../support/diagnosis-cases';

describe('twenty written cases', () => {
  const followed = writtenCases.map((written) => ({ written, ...follow(catalogue, written) }));

  it('are twenty, sound, and of at least twelve symptoms', () => {
    expect(writtenCases).toHaveLength(20);
    expect(new Set(writtenCases.map(({ symptom }) => symptom)).size).toBeGreaterThanOrEqual(12);
    for (const { symptom, facts, truth, answers, name } of writtenCases) {
      const log = [
        { kind: 'mended', cause: truth, cured: true } as const,
        ...Object.entries(answers).map(([check, answer]) => ({ kind: 'answer', check, answer }) as const),
      ];
      expect(unreadable(catalogue, { symptom, facts, log }), name).toBeUndefined();
      expect(causeOf(catalogue, truth).id).toBe(truth);
    }
  });

  it('reach the true cause within three checks in at least sixteen', () => {
    // Within: the true cause leads the belief and its mend is what is proposed; a mend in vain counts as a check.
    const reached = followed.filter(({ found, steps, ledAfter }) => found && steps.length <= 3 && ledAfter <= 3);
    console.log(`${reached.length} of 20 within three checks`);
    const missed = followed.filter((one) => !reached.includes(one));
    for (const { written, steps } of missed)
      console.log(`missed: ${written.name} (${written.truth}): ${steps.join('; ')}`);
    expect(reached.length).toBeGreaterThanOrEqual(16);
  });

  it('are all solved in the end', () => {
    expect(followed.filter(({ found }) => !found).map(({ written }) => written.name)).toEqual([]);
  });

  it('find their symptom by the complaint alone among the first four in most cases', () => {
    const search = new MiniSearch<(typeof catalogue.symptoms)[number]>({
      fields: ['title', 'complaint', 'sayings'],
      extractField: (symptom, field) => String(symptom[field as 'title' | 'sayings']),
      searchOptions: { fuzzy: 0.2, prefix: true },
    });
    search.addAll(catalogue.symptoms);
    const hit = writtenCases.filter(({ complaint, symptom }) =>
      search
        .search(complaint)
        .slice(0, 4)
        .some(({ id }) => id === symptom),
    );
    console.log(`${hit.length} of 20 complaints find their symptom`);
    expect(hit.length).toBeGreaterThanOrEqual(14);
  });
});
