import { applies, type Calculator } from '../../engine/calculator';
import { inSentence, unitOf, type Evaluation, type Situation } from '../../engine/evaluate';
import { printCitation } from '../../reference/citation';
import { printKnown, printSymbol } from '../desk/print-result';
import { printInput, printOrigin } from './print';
import say from './words/en';

/** A row of the card: what, its value as printed, and where that comes from; no origin for an option. */
export interface CardRow {
  readonly label: string;
  readonly value: string;
  readonly origin: string;
}

function limitRows(calc: Calculator, evaluation: Evaluation, situation: Situation): readonly CardRow[] {
  const print = (symbol: string | undefined): string | undefined =>
    symbol === undefined ? undefined : (printSymbol(calc, evaluation, situation, symbol, false) ?? '');
  return evaluation.verdict.checks.flatMap(({ limit }) => {
    const result = evaluation.outcomes[limit.of];
    const unit = unitOf(calc, evaluation, limit.of, situation);
    if (!result?.ok || !unit) return [];
    const origin = say.card.against({
      min: print(limit.min),
      max: print(limit.max),
      symmetric: limit.symmetric === true,
      source: inSentence(printCitation(limit.cite)),
    });
    return [{ label: limit.label, value: printKnown(result, unit, situation.mark), origin }];
  });
}

function optionRows(calc: Calculator, evaluation: Evaluation): readonly CardRow[] {
  return Object.entries(calc.choices).flatMap(([name, spec]) => {
    const option = evaluation.choices[name];
    if (!applies(spec.when, evaluation.choices) || option === undefined) return [];
    return [{ label: spec.label, value: spec.options[option]?.label ?? option, origin: '' }];
  });
}

/** The readings; what seldom changes stands on the card only where it was entered. */
function inputRows(calc: Calculator, evaluation: Evaluation, situation: Situation): readonly CardRow[] {
  return Object.entries(calc.inputs).flatMap(([symbol, spec]) => {
    const state = evaluation.inputs[symbol];
    if (!state?.ok || (spec.seldom && state.origin === 'typical')) return [];
    const value = printInput(spec, state, situation.mark) ?? '';
    return [{ label: spec.label, value, origin: printOrigin(spec, state, situation.mark) }];
  });
}

/** The rows of a check's card: results against their limits, options, readings. */
export function cardRows(calc: Calculator, evaluation: Evaluation, situation: Situation): readonly CardRow[] {
  return [
    ...limitRows(calc, evaluation, situation),
    ...optionRows(calc, evaluation),
    ...inputRows(calc, evaluation, situation),
  ];
}
