import type { Known } from '../formula/outcome';
import { expanded } from '../formula/outcome';
import type { Measure, Unit } from '../quantity/unit';
import type { Asking, Calculator } from './calculator';
import type { Evaluation, Situation } from './situation';
import { symbolOf } from './name';
import type { Amount } from './order';
import { readAgain } from './entry';
import type { VerdictState } from './spec';
import { judge, type Verdict } from './verdict';
import { workOut } from './work';

/** Thrown where an action asks for what is not known: it ends, and the screen says why. */
class Unavailable extends Error {
  constructor(readonly symbol: string) {
    super(`${symbol} is not available`);
  }
}

/** What is made of the values there are, or what stands for it where one is not known. */
export function unlessUnavailable<T>(make: () => T, otherwise: (symbol: string) => T): T {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof Unavailable)) throw error;
    return otherwise(error.symbol);
  }
}

/** The verdict: the calculator's own where it gives one, else that of its limits. */
export function verdictOf(calc: Calculator, found: Found, situation: Situation): VerdictState {
  const { judge: own } = calc;
  if (!own) return found.verdict.state;
  return unlessUnavailable(
    () => own(contextFor(calc, found, situation)),
    () => 'none',
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

/** What has been worked out when an action, a judgement or a comparison is asked. */
export type Found = Pick<Evaluation, 'choices' | 'inputs' | 'formulas' | 'outcomes' | 'modelProblem'> & {
  readonly verdict: Omit<Verdict, 'settling'>;
};

/**
 * What the parts of a calculator may ask of an evaluation.
 * @param asked takes note of every symbol whose value is taken
 * @param onTrial told of every change that is tried
 */
export function contextFor(
  calc: Calculator,
  found: Found,
  situation: Situation,
  asked?: Set<string>,
  onTrial?: () => void,
): Asking {
  const known = (symbol: string): Known | undefined => {
    const outcome = found.outcomes[symbol];
    return outcome?.ok ? outcome : undefined;
  };
  const valueOf = (symbol: string): number => {
    const state = found.inputs[symbol];
    if (state?.ok) return state.value;
    const result = known(symbol);
    if (!result) throw new Unavailable(symbol);
    return result.value;
  };
  const number = (symbol: string): number => {
    asked?.add(symbol);
    return valueOf(symbol);
  };
  const amountOf = (symbol: string): Amount => {
    const unit = unitOf(calc, found, symbol, situation);
    const measure = measureOf(calc, found, symbol);
    if (!unit || !measure) throw new Unavailable(symbol);
    const result = known(symbol);
    const state = found.inputs[symbol];
    const width = result ? expanded(result) : state?.ok ? state.half : 0;
    return { si: valueOf(symbol), width, kind: measure.kind.id, unit: unit.id };
  };
  return {
    number,
    need: valueOf,
    known,
    quantity: (symbol) => {
      asked?.add(symbol);
      return amountOf(symbol);
    },
    aside: amountOf,
    has: (symbol) => found.inputs[symbol]?.ok === true || known(symbol) !== undefined,
    choice: (name) => found.choices[name] ?? calc.choices[name]?.typical ?? '',
    verdict: found.verdict.state,
    lacking: (symbol) => {
      const outcome = found.outcomes[symbol];
      if (!outcome || outcome.ok || outcome.failure.kind !== 'missing') return [];
      return outcome.failure.symbols;
    },
    check: (of) => stateOf(found.verdict.checks, of),
    after: (changes, of) => {
      onTrial?.();
      return stateAfter(calc, found, situation, changes, of);
    },
  };
}

/** State of the limits of one result: the first of them. */
const stateOf = (checks: Verdict['checks'], of: string): VerdictState =>
  checks.find((check) => check.limit.of === of)?.state ?? 'none';

/** The verdict once these inputs read so, each with the doubt that its tool has there; or the state of one result's limits. */
function stateAfter(
  calc: Calculator,
  found: Found,
  situation: Situation,
  changes: Readonly<Partial<Record<string, number>>>,
  of?: string,
): VerdictState {
  const read: Record<string, { readonly value: number; readonly half: number }> = { ...situation.read };
  for (const [symbol, value] of Object.entries(changes)) {
    const spec = calc.inputs[symbol];
    if (spec && value !== undefined) read[symbol] = readAgain(spec, found.inputs[symbol], value);
  }
  const after = { ...situation, read };
  const { inputs, outcomes } = workOut(calc, after, found.choices);
  const verdict = judge(calc, found.choices, outcomes, of);
  if (of !== undefined) return stateOf(verdict.checks, of);
  return verdictOf(calc, { ...found, inputs, outcomes, verdict }, after);
}
