import { DomainError, evaluateTree, rounded } from './evaluate';
import {
  COVERAGE,
  HALF_OVER_U,
  type Contribution,
  type Failure,
  type Inputs,
  type Known,
  type Outcome,
} from './outcome';
import { outcomeOf, type Reached } from './remembered';
import { Draws, type Sampled } from './sample';
import { steppingFunctions } from './functions';
import type { Step, System } from './system';
import { constantTaylor, variable, type Taylor } from './taylor';
import type { Node } from './tree';
import say from './words/en';

/** Second-order terms below this share of the variance are left out, above the other hand over to sampling. */
const NEGLIGIBLE = 0.01;
const TOO_CURVED = 0.2;
/** A mean shifted by more than this share of u by curvature also hands over to sampling. */
const TOO_SHIFTED = 0.2;

export type { Inputs };
export type Outcomes = Readonly<Record<string, Outcome>>;

/** What one propagation works with; `fixed` and `results` grow as results come in. */
interface Working extends Reached {
  /** Symbols of the inputs by number, uncertain ones first. */
  readonly names: readonly string[];
  readonly variables: ReadonlyMap<string, Taylor>;
  readonly draws: Draws;
}

interface Terms {
  readonly value: number;
  readonly gradient: Record<string, number>;
  readonly firstOrder: number;
  readonly secondOrder: number;
  readonly shift: number;
  readonly variances: Map<string, number>;
}

/** A tree's value and derivatives, each input in its own standard uncertainty. */
function taylorOf(tree: Node, { inputs, variables, results }: Working): Taylor {
  return evaluateTree(tree, (name) => {
    const found = results.get(name) ?? variables.get(name);
    if (found) return found;
    const input = inputs[name];
    if (!input) throw new DomainError(say.missing, [name]);
    return constantTaylor(input.value);
  });
}

/** What is asked of a tree's derivatives: JCGM 100, 5.1.2 eq. (10) and the note with the next-higher terms. */
function termsOf(taylor: Taylor, { inputs, names }: Working): Terms {
  const { value, on, uncertain: n, first, second, third } = taylor;
  const gradient: Record<string, number> = {};
  const variances = new Map<string, number>();
  let firstOrder = 0;
  let secondOrder = 0;
  let shift = 0;
  on.forEach((number, i) => {
    const name = names[number] ?? '';
    const fi = first[i] ?? 0;
    const u = inputs[name]?.u ?? 0;
    gradient[name] = u > 0 ? fi / u : fi;
    if (i >= n) return;
    firstOrder += fi ** 2;
    shift += (second[i * n + i] ?? 0) / 2;
    let variance = fi ** 2;
    for (let j = 0; j < n; j += 1) {
      const [ij, ji] = [i * n + j, j * n + i];
      // Half of what the pair adds, so that i, j and j, i add the whole: ½ f_ij² + f_i f_ijj.
      const mixed = ((second[ij] ?? 0) ** 2 + fi * (third[ij] ?? 0) + (first[j] ?? 0) * (third[ji] ?? 0)) / 2;
      secondOrder += mixed;
      variance += Math.max(mixed, 0);
    }
    variances.set(name, variance);
  });
  return { value, gradient, firstOrder, secondOrder, shift, variances };
}

function budgetOf(variances: ReadonlyMap<string, number>): Contribution[] {
  let total = 0;
  for (const variance of variances.values()) total += variance;
  if (total === 0) return [];
  return [...variances]
    .map(([symbol, variance]) => ({ symbol, u: Math.sqrt(variance), share: variance / total }))
    .filter((part) => part.u > 0)
    .sort((a, b) => b.share - a.share);
}

/** True where a Taylor series does not tell enough, and the distribution has to be sampled. */
function isCurved({ firstOrder, secondOrder, shift }: Terms): boolean {
  return Math.abs(secondOrder) > TOO_CURVED * firstOrder || shift ** 2 > TOO_SHIFTED ** 2 * firstOrder;
}

/** The farthest that limits of instruments let a tree move, to second order; without bound where an input is not limited. */
function farthest({ on, uncertain: n, first, second }: Taylor, { inputs, names }: Working): number {
  // A rectangular input moves by at most √3 of its standard uncertainties, a triangular one by √6.
  const ends = on.slice(0, n).map((number) => {
    const shape = inputs[names[number] ?? '']?.shape ?? 'normal';
    return shape === 'normal' ? Infinity : HALF_OVER_U[shape];
  });
  if (ends.includes(Infinity)) return Infinity;
  let far = 0;
  ends.forEach((end, i) => {
    far += end * Math.abs(first[i] ?? 0);
    ends.forEach((other, j) => (far += (end * other * Math.abs(second[i * n + j] ?? 0)) / 2));
  });
  return far;
}

