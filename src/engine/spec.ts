import type { InputValue } from '../formula/outcome';
import type { Feature } from '../reference/features';
import type { Measure } from '../quantity/unit';
import type { Cited } from './source';
import type { Signs } from './signs';
import type { Told } from './order';

/** No names at all: what stands for the choices, outputs or words of a check that has none. */
export type None = Readonly<Partial<Record<symbol, never>>>;

/** Present only under some options: `{ drive: 'belt' }` or `{ end: ['fixed', 'pinned'] }`. */
export type When = Readonly<Record<string, string | readonly string[]>>;

/** What the phone itself can measure: a plucked belt's note, a feeder's ticks; ridges, ripples, a square in photos; a slope. */
export type PhoneInstrument = 'note' | 'clicks' | 'ridges' | 'ripples' | 'skew' | 'slope';

/** What an input is of: one feature, several where tools of either sort will do, or by the option in force. */
export type FeatureData =
  Feature | readonly Feature[] | { readonly choice: string; readonly of: Readonly<Record<string, Feature>> };

/** What is asked for, without its words. `K` names what its citation says of the work. */
export interface InputData<K extends string = string> {
  readonly measure: Measure;
  /** Used, and marked as typical, until something is entered. In `measure.unit`, as are spread and range. */
  readonly typical?: number;
  /** Half-width of the typical value; also of a typed value that no tool or ± gives one. */
  readonly spread?: number;
  /**
   * Of a limit that is common practice: by what share of it the trade differs, as a half-width. Of the typical value alone; a limit that
   * is typed is the person's own, and exact.
   */
  readonly differs?: number;
  /** Its typical value as a share of what stands at another place, here or on the machine; `typical` and `spread` serve where nothing does. */
  readonly share?: { readonly of: string; readonly times: number; readonly within: number };
  /** Where the typical value comes from. */
  readonly basis?: Cited<K>;
  readonly range: readonly [number, number];
  /** What of the thing it is: says which tools read it. Left out for what is decided or no bench tool reads at all. */
  readonly feature?: FeatureData;
  /** Id of the tool it is usually read with. */
  readonly tool?: string;
  /** Where a machine keeps it: `z.lead`. */
  readonly from?: string;
  /**
   * May be negative. Where the sign is a direction, two pictures to choose from stand for it; `scale` where it is none: a
   * temperature, a place along an axis, an exponent.
   */
  readonly signed?: Signs | 'scale';
  /** It is the difference of two readings of one tool, and has the doubt of both. */
  readonly difference?: true;
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

/** Fills columns of a table by a rule: a line's cells each in SI, or why it cannot. */
export type Preset = (
  value: (symbol: string) => number | undefined,
) => readonly Readonly<Record<string, number>>[] | { readonly problem: Told };

/** Readings of which there are as many as the person takes: points of a bed, moments of a heating curve. */
export interface TableData<P extends string = string> {
  /** Columns, in their order. */
  readonly columns: readonly string[];
  readonly least: number;
  /** Column that a stopwatch above the table fills, one line for each tap. */
  readonly stopwatch?: string;
  readonly presets?: Readonly<Record<P, Preset>>;
}

/** A quantity that a model works out of the readings, for the formulas to go on with. */
export interface OutputData<K extends string = string> {
  readonly measure: Measure;
  readonly cite: Cited<K>;
}

export type ModelResult =
  | { readonly ok: true; readonly values: Readonly<Record<string, InputValue>> }
  | { readonly ok: false; readonly problem: Told };

export type Choices = Readonly<Record<string, string>>;

/**
 * What a formula cannot carry: a fit, a table. Its outputs must be uncorrelated, each with its own standard uncertainty,
 * since the formulas take them for independent.
 */
export interface ModelData<M extends Readonly<Record<string, OutputData>> = Readonly<Record<string, OutputData>>> {
  readonly outputs: M;
  /** @param inputs in SI, undefined where empty or refused */
  readonly compute: (inputs: Readonly<Record<string, InputValue | undefined>>, choices: Choices) => ModelResult;
}

export interface OptionData {
  /** A designation, the same in every language (`M4`); what needs words has them beside. */
  readonly label?: string;
  /** Typical values this option brings: number, or [number, half-width], in the input's unit. */
  readonly set?: Readonly<Record<string, number | readonly [number, number]>>;
}

export interface ChoiceData<O extends string = string, D extends OptionData = OptionData> {
  readonly options: Readonly<Record<O, D>>;
  readonly typical: NoInfer<O>;
  readonly from?: string;
  readonly when?: When;
}

/** `as` tells apart the meanings that one symbol has under different options. */
export interface FormulaData<T extends string = string, K extends string = string, A extends string = string> {
  readonly text: T;
  readonly measure: Measure;
  readonly cite: Cited<K>;
  readonly when?: When;
  readonly as?: A;
}

/** A check of one result. `max` and `min` name inputs or results, so that every limit is visible and editable. */
export interface LimitData<S extends string = string, K extends string = string, A extends string = string> {
  readonly of: S;
  readonly max?: S;
  readonly min?: S;
  /** The size counts, not the sign. */
  readonly symmetric?: boolean;
  readonly cite: Cited<K>;
  readonly when?: When;
  /** Key of its words, where one result has several limits. */
  readonly as?: A;
}

export type VerdictState = 'within' | 'beyond' | 'too close' | 'none';

/** A worked example: shown in the app and run as a test. `key` names its words. */
export interface ExampleData<S extends string = string, K extends string = string, N extends string = string> {
  readonly key: N;
  /** As typed: `8 mm`, `0.75 mm ± 0.5 mm`. */
  readonly given: Partial<Readonly<Record<S, string>>>;
  readonly choices?: Readonly<Record<string, string>>;
  /** Expected value and absolute tolerance, in the result's unit. */
  readonly expect: Partial<Readonly<Record<S, readonly [value: number, tolerance: number]>>>;
  readonly verdict?: VerdictState;
  readonly source: Cited<K>;
}

/** True when something marked `when` applies under these options. */
export function applies(when: When | undefined, choices: Choices): boolean {
  if (!when) return true;
  return Object.entries(when).every(([name, wanted]) => {
    const chosen = choices[name];
    return chosen !== undefined && (typeof wanted === 'string' ? wanted === chosen : wanted.includes(chosen));
  });
}
