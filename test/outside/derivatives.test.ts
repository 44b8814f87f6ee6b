import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { systemFor } from '../../src/engine/calculator';
import { smoothFunctions } from '../../src/formula/functions';
import { constantTaylor, powerDerivatives, variable } from '../../src/formula/taylor';
import { evaluateTree } from '../../src/formula/evaluate';
import { parseFormula } from '../../src/formula/parse';
import { propagate } from '../../src/formula/propagate';
import type { System } from '../../src/formula/system';
import { cases, generator, nearbyInputs, randomInputs } from '../support/calculators';
import { inMathjs } from '../support/mathjs';

/** First three derivatives by mathjs's symbolic differentiation. */
function symbolic(text: string): (x: number) => number[] {
  const chain = [math.parse(text)];
  for (let order = 0; order < 3; order += 1) chain.push(math.derivative(chain.at(-1)!, 'x'));
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
        .reduce<math.MathNode>((node, name) => math.derivative(node, name), math.parse(text.replaceAll('ln(', 'log(')))
        .evaluate(at) as number;
    names.forEach((a, i) => {
      names.forEach((b, j) => {
        close(found.second[2 * i + j]!, theirs(a, b), 1e-9, `${text}, ${a}${b}`);
        close(found.third[2 * i + j]!, theirs(a, b, b), 1e-9, `${text}, ${a}${b}${b}`);
      });
    });
  });
});

/*
 * Gradients of every result with respect to every input, through the whole chain, against central differences of the same
 * chain worked out by mathjs on plain numbers. Steps of 1e-3 of the input, half and a quarter of that, extrapolated
 * (Richardson: Press et al., Numerical Recipes, section 5.7, from memory), which leaves an error of order h^6, and
 * the rounding of f over h. Rounding moves f by about 1e-16 of the sum of |slope × input| over all inputs (large numbers may
 * cancel in f itself), so slopes may differ by 1e-6 of themselves or by 1e-9 of that sum over the input. A whole number between is held, as the engine holds it. Left out, and counted,
 * is a slope whose steps straddle a kink or leave the domain.
 */
const RELATIVE = 1e-6;
const STEP = 1e-3;
/** Allowed of what all inputs together do to the result. */
const ROUNDING = 1e-9;
const NEAR = 4;
const WIDE = 3;

type Results = Readonly<Record<string, number | undefined>>;

/** All results of a system by mathjs on plain SI numbers, some of them held. Undefined where there is none. */
function plainChain(system: System, held: Results): (inputs: Results) => Results {
  const steps = system.steps.map(({ formula }) => {
    const text = inMathjs(formula.text.split('=')[1]!, {
      g_n: '9.80665',
      one_s: '1',
      one_ohm: '1',
      sigma_SB: '5.67037441918443e-8',
      zero_C: '273.15',
      magnus_e: '611.2',
      magnus_T: '243.12',
      R_v: '461.5',
      R_gas: '8.31446261815324',
    });
    return { symbol: formula.symbol, code: math.compile(text) };
  });
  return (inputs) => {
    // A model may leave one of its outputs out.
    const scope = new Map(system.inputs.map((name) => [`s_${name}`, inputs[name] ?? NaN]));
    const results: Record<string, number | undefined> = {};
    for (const { symbol, code } of steps) {
      const found: unknown = held[symbol] ?? code.evaluate(scope);
      results[symbol] = typeof found === 'number' && Number.isFinite(found) ? found : undefined;
      scope.set(`s_${symbol}`, results[symbol] ?? NaN);
    }
    return results;
  };
}

interface Slope {
  readonly slope: number;
  /** Slopes to the left and to the right agree to one percent. */
  readonly smooth: boolean;
}

/** The slope of each result along one input, undefined where a step leaves the domain. */
function slopes(chain: (inputs: Results) => Results, at: Readonly<Record<string, number>>, name: string) {
  const x = at[name]!;
  const h = Math.abs(x) * STEP || STEP * 1e-3;
  const middle = chain(at);
  const pairs = [h, h / 2, h / 4].map(
    (step) => [step, chain({ ...at, [name]: x + step }), chain({ ...at, [name]: x - step })] as const,
  );
  return (symbol: string): Slope | undefined => {
    const here = middle[symbol];
    const d = pairs.map(([step, up, down]) => (up[symbol]! - down[symbol]!) / (2 * step));
    if (here === undefined || d.some((one) => Number.isNaN(one))) return undefined;
    const first = [(4 * d[1]! - d[0]!) / 3, (4 * d[2]! - d[1]!) / 3] as const;
    const slope = (16 * first[1] - first[0]) / 15;
    const [right, left] = [pairs[0]![1][symbol]! - here, here - pairs[0]![2][symbol]!];
    const smooth = Math.abs(right - left) <= 0.01 * Math.max(Math.abs(right), Math.abs(left));
    return { slope, smooth };
  };
}

describe('the gradient of every result against finite differences', () => {
  it.each(cases)('%s (%s)', (_id, _options, calc, choices) => {
    const random = generator(7);
    const system = systemFor(calc, choices);
    let compared = 0;
    let leftOut = 0;
    for (let sample = 0; sample < NEAR + WIDE; sample += 1) {
      const inputs = (sample < NEAR ? nearbyInputs : randomInputs)(calc, choices, random);
      const outcomes = propagate(system, inputs);
      const whole = system.steps.flatMap(({ rounded, formula: { symbol } }) => {
        const outcome = outcomes[symbol];
        return rounded && outcome?.ok ? [[symbol, outcome.value] as const] : [];
      });
      const chain = plainChain(system, Object.fromEntries(whole));
      const at = Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, input.value]));
      for (const name of Object.keys(inputs)) {
        const along = slopes(chain, at, name);
        for (const { formula, rounded, kinks } of system.steps) {
          const outcome = outcomes[formula.symbol];
          if (!outcome?.ok || rounded) continue;
          const ours = outcome.gradient[name] ?? 0;
          const found = along(formula.symbol);
          if (!found || (kinks.length > 0 && !found.smooth)) {
            leftOut += 1;
            continue;
          }
          const all = Object.entries(outcome.gradient).map(([other, g]) => Math.abs(g * at[other]!));
          const sum = Math.abs(outcome.value) + all.reduce((total, one) => total + one, 0);
          const allowed = RELATIVE * Math.abs(ours) + (ROUNDING * sum) / Math.abs(at[name]! || 1);
          const where = `d ${formula.symbol} / d ${name} at ${at[name]} of ${formula.text}: ${ours} against ${found.slope}`;
          expect(Math.abs(ours - found.slope), where).toBeLessThanOrEqual(allowed);
          compared += 1;
        }
      }
    }
    expect(compared).toBeGreaterThan(0);
    expect(leftOut / (compared + leftOut), `${leftOut} left out, ${compared} compared`).toBeLessThan(0.1);
  });
});
