import { DomainError, evaluateTree } from './evaluate';
import { constantJet, type Jet } from './jet';
import { COVERAGE, type Contribution, type Failure, type InputValue, type Known, type Outcome } from './outcome';
import { propagateBySampling } from './sample';
import { steppingFunctions } from './functions';
import type { Step, System } from './system';
import type { Node } from './tree';

/** Second-order terms below this share of the variance are left out, above the other hand over to sampling. */
const NEGLIGIBLE = 0.01;
const TOO_CURVED = 0.2;
/** A mean shifted by more than this share of u by curvature also hands over to sampling. */
const TOO_SHIFTED = 0.2;

/** A number this close to a whole one, against its own size, is that whole number: 0.2 mm of 0.04 mm steps are 5, not 4.999…. */
const ROUNDING_NOISE = 1e-9;

function withoutNoise(x: number): number {
  const whole = Math.round(x);
  return Math.abs(x - whole) <= ROUNDING_NOISE * Math.max(1, Math.abs(x)) ? whole : x;
}

export type Inputs = Readonly<Record<string, InputValue | undefined>>;
export type Outcomes = Readonly<Record<string, Outcome>>;

interface Direction {
  /** Step along each input, in its standard uncertainty (1 where it has none). */
  readonly along: Readonly<Record<string, number>>;
}

const scaleOf = (input: InputValue): number => (input.u > 0 ? input.u : 1);

/** Jets of one tree in a direction, given the jets of the results before it. */
function jetOf(tree: Node, inputs: Inputs, direction: Direction, results: ReadonlyMap<string, Jet>): Jet {
  return evaluateTree(tree, (name) => {
    const result = results.get(name);
    if (result) return result;
    const input = inputs[name];
    if (!input) throw new DomainError('a value is missing', [name]);
    const step = direction.along[name] ?? 0;
    return step === 0 ? constantJet(input.value) : { c0: input.value, c1: step * scaleOf(input), c2: 0, c3: 0 };
  });
}

/** Jets of earlier results per direction; directions are shared by all results of one propagation. */
class Frame {
  private readonly jets: Map<string, Jet>[] = [];
  private readonly directions: Direction[] = [];
  private readonly index = new Map<string, number>();

  constructor(private readonly inputs: Inputs) {}

  private at(
    key: string,
    along: Record<string, number>,
    known: readonly Step[],
    fixed: ReadonlyMap<string, number>,
  ): number {
    const found = this.index.get(key);
    const i = found ?? this.directions.push({ along }) - 1;
    if (found === undefined) {
      this.jets.push(new Map());
      this.index.set(key, i);
    }
    const jets = this.jets[i] ?? new Map<string, Jet>();
    const direction = this.directions[i] ?? { along };
    for (const step of known) {
      const { symbol, tree } = step.formula;
      if (jets.has(symbol)) continue;
      const whole = fixed.get(symbol);
      try {
        jets.set(symbol, whole === undefined ? jetOf(tree, this.inputs, direction, jets) : constantJet(whole));
      } catch (error) {
        // No finite slope this way; only a tree that uses this result has to do without.
        if (!(error instanceof DomainError)) throw error;
      }
    }
    return i;
  }

  /** The jet of `tree` with input `a` moved by one standard uncertainty and `b` by `sign` of its own. */
  jet(tree: Node, known: readonly Step[], fixed: ReadonlyMap<string, number>, a?: string, b?: string, sign = 1): Jet {
    const along: Record<string, number> = {};
    if (a !== undefined) along[a] = 1;
    if (b !== undefined) along[b] = sign;
    const i = this.at(`${a ?? ''}|${b ?? ''}|${sign}`, along, known, fixed);
    return jetOf(tree, this.inputs, this.directions[i] ?? { along }, this.jets[i] ?? new Map<string, Jet>());
  }
}

