import { buildSystem, type System } from '../formula/system';
import type { Calculator } from './calculator';
import { applies, type Choices, type LimitData } from './spec';
/** Names of the hidden results behind a limit: how far beyond it lies, above zero when beyond. */
export function excessNames(index: number): { readonly above: string; readonly below: string; readonly under: string } {
  return { above: `excess_${index}_above`, below: `excess_${index}_below`, under: `excess_${index}_under` };
}

function excessFormulas(limit: LimitData, index: number): string[] {
  const { above, below, under } = excessNames(index);
  const texts: string[] = [];
  if (limit.max !== undefined) texts.push(`${above} = ${limit.of} - ${limit.max}`);
  if (limit.max !== undefined && limit.symmetric) texts.push(`${below} = 0 - ${limit.of} - ${limit.max}`);
  if (limit.min !== undefined) texts.push(`${under} = ${limit.min} - ${limit.of}`);
  return texts;
}

const systems = new WeakMap<Calculator, Map<string, System>>();

/**
 * The system of formulas in force under these options, with one hidden formula per limit so that a margin is
 * propagated whole (value and limit may share inputs).
 * @throws FormulaError for a mistake in the calculator
 */
export function systemFor(calc: Calculator, choices: Choices): System {
  const key = Object.keys(calc.choices)
    .map((name) => choices[name] ?? '')
    .join('|');
  const cached = systems.get(calc) ?? new Map<string, System>();
  systems.set(calc, cached);
  const found = cached.get(key);
  if (found) return found;
  // Cells of a table reach the formulas through the model alone.
  const inputs = Object.keys(calc.inputs).filter((name) => {
    const spec = calc.inputs[name];
    return spec?.cell === undefined && applies(spec?.when, choices);
  });
  const names = [...inputs, ...Object.keys(calc.model?.outputs ?? {})];
  const texts = calc.formulas.filter((f) => applies(f.when, choices)).map((f) => f.text);
  const excess = calc.limits.flatMap((limit, i) => (applies(limit.when, choices) ? excessFormulas(limit, i) : []));
  const system = buildSystem([...texts, ...excess], names);
  cached.set(key, system);
  return system;
}
