import { constants } from './constants';
import { DomainError, rounded, withoutDust, TOO_LARGE } from './evaluate';
import { choosingFunctions, smoothFunctions, steppingFunctions } from './functions';
import type { System } from './system';
import { symbolsIn, type Node } from './tree';

/** A tree as plain arithmetic on a row of numbers, one per symbol: for sampling and for root finding, which need no slopes. */
export type Plain = (row: Float64Array) => number;

function power(base: number, exponent: number, node: Node): number {
  if (base < 0 && !Number.isInteger(exponent)) {
    throw new DomainError('a negative number cannot be raised to a fraction', symbolsIn(node));
  }
  if (base === 0 && exponent < 0) throw new DomainError('this divides by zero', symbolsIn(node));
  return base ** exponent;
}

function compileCall(node: Node & { type: 'call' }, args: readonly Plain[]): Plain {
  const [first, second] = args;
  if (!first) throw new DomainError(`${node.name} without an argument`, symbolsIn(node));
  const choose = choosingFunctions[node.name];
  if (choose && second) {
    return (row) => {
      const a = first(row);
      const b = second(row);
      return choose(a, b) ? a : b;
    };
  }
  const step = steppingFunctions[node.name];
  if (step) return (row) => rounded(step, first(row));
  const smooth = smoothFunctions[node.name];
  if (!smooth) throw new DomainError(`${node.name} is not known`, symbolsIn(node));
  return (row) => {
    const a = first(row);
    if (!smooth.domain(a)) throw new DomainError(`${node.name} needs ${smooth.needs}`, symbolsIn(node));
    return smooth.derivatives(a)[0];
  };
}

function compileNode(node: Node, slot: (name: string) => number): Plain {
  switch (node.type) {
    case 'number':
      return () => node.value;
    case 'constant': {
      const value = constants[node.name]?.value ?? NaN;
      return () => value;
    }
    case 'symbol': {
      const i = slot(node.name);
      return (row) => row[i] ?? NaN;
    }
    case 'negate': {
      const of = compileNode(node.of, slot);
      return (row) => -of(row);
    }
    case 'call':
      return compileCall(
        node,
        node.args.map((arg) => compileNode(arg, slot)),
      );
    case 'operation': {
      const left = compileNode(node.left, slot);
      const right = compileNode(node.right, slot);
      if (node.op === '+') return (row) => withoutDust(left(row), right(row));
      if (node.op === '-') return (row) => withoutDust(left(row), -right(row));
      if (node.op === '*') return (row) => left(row) * right(row);
      if (node.op === '^') return (row) => power(left(row), right(row), node);
      return (row) => {
        const bottom = right(row);
        if (bottom === 0) throw new DomainError('this divides by zero', symbolsIn(node.right));
        return left(row) / bottom;
      };
    }
  }
}

/** A system as plain arithmetic: where each symbol stands in a row, and what works out each result. */
export interface PlainSystem {
  readonly slot: ReadonlyMap<string, number>;
  readonly run: ReadonlyMap<string, Plain>;
}

const compiled = new WeakMap<System, PlainSystem>();

/** The plain form of a system, made once. A result's function throws DomainError where it has no value. */
export function plainSystem(system: System): PlainSystem {
  const found = compiled.get(system);
  if (found) return found;
  const names = [...system.inputs, ...system.steps.map((step) => step.formula.symbol)];
  const slot = new Map(names.map((name, i) => [name, i]));
  const run = new Map(
    system.steps.map(({ formula }) => {
      const inner = compileNode(formula.tree, (name) => slot.get(name) ?? -1);
      const whole: Plain = (row) => {
        const value = inner(row);
        if (!Number.isFinite(value)) throw new DomainError(TOO_LARGE, formula.uses);
        return value;
      };
      return [formula.symbol, whole];
    }),
  );
  const made = { slot, run };
  compiled.set(system, made);
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
  const { slot, run } = plainSystem(system);
  const row = new Float64Array(slot.size).fill(NaN);
  for (const name of system.inputs) row[slot.get(name) ?? -1] = values[name] ?? NaN;
  const end = system.steps.findIndex((step) => step.formula.symbol === target);
  const wanted = new Set([target]);
  const chain = system.steps
    .slice(0, end + 1)
    .reverse()
    .filter((step) => {
      if (!wanted.has(step.formula.symbol)) return false;
      for (const name of step.formula.uses) wanted.add(name);
      return true;
    });
  const steps = chain
    .reverse()
    .map(({ formula }) => ({ at: slot.get(formula.symbol) ?? -1, plain: run.get(formula.symbol) }));
  const from = slot.get(unknown) ?? -1;
  const last = slot.get(target) ?? -1;
  return (x) => {
    row[from] = x;
    try {
      for (const { at, plain } of steps) row[at] = plain?.(row) ?? NaN;
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      return NaN;
    }
    return row[last] ?? NaN;
  };
}
