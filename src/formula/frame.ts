import { DomainError, evaluateTree } from './evaluate';
import { constantJet, type Jet } from './jet';
import type { InputValue } from './outcome';
import type { Step } from './system';
import type { Node } from './tree';

export type Inputs = Readonly<Record<string, InputValue | undefined>>;

/** One standard uncertainty; 1 for an exact input, whose slope is wanted all the same. */
export const scaleOf = (input: InputValue): number => (input.u > 0 ? input.u : 1);

/** A direction through the inputs: along `a`, or along `a` plus or minus `b`, each in its standard uncertainty. */
interface Direction {
  readonly a: string | undefined;
  readonly b: string | undefined;
  readonly sign: number;
}

const STILL: Direction = { a: undefined, b: undefined, sign: 1 };

/** The same line walked the other way. */
function reversed(jet: Jet): Jet {
  return { c0: jet.c0, c1: -jet.c1, c2: jet.c2, c3: -jet.c3 };
}

/** Jets of all results of one propagation, by direction; a result that a direction does not touch is worked out once. */
export class Frame {
  private readonly jets = new Map<string, { readonly results: Map<string, Jet>; done: number }>();

  /**
   * @param known results worked out so far, in order; it may grow
   * @param fixed whole numbers among them, which do not move
   */
  constructor(
    private readonly inputs: Inputs,
    private readonly known: readonly Step[],
    private readonly fixed: ReadonlyMap<string, number>,
  ) {}

  private along(direction: Direction, tree: Node, results: ReadonlyMap<string, Jet>): Jet {
    return evaluateTree(tree, (name) => {
      const result = results.get(name);
      if (result) return result;
      const input = this.inputs[name];
      if (!input) throw new DomainError('a value is missing', [name]);
      const step = name === direction.a ? 1 : name === direction.b ? direction.sign : 0;
      return step === 0 ? constantJet(input.value) : { c0: input.value, c1: step * scaleOf(input), c2: 0, c3: 0 };
    });
  }

  /** The jet of an earlier result, taken from a simpler direction where it moves along less than both inputs. */
  private ofResult(step: Step, direction: Direction, results: ReadonlyMap<string, Jet>): Jet | undefined {
    const { symbol, tree } = step.formula;
    const whole = this.fixed.get(symbol);
    if (whole !== undefined) return constantJet(whole);
    const { a, b, sign } = direction;
    const byA = a !== undefined && step.inputs.has(a);
    const byB = b !== undefined && step.inputs.has(b);
    if (a !== undefined && !byA && !byB) return this.at(STILL).get(symbol);
    if (b !== undefined && !byB) return this.at({ a, b: undefined, sign: 1 }).get(symbol);
    if (b !== undefined && !byA) {
      const jet = this.at({ a: b, b: undefined, sign: 1 }).get(symbol);
      return jet && sign < 0 ? reversed(jet) : jet;
    }
    try {
      return this.along(direction, tree, results);
    } catch (error) {
      // No finite slope this way; only a tree that uses this result has to do without.
      if (!(error instanceof DomainError)) throw error;
      return undefined;
    }
  }

  private at(direction: Direction): ReadonlyMap<string, Jet> {
    const key = `${direction.a ?? ''}|${direction.b ?? ''}|${direction.sign}`;
    const held = this.jets.get(key) ?? { results: new Map<string, Jet>(), done: 0 };
    this.jets.set(key, held);
    for (; held.done < this.known.length; held.done += 1) {
      const step = this.known[held.done];
      const jet = step && this.ofResult(step, direction, held.results);
      if (step && jet) held.results.set(step.formula.symbol, jet);
    }
    return held.results;
  }

  /** The jet of `tree` with input `a` moved by one standard uncertainty and `b` by `sign` of its own. */
  jet(tree: Node, a?: string, b?: string, sign = 1): Jet {
    const direction = { a, b, sign };
    return this.along(direction, tree, this.at(direction));
  }

  /** The jet along one input; undefined where the input is exact and there is no finite slope, as for sqrt at 0. */
  jetAlong(name: string, tree: Node): Jet | undefined {
    try {
      return this.jet(tree, name);
    } catch (error) {
      if (!(error instanceof DomainError) || this.inputs[name]?.u !== 0) throw error;
      return undefined;
    }
  }
}
