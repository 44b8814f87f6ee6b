import type { Known } from '../formula/outcome';
import type { DecimalMark } from '../quantity/parse';
import type { Measure } from '../quantity/unit';
import type { Amount, Contradiction, Movement, Order } from './order';
import type { Cited } from './source';
import type {
  ChoiceData,
  ExampleData,
  FormulaData,
  InputData,
  LimitData,
  ModelData,
  None,
  OptionData,
  OutputData,
  PhoneInstrument,
  TableData,
  VerdictState,
} from './spec';
import type { Topic } from './topics';
import type { ChoiceSpec, Example, FormulaSpec, InputSpec, LimitSpec, OutputSpec, TableSpec } from './worded';
import type { ComparedWays } from './ways';
import { join } from './join';
import type { Sayings, WordsFor } from './words';

export { cite, derived } from './source';
export type {
  ChoiceSpec,
  Example,
  FormulaSpec,
  InputSpec,
  LimitSpec,
  OptionSpec,
  OutputSpec,
  TableSpec,
} from './worded';
export type { Choices, PhoneInstrument, VerdictState, When } from './spec';
export { applies } from './spec';

/** What the hand does, in words, and the data that the words were made from. */
export interface Instruction {
  readonly order: Order;
  /** A symbol and at most five words. */
  readonly glance: string;
  /** One sentence, the thing to do. */
  readonly sentence: string;
  /** The sentence as a voice reads it. */
  readonly spoken: string;
  readonly steps: readonly string[];
  readonly movements: readonly Movement[];
  /** The reading does not suffice: the screen says what would. */
  readonly measureAgain: boolean;
  /** What it rests on that was not measured: names with their values. */
  readonly assumes: readonly string[];
}

type OptionsOf<C> = C extends { readonly options: infer O } ? keyof O & string : never;
type SymbolOf<F> = F extends { readonly text: infer T } ? (T extends `${infer S} =${string}` ? S : never) : never;
type SymbolsIn<I, F extends readonly FormulaData[], M> = (keyof I & string) | (keyof M & string) | SymbolOf<F[number]>;

/** What an action may ask. A question that cannot be answered ends the action; the screen then says why. */
export interface Context<S extends string, C> {
  /** Best value of an input or result, SI. */
  readonly number: (symbol: S) => number;
  /** Ends the action where there is no such value yet. Unlike `number`, it makes nothing of it: the order does not rest on it. */
  readonly need: (symbol: S) => void;
  /** A result with its uncertainty, or undefined where there is none. */
  readonly known: (symbol: S) => Known | undefined;
  /** To be printed by the words: value and the width that its digits deserve. */
  readonly quantity: (symbol: S) => Amount;
  /** The same for a note besides: the order does not rest on it. */
  readonly aside: (symbol: S) => Amount;
  readonly choice: <K extends keyof C & string>(name: K) => OptionsOf<C[K]>;
  /** Whether an input or result has a value: a line of a table that is filled. */
  readonly has: (symbol: S) => boolean;
  readonly verdict: VerdictState;
  /** State of the checks of one result. */
  readonly check: (of: S) => VerdictState;
  /**
   * The verdict once these inputs read so (SI), each with its tool's doubt, or the state of the checks of one result: an order makes
   * sure of its amount with it. It works the limits out anew, so ask it a few times, not a hundred.
   */
  readonly after: (changes: Readonly<Partial<Record<S, number>>>, of?: S) => VerdictState;
  /** Symbols of the inputs that a result still waits for; empty where it has them all. */
  readonly lacking: (symbol: S) => readonly string[];
}

/** The one type of what an action may ask, derived from a calculator's inputs, choices, formulas and model outputs. */
export type AskOf<
  D extends {
    readonly inputs: Readonly<Record<string, InputData>>;
    readonly choices?: Readonly<Record<string, ChoiceData>>;
    readonly formulas: readonly FormulaData[];
    readonly outputs?: Readonly<Record<string, OutputData>>;
  },
