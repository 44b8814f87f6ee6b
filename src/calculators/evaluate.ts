import type { Failure, InputValue, Known } from '../formula/outcome';
import { expanded } from '../formula/outcome';
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
} from './calculator';
import { readEntry, type Entry, type InputState, type KeptValue } from './entry';
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
  const measure = evaluation.formulas.find((f) => symbolOf(f) === symbol)?.measure ?? calc.inputs[symbol]?.measure;
  return measure && (situation?.units?.[measure.kind.id] ?? measure.unit);
}

/** A person's name for a symbol: label of an input, meaning of a result. */
export function nameOf(calc: Calculator, symbol: string): string {
  return calc.inputs[symbol]?.label ?? calc.formulas.find((f) => symbolOf(f) === symbol)?.meaning ?? symbol;
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
export function inputValues(states: Readonly<Record<string, InputState>>): Record<string, InputValue | undefined> {
  return Object.fromEntries(
    Object.entries(states).map(([symbol, state]) => [
      symbol,
      state.ok ? { value: state.value, u: state.half / Math.sqrt(3), shape: 'rectangular' as const } : undefined,
    ]),
  );
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

type Found = Pick<Evaluation, 'choices' | 'inputs' | 'formulas' | 'outcomes'> & {
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
    check: (of) => found.verdict.checks.find((check) => check.limit.of === of)?.state ?? 'none',
  };
}

function reasonFor(calc: Calculator, found: Found, symbol: string): string {
  const outcome = found.outcomes[symbol];
  if (outcome && !outcome.ok) return explain(calc, outcome.failure);
  const state = found.inputs[symbol];
  if (state && !state.ok) return state.blank ? state.reason : `${nameOf(calc, symbol)}: ${state.reason}`;
  return `${nameOf(calc, symbol)} is not known.`;
}

function typicalBehind(calc: Calculator, found: Found): string[] {
  const reached = new Set(systemFor(calc, found.choices).steps.flatMap((step) => [...step.inputs]));
  return [...reached].flatMap((symbol) => {
    const state = found.inputs[symbol];
    const isLimit = calc.limits.some((limit) => limit.max === symbol || limit.min === symbol);
    return state?.ok && state.origin === 'typical' && !isLimit ? [nameOf(calc, symbol)] : [];
  });
}

/** Works a calculator: inputs read, formulas evaluated with their uncertainty, verdict and instruction. Never throws for bad entries. */
export function evaluate(calc: Calculator, situation: Situation): Evaluation {
  const choices = effectiveChoices(calc, situation.choices);
  const inputs = readInputs(calc, situation, choices);
  const formulas = calc.formulas.filter((f) => applies(f.when, choices));
  const system = systemFor(calc, choices);
  const values = inputValues(inputs);
  const outcomes = propagate(system, values);
  const judged = judge(calc, choices, outcomes);
  const found: Found = { choices, inputs, formulas, outcomes, verdict: judged };
  const typical = typicalBehind(calc, found);
  const { instruction, cannot } = advise(calc, found, situation);
  const isOpen = judged.state === 'too close' || instruction === undefined || instruction.measureAgain === true;
  let settling: Settling | undefined | 'not asked' = isOpen ? 'not asked' : undefined;
  const verdict: Verdict = {
    ...judged,
    get settling() {
      if (settling === 'not asked') settling = settle(calc, system, values, choices, outcomes);
      return settling;
    },
  };
  return { choices, inputs, formulas, outcomes, verdict, instruction, cannot, typical };
}

function advise(calc: Calculator, found: Found, situation: Situation): Pick<Evaluation, 'instruction' | 'cannot'> {
  try {
    return { instruction: calc.action(contextFor(calc, found, situation)), cannot: undefined };
  } catch (error) {
    if (!(error instanceof Unavailable)) throw error;
    return { instruction: undefined, cannot: reasonFor(calc, found, error.symbol) };
  }
}

/** A symbol for running text: `Δh` with its subscript in plain letters. */
export function symbolText(symbol: string): string {
  const { base, sub } = symbolParts(symbol);
  return sub === '' ? base : `${base} ${sub}`;
}
