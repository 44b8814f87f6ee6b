import { constants } from './constants';
import { choosingFunctions, smoothFunctions, steppingFunctions, type Derivatives } from './functions';
import {
  addTaylors,
  blinded,
  composeTaylor,
  constantTaylor,
  isConstant,
  moves,
  multiplyTaylors,
  powerDerivatives,
  scaleTaylor,
  type Taylor,
} from './taylor';
import { symbolsIn, type Node } from './tree';
import say from './words/en';

/** A point outside an operation's domain: what failed and the symbols it was made of. */
export class DomainError extends Error {
  constructor(
    readonly problem: string,
    readonly symbols: readonly string[],
  ) {
    super(problem);
  }
}

/** f(u), or a refusal where f has no finite slope along an uncertain input; along an exact one the slope is left out. */
function compose(derivatives: Derivatives, u: Taylor, steep: string, node: Node): Taylor {
  if (!Number.isFinite(derivatives[0])) throw new DomainError(say.tooLarge, symbolsIn(node));
  if (isConstant(u) || Number.isFinite(derivatives[1])) return composeTaylor(derivatives, u);
  if (moves(u)) throw new DomainError(steep, symbolsIn(node));
  return blinded(u, derivatives[0]);
}

function power(base: Taylor, exponent: Taylor, node: Node): Taylor {
  // At or below zero there is no slope along the exponent: it has to stand still.
  if (isConstant(exponent) || (base.value <= 0 && !moves(exponent))) {
    const p = exponent.value;
    if (base.value < 0 && !Number.isInteger(p)) {
      throw new DomainError(say.rootOfNegative, symbolsIn(node));
    }
    if (base.value === 0 && p < 0) throw new DomainError(say.byZero, symbolsIn(node));
    const raised = compose(powerDerivatives(base.value, p), base, say.steepPower, node);
    return addTaylors(raised, blinded(exponent, 0), raised.value);
  }
  if (base.value <= 0) throw new DomainError(say.baseNotPositive, symbolsIn(node));
  const x = base.value;
  const product = multiplyTaylors(exponent, composeTaylor([Math.log(x), 1 / x, -1 / x ** 2, 2 / x ** 3], base));
  const e = Math.exp(product.value);
  return composeTaylor([e, e, e, e], product);
}

function call(node: Node & { type: 'call' }, args: readonly Taylor[]): Taylor {
  const [a = constantTaylor(NaN), b = constantTaylor(NaN)] = args;
  const choose = choosingFunctions[node.name];
  if (choose) return choose(a.value, b.value) ? a : b;
  const step = steppingFunctions[node.name];
  if (step) return constantTaylor(rounded(step, a.value));
  const smooth = smoothFunctions[node.name];
  if (!smooth) throw new DomainError(say.unknown(node.name), symbolsIn(node));
  const { domain } = smooth;
  if (domain && !domain.holds(a.value)) throw new DomainError(domain.needs, symbolsIn(node));
  return compose(smooth.derivatives(a.value), a, say.steep(node.name), node);
}

function quotient(a: Taylor, b: Taylor): Taylor {
  const y = b.value;
  const inverse = composeTaylor([1 / y, -1 / y ** 2, 2 / y ** 3, -6 / y ** 4], b);
  // The value itself by one division, so that 0.25 / 0.04 is 6.25 to the last bit.
  return { ...multiplyTaylors(a, inverse), value: a.value / y };
}

/** A difference below this share of its terms is their rounding and nothing else: 0.25 − 6.25 × 0.04 is 0. */
const CANCELLED = 16 * Number.EPSILON;

/** a + b, with what only rounding has left of a cancelled value taken as zero. */
export function withoutDust(a: number, b: number): number {
  const added = a + b;
  return Math.abs(added) <= CANCELLED * Math.max(Math.abs(a), Math.abs(b)) ? 0 : added;
}

const sum = (a: Taylor, b: Taylor): Taylor => addTaylors(a, b, withoutDust(a.value, b.value));

/** A number this close to a whole one, against its own size, is that whole number: 0.2 mm of 0.04 mm steps are 5, not 4.999…. */
const ROUNDING_NOISE = 1e-9;

/** `step` (round, floor or ceil) of x, freed of rounding noise; never a negative zero. */
export function rounded(step: (x: number) => number, x: number): number {
  const whole = Math.round(x);
  const clean = Math.abs(x - whole) <= ROUNDING_NOISE * Math.max(1, Math.abs(x)) ? whole : x;
  return step(clean) + 0;
}

function visit(node: Node, symbol: (name: string) => Taylor): Taylor {
  switch (node.type) {
    case 'number':
      return constantTaylor(node.value);
    case 'constant':
      return constantTaylor(constants[node.name]?.value ?? NaN);
    case 'symbol':
      return symbol(node.name);
    case 'negate':
      return scaleTaylor(visit(node.of, symbol), -1);
    case 'call':
      return call(
        node,
        node.args.map((arg) => visit(arg, symbol)),
      );
    case 'operation': {
      const left = visit(node.left, symbol);
      const right = visit(node.right, symbol);
      if (node.op === '+') return sum(left, right);
      if (node.op === '-') return sum(left, scaleTaylor(right, -1));
      if (node.op === '*') return multiplyTaylors(left, right);
      if (node.op === '^') return power(left, right, node);
      if (right.value === 0) throw new DomainError(say.byZero, symbolsIn(node.right));
      return quotient(left, right);
    }
  }
}

/**
 * Value and derivatives of a tree.
 *
 * @param symbol looks up a symbol (SI)
 * @throws DomainError where an operation is not defined, or the result is not a finite number
 */
export function evaluateTree(node: Node, symbol: (name: string) => Taylor): Taylor {
  const result = visit(node, symbol);
  if (!Number.isFinite(result.value)) throw new DomainError(say.tooLarge, symbolsIn(node));
  return result;
}