/** The jet along one input; undefined where the input is exact and there is no finite slope, as for sqrt at 0. */
function jetAlong(
  name: string,
  tree: Node,
  inputs: Inputs,
  frame: Frame,
  known: readonly Step[],
  fixed: ReadonlyMap<string, number>,
): Jet | undefined {
  try {
    return frame.jet(tree, known, fixed, name);
  } catch (error) {
    if (!(error instanceof DomainError) || inputs[name]?.u !== 0) throw error;
    return undefined;
  }
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
function termsOf(
  tree: Node,
  reached: ReadonlySet<string>,
  inputs: Inputs,
  frame: Frame,
  known: readonly Step[],
  fixed: ReadonlyMap<string, number>,
): Terms {
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
    const jet = jetAlong(name, tree, inputs, frame, known, fixed);
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
      const plus = frame.jet(tree, known, fixed, a, b, 1);
      const minus = frame.jet(tree, known, fixed, a, b, -1);
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
  value ??= frame.jet(tree, known, fixed).c0;
  return { value, gradient, firstOrder, secondOrder, shift, variances };
}

function budgetOf(terms: Terms): Contribution[] {
  let total = 0;
  for (const variance of terms.variances.values()) total += variance;
  if (total === 0) return [];
  return [...terms.variances]
    .map(([symbol, variance]) => ({ symbol, u: Math.sqrt(variance), share: variance / total }))
    .filter((part) => part.u > 0)
    .sort((a, b) => b.share - a.share);
}

function reachesKink(
  step: Step,
  inputs: Inputs,
  frame: Frame,
  known: readonly Step[],
  fixed: ReadonlyMap<string, number>,
): boolean {
  return step.kinks.some((kink) => {
    const terms = termsOf(kink.tree, step.inputs, inputs, frame, known, fixed);
    const u = Math.sqrt(terms.firstOrder + Math.max(terms.secondOrder, 0));
    return u > 0 && Math.abs(terms.value) < 2 * COVERAGE * u;
  });
}

/** Value of one step's tree at given input values, with the whole numbers before it held. */
function valueAt(
  step: Step,
  known: readonly Step[],
  fixed: ReadonlyMap<string, number>,
  at: (name: string) => number,
): number {
  const results = new Map<string, Jet>();
  const symbol = (name: string): Jet => results.get(name) ?? constantJet(at(name));
  for (const before of known) {
    const whole = fixed.get(before.formula.symbol);
    results.set(
      before.formula.symbol,
      whole === undefined ? evaluateTree(before.formula.tree, symbol) : constantJet(whole),
    );
  }
  return evaluateTree(step.formula.tree, symbol).c0;
}

function sampled(step: Step, inputs: Inputs, known: readonly Step[], fixed: ReadonlyMap<string, number>) {
  const names = [...step.inputs].filter((name) => (inputs[name]?.u ?? 0) > 0);
  const draws = names.flatMap((name) => inputs[name] ?? []);
  const needed = known.filter((before) => [...before.inputs].every((name) => step.inputs.has(name)));
  return propagateBySampling(draws, (x) => {
    const moved = new Map(names.map((name, i) => [name, x[i] ?? NaN]));
    try {
      return valueAt(step, needed, fixed, (name) => moved.get(name) ?? inputs[name]?.value ?? NaN);
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      throw new DomainError(`${error.problem} for some values inside the stated uncertainty`, error.symbols);
    }
  });
}

function resolve(
  step: Step,
  inputs: Inputs,
  frame: Frame,
  known: readonly Step[],
  fixed: Map<string, number>,
): Outcome {
  const { symbol, tree } = step.formula;
  if (step.rounded && tree.type === 'call') {
    const terms = termsOf(step.rounded, step.inputs, inputs, frame, known, fixed);
    const reach = COVERAGE * Math.sqrt(terms.firstOrder + Math.max(terms.secondOrder, 0));
    const toWhole = steppingFunctions[tree.name] ?? Math.round;
    // Adding 0 turns a negative zero into zero.
    const from = toWhole(withoutNoise(terms.value - reach)) + 0;
    const to = toWhole(withoutNoise(terms.value + reach)) + 0;
    if (from !== to) {
      const symbols = budgetOf(terms).map((part) => part.symbol);
      return { ok: false, failure: { kind: 'undetermined', symbol, symbols, from, to } };
    }
    fixed.set(symbol, from);
    return { ok: true, value: from, u: 0, low: from, high: from, method: 'exact', budget: [], gradient: {} };
  }
  const terms = termsOf(tree, step.inputs, inputs, frame, known, fixed);
  const { value, gradient, firstOrder, secondOrder, shift } = terms;
  const budget = budgetOf(terms);
  const make = (u: number, method: Known['method']): Known => {
    const reach = COVERAGE * u;
    return { ok: true, value, u, low: value - reach, high: value + reach, method, budget, gradient };
  };
  if (budget.length === 0) return make(0, 'exact');
  const kinked = reachesKink(step, inputs, frame, known, fixed);
  const curved = Math.abs(secondOrder) > TOO_CURVED * firstOrder || shift ** 2 > TOO_SHIFTED ** 2 * firstOrder;
  if (kinked || curved) {
    return { ok: true, value, ...sampled(step, inputs, known, fixed), method: 'sampled', budget, gradient };
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
  const frame = new Frame(inputs);
  const known: Step[] = [];
  const fixed = new Map<string, number>();
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
        const outcome = resolve(step, inputs, frame, known, fixed);
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
