import type { InputSpec } from '../../engine/calculator';
import { inSentence, nameOf } from '../../engine/evaluate';
import type { System } from '../../formula/system';
import { COVERAGE } from '../../formula/outcome';
import { solve, type Solution } from '../../formula/solve';
import { isStepped, solveStepped, type SteppedSolution, type Stretch } from '../../formula/stepped';
import { formatMeasured, formatValue } from '../../quantity/format';
import { toTyped, type DecimalMark } from '../../quantity/parse';
import { fromSi, toSi, type Unit } from '../../quantity/unit';
import type { OnBench } from './bench';
import say from './words/en';

/** Answers offered of a result that moves in steps: the nearest to what is usual. */
const OFFERED = 6;

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

/** What the input usually is: its typical value, else what stands in its field, else the middle of its range. SI. */
function usualOf({ spec }: Asked, value: number | undefined, [low, high]: readonly [number, number]): number {
  return spec.typical === undefined ? (value ?? (low + high) / 2) : toSi(spec.typical, spec.measure.unit);
}

/** A stretch of answers as printed, and the value of it that would be put in: the usual one, else its middle. */
function answerOf({ low, high }: Stretch, usual: number, unit: Unit, mark: DecimalMark): Root {
  const print = (si: number): string => formatValue(si, 0, unit, { mark });
  if (low === high || print(low) === print(high)) {
    const middle = (low + high) / 2;
    return { text: print(middle), typed: toTyped(middle, unit, mark, 8), unit };
  }
  const inside = usual >= low && usual <= high ? usual : shortest(low, high, unit);
  return { text: say.ask.between(print(low), print(high)), typed: toTyped(inside, unit, mark, 8), unit };
}

/** The number with the fewest digits between two, as a person would set it. SI. */
function shortest(low: number, high: number, unit: Unit): number {
  const middle = fromSi((low + high) / 2, unit);
  for (let digits = 1; digits < 12; digits += 1) {
    const short = toSi(Number(middle.toPrecision(digits)), unit);
    if (short >= low && short <= high) return short;
  }
  return (low + high) / 2;
}

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
  const question = { unknown: input, target: result.symbol, value, range };
  const stepped = isStepped(system, input, result.symbol);
  const usual = usualOf(asked, state?.ok ? state.value : undefined, range);
  const found: Solution | SteppedSolution = stepped
    ? solveStepped(system, inputs, { ...question, near: usual, most: OFFERED, whole: spec.measure.kind.whole })
    : solve(system, inputs, question);
  const name = named(input);
  const resultName = inSentence(result.name);
  const [from, to] = [formatValue(range[0], 0, unit, { mark }), formatValue(range[1], 0, unit, { mark })];
  if (!found.ok) {
    if (found.reason === 'no result') return { sentence: say.ask.noResult(name, from, to, resultName), roots: [] };
    const least = formatValue(found.low, 0, valueUnit, { mark });
    const most = formatValue(found.high, 0, valueUnit, { mark });
    return { sentence: say.ask.outOfReach(name, [from, to], resultName, least, most), roots: [] };
  }
  if ('stretches' in found) {
    const sentence = found.more ? say.ask.more(formatValue(usual, 0, unit, { mark })) : '';
    return { sentence, roots: found.stretches.map((one) => answerOf(one, usual, unit, mark)) };
  }
  const roots = found.roots.map((root) => ({
    text: formatMeasured(root.value, COVERAGE * (root.u ?? 0), unit, { mark }),
    typed: toTyped(root.value, unit, mark, 8),
    unit,
  }));
  const broken = spec.measure.kind.whole && found.roots.some((root) => !isWhole(root.value));
  return { sentence: broken ? say.ask.whole : '', roots };
}
