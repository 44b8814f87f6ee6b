import { expect } from 'vitest';
import { drawCode, QUIET_ZONE } from '../../src/app/desk/qr';
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

/** The code as a scanner's picture: RGBA, `scale` dots a module, dark on light, with its quiet zone. */
export function pictureOf(text: string, scale = 4) {
  const code = drawCode(text)!;
  const side = (code.size + 2 * QUIET_ZONE) * scale;
  const data = new Uint8ClampedArray(4 * side * side).fill(255);
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1) {
      const dark = code.dark(Math.floor(x / scale) - QUIET_ZONE, Math.floor(y / scale) - QUIET_ZONE);
      if (dark) data.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
    }
  }
  return { data, side };
}
