import { constants } from './constants';
import { choosingFunctions, smoothFunctions, steppingFunctions } from './functions';
import {
  addJets,
  composeJet,
  constantJet,
  divideJets,
  isConstant,
  multiplyJets,
  powerDerivatives,
  scaleJet,
  type Jet,
} from './jet';
import { symbolsIn, type Node } from './tree';

/** A point outside an operation's domain: what failed and the symbols it was made of. */
export class DomainError extends Error {
  constructor(
    readonly problem: string,
    readonly symbols: readonly string[],
  ) {
    super(problem);
  }
}

export const TOO_LARGE = 'the result is too large to work with';

function power(base: Jet, exponent: Jet, node: Node): Jet {
  if (isConstant(exponent)) {
    const p = exponent.c0;
    if (base.c0 < 0 && !Number.isInteger(p)) {
      throw new DomainError('a negative number cannot be raised to a fraction', symbolsIn(node));
    }
    if (base.c0 === 0 && p < 0) throw new DomainError('this divides by zero', symbolsIn(node));
    return composeJet(powerDerivatives(base.c0, p), base);
  }
  if (base.c0 <= 0) throw new DomainError('the base of a power must be above zero', symbolsIn(node));
  const logBase = composeJet([Math.log(base.c0), 1 / base.c0, -1 / base.c0 ** 2, 2 / base.c0 ** 3], base);
  const product = multiplyJets(exponent, logBase);
  const e = Math.exp(product.c0);
  return composeJet([e, e, e, e], product);
}

function call(node: Node & { type: 'call' }, args: readonly Jet[]): Jet {
  const [a = constantJet(NaN), b = constantJet(NaN)] = args;
  const choose = choosingFunctions[node.name];
  if (choose) return choose(a.c0, b.c0) ? a : b;
  const step = steppingFunctions[node.name];
  if (step) return constantJet(rounded(step, a.c0));
  const smooth = smoothFunctions[node.name];
  if (!smooth) throw new DomainError(`${node.name} is not known`, symbolsIn(node));
  if (!smooth.domain(a.c0)) throw new DomainError(`${node.name} needs ${smooth.needs}`, symbolsIn(node));
  const derivatives = smooth.derivatives(a.c0);
  if (!Number.isFinite(derivatives[0])) throw new DomainError(TOO_LARGE, symbolsIn(node));
  if (!isConstant(a) && !Number.isFinite(derivatives[1])) {
    throw new DomainError(`${node.name} has no finite slope here`, symbolsIn(node));
  }
  return composeJet(derivatives, a);
}

/** A difference below this share of its terms is their rounding and nothing else: 0.25 − 6.25 × 0.04 is 0. */
const CANCELLED = 16 * Number.EPSILON;

/** a + b, with what only rounding has left of a cancelled value taken as zero. */
export function withoutDust(a: number, b: number): number {
  const added = a + b;
  return Math.abs(added) <= CANCELLED * Math.max(Math.abs(a), Math.abs(b)) ? 0 : added;
}

function sum(a: Jet, b: Jet): Jet {
  return { ...addJets(a, b), c0: withoutDust(a.c0, b.c0) };
}

/** A number this close to a whole one, against its own size, is that whole number: 0.2 mm of 0.04 mm steps are 5, not 4.999…. */
const ROUNDING_NOISE = 1e-9;

/** `step` (round, floor or ceil) of x, freed of rounding noise; never a negative zero. */
export function rounded(step: (x: number) => number, x: number): number {
  const whole = Math.round(x);
  const clean = Math.abs(x - whole) <= ROUNDING_NOISE * Math.max(1, Math.abs(x)) ? whole : x;
  return step(clean) + 0;
}

function visit(node: Node, symbol: (name: string) => Jet): Jet {
  switch (node.type) {
    case 'number':
      return constantJet(node.value);
    case 'constant':
      return constantJet(constants[node.name]?.value ?? NaN);
    case 'symbol':
      return symbol(node.name);
    case 'negate':
      return scaleJet(visit(node.of, symbol), -1);
    case 'call':
      return call(
        node,
        node.args.map((arg) => visit(arg, symbol)),
      );
    case 'operation': {
      const left = visit(node.left, symbol);
      const right = visit(node.right, symbol);
      if (node.op === '+') return sum(left, right);
      if (node.op === '-') return sum(left, scaleJet(right, -1));
      if (node.op === '*') return multiplyJets(left, right);
      if (node.op === '^') return power(left, right, node);
      if (right.c0 === 0) throw new DomainError('this divides by zero', symbolsIn(node.right));
      return divideJets(left, right);
    }
  }
}

/**
 * Value and Taylor coefficients of a tree.
 *
 * @param symbol looks up a symbol's jet (SI)
 * @throws DomainError where an operation is not defined, or the result is not a finite number
 */
export function evaluateTree(node: Node, symbol: (name: string) => Jet): Jet {
  const result = visit(node, symbol);
  if (!Number.isFinite(result.c0)) throw new DomainError(TOO_LARGE, symbolsIn(node));
  return result;
}
