import type { Calculator } from '../../engine/calculator';
import type { Evaluation } from '../../engine/evaluate';
import type { MachineEdit } from '../../machine/edit';
import type { KeptValue } from '../../machine/schema';

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
