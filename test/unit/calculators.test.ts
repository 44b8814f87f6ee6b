import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applies, systemFor, type Calculator, type Choices, type InputSpec } from '../../src/engine/calculator';
import { readEntry } from '../../src/engine/entry';
import { evaluate, explain, nameOf, symbolOf } from '../../src/engine/evaluate';
import { expanded } from '../../src/formula/outcome';
import { toolById, toolsFor } from '../../src/reference/tools';
import {
  calculators,
  cases,
  combinations,
  entriesFrom,
  filledSheet,
  fromSi,
  generator,
  inputsUnder,
  measureOf,
  metaOf,
  nearbyReadings,
  plausible,
  randomReadings,
  situation,
} from '../support/calculators';

const ROOT = 'src/calculators';
const folders = readdirSync(ROOT).filter((name) => statSync(`${ROOT}/${name}`).isDirectory());

describe('the folders', () => {
  it('are found, every one of them', () => {
    expect(calculators.map(([id]) => id).sort()).toEqual([...folders].sort());
    expect(folders.length).toBeGreaterThan(0);
  });

  it.each(folders)('%s has its entry for the list, its data and its drawing', (folder) => {
    for (const file of ['meta.ts', 'index.ts', 'figure.tsx']) {
      expect(existsSync(`${ROOT}/${folder}/${file}`), file).toBe(true);
    }
    const meta = metaOf[folder]!;
    expect(meta.title.length).toBeGreaterThan(3);
    expect(meta.question).toMatch(/\?$/);
    expect(meta.sayings.length).toBeGreaterThan(1);
  });

  it('have titles and places in the list of their own', () => {
    const metas = Object.values(metaOf);
    expect(new Set(metas.map((meta) => meta.title)).size).toBe(metas.length);
    expect(new Set(metas.map((meta) => meta.order)).size).toBe(metas.length);
  });
});

/** Inputs that the model looks at, whatever the options. */
function askedByModel(calc: Calculator): ReadonlySet<string> {
  const asked = new Set<string>();
  const random = generator(5);
  for (const choices of calc.model ? combinations(calc) : []) {
    for (const read of [nearbyReadings(calc, choices, random), randomReadings(calc, choices, random)]) {
      const watched = new Proxy(read, {
        get: (target, name) => (asked.add(String(name)), Reflect.get(target, name) as unknown),
      });
      calc.model?.compute(watched, choices);
    }
  }
  return asked;
}

describe.each(calculators)('%s: its tables', (_id, calc) => {
  it('have a cell in every column of every line, of one kind and range down a column', () => {
    const cells = Object.entries(calc.inputs).flatMap(([symbol, spec]) =>
      spec.cell ? [{ symbol, spec, ...spec.cell }] : [],
    );
    for (const { symbol, table } of cells) expect(Object.keys(calc.tables), symbol).toContain(table);
    if (cells.length > 0) expect(calc.model, 'cells reach the formulas through a model').toBeDefined();
    for (const [id, { columns, least }] of Object.entries(calc.tables)) {
      const here = cells.filter(({ table }) => table === id);
      const most = Math.max(...here.map(({ line }) => line));
      expect(most).toBeGreaterThanOrEqual(least);
      for (const column of Object.keys(columns)) {
        const down = here.filter((cell) => cell.column === column);
        expect(
          down.map(({ line }) => line).sort((a, b) => a - b),
          column,
        ).toEqual(Array.from({ length: most }, (_, i) => i + 1));
        const [first] = down;
        for (const { spec } of down) {
          expect({ ...spec, label: '', cell: '' }).toEqual({ ...first!.spec, label: '', cell: '' });
          // A machine keeps what describes it, not readings.
          expect(spec.from).toBeUndefined();
        }
      }
      expect(here.length).toBe(most * Object.keys(columns).length);
    }
  });

  it('are filled by their presets within the ranges and lines there are, or a sentence says why not', () => {
    const presets = Object.entries(calc.tables).flatMap(([id, table]) =>
      Object.entries(table.presets ?? {}).map(([name, preset]) => ({ id, name, preset })),
    );
    const { inputs, outcomes } = evaluate(calc, situation(calc, filledSheet(calc, {})));
    const inForce = (symbol: string): number | undefined => {
      const found = [inputs[symbol], outcomes[symbol]].find((one) => one?.ok);
      return found?.ok ? found.value : undefined;
    };
    for (const { id, name, preset } of presets) {
      const filled = preset(inForce);
      expect(Array.isArray(filled), name).toBe(true);
      if ('reason' in filled) continue;
      filled.forEach((line, i) => {
        for (const [column, si] of Object.entries(line)) {
          const spec = Object.values(calc.inputs).find(
            ({ cell }) => cell?.table === id && cell.line === i + 1 && cell.column === column,
          );
          expect(spec, `${name}, line ${i + 1}, ${column}`).toBeDefined();
          const shown = fromSi(si, spec!.measure.unit);
          expect(shown).toBeGreaterThanOrEqual(spec!.range[0]);
          expect(shown).toBeLessThanOrEqual(spec!.range[1]);
        }
      });
      const refused = preset(() => undefined);
      if (!('reason' in refused)) expect(refused.length, name).toBeGreaterThan(0);
      else expect(refused.reason, name).toMatch(/^[A-Z].*\.$/);
    }
  });
});

