import type { Citation } from '../reference/citation';
import type {
  ChoiceData,
  ExampleData,
  FormulaData,
  InputData,
  LimitData,
  OptionData,
  OutputData,
  TableData,
} from './spec';

/** An input with its words. */
export interface InputSpec extends Omit<InputData, 'basis'> {
  readonly label: string;
  readonly basis?: Citation;
  /** How to take it, in one sentence. */
  readonly hint?: string;
}

export interface TableSpec extends Omit<TableData, 'columns'> {
  readonly label: string;
  /** What one line is: `Point`. */
  readonly line: string;
  /** Headings, by column. */
  readonly columns: Readonly<Record<string, string>>;
  readonly hint: string;
  /** Names of the presets. */
  readonly presetNames: Readonly<Record<string, string>>;
}

export interface OutputSpec extends Omit<OutputData, 'cite'> {
  readonly meaning: string;
  /** The governing equation, in words and signs: what the model solves. */
  readonly equation: string;
  readonly cite: Citation;
}

export interface OptionSpec extends OptionData {
  readonly label: string;
}

export interface ChoiceSpec extends Omit<ChoiceData, 'options'> {
  readonly label: string;
  readonly hint?: string;
  readonly options: Readonly<Record<string, OptionSpec>>;
}

export interface FormulaSpec extends Omit<FormulaData, 'cite'> {
  readonly meaning: string;
  readonly cite: Citation;
}

export interface LimitSpec extends Omit<LimitData, 'cite'> {
  readonly label: string;
  readonly cite: Citation;
}

export interface Example extends Omit<ExampleData, 'source' | 'key'> {
  readonly title: string;
  readonly source: Citation;
}
