import { applies, type Calculator, type Choices, type Example, type Meta } from '../../src/calculators/calculator';
import type { Entry } from '../../src/calculators/entry';
import { effectiveChoices, evaluate, symbolOf, type Situation } from '../../src/calculators/evaluate';
import type { InputValue } from '../../src/formula/outcome';
import type { Measure } from '../../src/quantity/unit';
import { fromSi, toSi } from '../../src/quantity/unit';

const modules = import.meta.glob<Calculator>('../../src/calculators/*/index.ts', { eager: true, import: 'default' });
const metas = import.meta.glob<Meta>('../../src/calculators/*/meta.ts', { eager: true, import: 'default' });

const folderOf = (path: string): string => path.split('/').at(-2) ?? '';

/** Every calculator with the name of its folder: found, not listed, so that a new one cannot be forgotten. */
export const calculators: readonly (readonly [id: string, calc: Calculator])[] = Object.entries(modules).map(
  ([path, calc]) => [folderOf(path), calc],
);

export const metaOf: Readonly<Record<string, Meta>> = Object.fromEntries(
  Object.entries(metas).map(([path, meta]) => [folderOf(path), meta]),
);

/** Every combination of options, leaving out those that bring the same inputs, formulas and limits as one before. */
export function combinations(calc: Calculator): Choices[] {
  let all: Choices[] = [{}];
  // An option that nothing depends on brings nothing of its own: its first one stands for all.
  const specs = [...Object.values(calc.inputs), ...calc.formulas, ...calc.limits];
  const matter = new Set(specs.flatMap(({ when }) => Object.keys(when ?? {})));
  for (const [name, spec] of Object.entries(calc.choices)) {
    const options = Object.keys(spec.options).slice(0, matter.has(name) ? undefined : 1);
    all = all.flatMap((choices) => options.map((option) => ({ ...choices, [name]: option })));
  }
  const seen = new Set<string>();
  return all.filter((choices) => {
    const key = JSON.stringify([
      inputsUnder(calc, choices),
      calc.formulas.map((f) => applies(f.when, choices)),
      calc.limits.map((limit) => applies(limit.when, choices)),
    ]);
    return !seen.has(key) && seen.add(key);
  });
}

/** `[calculator, options in words, calculator, options]` for every calculator under every combination. */
export const cases = calculators.flatMap(([id, calc]) =>
  combinations(calc).map((choices) => [id, Object.values(choices).join(', '), calc, choices] as const),
);

export function inputsUnder(calc: Calculator, choices: Choices): string[] {
  return Object.keys(calc.inputs).filter((name) => applies(calc.inputs[name]?.when, choices));
}

export function measureOf(calc: Calculator, choices: Choices, symbol: string): Measure {
  const formula = calc.formulas.find((f) => applies(f.when, choices) && symbolOf(f) === symbol);
  const measure = calc.inputs[symbol]?.measure ?? formula?.measure;
  if (!measure) throw new Error(`${symbol} is neither an input nor a result`);
  return measure;
}

/** Numbers from 0 to 1, the same ones every time (mulberry32, public domain). */
export function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A value somewhere in an input's stated range, in the input's unit: by equal ratios where it spans two decades. */
function randomValue(calc: Calculator, symbol: string, random: () => number): number {
  const spec = calc.inputs[symbol];
  if (!spec) throw new Error(`${symbol} is not an input`);
  const [low, high] = spec.range;
  if (spec.measure.kind.whole) return Math.round(low + random() * (high - low));
  return low > 0 && high / low > 100 ? low * (high / low) ** random() : low + random() * (high - low);
}

/** Exact inputs somewhere in their stated ranges, SI. */
export function randomInputs(calc: Calculator, choices: Choices, random: () => number): Record<string, InputValue> {
  return Object.fromEntries(
    inputsUnder(calc, choices).map((name) => {
      const { unit } = measureOf(calc, choices, name);
      return [name, { value: toSi(randomValue(calc, name, random), unit), u: 0, shape: 'rectangular' as const }];
    }),
  );
}

/**
 * Exact inputs near a worked example (of these options if there is one), each moved by up to one percent: values that fit
 * together, as independent draws from the whole ranges often do not. SI.
 */
export function nearbyInputs(calc: Calculator, choices: Choices, random: () => number): Record<string, InputValue> {
  const names = inputsUnder(calc, choices);
  const chosen = (example: Example): Choices => effectiveChoices(calc, example.choices ?? {});
  const same = calc.examples.filter((example) => sameOptions(calc, chosen(example), choices));
  const pool = same.length > 0 ? same : calc.examples;
  const example = pool[Math.floor(random() * pool.length)];
  const given = Object.fromEntries(Object.entries(example?.given ?? {}).filter(([name]) => names.includes(name)));
  const { inputs } = evaluate(calc, situation(calc, given, choices));
  return Object.fromEntries(
    names.map((name) => {
      const spec = calc.inputs[name];
      const state = inputs[name];
      if (!spec || !state) throw new Error(`${name} is not an input`);
      const { unit, kind } = spec.measure;
      const [low, high] = spec.range;
      const shown = state.ok ? fromSi(state.value, unit) : (low + high) / 2;
      const moved = shown * (0.99 + 0.02 * random());
      const inside = Math.min(Math.max(moved, low), high);
      return [
        name,
        { value: toSi(kind.whole ? Math.round(inside) : inside, unit), u: 0, shape: 'rectangular' as const },
      ];
    }),
  );
}

function sameOptions(calc: Calculator, a: Choices, b: Choices): boolean {
  return Object.keys(calc.choices).every((name) => a[name] === b[name]);
}

/** What a person would have typed, read with no particular tool. */
export function entriesFrom(
  calc: Calculator,
  given: Readonly<Record<string, string | undefined>>,
): Record<string, Entry> {
  return Object.fromEntries(
    Object.entries(given).map(([symbol, text]) => {
      const unit = calc.inputs[symbol]?.measure.unit.id;
      if (unit === undefined || text === undefined) throw new Error(`${symbol} is not an input`);
      return [symbol, { text, unit, tool: '' }];
    }),
  );
}

export function situation(
  calc: Calculator,
  given: Readonly<Record<string, string | undefined>>,
  choices: Choices = {},
): Situation {
  return { entries: entriesFrom(calc, given), choices, kept: {}, mark: 'point' };
}

/** Middle of an input's range, or its typical value, as text in its unit. */
export function plausible(calc: Calculator, symbol: string): string {
  const spec = calc.inputs[symbol];
  if (!spec) throw new Error(`${symbol} is not an input`);
  const [low, high] = spec.range;
  const middle = spec.measure.kind.whole ? Math.round((low + high) / 2) : (low + high) / 2;
  return String(spec.typical ?? middle);
}

export { fromSi };
