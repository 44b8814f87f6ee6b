import type { Failure, InputValue, Known, Outcome } from '../formula/outcome';
import { COVERAGE, expanded } from '../formula/outcome';
import { propagate, type Outcomes } from '../formula/propagate';
import { symbolParts } from '../formula/mathml';
import { formatNumber } from '../quantity/format';
import type { DecimalMark } from '../quantity/parse';
import type { Measure, Unit } from '../quantity/unit';
import type { Calculator, Asking, FormulaSpec, InputSpec, Instruction } from './calculator';
import { applies, type Choices, type ModelResult, type VerdictState } from './spec';
import { systemFor } from './system';
import type { Amount } from './order';
import { nameOf, symbolOf } from './name';
import { instructionOf, problemText, waysOf } from './tell';
import say from './words/en';
import { readEntry, type Entry, type InputState, type KeptValue } from './entry';
import type { Ways } from './ways';
import { judge, settle, type Settling, type Verdict } from './verdict';

export { nameOf, symbolOf };

/** Everything a calculator's screen knows about one set of entries. */
export interface Situation {
  readonly entries: Readonly<Record<string, Entry | undefined>>;
  /** Options picked; the typical one where none was. */
  readonly choices: Choices;
  /** What the machine keeps, by place (`z.lead`). */
  readonly kept: Readonly<Record<string, KeptValue | undefined>>;
  readonly mark: DecimalMark;
  /** Unit to show results of a kind in, by kind id, where the person prefers another than the calculator's. */
  readonly units?: Readonly<Record<string, Unit>>;
}

export interface Evaluation {
  readonly choices: Choices;
  /** Inputs in force under the options, in the calculator's order. */
  readonly inputs: Readonly<Record<string, InputState>>;
  readonly formulas: readonly FormulaSpec[];
  readonly outcomes: Outcomes;
  /** Everything the formulas started from: readings and what the model made of them, SI. */
  readonly values: Readonly<Record<string, InputValue | undefined>>;
  /** Why the model has no result, as a sentence. */
  readonly modelProblem: string | undefined;
  readonly verdict: Verdict;
  readonly instruction: Instruction | undefined;
  /** Why there is no instruction, as a sentence. */
  readonly cannot: string | undefined;
  /** Labels of the typical values that the results rest on. */
  readonly typical: readonly string[];
}

class Unavailable extends Error {
  constructor(readonly symbol: string) {
    super(`${symbol} is not available`);
  }
}

/** The options in force: what was picked where it is one of the options, else the typical one. */
export function effectiveChoices(calc: Calculator, picked: Choices): Choices {
  return Object.fromEntries(
    Object.entries(calc.choices).map(([name, spec]) => {
      const chosen = picked[name];
      return [name, chosen !== undefined && Object.hasOwn(spec.options, chosen) ? chosen : spec.typical];
    }),
  );
}

/** Kind and usual unit of a symbol, under the options in force. */
function measureOf(calc: Calculator, found: Pick<Evaluation, 'formulas'>, symbol: string): Measure | undefined {
  return (
    found.formulas.find((f) => symbolOf(f) === symbol)?.measure ??
    calc.inputs[symbol]?.measure ??
    calc.model?.outputs[symbol]?.measure
  );
}

/** Unit a symbol is shown in: as typed for an input, as preferred or declared for a result. */
export function unitOf(
  calc: Calculator,
  evaluation: Pick<Evaluation, 'inputs' | 'formulas'>,
  symbol: string,
  situation?: Situation,
): Unit | undefined {
  const state = evaluation.inputs[symbol];
  if (state?.ok) return state.unit;
  const measure = measureOf(calc, evaluation, symbol);
  return measure && (situation?.units?.[measure.kind.id] ?? measure.unit);
}

/** A label as it stands inside a sentence: small first letter, but for names and abbreviations. */
export const inSentence: (label: string) => string = say.inSentence;

/** More names than a person looks through. */
const MOST_NAMES = 3;

