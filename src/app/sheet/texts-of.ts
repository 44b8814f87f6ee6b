import type { Calculator } from '../../engine/calculator';

/** What a check's screen says before and besides its order: where the trade's words in it are looked up. */
export function textsOf(calc: Calculator): readonly string[] {
  return [
    ...Object.values(calc.inputs).flatMap(({ label, hint = '' }) => [label, hint]),
    ...Object.values(calc.choices).flatMap(({ label, hint = '', options }) => [
      ...[label, hint],
      ...Object.values(options).map((option) => option.label),
    ]),
    ...calc.formulas.map(({ meaning }) => meaning),
    ...calc.limits.map(({ label }) => label),
    ...[...calc.cautions, ...calc.beware, calc.proof],
  ];
}
