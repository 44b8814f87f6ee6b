import { describe, expect, it } from 'vitest';
import { systemFor } from '../../../src/engine/system';
import { propagate } from '../../../src/formula/propagate';
import { fewCases, generator, nearbyInputs, randomInputs } from '../../support/calculators';
import { times } from '../../support/sweep';

describe('every calculator, with the half-widths of a careful bench', () => {
  it.each(fewCases)(
    '%s (%s): figures are sound, and first order follows from the gradient',
    (_id, _options, calc, choices) => {
      const system = systemFor(calc, choices);
      const random = generator(17);
      for (let i = 0; i < times(4, 2); i += 1) {
        const exact = (i < times(3, 1) ? nearbyInputs : randomInputs)(calc, choices, random);
        const inputs = Object.fromEntries(
          Object.entries(exact).map(([name, input]) => [
            name,
            { ...input, u: Math.abs(input.value) * 1e-3 * random() },
          ]),
        );
        for (const [symbol, outcome] of Object.entries(propagate(system, inputs))) {
          if (!outcome.ok) continue;
          for (const number of [outcome.value, outcome.u, outcome.low, outcome.high])
            expect(Number.isFinite(number), symbol).toBe(true);
          expect(outcome.low, symbol).toBeLessThanOrEqual(outcome.high);
          if (outcome.method !== 'first order') continue;
          const parts = Object.entries(outcome.gradient).map(([name, slope]) => slope * (inputs[name]?.u ?? 0));
          expect(Math.abs(Math.hypot(...parts) / outcome.u - 1), symbol).toBeLessThan(1e-9);
        }
      }
    },
  );
});
