import { combine, describeDimension, dimensionless, raise, sameDimension, type Dimension } from '../quantity/dimension';
import { constants } from './constants';
import { choosingFunctions } from './functions';
import { FormulaError } from './parse';
import type { Formula, Node } from './tree';

type Lookup = (symbol: string) => Dimension;

/** A zero literal may stand for zero of any kind. */
function isZero(node: Node): boolean {
  return node.type === 'number' && node.value === 0;
}

/** The value of an exponent made of numbers only, or undefined. */
function constantValue(node: Node): number | undefined {
  if (node.type === 'number') return node.value;
  if (node.type === 'negate') {
    const value = constantValue(node.of);
    return value === undefined ? undefined : -value;
  }
  if (node.type === 'operation' && node.op === '/') {
    const top = constantValue(node.left);
    const bottom = constantValue(node.right);
    return top === undefined || bottom === undefined ? undefined : top / bottom;
  }
  return undefined;
}

function agree(a: Node, b: Node, lookup: Lookup, chosenBy?: string): Dimension {
  const left = dimensionOf(a, lookup);
  const right = dimensionOf(b, lookup);
  if (isZero(a)) return right;
  if (isZero(b) || sameDimension(left, right)) return left;
  throw new FormulaError(
    `${chosenBy ?? 'a sum or difference'} of ${describeDimension(left)} and ${describeDimension(right)}`,
  );
}

/**
 * Dimension of an expression.
 * @throws FormulaError when a sum mixes dimensions or a function is given something that is not a number
 */
function dimensionOf(node: Node, lookup: Lookup): Dimension {
  switch (node.type) {
    case 'number':
      return dimensionless;
    case 'constant':
      return constants[node.name]?.dimension ?? dimensionless;
    case 'symbol':
      return lookup(node.name);
    case 'negate':
      return dimensionOf(node.of, lookup);
    case 'operation': {
      if (node.op === '+' || node.op === '-') return agree(node.left, node.right, lookup);
      const left = dimensionOf(node.left, lookup);
      if (node.op === '^') {
        const exponent = constantValue(node.right);
        if (exponent !== undefined) return raise(left, exponent);
        const right = dimensionOf(node.right, lookup);
        if (!sameDimension(left, dimensionless) || !sameDimension(right, dimensionless)) {
          throw new FormulaError('a power with a variable exponent needs plain numbers');
        }
        return dimensionless;
      }
      return combine(left, dimensionOf(node.right, lookup), node.op === '*' ? 1 : -1);
    }
    case 'call': {
      const [first, second] = node.args;
      if (!first) throw new FormulaError(`${node.name} without an argument`);
      if (node.name in choosingFunctions && second) return agree(first, second, lookup, node.name);
      const of = dimensionOf(first, lookup);
      if (node.name === 'sqrt') return raise(of, 0.5);
      if (node.name === 'abs') return of;
      if (!sameDimension(of, dimensionless)) throw new FormulaError(`${node.name} of ${describeDimension(of)}`);
      return dimensionless;
    }
  }
}

/**
 * Checks that a formula's right-hand side has the dimension declared for its symbol.
 * @throws FormulaError that names both dimensions
 */
export function checkDimension(formula: Formula, declared: Dimension, lookup: Lookup): void {
  const found = dimensionOf(formula.tree, lookup);
  if (!sameDimension(found, declared)) {
    const should = describeDimension(declared);
    throw new FormulaError(`“${formula.text}” gives ${describeDimension(found)}, declared ${should}`);
  }
}
