import { checkDimension } from './dimension';
import { steppingFunctions } from './functions';
import { FormulaError, parseFormula } from './parse';
import { walk, type Formula, type Node } from './tree';
import type { Dimension } from '../quantity/dimension';

/** A place where a formula bends: the propagation looks whether the uncertainty reaches across it. */
export interface Kink {
  /** Zero on the kink. */
  readonly tree: Node;
}

export interface Step {
  readonly formula: Formula;
  /** Its own, and those of the results it is made of: what follows a bend is bent. */
  readonly kinks: readonly Kink[];
  /** For a formula that rounds: what is rounded. */
  readonly rounded: Node | undefined;
  /** Inputs that this result depends on, through whatever results lie between. */
  readonly inputs: ReadonlySet<string>;
}

/** Formulas in an order in which each uses only inputs and earlier results. */
export interface System {
  readonly inputs: readonly string[];
  readonly steps: readonly Step[];
}

function kinksOf(tree: Node): Kink[] {
  const kinks: Kink[] = [];
  for (const node of walk(tree)) {
    if (node.type !== 'call') continue;
    const [a, b] = node.args;
    if (node.name === 'abs' && a) kinks.push({ tree: a });
    if ((node.name === 'min' || node.name === 'max') && a && b) {
      kinks.push({ tree: { type: 'operation', op: '-', left: a, right: b } });
    }
  }
  return kinks;
}

function roundedPart(tree: Node): Node | undefined {
  return tree.type === 'call' && tree.name in steppingFunctions ? tree.args[0] : undefined;
}

/**
 * Puts formulas in order.
 *
 * @param texts formulas as text
 * @param inputs names of the inputs
 * @throws FormulaError for a symbol nobody defines, one defined twice, or a circle
 */
export function buildSystem(texts: readonly string[], inputs: readonly string[]): System {
  const formulas = texts.map(parseFormula);
  const reach = new Map<string, ReadonlySet<string>>(inputs.map((name) => [name, new Set([name])]));
  for (const formula of formulas) {
    const twice = formulas.filter((other) => other.symbol === formula.symbol).length > 1;
    if (twice || inputs.includes(formula.symbol)) throw new FormulaError(`${formula.symbol} is defined twice`);
  }
  const steps: Step[] = [];
  const bends = new Map<string, readonly Kink[]>();
  let waiting = formulas;
  while (waiting.length > 0) {
    const ready = waiting.filter((formula) => formula.uses.every((name) => reach.has(name)));
    if (ready.length === 0) {
      const [stuck] = waiting;
      const missing = stuck?.uses.filter((name) => !reach.has(name)).join(', ') ?? '';
      throw new FormulaError(`“${stuck?.text ?? ''}” uses ${missing}, which nothing defines in time`);
    }
    for (const formula of ready) {
      const reached = new Set<string>();
      for (const name of formula.uses) for (const input of reach.get(name) ?? []) reached.add(input);
      reach.set(formula.symbol, reached);
      const kinks = [...new Set([...kinksOf(formula.tree), ...formula.uses.flatMap((name) => bends.get(name) ?? [])])];
      const rounded = roundedPart(formula.tree);
      // A whole number is either settled or not there: past it nothing is left of a bend.
      bends.set(formula.symbol, rounded ? [] : kinks);
      steps.push({ formula, kinks, rounded, inputs: reached });
    }
    waiting = waiting.filter((formula) => !ready.includes(formula));
  }
  return { inputs, steps };
}

/**
 * Checks every formula of a system against the declared dimensions.
 * @throws FormulaError at the first that disagrees
 */
export function checkSystem(system: System, dimension: (symbol: string) => Dimension): void {
  for (const { formula } of system.steps) checkDimension(formula, dimension(formula.symbol), dimension);
}
