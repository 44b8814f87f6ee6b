import { describe, expect, it } from 'vitest';
import { applies, type Calculator, type FormulaSpec } from '../../src/engine/calculator';
import type { OutsideProof } from '../../src/engine/outside';
import { effectiveChoices, evaluate, symbolOf } from '../../src/engine/evaluate';
import { printCitation } from '../../src/reference/citation';
import { fromSi } from '../../src/quantity/unit';
import { calculators, measureOf, metaOf, situation } from '../support/calculators';
import { onlyCalculator, some } from '../support/sweep';

const modules = import.meta.glob<readonly OutsideProof[]>('../../src/calculators/*/outside.ts', {
  eager: true,
  import: 'default',
});
const checksOf = (id: string): readonly OutsideProof[] => modules[`../../src/calculators/${id}/outside.ts`] ?? [];

/** More than this share of a value is no check of it. */
const WIDEST = 0.02;

const holding = (calc: Calculator, formula: FormulaSpec, checks: readonly OutsideProof[]): readonly OutsideProof[] =>
  checks.filter(
    (check) =>
      Object.hasOwn(check.expect, symbolOf(formula)) &&
      applies(formula.when, effectiveChoices(calc, check.choices ?? {})),
  );

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** Every formula of a calculator with its source and what checks it from outside. */
function table(id: string, calc: Calculator): string {
  const rows = calc.formulas.map((formula) => {
    const under = Object.values(formula.when ?? {})
      .flat()
      .join(', ');
    const by = [...new Set(holding(calc, formula, checksOf(id)).map((check) => check.source))];
    return `| \`${cell(formula.text)}\`${under === '' ? '' : ` (${under})`} | ${cell(formula.meaning)} | ${cell(printCitation(formula.cite))} | ${cell(by.join('; '))} |`;
  });
  const fitted = Object.entries(calc.model?.outputs ?? {}).map(([symbol, output]) => {
    const by = checksOf(id).filter((check) => Object.hasOwn(check.expect, symbol));
    return `| \`${symbol}\`: ${cell(output.equation)} | ${cell(output.meaning)} | ${cell(printCitation(output.cite))} | ${cell([...new Set(by.map((check) => check.source))].join('; '))} |`;
  });
  return [
    `# ${metaOf[id]?.title ?? id}: formulas, sources, outside checks`,
    '',
    'Written by `npx vitest run test/outside/proofs.test.ts -u`, held by the same test.',
    '',
    '| formula | meaning | source | checked against |',
    '| --- | --- | --- | --- |',
    ...fitted,
    ...rows,
    '',
  ].join('\n');
}

describe.each(calculators)('%s', (id, calc) => {
  it.each(some(checksOf(id), onlyCalculator === undefined ? 6 : 1).map((check) => [check.source, check] as const))(
    'agrees with: %s',
    (_source, check) => {
      const choices = effectiveChoices(calc, check.choices ?? {});
      expect(choices, 'a proof names an option that does not exist').toMatchObject(check.choices ?? {});
      const { outcomes } = evaluate(calc, situation(calc, check.given, choices));
      for (const [symbol, [wanted, tolerance]] of Object.entries(check.expect)) {
        const value = typeof wanted === 'number' ? wanted : wanted();
        const outcome = outcomes[symbol];
        expect(outcome?.ok, `${symbol} has no result: give the proof all that it needs`).toBe(true);
        const found = outcome?.ok ? fromSi(outcome.value, measureOf(calc, choices, symbol).unit) : NaN;
        expect(Math.abs(found - value), `${symbol}: ${found}, expected ${value}`).toBeLessThanOrEqual(tolerance);
        if (value !== 0)
          expect(
            tolerance / Math.abs(value),
            `${symbol}: narrow the tolerance to ${100 * WIDEST} % of the value`,
          ).toBeLessThanOrEqual(WIDEST);
        expect(check.source.length, 'say where the number comes from').toBeGreaterThan(10);
      }
    },
  );

  it('has a check from outside for every formula', () => {
    const bare = calc.formulas.filter((formula) => holding(calc, formula, checksOf(id)).length === 0);
    expect(
      bare.map((formula) => formula.text),
      'add a proof of these to outside.ts',
    ).toEqual([]);
  });

  it('has a check from outside for everything its model works out', () => {
    const checked = checksOf(id).flatMap((check) => Object.keys(check.expect));
    const bare = Object.keys(calc.model?.outputs ?? {}).filter((symbol) => !checked.includes(symbol));
    expect(bare, 'add a proof of these to outside.ts').toEqual([]);
  });

  it('lists them in its formulas.md', async () => {
    const file = `../../src/calculators/${id}/formulas.md`;
    const how = 'it is out of date: npx vitest run test/outside/proofs.test.ts -u';
    await expect(table(id, calc), how).toMatchFileSnapshot(file);
  });
});
