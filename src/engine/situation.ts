import type { InputValue } from '../formula/outcome';
import type { Outcomes } from '../formula/propagate';
import type { DecimalMark } from '../quantity/parse';
import type { Unit } from '../quantity/unit';
import type { FormulaSpec, Instruction } from './calculator';
import type { Entry, InputState, KeptValue } from './entry';
import type { Choices } from './spec';
import type { Verdict } from './verdict';

/** Everything a calculator's screen knows about one set of entries. */
export interface Situation {
  readonly entries: Readonly<Record<string, Entry | undefined>>;
  /** Options picked; the typical one where none was. */
  readonly choices: Choices;
  /** What the machine keeps, by place (`z.lead`). */
  readonly kept: Readonly<Record<string, KeptValue | undefined>>;
  readonly mark: DecimalMark;
  /** Unit to show results of a kind in, by kind id, where the person prefers another than the calculator's. */
  readonly units?: Readonly<Record<string, Unit>>;
  /** Readings given as numbers, SI, in place of the entries: what is read once an order is carried out. */
  readonly read?: Readonly<Record<string, { readonly value: number; readonly half: number }>>;
}

export interface Evaluation {
  readonly choices: Choices;
  /** Inputs in force under the options, in the calculator's order. */
  readonly inputs: Readonly<Record<string, InputState>>;
  readonly formulas: readonly FormulaSpec[];
  readonly outcomes: Outcomes;
  /** Everything the formulas started from: readings and what the model made of them, SI. */
  readonly values: Readonly<Record<string, InputValue | undefined>>;
  /** Why the model has no result, as a sentence. */
  readonly modelProblem: string | undefined;
  readonly verdict: Verdict;
  /** Entries that cannot all be right, as a question, and the inputs it is about. Then there is no verdict. */
  readonly contradiction: { readonly sentence: string; readonly of: readonly string[] } | undefined;
  readonly instruction: Instruction | undefined;
  /** Why there is no instruction, as a sentence. */
  readonly cannot: string | undefined;
  /** How many changes the order was tried with: each costs an evaluation, made when the order is first asked for. */
  readonly trials: number;
  /** Labels of the typical values that the results rest on. */
  readonly typical: readonly string[];
}
