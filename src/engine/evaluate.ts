import type { Failure } from '../formula/outcome';
import { symbolParts } from '../formula/mathml';
import { formatNumber } from '../quantity/format';
import type { Calculator } from './calculator';
import { contextFor, unitOf, unlessUnavailable, verdictOf, type Found } from './context';
import { applies } from './spec';
import { systemFor } from './system';
import { nameOf, symbolOf } from './name';
import { instructionOf, problemText, waysOf } from './tell';
import say from './words/en';
import type { Evaluation, Situation } from './situation';
import { assumedBehind, blankReadings, contradictionIn, isAssumed, unmeasured } from './standing';
import type { Ways } from './ways';
import { judge, settle, type Verdict } from './verdict';
import { effectiveChoices, workOut } from './work';

export { effectiveChoices, nameOf, symbolOf, unitOf };
export type { Evaluation, Situation };

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

function reasonFor(calc: Calculator, found: Found, symbol: string): string {
  const outcome = found.outcomes[symbol];
  const outputs = calc.model?.outputs ?? {};
  if (outcome && !outcome.ok) {
    const { failure } = outcome;
    const byModel = failure.kind === 'missing' && failure.symbols.some((name) => Object.hasOwn(outputs, name));
    return byModel && found.modelProblem !== undefined ? found.modelProblem : explain(calc, failure);
  }
  const state = found.inputs[symbol];
  if (state && !state.ok) return state.reason;
  return say.notKnown(nameOf(calc, symbol));
}

/** Labels of what the results rest on and nobody measured. */
function typicalBehind(calc: Calculator, found: Found): string[] {
  const reached = new Set(systemFor(calc, found.choices).steps.flatMap((step) => [...step.inputs]));
  return [...reached].filter((symbol) => isAssumed(calc, found, symbol)).map((symbol) => nameOf(calc, symbol));
}

/** Inputs in force whose entry, or the machine's value, cannot be used. */
export function refusedIn({ inputs }: Pick<Evaluation, 'inputs'>): string[] {
  return Object.keys(inputs).filter((symbol) => {
    const state = inputs[symbol];
    return state?.ok === false && !state.blank;
  });
}

/** Which entry cannot be used and why; undefined where all can. */
function refusal(calc: Calculator, found: Found): string | undefined {
  const [first, ...others] = refusedIn(found);
  const state = first === undefined ? undefined : found.inputs[first];
  if (first === undefined || state?.ok !== false) return undefined;
  return say.unreadable(
    nameOf(calc, first),
    state.reason,
    others.map((symbol) => nameOf(calc, symbol)),
  );
}

/** What stands in the way of any verdict: an entry that cannot be read, a reading not taken, or entries that cannot all be right. */
function obstacleTo(calc: Calculator, found: Found, situation: Situation) {
  const refused = refusal(calc, found);
  if (refused !== undefined) return { contradiction: undefined, cannot: refused };
  const missing = unmeasured(calc, found.inputs);
  if (missing.length > 0) {
    return { contradiction: undefined, cannot: say.nothingMeasured(missing.map((symbol) => nameOf(calc, symbol))) };
  }
  const blank = blankReadings(calc, found.inputs);
  if (blank.length > 0) {
    return { contradiction: undefined, cannot: say.stillNeeded(blank.map((symbol) => nameOf(calc, symbol))) };
  }
  const contradiction = contradictionIn(calc, found, situation);
  return contradiction && { contradiction, cannot: contradiction.sentence };
}

/** Works a calculator: inputs read, formulas evaluated with their uncertainty, verdict and instruction. Never throws for bad entries. */
export function evaluate(calc: Calculator, situation: Situation): Evaluation {
  const choices = effectiveChoices(calc, situation.choices);
  const formulas = calc.formulas.filter((f) => applies(f.when, choices));
  const { inputs, values, made, outcomes } = workOut(calc, situation, choices);
  const modelProblem = made?.ok === false ? problemText(calc, made.problem, situation.mark) : undefined;
  const byLimits = { choices, inputs, formulas, outcomes, modelProblem, verdict: judge(calc, choices, outcomes) };
  const worked = { choices, inputs, formulas, outcomes, values, modelProblem };
  const typical = once(() => typicalBehind(calc, byLimits));
  const obstacle = obstacleTo(calc, byLimits, situation);
  if (obstacle) {
    const checks = byLimits.verdict.checks.map(({ limit }) => ({ limit, state: 'none' }) as const);
    const verdict: Verdict = { state: 'none', checks, settling: undefined };
    return {
      ...worked,
      verdict,
      instruction: undefined,
      trials: 0,
      ...obstacle,
      get typical() {
        return typical();
      },
    };
  }
  const judged = { ...byLimits.verdict, state: verdictOf(calc, byLimits, situation) };
  const advice = once(() => advise(calc, { ...byLimits, verdict: judged }, situation));
  const settling = once(() => {
    const { instruction } = advice();
    // A calculator that judges for itself says itself what would settle it.
    const isOpen =
      !calc.judge && (judged.state === 'too close' || instruction === undefined || instruction.measureAgain);
    return isOpen ? settle(calc, systemFor(calc, choices), values, choices, outcomes) : undefined;
  });
  const verdict: Verdict = {
    ...judged,
    get settling() {
      return settling();
    },
  };
  return {
    ...worked,
    verdict,
    contradiction: undefined,
    get typical() {
      return typical();
    },
    get instruction() {
      return advice().instruction;
    },
    get cannot() {
      return advice().cannot;
    },
    get trials() {
      return advice().trials;
    },
  };
}

/** Works something out when it is first asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

type Advice = Pick<Evaluation, 'instruction' | 'cannot' | 'trials'>;

function advise(calc: Calculator, found: Found, situation: Situation): Advice {
  const asked = new Set<string>();
  let trials = 0;
  const onTrial = (): void => void (trials += 1);
  const { instruction, cannot } = unlessUnavailable<Pick<Advice, 'instruction' | 'cannot'>>(
    () => {
      const order = calc.action(contextFor(calc, found, situation, asked, onTrial));
      const assumes = assumedBehind(calc, found, situation, order, asked);
      return { instruction: instructionOf(calc, { ...order, ...assumes }, situation.mark), cannot: undefined };
    },
    (symbol) => ({ instruction: undefined, cannot: reasonFor(calc, found, symbol) }),
  );
  return { instruction, cannot, trials };
}

/** The calculator's ways side by side; undefined where it has none, or cannot compare them yet. */
export function compareWays(calc: Calculator, evaluation: Evaluation, situation: Situation): Ways | undefined {
  if (refusedIn(evaluation).length > 0 || evaluation.contradiction) return undefined;
  return unlessUnavailable(
    () => {
      const compared = calc.ways?.(contextFor(calc, evaluation, situation));
      return compared && waysOf(calc, compared, situation.mark);
    },
    () => undefined,
  );
}

/** A symbol for running text: `Δh` with its subscript in plain letters. */
export function symbolText(symbol: string): string {
  const { base, sub } = symbolParts(symbol);
  return sub === '' ? base : `${base} ${sub}`;
}
