import { describe, expect, it } from 'vitest';
import { systemFor } from '../../../src/engine/system';
import { propagate } from '../../../src/formula/propagate';
import { fewCases, generator, measureOf, nearbyInputs, randomInputs } from '../../support/calculators';
import { behind, newcomers } from '../../support/newcomers';
import { times } from '../../support/sweep';
import { compile, siValue, withUnit, type Found } from '../../support/mathjs';

/*
 * Every formula of every calculator, worked out with units by mathjs (15.2.0, a library of its own with its own parser)
 * from the same text: on inputs anywhere in their stated ranges, where many do not fit together and some formulas have no
 * value, and on inputs near the worked examples, where every formula must have one at least half the time.
 */
const WIDE = times(10, 1);
const NEAR = times(20, 4);
const RELATIVE = 1e-9;

const isExcess = (symbol: string): boolean => symbol.startsWith('excess_');

describe('every formula against mathjs, value and dimension', () => {
  const isNew = newcomers();
  it.each(fewCases)('%s (%s)', (id, _options, calc, choices) => {
    const random = generator(20_260_401);
    const system = systemFor(calc, choices);
    const steps = system.steps
      .filter((step) => !isExcess(step.formula.symbol))
      .map((step) => ({ ...step, theirs: compile(step.formula.text) }));
    // Under other options all that is worked out may rest on the same formulas.
    const fresh = steps.filter(({ formula }) => isNew(id, behind(system, formula.symbol)));
    if (fresh.length === 0) return;
    const succeeded = new Map(steps.map((step) => [step.formula.symbol, 0]));
    for (let sample = 0; sample < WIDE + NEAR; sample += 1) {
      const near = sample >= WIDE;
      const inputs = (near ? nearbyInputs : randomInputs)(calc, choices, random);
      const outcomes = propagate(system, inputs);
      const scope: Record<string, Found> = {};
      const dimensionOf = (symbol: string) => measureOf(calc, choices, symbol).kind.dimension;
      for (const [symbol, { value }] of Object.entries(inputs)) scope[symbol] = withUnit(value, dimensionOf(symbol));
      for (const { formula, theirs } of steps) {
        const ours = outcomes[formula.symbol];
        if (!ours?.ok) continue;
        const found = theirs(scope);
        const value = siValue(found, dimensionOf(formula.symbol));
        const where = `${formula.text} at ${JSON.stringify(Object.fromEntries(formula.uses.map((name) => [name, String(scope[name])])))}: mathjs ${String(found)}`;
        expect(value, `${where}, another dimension: look at the measure declared`).toBeDefined();
        expect(Math.abs(ours.value - value!), where).toBeLessThanOrEqual(RELATIVE * Math.abs(value!));
        // The chain goes on with mathjs's own result.
        scope[formula.symbol] = found as Found;
        if (near) succeeded.set(formula.symbol, succeeded.get(formula.symbol)! + 1);
      }
    }
    for (const [symbol, count] of succeeded) {
      expect(
        count,
        `${symbol} has a value in ${count} of ${NEAR} samples near the worked examples: add one of these options, or narrow ranges`,
      ).toBeGreaterThanOrEqual(times(NEAR / 2, 1));
    }
  });
});
