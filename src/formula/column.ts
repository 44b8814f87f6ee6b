import { constants } from './constants';
import { DomainError, rounded, withoutDust } from './evaluate';
import { choosingFunctions, smoothFunctions, steppingFunctions } from './functions';
import type { System } from './system';
import { symbolsIn, type Node } from './tree';
import say from './words/en';

/** A value for each of many cases; a bare number where it is the same in all. For sampling and root finding, which need no slopes. */
export type Column = number | Float64Array;

function each(a: Column, f: (x: number) => number): Column {
  if (typeof a === 'number') return f(a);
  const out = new Float64Array(a.length);
  for (let k = 0; k < out.length; k += 1) out[k] = f(a[k] ?? NaN);
  return out;
}

function both(a: Column, b: Column, f: (x: number, y: number) => number): Column {
  if (typeof a === 'number') return each(b, (y) => f(a, y));
  if (typeof b === 'number') return each(a, (x) => f(x, b));
  const out = new Float64Array(a.length);
  for (let k = 0; k < out.length; k += 1) out[k] = f(a[k] ?? NaN, b[k] ?? NaN);
  return out;
}

// The two commonest operations, written out: several times faster than through `both`.
function product(a: Column, b: Column): Column {
  if (typeof a === 'number') return typeof b === 'number' ? a * b : product(b, a);
  const out = new Float64Array(a.length);
  if (typeof b === 'number') for (let k = 0; k < out.length; k += 1) out[k] = (a[k] ?? NaN) * b;
  else for (let k = 0; k < out.length; k += 1) out[k] = (a[k] ?? NaN) * (b[k] ?? NaN);
  return out;
}

function quotient(a: Column, b: Column, node: Node): Column {
  if (typeof b === 'number') {
    if (b === 0) throw new DomainError(say.byZero, symbolsIn(node));
    return each(a, (x) => x / b);
  }
  const out = new Float64Array(b.length);
  for (let k = 0; k < out.length; k += 1) {
    const y = b[k] ?? NaN;
    if (y === 0) throw new DomainError(say.byZero, symbolsIn(node));
    out[k] = (typeof a === 'number' ? a : (a[k] ?? NaN)) / y;
  }
  return out;
}

function call(node: Node & { type: 'call' }, args: readonly Column[]): Column {
  const [a = NaN, b = NaN] = args;
  const choose = choosingFunctions[node.name];
  if (choose) return both(a, b, (x, y) => (choose(x, y) ? x : y));
  const step = steppingFunctions[node.name];
  if (step) return each(a, (x) => rounded(step, x));
  const smooth = smoothFunctions[node.name];
  if (!smooth) throw new DomainError(say.unknown(node.name), symbolsIn(node));
  const { domain } = smooth;
  if (!domain) return each(a, smooth.value);
  return each(a, (x) => {
    if (!domain.holds(x)) throw new DomainError(domain.needs, symbolsIn(node));
    return smooth.value(x);
  });
}

function power(a: Column, b: Column, node: Node): Column {
  if (b === 2) return product(a, a);
  return both(a, b, (base, exponent) => {
    if (base < 0 && !Number.isInteger(exponent)) {
      throw new DomainError(say.rootOfNegative, symbolsIn(node));
    }
    if (base === 0 && exponent < 0) throw new DomainError(say.byZero, symbolsIn(node));
    return base ** exponent;
  });
}

function visit(node: Node, symbol: (name: string) => Column): Column {
  switch (node.type) {
    case 'number':
      return node.value;
    case 'constant':
      return constants[node.name]?.value ?? NaN;
    case 'symbol':
      return symbol(node.name);
    case 'negate':
      return product(visit(node.of, symbol), -1);
    case 'call':
      return call(
        node,
        node.args.map((arg) => visit(arg, symbol)),
      );
    case 'operation': {
      const left = visit(node.left, symbol);
      const right = visit(node.right, symbol);
      if (node.op === '*') return product(left, right);
      if (node.op === '+') return both(left, right, withoutDust);
      if (node.op === '-') return both(left, right, (x, y) => withoutDust(x, -y));
      if (node.op === '^') return power(left, right, node);
      return quotient(left, right, node.right);
    }
  }
}

function columnOf(tree: Node, symbol: (name: string) => Column): Column {
  const result = visit(tree, symbol);
  const finite = typeof result === 'number' ? Number.isFinite(result) : result.every(Number.isFinite);
  if (!finite) throw new DomainError(say.tooLarge, symbolsIn(tree));
  return result;
}

/**
 * A symbol of a system worked out for every case, with whatever results lead to it.
 *
 * @param columns results worked out so far; it grows
 * @param input looks up an input's column (SI)
 * @throws DomainError where any case has no value
 */
export function workOut(
  system: System,
  name: string,
  columns: Map<string, Column>,
  input: (name: string) => Column,
): Column {
  const found = columns.get(name);
  if (found !== undefined) return found;
  const step = system.steps.find((other) => other.formula.symbol === name);
  const made = step ? columnOf(step.formula.tree, (used) => workOut(system, used, columns, input)) : input(name);
  columns.set(name, made);
  return made;
}

/**
 * One result as a function of one input, the others held at exact values: what a root finder asks.
 *
 * @param values SI values of the other inputs
 * @returns the result in SI; NaN where it has no value
 */
export function resultOf(
  system: System,
  values: Readonly<Record<string, number | undefined>>,
  unknown: string,
  target: string,
): (x: number) => number {
  // What does not hang on the unknown is worked out once.
  const still = new Map<string, Column>();
  for (const { formula, inputs } of system.steps) {
    if (inputs.has(unknown)) continue;
    try {
      workOut(system, formula.symbol, still, (name) => values[name] ?? NaN);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
    }
  }
  return (x) => {
    try {
      const found = workOut(system, target, new Map(still), (name) => (name === unknown ? x : (values[name] ?? NaN)));
      return typeof found === 'number' ? found : NaN;
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      return NaN;
    }
  };
}
