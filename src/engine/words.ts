import type { Citation } from '../reference/citation';
import type { SayOrder, Says } from './order';
import type { ChoiceData, ExampleData, FormulaData, InputData, LimitData, OutputData, TableData } from './spec';
import type { Source } from './source';

/** Label of an input, and how to take it in one sentence. */
export interface InputWords {
  readonly label: string;
  readonly hint?: string;
}

export interface TableWords<P extends string> {
  readonly label: string;
  /** What one line is: `Point`. */
  readonly line: string;
  readonly hint: string;
  /** Headings, and what a cell is called: `(line) => ...`. */
  readonly columns: Readonly<Record<string, { readonly head: string; readonly cell: (line: number) => string }>>;
  readonly presets?: Readonly<Record<P, string>>;
}

/** Words of the ways that are set side by side. */
export interface WaysWords {
  readonly title: string;
  readonly columns: Readonly<Record<string, string>>;
  readonly names: Readonly<Record<string, string>>;
  readonly note: string;
  readonly facts?: Says;
  readonly why?: Says;
  readonly needs?: Says;
}

/** The words that are told by key: what an action, a model or a comparison says. */
export interface Sayings {
  readonly orders: Readonly<Record<string, SayOrder>>;
  readonly steps: Says;
  readonly problems?: Says;
  /** Questions to entries that cannot all be right. */
  readonly contradictions?: Says;
  readonly ways?: WaysWords;
}

/** What a machine's place gives an input or choice: its label stands with the place. */
export interface Placed {
  readonly placed: true;
}

type Symbol_<T> = T extends `${infer S} =${string}` ? S : never;
/** Key of a formula's meaning: its symbol, or what tells its meanings apart. */
type ResultKey<F> = F extends { readonly as: infer A extends string }
  ? A
  : F extends { readonly text: infer T }
    ? Symbol_<T>
    : never;
type LimitKey<L> = L extends { readonly as: infer A extends string }
  ? A
  : L extends { readonly of: infer S extends string }
    ? S
    : never;
type KeyOfSource<T> = T extends Citation ? never : T extends Source<infer K> ? K : never;
type Remarks<T, P extends PropertyKey> =
  T extends Readonly<Partial<Record<P, infer C>>> ? KeyOfSource<Exclude<C, undefined>> : never;
type OptionsWithWords<C> = C extends { readonly options: infer O }
  ? { readonly [N in keyof O as O[N] extends { readonly label: string } ? never : N]: string }
  : never;

/** What the words of a calculator must hold, derived from its data. */
export interface WordsFor<
  I extends Readonly<Record<string, InputData>>,
  C extends Readonly<Record<string, ChoiceData>>,
  F extends readonly FormulaData[],
  M extends Readonly<Record<string, OutputData>>,
  L extends readonly LimitData[],
  E extends readonly ExampleData[],
  T extends Readonly<Record<string, TableData>>,
  A extends string,
  B extends string,
> extends Sayings {
  readonly inputs: {
    readonly [S in keyof I as I[S] extends Placed | { readonly cell: object } ? never : S]: InputWords;
  } & {
    readonly [S in keyof I as I[S] extends Placed ? S : never]?: { readonly hint: string };
  };
  readonly choices: {
    readonly [N in keyof C as C[N] extends Placed ? never : N]: {
      readonly label: string;
      readonly hint?: string;
      readonly options: OptionsWithWords<C[N]>;
    };
  } & {
    readonly [N in keyof C as C[N] extends Placed ? N : never]?: { readonly hint: string };
  };
  readonly results: Readonly<Record<ResultKey<F[number]> | (keyof M & string), string>>;
  /** The governing equation of each output of the model, in words and signs. */
  readonly equations?: Readonly<Record<keyof M & string, string>>;
  readonly limits: Readonly<Record<LimitKey<L[number]>, string>>;
  readonly tables?: { readonly [N in keyof T]: TableWords<T[N] extends TableData<infer P> ? P : never> };
  readonly cautions: Readonly<Record<A, string>>;
  readonly beware: Readonly<Record<B, string>>;
  /** How to prove it worked. */
  readonly proof: string;
  readonly examples: Readonly<Record<E[number]['key'], string>>;
  /** What citations say of their work, or what a formula was derived from. */
  readonly sources: Readonly<
    Record<
      | Remarks<I[keyof I], 'basis'>
      | Remarks<F[number], 'cite'>
      | Remarks<M[keyof M], 'cite'>
      | Remarks<L[number], 'cite'>
      | Remarks<E[number], 'source'>,
      string
    >
  >;
}