/** A failure as a sentence. What is missing is named in full; of what to look at, the first few. */
export function explain(calc: Calculator, failure: Failure): string {
  const names = failure.symbols.map((symbol) => nameOf(calc, symbol));
  if (failure.kind === 'missing') return say.stillNeeded(names);
  if (failure.kind === 'domain')
    return say.cannotWorkOut(failure.problem, names.slice(0, MOST_NAMES), Math.max(0, names.length - MOST_NAMES));
  return say.undetermined(nameOf(calc, failure.symbol), formatNumber(failure.from), formatNumber(failure.to));
}

/** Inputs as the propagation takes them: rectangular, u = half-width / √3 (JCGM 100, 4.3.7). */
function inputValues(states: Readonly<Record<string, InputState>>): Record<string, InputValue | undefined> {
  return Object.fromEntries(
    Object.entries(states).map(([symbol, state]) => [
      symbol,
      state.ok ? { value: state.value, u: state.half / Math.sqrt(3), shape: 'rectangular' as const } : undefined,
    ]),
  );
}

/** What the model worked out, in the form of results: their own uncertainty, no budget. */
function outputsOf(calc: Calculator, made: ModelResult | undefined): Record<string, Outcome> {
  const outputs: Record<string, Outcome> = {};
  for (const symbol of Object.keys(calc.model?.outputs ?? {})) {
    const output = made?.ok ? made.values[symbol] : undefined;
    if (!output) {
      outputs[symbol] = { ok: false, failure: { kind: 'missing', symbols: [symbol] } };
      continue;
    }
    const { value, u } = output;
    const [low, high] = [value - COVERAGE * u, value + COVERAGE * u];
    const method: Known['method'] = u > 0 ? 'first order' : 'exact';
    outputs[symbol] = { ok: true, value, u, low, high, method, budget: [], gradient: {} };
  }
  return outputs;
}

function readInputs(calc: Calculator, situation: Situation, choices: Choices): Record<string, InputState> {
  const states: Record<string, InputState> = {};
  for (const [symbol, spec] of Object.entries<InputSpec>(calc.inputs)) {
    if (!applies(spec.when, choices)) continue;
    const kept = spec.from === undefined ? undefined : situation.kept[spec.from];
    states[symbol] = readEntry(symbol, spec, situation.entries[symbol], kept, calc.choices, choices, situation.mark);
  }
  return states;
}

type Found = Pick<Evaluation, 'choices' | 'inputs' | 'formulas' | 'outcomes' | 'modelProblem'> & {
  readonly verdict: Omit<Verdict, 'settling'>;
};

function contextFor(calc: Calculator, found: Found, situation: Situation): Asking {
  const known = (symbol: string): Known | undefined => {
    const outcome = found.outcomes[symbol];
    return outcome?.ok ? outcome : undefined;
  };
  const number = (symbol: string): number => {
    const state = found.inputs[symbol];
    if (state?.ok) return state.value;
    const result = known(symbol);
    if (!result) throw new Unavailable(symbol);
    return result.value;
  };
  return {
    number,
    known,
    quantity: (symbol): Amount => {
      const unit = unitOf(calc, found, symbol, situation);
      const measure = measureOf(calc, found, symbol);
      if (!unit || !measure) throw new Unavailable(symbol);
      const result = known(symbol);
      const state = found.inputs[symbol];
      const width = result ? expanded(result) : state?.ok ? state.half : 0;
      return { si: number(symbol), width, kind: measure.kind.id, unit: unit.id };
    },
    choice: (name) => found.choices[name] ?? calc.choices[name]?.typical ?? '',
    verdict: found.verdict.state,
    lacking: (symbol) => {
      const outcome = found.outcomes[symbol];
      if (!outcome || outcome.ok || outcome.failure.kind !== 'missing') return [];
      return outcome.failure.symbols;
    },
    check: (of) => found.verdict.checks.find((check) => check.limit.of === of)?.state ?? 'none',
  };
}

