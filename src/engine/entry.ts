import { fromSi, toSi, unitById, type Unit } from '../quantity/unit';
import { parseQuantity, type DecimalMark } from '../quantity/parse';
import { formatValue } from '../quantity/format';
import { AS_MARKED, toolById } from '../reference/tools';
import type { Choices, ChoiceSpec, InputSpec, OptionSpec } from './calculator';
import { picturesOf, sideOf, sizeOf } from './signs';
import { beyondTool, doubtWith, shapeOf, usualTool, type Doubt } from './tooled';
import say from './words/en';

/** A field as it stands: the text, the unit meant where none is typed, and the tool it was read with. */
export interface Entry {
  readonly text: string;
  readonly unit: string;
  readonly tool: string;
}

export const isSameEntry = (a: Entry | undefined, b: Entry | undefined): boolean =>
  a?.text === b?.text && a?.unit === b?.unit && a?.tool === b?.tool;

export type Origin = 'typical' | 'nameplate' | 'measured';

/** A value a machine keeps. SI. */
export interface KeptValue {
  readonly value: number;
  readonly half: number;
  readonly unit: string;
  readonly origin: Origin;
  readonly tool: string;
  /** ISO 8601. */
  readonly at: string;
  /** Place in the order of the machine's changes; none where it was not counted. */
  readonly ordinal?: number;
}

/** An input that can be used. SI. */
export interface InputUsed {
  readonly ok: true;
  readonly value: number;
  readonly half: number;
  readonly unit: Unit;
  readonly origin: Origin;
  readonly tool: string;
  /** From the machine, not typed now. */
  readonly kept: boolean;
  /** How its doubt is spread; rectangular where nothing stands here. */
  readonly shape?: Doubt['shape'];
  /** What is to be said of the tool named for it, which cannot have read it. */
  readonly beyondTool?: string;
}

/** An input that cannot, and the sentence to show beside it. `blank` when nothing was entered at all. */
export interface Rejected {
  readonly ok: false;
  readonly blank: boolean;
  readonly reason: string;
}

export type InputState = InputUsed | Rejected;

/** True when an input has no typical value under any option: only a reading can fill it. */
export function mustMeasure(symbol: string, spec: InputSpec, specs: Readonly<Record<string, ChoiceSpec>>): boolean {
  const options = Object.values(specs).flatMap((choice) => Object.values<OptionSpec>(choice.options));
  return spec.typical === undefined && !options.some((option) => option.set && symbol in option.set);
}

/** A typical value and its half-width, in the input's unit. */
interface Typical {
  readonly value: number;
  readonly spread: number;
}

/** The option that brings its own typical value, or the input's own. In the input's unit. */
function typicalOf(
  symbol: string,
  spec: InputSpec,
  specs: Readonly<Record<string, ChoiceSpec>>,
  choices: Choices,
): Typical | undefined {
  const spreadOf = (value: number): number => spec.spread ?? (spec.differs ?? 0) * Math.abs(value);
  for (const [name, choice] of Object.entries(specs)) {
    const set = choice.options[choices[name] ?? choice.typical]?.set?.[symbol];
    if (typeof set === 'number') return { value: set, spread: spreadOf(set) };
    if (set) return { value: set[0], spread: set[1] };
  }
  return spec.typical === undefined ? undefined : { value: spec.typical, spread: spreadOf(spec.typical) };
}

/** Why a value, or a half-width wider than the whole range, cannot be used; undefined where it can. SI. */
function outsideRange(
  value: number,
  half: number,
  spec: InputSpec,
  unit: Unit,
  mark: DecimalMark,
): Rejected | undefined {
  const [low, high] = spec.range.map((end) => toSi(end, spec.measure.unit));
  if (low === undefined || high === undefined) return undefined;
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
  const print = (si: number): string => formatValue(si, 0, unit, { mark });
  if (value >= low - slack && value <= high + slack) {
    if (half <= high - low) return undefined;
    return { ok: false, blank: false, reason: say.tooWide(print(low), print(high)) };
  }
  const reason = value < low ? say.below : say.above;
  return { ok: false, blank: false, reason: reason(print(value), print(low), print(high)) };
}

/** Doubt and origin of a typed value: ± wins over the tool, the tool over the input's usual spread. SI. */
function provenance(
  value: number,
  typedHalf: number | undefined,
  spec: InputSpec,
  entry: Entry,
  typical: Typical | undefined,
  choices: Choices,
): Doubt & { readonly origin: Origin } {
  const marked = entry.tool === AS_MARKED;
  const origin: Origin = marked ? 'nameplate' : 'measured';
  if (typedHalf !== undefined) return { half: typedHalf, origin, shape: 'rectangular' };
  if (marked || spec.measure.kind.whole) return { half: 0, origin, shape: 'rectangular' };
  const tool = toolById(entry.tool);
  if (tool?.kind === spec.measure.kind.id) return { ...doubtWith(tool, spec, value, choices), origin };
  return { half: usualSpread(value, spec, typical), origin, shape: 'rectangular' };
}

/**
 * The typical value's doubt, carried over to a typed one: in proportion for a quantity that is never below zero (a tenth of
 * the typical stiffness is not known to ten times itself), as it stands otherwise. SI.
 */
