import { buildSystem, type System } from '../formula/system';
import type { InputValue, Known } from '../formula/outcome';
import type { DecimalMark } from '../quantity/parse';
import type { Measure } from '../quantity/unit';
import type { Citation } from '../reference/citation';
import type { Topic } from './topics';
import type { Ways } from './ways';

/** Present only under some options: `{ drive: 'belt' }` or `{ end: ['fixed', 'pinned'] }`. */
export type When = Readonly<Record<string, string | readonly string[]>>;

/** What the phone itself can measure: the note of a plucked belt, the ridges in a photo, a slope. */
export type PhoneInstrument = 'note' | 'ridges' | 'slope';

export interface InputSpec {
  readonly label: string;
  readonly measure: Measure;
  /** Used, and marked as typical, until something is entered. In `measure.unit`, as are spread and range. */
  readonly typical?: number;
  /** Half-width of the typical value; also of a typed value that no tool or ± gives one. */
  readonly spread?: number;
  /** Where the typical value comes from. */
  readonly basis?: Citation;
  readonly range: readonly [number, number];
  /** Id of the tool it is usually read with. */
  readonly tool?: string;
  /** Where a machine keeps it: `z.lead`. */
  readonly from?: string;
  /** May be negative: the field shows a sign key. Says what positive means in the label. */
  readonly signed?: boolean;
  /** How to take it, in one sentence. */
  readonly hint?: string;
  /** Folded away on the sheet: the typical value serves nearly always. */
  readonly seldom?: boolean;
  /** Set by a standard or by the person, not a thing to measure: results do not rest on it as on a typical value. */
  readonly decided?: boolean;
  /** May stay empty: the verdict does not need it. */
  readonly optional?: boolean;
  /** An instrument of the phone that can take it. */
  readonly phone?: PhoneInstrument;
  readonly when?: When;
  /** Its cell, where it stands in a table of readings. */
  readonly cell?: { readonly table: string; readonly line: number; readonly column: string };
}

/** Readings of which there are as many as the person takes: points of a bed, moments of a heating curve. */
export interface TableSpec {
  readonly label: string;
  /** What one line is: `Point`. */
  readonly line: string;
  /** Headings, by column. */
  readonly columns: Readonly<Record<string, string>>;
  readonly least: number;
  readonly hint: string;
  /** Column that a stopwatch above the table fills, one line for each tap. */
  readonly stopwatch?: string;
  /** Fills columns by a rule: each returns a line's cells in SI, or a sentence why it cannot. */
  readonly presets?: Readonly<
    Record<
      string,
      (
        value: (symbol: string) => number | undefined,
      ) => readonly Readonly<Record<string, number>>[] | { readonly reason: string }
    >
  >;
}

/** A quantity that a model works out of the readings, for the formulas to go on with. */
export interface OutputSpec {
  readonly meaning: string;
  readonly measure: Measure;
  /** The governing equation, in words and signs: what the model solves. */
  readonly equation: string;
  readonly cite: Citation;
}

export type ModelResult =
  | { readonly ok: true; readonly values: Readonly<Record<string, InputValue>> }
  | { readonly ok: false; readonly reason: string };

/**
 * What a formula cannot carry: a fit, a table. Its outputs must be uncorrelated, each with its own standard uncertainty,
 * since the formulas take them for independent.
 */
export interface ModelSpec<M extends Readonly<Record<string, OutputSpec>> = Readonly<Record<string, OutputSpec>>> {
  readonly outputs: M;
  /** @param inputs in SI, undefined where empty or refused */
  compute(inputs: Readonly<Record<string, InputValue | undefined>>, choices: Choices): ModelResult;
}

export interface OptionSpec {
  readonly label: string;
  /** Typical values this option brings: number, or [number, half-width], in the input's unit. */
  readonly set?: Readonly<Record<string, number | readonly [number, number]>>;
}

export interface ChoiceSpec<O extends string = string> {
  readonly label: string;
  readonly options: Readonly<Record<O, OptionSpec>>;
  readonly typical: NoInfer<O>;
  readonly from?: string;
  readonly hint?: string;
  readonly when?: When;
}

export interface FormulaSpec<T extends string = string> {
  readonly text: T;
  readonly meaning: string;
  readonly measure: Measure;
  readonly cite: Citation;
  readonly when?: When;
}

/** A check of one result. `max` and `min` name inputs or results, so that every limit is visible and editable. */
export interface LimitSpec<S extends string = string> {
  readonly of: S;
  readonly max?: S;
  readonly min?: S;
  /** The size counts, not the sign. */
  readonly symmetric?: boolean;
  readonly label: string;
  readonly cite: Citation;
  readonly when?: When;
}

export type VerdictState = 'within' | 'beyond' | 'too close' | 'none';

/** What the hand does, in a form a test can mirror. `amount` in SI. */
export interface Movement {
  readonly part: string;
  readonly direction: string;
  readonly amount: number;
}

