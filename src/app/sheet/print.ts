import type { Calculator } from '../../engine/calculator';
import { unitOf, type Evaluation, type Situation } from '../../engine/evaluate';
import type { InputState } from '../../engine/entry';
import { expanded, type Known } from '../../formula/outcome';
import { formatMeasured, formatValue } from '../../quantity/format';
import { temperature } from '../../quantity/kinds';
import { toolById } from '../../reference/tools';
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

/** A symbol's best value as it stands in a formula: temperatures in kelvin, which the formulas reckon in. */
export function printPutIn(
  calc: Calculator,
  evaluation: Evaluation,
  situation: Situation,
  symbol: string,
): string | undefined {
  const unit = unitOf(calc, evaluation, symbol, situation);
  const value = valueOf(evaluation, symbol);
  if (!unit || unit.offset === 0 || value === undefined) return printSymbol(calc, evaluation, situation, symbol, false);
  const result = evaluation.outcomes[symbol];
  return formatValue(value, result?.ok ? expanded(result) : 0, temperature.K.unit, { mark: situation.mark });
}

/** Best value of a symbol, SI. */
export function valueOf(evaluation: Evaluation, symbol: string): number | undefined {
  const state = evaluation.inputs[symbol];
  if (state?.ok) return state.value;
  const result = evaluation.outcomes[symbol];
  return result?.ok ? result.value : undefined;
}

/** Where an input's value comes from and how sure it is: "caliper, ± 0.030 mm". */
export function printOrigin(state: InputState, mark: DecimalMark): string {
  if (!state.ok) return state.blank ? say.origin.blank : '';
  const half = state.half > 0 ? `± ${formatValue(state.half, state.half, { ...state.unit, offset: 0 }, { mark })}` : '';
  const kept = state.kept ? say.origin.machine : '';
  const source =
    state.origin === 'typical'
      ? say.origin.typical
      : state.origin === 'nameplate'
        ? say.origin.marked
        : (toolById(state.tool)?.name ?? '');
  const parts = [kept, source, half].filter((part) => part !== '');
  return parts.length > 0 ? say.origin.parts(parts) : say.origin.entered;
}