function usualSpread(value: number, spec: InputSpec, typical: Typical | undefined): number {
  if (spec.differs !== undefined) return 0;
  const { unit } = spec.measure;
  const spread = typical?.spread ?? spec.spread ?? 0;
  // A spread wider than the value itself is no share of it.
  const isShare = typical !== undefined && typical.value > 0 && typical.spread <= typical.value;
  const proportional = isShare && spec.range[0] >= 0 && unit.offset === 0;
  return proportional ? (spread / typical.value) * value : spread * unit.factor;
}

const shaped = (shape: Doubt['shape']): Pick<InputUsed, 'shape'> => (shape === 'rectangular' ? {} : { shape });

function typedState(
  entry: Entry,
  spec: InputSpec,
  unit: Unit,
  typical: Typical | undefined,
  choices: Choices,
  mark: DecimalMark,
): InputState {
  const typed = parseQuantity(entry.text, spec.measure.kind, unit, mark);
  if (!typed.ok) return { ok: false, blank: false, reason: typed.reason };
  const pictures = picturesOf(spec);
  if (pictures && typed.value !== 0 && sideOf(entry.text) === undefined) {
    return { ok: false, blank: false, reason: say.pickSide(say.signs[pictures.plus], say.signs[pictures.minus]) };
  }
  const { half, origin, shape } = provenance(typed.value, typed.half, spec, entry, typical, choices);
  const outside = outsideRange(typed.value, half, spec, typed.unit, mark);
  if (outside) return outside;
  const said =
    typed.half === undefined ? beyondTool(entry.tool, spec, typed.value, choices, typed.unit, mark) : undefined;
  const used = {
    ok: true,
    value: typed.value,
    half,
    unit: typed.unit,
    origin,
    tool: entry.tool,
    kept: false,
    ...shaped(shape),
  } as const;
  return said === undefined ? used : { ...used, beyondTool: said };
}

/** What one field contributes: the typed value, else the machine's, else the typical one; or why there is none. */
export function readEntry(
  symbol: string,
  spec: InputSpec,
  entry: Entry | undefined,
  kept: KeptValue | undefined,
  specs: Readonly<Record<string, ChoiceSpec>>,
  choices: Choices,
  mark: DecimalMark,
): InputState {
  const typical = typicalOf(symbol, spec, specs, choices);
  const unit = unitById(spec.measure.kind, entry?.unit ?? kept?.unit ?? '') ?? spec.measure.unit;
  const pictures = picturesOf(spec);
  // A side picked and no size yet is nothing entered.
  if (entry && (pictures ? sizeOf(entry.text) : entry.text).trim() !== '')
    return typedState(entry, spec, unit, typical, choices, mark);
  if (kept) {
    const { value, half, origin, tool } = kept;
    const outside = outsideRange(value, half, spec, unit, mark);
    if (outside) return { ...outside, reason: say.keptDoesNotFit(outside.reason) };
    return {
      ok: true,
      value,
      half,
      unit,
      origin,
      tool,
      kept: true,
      ...shaped(shapeOf(spec, tool, value, half, choices)),
    };
  }
  if (!typical) return { ok: false, blank: true, reason: say.enter(spec.label) };
  return {
    ok: true,
    value: toSi(typical.value, spec.measure.unit),
    half: typical.spread * spec.measure.unit.factor,
    unit,
    origin: 'typical',
    tool: '',
    kept: false,
  };
}

/** A reading given as numbers (SI) in place of an entry, as a tool would have it. */
export function readAsGiven(
  given: { readonly value: number; readonly half: number },
  spec: InputSpec,
  mark: DecimalMark,
  choices: Choices = {},
): InputState {
  const { value, half } = given;
  const { unit } = spec.measure;
  const outside = outsideRange(value, half, spec, unit, mark);
  if (outside) return outside;
  const tool = spec.tool ?? '';
  const shape = shaped(shapeOf(spec, tool, value, half, choices));
  return { ok: true, value, half, unit, origin: 'measured', tool, kept: false, ...shape };
}

/** Another value of an input, with the doubt that its tool has there, or else the one it has now. SI. */
export function readAgain(
  spec: InputSpec,
  was: InputState | undefined,
  value: number,
  choices: Choices = {},
): { readonly value: number; readonly half: number } {
  const half = was?.ok ? was.half : 0;
  const tool = toolById(spec.tool ?? '');
  if (!was?.ok || tool?.kind !== spec.measure.kind.id) return { value, half };
  const isTools = Math.abs(doubtWith(tool, spec, was.value, choices).half - half) <= 1e-9 * half;
  return { value, half: isTools ? doubtWith(tool, spec, value, choices).half : half };
}

/** The nearest of 1, 2, 5 times a power of ten; what has at most two digits already stays. */
function roundStep(x: number): number {
  if (Math.abs(x - Number(x.toPrecision(2))) < 1e-9 * x) return x;
  const decade = 10 ** Math.floor(Math.log10(x));
  const digit = [1, 2, 5, 10].reduce((best, d) => (Math.abs(x / decade - d) < Math.abs(x / decade - best) ? d : best));
  return digit * decade;
}

/** The step of one nudge, in SI: a division of the tool, rounded in the unit shown; else one percent of the value to one digit. */
export function nudgeStep(spec: InputSpec, tool: string, value: number, unit: Unit): number {
  if (spec.measure.kind.whole) return 1;
  const found = toolById(tool) ?? usualTool(spec, {});
  if (found?.kind === spec.measure.kind.id) return roundStep(found.division / unit.factor) * unit.factor;
  const shown = Math.abs(fromSi(value, unit)) || Math.abs(spec.typical ?? 1) || 1;
  return 10 ** Math.floor(Math.log10(shown) - 1) * unit.factor;
}
