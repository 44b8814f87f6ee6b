import { describe, expect, it } from 'vitest';
import type { Calculator, InputSpec } from '../../src/engine/calculator';
import { calculators, everyCalculator } from '../support/calculators';

/** What a calculator draws from a machine, with what it is taken for. */
function drawn(calc: Calculator) {
  const inputs = Object.values<InputSpec>(calc.inputs).map(({ from, label, measure }) => ({
    from,
    label,
    kind: measure.kind.id,
  }));
  const choices = Object.values(calc.choices).map(({ from, label, options }) => ({
    from,
    label,
    kind: `choice of ${Object.keys(options).join(', ')}`,
  }));
  return [...inputs, ...choices].flatMap(({ from, ...rest }) => (from === undefined ? [] : [{ from, ...rest }]));
}

describe('what a machine keeps', () => {
  it.each(calculators)('%s: the same place means the same kind under the same label as elsewhere', (id, calc) => {
    const here = drawn(calc);
    for (const { from, kind, label } of here) {
      expect(from, `${from}: write a place as part.thing, in small letters`).toMatch(
        /^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/,
      );
      const alike = here.filter((one) => one.from === from);
      expect(alike.length, `${from} is drawn by ${alike.length} inputs: a place has one`).toBe(1);
      for (const [other, theirs] of everyCalculator) {
        const same = drawn(theirs).find((one) => one.from === from);
        if (!same) continue;
        const where = `${from} is “${label}” (${kind}) here and “${same.label}” (${same.kind}) in ${other}: make them alike, or take another place`;
        expect({ kind, label }, `${id}: ${where}`).toEqual({ kind: same.kind, label: same.label });
      }
    }
  });
});
