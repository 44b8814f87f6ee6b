import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import bedTram from '../../src/calculators/bed-tram/index';
import twoZScrews from '../../src/calculators/two-z-screws/index';
import { explainAll, explained } from '../../src/app/desk/explain';
import { retold } from '../../src/app/readings/retold';
import { evaluate } from '../../src/engine/evaluate';
import { readFile } from '../../src/machine/exchange-read';
import type { Reading } from '../../src/machine/schema';
import { VERSION } from '../../src/machine/version';
import { readGood } from '../support/exchange-samples';
import { opened, queryOf } from '../support/link';
import { situation } from '../support/calculators';

/**
 * What the released version wrote (commit b11ebda), by its own writer: the demo, and a machine with the third worked example of
 * Two Z screws in step (motors) and the first of the bed tram (model, three limits).
 */
const text = readFileSync('test/cases/version-3.txt', 'utf8');
const link = 'v=1&drive=motors&dh=0.12;mm&S_m=300~0;mm&S=300~0;mm&W=300~0;mm&P_h=8;mm&theta_s=1.8;deg';

const readings = readGood(text).records.filter((one) => one.type === 'reading');
const kept = (id: string): Reading => readings.find((one) => one.id === id)!;

describe('a file of the released version', () => {
  it('is read whole, its readings marked as not whole', () => {
    const read = readFile(text);
    expect(read).toMatchObject({ ok: true, refused: [], repeats: 0 });
    const { records } = readGood(text);
    expect(records.map(({ type }) => type).sort()).toEqual([
      ...['case', 'draft', 'machine', 'machine', 'reading', 'reading', 'reading', 'reading', 'settings'],
    ]);
    expect(new Set(records.map(({ v }) => v))).toEqual(new Set([VERSION]));
    for (const reading of readings) expect(reading).toMatchObject({ whole: false, options: {}, limits: [] });
  });

  it('tells each order in the words it was kept with', () => {
    const reading = kept('motors');
    const steps = reading.order.steps.map((step) => step.text);
    expect(steps.length).toBeGreaterThan(0);
    expect(retold(reading.order, twoZScrews, 'comma')).toEqual({ sentence: reading.order.sentence, steps });
  });
});

describe('a reading of the released version, completed', () => {
  it('has the names of today under its own options', async () => {
    const [before, motors] = await explainAll([kept('before'), kept('motors')]);
    const meaning = (as: string) => twoZScrews.formulas.find((formula) => formula.as === as)?.meaning;
    const meanings = twoZScrews.formulas
      .filter(({ text: formula }) => formula.startsWith('h_t ='))
      .map((f) => f.meaning);
    expect(new Set(meanings).size).toBe(2);
    expect([before!.results.h_t!.name, motors!.results.h_t!.name]).toEqual(meanings);
    expect(meaning('nothing')).toBeUndefined();
    expect(motors!.results.h_t).toMatchObject({ kind: 'length', unit: 'mm' });
    expect(motors!.entries.theta_s).toMatchObject({
      name: twoZScrews.inputs.theta_s!.label,
      kind: 'angle',
      unit: 'deg',
    });
    const { drive } = twoZScrews.choices;
    expect(motors!.options.drive).toEqual({ name: drive!.label, text: drive!.options.motors!.label });
    expect(motors!.whole).toBe(false);
  });

  it('has the verdict on its one limit that it was kept with', async () => {
    const [before, after] = await explainAll([kept('before'), kept('after')]);
    const { label } = twoZScrews.limits[0]!;
    const limit = { of: 'dh_bed', max: 'dh_lim', symmetric: true, name: label };
    expect(before!.limits).toEqual([{ ...limit, verdict: 'beyond' }]);
    expect(after!.limits).toEqual([{ ...limit, verdict: 'within' }]);
  });

  it('judges several limits by the intervals, and says nothing of what the model made: that was not kept', async () => {
    const [bed] = await explainAll([kept('bed')]);
    expect(bed!.results).not.toHaveProperty('F');
    expect(bed!.limits.map(({ of, verdict }) => [of, verdict])).toEqual([
      ['t_p', 'beyond'],
      ['t_q', 'beyond'],
      ['F', 'none'],
    ]);
    expect(Object.values(bed!.entries).map(({ name }) => name)).not.toContain('');
    expect(bed!.entries.x_1!.name).toBe(bedTram.inputs.x_1!.label);
  });

  it('changes nothing of what was kept', async () => {
    const [bed] = await explainAll([kept('bed')]);
    const { entries, choices, results, verdict, order, note } = kept('bed');
    expect(bed).toMatchObject({ choices, verdict, order, note });
    for (const [symbol, { value, half, origin, tool }] of Object.entries(entries)) {
      expect(bed!.entries[symbol]).toMatchObject({ value, half, origin, tool });
    }
    for (const [symbol, { value, low, high, text: shown }] of Object.entries(results)) {
      expect(bed!.results[symbol]).toMatchObject({ value, low, high, text: shown });
    }
  });

  it('of a check that is no longer there has its symbols for names, in SI', () => {
    const gone = explained(kept('motors'), undefined);
    expect(gone.results.h_t).toMatchObject({ name: 'h_t', kind: '' });
    expect(gone.options.drive).toEqual({ name: 'drive', text: 'motors' });
    expect(gone.limits).toEqual([]);
  });

  it('is left alone where it is whole', async () => {
    const whole: Reading = { ...kept('motors'), whole: true };
    expect((await explainAll([whole]))[0]).toBe(whole);
  });
});

it('a link of the released version opens on the same numbers', () => {
  const example = twoZScrews.examples[2]!;
  const now = situation(twoZScrews, example.given, example.choices);
  const [theirs, ours] = [evaluate(twoZScrews, opened(twoZScrews, link, 'point')), evaluate(twoZScrews, now)];
  expect(theirs.outcomes).toEqual(ours.outcomes);
  expect(theirs.choices).toEqual(ours.choices);
  // A picture stands for the sign now: written out, the same link says + in front of the number.
  expect(queryOf(twoZScrews, now)).toBe(link.replace('dh=0.12', 'dh=%2B0.12'));
});
