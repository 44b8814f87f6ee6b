import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { smoothFunctions } from '../../src/formula/functions';
import { constantTaylor, powerDerivatives, variable } from '../../src/formula/taylor';
import { evaluateTree } from '../../src/formula/evaluate';
import { parseFormula } from '../../src/formula/parse';

/** By mathjs, left as it comes: to simplify it takes seconds and adds rounding. */
const derivative = (node: math.MathNode, by: string): math.MathNode => math.derivative(node, by, { simplify: false });

/** First three derivatives by mathjs's symbolic differentiation. */
function symbolic(text: string): (x: number) => number[] {
  const chain = [math.parse(text)];
  for (let order = 0; order < 3; order += 1) chain.push(derivative(chain.at(-1)!, 'x'));
  const compiled = chain.map((node) => node.compile());
  return (x) => compiled.map((code) => code.evaluate({ x }) as number);
}

function close(found: number, expected: number, relative: number, where: string): void {
  expect(Math.abs(found - expected), `${where}: ${found} against ${expected}`).toBeLessThanOrEqual(
    relative * Math.max(Math.abs(expected), 1e-9),
  );
}

describe('derivatives of each function against mathjs, differentiated symbolically', () => {
  const points: Readonly<Record<string, readonly number[]>> = {
    sqrt: [0.01, 0.7, 2, 40],
    exp: [-3, -0.2, 0, 1.5],
    ln: [0.05, 0.9, 3, 200],
    sin: [-2, 0, 0.4, 1.5, 6],
    cos: [-2, 0.1, 0.4, 1.5, 6],
    tan: [-1.2, -0.3, 0.2, 1.1, 4],
    asin: [-0.9, -0.2, 0.1, 0.6, 0.97],
    acos: [-0.9, -0.2, 0.1, 0.6, 0.97],
    atan: [-5, -0.5, 0.1, 0.8, 30],
    abs: [-3, -0.1, 0.2, 7],
  };

  it('has points for every smooth function', () => {
    expect(Object.keys(points).sort()).toEqual(Object.keys(smoothFunctions).sort());
  });

  it.each(Object.keys(points))('%s', (name) => {
    const theirs = symbolic(name === 'ln' ? 'log(x)' : `${name}(x)`);
    for (const x of points[name]!) {
      const expected = theirs(x);
      smoothFunctions[name]!.derivatives(x).forEach((found, order) => {
        close(found, expected[order]!, 1e-9, `${name} at ${x}, order ${order}`);
      });
    }
  });

  it.each([2, 3, 0.5, -1, -2.5, 1 / 3, 1, 0, 4])('x^%s', (p) => {
    const theirs = symbolic(`x^(${p})`);
    for (const x of [0.2, 1.3, 8]) {
      const expected = theirs(x);
      powerDerivatives(x, p).forEach((found, order) => close(found, expected[order]!, 1e-9, `x^${p} at ${x}`));
    }
  });

  it('x² at 0 has the derivatives 0, 2, 0', () => {
    expect(powerDerivatives(0, 2)).toEqual([0, 0, 2, 0]);
  });
});

describe('derivatives of whole expressions, against mathjs', () => {
  // x stands in every place a symbol can: base, exponent, both, under functions, in quotients of polynomials.
  it.each([
    'x ^ 3 - 2 * x / (1 + x ^ 2)',
    'x ^ x',
    '2 ^ x',
    '(1 + x ^ 2) ^ (1 / 3)',
    'sqrt(1 + sin(x) ^ 2)',
    'exp(-(x ^ 2) / 2)',
    'ln(1 + exp(x)) * atan(3 * x)',
    'asin(x / 4) - acos(x / 5) * tan(x / 3)',
    '(x - 1) * (x - 2) * (x - 3) / (4 - x)',
    '1 / (x * (x + 1) * (x + 2))',
    'abs(x - 7) * cos(2 * x)',
  ])('%s', (text) => {
    const { tree } = parseFormula(`y = ${text}`);
    const theirs = symbolic(text.replaceAll('ln(', 'log('));
    for (const x of [0.3, 1.1, 2.4]) {
      const found = evaluateTree(tree, () => variable(x, 0, true, 1));
      const [f, f1, f2, f3] = theirs(x) as [number, number, number, number];
      close(found.value, f, 1e-9, `${text} at ${x}`);
      close(found.first[0]!, f1, 1e-9, `${text} at ${x}, first`);
      close(found.second[0]!, f2, 1e-8, `${text} at ${x}, second`);
      close(found.third[0]!, f3, 1e-8, `${text} at ${x}, third`);
    }
  });

  it('stays constant where nothing moves', () => {
    const { tree } = parseFormula('y = sqrt(x) + asin(x)');
    expect(evaluateTree(tree, () => constantTaylor(1))).toEqual(constantTaylor(1 + Math.PI / 2));
  });

  // JCGM 100, note to 5.1.2, wants f_ij and f_ijj for every pair; two inputs in every place an operation has.
  it.each([
    'x * z',
    'x / z',
    'x ^ z',
    'x ^ 2 * z ^ 3',
    'sin(x * z) + z / x',
    'sqrt(x + z) * ln(z)',
    'exp(x / z) - x * x * z',
    '(x - z) ^ 2 / (x + z)',
  ])('f_ij and f_ijj of %s', (text) => {
    const { tree } = parseFormula(`y = ${text}`);
    const names = ['x', 'z'];
    const at = { x: 1.3, z: 0.7 };
    const found = evaluateTree(tree, (name) => variable(name === 'x' ? at.x : at.z, names.indexOf(name), true, 1));
    const theirs = (...by: string[]): number =>
      by
        .reduce<math.MathNode>((node, name) => derivative(node, name), math.parse(text.replaceAll('ln(', 'log(')))
        .evaluate(at) as number;
    names.forEach((a, i) => {
      names.forEach((b, j) => {
        close(found.second[2 * i + j]!, theirs(a, b), 1e-9, `${text}, ${a}${b}`);
        close(found.third[2 * i + j]!, theirs(a, b, b), 1e-9, `${text}, ${a}${b}${b}`);
      });
    });
  });
});
