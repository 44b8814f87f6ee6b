import { describe, expect, it } from 'vitest';
import { systemFor } from '../../../src/engine/system';
import { propagate } from '../../../src/formula/propagate';
import { isStepped, solveStepped } from '../../../src/formula/stepped';
import { toSi } from '../../../src/quantity/unit';
import { fewCases, generator, nearbyInputs } from '../../support/calculators';
import { behind, newcomers } from '../../support/newcomers';
import { times } from '../../support/sweep';

const exactly = (value: number) => ({ value, u: 0, shape: 'rectangular' as const });

/** In a part of the sweep every fourth input is asked for, from the second on. */
const EVERY = times(1, 4);

const isNew = newcomers();

describe.each(fewCases)('%s (%s): results that move in steps', (id, _options, calc, choices) => {
  const system = systemFor(calc, choices);

  it('are given by every stretch that is named, and by the value that was hidden', () => {
    const random = generator(29);
    for (let i = 0; i < times(2, 1); i += 1) {
      const inputs = nearbyInputs(calc, choices, random);
      const outcomes = propagate(system, inputs);
      for (const [at, [unknown, hidden]] of Object.entries(inputs).entries()) {
        const spec = calc.inputs[unknown];
        if (!spec || (at + EVERY - 1) % EVERY > 0) continue;
        const range = [toSi(spec.range[0], spec.measure.unit), toSi(spec.range[1], spec.measure.unit)] as const;
        // Each input is asked for once, from the last result that moves in steps with it.
        const all = system.steps
          .map(({ formula }) => formula.symbol)
          .filter((symbol) => isStepped(system, unknown, symbol) && !symbol.startsWith('excess_'));
        for (const target of all.slice(-1)) {
          if (!isNew(id, String(i), unknown, behind(system, target))) continue;
          const outcome = outcomes[target];
          if (!outcome?.ok) continue;
          const question = {
            unknown,
            target,
            value: outcome.value,
            range,
            near: hidden.value,
            most: 6,
            whole: spec.measure.kind.whole,
          };
          const found = solveStepped(system, inputs, question);
          const where = `${unknown} from ${target} = ${outcome.value}, hidden ${hidden.value}: ${JSON.stringify(found)}`;
          if (!found.ok) throw new Error(where);
          const slack = 1e-7 * Math.abs(hidden.value) + 1e-9 * (range[1] - range[0]);
          const holds = found.stretches.some(
            ({ low, high }) => hidden.value >= low - slack && hidden.value <= high + slack,
          );
          expect(holds, where).toBe(true);
          const aside = [0.9, 1.1].flatMap((share) => {
            const x = hidden.value === 0 ? share * range[1] : share * hidden.value;
            const there = propagate(system, { ...inputs, [unknown]: exactly(x) })[target];
            return there?.ok ? [there.value] : [];
          });
          for (const { low, high } of found.stretches) {
            for (const x of [low, (low + high) / 2, high]) {
              // By the propagation, which does not go through the search's own arithmetic.
              if (spec.measure.kind.whole && !Number.isInteger(x)) continue;
              const there = propagate(system, { ...inputs, [unknown]: exactly(x) })[target];
              const size = Math.max(Math.abs(outcome.value), ...aside.map(Math.abs));
              expect(there?.ok && Math.abs(there.value - outcome.value), `${where} at ${x}`).toBeLessThanOrEqual(
                1e-6 * size,
              );
            }
          }
        }
      }
    }
  });
});
