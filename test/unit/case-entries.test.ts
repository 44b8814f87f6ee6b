import { describe, expect, expectTypeOf, it } from 'vitest';
import { answeredOtherwise, answersTo, withEntry, withFact, without } from '../../src/app/case/edit';
import { caseSheet, sheetText } from '../../src/app/case/sheet';
import { entryWords, minutesWords, oddsWords, whyNext } from '../../src/app/case/said';
import say from '../../src/app/case/words/en';
import { catalogue } from '../../src/diagnosis/catalogue';
import { propose } from '../../src/diagnosis/order';
import { causeOf, inspectionOf } from '../../src/diagnosis/pick';
import { firstActs } from '../../src/diagnosis/stop';
import type { Entry } from '../../src/diagnosis/types';
import { isOvertaken } from '../../src/app/desk/records/cases';
import { restore, type Case } from '../../src/machine/schema';
import { VERSION } from '../../src/machine/version';

type Kept = Case['log'][number];
/** An entry as kept, without when it was made, what was said of it, and the reading it rests on. */
type Bare = Kept extends infer E ? (E extends Kept ? Omit<E, 'at' | 'note' | 'reading' | 'ordinal'> : never) : never;
/** TypeScript compares `Omit<…>` and a plain object as alike only once both are written out. */
type Flat<T> = T extends object ? { readonly [K in keyof T]: T[K] } : T;

const AT = '2026-03-02T09:00:00.000Z';
const LATER = '2026-03-02T09:10:00.000Z';
const blank: Case = {
  v: VERSION,
  type: 'case',
  id: 'aaaaaaaaaaaa',
  machine: 'bbbbbbbbbbbb',
  symptom: 'gantry-sinks',
  owner: 'Mrs Tarrow',
  complaint: 'It comes down overnight.',
  opened: AT,
  changed: AT,
  ordinal: 1,
  facts: {},
  log: [],
  closed: null,
};

describe('the entries of a case', () => {
  it('are the same kinds in the store as in the diagnosis, field by field', () => {
    expectTypeOf<Flat<Bare>>().toEqualTypeOf<Flat<Entry>>();
  });

  it('are taken by the diagnosis as they are kept', () => {
    expectTypeOf<Kept>().toExtend<Entry>();
    const kept = withEntry({ kind: 'answer', check: 'screws-held', answer: 'yes' }, AT)(blank);
    expect(restore(kept)).toMatchObject({ ok: true });
    expect(propose(catalogue, kept).belief).not.toEqual(propose(catalogue, blank).belief);
  });

  it('can be taken back and changed, which brings the proposal back or moves it', () => {
    const first = propose(catalogue, blank).step;
    if (first.kind !== 'check') throw new Error('the case should begin with a check');
    const [one, two] = inspectionOf(catalogue, first.check).answers;
    const answered = withEntry({ kind: 'answer', check: first.check, answer: one!.id }, AT)(blank);
    expect(propose(catalogue, answered).step).not.toEqual(first);
    const entry = answered.log[0]!;
    expect(propose(catalogue, without(entry)(answered)).step).toEqual(first);
    const changed = answeredOtherwise(entry, two!.id)(answered);
    expect(changed.log).toEqual([{ kind: 'answer', check: first.check, answer: two!.id, at: AT, note: '' }]);
    expect(propose(catalogue, changed).belief).not.toEqual(propose(catalogue, answered).belief);
  });

  it('facts are answered and opened again', () => {
    const known = withFact('just-moved', true)(blank);
    expect(known.facts).toEqual({ 'just-moved': true });
    expect(withFact('just-moved', undefined)(known).facts).toEqual({});
  });

  it('a verdict has one answer, several, or none', () => {
    expect(answersTo(inspectionOf(catalogue, 'screw-holds'), 'beyond').map(({ id }) => id)).toEqual(['beyond']);
    expect(answersTo(inspectionOf(catalogue, 'ridge-spacing'), 'within').length).toBeGreaterThan(2);
    expect(answersTo(inspectionOf(catalogue, 'screw-holds'), 'none')).toEqual([]);
  });
});

describe('a verdict that is too close to call', () => {
  it('has one answer in every check by a calculator, and moves each suspicion only a little', () => {
    const measured = catalogue.inspections.filter(({ calculator }) => calculator !== undefined);
    expect(measured.length).toBeGreaterThan(15);
    for (const check of measured) {
      const answers = answersTo(check, 'too close');
      expect(answers.length, check.id).toBe(1);
      const { id } = answers[0]!;
      for (const [cause, row] of Object.entries(check.given)) {
        const odds = row[id]! / check.otherwise[id]!;
        expect(odds, `${check.id} ${cause}`).toBeGreaterThan(1 / 2);
        expect(odds, `${check.id} ${cause}`).toBeLessThan(2);
      }
    }
  });
});

describe('the words of a case', () => {
  it('says shares as people do, nearest by odds', () => {
    const { about, under, sure } = say.odds;
    const said = [about(1, 3), about(1, 2), about(1, 10), about(9, 10), sure, under, sure];
    expect([0.33, 0.5, 0.1, 0.92, 0.97, 0.001, 0.995].map(oddsWords)).toEqual(said);
  });

  it('says minutes no finer than they are known', () => {
    expect([0.3, 1.4, 3, 14.4, 16, 68].map(minutesWords)).toEqual([1, 1, 3, 14, 15, 70].map(say.minutes));
  });

  it('says for every symptom why its first step is first', () => {
    for (const symptom of catalogue.symptoms) {
      const log = symptom.hazard ? [{ kind: 'made safe' } as const] : [];
      const sentences = whyNext(catalogue, propose(catalogue, { symptom: symptom.id, facts: {}, log }));
      expect(sentences.length, symptom.id).toBeGreaterThanOrEqual(2);
      expect(sentences.join(' ')).not.toMatch(/undefined|NaN/);
    }
  });
});

