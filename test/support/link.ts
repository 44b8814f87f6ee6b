import { expect } from 'vitest';
import type { Calculator } from '../../src/engine/calculator';
import { evaluate, type Evaluation, type Situation } from '../../src/engine/evaluate';
import { decodeLink, encodeLink } from '../../src/engine/link';
import type { DecimalMark } from '../../src/quantity/parse';

/** The link to a situation, or why there is none. */
export const linkOf = (one: Calculator, now: Situation) => encodeLink(one, evaluate(one, now), now);
/** The values of that link. */
export function queryOf(one: Calculator, now: Situation): string {
  const encoded = linkOf(one, now);
  if (!encoded.ok) throw new Error(encoded.reason);
  return encoded.query;
}

/** What is said of an evaluation, without whether a value came from a machine: the other phone does not have it. */
export function told(evaluation: Evaluation) {
  const { choices, inputs, outcomes, verdict, instruction, cannot, typical } = evaluation;
  const states = Object.entries(inputs).map(([symbol, state]) =>
    state.ok
      ? [symbol, state.value, state.half, state.unit.id, state.origin, state.tool]
      : [symbol, state.blank, state.reason],
  );
  const { state, checks } = verdict;
  return { choices, states, outcomes, state, checks, instruction, cannot, typical };
}

/** The other phone: no machine, nothing typed, perhaps another decimal mark. */
export function opened(one: Calculator, query: string, mark: DecimalMark): Situation {
  const decoded = decodeLink(one, query, mark);
  if (!decoded.ok) throw new Error(decoded.reason);
  expect(decoded.leftOut).toEqual([]);
  return { ...decoded.values, kept: {}, mark };
}
