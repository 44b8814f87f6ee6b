import fc from 'fast-check';
import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { filledMathml, formulaMathml, symbolMathml, symbolParts } from '../../src/formula/mathml';
import { parseFormula } from '../../src/formula/parse';
import { calculators, generator } from '../support/calculators';
import { parseMathml, readMathml } from '../support/from-mathml';
import { inMathjs } from '../support/mathjs';
import { times } from '../support/sweep';

/** What constants print as; angles are written in degrees. Units of the one second and of gravity are left aside here. */
const printedConstants: Readonly<Record<string, string>> = {
  π: 'pi',
  '360°': '(2*pi)',
  '90°': '(pi/2)',
  g_n: '9.80665',
  σ_SB: '5.67037441918443e-8',
  R_v: '461.5',
  A_Pt: '3.9083e-3',
  B_Pt: '(-5.775e-7)',
  C_Pt: '(-4.183e-12)',
  R: '8.31446261815324',
};

const plain = {
  g_n: '9.80665',
  one_s: '1',
  one_ohm: '1',
  sigma_SB: '5.67037441918443e-8',
  zero_C: '273.15',
  magnus_e: '611.2',
  magnus_T: '243.12',
  magnus_i: '272.62',
  pt_A: '3.9083e-3',
  pt_B: '(-5.775e-7)',
  pt_C: '(-4.183e-12)',
  pt_T: '100',
  R_v: '461.5',
  R_gas: '8.31446261815324',
};

/** The right-hand side as printed, read back as text for mathjs. */
function readBack(mathml: string, uses: readonly string[]): string {
  const names = new Map(uses.map((name) => [printedAs(name), `s_${name}`]));
  expect(names.size, 'symbols print differently from each other').toBe(uses.length);
  const known = (printed: string): string => names.get(printed) ?? printedConstants[printed] ?? number(printed);
  const whole = parseMathml(mathml);
  const text = readMathml({ ...whole, children: [{ tag: 'mrow', children: rightHandSide(mathml) }] }, known);
  return text;
}

function number(printed: string): string {
  if (!/^[\d.]+(e[+-]?\d+)?$/.test(printed)) throw new Error(`${printed} is neither a number nor a symbol`);
  return printed;
}

function printedAs(name: string): string {
  const { base, sub } = symbolParts(name);
  return sub === '' ? base : `${base}_${sub}`;
}

/** Elements after the equals sign, which stands in the outermost row. */
function rightHandSide(mathml: string) {
  const row = parseMathml(mathml).children[0];
  if (typeof row !== 'object') throw new Error('no row');
  const equals = row.children.findIndex(
    (child) => typeof child === 'object' && child.tag === 'mo' && child.children[0] === '=',
  );
  expect(equals).toBeGreaterThan(0);
  return row.children.slice(equals + 1);
}

/** Both texts worked out by mathjs at the same values, several times over. */
function expectSame(text: string, readBackText: string, uses: readonly string[]): void {
  const random = generator(5);
  const right = math.compile(inMathjs(text.split('=')[1]!, plain));
  const back = math.compile(readBackText);
  for (let i = 0; i < 5; i += 1) {
    const scope = Object.fromEntries(uses.map((name) => [`s_${name}`, 0.1 + 0.8 * random()]));
    const expected: unknown = right.evaluate(scope);
    const found: unknown = back.evaluate(scope);
    const where = `${text} printed as ${readBackText}`;
    if (typeof expected === 'number' && Number.isFinite(expected)) {
      expect(typeof found, where).toBe('number');
      expect(Math.abs((found as number) - expected), where).toBeLessThanOrEqual(
        1e-12 * Math.max(Math.abs(expected), 1),
      );
    } else expect(String(found), where).toBe(String(expected));
  }
}

const check = (text: string): void => {
  const formula = parseFormula(text);
  expectSame(text, readBack(formulaMathml(formula), formula.uses), formula.uses);
};

