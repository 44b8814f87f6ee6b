import type { Failure, InputValue, Known, Outcome } from '../formula/outcome';
import { COVERAGE, expanded } from '../formula/outcome';
import { propagate, type Outcomes } from '../formula/propagate';
import { symbolParts } from '../formula/mathml';
import { formatNumber, formatValue } from '../quantity/format';
import type { DecimalMark } from '../quantity/parse';
import type { Unit } from '../quantity/unit';
import {
  applies,
  systemFor,
  type Calculator,
  type Choices,
  type Context,
  type FormulaSpec,
  type InputSpec,
  type Instruction,
  type ModelResult,
  type VerdictState,
} from './calculator';
import { readEntry, type Entry, type InputState, type KeptValue } from './entry';
import type { Ways } from './ways';
import { judge, settle, type Settling, type Verdict } from './verdict';

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

/** The symbol a formula defines. */
export function symbolOf(spec: FormulaSpec): string {
  return spec.text.split('=', 1)[0]?.trim() ?? '';
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

/** Unit a symbol is shown in: as typed for an input, as preferred or declared for a result. */
export function unitOf(
  calc: Calculator,
  evaluation: Pick<Evaluation, 'inputs' | 'formulas'>,
  symbol: string,
  situation?: Situation,
): Unit | undefined {
  const state = evaluation.inputs[symbol];
  if (state?.ok) return state.unit;
  const measure =
    evaluation.formulas.find((f) => symbolOf(f) === symbol)?.measure ??
    calc.inputs[symbol]?.measure ??
    calc.model?.outputs[symbol]?.measure;
  return measure && (situation?.units?.[measure.kind.id] ?? measure.unit);
}

/** A person's name for a symbol: label of an input, meaning of a result. */
export function nameOf(calc: Calculator, symbol: string): string {
  return (
    calc.inputs[symbol]?.label ??
    calc.formulas.find((f) => symbolOf(f) === symbol)?.meaning ??
    calc.model?.outputs[symbol]?.meaning ??
    symbol
  );
}

/** A label as it stands inside a sentence: small first letter, but for names and abbreviations. */
export function inSentence(label: string): string {
  return /^(?:Young|Poisson)|^.[A-Z]/.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);
}

/** More names than a person looks through. */
const MOST_NAMES = 3;

/** A failure as a sentence. What is missing is named in full; of what to look at, the first few. */
export function explain(calc: Calculator, failure: Failure): string {
  const names = failure.symbols.map((symbol) => inSentence(nameOf(calc, symbol)));
  if (failure.kind === 'missing') return `Still needed: ${names.join(', ')}.`;
  if (failure.kind === 'domain') {
    // Names hold commas.
    const rest = names.length > MOST_NAMES ? `; and ${names.length - MOST_NAMES} more` : '';
    return `Cannot be worked out: ${failure.problem}. Look at: ${names.slice(0, MOST_NAMES).join('; ')}${rest}.`;
  }
  const what = inSentence(nameOf(calc, failure.symbol));
  const [from, to] = [formatNumber(failure.from), formatNumber(failure.to)];
  return `The ${what} cannot be told from this reading: anything between ${from} and ${to}.`;
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
    const method = u > 0 ? 'first order' : 'exact';
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

function contextFor(calc: Calculator, found: Found, situation: Situation): Context<string, Calculator['choices']> {
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
    text: (symbol, options) => {
      const unit = unitOf(calc, found, symbol, situation);
      if (!unit) throw new Unavailable(symbol);
      const value = number(symbol);
      const result = known(symbol);
      const state = found.inputs[symbol];
      const width = result ? expanded(result) : state?.ok ? state.half : 0;
      return formatValue(value, width, unit, { mark: situation.mark, ...options });
    },
    choice: (name) => found.choices[name] ?? calc.choices[name]?.typical ?? '',
    verdict: found.verdict.state,
    mark: situation.mark,
    lacking: (symbol) => {
      const outcome = found.outcomes[symbol];
      if (!outcome || outcome.ok || outcome.failure.kind !== 'missing') return [];
      return outcome.failure.symbols.map((name) => nameOf(calc, name));
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
  if (state && !state.ok) return state.blank ? state.reason : `${nameOf(calc, symbol)}: ${state.reason}`;
  return `${nameOf(calc, symbol)} is not known.`;
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
  const modelProblem = made?.ok === false ? made.reason : undefined;
  const outcomes = { ...propagate(system, values), ...outputsOf(calc, made) };
  const byLimits = { choices, inputs, formulas, outcomes, modelProblem, verdict: judge(calc, choices, outcomes) };
  const judged = { ...byLimits.verdict, state: ownVerdict(calc, byLimits, situation) };
  const found: Found = { ...byLimits, verdict: judged };
  const typical = typicalBehind(calc, found);
  const { instruction, cannot } = advise(calc, found, situation);
  // A calculator that judges for itself says itself what would settle it.
  const isOpen =
    !calc.judge && (judged.state === 'too close' || instruction === undefined || instruction.measureAgain === true);
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
    return { instruction: calc.action(contextFor(calc, found, situation)), cannot: undefined };
  } catch (error) {
    if (!(error instanceof Unavailable)) throw error;
    return { instruction: undefined, cannot: reasonFor(calc, found, error.symbol) };
  }
}

/** The calculator's ways side by side; undefined where it has none, or cannot compare them yet. */
export function compareWays(calc: Calculator, evaluation: Evaluation, situation: Situation): Ways | undefined {
  try {
    return calc.ways?.(contextFor(calc, evaluation, situation));
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
