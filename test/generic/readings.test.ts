import { describe, expect, it } from 'vitest';
import { readingOf } from '../../src/app/desk/reading-of';
import { retold } from '../../src/app/readings/retold';
import { applies } from '../../src/engine/calculator';
import { evaluate, symbolOf } from '../../src/engine/evaluate';
import { keptUnit } from '../../src/machine/kept-unit';
import { restore, VERSION, type Reading } from '../../src/machine/schema';
import { calculators, situation } from '../support/calculators';
import { some } from '../support/sweep';

const examples = calculators.flatMap(([id, calc]) =>
  some(calc.examples, 3).map((example, i) => [id, i + 1, calc, example] as const),
);

describe.each(examples)('%s, worked example %i, kept as a reading', (id, _, calc, example) => {
  const now = situation(calc, example.given, example.choices);
  const found = evaluate(calc, now);
  const reading: Reading = {
    ...{
      v: VERSION,
      type: 'reading',
      id: 'r1',
      machine: 'm1',
      calculator: id,
      at: '2026-05-06T07:08:09.000Z',
      ordinal: 1,
      note: '',
    },
    ...readingOf(calc, found, now),
  };

  it('passes the door, from the store and from a file alike', () => {
    expect(restore(reading)).toEqual({ ok: true, record: reading });
    expect(restore(JSON.parse(JSON.stringify(reading)))).toEqual({
      ok: true,
      record: JSON.parse(JSON.stringify(reading)) as Reading,
    });
  });

  it('holds every input and result that there is, the model’s too, each with its name and its unit', () => {
    const inputs = Object.entries(found.inputs).flatMap(([symbol, state]) => (state.ok ? [symbol] : []));
    expect(Object.keys(reading.entries)).toEqual(inputs);
    const all = [...Object.keys(calc.model?.outputs ?? {}), ...found.formulas.map(symbolOf)];
    const results = all.filter((symbol) => found.outcomes[symbol]?.ok);
    expect(Object.keys(reading.results)).toEqual(results);
    for (const one of [...Object.values(reading.entries), ...Object.values(reading.results)]) {
      expect(one.name).not.toBe('');
      expect(keptUnit(one)?.id, one.name).toBe(one.unit);
    }
    for (const formula of found.formulas) {
      const result = reading.results[symbolOf(formula)];
      if (result) expect(result.name).toBe(formula.meaning);
    }
  });

  it('holds every limit in force with the verdict on it', () => {
    const inForce = calc.limits.filter((limit) => applies(limit.when, found.choices));
    expect(reading.limits.map(({ of, name }) => [of, name])).toEqual(inForce.map(({ of, label }) => [of, label]));
    expect(reading.limits.map(({ verdict }) => verdict)).toEqual(found.verdict.checks.map(({ state }) => state));
  });

  it('tells its order anew in the very words', () => {
    const sentence = found.instruction?.sentence ?? found.cannot;
    const steps = found.instruction?.steps ?? [];
    expect(retold(reading.order, calc, 'point')).toEqual({ sentence, steps });
    expect(retold(reading.order, undefined, 'point')).toEqual({ sentence, steps });
    const forgotten = {
      ...reading.order,
      sentence: '',
      steps: reading.order.steps.map((step) => ({ ...step, text: '' })),
    };
    if (found.instruction) expect(retold(forgotten, calc, 'point')).toEqual({ sentence, steps });
    // A key that is gone: the words of then.
    const gone = { ...reading.order, say: 'noSuchOrder', sentence: 'As it was.' };
    expect(retold(gone, calc, 'point').sentence).toBe('As it was.');
  });
});