/** Half of the interval: 2u, and never more than all the limits together allow (JCGM 100, 4.3.7 and G.6.5). */
function reachOf(u: number, taylor: Taylor, working: Working): number {
  return Math.min(COVERAGE * u, farthest(taylor, working));
}

function reachesKink(step: Step, working: Working): boolean {
  return step.kinks.some((kink) => {
    const taylor = taylorOf(kink.tree, working);
    const terms = termsOf(taylor, working);
    const u = Math.sqrt(terms.firstOrder + Math.max(terms.secondOrder, 0));
    return u > 0 && Math.abs(terms.value) < Math.min(2 * COVERAGE * u, farthest(taylor, working));
  });
}

/** Slopes on one side of a kink do not tell what each input does: each moves alone. */
function budgetAlone(step: Step, { draws }: Working): Contribution[] {
  return budgetOf(new Map([...step.inputs].map((name) => [name, draws.dueTo(step, name) ** 2])));
}

function resolveWhole(step: Step, inner: Node, toWhole: (x: number) => number, working: Working): Outcome {
  const { symbol } = step.formula;
  const taylor = taylorOf(inner, working);
  const terms = termsOf(taylor, working);
  const reach = reachOf(Math.sqrt(terms.firstOrder + Math.max(terms.secondOrder, 0)), taylor, working);
  const kinked = reachesKink(step, working);
  const { low, high } =
    kinked || isCurved(terms) ? working.draws.result(step) : { low: terms.value - reach, high: terms.value + reach };
  const from = rounded(toWhole, low);
  const to = rounded(toWhole, high);
  if (from !== to) {
    const budget = kinked ? budgetAlone(step, working) : budgetOf(terms.variances);
    const symbols = budget.map((part) => part.symbol);
    return { ok: false, failure: { kind: 'undetermined', symbol, symbols, from, to, budget } };
  }
  working.fixed.set(symbol, from);
  working.results.set(symbol, constantTaylor(from));
  return { ok: true, value: from, u: 0, low: from, high: from, method: 'exact', budget: [], gradient: {} };
}

/** A spread this small against the terms of a sum is what rounding leaves of x − x. */
const DUST = 1e-12;

/** The terms that a tree adds up. */
function termsAdded(tree: Node): Node[] {
  if (tree.type === 'negate') return termsAdded(tree.of);
  if (tree.type !== 'operation' || (tree.op !== '+' && tree.op !== '-')) return [tree];
  return [...termsAdded(tree.left), ...termsAdded(tree.right)];
}

/** Where every derivative vanishes, as for a product of three at zero, only draws tell uncertain from exact. */
function hiddenSpread(step: Step, taylor: Taylor, working: Working): Sampled | undefined {
  if (taylor.uncertain === 0) return undefined;
  const sizes = termsAdded(step.formula.tree).map((term) => Math.abs(taylorOf(term, working).value));
  if (working.draws.roughSpread(step) <= DUST * Math.max(...sizes)) return undefined;
  return working.draws.result(step);
}

/** A sampled result. What each input adds takes a thousand draws more for each: it is worked out when it is first looked at. */
function sampledOutcome(
  value: number,
  gradient: Known['gradient'],
  { u, low, high }: Sampled,
  shares: () => readonly Contribution[],
): Known {
  let budget: readonly Contribution[] | undefined;
  return {
    ok: true,
    value,
    u,
    low,
    high,
    method: 'sampled',
    gradient,
    get budget() {
      budget ??= shares();
      return budget;
    },
  };
}

function resolve(step: Step, working: Working): Outcome {
  const { tree } = step.formula;
  if (step.rounded && tree.type === 'call') {
    return resolveWhole(step, step.rounded, steppingFunctions[tree.name] ?? Math.round, working);
  }
  const taylor = taylorOf(tree, working);
  working.results.set(step.formula.symbol, taylor);
  const terms = termsOf(taylor, working);
  const { value, gradient, firstOrder, secondOrder, variances } = terms;
  const budget = budgetOf(variances);
  const straight = (u: number, method: Known['method']): Known => {
    const reach = reachOf(u, taylor, working);
    return { ok: true, value, u, low: value - reach, high: value + reach, method, budget, gradient };
  };
  const drawn = (sampled: Sampled | undefined, shares: () => readonly Contribution[]): Known =>
    sampled && sampled.u > 0
      ? sampledOutcome(value, gradient, sampled, shares)
      : { ...straight(0, 'exact'), budget: [] };
  if (reachesKink(step, working)) return drawn(working.draws.result(step), () => budgetAlone(step, working));
  if (budget.length === 0) return drawn(hiddenSpread(step, taylor, working), () => budget);
  if (isCurved(terms)) return drawn(working.draws.result(step), () => budget);
  if (Math.abs(secondOrder) <= NEGLIGIBLE * firstOrder) return straight(Math.sqrt(firstOrder), 'first order');
  return straight(Math.sqrt(firstOrder + secondOrder), 'second order');
}

