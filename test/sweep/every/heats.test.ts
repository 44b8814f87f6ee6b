import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../../src/engine/calculator';
import { evaluate } from '../../../src/engine/evaluate';
import { calculators } from '../../support/calculators';
import { draws } from '../../support/second';
import { times } from '../../support/sweep';

const COUNT = times(400, 2);
/** Words that tell a person to heat something to a temperature. */
const HEATS = /\b(?:heat|warm|dry|bake|turn the oven)\b[^.:]*\b(?:to|at) [\d.,]+\s°C/iu;

const told = (calc: Calculator) =>
  [1801, 1802].flatMap((seed) =>
    draws(calc, COUNT, seed).flatMap((situation) => {
      const { instruction, choices } = evaluate(calc, situation);
      return instruction ? [{ instruction, where: JSON.stringify({ choices, entries: situation.entries }) }] : [];
    }),
  );

describe.each(calculators)('%s: an order that heats', (_id, calc) => {
  const all = told(calc);

  it('never heats beyond what anything there bears', () => {
    for (const { instruction, where } of all)
      for (const { to, bears } of instruction.order.heats ?? [])
        expect(
          to,
          `${instruction.order.say} heats to ${to} K what bears ${bears} K: withhold it; ${where}`,
        ).toBeLessThanOrEqual(bears);
  });

  it('says so as data: how hot, and what has to bear it', () => {
    for (const { instruction, where } of all)
      for (const text of [instruction.sentence, ...instruction.steps])
        if (HEATS.test(text))
          expect(
            instruction.order.heats ?? [],
            `add heats: to ${instruction.order.say}: “${text}”; ${where}`,
          ).not.toEqual([]);
  });
});
