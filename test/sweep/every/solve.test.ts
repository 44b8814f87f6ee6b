import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Calculator, Choices } from '../../../src/engine/calculator';
import { systemFor } from '../../../src/engine/system';
import twoZScrews from '../../../src/calculators/two-z-screws';
import { propagate, type Inputs, type Outcomes } from '../../../src/formula/propagate';
import { resultOf } from '../../../src/formula/column';
import { solve } from '../../../src/formula/solve';
import type { System } from '../../../src/formula/system';
import { toSi } from '../../../src/quantity/unit';
import { fewCases, generator, nearbyInputs, randomInputs } from '../../support/calculators';
import { behind, newcomers } from '../../support/newcomers';
import { isWhole, some, times } from '../../support/sweep';

/** Results that rest on a whole number which an input moves: saws of many teeth, of which a search need not find each. */
function saws(system: System, input: string): Set<string> {
  const found = new Set<string>();
  for (const { formula, rounded, inputs } of system.steps) {
    if ((rounded && inputs.has(input)) || formula.uses.some((name) => found.has(name))) found.add(formula.symbol);
  }
  return found;
}

/**
 * Pairs of input and result where the input counts for something here. A slope of 0, or one that is only rounding left of
 * an input that cancels, gives a whole stretch of answers.
 */
function pairsOf(system: System, outcomes: Outcomes, inputs: Inputs): (readonly [unknown: string, target: string])[] {
  return Object.entries(outcomes).flatMap(([target, outcome]) => {
    if (!outcome.ok || target.startsWith('excess_')) return [];
    const counts = ([name, slope]: [string, number]): boolean =>
      Math.abs(slope * (inputs[name]?.value ?? 0)) > 1e-6 * Math.abs(outcome.value) && !saws(system, name).has(target);
    return Object.entries(outcome.gradient)
      .filter(counts)
      .map(([name]) => [name, target] as const);
  });
}

/** Hides one input, asks for it from the result, and looks for it among the answers. */
function expectFound(
  calc: Calculator,
  system: System,
  outcomes: Outcomes,
  inputs: Inputs,
  [unknown, target]: readonly [string, string],
): void {
  const outcome = outcomes[target];
  if (!outcome?.ok) throw new Error(`${target} has no value`);
  const hidden = inputs[unknown]!.value;
  const { range, measure } = calc.inputs[unknown]!;
  const ends = [toSi(range[0], measure.unit), toSi(range[1], measure.unit)] as const;
  const solution = solve(
    system,
    { ...inputs, [unknown]: undefined },
    { unknown, target, value: outcome.value, range: ends },
  );
  const where = `${unknown} from ${target} = ${outcome.value}, hidden ${hidden}`;
  expect(solution.ok, `${where}: ${JSON.stringify(solution)}`).toBe(true);
  if (!solution.ok) return;
  // Rounding of the result, about 1e-14 of what all inputs together make of it, comes back divided by the slope.
  const parts = Object.entries(outcome.gradient).map(([name, g]) => Math.abs(g * (inputs[name]?.value ?? 0)));
  const size = parts.reduce((sum, part) => sum + part, Math.abs(outcome.value));
  const allowed = 1e-9 * Math.abs(hidden) + (1e-11 * size) / Math.abs(outcome.gradient[unknown]!);
  const nearest = Math.min(...solution.roots.map((root) => Math.abs(root.value - hidden)));
  expect(nearest, `${where}: ${solution.roots.map((root) => root.value).join(', ')}`).toBeLessThanOrEqual(allowed);
}

describe('there and back', () => {
  it('two-z-screws: a hidden input is found from any result that depends on it', () => {
    const drives = fc.constantFrom<Choices>(
      { by: 'heights', drive: 'belt', hand: 'right' },
      { by: 'level', drive: 'motors', hand: 'right' },
    );
    fc.assert(
      fc.property(drives, fc.nat(), fc.nat(), (choices, seed, pick) => {
        const system = systemFor(twoZScrews, choices);
        const inputs = randomInputs(twoZScrews, choices, generator(seed));
        const outcomes = propagate(system, inputs);
        const pairs = pairsOf(system, outcomes, inputs);
        expectFound(twoZScrews, system, outcomes, inputs, pairs[pick % pairs.length]!);
      }),
      { numRuns: times(200, 15), seed: 1 },
    );
  });

  const isNew = newcomers();
  it.each(fewCases)('%s (%s): every input from every result that depends on it', (id, _options, calc, choices) => {
    const system = systemFor(calc, choices);
    const inputs = nearbyInputs(calc, choices, generator(3));
    // What a model worked out cannot be asked for: the readings behind it would have to be found.
    const outcomes = propagate(system, inputs);
    const pairs = pairsOf(system, outcomes, inputs).filter(([unknown]) => Object.hasOwn(calc.inputs, unknown));
    expect(pairs.length, 'no input moves any result: look at the worked examples under these options').toBeGreaterThan(
      0,
    );
    // In a part of the sweep each input is asked for once, from the last result that rests on it.
    const asked = isWhole
      ? pairs.filter(([unknown, target]) => isNew(id, unknown, behind(system, target)))
      : [...new Map(pairs.map((pair) => [pair[0], pair])).values()];
    for (const pair of some(asked, 3)) expectFound(calc, system, outcomes, inputs, pair);
  });
});

describe('the plain arithmetic of the search and the jets of the propagation', () => {
  it.each(fewCases)('%s (%s) give the same values', (_id, _options, calc, choices) => {
    const system = systemFor(calc, choices);
    const random = generator(11);
    const each = times(3, 1);
    for (let i = 0; i < 2 * each; i += 1) {
      const inputs = (i < each ? randomInputs : nearbyInputs)(calc, choices, random);
      const outcomes = propagate(system, inputs);
      const values = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
      const [unknown] = Object.keys(values);
      for (const { formula } of system.steps) {
        const plain = resultOf(system, values, unknown!, formula.symbol)(values[unknown!]!);
        const outcome = outcomes[formula.symbol];
        if (outcome?.ok)
          expect(Math.abs(plain - outcome.value), formula.text).toBeLessThanOrEqual(1e-12 * Math.abs(outcome.value));
        else expect(plain, formula.text).toBeNaN();
      }
    }
  });
});
