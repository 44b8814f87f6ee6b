import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSystem, buildSystem } from '../../src/formula/system';
import { FormulaError, parseFormula } from '../../src/formula/parse';
import { propagate } from '../../src/formula/propagate';
import { combine, describeDimension, raise, type Dimension } from '../../src/quantity/dimension';
import say from '../../src/formula/words/en';

const exact = (value: number) => ({ value, u: 0, shape: 'rectangular' as const });
const rough = (value: number, u: number) => ({ value, u, shape: 'rectangular' as const });

describe('reading a formula', () => {
  it('keeps the text and the symbols in order of first use', () => {
    const f = parseFormula('phi = rev * (dh_s - n_w * h_t) / P_h + 0 * dh_s');
    expect(f).toMatchObject({ symbol: 'phi', uses: ['dh_s', 'n_w', 'h_t', 'P_h'] });
    expect(f.text).toBe('phi = rev * (dh_s - n_w * h_t) / P_h + 0 * dh_s');
  });

  it.each([
    ['y = sinh(x)', 'the function sinh is not known'],
    ['y = toString(x)', 'the function toString is not known'],
    ['y = sqrt(x)(x)', 'only a function can be called'],
    ['y = sqrt()', 'sqrt takes 1 argument'],
    ['y = sqrt(a, b)', 'sqrt takes 1 argument'],
    ['y = max(a)', 'max takes 2 argument'],
    ['y = min(a, b, c)', 'min takes 2 argument'],
    ['y = -x^2', 'put brackets round the sign before a power'],
    ['y = a * -x^2', 'put brackets round the sign before a power'],
    ['y = a--x^2', 'put brackets round the sign before a power'],
    ['y = a^-b^2', 'put brackets round the sign before a power'],
    ['y = -(a + b)^2', 'put brackets round the sign before a power'],
    ['y = -sqrt(abs(x))^2', 'put brackets round the sign before a power'],
    ['y = - ( a ) ^ 2', 'put brackets round the sign before a power'],
    ['y = max(-x^2, a)', 'put brackets round the sign before a power'],
    ['y = 2 * round(x)', 'may only stand around the whole'],
    ['y = round(floor(x))', 'may only stand around the whole'],
    ['y = -ceil(x)', 'may only stand around the whole'],
    ['y = sqrt(round(x))', 'may only stand around the whole'],
    ['y = y + 1', 'y is defined by itself'],
    ['y', 'write it as symbol = expression'],
    ['y =', 'write it as symbol = expression'],
    ['y = a = b', 'write it as symbol = expression'],
    ['y = a == b', 'write it as symbol = expression'],
    ['2 = a', 'is not a symbol'],
    ['pi = a', 'is not a symbol'],
    ['a + b = c', 'is not a symbol'],
    ['y = 2 x', 'not allowed'],
    ['y = 2x', 'cannot start with a number'],
    ['y = (a', 'Unclosed ('],
    ['y = a +', 'Expected expression'],
    ['y = +a', 'Unexpected'],
    ['y = a!', 'Unexpected'],
    ['y = a % b', 'Unexpected'],
    ['y = a ? b : c', 'not allowed'],
    ['y = a.b', 'not allowed'],
    ['y = a[1]', 'not allowed'],
    ['y = "a"', 'is not a number'],
    ['y = true', 'is not a number'],
    ['y = this', 'not allowed'],
  ])('refuses %s', (text, problem) => {
    expect(() => parseFormula(text)).toThrow(FormulaError);
    expect(() => parseFormula(text)).toThrow(problem);
  });

  it.each([
    'y = a - x^2',
    'y = (a) - (b)^2',
    'y = a * (-x)^2',
    'y = 1e-3^2 * a',
    'y = 1 - (a - b)^2',
    'y = a^(-b)',
    'y = a^-2',
  ])('accepts %s', (text) => {
    expect(parseFormula(text).symbol).toBe('y');
  });

  it('either reads a text or throws a FormulaError, whatever it is', () => {
    const piece = fc.constantFrom(
      'y',
      '=',
      'a',
      'b2',
      '+',
      '-',
      '*',
      '/',
      '^',
      '(',
      ')',
      ',',
      ' ',
      'sqrt',
      'round',
      '1',
      '.5',
      'e',
      'constructor',
      '__proto__',
      '"',
      '[',
      '?',
      ';',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(piece).map((parts) => `y = ${parts.join('')}`),
    );
    fc.assert(
      fc.property(text, (t) => {
        try {
          const { tree, symbol, uses } = parseFormula(t);
          expect(symbol).toMatch(/^[A-Za-z]\w*$/);
          expect(uses).not.toContain(symbol);
          expect(tree).toBeDefined();
        } catch (error) {
          expect(error).toBeInstanceOf(FormulaError);
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe('order of arithmetic', () => {
  const at = { a: exact(2), b: exact(3), c: exact(5) };
  it.each([
    ['a - b - c', -6],
    ['a / b / c', 2 / 15],
    ['a / b * c', 10 / 3],
    ['a + b * c', 17],
    ['(a + b) * c', 25],
    ['a ^ b ^ 2', 512],
    ['(a ^ b) ^ 2', 64],
    ['2 * a ^ b', 16],
    ['-a * b', -6],
    ['a - -b', 5],
    ['(-a) ^ 2', 4],
    ['a ^ -b', 0.125],
    ['a ^ (1 / b)', Math.cbrt(2)],
    ['max(a, b) - min(b, c)', 0],
    ['ln(exp(c))', 5],
    ['round(c / a)', 3],
    ['round(0 - c / a)', -3],
    ['floor(0 - c / a)', -3],
    ['ceil(0 - c / a)', -2],
  ])('%s = %s', (right, expected) => {
    const outcome = propagate(buildSystem([`y = ${right}`], ['a', 'b', 'c']), at).y;
    expect(outcome?.ok && outcome.value).toBeCloseTo(expected, 12);
  });
});

describe('putting formulas in order', () => {
  it('orders them by what they need, not by where they stand', () => {
    const system = buildSystem(['c = b + x', 'b = a + x', 'a = 2 * x'], ['x']);
    expect(system.steps.map((step) => step.formula.symbol)).toEqual(['a', 'b', 'c']);
    expect(propagate(system, { x: exact(1) }).c).toMatchObject({ ok: true, value: 4 });
  });

  it.each([
    [['a = x', 'a = 2 * x'], 'a is defined twice'],
    [['x = 2'], 'x is defined twice'],
    [['a = b', 'b = a'], 'which nothing defines in time'],
    [['a = b', 'b = c', 'c = a + x'], 'which nothing defines in time'],
    [['a = zz * x'], 'uses zz, which nothing defines in time'],
  ])('refuses %j', (texts, problem) => {
    expect(() => buildSystem(texts, ['x'])).toThrow(FormulaError);
    expect(() => buildSystem(texts, ['x'])).toThrow(problem);
  });
});

describe('dimensions', () => {
  const known: Record<string, Dimension> = {
    L: [1, 0, 0, 0, 0],
    t: [0, 0, 1, 0, 0],
    F: [1, 1, -2, 0, 0],
    q: [0, 0, 0, 0, 0],
    A: [2, 0, 0, 0, 0],
    v: [1, 0, -1, 0, 0],
    n: [0, 0, 0, 0, 0],
    gdot: [0, 0, -1, 0, 0],
  };
  const check = (text: string, extra: Record<string, Dimension> = {}) => {
    const all = { ...known, ...extra };
    const names = Object.keys(all);
    const defined = text.split('=')[0]!.trim();
    const system = buildSystem(
      [text],
      names.filter((name) => name !== defined),
    );
    checkSystem(system, (symbol) => all[symbol]!);
  };

  it.each([
    ['A = L * t', 'gives m·s, declared m^2'],
    ['A = L', 'gives m, declared m^2'],
    ['A = L * (L + t)', 'a sum or difference of m and s'],
    ['A = L * (L - 1)', 'a sum or difference of m and 1'],
    ['L = max(t, L2)', 'max of s and m'],
    ['q = sin(L)', 'sin of m'],
    ['q = exp(t)', 'exp of s'],
    ['q = ln(F)', 'ln of m·kg·s^-2'],
    ['L = L2 ^ n', 'a power with a variable exponent needs plain numbers'],
    ['q = n ^ t', 'a power with a variable exponent needs plain numbers'],
    ['v = sqrt(L / t)', 'gives m^0.5·s^-0.5, declared m·s^-1'],
    ['L = round(t)', 'round of s'],
    ['q = g_n', 'gives m·s^-2, declared 1'],
  ])('refuses %s and says both dimensions', (text, problem) => {
    const extra: Record<string, Dimension> = text.includes('L2') ? { L2: [1, 0, 0, 0, 0] } : {};
    expect(() => check(text, extra)).toThrow(FormulaError);
    expect(() => check(text, extra)).toThrow(problem);
  });

  it.each([
    'A = L ^ 2',
    'L = A ^ (1 / 2)',
    'L = sqrt(A)',
    'L = v * t',
    'q = sin(L / (v * t))',
    'L = max(L3, 0)',
    'L = abs(0 - v * t)',
    'v = g_n * t',
    'q = (gdot * one_s) ^ n',
    'q = round(rev * n)',
    't = 1 / gdot',
  ])('accepts %s', (text) => {
    expect(() => check(text, text.includes('L3') ? { L3: [1, 0, 0, 0, 0] } : {})).not.toThrow();
  });

  it('adds and multiplies exponents', () => {
    expect(describeDimension(combine(known.F!, known.A!, -1))).toBe('m^-1·kg·s^-2');
    expect(describeDimension(raise(known.A!, 0.5))).toBe('m');
    expect(describeDimension(combine(known.L!, known.L!, -1))).toBe('1');
  });
});

describe('where a formula has no value', () => {
  const run = (texts: string[], inputs: Record<string, ReturnType<typeof exact>>) =>
    propagate(buildSystem(texts, Object.keys(inputs)), inputs);

  it.each([
    ['y = a / (b - c)', { a: 1, b: 2, c: 2 }, say.byZero, ['b', 'c']],
    ['y = a * sqrt(b)', { a: 1, b: -2 }, say.needs.sqrt, ['b']],
    ['y = ln(b) + a', { a: 1, b: 0 }, say.needs.ln, ['b']],
    ['y = a * asin(b / c)', { a: 1, b: 3, c: 2 }, say.needs.asin, ['b', 'c']],
    ['y = a + acos(b)', { a: 1, b: -1.5 }, say.needs.acos, ['b']],
    ['y = tan(b) * a', { a: 1, b: Math.PI / 2 }, say.needs.tan, ['b']],
    ['y = b ^ 0.5 + a', { a: 1, b: -2 }, say.rootOfNegative, ['b']],
    ['y = b ^ (-2) + a', { a: 1, b: 0 }, say.byZero, ['b']],
    ['y = b ^ c + a', { a: 1, b: -2, c: 0.5 }, say.rootOfNegative, ['b', 'c']],
    ['y = exp(b) + a', { a: 1, b: 1e4 }, say.tooLarge, ['b']],
  ] as const)('%s at %j: %s', (text, values, problem, symbols) => {
    const inputs = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, exact(value)]));
    const outcome = run([text], inputs).y!;
    expect(outcome).toMatchObject({ ok: false, failure: { kind: 'domain' } });
    if (outcome.ok || outcome.failure.kind !== 'domain') return;
    expect(outcome.failure.problem).toBe(problem);
    expect([...outcome.failure.symbols].sort()).toEqual([...symbols].sort());
  });

  it('names the inputs behind a result that failed, and passes the same failure on', () => {
    const out = run(['d = b - c', 'y = a / d', 'w = y + a'], { a: exact(1), b: exact(2), c: exact(2) });
    expect(out.y).toMatchObject({ ok: false, failure: { kind: 'domain', symbols: ['b', 'c'] } });
    expect(out.w).toBe(out.y);
    expect(out.d).toMatchObject({ ok: true, value: 0 });
  });

  it('says which inputs are missing, and works out what can be', () => {
    const system = buildSystem(['y = a * b', 'w = 2 * a'], ['a', 'b']);
    const out = propagate(system, { a: exact(3), b: undefined });
    expect(out.y).toEqual({ ok: false, failure: { kind: 'missing', symbols: ['b'] } });
    expect(out.w).toMatchObject({ ok: true, value: 6 });
  });

  it('fails where only a part of the stated uncertainty is out of the domain, and says so', () => {
    const out = run(['y = sqrt(x)'], { x: rough(0.001, 0.1) }).y;
    expect(out).toMatchObject({ ok: false, failure: { kind: 'domain', symbols: ['x'] } });
    expect(!out!.ok && out!.failure.kind === 'domain' && out!.failure.problem).toBe(say.inside(say.needs.sqrt));
  });

  it('fails where a slope is infinite and the input uncertain: sqrt at 0, asin at 1', () => {
    expect(run(['y = sqrt(x)'], { x: rough(0, 0.1) }).y).toMatchObject({ ok: false, failure: { kind: 'domain' } });
    expect(run(['y = x ^ n'], { x: exact(0), n: rough(2, 0.1) }).y).toMatchObject({
      ok: false,
      failure: { kind: 'domain', problem: 'the base of a power must be above zero', symbols: ['x', 'n'] },
    });
    expect(run(['y = asin(x)'], { x: rough(1, 0.1) }).y).toMatchObject({ ok: false, failure: { kind: 'domain' } });
  });

  it('has a value there when the input is exact', () => {
    expect(run(['y = sqrt(x)'], { x: exact(0) }).y).toMatchObject({ ok: true, value: 0, u: 0 });
    // The other inputs keep their share, and a later result its slope.
    const out = run(['s = sqrt(x)', 'y = a + s', 'w = 2 * x'], { x: exact(0), a: rough(3, 0.1) });
    expect(out.y).toMatchObject({ ok: true, value: 3, u: 0.1, gradient: { a: 1 } });
    expect(out.w).toMatchObject({ ok: true, gradient: { x: 2 } });
    expect(run(['y = asin(x)'], { x: exact(1) }).y).toMatchObject({ ok: true, value: Math.PI / 2, u: 0 });
    expect(run(['y = x ^ n'], { x: exact(0), n: exact(2) }).y).toMatchObject({ ok: true, value: 0, u: 0 });
  });
});
