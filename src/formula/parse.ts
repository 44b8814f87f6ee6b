import jsep from 'jsep';
import { constants } from './constants';
import { choosingFunctions, smoothFunctions, steppingFunctions } from './functions';
import { symbolsIn, type Formula, type Node, type Operator } from './tree';

jsep.removeAllUnaryOps();
jsep.addUnaryOp('-');
jsep.removeAllBinaryOps();
jsep.addBinaryOp('+', 9);
jsep.addBinaryOp('-', 9);
jsep.addBinaryOp('*', 10);
jsep.addBinaryOp('/', 10);
jsep.addBinaryOp('^', 11, true);

const OPERATORS: readonly string[] = ['+', '-', '*', '/', '^'] satisfies Operator[];

/** A formula's text is wrong: a mistake in a calculator, not in what a person entered. */
export class FormulaError extends Error {}

function isOperator(text: string): text is Operator {
  return OPERATORS.includes(text);
}

function fail(text: string, problem: string): never {
  throw new FormulaError(`In “${text}”: ${problem}`);
}

/** True where a sign stands before the base of a power, as in -x^2 or -f(x)^2. */
function signBeforePower(text: string): boolean {
  const plain = text.replace(/\s+/g, '').replace(/(\d\.?e)[+-](?=\d)/gi, '$1');
  return [...plain.matchAll(/\^/g)].some(({ index }) => {
    let start = index;
    let depth = 0;
    do {
      const before = plain[start - 1];
      if (before === ')') depth += 1;
      else if (before === '(') depth -= 1;
      else if (depth === 0) break;
      start -= 1;
    } while (depth > 0 && start > 0);
    while (start > 0 && /[\w.]/.test(plain[start - 1] ?? '')) start -= 1;
    return plain[start - 1] === '-' && !/[\w.)]/.test(plain[start - 2] ?? '');
  });
}

function convert(expression: jsep.Expression, text: string): Node {
  const e = expression as jsep.CoreExpression;
  switch (e.type) {
    case 'Literal':
      if (typeof e.value !== 'number') fail(text, `${e.raw} is not a number`);
      return { type: 'number', value: e.value, text: e.raw };
    case 'Identifier':
      if (Object.hasOwn(constants, e.name)) return { type: 'constant', name: e.name };
      return { type: 'symbol', name: e.name };
    case 'UnaryExpression':
      return { type: 'negate', of: convert(e.argument, text) };
    case 'BinaryExpression': {
      if (!isOperator(e.operator)) fail(text, `the operator ${e.operator} is not known`);
      return { type: 'operation', op: e.operator, left: convert(e.left, text), right: convert(e.right, text) };
    }
    case 'CallExpression': {
      const callee = e.callee as jsep.CoreExpression;
      if (callee.type !== 'Identifier') fail(text, 'only a function can be called');
      const args = e.arguments.map((arg) => convert(arg, text));
      const wanted = Object.hasOwn(choosingFunctions, callee.name) ? 2 : 1;
      const one = [smoothFunctions, steppingFunctions].some((known) => Object.hasOwn(known, callee.name));
      if (wanted === 1 && !one) fail(text, `the function ${callee.name} is not known`);
      if (args.length !== wanted) fail(text, `${callee.name} takes ${wanted} argument(s)`);
      return { type: 'call', name: callee.name, args };
    }
    default:
      return fail(text, `${expression.type} is not allowed in a formula`);
  }
}

function stepsInside(node: Node, outermost: boolean): boolean {
  if (node.type === 'call') {
    if (!outermost && node.name in steppingFunctions) return true;
    return node.args.some((arg) => stepsInside(arg, false));
  }
  if (node.type === 'negate') return stepsInside(node.of, false);
  if (node.type === 'operation') return stepsInside(node.left, false) || stepsInside(node.right, false);
  return false;
}

/**
 * Reads a formula's text, `h_t = P_h / z`, into a tree.
 * Operators + - * / ^, the functions of functions.ts, the constants of constants.ts; every other name is a symbol.
 * round, floor and ceil may only stand around the whole right-hand side.
 *
 * @throws FormulaError when the text is not such a formula
 */
export function parseFormula(text: string): Formula {
  const [left = '', right = '', ...rest] = text.split('=').map((side) => side.trim());
  if (rest.length > 0 || right === '') fail(text, 'write it as symbol = expression');
  if (!/^[A-Za-z]\w*$/.test(left) || Object.hasOwn(constants, left)) fail(text, `“${left}” is not a symbol`);
  // jsep binds a sign tighter than a power, mathematics the other way round: refuse rather than differ.
  if (signBeforePower(right)) fail(text, 'put brackets round the sign before a power');
  let expression: jsep.Expression;
  try {
    expression = jsep(right);
  } catch (error) {
    return fail(text, error instanceof Error ? error.message : 'cannot be read');
  }
  const tree = convert(expression, text);
  if (stepsInside(tree, true)) fail(text, 'round, floor and ceil may only stand around the whole right-hand side');
  const uses = symbolsIn(tree);
  if (uses.includes(left)) fail(text, `${left} is defined by itself`);
  return { text, symbol: left, tree, uses };
}
