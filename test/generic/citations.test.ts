import { describe, expect, it } from 'vitest';
import { bayesSource, orderSources } from '../../src/diagnosis/sources';
import { belts } from '../../src/reference/belts';
import { printCitation, type Citation } from '../../src/reference/citation';
import { materials } from '../../src/reference/materials';
import { everyCalculator } from '../support/calculators';

const outside = import.meta.glob('../../src/calculators/*/outside*.ts', { eager: true });

/** What nobody can look up: a page without a title, a work that is told and not named. */
const UNNAMED =
  /\bsuppliers?\b|\bmakers?[’'s]*\b|manufacturer|magazine|catalogue|data ?sheets?|database|on the web|printed tables? of|\btables of (?:materials|plastics|metals)|published worked|textbook|literature\b(?! value)/i;
/** Tables of this app name the source of each value themselves (src/reference). */
const OURS = 'in this app';
/** A year, or an edition. */
const EDITION = /\b1[89]\d\d\b|\b20\d\d\b|\bedition\b/;
/** Where in the work. */
const PLACE =
  /\b(?:clauses?|sections?|articles?|art\.|chapters?|ch\.|pages?|p\.|tables?|figures?|equations?|eq\.|examples?|annex|abstract|§)|\d/i;
/** Known to be wrong, or to be of another work. */
const WRONG = /B18\.29\.8|section 2\.6, logarithmic|art\. 142|Crank.*chapter 12|ISO 13050/;

/** What is amiss with a citation; empty where it can be looked up. */
function amiss(c: Citation): string {
  const text = printCitation(c);
  if (WRONG.test(text)) return `${text}: wrong work or place`;
  if (c.basis === 'common practice') return '';
  if (UNNAMED.test(text)) return `${text}: name the work, derive it, or say commonPractice`;
  if (c.basis === 'derived' || text.includes(OURS)) return '';
  if (!EDITION.test(text)) return `${text}: add its edition or year`;
  if (
    !c.fromMemory &&
    !text.includes('from memory') &&
    !PLACE.test(c.place ?? '') &&
    !/\d \(\d{4}\)|\(\d{4}\) \d/.test(c.source)
  )
    return `${text}: add clause, section, page or table, or say that it is from memory`;
  return '';
}

const citationsOf = (calc: (typeof everyCalculator)[number][1]): Citation[] =>
  [
    ...Object.values(calc.inputs).map((spec) => spec.basis),
    ...calc.formulas.map((formula) => formula.cite),
    ...calc.limits.map((limit) => limit.cite),
    ...calc.examples.map((example) => example.source),
    ...Object.values(calc.model?.outputs ?? {}).map((output) => output.cite),
  ].filter((one) => one !== undefined);

const all = (citations: readonly Citation[]): string[] =>
  [...new Set(citations.map(amiss))].filter((one) => one !== '');

describe('every citation can be looked up', () => {
  it.each(everyCalculator)('%s', (_id, calc) => {
    expect(all(citationsOf(calc))).toEqual([]);
  });

  it('those of the tables', () => {
    const isTabulated = (one: unknown): one is { readonly from: Citation } =>
      typeof one === 'object' && one !== null && 'from' in one;
    const rows: readonly object[] = [...Object.values(belts), ...Object.values(materials)];
    const from = rows.flatMap((row) => Object.values(row).filter(isTabulated)).map((one) => one.from);
    expect(from.length).toBeGreaterThan(100);
    expect(all(from)).toEqual([]);
  });

  it('those of the diagnosis', () => {
    expect(all([bayesSource, ...orderSources])).toEqual([]);
  });
});

describe('every outside proof rests on what is named', () => {
  it.each(Object.entries(outside))('%s', (_path, proofs) => {
    const sources = [...JSON.stringify(proofs).matchAll(/"source":"((?:[^"\\]|\\.)*)"/g)].map(
      ([, source = '']) => source,
    );
    expect([...new Set(sources)].filter((source) => UNNAMED.test(source) || WRONG.test(source))).toEqual([]);
  });
});
