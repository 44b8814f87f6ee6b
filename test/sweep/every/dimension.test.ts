import { describe, expect, it } from 'vitest';
import { systemFor } from '../../../src/engine/system';
import { checkSystem } from '../../../src/formula/system';
import type { Dimension } from '../../../src/quantity/dimension';
import { cases, measureOf } from '../../support/calculators';

describe('dimensions', () => {
  it.each(cases)(
    '%s (%s): every formula has the dimension declared for it, limits included',
    (_id, _options, calc, choices) => {
      const system = systemFor(calc, choices);
      const of = (symbol: string): Dimension => {
        const limit = /^excess_(\d+)_/.exec(symbol)?.[1];
        const name = limit === undefined ? symbol : calc.limits[Number(limit)]!.of;
        return measureOf(calc, choices, name).kind.dimension;
      };
      expect(system.steps.length, 'no formula applies under these options').toBeGreaterThan(0);
      expect(() => checkSystem(system, of), 'give the formula the measure that its units come to').not.toThrow();
    },
  );
});
