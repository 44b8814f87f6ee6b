import * as math from 'mathjs';
import type { Dimension } from '../../src/quantity/dimension';

/** What mathjs makes of a formula: a number or one with units. */
export type Found = number | math.Unit;

const functions = new Set(['sqrt', 'exp', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'abs', 'min', 'max', 'round', 'floor', 'ceil']); // prettier-ignore

/** Our named constants as mathjs knows them, with their units: written here from ISO 80000, not read from our table. */
const constants: Readonly<Record<string, string>> = {
  pi: 'pi',
  rev: '(2 * pi)',
  right_angle: '(pi / 2)',
  g_n: '(9.80665 m/s^2)',
  one_s: '(1 s)',
  one_ohm: '(1 ohm)',
  // mathjs's own, from CODATA.
  sigma_SB: 'stefanBoltzmann',
  zero_C: '(273.15 K)',
  magnus_e: '(6.112 hPa)',
  magnus_T: '(243.12 K)',
  magnus_i: '(272.62 K)',
  pt_A: '(3.9083e-3 / K)',
  pt_B: '(-5.775e-7 / K^2)',
  pt_C: '(-4.183e-12 / K^4)',
  pt_T: '(100 K)',
  R_v: '(461.5 J / (kg K))',
  // mathjs’s own; a mole counts as a number.
  R_gas: '(gasConstant * 1 mol)',
};

/**
 * Our text in mathjs's spelling: ln is log there, constants are written out, and every symbol gets `s_` before it so that
 * none is taken for a unit or a constant. mathjs parses the rest by its own rules.
 *
 * @param known constants to write in another way, as without units
 */
export function inMathjs(expression: string, known: Readonly<Record<string, string>> = constants): string {
  return expression.replace(/(?<![\w.])[A-Za-z]\w*/g, (name) => {
    if (name === 'ln') return 'log';
    return functions.has(name) ? name : (known[name] ?? constants[name] ?? `s_${name}`);
  });
}

const templates = new Map<string, math.Unit>();

/** An SI value with its unit in mathjs; a plain number where it has none. */
export function withUnit(value: number, dimension: Dimension): Found {
  const bases = ['m', 'kg', 's', 'K', 'A'].flatMap((base, i) => {
    const exponent = dimension[i] ?? 0;
    return exponent === 0 ? [] : [`${base}^${exponent}`];
  });
  if (bases.length === 0) return value;
  const text = bases.join(' ');
  const one = templates.get(text) ?? math.unit(1, text);
  templates.set(text, one);
  return math.multiply(value, one) as math.Unit;
}

/** The SI value of what mathjs found, or undefined where its dimension is another, or it is not a real number. */
export function siValue(found: unknown, dimension: Dimension): number | undefined {
  if (typeof found === 'number') return dimension.every((exponent) => exponent === 0) ? found : undefined;
  const one = withUnit(1, dimension);
  if (!math.isUnit(found) || typeof one === 'number' || !found.equalBase(one)) return undefined;
  return found.toNumber(one.formatUnits());
}

const compiledTexts = new Map<string, math.EvalFunction>();

/** What mathjs makes of a text, once for each text: the same formulas stand under many options. */
export function compileOnce(expression: string): math.EvalFunction {
  const compiled = compiledTexts.get(expression) ?? math.compile(expression);
  compiledTexts.set(expression, compiled);
  return compiled;
}

/** A formula's right-hand side, parsed by mathjs; the function takes a value for each symbol. */
export function compile(text: string): (scope: Readonly<Record<string, Found>>) => unknown {
  const compiled = compileOnce(inMathjs(text.split('=')[1] ?? ''));
  return (scope) =>
    compiled.evaluate(
      Object.fromEntries(Object.entries(scope).map(([name, value]) => [`s_${name}`, value])),
    ) as unknown;
}
