import { describe, expect, it } from 'vitest';
import { cite, commonPractice, derived, printCitation, type Citation } from '../../src/reference/citation';
import { calculators } from '../support/calculators';

const sound = (c: Citation | undefined, where: string): void => {
  expect(c, `${where}: add where it comes from: cite(…), derived(…) or commonPractice`).toBeDefined();
  expect(c!.source.trim().length, `${where}: name the work`).toBeGreaterThan(5);
  expect(printCitation(c!), where).not.toMatch(/undefined|\bTODO\b|\?\?/);
  if (c!.basis === 'common practice') expect(c, where).toEqual(commonPractice);
  // No page names: a supplier's table is called that.
  expect(printCitation(c!), where).not.toMatch(/https?:|www\.|\.com\b/);
};

describe.each(calculators)('%s', (_id, calc) => {
  it('says where every formula comes from and what it means', () => {
    expect(calc.formulas.length, 'add a formula').toBeGreaterThan(0);
    for (const formula of calc.formulas) {
      sound(formula.cite, formula.text);
      expect(formula.meaning.length, formula.text).toBeGreaterThan(3);
    }
  });

  it('says what its model works out and by what equation', () => {
    for (const [symbol, output] of Object.entries(calc.model?.outputs ?? {})) {
      sound(output.cite, symbol);
      expect(output.meaning.length, symbol).toBeGreaterThan(3);
      expect(output.equation.length, symbol).toBeGreaterThan(5);
    }
  });

  it('says where every limit comes from', () => {
    for (const limit of calc.limits) {
      sound(limit.cite, limit.of);
      expect(limit.label.length, limit.of).toBeGreaterThan(3);
    }
  });

  it('says where every worked example comes from', () => {
    for (const example of calc.examples) sound(example.source, example.title);
  });

  it('says where the typical value of every limit comes from, unless it is a measure of the machine', () => {
    const limits = new Set(calc.limits.flatMap((limit) => [limit.max, limit.min]));
    for (const [name, spec] of Object.entries(calc.inputs)) {
      if (spec.basis !== undefined) sound(spec.basis, name);
      if (limits.has(name) && spec.typical !== undefined && spec.from === undefined)
        sound(spec.basis, `${name} is a limit, add \`basis:\` to it`);
    }
  });
});

describe('a citation in print', () => {
  it('names work and place, and says when it is from memory', () => {
    expect(printCitation(cite('JCGM 100:2008', '5.1.2'))).toBe('JCGM 100:2008, 5.1.2');
    expect(printCitation(cite('JCGM 100:2008', '5.1.2', true))).toBe('JCGM 100:2008, 5.1.2 (from memory)');
    expect(printCitation(cite('JCGM 100:2008'))).toBe('JCGM 100:2008');
  });

  it('says what a derivation starts from, and that common practice has no source', () => {
    expect(printCitation(derived('similar triangles'))).toBe('Derived: similar triangles');
    expect(printCitation(commonPractice)).toBe('Common practice, no source');
  });
});
