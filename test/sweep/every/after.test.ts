import { describe, expect, it } from 'vitest';
import { contextFor } from '../../../src/engine/context';
import { evaluate } from '../../../src/engine/evaluate';
import { readAgain } from '../../../src/engine/entry';
import { firstThat } from '../../../src/engine/settable';
import { calculators } from '../../support/calculators';
import { draws } from '../../support/second';
import { times } from '../../support/sweep';

describe.each(calculators)('%s: the verdict after a change, asked by its action', (_id, calc) => {
  it('is that of the whole check with the input so read', () => {
    for (const situation of draws(calc, times(12, 1), 31)) {
      const found = evaluate(calc, situation);
      if (found.verdict.state === 'none') continue;
      const ask = contextFor(calc, found, situation);
      for (const [symbol, state] of Object.entries(found.inputs)) {
        if (!state.ok || calc.inputs[symbol]!.measure.kind.whole) continue;
        if (!calc.measured.includes(symbol) && !(symbol in calc.levers)) continue;
        for (const value of [state.value * 1.1, state.value * 0.6]) {
          const read = { [symbol]: readAgain(calc.inputs[symbol]!, state, value) };
          const whole = evaluate(calc, { ...situation, read });
          // What is asked about, or out of its range, has no verdict at all, which only the whole check knows.
          if (whole.contradiction || whole.inputs[symbol]?.ok !== true) continue;
          expect(ask.after({ [symbol]: value }), `${symbol} = ${value}`).toBe(whole.verdict.state);
        }
      }
    }
  });
});

describe('the first amount that passes', () => {
  const from = (least: number) => (si: number) => si >= least;
  it('is met in steps that can be set, and passes', () => {
    expect(firstThat(from(3), 3, 50, 0.5)).toBe(3);
    expect(firstThat(from(3.2), 3, 50, 0.5)).toBe(3.5);
    expect(firstThat(from(4.9), 3, 50, 0.5)).toBe(5);
    expect(firstThat((si) => si <= 1, 10, 0, 0.5)).toBe(0);
  });
  it('is the end where only that passes, and none where not even that does', () => {
    expect(firstThat(from(50), 3, 50, 0.5)).toBe(50);
    expect(firstThat(from(51), 3, 50, 0.5)).toBeUndefined();
    expect(firstThat(from(3), 3, 3, 0.5)).toBe(3);
  });
});
