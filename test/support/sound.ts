import { expect } from 'vitest';
import type { Calculator } from '../../src/engine/calculator';
import { explain, type Evaluation } from '../../src/engine/evaluate';
import { expanded } from '../../src/formula/outcome';

/** Results, verdict and instruction of an evaluation hold no NaN, no leftover of a missing value and nothing empty. */
export function expectSound(calc: Calculator, found: Evaluation): void {
  for (const [symbol, outcome] of Object.entries(found.outcomes)) {
    if (!outcome.ok) {
      const why = explain(calc, outcome.failure);
      if (!/^[A-Z].*\.$/.test(why) || /NaN|undefined|Infinity/.test(why))
        expect.fail(`${symbol} has no value, and the reason is no sentence: “${why}”`);
      continue;
    }
    const { value, u, low, high, budget } = outcome;
    const numbers = [value, u, low, high, expanded(outcome), ...budget.map((part) => part.share)];
    if (!numbers.every(Number.isFinite)) expect.fail(`${symbol} holds what is no number: ${numbers.join(', ')}`);
    if (low > high) expect.fail(`${symbol} runs from ${low} down to ${high}`);
  }
  const { instruction, cannot } = found;
  if (instruction?.steps.length === 0)
    expect.fail(`“${instruction.sentence}” comes without a step: say how the hand does it`);
  const said = instruction ? [instruction.sentence, ...instruction.steps] : [cannot ?? ''];
  for (const text of said) {
    if (text.trim() === '') expect.fail(`an empty line is said: ${JSON.stringify(said)}`);
    if (/NaN|undefined|null|Infinity|\[object/.test(text)) expect.fail(`a value that is missing is printed: “${text}”`);
  }
  for (const { amount, direction, part } of instruction?.movements ?? []) {
    if (!(Number.isFinite(amount) && amount >= 0))
      expect.fail(`move ${part} ${direction} by ${amount}: amounts are not negative; the direction says which way`);
  }
}
