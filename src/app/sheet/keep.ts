import type { Calculator } from '../../engine/calculator';
import type { Evaluation, Situation } from '../../engine/evaluate';
import { symbolOf, unitOf } from '../../engine/evaluate';
import type { MachineEdit } from '../../machine/edit';
import type { KeptValue, Reading } from '../../machine/schema';
import { printSymbol } from './print';

type Result = Reading['results'][string];

/** What a reading keeps of an evaluation, without its id, machine and time. */
export function readingOf(calc: Calculator, evaluation: Evaluation, situation: Situation) {
  const entries: Record<string, Reading['entries'][string]> = {};
  const results: Record<string, Result> = {};
  const print = (symbol: string): string => printSymbol(calc, evaluation, situation, symbol, true) ?? '';
  for (const [symbol, state] of Object.entries(evaluation.inputs)) {
    if (!state.ok) continue;
    const { value, half, unit, origin, tool } = state;
    entries[symbol] = { value, half, unit: unit.id, origin, tool };
  }
  for (const symbol of evaluation.formulas.map(symbolOf)) {
    const outcome = evaluation.outcomes[symbol];
    const unit = unitOf(calc, evaluation, symbol, situation);
    if (!outcome?.ok || !unit) continue;
    results[symbol] = {
      value: outcome.value,
      low: outcome.low,
      high: outcome.high,
      unit: unit.id,
      text: print(symbol),
    };
  }
  return {
    entries,
    choices: evaluation.choices,
    results,
    verdict: evaluation.verdict.state,
    headline: evaluation.instruction?.sentence ?? evaluation.cannot ?? '',
    steps: evaluation.instruction?.steps ?? [],
  };
}

/** What was typed about the machine itself, to be taken over by it: values measured or marked, and options picked. */
export function learned(
  calc: Calculator,
  evaluation: Evaluation,
  picked: Readonly<Record<string, string>>,
  at: string,
): Required<Pick<MachineEdit, 'values' | 'choices'>> {
  const values: Record<string, KeptValue> = {};
  const choices: Record<string, string> = {};
  for (const [symbol, spec] of Object.entries(calc.inputs)) {
    const state = evaluation.inputs[symbol];
    if (spec.from === undefined || !state?.ok || state.kept || state.origin === 'typical') continue;
    const { value, half, unit, origin, tool } = state;
    values[spec.from] = { value, half, unit: unit.id, origin, tool, at };
  }
  for (const [name, spec] of Object.entries(calc.choices)) {
    const option = picked[name];
    if (spec.from !== undefined && option !== undefined) choices[spec.from] = option;
  }
  return { values, choices };
}
