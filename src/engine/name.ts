import type { Calculator, FormulaSpec } from './calculator';

/** The symbol a formula defines. */
export function symbolOf(spec: FormulaSpec): string {
  return spec.text.split('=', 1)[0]?.trim() ?? '';
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