export interface Instruction {
  /** One sentence, the thing to do. */
  readonly headline: string;
  readonly steps: readonly string[];
  readonly movements?: readonly Movement[];
  /** The reading does not suffice: the screen says what would. */
  readonly measureAgain?: boolean;
}

type OptionsOf<C> = C extends ChoiceSpec<infer O> ? O : never;
type SymbolOf<F> = F extends FormulaSpec<infer T> ? (T extends `${infer S} =${string}` ? S : never) : never;

/** What an action may ask. A question that cannot be answered ends the action; the screen then says why. */
export interface Context<S extends string, C extends Readonly<Record<string, ChoiceSpec>>> {
  /** Best value of an input or result, SI. */
  number(symbol: S): number;
  /** A result with its uncertainty, or undefined where there is none. */
  known(symbol: S): Known | undefined;
  /** Printed to the digits its uncertainty supports, with unit, without the ±. */
  text(symbol: S, options?: { readonly magnitude?: boolean }): string;
  choice<K extends keyof C & string>(name: K): OptionsOf<C[K]>;
  readonly verdict: VerdictState;
  /** State of the checks of one result. */
  check(of: S): VerdictState;
  /** Labels of the inputs that a result still waits for; empty where it has them all. */
  lacking(symbol: S): readonly string[];
  /** The person's decimal mark, for numbers that are no symbol's. */
  readonly mark: DecimalMark;
}

/** A worked example: shown in the app and run as a test. */
export interface Example<S extends string = string> {
  readonly title: string;
  /** As typed: `8 mm`, `0.75 mm ± 0.5 mm`. */
  readonly given: Partial<Readonly<Record<S, string>>>;
  readonly choices?: Readonly<Record<string, string>>;
  /** Expected value and absolute tolerance, in the result's unit. */
  readonly expect: Partial<Readonly<Record<S, readonly [value: number, tolerance: number]>>>;
  readonly verdict?: VerdictState;
  readonly source: Citation;
}

type SymbolsIn<I, F extends readonly FormulaSpec[], M> = (keyof I & string) | (keyof M & string) | SymbolOf<F[number]>;

interface Definition<
  I extends Readonly<Record<string, InputSpec>>,
  C extends Readonly<Record<string, ChoiceSpec>>,
  F extends readonly FormulaSpec[],
  M extends Readonly<Record<string, OutputSpec>>,
> {
  readonly inputs: I;
  readonly tables?: Readonly<Record<string, TableSpec>>;
  readonly model?: ModelSpec<M>;
  readonly choices: C;
  readonly formulas: F;
  readonly limits: readonly LimitSpec<SymbolsIn<I, F, M>>[];
  readonly cautions?: readonly string[];
  /**
   * The verdict where no limit can say it, such as which of several parts fits. Asked before there is one: `ctx.verdict` is
   * that of the limits. meta.ts then words the states.
   */
  judge?(ctx: Context<SymbolsIn<I, F, M>, C>): VerdictState;
  action(ctx: Context<SymbolsIn<I, F, M>, C>): Instruction;
  /** Several ways to the same end, side by side. */
  ways?(ctx: Context<SymbolsIn<I, F, M>, C>): Ways;
  /** How to prove it worked. */
  readonly proof: string;
  /** What the check cannot tell. */
  readonly beware?: readonly string[];
  readonly examples: readonly Example<SymbolsIn<I, F, M>>[];
}

/** A calculator as the rest of the app sees it. `S` names its inputs and results. */
export interface Calculator<
  S extends string = string,
  C extends Readonly<Record<string, ChoiceSpec>> = Readonly<Record<string, ChoiceSpec>>,
> {
  readonly inputs: Readonly<Record<string, InputSpec>>;
  readonly tables: Readonly<Record<string, TableSpec>>;
  readonly model?: ModelSpec;
  readonly choices: C;
  readonly formulas: readonly FormulaSpec[];
  readonly limits: readonly LimitSpec[];
  readonly cautions: readonly string[];
  judge?(ctx: Context<S, C>): VerdictState;
  action(ctx: Context<S, C>): Instruction;
  ways?(ctx: Context<S, C>): Ways;
  readonly proof: string;
  readonly beware: readonly string[];
  readonly examples: readonly Example[];
}

/** A calculator's entry in the list, in its own file so that the list loads without the calculators. */
export interface Meta {
  readonly title: string;
  readonly question: string;
  /** What a person would say, for the search. */
  readonly sayings: readonly string[];
  /** The heading it stands under. */
  readonly topic: Topic;
  /** The phone's instruments that some of its inputs can be taken with. */
  readonly phone?: readonly PhoneInstrument[];
  /** What its verdicts are called, where they are not about a limit. */
  readonly verdicts?: Readonly<Partial<Record<VerdictState, string>>>;
  /** Where it stands in the list; lower first. */
  readonly order: number;
}

export function input(label: string, measure: Measure, rest: Omit<InputSpec, 'label' | 'measure'>): InputSpec {
  return { label, measure, ...rest };
}