describe('the sheet of a case', () => {
  const cause = 'coupling-slips';
  const cured = withEntry(
    { kind: 'mended', cause, cured: true, note: 'Tightened' },
    LATER,
  )(withEntry({ kind: 'answer', check: 'coupling-mark', answer: 'yes', note: '1.2 mm apart' }, AT)(blank));

  it('says complaint, what was found, how it was measured, what was done and what is next', () => {
    const text = sheetText(caseSheet(catalogue, cured, 'Left bench', []));
    for (const words of [
      'It comes down overnight.',
      'Left bench',
      'Mrs Tarrow',
      '1.2 mm apart',
      say.log.what('Tightened') + say.log.cured,
    ])
      expect(text).toContain(words);
    const { title, part, proof } = causeOf(catalogue, cause);
    expect(text).toContain(`${say.sheet.parts.found.toUpperCase()}\n${say.sheet.cause(title, part)}`);
    expect(text).toContain(`${say.sheet.parts.next.toUpperCase()}\n${say.sheet.prove(proof)}`);
  });

  it('of an open case says what is still suspected, and the next step with its cautions first', () => {
    const sheet = caseSheet(catalogue, blank, 'Left bench', []);
    const { complaint, suspected, next } = say.sheet.parts;
    expect(sheet.parts.map(({ title }) => title)).toEqual([complaint, suspected, next]);
    const hot = caseSheet(catalogue, { ...blank, symptom: 'far-too-hot' }, 'Left bench', []);
    expect(sheetText(hot)).toContain(`${say.cautions.toUpperCase()}\n${say.sheet.unplugged.heat}`);
    // The gate goes out on the sheet before anything is ticked: its acts, and boxes to tick.
    for (const act of firstActs('unplug').acts) expect(sheetText(hot)).toContain(act);
    for (const tick of Object.values(say.safe.ticks)) expect(sheetText(hot)).toContain(say.safe.box(tick));
    const smoking = { ...blank, complaint: 'smoke comes out of the plug' };
    expect(sheetText(caseSheet(catalogue, smoking, 'Left bench', []))).toContain(firstActs('fire').acts[0]);
  });

  it('says by which of its ways a cause was mended: by its id, or in the words that an earlier version kept', () => {
    const { id, mend, replace } = catalogue.causes.find((cause) => cause.replace)!;
    const what = (entry: { remedy?: 'mend' | 'replace'; note: string }) =>
      entryWords(catalogue, { kind: 'mended', cause: id, cured: true, ...entry });
    expect(what({ remedy: 'mend', note: 'Hard.' })).toMatchObject({ what: mend.headline, note: 'Hard.' });
    expect(what({ remedy: 'replace', note: '' })).toMatchObject({ what: replace?.headline, note: '' });
    expect(what({ note: 'A new nut' })).toMatchObject({ what: 'A new nut', note: '' });
    expect(what({ note: '' })).toMatchObject({ what: mend.headline, note: '' });
  });

  it('goes on after a mend that did not cure', () => {
    const still = withEntry({ kind: 'mended', cause, cured: false }, LATER)(blank);
    const text = sheetText(caseSheet(catalogue, still, 'Left bench', []));
    expect(text).toContain(say.log.not);
    expect(text).not.toContain(say.sheet.parts.found.toUpperCase());
  });
});

describe('an edit from a tab that has not heard of another’s', () => {
  const answer = { kind: 'answer', check: 'period', answer: 'lead' } as const;
  const other = { kind: 'answer', check: 'listen', answer: 'knock' } as const;
  const closed = { at: LATER, how: 'cured', proof: 'A plain wall.' } as const;

  it('goes beside what the other did: another answer, another fact', () => {
    const theirs = withEntry(other, AT)(blank);
    const both = withEntry(answer, LATER)(theirs);
    expect(isOvertaken(theirs, both)).toBe(false);
    expect(both.log).toHaveLength(2);
    const facts = withFact('two-screws', true)(theirs);
    expect(isOvertaken(theirs, facts)).toBe(false);
    expect(isOvertaken(facts, withFact('two-screws', true)(facts))).toBe(false);
  });

  it.each<[string, Case, (old: Case) => Case]>([
    [
      'answers what was answered meanwhile',
      withEntry(answer, AT)(blank),
      withEntry({ ...answer, answer: 'belt' }, LATER),
    ],
    ['adds to a case that was ended', { ...blank, closed }, withEntry(answer, LATER)],
    ['ends it again', { ...blank, closed }, (old) => ({ ...old, closed: { ...closed, proof: 'Another wall.' } })],
    ['takes back what was taken back', blank, without({ ...answer, at: AT, note: '' })],
    ['changes what was taken back', blank, answeredOtherwise({ ...answer, at: AT, note: '' }, 'belt')],
  ])('is not written where it %s', (_, old, edit) => {
    expect(isOvertaken(old, edit(old))).toBe(true);
  });

  it('opens an ended case again, and takes an entry back', () => {
    expect(isOvertaken({ ...blank, closed }, blank)).toBe(false);
    const one = withEntry(answer, AT)(blank);
    expect(isOvertaken(one, without(one.log[0]!)(one))).toBe(false);
    expect(isOvertaken(one, answeredOtherwise(one.log[0]!, 'belt')(one))).toBe(false);
  });
});
