import type { InputSpec } from '../../engine/calculator';
import { inSentence, nameOf } from '../../engine/evaluate';
import type { System } from '../../formula/system';
import { COVERAGE } from '../../formula/outcome';
import { solve } from '../../formula/solve';
import { formatMeasured, formatValue } from '../../quantity/format';
import { toTyped } from '../../quantity/parse';
import { toSi, type Unit } from '../../quantity/unit';
import type { OnBench } from './bench';
import say from './words/en';

/** A value of the input asked for. */
export interface Root {
  /** As printed, with its uncertainty. */
  readonly text: string;
  /** As a person would type it, in `unit`. */
  readonly typed: string;
  readonly unit: Unit;
}

/** What the other way round gives: values to put in, and a sentence where there are none or they need one. */
export interface Reversed {
  readonly sentence: string;
  readonly roots: readonly Root[];
}

/** What is asked: which value of an input gives a result its value. */
export interface Asked {
  readonly system: System;
  /** Symbols that the result hangs on. */
  readonly reach: ReadonlySet<string>;
  readonly result: { readonly symbol: string; readonly name: string };
  /** The result's value, SI, and the unit it was typed in. */
  readonly value: number;
  readonly valueUnit: Unit;
  readonly input: string;
  readonly spec: InputSpec;
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= 1e-6;

/** Looks for the values of an input that give a result its value, the other inputs as they stand on the bench. */
export function reversed(on: OnBench, asked: Asked): Reversed {
  const { system, reach, result, value, valueUnit, input, spec } = asked;
  const { mark } = on.bench.situation();
  const { values: inputs, inputs: states } = on.bench.evaluation();
  const named = (symbol: string): string => inSentence(nameOf(on.calculator, symbol));
  const missing = [...reach].filter((symbol) => symbol !== input && !inputs[symbol]);
  if (missing.length > 0) return { sentence: say.ask.missing(missing.map(named)), roots: [] };
  const state = states[input];
  const unit = state?.ok ? state.unit : spec.measure.unit;
  const [low, high] = spec.range;
  const range = [toSi(low, spec.measure.unit), toSi(high, spec.measure.unit)] as const;
  const found = solve(system, inputs, { unknown: input, target: result.symbol, value, range });
  const name = named(input);
  const resultName = inSentence(result.name);
  const [from, to] = [formatValue(range[0], 0, unit, { mark }), formatValue(range[1], 0, unit, { mark })];
  if (!found.ok) {
    if (found.reason === 'no result') return { sentence: say.ask.noResult(name, from, to, resultName), roots: [] };
    const least = formatValue(found.low, 0, valueUnit, { mark });
    const most = formatValue(found.high, 0, valueUnit, { mark });
    return { sentence: say.ask.outOfReach(name, [from, to], resultName, least, most), roots: [] };
  }
  const roots = found.roots.map((root) => ({
    text: formatMeasured(root.value, COVERAGE * (root.u ?? 0), unit, { mark }),
    typed: toTyped(root.value, unit, mark, 8),
    unit,
  }));
  const broken = spec.measure.kind.whole && found.roots.some((root) => !isWhole(root.value));
  return { sentence: broken ? say.ask.whole : '', roots };
}
