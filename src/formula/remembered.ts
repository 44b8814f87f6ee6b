import type { Inputs, InputValue, Outcome } from './outcome';
import type { Step } from './system';
import type { Taylor } from './taylor';

/** How far a propagation has come; `fixed` and `results` grow as results come in. */
export interface Reached {
  readonly inputs: Inputs;
  /** Which of the inputs are uncertain: the numbers in a `Taylor`, and the axis that an input is drawn along, hang on it. */
  readonly order: string;
  /** Whole numbers among the results: settled, so they do not move. */
  readonly fixed: Map<string, number>;
  readonly results: Map<string, Taylor>;
}

/** What came of a step, and of which inputs. */
interface Remembered {
  readonly order: string;
  readonly from: readonly (InputValue | undefined)[];
  readonly outcome: Outcome;
  readonly taylor: Taylor | undefined;
  readonly fixed: number | undefined;
}

/** As many as an order is tried with, and what stands on the sheet. */
const MOST_REMEMBERED = 4;

const memory = new WeakMap<Step, readonly Remembered[]>();

const isSame = (a: InputValue | undefined, b: InputValue | undefined): boolean =>
  a === b || (a?.value === b?.value && a?.u === b?.u && a?.shape === b?.shape);

function isOf(made: Remembered, step: Step, { order, inputs }: Reached): boolean {
  if (made.order !== order) return false;
  let i = 0;
  for (const name of step.inputs) {
    if (!isSame(made.from[i], inputs[name])) return false;
    i += 1;
  }
  return true;
}

/**
 * What a step comes to. It hangs on nothing but the inputs it reaches, so one that was worked out from the same ones is taken
 * as it was: a keystroke changes one input, and a change that is tried a few.
 *
 * @param remember keep it for the next time
 */
export function outcomeOf(step: Step, at: Reached, remember: boolean, make: () => Outcome): Outcome {
  const { symbol } = step.formula;
  const before = memory.get(step) ?? [];
  const found = before.find((one) => isOf(one, step, at));
  if (found) {
    if (found.taylor) at.results.set(symbol, found.taylor);
    if (found.fixed !== undefined) at.fixed.set(symbol, found.fixed);
    if (found !== before[0]) memory.set(step, [found, ...before.filter((one) => one !== found)]);
    return found.outcome;
  }
  const outcome = make();
  if (!remember) return outcome;
  const from = [...step.inputs].map((name) => at.inputs[name]);
  const [taylor, fixed] = [at.results.get(symbol), at.fixed.get(symbol)];
  const made = { order: at.order, from, outcome, taylor, fixed };
  memory.set(step, [made, ...before.slice(0, MOST_REMEMBERED - 1)]);
  return outcome;
}