describe('the formula on the screen is the formula that ran', () => {
  it.each(calculators)('%s: every formula reads back from its print', (_id, calc) => {
    for (const { text } of calc.formulas) check(text);
  });

  it.each([
    'y = a - (b - c)',
    'y = a - (b + c)',
    'y = (a - b) - c',
    'y = (a + b) * c',
    'y = a * (b + c)',
    'y = a * (b * c)',
    'y = a / (b / c)',
    'y = a / b / c',
    'y = (a / b) ^ 2',
    'y = (a * b) ^ c',
    'y = (a ^ b) ^ c',
    'y = a ^ b ^ c',
    'y = a ^ (b + c)',
    'y = (-a) ^ 2',
    'y = a ^ -b',
    'y = -(a + b)',
    'y = -a * b',
    'y = a * -b',
    'y = a - -b',
    'y = a + -b',
    'y = -(-a)',
    'y = -a / b',
    'y = sqrt(a) ^ 3',
    'y = abs(a - b) ^ 2',
    'y = abs(a) * abs(b)',
    'y = exp(a) ^ b',
    'y = exp(a + b) * c',
    'y = sin(a) ^ 2 + cos(a) ^ 2',
    'y = sin(a) ^ b',
    'y = tan(a / 2) * ln(b)',
    'y = asin(a) - acos(b) + atan(c)',
    'y = max(a, b - c) - min(a + b, c)',
    'y = round(a / b)',
    'y = floor(10 * a)',
    'y = ceil(10 * a - b)',
    'y = pi * a ^ 2 / 4 + rev * b - right_angle',
    'y = (a * one_s) ^ b',
    'y = a * g_n',
    'y = 2 * 3 * a + 1.5e3 * b',
  ])('%s reads back', check);

  it('reads back whatever formula there is', () => {
    const leaf = fc.constantFrom('a', 'b', 'c', '2', '0.5', 'pi');
    const { tree } = fc.letrec<{ tree: string }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4, withCrossShrink: true },
        leaf,
        fc
          .tuple(tie('tree'), fc.constantFrom('+', '-', '*', '/'), tie('tree'))
          .map(([l, op, r]) => `(${l} ${op} ${r})`),
        fc
          .tuple(tie('tree'), fc.constantFrom('2', '3', '(1 / 2)', '(-1)', 'b'))
          .map(([base, p]) => `((${base}) ^ ${p})`),
        tie('tree').map((inner) => `(-(${inner}))`),
        fc
          .tuple(fc.constantFrom('sqrt', 'exp', 'sin', 'abs', 'atan'), tie('tree'))
          .map(([f, inner]) => `${f}(${inner})`),
      ),
    }));
    fc.assert(
      fc.property(tree, (text) => check(`y = ${text}`)),
      { numRuns: times(500, 60) },
    );
  });
});

describe('symbols in print', () => {
  it.each([
    ['dh_s', 'Δh', 's'],
    ['theta_0', 'θ', '0'],
    ['P_h', 'P', 'h'],
    ['d', 'd', ''],
    ['dp', 'Δp', ''],
    ['dtheta', 'Δθ', ''],
    ['delta', 'δ', ''],
    ['n_w', 'n', 'w'],
    ['tau_f_max', 'τ', 'f,max'],
    ['c_rho', 'c', 'ρ'],
  ])('%s is %s with subscript %j', (name, base, sub) => {
    expect(symbolParts(name)).toEqual({ base, sub });
  });

  it('puts no brackets around a constant, a symbol or a number under a power, and does around what has an operator in it', () => {
    const printed = (text: string) => formulaMathml(parseFormula(text));
    for (const bare of ['y = pi^2', 'y = x^2', 'y = 3^2']) expect(printed(bare), bare).not.toContain('<mo>(</mo>');
    for (const joined of ['y = (pi + 1)^2', 'y = (2 * x)^2']) expect(printed(joined), joined).toContain('<mo>(</mo>');
  });

  it('sets numbers upright as numbers and words as words', () => {
    expect(symbolMathml('theta_0')).toBe('<msub><mi>θ</mi><mn>0</mn></msub>');
    expect(symbolMathml('P_h')).toBe('<msub><mi>P</mi><mi mathvariant="normal">h</mi></msub>');
    expect(symbolMathml('L')).toBe('<mi>L</mi>');
  });

  it.each(calculators)('%s: no two symbols print alike', (_id, calc) => {
    const names = new Set([
      ...Object.keys(calc.inputs),
      ...Object.keys(calc.model?.outputs ?? {}),
      ...calc.formulas.map((f) => parseFormula(f.text).symbol),
    ]);
    expect(new Set([...names].map(printedAs)).size).toBe(names.size);
  });
});