> = Context<
  SymbolsIn<D['inputs'], D['formulas'], D extends { readonly outputs: infer M } ? M : None>,
  D extends { readonly choices: infer C } ? C : None
>;

/** What a hand can change: by a screw, or by a setting. The least amount it can set, and how far, SI. */
export interface Lever<S extends string, C> {
  readonly step: (ask: Context<S, C>) => number;
  readonly from?: (ask: Context<S, C>) => number;
  readonly to?: (ask: Context<S, C>) => number;
  /** What else then reads otherwise, SI: the force that follows an angle. */
  readonly reads?: (ask: Context<S, C>, value: number) => Readonly<Partial<Record<S, number>>>;
}

/** Options in force, as a calculator's parts ask for them. */
export type Asking = Context<string, Readonly<Record<string, ChoiceData>>>;

interface Definition<
  I extends Readonly<Record<string, InputData>>,
  C extends Readonly<Record<string, ChoiceData>>,
  F extends readonly FormulaData[],
  M extends Readonly<Record<string, OutputData>>,
  L extends readonly LimitData[],
  E extends readonly ExampleData[],
  T extends Readonly<Record<string, TableData>>,
  A extends string,
  B extends string,
> {
  readonly inputs: I;
  readonly tables?: T;
  readonly model?: ModelData<M>;
  readonly choices: C;
  readonly formulas: F;
  readonly limits: L & NoInfer<readonly LimitData<SymbolsIn<I, F, M>>[]>;
  /** Keys of what is to be minded first, in their order. */
  readonly cautions: readonly A[];
  /**
   * The verdict where no limit can say it, such as which of several parts fits. Asked before there is one: `ask.verdict` is
   * that of the limits. The list's words then name the states.
   */
  readonly judge?: (ask: NoInfer<Context<SymbolsIn<I, F, M>, C>>) => VerdictState;
  readonly action: (ask: NoInfer<Context<SymbolsIn<I, F, M>, C>>) => Order;
  /**
   * Inputs that must have been read, not assumed, before there is a verdict: the check's readings. Those in force under the
   * options count, and not the optional ones.
   */
  readonly measured: readonly NoInfer<keyof I & string>[];
  /** Inputs that an order can change, each in the steps that a hand sets. */
  readonly levers?: Readonly<Partial<Record<NoInfer<keyof I & string>, NoInfer<Lever<SymbolsIn<I, F, M>, C>>>>>;
  /** Entries that cannot all be right; undefined where nothing is odd. Asked before there is a verdict. */
  readonly contradiction?: (ask: NoInfer<Context<SymbolsIn<I, F, M>, C>>) => Contradiction | undefined;
  /** Several ways to the same end, side by side. */
  readonly ways?: (ask: NoInfer<Context<SymbolsIn<I, F, M>, C>>) => ComparedWays;
  /** Keys of what the check cannot tell. */
  readonly beware?: readonly B[];
  readonly examples: E & NoInfer<readonly ExampleData<SymbolsIn<I, F, M>>[]>;
}

/** A calculator as the rest of the app sees it: its data with their words. `S` names its inputs and results. */
export interface Calculator<S extends string = string, C = Readonly<Record<string, ChoiceData>>> {
  readonly inputs: Readonly<Record<string, InputSpec>>;
  readonly tables: Readonly<Record<string, TableSpec>>;
  readonly model?: Omit<ModelData, 'outputs'> & { readonly outputs: Readonly<Record<string, OutputSpec>> };
  readonly choices: Readonly<Record<string, ChoiceSpec>>;
  readonly formulas: readonly FormulaSpec[];
  readonly limits: readonly LimitSpec[];
  readonly cautions: readonly string[];
  readonly judge?: (ask: Asking) => VerdictState;
  readonly action: (ask: Asking) => Order;
  readonly measured: readonly string[];
  readonly levers: Readonly<Partial<Record<string, Lever<string, Readonly<Record<string, ChoiceData>>>>>>;
  readonly contradiction?: (ask: Asking) => Contradiction | undefined;
  readonly ways?: (ask: Asking) => ComparedWays;
  readonly proof: string;
  readonly beware: readonly string[];
  readonly examples: readonly Example[];
  /** What its orders, problems and ways are told by. */
  readonly words: Sayings;
  /** Types only: its symbols and choices, for its drawing. */
  readonly types?: { readonly symbols: S; readonly choices: C };
}

