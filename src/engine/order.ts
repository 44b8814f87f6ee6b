import type { Measure } from '../quantity/unit';
import type { None } from './spec';

/** A quantity that words can print or speak: SI value, the half-width that its digits deserve, and its unit by id. */
export interface Amount {
  readonly si: number;
  readonly width: number;
  readonly kind: string;
  readonly unit: string;
}

/** An amount whose digits are all meant: what is set, or stands in a table. SI. */
export const exact = (si: number, { kind, unit }: Measure): Amount => ({ si, width: 0, kind: kind.id, unit: unit.id });

/** What words are made from: plain data, so that it can be kept and said again, in another language or unit. */
export type Arg = string | number | boolean | undefined | Amount | readonly Arg[] | { readonly [name: string]: Arg };
export type Args = Readonly<Record<string, Arg>>;

/** Something to say: the key of its words, and what they are made from. */
export interface Told<K extends string = string> {
  readonly say: K;
  readonly args: Args;
}

/** What the hand does, in a form a test can mirror. `amount` in SI. */
export interface Movement {
  readonly part: string;
  readonly direction: string;
  readonly amount: number;
}

/**
 * What an order changes: what each of these inputs reads once it is done, SI. The doubt of that reading is twice the tool's (this
 * reading and the next), unless a half-width is given.
 */
export type Effect = Readonly<Record<string, number | { readonly value: number; readonly half: number }>>;

/**
 * What an order heats, K: the hottest that it may get, and the least that anything there surely bears. An order that heats beyond that is
 * withheld, not told.
 */
export interface Heats {
  readonly to: number;
  readonly bears: number;
}

/** A typical value that an order rests on. */
export interface Assumed {
  readonly symbol: string;
  readonly amount: Amount;
}

/** Entries that cannot all be right: the words ask which is. `of` names the inputs. */
export interface Contradiction<K extends string = string> extends Told<K> {
  readonly of: readonly string[];
}

/** What to do, as data. */
export interface Order<K extends string = string> extends Told<K> {
  readonly steps: readonly Told[];
  readonly movements: readonly Movement[];
  readonly effect?: Effect;
  /** Each thing that it, or one of its steps, heats. */
  readonly heats?: readonly Heats[];
  /** Put in by the engine: what was not measured, and the amounts rest on. */
  readonly assumes?: readonly Assumed[];
  /** The reading does not suffice: the screen says what would. */
  readonly measureAgain: boolean;
}

/** How words print what they are given. */
export interface Print {
  /** To the digits its width supports, with its unit. */
  (amount: Amount): string;
  /** The same without its sign: the sentence says the direction. */
  readonly size: (amount: Amount) => string;
  /** The same without its unit, where the sentence names that in its own way: by `amount.unit`. */
  readonly bare: (amount: Amount) => string;
  /** A bare number, to so many decimals, with the person's mark. */
  readonly number: (value: number, decimals?: number) => string;
  /** An input's or result's name, as it stands inside a sentence. */
  readonly called: (symbol: string) => string;
  /** A bench tool's name. */
  readonly tool: (id: string) => string;
}

/** The order in words. `glance` is a symbol and at most five words; `spoken` is given only where the sentence read out is not enough. */
export interface OrderText {
  readonly glance: string;
  readonly sentence: string;
  readonly spoken?: string;
}

// Arguments are contravariant: only `never` takes in every function.
export type Say = string | ((args: never, print: Print) => string);
export type SayOrder = OrderText | ((args: never, print: Print) => OrderText);
export type Says = Readonly<Record<string, Say>>;

type NoArgs = None;
/** What the words of one key are made from. */
type ArgsOf<W> = W extends (args: infer A, print: Print) => unknown ? (unknown extends A ? NoArgs : A) : NoArgs;
/** Nothing to pass where the words need nothing. */
type Given<W> = NoArgs extends ArgsOf<W> ? [args?: ArgsOf<W>] : [args: ArgsOf<W>];

interface Rest {
  readonly steps?: readonly Told[];
  readonly movements?: readonly Movement[];
  readonly measureAgain?: boolean;
  readonly effect?: Effect;
  readonly heats?: readonly Heats[];
}

/** The words that orders are told by. */
interface Telling {
  readonly orders: Readonly<Record<string, SayOrder>>;
  readonly steps: Says;
  readonly problems?: Says;
  readonly contradictions?: Says;
  readonly ways?: { readonly facts?: Says; readonly why?: Says; readonly needs?: Says };
}

/** One group of the words for ways side by side. */
type OfWays<W extends Telling, G extends 'facts' | 'why' | 'needs'> = NonNullable<NonNullable<W['ways']>[G]>;

// What the words take is held by the callers' types.
const told = <K extends string>(say: K, args: unknown): Told<K> => ({ say, args: (args ?? {}) as Args });

/**
 * What can be said by these words, which are meant as a type only: `telling<typeof words>()`. A misspelt
 * key, a lacking argument or one of the wrong kind does not compile.
 */
export function telling<W extends Telling>() {
  return {
    tell: <K extends keyof W['orders'] & string>(say: K, args: ArgsOf<W['orders'][K]>, rest: Rest = {}): Order<K> => ({
      say,
      args: args,
      steps: rest.steps ?? [],
      movements: rest.movements ?? [],
      measureAgain: rest.measureAgain ?? false,
      ...(rest.effect ? { effect: rest.effect } : {}),
      ...(rest.heats ? { heats: rest.heats } : {}),
    }),
    contradict: <K extends keyof NonNullable<W['contradictions']> & string>(
      say: K,
      args: ArgsOf<NonNullable<W['contradictions']>[K]>,
      of: readonly string[],
    ): Contradiction<K> => ({ ...told(say, args), of }),
    step: <K extends keyof W['steps'] & string>(say: K, ...[args]: Given<W['steps'][K]>) => told(say, args),
    problem: <K extends keyof NonNullable<W['problems']> & string>(
      say: K,
      ...[args]: Given<NonNullable<W['problems']>[K]>
    ) => told(say, args),
    fact: <K extends keyof OfWays<W, 'facts'> & string>(say: K, ...[args]: Given<OfWays<W, 'facts'>[K]>) =>
      told(say, args),
    why: <K extends keyof OfWays<W, 'why'> & string>(say: K, ...[args]: Given<OfWays<W, 'why'>[K]>) => told(say, args),
    need: <K extends keyof OfWays<W, 'needs'> & string>(say: K, ...[args]: Given<OfWays<W, 'needs'>[K]>) =>
      told(say, args),
  };
}

/** One entry of the words with its arguments put in; undefined where the words have no such key. */
export function said<T>(
  entry: T | ((args: never, print: Print) => T) | undefined,
  args: Args,
  print: Print,
): T | undefined {
  return typeof entry === 'function' ? (entry as (args: Args, print: Print) => T)(args, print) : entry;
}
