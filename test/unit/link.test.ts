import fc from 'fast-check';
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { drawCode } from '../../src/app/desk/qr';
import type { Calculator } from '../../src/engine/calculator';
import type { Entry, KeptValue } from '../../src/engine/entry';
import { evaluate, type Situation } from '../../src/engine/evaluate';
import { decodeLink, hasValues, linkAddress, LONGEST_TEXT } from '../../src/engine/link';
import { LIMITS } from '../../src/machine/limits';
import { AS_MARKED } from '../../src/reference/tools';
import { calculators, situation } from '../support/calculators';
import { linkOf, opened, pictureOf, queryOf, told } from '../support/link';
import { isWhole, times } from '../support/sweep';

const APP = 'https://trammel.example/bench/';
const calc = (id: string): Calculator => calculators.find(([name]) => name === id)![1];
const sync = calc('two-z-screws');
const typed = (text: string, unit: string, tool = ''): Entry => ({ text, unit, tool });

describe('the names in a link', () => {
  it.each(calculators)('%s: no option and input share one, and none needs escaping', (_, one) => {
    const names = [...Object.keys(one.choices), ...Object.keys(one.inputs)];
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(encodeURIComponent(name)).toBe(name);
    // An option called v could not be told from the version; an input can: it comes later.
    expect(Object.keys(one.choices)).not.toContain('v');
  });

  it('allow texts as long as a draft does', () => {
    expect(LONGEST_TEXT).toBe(LIMITS.typed);
  });
});

describe('a link', () => {
  it('says in plain characters what was typed, in its own unit, with tool and half-width', () => {
    const entries = { dh: typed('+0,75 +/- 0,02 mm', 'mm', 'caliper'), P_h: typed(' 5/16 in ', 'mm', AS_MARKED) };
    const query = queryOf(sync, { entries, choices: { drive: 'two motors' }, kept: {}, mark: 'point' });
    expect(query).toContain('dh=%2B0.75~0.02;mm;caliper');
    expect(query).toContain('P_h=5/16;in;as-marked');
    expect(query).toMatch(/^v=1&[\x21-\x7e]*$/);
  });

  it('writes the machine’s values out with their half-width and origin, and the options it keeps', () => {
    const lead: KeptValue = { value: 8e-3, half: 0, unit: 'mm', origin: 'nameplate', tool: AS_MARKED, at: '' };
    const now: Situation = {
      entries: { dh: typed('+0.75', 'mm', 'caliper') },
      choices: {},
      kept: { 'z.lead': { ...lead, value: 12e-3 }, 'z.pulley-teeth': { ...lead, value: 16, unit: 'one' } },
      mark: 'point',
    };
    const query = queryOf(sync, now);
    expect(query).toContain('P_h=12~0;mm;as-marked');
    expect(told(evaluate(sync, opened(sync, query, 'point')))).toEqual(told(evaluate(sync, now)));
  });

  it('leaves out what stands at its typical value, and keeps the unit it is looked at in', () => {
    expect(queryOf(sync, { entries: {}, choices: {}, kept: {}, mark: 'point' })).toBe('v=1');
    const now: Situation = { entries: { P_h: typed('', 'in') }, choices: {}, kept: {}, mark: 'point' };
    expect(queryOf(sync, now)).toBe('v=1&P_h=;in');
    expect(evaluate(sync, opened(sync, 'v=1&P_h=;in', 'point')).inputs.P_h).toMatchObject({
      origin: 'typical',
      unit: { id: 'in' },
    });
  });

  it.each(['abc', '1,000', '1 ± 2 ± 3', '1e9'])('is not made while an entry cannot be used: %s', (text) => {
    const encoded = linkOf(sync, { entries: { dh: typed(text, 'mm') }, choices: {}, kept: {}, mark: 'point' });
    expect(encoded).toMatchObject({ ok: false });
    expect(!encoded.ok && encoded.reason).toContain(sync.inputs.dh!.label);
  });

  it('is not made of a typical value that a machine keeps: it would be read as measured', () => {
    const lead: KeptValue = { value: 8e-3, half: 0, unit: 'mm', origin: 'typical', tool: '', at: '' };
    expect(linkOf(sync, { entries: {}, choices: {}, kept: { 'z.lead': lead }, mark: 'point' }).ok).toBe(false);
  });

  it('holds the values in the fragment only', () => {
    const address = new URL(linkAddress('https://trammel.example/bench/?x=1#/machines', 'two-z-screws', 'v=1&dh=1;mm'));
    expect(address.search).toBe('');
    expect(address.hash).toBe('#/check/two-z-screws?v=1&dh=1;mm');
    expect(address.href.startsWith(APP)).toBe(true);
  });
});

describe('a kept value', () => {
  it('comes through to within two units in the last place, and as typed exactly, for any double', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5e-3, max: 0.05, noNaN: true }),
        fc.constantFrom('mm', 'in', 'um'),
        (value, unit) => {
          const lead: KeptValue = { value, half: 1e-5, unit, origin: 'measured', tool: 'caliper', at: '' };
          const now: Situation = { entries: {}, choices: {}, kept: { 'z.lead': lead }, mark: 'point' };
          const state = evaluate(sync, opened(sync, queryOf(sync, now), 'point')).inputs.P_h!;
          if (!state.ok) throw new Error(state.reason);
          expect(Math.abs(state.value - value)).toBeLessThanOrEqual(2 * Number.EPSILON * value);
        },
      ),
      { numRuns: times(500, 60) },
    );
  });
});

