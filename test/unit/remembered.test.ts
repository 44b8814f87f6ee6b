// What is remembered from one keystroke to the next changes nothing: the same code with nothing to remember is the second model.
import { describe, expect, it } from 'vitest';
import type { Calculator } from '../../src/engine/calculator';
import { effectiveChoices, type Situation } from '../../src/engine/evaluate';
import { systemFor } from '../../src/engine/system';
import { readInputs } from '../../src/engine/work';
import type { InputValue } from '../../src/formula/outcome';
import { propagate, type Inputs, type Outcomes } from '../../src/formula/propagate';
import { buildSystem, type System } from '../../src/formula/system';
import { calculators, filledSheet, generator, nearbyInputs, situation } from '../support/calculators';
import { some } from '../support/sweep';

/** The same with nothing remembered of it: what is remembered hangs on the objects themselves. */
const anew = (system: System): System => ({ ...system, steps: system.steps.map((step) => ({ ...step })) });
const afresh = (calc: Calculator): Calculator => ({
  ...calc,
  inputs: Object.fromEntries(Object.entries(calc.inputs).map(([symbol, spec]) => [symbol, { ...spec }])),
});

const plainly = (outcomes: Outcomes) =>
  Object.fromEntries(
    Object.entries(outcomes).map(([name, one]) => [name, one.ok ? { ...one, budget: one.budget } : one]),
  );

const CHANGES: readonly ((input: InputValue) => InputValue | undefined)[] = [
  (input) => ({ ...input, value: input.value * 1.01 }),
  (input) => ({ ...input, u: input.u * 0.5 }),
  (input) => ({ ...input, u: input.u === 0 ? 1e-3 * (Math.abs(input.value) || 1) : 0 }),
  (input) => ({ ...input, shape: input.shape === 'normal' ? 'triangular' : 'normal' }),
  () => undefined,
];

describe('what a propagation remembers', () => {
  it.each(calculators)('%s: changes nothing of its results', (_id, calc) => {
    const choices = effectiveChoices(calc, {});
    const system = systemFor(calc, choices);
    const inputs: Inputs = nearbyInputs(calc, choices, generator(7));
    some(system.inputs, 6).forEach((name, i) => {
      const [input, change] = [inputs[name], CHANGES[i % CHANGES.length]!];
      // There and back, so that what is remembered is asked for too.
      for (const now of [{ ...inputs, [name]: input && change(input) }, inputs]) {
        expect(plainly(propagate(system, now)), name).toEqual(plainly(propagate(anew(system), now)));
      }
    });
  });

  it('is taken where the inputs behind a result are the same, and only there', () => {
    const system = buildSystem(['y = 2 * a', 'z = 3 * b'], ['a', 'b']);
    const at = (a: number, b: number): Outcomes =>
      propagate(system, { a: { value: a, u: 0.1, shape: 'normal' }, b: { value: b, u: 0.1, shape: 'normal' } });
    const [first, second] = [at(1, 1), at(2, 1)];
    expect(second.z).toBe(first.z);
    expect(second.y).toMatchObject({ value: 4 });
    expect(at(1, 1).y).toBe(first.y);
  });
});

describe('what is remembered of an entry', () => {
  it.each(calculators)('%s: changes nothing of how it is read', (_id, calc) => {
    const start = situation(calc, {}, {});
    const entries = Object.fromEntries(
      Object.entries(filledSheet(calc, effectiveChoices(calc, {}))).map(([symbol, text]) => [
        symbol,
        { text, unit: calc.inputs[symbol]?.measure.unit.id ?? '', tool: '' },
      ]),
    );
    const whole: Situation = { ...start, entries };
    const others = some(Object.keys(entries), 12).flatMap((symbol): Situation[] => {
      const entry = entries[symbol]!;
      const spec = calc.inputs[symbol];
      const place = spec?.from;
      const kept = { value: 1, half: 0.1, unit: entry.unit, origin: 'measured', tool: '', at: '' } as const;
      return [
        { ...whole, entries: { ...entries, [symbol]: { ...entry, text: `${entry.text}1` } } },
        { ...whole, entries: { ...entries, [symbol]: { ...entry, tool: spec?.tool ?? 'caliper' } } },
        { ...whole, entries: { ...entries, [symbol]: { ...entry, unit: spec?.measure.kind.units.at(-1)?.id ?? '' } } },
        { ...whole, entries: { ...entries, [symbol]: undefined }, kept: place === undefined ? {} : { [place]: kept } },
      ];
    });
    const options = Object.entries(calc.choices).flatMap(([name, spec]) =>
      Object.keys(spec.options).map((option): Situation => ({ ...whole, choices: { [name]: option } })),
    );
    for (const one of [...others, ...options, { ...whole, mark: 'comma' } satisfies Situation]) {
      for (const now of [one, whole]) {
        const choices = effectiveChoices(calc, now.choices);
        expect(readInputs(calc, now, choices)).toEqual(readInputs(afresh(calc), now, choices));
      }
    }
  });
});