export function choice<const O extends string>(
  label: string,
  options: Readonly<Record<O, OptionSpec>>,
  typical: NoInfer<O>,
  rest: Omit<ChoiceSpec, 'label' | 'options' | 'typical'> = {},
): ChoiceSpec<O> {
  return { label, options, typical, ...rest };
}

/** `formula('h_t = P_h / z', 'Height of one tooth', length.mm, cite(...))` */
export function formula<const T extends string>(
  text: T,
  meaning: string,
  measure: Measure,
  source: Citation,
  when?: When,
): FormulaSpec<T> {
  return { text, meaning, measure, cite: source, ...(when ? { when } : {}) };
}

/** Makes a calculator; types carry every symbol through to `action` and the drawing. */
export function calculator<
  const I extends Readonly<Record<string, InputSpec>>,
  const C extends Readonly<Record<string, ChoiceSpec>>,
  const F extends readonly FormulaSpec[],
  // Without a model there is no symbol of one; anything wider would let misspelt symbols through.
  // eslint-disable-next-line @typescript-eslint/no-generated-empty-object-type
  M extends Readonly<Record<string, OutputSpec>> = Readonly<Record<never, OutputSpec>>,
>(definition: Definition<I, C, F, M>): Calculator<SymbolsIn<I, F, M>, C> {
  return {
    ...definition,
    tables: definition.tables ?? {},
    cautions: definition.cautions ?? [],
    beware: definition.beware ?? [],
  };
}

/** Names of a calculator's symbols, for typing its drawing. */
export type SymbolsOf<K> = K extends { action(ctx: Context<infer S, infer C>): Instruction }
  ? C extends Readonly<Record<string, ChoiceSpec>>
    ? S
    : never
  : never;
export type ChoicesOf<K> = K extends { readonly choices: infer C }
  ? { readonly [N in keyof C]: OptionsOf<C[N]> }
  : never;

/** What a drawing gets: best values in SI, undefined where there is none, and the options chosen. */
export interface FigureProps<K> {
  readonly value: (symbol: SymbolsOf<K>) => number | undefined;
  /** The same as printed, with unit: for dimension lines. */
  readonly text: (symbol: SymbolsOf<K>) => string;
  /** A result with its uncertainty, for drawings that show one. */
  readonly known: (symbol: string) => Known | undefined;
  readonly choice: ChoicesOf<K>;
  /** The person's decimal mark, for numbers that are no symbol's. */
  readonly mark: DecimalMark;
}

export type Choices = Readonly<Record<string, string>>;

/** True when something marked `when` applies under these options. */
export function applies(when: When | undefined, choices: Choices): boolean {
  if (!when) return true;
  return Object.entries(when).every(([name, wanted]) => {
    const chosen = choices[name];
    return chosen !== undefined && (typeof wanted === 'string' ? wanted === chosen : wanted.includes(chosen));
  });
}

/** Names of the hidden results behind a limit: how far beyond it lies, above zero when beyond. */
export function excessNames(index: number): { readonly above: string; readonly below: string; readonly under: string } {
  return { above: `excess_${index}_above`, below: `excess_${index}_below`, under: `excess_${index}_under` };
}

function excessFormulas(limit: LimitSpec, index: number): string[] {
  const { above, below, under } = excessNames(index);
  const texts: string[] = [];
  if (limit.max !== undefined) texts.push(`${above} = ${limit.of} - ${limit.max}`);
  if (limit.max !== undefined && limit.symmetric) texts.push(`${below} = 0 - ${limit.of} - ${limit.max}`);
  if (limit.min !== undefined) texts.push(`${under} = ${limit.min} - ${limit.of}`);
  return texts;
}

const systems = new WeakMap<Calculator, Map<string, System>>();

/**
 * The system of formulas in force under these options, with one hidden formula per limit so that a margin is
 * propagated whole (value and limit may share inputs).
 * @throws FormulaError for a mistake in the calculator
 */
export function systemFor(calc: Calculator, choices: Choices): System {
  const key = Object.keys(calc.choices)
    .map((name) => choices[name] ?? '')
    .join('|');
  const cached = systems.get(calc) ?? new Map<string, System>();
  systems.set(calc, cached);
  const found = cached.get(key);
  if (found) return found;
  // Cells of a table reach the formulas through the model alone.
  const inputs = Object.keys(calc.inputs).filter((name) => {
    const spec = calc.inputs[name];
    return spec?.cell === undefined && applies(spec?.when, choices);
  });
  const names = [...inputs, ...Object.keys(calc.model?.outputs ?? {})];
  const texts = calc.formulas.filter((f) => applies(f.when, choices)).map((f) => f.text);
  const excess = calc.limits.flatMap((limit, i) => (applies(limit.when, choices) ? excessFormulas(limit, i) : []));
  const system = buildSystem([...texts, ...excess], names);
  cached.set(key, system);
  return system;
}
