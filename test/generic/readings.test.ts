import { parse as readCsv } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { readingOf } from '../../src/app/desk/reading-of';
import { retold } from '../../src/app/readings/retold';
import { applies, type Calculator, type Choices } from '../../src/engine/calculator';
import { evaluate, symbolOf } from '../../src/engine/evaluate';
import { keptUnit } from '../../src/machine/kept-unit';
import { writeCsv } from '../../src/machine/exchange-csv';
import { compare, trendOf } from '../../src/machine/history';
import { restore, type Reading } from '../../src/machine/schema';
import { VERSION } from '../../src/machine/version';
import { nameOf } from '../../src/engine/name';
import { fromSi } from '../../src/quantity/unit';
import csvWords from '../../src/machine/words/en';
import { calculators, combinations, eachOptionOnce, situation } from '../support/calculators';
import { isWhole, some } from '../support/sweep';

/**
 * Worked examples, and again under other options: all, each under each option of each of its questions, in the whole sweep,
 * else some, the first of a check under as few combinations as take up every option.
 */
const examples = calculators.flatMap(([id, calc]) => {
  const options = Object.entries(calc.choices).flatMap(([choice, spec]) =>
    Object.keys(spec.options).map((option): Choices => ({ [choice]: option })),
  );
  const few = eachOptionOnce(combinations(calc));
  return some(calc.examples, 3).flatMap(({ given, choices: own = {} }, i) => {
    const others = isWhole ? options : i === 0 ? few : [];
    const all = [own, ...others.map((picked): Choices => ({ ...own, ...picked }))];
    const different = [...new Map(all.map((choices) => [JSON.stringify(choices), choices])).values()];
    return different.map((choices) => [id, i + 1, JSON.stringify(choices), calc, given, choices] as const);
  });
});

function kept(id: string, calc: Calculator, given: (typeof examples)[number][4], choices: Choices) {
  const now = situation(calc, given, choices);
  const found = evaluate(calc, now);
  const whose = { id: 'r1', machine: 'm1', calculator: id, at: '2026-05-06T07:08:09.000Z', ordinal: 1, note: '' };
  const reading: Reading = { v: VERSION, type: 'reading', ...whose, ...readingOf(calc, found, now) };
  return { found, reading };
}

describe.each(examples)('%s, worked example %i under %s, kept as a reading', (id, _, __, calc, given, choices) => {
  const { found, reading } = kept(id, calc, given, choices);

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
    for (const [symbol, one] of Object.entries({ ...reading.entries, ...reading.results }))
      expect(one.name, symbol).toBe(nameOf(calc, symbol, found.choices));
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

  it('goes to the spreadsheet with every result and limit, as a general reader finds them', () => {
    const rows = readCsv<Record<string, string>>(writeCsv([reading]), { columns: true });
    const of = (symbol: string) => rows.filter((row) => row.symbol === symbol);
    for (const [symbol, result] of Object.entries(reading.results)) {
      const unit = keptUnit(result)!;
      const outcome = found.outcomes[symbol]!;
      if (!outcome.ok) throw new Error(`${symbol} was kept without a value`);
      expect(of(symbol).length, symbol).toBeGreaterThan(0);
      for (const row of of(symbol)) {
        expect(row).toMatchObject({
          result: result.name,
          unit: unit.label,
          'as shown': result.text,
          'kept by': csvWords.csv.keptBy.whole,
        });
        for (const part of ['value', 'low', 'high'] as const) {
          const shown = fromSi(outcome[part], unit);
          expect(Number(row[part]) - shown, `${symbol} ${part}`).toBeCloseTo(
            0,
            9 - Math.ceil(Math.log10(Math.abs(shown) + 1)),
          );
        }
      }
    }
    const held = found.verdict.checks.filter(({ limit: { of: at } }) => reading.results[at] ?? reading.entries[at]);
    for (const { limit, state } of held)
      expect(
        of(limit.of).filter((row) => row.limit === limit.label && row['limit verdict'] === state),
        limit.label,
      ).toHaveLength(1);
  });

  it('stands in the trend, and in the proof against itself, as the sheet judged it', () => {
    for (const symbol of [...Object.keys(reading.results), ...reading.limits.map(({ of }) => of)]) {
      const shown = found.outcomes[symbol];
      const nothing = shown ? !shown.ok : !reading.entries[symbol];
      if (nothing) continue;
      const [point, ...more] = trendOf([reading], symbol);
      expect(more).toEqual([]);
      expect(point, symbol).toBeDefined();
      if (shown?.ok) expect([point!.value, point!.low, point!.high]).toEqual([shown.value, shown.low, shown.high]);
      const states = found.verdict.checks.filter(({ limit }) => limit.of === symbol).map(({ state }) => state);
      expect(point!.state).toBe(
        (['beyond', 'too close', 'none', 'within'] as const).find((one) => states.includes(one)) ?? 'none',
      );
    }
    for (const limit of reading.limits) {
      const proof = compare(reading, reading, limit);
      if (proof) expect([proof.was, proof.now, proof.change]).toEqual([limit.verdict, limit.verdict, 'no change']);
    }
  });
});
