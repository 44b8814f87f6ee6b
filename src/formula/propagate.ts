import { DomainError, rounded } from './evaluate';
import { Frame, scaleOf, type Inputs } from './frame';
import { constantJet, type Jet } from './jet';
import { COVERAGE, type Contribution, type Failure, type Known, type Outcome } from './outcome';
import { Draws } from './sample';
import { steppingFunctions } from './functions';
import type { Step, System } from './system';
import type { Node } from './tree';

/** Second-order terms below this share of the variance are left out, above the other hand over to sampling. */
const NEGLIGIBLE = 0.01;
const TOO_CURVED = 0.2;
/** A mean shifted by more than this share of u by curvature also hands over to sampling. */
const TOO_SHIFTED = 0.2;

export type { Inputs };
export type Outcomes = Readonly<Record<string, Outcome>>;

/** What one propagation works with; `known` and `fixed` grow as results come in. */
interface Working {
  readonly inputs: Inputs;
  readonly known: Step[];
  /** Whole numbers among the results: settled, so they do not move. */
  readonly fixed: Map<string, number>;
  readonly frame: Frame;
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

/** Taylor terms of one tree: JCGM 100, 5.1.2 eq. (10) and the note with the next-higher terms. */
function termsOf(tree: Node, reached: ReadonlySet<string>, { inputs, frame }: Working): Terms {
  const gradient: Record<string, number> = {};
  const variances = new Map<string, number>();
  const single = new Map<string, Jet>();
  const uncertain: string[] = [];
  let value: number | undefined;
  let firstOrder = 0;
  let secondOrder = 0;
  let shift = 0;
  for (const name of reached) {
    const input = inputs[name];
    if (!input) throw new DomainError('a value is missing', [name]);
    const jet = frame.jetAlong(name, tree);
    if (!jet) continue;
    value = jet.c0;
    gradient[name] = jet.c1 / scaleOf(input);
    if (input.u === 0) continue;
    uncertain.push(name);
    single.set(name, jet);
    const own = jet.c1 ** 2;
    // With f_ii = 2 c2 and f_iii = 6 c3 along u_i e_i: ½ f_ii² + f_i f_iii.
    const curved = 2 * jet.c2 ** 2 + 6 * jet.c1 * jet.c3;
    firstOrder += own;
    secondOrder += curved;
    shift += jet.c2;
    variances.set(name, own + Math.max(curved, 0));
  }
  uncertain.forEach((a, i) => {
    for (const b of uncertain.slice(i + 1)) {
      const plus = frame.jet(tree, a, b, 1);
      const minus = frame.jet(tree, a, b, -1);
      const fa = single.get(a) ?? constantJet(0);
      const fb = single.get(b) ?? constantJet(0);
      const ab = (plus.c2 - minus.c2) / 2;
      const abb = (6 * (plus.c3 + minus.c3) - 12 * fa.c3) / 6;
      const aab = (6 * (plus.c3 - minus.c3) - 12 * fb.c3) / 6;
      const mixed = ab ** 2 + fa.c1 * abb + fb.c1 * aab;
      secondOrder += mixed;
      const half = Math.max(mixed, 0) / 2;
      variances.set(a, (variances.get(a) ?? 0) + half);
      variances.set(b, (variances.get(b) ?? 0) + half);
    }
  });
  value ??= frame.jet(tree).c0;
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

function reachesKink(step: Step, working: Working): boolean {
  return step.kinks.some((kink) => {
    const terms = termsOf(kink.tree, step.inputs, working);
    const u = Math.sqrt(terms.firstOrder + Math.max(terms.secondOrder, 0));
    return u > 0 && Math.abs(terms.value) < 2 * COVERAGE * u;
  });
}

/** Slopes on one side of a kink do not tell what each input does: each moves alone. */
function budgetAlone(step: Step, { draws }: Working): Contribution[] {
  return budgetOf(new Map([...step.inputs].map((name) => [name, draws.dueTo(step, name) ** 2])));
}

function resolveWhole(step: Step, inner: Node, toWhole: (x: number) => number, working: Working): Outcome {
  const { symbol } = step.formula;
  const terms = termsOf(inner, step.inputs, working);
  const reach = COVERAGE * Math.sqrt(terms.firstOrder + Math.max(terms.secondOrder, 0));
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
  return { ok: true, value: from, u: 0, low: from, high: from, method: 'exact', budget: [], gradient: {} };
}

function resolve(step: Step, working: Working): Outcome {
  const { tree } = step.formula;
  if (step.rounded && tree.type === 'call') {
    return resolveWhole(step, step.rounded, steppingFunctions[tree.name] ?? Math.round, working);
  }
  const terms = termsOf(tree, step.inputs, working);
  const { value, gradient, firstOrder, secondOrder, variances } = terms;
  if (reachesKink(step, working)) {
    const sampled = working.draws.result(step);
    return { ok: true, value, ...sampled, method: 'sampled', budget: budgetAlone(step, working), gradient };
  }
  const budget = budgetOf(variances);
  const make = (u: number, method: Known['method']): Known => {
    const reach = COVERAGE * u;
    return { ok: true, value, u, low: value - reach, high: value + reach, method, budget, gradient };
  };
  if (budget.length === 0) return make(0, 'exact');
  if (isCurved(terms)) {
    return { ok: true, value, ...working.draws.result(step), method: 'sampled', budget, gradient };
  }
  if (Math.abs(secondOrder) <= NEGLIGIBLE * firstOrder) return make(Math.sqrt(firstOrder), 'first order');
  return make(Math.sqrt(firstOrder + secondOrder), 'second order');
}

/**
 * Evaluates a system and propagates the inputs' uncertainties (JCGM 100; where curvature is not small, JCGM 101).
 * Every result is differentiated with respect to the inputs, so results that share one stay correlated.
 * A whole number from round, floor or ceil is a result only if the uncertainty settles it.
 *
 * @param inputs SI values with standard uncertainties; undefined where none was given
 * @returns for every result symbol a value with its uncertainty, or a named reason why there is none
 */
export function propagate(system: System, inputs: Inputs): Outcomes {
  const outcomes: Record<string, Outcome> = {};
  const known: Step[] = [];
  const fixed = new Map<string, number>();
  const frame = new Frame(inputs, known, fixed);
  const working: Working = { inputs, known, fixed, frame, draws: new Draws(system, inputs, fixed) };
  for (const step of system.steps) {
    const { symbol, uses } = step.formula;
    const blocked = uses.map((name) => outcomes[name]).find((outcome) => outcome?.ok === false);
    const missing = [...step.inputs].filter((name) => !inputs[name]);
    if (missing.length > 0) {
      outcomes[symbol] = { ok: false, failure: { kind: 'missing', symbols: missing } };
    } else if (blocked) {
      outcomes[symbol] = blocked;
    } else {
      try {
        const outcome = resolve(step, working);
        outcomes[symbol] = outcome;
        if (outcome.ok) known.push(step);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        outcomes[symbol] = { ok: false, failure: domainFailure(error, step, known) };
      }
    }
  }
  return outcomes;
}

/** Names the inputs behind a domain error: those the failing operation reaches. */
function domainFailure(error: DomainError, step: Step, known: readonly Step[]): Failure {
  const reached = new Set<string>();
  for (const name of error.symbols) {
    const before = known.find((other) => other.formula.symbol === name);
    if (before) for (const input of before.inputs) reached.add(input);
    else if (step.inputs.has(name)) reached.add(name);
  }
  return { kind: 'domain', symbols: [...(reached.size > 0 ? reached : step.inputs)], problem: error.problem };
}