function reasonFor(calc: Calculator, found: Found, symbol: string): string {
  const outcome = found.outcomes[symbol];
  const outputs = calc.model?.outputs ?? {};
  if (outcome && !outcome.ok) {
    const { failure } = outcome;
    const byModel = failure.kind === 'missing' && failure.symbols.some((name) => Object.hasOwn(outputs, name));
    return byModel && found.modelProblem !== undefined ? found.modelProblem : explain(calc, failure);
  }
  const state = found.inputs[symbol];
  if (state && !state.ok) return state.blank ? state.reason : say.ofInput(nameOf(calc, symbol), state.reason);
  return say.notKnown(nameOf(calc, symbol));
}

function typicalBehind(calc: Calculator, found: Found): string[] {
  const reached = new Set(systemFor(calc, found.choices).steps.flatMap((step) => [...step.inputs]));
  return [...reached].flatMap((symbol) => {
    const state = found.inputs[symbol];
    const isLimit = calc.limits.some((limit) => limit.max === symbol || limit.min === symbol);
    return state?.ok && state.origin === 'typical' && !isLimit && !calc.inputs[symbol]?.decided
      ? [nameOf(calc, symbol)]
      : [];
  });
}

/** Works a calculator: inputs read, formulas evaluated with their uncertainty, verdict and instruction. Never throws for bad entries. */
export function evaluate(calc: Calculator, situation: Situation): Evaluation {
  const choices = effectiveChoices(calc, situation.choices);
  const inputs = readInputs(calc, situation, choices);
  const formulas = calc.formulas.filter((f) => applies(f.when, choices));
  const system = systemFor(calc, choices);
  const read = inputValues(inputs);
  const made = calc.model?.compute(read, choices);
  const values = made?.ok ? { ...read, ...made.values } : read;
  const modelProblem = made?.ok === false ? problemText(calc, made.problem, situation.mark) : undefined;
  const outcomes = { ...propagate(system, values), ...outputsOf(calc, made) };
  const byLimits = { choices, inputs, formulas, outcomes, modelProblem, verdict: judge(calc, choices, outcomes) };
  const judged = { ...byLimits.verdict, state: ownVerdict(calc, byLimits, situation) };
  const found: Found = { ...byLimits, verdict: judged };
  const typical = typicalBehind(calc, found);
  const { instruction, cannot } = advise(calc, found, situation);
  // A calculator that judges for itself says itself what would settle it.
  const isOpen = !calc.judge && (judged.state === 'too close' || instruction === undefined || instruction.measureAgain);
  let settling: Settling | undefined | 'not asked' = isOpen ? 'not asked' : undefined;
  const verdict: Verdict = {
    ...judged,
    get settling() {
      if (settling === 'not asked') settling = settle(calc, system, values, choices, outcomes);
      return settling;
    },
  };
  return { choices, inputs, formulas, outcomes, values, modelProblem, verdict, instruction, cannot, typical };
}

/** The calculator's own verdict where it gives one, else that of its limits. */
function ownVerdict(calc: Calculator, found: Found, situation: Situation): VerdictState {
  if (!calc.judge) return found.verdict.state;
  try {
    return calc.judge(contextFor(calc, found, situation));
  } catch (error) {
    if (!(error instanceof Unavailable)) throw error;
    return 'none';
  }
}

function advise(calc: Calculator, found: Found, situation: Situation): Pick<Evaluation, 'instruction' | 'cannot'> {
  try {
    return {
      instruction: instructionOf(calc, calc.action(contextFor(calc, found, situation)), situation.mark),
      cannot: undefined,
    };
  } catch (error) {
    if (!(error instanceof Unavailable)) throw error;
    return { instruction: undefined, cannot: reasonFor(calc, found, error.symbol) };
  }
}

/** The calculator's ways side by side; undefined where it has none, or cannot compare them yet. */
export function compareWays(calc: Calculator, evaluation: Evaluation, situation: Situation): Ways | undefined {
  try {
    const compared = calc.ways?.(contextFor(calc, evaluation, situation));
    return compared && waysOf(calc, compared, situation.mark);
  } catch (error) {
    if (!(error instanceof Unavailable)) throw error;
    return undefined;
  }
}

/** A symbol for running text: `Δh` with its subscript in plain letters. */
export function symbolText(symbol: string): string {
  const { base, sub } = symbolParts(symbol);
  return sub === '' ? base : `${base} ${sub}`;
}
