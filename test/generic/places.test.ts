import { describe, expect, it } from 'vitest';
import type { Calculator, InputSpec } from '../../src/engine/calculator';
import { evaluate } from '../../src/engine/evaluate';
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

/** Options under which an input is asked for. */
function chosenWith(calc: Calculator, symbol: string): Readonly<Record<string, string>> {
  const when = calc.inputs[symbol]?.when ?? {};
  return Object.fromEntries(Object.entries(when).map(([choice, wanted]) => [choice, [wanted].flat()[0] ?? '']));
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

/** Typical values of what is kept at each place, with the checks that have them. */
const typicals = everyCalculator.flatMap(([id, calc]) =>
  Object.values<InputSpec>(calc.inputs).flatMap(({ from, typical }) =>
    from === undefined || typical === undefined ? [] : [{ id, from, typical }],
  ),
);

describe.each(calculators)('%s: what is typical of a place', (id) => {
  it('is the same wherever it is asked for', () => {
    for (const { from, typical } of typicals.filter((one) => one.id === id))
      for (const other of typicals.filter((one) => one.from === from))
        expect(typical, `${from} is typically ${typical} in ${id} and ${other.typical} in ${other.id}`).toBe(
          other.typical,
        );
  });
});

describe.each(calculators)('%s: what is typical as a share of another value', (_, calc) => {
  const shares = Object.entries<InputSpec>(calc.inputs).flatMap(([symbol, { share }]) =>
    share ? [{ symbol, share }] : [],
  );

  // Common practice, no source: an extruded thread is about a tenth wider than the bore.
  it('follows what the machine keeps there, and what is entered here before that', () => {
    for (const { symbol, share } of shares) {
      const { of, times, within } = share;
      const kept = { value: 0.0006, half: 0, unit: 'mm', origin: 'nameplate', tool: 'as-marked', at: '' } as const;
      const rest = { choices: chosenWith(calc, symbol), mark: 'point' } as const;
      const onMachine = evaluate(calc, { entries: {}, kept: { [of]: kept }, ...rest }).inputs[symbol];
      expect(onMachine, symbol).toMatchObject({ ok: true, origin: 'typical' });
      if (!onMachine?.ok) continue;
      expect(onMachine.value).toBeCloseTo(times * 0.0006, 12);
      expect(onMachine.half).toBeCloseTo(within * 0.0006, 12);
      const here = Object.keys(calc.inputs).find((one) => calc.inputs[one]?.from === of);
      if (here === undefined) continue;
      const entries = { [here]: { text: '0.8', unit: 'mm', tool: '' } };
      const entered = evaluate(calc, { entries, kept: { [of]: kept }, ...rest }).inputs[symbol];
      expect(entered?.ok && entered.value).toBeCloseTo(times * 0.0008, 12);
    }
  });
});

/** First words of places that stand for the drive of one axis: its motor, belt, screw or gear. */
const AXES = new Set(['z', 'belt', 'feed']);

describe.each(calculators)('%s: what an axis has', (id, calc) => {
  it('is never taken for another: no formula draws on two', () => {
    for (const { text, when } of calc.formulas) {
      const [, right = ''] = text.split('=');
      const names = right.match(/[A-Za-z][A-Za-z0-9_]*/gu) ?? [];
      const drawn = names.flatMap((name) => {
        const place = calc.inputs[name]?.from;
        return place !== undefined && AXES.has(place.split('.')[0] ?? '') ? [place] : [];
      });
      const axes = new Set(drawn.map((place) => place.split('.')[0]));
      const where = `${id}: ${text} ${JSON.stringify(when ?? {})} draws on ${drawn.join(', ')}: give each axis a place of its own`;
      expect(axes.size, where).toBeLessThanOrEqual(1);
    }
  });
});
