import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { buildSystem } from '../../src/formula/system';
import { smoothFunctions } from '../../src/formula/functions';
import { propagate, type Inputs } from '../../src/formula/propagate';
import { expanded, type Known } from '../../src/formula/outcome';
import { Draws } from '../../src/formula/sample';
import { times } from '../support/sweep';

const run = (texts: string[], inputs: Inputs) => propagate(buildSystem(texts, Object.keys(inputs)), inputs);
const rectangular = (value: number, u: number) => ({ value, u, shape: 'rectangular' as const });

describe('what every result holds', () => {
  const inputs = fc.record({
    x: fc.double({ min: -10, max: 10, noNaN: true }),
    z: fc.double({ min: 0.5, max: 10, noNaN: true }),
    ux: fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 2, noNaN: true })),
    uz: fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 0.2, noNaN: true })),
  });
  const texts = ['s = x + z', 'p = x * z', 'q = x / z', 'w = x ^ 2', 'm = max(x, z)', 'a = abs(x - z)', 'e = exp(x / 5)', 'd = p - q + w', 'n = round(x)', 'r = x - n']; // prettier-ignore

  it('is a value inside sound figures, or a named reason', () => {
    fc.assert(
      fc.property(inputs, ({ x, z, ux, uz }) => {
        const out = run(texts, { x: rectangular(x, ux), z: rectangular(z, uz) });
        for (const [symbol, outcome] of Object.entries(out)) {
          if (!outcome.ok) {
            expect(['n', 'r'], symbol).toContain(symbol);
            expect(outcome.failure.kind).toBe('undetermined');
            continue;
          }
          expect(Number.isFinite(outcome.value) && Number.isFinite(outcome.u) && outcome.u >= 0, symbol).toBe(true);
          expect(outcome.low, symbol).toBeLessThanOrEqual(outcome.high);
          expect(expanded(outcome)).toBeGreaterThanOrEqual(0);
          if (outcome.budget.length > 0) {
            expect(
              outcome.budget.reduce((sum, part) => sum + part.share, 0),
              symbol,
            ).toBeCloseTo(1, 9);
            const shares = outcome.budget.map((part) => part.share);
            expect(shares).toEqual([...shares].sort((a, b) => b - a));
            expect(outcome.budget.every((part) => part.u > 0)).toBe(true);
          }
          // max(x, z) of a distant uncertain x is exact though it was sampled: then no input has a share.
          expect(outcome.budget.length === 0, symbol).toBe(outcome.u === 0);
          if (outcome.method === 'first order' || outcome.method === 'second order') {
            // 2u, or all inputs at their ends where that is less: a rectangular input's end is √3 of its u off.
            const ends =
              Math.sqrt(3) * (Math.abs(outcome.gradient.x ?? 0) * ux + Math.abs(outcome.gradient.z ?? 0) * uz);
            const reach = outcome.high - outcome.value;
            expect(reach).toBeLessThanOrEqual(2 * outcome.u * (1 + 1e-9));
            expect(reach).toBeGreaterThanOrEqual(Math.min(2 * outcome.u, ends) * (1 - 1e-9));
          }
        }
      }),
      { numRuns: times(300, 40) },
    );
  });

  it('never states a single rectangular doubt wider than it is: ± 0.03 stays ± 0.03', () => {
    const reach = (shape: 'rectangular' | 'triangular' | 'normal', ends: number, texts2 = ['y = 2 * x']) => {
      const out = run(texts2, { x: { value: 5, u: 0.03 / ends, shape } }).y as Known;
      return (out.high - out.value) / 2;
    };
    expect(reach('rectangular', Math.sqrt(3))).toBeCloseTo(0.03, 12);
    // A difference of two readings of ± 0.015: ± 0.03 at most, 95 % of it inside ± 0.0245 (2u); no bound bites.
    expect(reach('triangular', Math.sqrt(6))).toBeCloseTo((2 * 0.03) / Math.sqrt(6), 12);
    expect(reach('normal', 2)).toBeCloseTo(0.03, 12);
    const two = run(['y = x + z'], { x: rectangular(1, 1 / Math.sqrt(3)), z: rectangular(2, 0.01 / Math.sqrt(3)) })
      .y as Known;
    expect(two.high - two.value).toBeCloseTo(1.01, 12);
    const alike = run(['y = x + z'], { x: rectangular(1, 1 / Math.sqrt(3)), z: rectangular(2, 1 / Math.sqrt(3)) })
      .y as Known;
    expect(alike.high - alike.value).toBeCloseTo(2 * Math.sqrt(2 / 3), 12);
    const whole = run(['n = round(x)'], { x: rectangular(7.2, 0.29 / Math.sqrt(3)) }).n;
    expect(whole).toMatchObject({ ok: true, value: 7 });
  });

  it('grows with its inputs’ uncertainty and vanishes with it', () => {
    const u = (k: number) =>
      (run(['p = x * z + x'], { x: rectangular(3, 0.1 * k), z: rectangular(2, 0.05 * k) }).p as Known).u;
    expect(u(0)).toBe(0);
    expect(u(1)).toBeGreaterThan(0);
    expect(u(2)).toBeGreaterThan(u(1));
    expect(u(4)).toBeGreaterThan(u(2));
  });

  it('does not depend on the order in which formulas or inputs are written', () => {
    const given = { x: rectangular(3, 0.8), z: rectangular(2, 0.3), v: rectangular(0, 0.5) };
    const some = ['a = x * z', 'b = a ^ 2 / v2', 'v2 = 1 + v ^ 2', 'c = b - a'];
    const one = propagate(buildSystem(some, ['x', 'z', 'v']), given);
    const two = propagate(buildSystem([...some].reverse(), ['x', 'z', 'v']), given);
    for (const symbol of ['a', 'b', 'c', 'v2']) {
      const [left, right] = [one[symbol] as Known, two[symbol] as Known];
      expect(right.value).toBeCloseTo(left.value, 12);
      expect(right.u).toBeCloseTo(left.u, 9);
      expect(right.method).toBe(left.method);
    }
  });

  it('is the same whether written in one formula or in several', () => {
    const given = { x: rectangular(3, 0.4), z: rectangular(2, 0.3) };
    const whole = run(['y = (x * z + x) / (x + z)'], given).y as Known;
    const parts = run(['a = x * z', 'b = a + x', 'c = x + z', 'y = b / c'], given).y as Known;
    expect(parts.value).toBeCloseTo(whole.value, 12);
    expect(parts.u).toBeCloseTo(whole.u, 10);
    expect(parts.gradient.x).toBeCloseTo(whole.gradient.x!, 10);
  });

  it('is refused, not infinite, where the uncertainty takes it beyond all bounds', () => {
    const out = run(['y = 10 ^ (1 / x)'], { x: rectangular(0.5, 0.2855) }).y;
    expect(out).toMatchObject({ ok: false, failure: { kind: 'domain', symbols: ['x'] } });
    expect(run(['y = 1e200 * x ^ 2'], { x: rectangular(1, 1) }).y?.ok).toBe(false);
  });

  it('has no part in another result’s failure', () => {
    const out = run(['bad = sqrt(x)', 'worse = bad + z', 'good = x + z'], {
      x: rectangular(-1, 0.1),
      z: rectangular(1, 0),
    });
    expect([out.bad?.ok, out.worse?.ok, out.good?.ok]).toEqual([false, false, true]);
  });
});

