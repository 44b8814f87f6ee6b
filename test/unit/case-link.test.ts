import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { caseOf, letterStanding } from '../../src/app/case/letter';
import { catalogue } from '../../src/diagnosis/catalogue';
import { caseAddress, decodeCase, encodeCase, type Letter } from '../../src/diagnosis/link';
import { unreadable } from '../../src/diagnosis/pick';
import { standing, type Logged } from '../../src/diagnosis/same';
import type { Entry } from '../../src/diagnosis/types';
import say from '../../src/diagnosis/words/en';

const AT = '2026-03-02T09:00:00.000Z';
const letter: Letter = {
  id: 'k3m9x2q7w4e5',
  symptom: 'gantry-sinks',
  machine: 'Links & rechts = 50 %',
  owner: 'Mrs Tärrow',
  complaint: 'It “sinks”.\nOvernight; 2.5 mm. 🙂',
  opened: AT,
  facts: { 'just-moved': true, 'two-z-screws': false },
  log: [
    { kind: 'made safe', at: AT, note: '' },
    { kind: 'answer', check: 'screw-holds', answer: 'beyond', at: AT, note: 'Margin 1.58 ± 0.2. Support it & wait' },
    { kind: 'skip', check: 'gantry-lift', at: AT, note: '' },
    { kind: 'ruled out', cause: 'nut-worn', sure: 'fairly', at: AT, note: '' },
    { kind: 'mended', cause: 'coupling-slips', cured: false, at: AT, note: 'Tightened.' },
    { kind: 'mended', cause: 'nut-worn', cured: false, remedy: 'mend', at: AT, note: '' },
    { kind: 'mended', cause: 'nut-worn', cured: true, remedy: 'replace', at: AT, note: '' },
  ],
  closed: { at: AT, how: 'handed over', proof: 'To the school. Key at the desk.' },
};

