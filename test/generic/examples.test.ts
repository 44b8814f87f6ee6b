import { describe, expect, it } from 'vitest';
import { evaluate, explain } from '../../src/engine/evaluate';
import { calculators, fromSi, measureOf, situation } from '../support/calculators';

const examples = calculators.flatMap(([id, calc]) =>
  calc.examples.map((example) => [id, example.title, calc, example] as const),
);

/** More than this share of a value, as a tolerance, is no tolerance. */
const WIDEST = 0.1;

describe('worked examples', () => {
  it.each(calculators)('%s has at least three, each of its own title', (_id, calc) => {
    expect(calc.examples.length, 'add worked examples: three at least').toBeGreaterThanOrEqual(3);
    const titles = calc.examples.map((example) => example.title);
    const twice = titles.filter((title, i) => titles.indexOf(title) < i);
    expect(twice, 'give each example its own title').toEqual([]);
  });

  it.each(examples)('%s: %s', (_id, _title, calc, example) => {
    for (const [name, option] of Object.entries(example.choices ?? {})) {
      const options = Object.keys(calc.choices[name]?.options ?? {});
      expect(options, `${name} has no option ${option}: take one of those`).toContain(option);
    }
    const found = evaluate(calc, situation(calc, example.given, example.choices));
    for (const name of Object.keys(example.given)) {
      expect(found.inputs[name], `${name} is not read: take it out of \`given\`, or pick the options it belongs to`).toMatchObject({ ok: true }); // prettier-ignore
    }
    const expectations = Object.entries(example.expect);
    expect(expectations.length, 'add what to expect').toBeGreaterThan(0);
    for (const [symbol, expected] of expectations) {
      const [value, tolerance] = expected!;
      const outcome = found.outcomes[symbol];
      const why = outcome?.ok === false ? explain(calc, outcome.failure) : 'no such result under these options.';
      expect(outcome?.ok, `${symbol} has no value: ${why}`).toBe(true);
      if (!outcome?.ok) continue;
      const shown = fromSi(outcome.value, measureOf(calc, found.choices, symbol).unit);
      // A tolerance of 0 or 1e-9 leaves only the rounding of the unit's factor.
      const slack = 1e-12 * Math.abs(value);
      const where = `${symbol} is ${shown}, expected ${value} ± ${tolerance}: work the example by hand again`;
      expect(Math.abs(shown - value), where).toBeLessThanOrEqual(tolerance + slack);
      expect(tolerance, `${symbol}: narrow the tolerance to under ${100 * WIDEST} % of the value`).toBeLessThanOrEqual(
        Math.max(WIDEST * Math.abs(value), 1e-9),
      );
    }
    const { instruction } = found;
    if (instruction) expect(instruction.steps.length, `“${instruction.sentence}”: add the steps`).toBeGreaterThan(0);
    if (example.verdict === undefined) return;
    const { state } = found.verdict;
    expect(state, `the verdict is “${state}”: work it by hand, mind the half-widths of the readings`).toBe(
      example.verdict,
    );
  });
});
