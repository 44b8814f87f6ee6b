import type { Known } from '../formula/outcome';
import type { Calculator } from './calculator';
import { evaluate, type Evaluation, type Situation } from './evaluate';
import type { Effect } from './order';

/** What is to be read once an order is carried out. SI. */
export interface Prediction {
  /** Inputs read anew: value expected, and half-width of its doubt. */
  readonly inputs: Readonly<Record<string, { readonly value: number; readonly half: number }>>;
  /** The evaluation of those readings. */
  readonly after: Evaluation;
  /** Results that a limit in force is held to, as they are then expected. */
  readonly results: Readonly<Record<string, Known>>;
}

/** This reading and the next one each have the tool's doubt. */
const TWICE = Math.SQRT2;

function readAnew(found: Evaluation, effect: Effect): Prediction['inputs'] {
  return Object.fromEntries(
    Object.entries(effect).map(([symbol, given]) => {
      if (typeof given !== 'number') return [symbol, given];
      const state = found.inputs[symbol];
      return [symbol, { value: given, half: TWICE * (state?.ok ? state.half : 0) }];
    }),
  );
}

/** What to expect of the reading after an order, with its doubt; undefined where the order changes nothing that is read. */
export function predict(calc: Calculator, situation: Situation, found: Evaluation): Prediction | undefined {
  const effect = found.instruction?.order.effect;
  if (!effect) return undefined;
  const inputs = readAnew(found, effect);
  const after = evaluate(calc, { ...situation, read: { ...situation.read, ...inputs } });
  const results: Record<string, Known> = {};
  for (const { limit } of found.verdict.checks) {
    const outcome = after.outcomes[limit.of];
    if (outcome?.ok) results[limit.of] = outcome;
  }
  return { inputs, after, results };
}
