import { describe, expect, it } from 'vitest';
import type { Inputs } from '../../src/formula/propagate';
import { resultOf } from '../../src/formula/column';
import { solve, type Solution } from '../../src/formula/solve';
import { buildSystem } from '../../src/formula/system';

const exact = (value: number) => ({ value, u: 0, shape: 'rectangular' as const });

function ask(text: string | string[], value: number, range: [number, number], others: Inputs = {}): Solution {
  const texts = [text].flat();
  const system = buildSystem(texts, ['x', ...Object.keys(others)]);
  const target = texts.at(-1)!.split('=')[0]!.trim();
  return solve(system, others, { unknown: 'x', target, value, range });
}

const roots = (solution: Solution): number[] => {
  if (!solution.ok) throw new Error(JSON.stringify(solution));
  return solution.roots.map((root) => root.value);
};

function expectRoots(solution: Solution, expected: number[], digits = 10): void {
  const found = roots(solution);
  expect(found.length, found.join(', ')).toBe(expected.length);
  found.forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, digits));
}

describe('asking for an input', () => {
  it('finds one root, and none outside the range', () => {
    expectRoots(ask('y = 3 * x + 1', 2.5, [0, 10]), [0.5]);
    expectRoots(ask('y = x ^ 2', 2, [0, 10]), [Math.SQRT2]);
  });

  it('finds all roots of one that turns back', () => {
    expectRoots(ask('y = x ^ 2', 0.25, [-1, 1]), [-0.5, 0.5]);
    expectRoots(ask('y = (x - 1) * (x - 2) * (x - 3)', 0, [0.03, 4.01]), [1, 2, 3]);
    expectRoots(ask('y = sin(x)', 0.5, [0, 10]), [
      Math.PI / 6,
      (5 * Math.PI) / 6,
      (13 * Math.PI) / 6,
      (17 * Math.PI) / 6,
    ]);
  });

  it('finds two roots that lie within one step of the search', () => {
    const [a, b] = [0.70001, 0.7001];
    expectRoots(ask(`y = (x - ${a}) * (x - ${b})`, 0, [0, 1.003]), [a, b]);
    expectRoots(ask(`y = 5 - (x - ${a}) * (x - ${b})`, 5, [0, 1.003]), [a, b], 8);
  });

  it('finds a root at an end of the range', () => {
    expectRoots(ask('y = x', 3, [3, 7]), [3]);
    expectRoots(ask('y = x', 7, [3, 7]), [7]);
    expectRoots(ask('y = 2 * x', 0.2, [0.1, 5]), [0.1]);
  });

  it('finds a root between the last point with a result and the edge of the domain', () => {
    expectRoots(ask('y = sqrt(x - 0.1234)', 0.001, [0, 1]), [0.1234 + 1e-6]);
    expectRoots(ask('y = sqrt(0.1234 - x)', 0.001, [0, 1]), [0.1234 - 1e-6]);
    expectRoots(ask('y = acos(x)', 0.01, [-2, 2]), [Math.cos(0.01)]);
  });

  it('searches a range of many decades by equal ratios', () => {
    expectRoots(ask('y = 1 / x', 1 / 3e-6, [1e-9, 1e3]), [3e-6], 15);
    expectRoots(ask('y = x + 1e-8 / x', 1e-3, [1e-9, 1e3]), [5e-4 - Math.sqrt(2.4e-7), 5e-4 + Math.sqrt(2.4e-7)], 13);
  });

  it('says what the result ranges over where there is no root', () => {
    expect(ask('y = x ^ 2', -1, [-1, 2])).toEqual({ ok: false, reason: 'no root', low: 0, high: 4 });
    const wave = ask('y = sin(x)', 2, [0, 10]);
    expect(wave).toMatchObject({ ok: false, reason: 'no root' });
    if (!wave.ok && wave.reason === 'no root') expect(wave.high).toBeCloseTo(1, 9);
  });

  it('says that there is no result at all', () => {
    expect(ask('y = sqrt(x)', 1, [-5, -1])).toEqual({ ok: false, reason: 'no result' });
    expect(ask('y = x * a', 1, [0, 1], { a: undefined })).toEqual({ ok: false, reason: 'no result' });
  });

  it('takes neither a jump nor a pole for a root', () => {
    expect(ask(['n = round(x)', 'y = x - n'], 0.5001, [0, 2])).toMatchObject({ ok: false, reason: 'no root' });
    expectRoots(ask(['n = round(x)', 'y = x - n'], 0, [0.3, 2.6]), [1, 2]);
    expect(ask('y = 1 / (x - 0.51234)', 0, [0, 1])).toMatchObject({ ok: false, reason: 'no root' });
    expectRoots(ask('y = 1 / (x - 0.51234)', 10, [0, 1]), [0.61234]);
    expectRoots(ask('y = tan(x)', 1, [0, 3]), [Math.PI / 4]);
  });

  it('takes no small jump of a result that runs far for a root', () => {
    expect(ask(['n = round(x)', 'y = 1e9 * x ^ 9 + 0.5 * n'], 1e9 * 0.5 ** 9 + 0.25, [0.2, 1])).toMatchObject({
      ok: false,
    });
  });

  it('gives the two ends of a stretch on which a rounded result stays the same', () => {
    expectRoots(ask('n = round(x)', 2, [0, 10]), [1.5, 2.5], 8);
    // To 1e-9 of the number, which counts as rounding noise before a step.
    expectRoots(ask('n = floor(x)', 9, [0, 9.5]), [9, 9.5], 7);
    expect(ask('n = round(x)', 1.7, [0, 10])).toMatchObject({ ok: false, reason: 'no root', low: 0, high: 10 });
  });

  it('gives a root the uncertainty of the other inputs', () => {
    const a = { value: 4, u: 0.1, shape: 'rectangular' as const };
    const found = ask('y = a * x', 12, [0, 10], { a });
    // x = 12 / a, so u(x) = 12/16 u(a).
    expect(found.ok && found.roots[0]?.u).toBeCloseTo(0.075, 12);
    const flat = ask('y = x ^ 2 + 0 * a', 0, [-1, 1], { a });
    expect(flat.ok && flat.roots).toEqual([{ value: 0, u: undefined }]);
  });
});

describe('the plain arithmetic of the search', () => {
  it('has no value where a value is missing', () => {
    expect(resultOf(buildSystem(['y = x * a'], ['x', 'a']), { a: undefined }, 'x', 'y')(1)).toBeNaN();
    expect(resultOf(buildSystem(['y = x * a'], ['x', 'a']), { a: 2 }, 'x', 'y')(exact(3).value)).toBe(6);
  });
});
