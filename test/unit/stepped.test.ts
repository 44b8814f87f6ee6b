import { describe, expect, it } from 'vitest';
import { isStepped, solveStepped, type SteppedSolution } from '../../src/formula/stepped';
import { buildSystem } from '../../src/formula/system';
import { isWhole } from '../support/sweep';

const exact = (value: number) => ({ value, u: 0, shape: 'rectangular' as const });

function ask(texts: string[], value: number, range: [number, number], near: number, rest = {}): SteppedSolution {
  const system = buildSystem(texts, ['x', 'g']);
  const target = texts.at(-1)!.split('=')[0]!.trim();
  expect(isStepped(system, 'x', target)).toBe(true);
  const question = { unknown: 'x', target, value, range, near, most: 6, whole: false, ...rest };
  return solveStepped(system, { g: exact(0.04) }, question);
}

const stretches = (found: SteppedSolution) => {
  if (!found.ok) throw new Error(JSON.stringify(found));
  return found.stretches;
};

describe('results that move in steps', () => {
  // Half steps by hand: round(x / 0.04) is 5 from 0.18 to 0.22.
  it('a whole number is given by a whole stretch', () => {
    const [one, ...rest] = stretches(ask(['n = round(x / g)'], 5, [0.01, 2], 0.2));
    expect(rest).toEqual([]);
    expect(one?.low).toBeCloseTo(0.18, 9);
    expect(one?.high).toBeCloseTo(0.22, 9);
  });

  it.runIf(isWhole)('also where the steps are far finer than the search’s own', () => {
    const [one] = stretches(ask(['n = floor(x / g * 100)'], 501, [0.001, 2], 0.2));
    expect(one?.low).toBeCloseTo(0.2004, 9);
    expect(one?.high).toBeCloseTo(0.2008, 9);
  });

  it('nothing left over: every whole multiple, the usual one first', () => {
    const saw = ['n = x / g', 'a = floor(n)', 'b = ceil(n)', 'e = max(x - a * g, b * g - x)'];
    const found = ask(saw, 0, [0.01, 2], 0.2);
    expect(found).toMatchObject({ ok: true, more: true });
    expect(stretches(found).map(({ low }) => Number(low.toFixed(6)))).toEqual(
      expect.arrayContaining([0.2, 0.16, 0.24, 0.12, 0.28]),
    );
    expect(stretches(found)[0]?.low).toBeCloseTo(0.2, 9);
  });

  it('a remainder is met once in each step', () => {
    // x − round(x / g)·g = 0.01 at 0.01, 0.05, 0.09 …
    const found = stretches(ask(['n = round(x / g)', 'r = x - n * g'], 0.01, [0.02, 0.3], 0.1));
    expect(found.map(({ low }) => Number(low.toFixed(6)))).toEqual([0.09, 0.13, 0.05, 0.17, 0.21, 0.25]);
    for (const { low, high } of found) expect(high - low).toBe(0);
  });

  it('a counted unknown is answered by whole numbers only', () => {
    const found = stretches(ask(['n = round(7 * g * x)'], 5, [1, 200], 20, { whole: true }));
    // 7 · 0.04 x between 4.5 and 5.5: x from 16.07 to 19.64.
    expect(found).toEqual([{ low: 17, high: 19 }]);
  });

  it('says how far the result reaches where nothing gives it', () => {
    expect(ask(['n = round(x / g)'], 51, [0.02, 2], 0.2)).toEqual({ ok: false, reason: 'no root', low: 1, high: 50 });
  });
});