describe('the same formula with numbers put in', () => {
  const fill = (text: string, values: Record<string, string | undefined>): string =>
    filledMathml(parseFormula(text), (name) => values[name], 'result');

  it('brackets a negative number after a sign, and a number with a unit under a power', () => {
    expect(fill('y = a - b', { a: '1', b: '−2' })).toContain(
      '<mo>−</mo><mrow><mo>(</mo><mrow><mo>−</mo><mn>2</mn></mrow><mo>)</mo></mrow>',
    );
    expect(fill('y = a ^ 2', { a: '3\u00a0mm' })).toContain(
      '<mo>(</mo><mrow><mn>3</mn><mtext>&#xA0;mm</mtext></mrow><mo>)</mo>',
    );
    expect(fill('y = a ^ 2', { a: '−3' })).toContain(
      '<msup><mrow><mo>(</mo><mrow><mo>−</mo><mn>3</mn></mrow><mo>)</mo></mrow><mn>2</mn></msup>',
    );
    expect(fill('y = a ^ 2', { a: '3' })).toContain('<msup><mn>3</mn><mn>2</mn></msup>');
  });

  it('keeps the symbol of a value that is not known, and says the result', () => {
    const filled = fill('y = a * b', { a: '2\u00a0mm', b: undefined });
    expect(filled).toContain('<mi>b</mi>');
    expect(filled).toMatch(/<mo>=<\/mo><mtext>result<\/mtext><\/mrow><\/math>$/);
  });

  it('keeps any text in its place: nothing typed or printed becomes a tag', () => {
    const filled = fill('y = a + b', { a: '<b>1', b: '2\u00a0<script>&' });
    expect(filled).not.toMatch(/<(?!\/?(math|mrow|mn|mi|mo|mtext)\b)/);
    expect(() => parseMathml(filled)).not.toThrow();
  });

  it('has the value of the formula at those numbers, negative ones included', () => {
    const values = { a: -2, b: 3.5, c: -0.25 };
    const print = (name: string): string => String(values[name as keyof typeof values]).replace('-', '−');
    for (const right of [
      'a - b - c',
      'a * b / c',
      'a - (b - c)',
      '(a + b) * c',
      'c ^ 2 - a ^ 3',
      '2 ^ c',
      '-a - c',
      'b * c * a',
      'a - b * c',
      'abs(a) + c',
    ]) {
      const formula = parseFormula(`y = ${right}`);
      const mathml = filledMathml(formula, print, 'x');
      const left = mathml.slice(0, mathml.lastIndexOf('<mo>=</mo>'));
      const text = readMathml(parseMathml(`${left}</mrow></math>`), number);
      const scope = Object.fromEntries(Object.entries(values).map(([name, value]) => [`s_${name}`, value]));
      expect(math.evaluate(text), `${right}: ${text}`).toBeCloseTo(math.evaluate(inMathjs(right), scope) as number, 12);
    }
  });
});

it('brackets degrees under a power', () => {
  const filled = filledMathml(parseFormula('y = a ^ 2'), () => '45°', 'x');
  expect(filled).toContain('<msup><mrow><mo>(</mo><mn>45°</mn><mo>)</mo></mrow><mn>2</mn></msup>');
});