describe.each(calculators)('%s: its data', (id, calc) => {
  const inputs = Object.entries<InputSpec>(calc.inputs);
  const choiceNames = Object.keys(calc.choices);
  const results = new Set(calc.formulas.map(symbolOf));

  it('has typical values and spreads that lie in their ranges', () => {
    for (const [name, spec] of inputs) {
      const [low, high] = spec.range;
      expect(low, name).toBeLessThan(high);
      expect(spec.spread ?? 0, name).toBeGreaterThanOrEqual(0);
      if (spec.typical !== undefined) {
        expect(spec.typical, name).toBeGreaterThanOrEqual(low);
        expect(spec.typical, name).toBeLessThanOrEqual(high);
      }
      if (spec.measure.kind.whole) expect(Number.isInteger(spec.typical ?? 0), name).toBe(true);
      if (low < 0 && spec.measure.unit.offset === 0) expect(spec.signed, `${name} may be negative: signed`).toBe(true);
      if (spec.signed) expect(low, name).toBeLessThan(0);
      expect(spec.label, name).toMatch(/^\S.*\S$/);
    }
  });

  it('gives every option’s values to inputs that exist, in their ranges', () => {
    for (const [choiceName, choice] of Object.entries(calc.choices)) {
      expect(Object.keys(choice.options), choiceName).toContain(choice.typical);
      expect(Object.keys(choice.options).length, choiceName).toBeGreaterThan(1);
      for (const [option, { set }] of Object.entries(choice.options)) {
        for (const [name, given] of Object.entries(set ?? {})) {
          const where = `${choiceName}: ${option} sets ${name}`;
          const spec = calc.inputs[name];
          expect(spec, where).toBeDefined();
          const [value, half] = typeof given === 'number' ? [given, 0] : given;
          expect(value, where).toBeGreaterThanOrEqual(spec!.range[0]);
          expect(value, where).toBeLessThanOrEqual(spec!.range[1]);
          expect(half, where).toBeGreaterThanOrEqual(0);
        }
      }
    }
  });

  it('names tools that exist and read that kind of quantity', () => {
    for (const [name, spec] of inputs) {
      if (spec.tool === undefined) continue;
      expect(toolById(spec.tool), `${name}: ${spec.tool}`).toBeDefined();
      expect(
        toolsFor(spec.measure.kind.id).map((tool) => tool.id),
        name,
      ).toContain(spec.tool);
    }
  });

  it('names choices and options that exist wherever something depends on them', () => {
    const all = [...inputs.map(([, spec]) => spec), ...Object.values(calc.choices), ...calc.formulas, ...calc.limits];
    for (const { when } of all) {
      for (const [name, wanted] of Object.entries(when ?? {})) {
        expect(choiceNames).toContain(name);
        for (const option of [wanted].flat()) expect(Object.keys(calc.choices[name]!.options)).toContain(option);
      }
    }
  });

  it('uses every input, in a formula or in the instruction', () => {
    const used = new Set<string>();
    for (const choices of combinations(calc)) {
      for (const step of systemFor(calc, choices).steps) for (const name of step.formula.uses) used.add(name);
    }
    const sources = readdirSync(`${ROOT}/${id}`).filter((file) => file.endsWith('.ts'));
    const text = sources.map((file) => readFileSync(`${ROOT}/${id}/${file}`, 'utf8')).join('\n');
    for (const [, name] of text.matchAll(/\b(?:number|text|known|value)\('(\w+)'/g)) used.add(name!);
    for (const name of askedByModel(calc)) used.add(name);
    for (const [name] of inputs) expect([...used], `input ${name}`).toContain(name);
  });

  it('checks results that exist against limits that can be seen and edited, whatever the options', () => {
    for (const choices of combinations(calc)) {
      const names = [
        ...inputsUnder(calc, choices),
        ...calc.formulas.filter((f) => applies(f.when, choices)).map(symbolOf),
        ...Object.keys(calc.model?.outputs ?? {}),
      ];
      for (const limit of calc.limits.filter((one) => applies(one.when, choices))) {
        expect(names).toContain(limit.of);
        expect(limit.max !== undefined || limit.min !== undefined).toBe(true);
        for (const name of [limit.max, limit.min]) if (name !== undefined) expect(names).toContain(name);
        const dimension = measureOf(calc, choices, limit.of).kind.dimension;
        for (const name of [limit.max, limit.min]) {
          if (name !== undefined) expect(measureOf(calc, choices, name).kind.dimension).toEqual(dimension);
        }
      }
    }
  });

  it('words its verdicts where it judges by itself, and only there', () => {
    const worded = Object.keys(metaOf[id]?.verdicts ?? {}).sort();
    expect(worded).toEqual(calc.judge ? ['beyond', 'too close', 'within'] : []);
    if (calc.judge) expect(calc.limits, 'a limit would be overruled').toEqual([]);
  });

  it('has no symbol that is both input and result, and says how to prove the work', () => {
    const outputs = Object.keys(calc.model?.outputs ?? {});
    for (const name of [...inputs.map(([symbol]) => symbol), ...outputs]) expect(results.has(name), name).toBe(false);
    for (const [name] of inputs) expect(outputs).not.toContain(name);
    expect(calc.proof.length).toBeGreaterThan(20);
  });
});

describe('what a machine keeps', () => {
  const places = new Map<string, { id: string; kind: string; label: string }>();

  it.each(calculators)('%s: the same place means the same kind under the same label as elsewhere', (id, calc) => {
    const kept = [
      ...Object.values<InputSpec>(calc.inputs).map((spec) => ({
        from: spec.from,
        label: spec.label,
        kind: spec.measure.kind.id,
      })),
      ...Object.values(calc.choices).map((choice) => ({
        from: choice.from,
        label: choice.label,
        kind: `choice of ${Object.keys(choice.options).join(', ')}`,
      })),
    ];
    const here = kept.flatMap(({ from, ...rest }) => (from === undefined ? [] : [[from, rest] as const]));
    expect(new Set(here.map(([from]) => from)).size, 'one input for each place').toBe(here.length);
    for (const [from, { kind, label }] of here) {
      expect(from).toMatch(/^[a-z]+(-[a-z]+)*\.[a-z]+(-[a-z]+)*$/);
      const before = places.get(from) ?? { id, kind, label };
      places.set(from, before);
      expect({ from, kind, label }, `${id} against ${before.id}`).toEqual({
        from,
        kind: before.kind,
        label: before.label,
      });
    }
  });
});

const examples = calculators.flatMap(([id, calc]) =>
  calc.examples.map((example) => [id, example.title, calc, example] as const),
);

describe('worked examples', () => {
  it.each(calculators)('%s has at least three, each of its own title', (_id, calc) => {
    expect(calc.examples.length).toBeGreaterThanOrEqual(3);
    expect(new Set(calc.examples.map((example) => example.title)).size).toBe(calc.examples.length);
  });

  it.each(examples)('%s: %s', (_id, _title, calc, example) => {
    for (const [name, option] of Object.entries(example.choices ?? {})) {
      expect(Object.keys(calc.choices[name]?.options ?? {}), name).toContain(option);
    }
    const found = evaluate(calc, situation(calc, example.given, example.choices));
    for (const name of Object.keys(example.given)) {
      expect(found.inputs[name], `${name} is an input under these options, and is read`).toMatchObject({ ok: true });
    }
    const expectations = Object.entries(example.expect);
    expect(expectations.length).toBeGreaterThan(0);
    for (const [symbol, expected] of expectations) {
      const [value, tolerance] = expected!;
      const outcome = found.outcomes[symbol];
      const why = outcome?.ok === false ? explain(calc, outcome.failure) : '';
      expect(outcome?.ok, `${symbol}: ${why}`).toBe(true);
      if (!outcome?.ok) continue;
      const { unit } = measureOf(calc, found.choices, symbol);
      const difference = Math.abs(fromSi(outcome.value, unit) - value);
      // A tolerance of 0 or 1e-9 leaves only the rounding of the unit's factor.
      const slack = 1e-12 * Math.abs(value);
      expect(
        difference,
        `${symbol} is ${fromSi(outcome.value, unit)}, expected ${value} ± ${tolerance}`,
      ).toBeLessThanOrEqual(tolerance + slack);
      expect(tolerance, `${symbol}: the tolerance is no tolerance`).toBeLessThanOrEqual(
        Math.max(0.1 * Math.abs(value), 1e-9),
      );
    }
    if (example.verdict !== undefined) expect(found.verdict.state).toBe(example.verdict);
  });
});

/** Results, verdict and instruction of an evaluation hold no NaN and no leftover of a missing value. */
function expectSound(calc: Calculator, found: ReturnType<typeof evaluate>): void {
  for (const [symbol, outcome] of Object.entries(found.outcomes)) {
    if (!outcome.ok) {
      expect(explain(calc, outcome.failure), symbol).toMatch(/^[A-Z].*\.$/);
      expect(explain(calc, outcome.failure), symbol).not.toMatch(/NaN|undefined|Infinity/);
      continue;
    }
    const numbers = [
      outcome.value,
      outcome.u,
      outcome.low,
      outcome.high,
      expanded(outcome),
      ...outcome.budget.map((part) => part.share),
    ];
    for (const number of numbers) expect(Number.isFinite(number), `${symbol}: ${numbers.join(', ')}`).toBe(true);
    expect(outcome.low, symbol).toBeLessThanOrEqual(outcome.high);
  }
  const said = [found.instruction?.headline, ...(found.instruction?.steps ?? []), found.cannot].filter(
    (text) => text !== undefined,
  );
  expect(said.length).toBeGreaterThan(0);
  for (const text of said) expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
  for (const { amount, direction, part } of found.instruction?.movements ?? []) {
    expect(Number.isFinite(amount), part).toBe(true);
    expect(amount, `${part}, ${direction}`).toBeGreaterThanOrEqual(0);
  }
}

const beyond = (spec: InputSpec): string[] => {
  const [low, high] = spec.range;
  const span = high - low;
  return [String(Math.ceil(high + span)), String(Math.floor(low - span - 1)), '1e30', '-1e30', '1e999', '9'.repeat(60)];
};
/**
 * Inputs to spoil one at a time. Down a column of a table they are all alike (held above), so a full line, the first empty
 * one and the last stand for the others.
 */
function spoilt(calc: Calculator, choices: Choices): string[] {
  const filled = filledSheet(calc, choices);
  return inputsUnder(calc, choices).filter((name) => {
    const cell = calc.inputs[name]?.cell;
    if (!cell) return true;
    const column = Object.entries(calc.inputs).filter(
      ([, one]) => one.cell?.table === cell.table && one.cell.column === cell.column,
    );
    const empty = column.findIndex(([symbol]) => !Object.hasOwn(filled, symbol));
    return [1, empty + 1, column.length].includes(cell.line);
  });
}

const nonsense = ['abc', '1..2', '--1', '1/0', '1 furlong', '± 3', '1 ± ', '1 ± -1', '1,000', '١٢', '{}', '1e', '½½'];
/** Half-widths that a person could type and that no instrument has. */
const absurd = ['1e30', '1e300'];

describe('anything typed into any field', () => {
  it.each(cases)(
    '%s (%s): a bad entry yields a sentence, never an exception or NaN',
    (_id, _options, calc, choices) => {
      const names = spoilt(calc, choices);
      const good = filledSheet(calc, choices);
      const filled = evaluate(calc, situation(calc, good, choices));
      expectSound(calc, filled);
      expect(filled.modelProblem, 'the model has a result to lose').toBeUndefined();
      expectSound(calc, evaluate(calc, situation(calc, {}, choices)));
      for (const name of names) {
        const spec = calc.inputs[name]!;
        expectSound(calc, evaluate(calc, situation(calc, { ...good, [name]: 'abc' }, choices)));
        const read = (text: string) =>
          readEntry(name, spec, entriesFrom(calc, { [name]: text })[name], undefined, calc.choices, choices, 'point');
        for (const text of [
          ...nonsense,
          ...beyond(spec),
          ...absurd.map((half) => `${plausible(calc, name)} ± ${half}`),
        ]) {
          const state = read(text);
          expect(state.ok, `${name}: “${text}” was taken`).toBe(false);
          if (state.ok) continue;
          expect(state.blank, `${name}: “${text}”`).toBe(false);
          expect(state.reason).toMatch(/^[A-Z“−\d].{10,}\.$/s);
          expect(state.reason).not.toMatch(/NaN|undefined/);
        }
        const [low, high] = spec.range;
        const widest = `${plausible(calc, name)} ± ${high - low}`;
        expectSound(calc, evaluate(calc, situation(calc, { ...good, [name]: widest }, choices)));
      }
    },
  );

  it.each(cases)('%s (%s): values at the ends of every range, and around them', (_id, _options, calc, choices) => {
    const names = spoilt(calc, choices);
    const good = filledSheet(calc, choices);
    for (const name of names) {
      const [low, high] = calc.inputs[name]!.range;
      for (const end of [low, high, ...(low < 0 && high > 0 ? [0] : [])]) {
        const found = evaluate(calc, situation(calc, { ...good, [name]: String(end) }, choices));
        expect(found.inputs[name], `${name} at ${end}`).toMatchObject({ ok: true });
        expectSound(calc, found);
      }
    }
  });

  it.each(cases)(
    '%s (%s): an empty field that has no typical value is asked for by its label',
    (_id, _options, calc, choices) => {
      const found = evaluate(calc, situation(calc, {}, choices));
      for (const [name, state] of Object.entries(found.inputs)) {
        if (!state.ok) expect(state).toEqual({ ok: false, blank: true, reason: `Enter: ${nameOf(calc, name)}.` });
        else expect(state.origin).toBe('typical');
      }
    },
  );
});

describe('choices from outside', () => {
  it.each(calculators)('%s takes the typical option for one that does not exist', (_id, calc) => {
    const odd = Object.fromEntries(Object.keys(calc.choices).map((name) => [name, 'constructor']));
    const typical = Object.fromEntries(Object.entries(calc.choices).map(([name, choice]) => [name, choice.typical]));
    expect(evaluate(calc, situation(calc, {}, odd)).choices).toEqual(typical);
    expect(evaluate(calc, situation(calc, {}, { nobody: 'knows' })).choices).toEqual(typical);
  });
});