/** The outcome, or a refusal where the stated uncertainty takes the result beyond all bounds (a power law over its whole range). */
function bounded(outcome: Outcome, step: Step): Outcome {
  if (!outcome.ok || [outcome.u, outcome.low, outcome.high].every(Number.isFinite)) return outcome;
  throw new DomainError(say.inside(say.tooLarge), step.formula.uses);
}

/**
 * Evaluates a system and propagates the inputs' uncertainties (JCGM 100; where curvature is not small, JCGM 101).
 * Every result is differentiated with respect to the inputs, so results that share one stay correlated.
 * A whole number from round, floor or ceil is a result only if the uncertainty settles it.
 * Nothing is worked out before it is asked for: a result is when it is first looked at, with those that lead to it.
 *
 * @param inputs SI values with standard uncertainties; undefined where none was given
 * @param remember keep what a step comes to for the next time that its inputs are these; not for a search through many
 * @param beside outcomes that are there already, to stand beside those of the formulas
 * @returns for every result symbol a value with its uncertainty, or a named reason why there is none
 */
export function propagate(
  system: System,
  inputs: Inputs,
  { remember = true, beside = {} }: { readonly remember?: boolean; readonly beside?: Outcomes } = {},
): Outcomes {
  const outcomes: Record<string, Outcome> = { ...beside };
  const working = workingWith(system, inputs);
  const work = (step: Step): Outcome => {
    const missing = [...step.inputs].filter((name) => !inputs[name]);
    if (missing.length > 0) return { ok: false, failure: { kind: 'missing', symbols: missing } };
    // All that it is made of comes first: its slopes and draws are taken from there.
    const blocked = step.formula.uses.map((name) => outcomes[name]).find((outcome) => outcome?.ok === false);
    return blocked ?? outcomeOf(step, working, remember, () => resolved(step, working, system, outcomes));
  };
  for (const step of system.steps) {
    let outcome: Outcome | undefined;
    Object.defineProperty(outcomes, step.formula.symbol, { enumerable: true, get: () => (outcome ??= work(step)) });
  }
  return outcomes;
}

/** What a propagation starts from. */
function workingWith(system: System, inputs: Inputs): Working {
  const isUncertain = (name: string): boolean => (inputs[name]?.u ?? 0) > 0;
  const names = [...system.inputs.filter(isUncertain), ...system.inputs.filter((name) => !isUncertain(name))];
  const order = system.inputs.map((name) => (isUncertain(name) ? '1' : '0')).join('');
  const variables = new Map(
    names.flatMap((name, number) => {
      const input = inputs[name];
      return input
        ? [[name, variable(input.value, number, isUncertain(name), input.u > 0 ? input.u : 1)] as const]
        : [];
    }),
  );
  const fixed = new Map<string, number>();
  const results = new Map<string, Taylor>();
  return { inputs, fixed, names, variables, results, draws: new Draws(system, inputs, fixed), order };
}

/** A step's outcome, or the named reason why it has none. */
function resolved(step: Step, working: Working, system: System, outcomes: Outcomes): Outcome {
  try {
    return bounded(resolve(step, working), step);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { ok: false, failure: domainFailure(error, step, system, outcomes) };
  }
}

/** Names the inputs behind a domain error: those the failing operation has at hand, then those it reaches, heaviest first. */
function domainFailure(error: DomainError, step: Step, { steps }: System, outcomes: Outcomes): Failure {
  const reached = new Set(error.symbols.filter((name) => step.inputs.has(name)));
  for (const name of error.symbols) {
    const outcome = outcomes[name];
    if (outcome?.ok) for (const part of outcome.budget) reached.add(part.symbol);
  }
  for (const name of error.symbols) {
    if (outcomes[name]?.ok !== true) continue;
    for (const input of steps.find((other) => other.formula.symbol === name)?.inputs ?? []) reached.add(input);
  }
  return { kind: 'domain', symbols: [...(reached.size > 0 ? reached : step.inputs)], problem: error.problem };
}