describe('a kink', () => {
  it('works out what each input adds when that is looked at, and once', () => {
    const drawn = vi.spyOn(Draws.prototype, 'dueTo');
    const { m } = run(['m = max(x, z)'], { x: rectangular(1, 0.2), z: rectangular(1, 0.1) });
    expect(m).toMatchObject({ ok: true, method: 'sampled' });
    // Looking at the method must not have looked at the budget.
    drawn.mockClear();
    const again = run(['m = max(x, z)'], { x: rectangular(1, 0.2), z: rectangular(1, 0.1) }).m as Known;
    expect(drawn).not.toHaveBeenCalled();
    expect(again.budget.map(({ symbol }) => symbol)).toEqual(['x', 'z']);
    expect(again.budget).toBe(again.budget);
    expect(drawn).toHaveBeenCalledTimes(2);
    drawn.mockRestore();
  });

  // Half-widths of 0.9 and 0.05: 1 apart they do not meet, whatever four standard uncertainties would say.
  const play = (apart: number) =>
    run(['m = max(x, z) - z'], { x: rectangular(0, 0.9 / Math.sqrt(3)), z: rectangular(apart, 0.05 / Math.sqrt(3)) }).m;

  it('that no limit of the inputs reaches is not sampled', () => {
    expect(play(1)).toMatchObject({ ok: true, value: 0, u: 0, method: 'exact' });
    const far = run(['a = abs(x)', 'y = 3 * a'], { x: rectangular(1, 0.5) });
    expect(far.y).toMatchObject({ ok: true, method: 'first order' });
  });

  it('that they just reach is', () => {
    expect(play(0.9)).toMatchObject({ ok: true, method: 'sampled' });
  });

  it('is reached by a normal spread without end', () => {
    const spread = { value: 1, u: 0.4, shape: 'normal' as const };
    expect(run(['a = abs(x)'], { x: spread }).a).toMatchObject({ ok: true, method: 'sampled' });
    expect(run(['a = abs(x)'], { x: { ...spread, shape: 'rectangular' } }).a).toMatchObject({ method: 'first order' });
  });
});

