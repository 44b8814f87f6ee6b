import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate';
import calc from '../../src/calculators/screw-lead';
import { situation } from '../support/calculators';

describe('an inch screw is told from the metric one it is taken for', () => {
  // 25.4 mm over 16, 12 and 3.2 threads: 1.5875, 2.1167 and 7.9375 mm a turn (the inch is 25.4 mm exactly).
  it.each([
    ['1.5', 25.4 / 16],
    ['2', 25.4 / 12],
    ['8', 25.4 / 3.2],
  ])('marked %s mm, found %d mm by caliper over ten turns', (marked, found) => {
    const x = `${(10 * found).toFixed(2)} ± 0.03`;
    expect(evaluate(calc, situation(calc, { x, N: '10', P_h: marked })).verdict.state).toBe('beyond');
    const right = `${10 * Number(marked)} ± 0.03`;
    expect(evaluate(calc, situation(calc, { x: right, N: '10', P_h: marked })).verdict.state).toBe('within');
  });
});