/** A calculator's entry in the list, in its own file so that the list loads without the calculators. */
export interface Meta {
  /** The heading it stands under. */
  readonly topic: Topic;
  /** The phone's instruments that some of its inputs can be taken with. */
  readonly phone?: readonly PhoneInstrument[];
  /** Where it stands in the list; lower first. */
  readonly order: number;
}

/** The words of that entry. */
export interface ListWords {
  readonly title: string;
  readonly question: string;
  /** What a person would say, for the search. */
  readonly sayings: readonly string[];
  /** What its verdicts are called, where they are not about a limit. */
  readonly verdicts?: Readonly<Partial<Record<VerdictState, string>>>;
}

export function input<const K extends string = never>(
  measure: Measure,
  rest: Omit<InputData<K>, 'measure'>,
): InputData<K> {
  return { measure, ...rest };
}

export function choice<const O extends string, const D extends OptionData>(
  options: Readonly<Record<O, D>>,
  typical: NoInfer<O>,
  rest: Omit<ChoiceData, 'options' | 'typical'> = {},
): ChoiceData<O, D> {
  return { options, typical, ...rest };
}

/** `formula('h_t = P_h / z', length.mm, cite(...))`; `as` names the meaning where the symbol has others too. */
export function formula<const T extends string, const K extends string = never, const A extends string = never>(
  text: T,
  measure: Measure,
  source: Cited<K>,
  when?: FormulaData['when'],
  as?: A,
): FormulaData<T, K> & ([A] extends [never] ? unknown : { readonly as: A }) {
  const data: FormulaData<T, K, A> = {
    text,
    measure,
    cite: source,
    ...(when ? { when } : {}),
    ...(as === undefined ? {} : { as }),
  };
  return data as FormulaData<T, K> & ([A] extends [never] ? unknown : { readonly as: A });
}

/** Extra keys are misspelt ones: they become `never`. */
type Exact<W, T> = W extends string | ((...args: never) => unknown) | readonly unknown[]
  ? W
  : { readonly [K in keyof W]: K extends keyof T ? Exact<W[K], NonNullable<T[K]>> : never };

type ExactGroup = 'inputs' | 'choices' | 'results' | 'limits' | 'cautions' | 'beware' | 'examples' | 'sources';

/** Makes a calculator of its data and its words; types carry every symbol and key through, so that a lacking or misspelt one does not compile. */
export function calculator<
  const I extends Readonly<Record<string, InputData>>,
  const C extends Readonly<Record<string, ChoiceData>>,
  const F extends readonly FormulaData[],
  const L extends readonly LimitData[],
  const E extends readonly ExampleData[],
  W extends WordsFor<I, C, F, M, L, E, T, A, B>,
  // Without a model there is no symbol of one; anything wider would let misspelt symbols through.
  M extends Readonly<Record<string, OutputData>> = None,
  T extends Readonly<Record<string, TableData>> = None,
  const A extends string = never,
  const B extends string = never,
>(
  definition: Definition<I, C, F, M, L, E, T, A, B>,
  words: W & Pick<Exact<W, WordsFor<I, C, F, M, L, E, T, A, B>>, keyof W & ExactGroup>,
): Calculator<SymbolsIn<I, F, M>, C> {
  // Actions ask by their own symbols only, which the erased type cannot say.
  return join(definition, words) as unknown as Calculator<SymbolsIn<I, F, M>, C>;
}

/** Names of a calculator's symbols, for typing its drawing. */
export type SymbolsOf<K> = K extends Calculator<infer S> ? S : never;
export type ChoicesOf<K> = K extends { readonly types?: { readonly choices: infer C } }
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