describe('a whole number between', () => {
  it('holds its whole value for what follows, and passes no uncertainty on', () => {
    const out = run(['n = round(x)', 'y = n * z'], { x: rectangular(3.1, 0.1), z: rectangular(2, 0.3) });
    expect(out.y).toMatchObject({ value: 6, gradient: { z: 3 } });
    expect((out.y as Known).u).toBeCloseTo(0.9, 12);
    expect((out.y as Known).budget.map((part) => part.symbol)).toEqual(['z']);
  });

  it.each([
    ['round', 2.4, 0.04, 2],
    ['floor', 2.9, 0.04, 2],
    ['ceil', 2.1, 0.04, 3],
    ['floor', 3, 0, 3],
    ['ceil', 3, 0, 3],
    ['floor', 0.2 / 0.04, 0, 5],
    ['ceil', 0.6 / 0.2, 0, 3],
  ])('%s of %s with u = %s is %s', (f, value, u, whole) => {
    expect(run([`n = ${f}(x)`], { x: rectangular(value, u) }).n).toMatchObject({ ok: true, value: whole, u: 0 });
  });

  it.each([
    ['round', 2.4, 0.06, 2, 3],
    ['floor', 2.9, 0.06, 2, 3],
    ['ceil', 2.1, 0.06, 2, 3],
    ['round', -2.4, 0.06, -3, -2],
  ])('%s of %s with u = %s is open from %s to %s', (f, value, u, from, to) => {
    expect(run([`n = ${f}(x)`], { x: rectangular(value, u) }).n).toMatchObject({
      ok: false,
      failure: { kind: 'undetermined', from, to },
    });
  });
});

describe('functions over many cases', () => {
  it.each(Object.entries(smoothFunctions))('%s gives the value of its derivatives, to the last bit', (_name, f) => {
    for (let i = -40; i <= 40; i += 1) {
      const x = i / 7;
      if (f.domain?.holds(x) === false) continue;
      expect(Object.is(f.value(x), f.derivatives(x)[0])).toBe(true);
    }
  });
});

describe('what is not asked for', () => {
  it('is not worked out: a result is when it is first looked at, with those that lead to it', () => {
    const drawn = vi.spyOn(Draws.prototype, 'result');
    // Both bend too much for a series: what they come to is drawn.
    const out = run(['a = x ^ 2', 'b = a + 1', 'c = z ^ 2'], { x: rectangular(0, 1), z: rectangular(0, 1) });
    expect(drawn).not.toHaveBeenCalled();
    expect(out.b?.ok && out.b.method).toBe('sampled');
    const steps = drawn.mock.calls.map(([step]) => step.formula.symbol);
    expect(steps).toEqual(['a', 'b']);
    expect(out.b).toBe(out.b);
    expect(drawn.mock.calls).toHaveLength(2);
    expect(Object.keys(out).sort()).toEqual(['a', 'b', 'c']);
    drawn.mockRestore();
  });
});
