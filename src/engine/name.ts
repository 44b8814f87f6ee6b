import type { Measure } from '../quantity/unit';
import type { Calculator, FormulaSpec } from './calculator';
import { applies, type Choices } from './spec';

/** The symbol a formula defines. */
export function symbolOf(spec: FormulaSpec): string {
  return spec.text.split('=', 1)[0]?.trim() ?? '';
}

/** What a symbol is called and what it is measured in. */
export interface Named {
  readonly name: string;
  readonly measure: Measure;
}

/**
 * An input by its label, a result by its meaning; undefined for a symbol that the calculator has not.
 * @param choices the options in force, since one symbol may mean one thing under one and another under another; without
 * them its first meaning
 */
export function namedBy(calc: Calculator, symbol: string, choices?: Choices): Named | undefined {
  const input = calc.inputs[symbol];
  if (input) return { name: input.label, measure: input.measure };
  const result =
    calc.formulas.find((f) => symbolOf(f) === symbol && (!choices || applies(f.when, choices))) ??
    calc.model?.outputs[symbol];
  return result && { name: result.meaning, measure: result.measure };
}

/** A person's name for a symbol: label of an input, meaning of a result. */
export function nameOf(calc: Calculator, symbol: string, choices?: Choices): string {
  return namedBy(calc, symbol, choices)?.name ?? symbol;
}
