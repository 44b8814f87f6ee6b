import type { Calculator, InputSpec } from '../../engine/calculator';
import { unitOf, type Evaluation, type Situation } from '../../engine/evaluate';
import type { InputState } from '../../engine/entry';
import { picturesOf, sideName } from '../../engine/signs';
import { expanded } from '../../formula/outcome';
import { formatValue } from '../../quantity/format';
import { temperature } from '../../quantity/kinds';
import { toolById } from '../../reference/tools';
import type { DecimalMark } from '../../quantity/parse';
import { printSymbol } from '../desk/print-result';
import say from './words/en';

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

/**
 * An input's value as its line shows it: where two pictures stand for the sign, its size, which the origin's words go with.
 * @returns undefined where it has none
 */
export function printInput(
  spec: InputSpec | undefined,
  state: InputState | undefined,
  mark: DecimalMark,
): string | undefined {
  if (!state?.ok || !spec) return undefined;
  return formatValue(state.value, 0, state.unit, { mark, magnitude: picturesOf(spec) !== undefined });
}

/** Best value of a symbol, SI. */
export function valueOf(evaluation: Evaluation, symbol: string): number | undefined {
  const state = evaluation.inputs[symbol];
  if (state?.ok) return state.value;
  const result = evaluation.outcomes[symbol];
  return result?.ok ? result.value : undefined;
}

/** What the picture of a value's sign shows, in words; empty where there are no pictures, or nothing is to either side. */
export function sideWords(spec: InputSpec, value: number): string {
  const pictures = picturesOf(spec);
  return pictures && value !== 0 ? sideName(pictures[value > 0 ? 'plus' : 'minus']) : '';
}

/** Where an input's value comes from and how sure it is: "caliper, ± 0.030 mm". */
export function printOrigin(spec: InputSpec, state: InputState, mark: DecimalMark): string {
  if (!state.ok) return state.blank ? say.origin.blank : '';
  const half = state.half > 0 ? `± ${formatValue(state.half, state.half, { ...state.unit, offset: 0 }, { mark })}` : '';
  const kept = state.kept ? say.origin.machine : '';
  const source =
    state.origin === 'typical'
      ? say.origin.typical
      : state.origin === 'nameplate'
        ? say.origin.marked
        : (toolById(state.tool)?.name ?? '');
  const side = sideWords(spec, state.value);
  const parts = [side, kept, source, half].filter((part) => part !== '');
  return parts.length > (side === '' ? 0 : 1)
    ? say.origin.parts(parts)
    : say.origin.parts([...parts, say.origin.entered]);
}
