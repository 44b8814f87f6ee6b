import type { Calculator } from '../../engine/calculator';
import { unitOf, type Evaluation, type Situation } from '../../engine/evaluate';
import { expanded, type Known } from '../../formula/outcome';
import { formatMeasured, formatValue } from '../../quantity/format';
import type { DecimalMark } from '../../quantity/parse';
import type { Unit } from '../../quantity/unit';
import say from './words/en';

const LEANING = 0.2;

/** A result with its uncertainty; an interval where the distribution leans to one side. */
export function printKnown(result: Known, unit: Unit, mark: DecimalMark): string {
  const width = expanded(result);
  const below = result.value - result.low;
  const above = result.high - result.value;
  if (width > 0 && Math.abs(above - below) > LEANING * (above + below)) {
    const print = (value: number): string => formatValue(value, width, unit, { mark });
    return say.leaning(print(result.value), print(result.low), print(result.high));
  }
  return formatMeasured(result.value, width, unit, { mark });
}

/** A symbol's value as printed, with its half-width or uncertainty when `full`; undefined where there is none. */
export function printSymbol(
  calc: Calculator,
  evaluation: Evaluation,
  situation: Situation,
  symbol: string,
  full: boolean,
): string | undefined {
  const unit = unitOf(calc, evaluation, symbol, situation);
  if (!unit) return undefined;
  const { mark } = situation;
  const state = evaluation.inputs[symbol];
  if (state?.ok)
    return full ? formatMeasured(state.value, state.half, unit, { mark }) : formatValue(state.value, 0, unit, { mark });
  const result = evaluation.outcomes[symbol];
  if (!result?.ok) return undefined;
  return full ? printKnown(result, unit, mark) : formatValue(result.value, expanded(result), unit, { mark });
}
