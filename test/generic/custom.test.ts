import { describe, expect, it } from 'vitest';
import { parseFormula } from '../../src/formula/parse';
import { applies, type Calculator, type Choices } from '../../src/engine/calculator';
import { readEntry, mustMeasure } from '../../src/engine/entry';
import { calculators, combinations } from '../support/calculators';

/*
 * A limit that is common practice is a line on which the trade does not agree: near it, nothing is within or beyond. A limit that
 * the person typed is their own, and exact. JCGM 106, 7: a limit's own doubt widens the guard band.
 */

/** Inputs that a symbol rests on, through the formulas in force. */
function restsOn(calc: Calculator, choices: Choices, symbol: string, seen = new Set<string>()): string[] {
  if (seen.has(symbol)) return [];
  seen.add(symbol);
  if (calc.inputs[symbol]) return [symbol];
  return calc.formulas
    .filter((f) => applies(f.when, choices))
    .map((f) => parseFormula(f.text))
    .filter((f) => f.symbol === symbol)
    .flatMap((f) => f.uses.flatMap((name) => restsOn(calc, choices, name, seen)));
}

describe.each(calculators)('%s: limits of common practice', (_, calc) => {
  it('carry a doubt as long as they are the trade’s, and none once they are typed', () => {
    for (const choices of combinations(calc)) {
      for (const limit of calc.limits.filter((l) => applies(l.when, choices) && l.cite.basis === 'common practice')) {
        for (const bound of [limit.max, limit.min]) {
          if (bound === undefined) continue;
          const under = restsOn(calc, choices, bound).filter((symbol) => {
            const spec = calc.inputs[symbol];
            return (
              spec?.basis?.basis === 'common practice' &&
              spec.decided !== true &&
              spec.from === undefined &&
              !mustMeasure(symbol, spec, calc.choices)
            );
          });
          for (const symbol of under) {
            const spec = calc.inputs[symbol];
            if (!spec) continue;
            const state = readEntry(symbol, spec, undefined, undefined, calc.choices, choices, 'point');
            expect(state.ok && state.half > 0, `give ${symbol}, under ${limit.of}, \`differs:\` or \`spread:\``).toBe(
              true,
            );
            if (spec.differs === undefined || !state.ok) continue;
            const text = String((spec.range[0] + spec.range[1]) / 2);
            const typed = readEntry(
              symbol,
              spec,
              { text, unit: '', tool: '' },
              undefined,
              calc.choices,
              choices,
              'point',
            );
            expect(typed.ok && typed.half, symbol).toBe(0);
          }
        }
      }
    }
  });
});