describe('what a link may not do', () => {
  const decode = (query: string) => decodeLink(sync, query);
  const { label } = sync.inputs.dh!;

  it.each([
    ['v=2&dh=1;mm', /newer Trammel \(form 2; this one reads up to 1\)/],
    ['v=999999999&dh=1;mm', /newer Trammel/],
    ['dh=1;mm', /does not say which form/],
    ['v=0&dh=1;mm', /does not say which form/],
    ['v=1.5&dh=1;mm', /does not say which form/],
    ['v=1e3', /does not say which form/],
    ['v=', /does not say which form/],
    ['', /does not say which form/],
    [`v=1&dh=${'1'.repeat(5000)};mm`, /too long/],
    [`v=1${'&x'.repeat(300)}`, /more values than any check/],
  ])('%s is refused whole, with a sentence', (query, sentence) => {
    const decoded = decode(query);
    expect(decoded.ok).toBe(false);
    expect(!decoded.ok && decoded.reason).toMatch(sentence);
  });

  it.each([
    ['q=1;mm', /“q=1;mm”\. This check has no such value/],
    ['dh=1;parsec', /the unit “parsec”, which this check does not know/],
    ['dh=1', /has no unit/],
    ['dh=1;N', /the unit “N”/],
    ['dh=1;mm;stick', /read with “stick”/],
    ['dh=1;mm;stopwatch', /read with “stopwatch”/],
    ['dh=one;mm', /cannot be read as a number/],
    ['dh=1,000;mm', /cannot be read as a number/],
    ['dh=1e999;mm', /cannot be read as a number/],
    ['dh=1;mm;caliper;x', /is garbled/],
    ['dh=%E0%A4%A;mm', /is garbled/],
    [`dh=${'1'.repeat(121)};mm`, /is too long/],
    ['drive=rope', /“rope”, which is not an option here/],
    ['drive=toString', /not an option/],
    ['drive=%', /not an option/],
    ['__proto__=1;mm', /no such value/],
    ['hasOwnProperty=1;mm', /no such value/],
    ['=', /no such value/],
  ])('%s is left out with a sentence, the rest is taken', (part, sentence) => {
    const decoded = decode(`v=1&${part}&z=20`);
    if (!decoded.ok) throw new Error(decoded.reason);
    expect(decoded.values.entries).toEqual({ z: typed('20', 'one') });
    expect(decoded.values.choices).toEqual({});
    expect(decoded.leftOut).toEqual([expect.stringMatching(sentence)]);
    if (part.startsWith('dh')) expect(decoded.leftOut[0]).toContain(label);
    expect(decoded.leftOut[0]!.length).toBeLessThan(220);
  });

  it('is never quoted with half a character', () => {
    const decoded = decode(`v=1&x${'\u{1f9f2}'.repeat(60)}`);
    expect(decoded.ok && decoded.leftOut[0]).toContain(`“x${'\u{1f9f2}'.repeat(39)}…”`);
    expect(decoded.ok && decoded.leftOut[0]).not.toMatch(/\p{C}/u);
  });

  it('says a thing twice', () => {
    const decoded = decode('v=1&dh=1;mm&dh=2;mm');
    // Written before a picture stood for the sign: the right side was higher.
    expect(decoded).toMatchObject({ ok: true, values: { entries: { dh: typed('+1', 'mm') } } });
    expect(decoded.ok && decoded.leftOut).toEqual([`${label} stands in the link twice: the first was taken.`]);
  });

  it('tells the version from an input called v', () => {
    const decoded = decodeLink(calc('retraction'), 'v=1&v=60;mm_s');
    expect(decoded).toMatchObject({ ok: true, values: { entries: { v: typed('60', 'mm_s') } }, leftOut: [] });
  });

  it('stands in an address without values', () => {
    expect([hasValues(''), hasValues('?'), hasValues('?v=1')]).toEqual([false, false, true]);
  });
});

/** Links to every worked example, shortest first. */
const links = calculators
  .flatMap(([id, one]) =>
    one.examples.map((example) => linkAddress(APP, id, queryOf(one, situation(one, example.given, example.choices)))),
  )
  .sort((a, b) => a.length - b.length);
const longest = links.at(-1)!;

describe('the length of the links to all worked examples', () => {
  it(`is typically under 300 characters; the longest has ${longest.length}`, () => {
    expect(links[Math.floor(links.length / 2)]!.length).toBeLessThan(300);
    expect(links.filter((link) => link.length < 300).length / links.length).toBeGreaterThan(0.9);
    // A table of five points is fifteen numbers more.
    expect(longest.length).toBeLessThan(450);
  });
});

// Read back by jsqr, a decoder that shares nothing with the encoder.
describe('the QR code', () => {
  it('of the longest of them reads back to it', () => {
    const { data, side } = pictureOf(longest);
    expect(jsQR(data, side, side)?.data).toBe(longest);
  });

  it.runIf(isWhole)('is not drawn of more than a code can hold: 2953 bytes (ISO/IEC 18004, version 40-L)', () => {
    expect(drawCode('a'.repeat(2953))?.size).toBe(177);
    expect(drawCode('a'.repeat(2954))).toBeUndefined();
  });
});