const time = fc
  .date({ min: new Date('1970-01-01'), max: new Date('9999-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());
const words = fc.string({ unit: 'grapheme', maxLength: 60 });
const id = fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/).filter((one) => !(one in Object.prototype));
const entry: fc.Arbitrary<Entry> = fc.oneof(
  fc.constant({ kind: 'made safe' as const }),
  fc.record({ kind: fc.constant('not safe' as const), why: fc.constantFrom('will do' as const, 'cannot' as const) }),
  fc.record({ kind: fc.constant('answer' as const), check: id, answer: id }),
  fc.record({ kind: fc.constant('skip' as const), check: id }),
  fc.record({
    kind: fc.constant('ruled out' as const),
    cause: id,
    sure: fc.constantFrom('certain' as const, 'fairly' as const),
  }),
  fc.record({ kind: fc.constant('mended' as const), cause: id, cured: fc.boolean() }),
  fc.record({
    kind: fc.constant('mended' as const),
    cause: id,
    cured: fc.boolean(),
    remedy: fc.constantFrom('mend' as const, 'replace' as const),
  }),
);
const logged: fc.Arbitrary<Logged> = fc.tuple(entry, time, words).map(([one, at, note]) => ({ ...one, at, note }));
const letters: fc.Arbitrary<Letter> = fc.record({
  id,
  symptom: id,
  machine: words,
  owner: words,
  complaint: words,
  opened: time,
  facts: fc.dictionary(id, fc.boolean(), { maxKeys: 6, noNullPrototype: true }),
  log: fc.array(logged, { maxLength: 12 }),
  closed: fc.option(fc.record({ at: time, how: words, proof: words })),
});

describe('a case as a link', () => {
  it('comes out as it went in, whatever is said in it', () => {
    expect(decodeCase(encodeCase(letter))).toEqual({ ok: true, letter });
    fc.assert(
      fc.property(letters, (one) => {
        const query = encodeCase(one);
        expect(query).toMatch(/^[\x21-\x7e]*$/);
        expect(decodeCase(`?${query}`)).toEqual({ ok: true, letter: one });
        // The browser's own reading of the address (WHATWG URL) leaves it as it is.
        const hash = new URL(caseAddress('https://example.org/bench/?x#/y', query)).hash;
        expect(hash).toBe(`#/case/link?${query}`);
      }),
    );
  });

  it('takes half a character, as a cut text leaves it', () => {
    const read = decodeCase(encodeCase({ ...letter, complaint: 'cut \ud83d' }));
    expect(read.ok && read.letter.complaint).toBe('cut \ufffd');
  });

  it('never throws and never lets through what is no case', () => {
    fc.assert(fc.property(fc.string(), (query) => void decodeCase(query)));
    fc.assert(
      fc.property(fc.nat(), fc.string({ maxLength: 3 }), (where, put) => {
        const query = encodeCase(letter);
        const at = where % query.length;
        const read = decodeCase(query.slice(0, at) + put + query.slice(at + 1));
        if (read.ok) expect(typeof caseOf(read.letter, 'bench', undefined, new Date(AT))).toMatch(/string|object/);
        else expect(read.reason).toMatch(/\.$/);
      }),
    );
  });

  it.each([
    ['nothing', ''],
    ['no version', 'i=a&s=b&o=1'],
    ['cut in an escape', encodeCase({ ...letter, closed: null, log: [], complaint: 'ü' }).slice(0, -1)],
    ['a name of every object', encodeCase({ ...letter, id: 'constructor' })],
    ['the same part twice', `${encodeCase(letter)}&i=other`],
    ['an unknown part', `${encodeCase(letter)}&q=1`],
    ['an unknown kind of entry', `${encodeCase(letter)}&e=z.a.b.1.`],
    ['far too long', `v=1&c=${'a'.repeat(30_000)}`],
    ['a time that is none', 'v=1&i=a&s=gantry-sinks&o=zzzzzzzzzz'],
  ])('refuses a link with %s in a sentence', (_, query) => {
    const read = decodeCase(query);
    expect(read).toMatchObject({ ok: false });
  });

  it('reads the form before, which did not say by which of its ways a cause was mended', () => {
    const read = decodeCase('v=1&i=abc&s=gantry-sinks&o=1&n=x&e=m.nut-worn.y.1.A%20new%20nut.');
    const entry = {
      kind: 'mended',
      cause: 'nut-worn',
      cured: true,
      at: '1970-01-01T00:00:00.001Z',
      note: 'A new nut.',
    };
    expect(read.ok && read.letter.log).toEqual([entry]);
  });

  it('tells a newer form from a garbled one', () => {
    const read = decodeCase(encodeCase(letter).replace('v=2', 'v=3'));
    expect(read.ok ? '' : read.reason).toBe(say.link.newer);
  });

  it('leaves ids that the catalogue does not have to `unreadable`, which names them', () => {
    const read = decodeCase(encodeCase({ ...letter, symptom: 'no-such' }));
    expect(read.ok && unreadable(catalogue, read.letter)).toContain('no-such');
    expect(unreadable(catalogue, letter)).toBeUndefined();
  });
});

describe('a case that comes back', () => {
  const ours = caseOf({ ...letter, closed: null, log: letter.log.slice(0, 2) }, 'bench', undefined, new Date(AT));
  if (typeof ours === 'string') throw new Error(ours);
  const open = (log: readonly Logged[]): Letter => ({ ...letter, closed: null, log });

  it('passes the store’s own door, or is refused by it', () => {
    const bad = { ...letter, closed: { at: AT, how: 'abandoned', proof: '' } };
    expect(caseOf(bad, 'bench', undefined, new Date(AT))).toContain('cannot be read');
    expect(caseOf({ ...letter, complaint: 'a'.repeat(5000) }, 'bench', undefined, new Date(AT))).toContain('longer');
  });

  it('stands to ours as its log does', () => {
    expect(letterStanding(ours, open(letter.log.slice(0, 2)))).toBe('same');
    expect(letterStanding(ours, open(letter.log.slice(0, 3)))).toBe('theirs goes on');
    expect(letterStanding(ours, open(letter.log.slice(0, 1)))).toBe('ours goes on');
    const other: Logged = { kind: 'answer', check: 'screw-holds', answer: 'within', at: AT, note: '' };
    expect(letterStanding(ours, open([letter.log[0]!, other]))).toBe('apart');
    const cure: Logged = { kind: 'mended', cause: 'nut-worn', cured: true, at: AT, note: 'A new nut.' };
    expect(standing([{ ...cure, remedy: 'mend' }], [{ ...cure, remedy: 'replace' }])).toBe('apart');
    expect(standing([{ ...cure, remedy: 'replace' }], [cure])).toBe('same');
    expect(letterStanding(ours, { ...letter, log: letter.log.slice(0, 2) })).toBe('theirs goes on');
    expect(letterStanding(ours, { ...open(letter.log.slice(0, 2)), facts: {} })).toBe('theirs goes on');
  });

  it('is the same whichever side looks', () => {
    const turned = { same: 'same', apart: 'apart', 'theirs goes on': 'ours goes on', 'ours goes on': 'theirs goes on' };
    fc.assert(
      fc.property(fc.array(logged), fc.array(logged), (a, b) => {
        expect(standing(b, a)).toBe(turned[standing(a, b)]);
        expect(standing(a, [...a, ...b])).toBe(b.length === 0 ? 'same' : 'theirs goes on');
      }),
    );
  });

  it('keeps the readings that our entries rest on', () => {
    const reading = { at: AT, id: 'rrrrrrrrrrrr' };
    const mine = { ...ours, log: ours.log.map((one) => (one.kind === 'answer' ? { ...one, reading } : one)) };
    const taken = caseOf(open(letter.log), 'bench', mine, new Date(AT));
    expect(typeof taken === 'string' ? taken : taken.log[1]).toMatchObject({ check: 'screw-holds', reading });
    expect(typeof taken === 'string' ? 0 : taken.log.length).toBe(letter.log.length);
  });
});
