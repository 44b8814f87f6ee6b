import {
  applies,
  type Calculator,
  type Choices,
  type Example,
  type ListWords,
  type Meta,
} from '../../src/engine/calculator';
import type { Entry } from '../../src/engine/entry';
import { effectiveChoices, evaluate, symbolOf, type Evaluation, type Situation } from '../../src/engine/evaluate';
import { signedText } from '../../src/engine/signs';
import type { InputValue } from '../../src/formula/outcome';
import type { Measure } from '../../src/quantity/unit';
import { fromSi, toSi } from '../../src/quantity/unit';
import { isWhole, onlyCalculator } from './sweep';

const modules = import.meta.glob<Calculator>('../../src/calculators/*/index.ts', { eager: true, import: 'default' });
const metas = import.meta.glob<Meta>('../../src/calculators/*/meta.ts', { eager: true, import: 'default' });
const lists = import.meta.glob<ListWords>('../../src/calculators/*/words/en/list.ts', {
  eager: true,
  import: 'default',
});

const folderOf = (path: string): string => path.split('/').at(-2) ?? '';

/** Every calculator with the name of its folder: found, not listed, so that a new one cannot be forgotten. */
export const everyCalculator: readonly (readonly [id: string, calc: Calculator])[] = Object.entries(modules).map(
  ([path, calc]) => [folderOf(path), calc],
);

/** Those to try: every one, or the one asked for. */
export const calculators = everyCalculator.filter(([id]) => onlyCalculator === undefined || id === onlyCalculator);

/** An entry of the list, data and words. */
export const metaOf: Readonly<Record<string, Meta & ListWords>> = Object.fromEntries(
  Object.entries(metas).flatMap(([path, meta]) => {
    const words = lists[path.replace('meta.ts', 'words/en/list.ts')];
    return words ? [[folderOf(path), { ...meta, ...words }]] : [];
  }),
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

/** As few combinations as take up every option that any of them takes up: each time the one with the most new options. */
export function eachOptionOnce(all: readonly Choices[]): Choices[] {
  const news = (choices: Choices, seen: ReadonlySet<string>): number =>
    optionsOf(choices).filter((one) => !seen.has(one)).length;
  const seen = new Set<string>();
  const taken: Choices[] = [];
  for (;;) {
    const best = all.reduce<Choices | undefined>(
      (one, two) => (one && news(one, seen) >= news(two, seen) ? one : two),
      undefined,
    );
    if (!best || (taken.length > 0 && news(best, seen) === 0)) return taken;
    taken.push(best);
    for (const option of optionsOf(best)) seen.add(option);
  }
}

const optionsOf = (choices: Choices): string[] => Object.entries(choices).map(([name, option]) => `${name}=${option}`);

/**
 * `[calculator, options in words, calculator, options]` for every calculator to try: in a whole sweep under every
 * combination, else under as few as take up each option once.
 */
export const cases = calculators.flatMap(([id, calc]) => {
  const all = combinations(calc);
  const some = isWhole ? all : eachOptionOnce(all);
  return some.map((choices) => [id, Object.values(choices).join(', '), calc, choices] as const);
});

/** The same for what is costly: in a part of a sweep one of the combinations of each calculator, unless there is but one to try. */
export const fewCases =
  isWhole || onlyCalculator !== undefined ? cases : cases.filter(([id], i) => id !== cases[i - 1]?.[0]);

export function inputsUnder(calc: Calculator, choices: Choices): string[] {
  return Object.keys(calc.inputs).filter((name) => applies(calc.inputs[name]?.when, choices));
}

export function measureOf(calc: Calculator, choices: Choices, symbol: string): Measure {
  const formula = calc.formulas.find((f) => applies(f.when, choices) && symbolOf(f) === symbol);
  const measure = calc.inputs[symbol]?.measure ?? formula?.measure ?? calc.model?.outputs[symbol]?.measure;
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

type Read = Readonly<Record<string, InputValue>>;

const exactly = (si: number): InputValue => ({ value: si, u: 0, shape: 'rectangular' });

/** How many lines of each table are filled: from the least to all there are. */
function filledLines(calc: Calculator, random: () => number): Readonly<Record<string, number>> {
  const lines: Record<string, number> = {};
  for (const [id, { least }] of Object.entries(calc.tables)) {
    const all = Object.values(calc.inputs).flatMap(({ cell }) => (cell?.table === id ? [cell.line] : []));
    lines[id] = Math.round(least + random() * (Math.max(...all) - least));
  }
  return lines;
}

/** Exact readings anywhere in their stated ranges, cells of tables among them, SI. */
export function randomReadings(calc: Calculator, choices: Choices, random: () => number): Read {
  const filled = filledLines(calc, random);
  const names = inputsUnder(calc, choices).filter((name) => {
    const cell = calc.inputs[name]?.cell;
    return !cell || cell.line <= (filled[cell.table] ?? 0);
  });
  return Object.fromEntries(
    names.map((name) => [name, exactly(toSi(randomValue(calc, name, random), measureOf(calc, choices, name).unit))]),
  );
}

/**
 * Exact readings near a worked example (of these options if there is one), each moved by up to one percent: values that fit
 * together, as independent draws from the whole ranges often do not. Cells that the example leaves empty stay empty. SI.
 */
export function nearbyReadings(calc: Calculator, choices: Choices, random: () => number): Read {
  const names = inputsUnder(calc, choices);
  const chosen = (example: Example): Choices => effectiveChoices(calc, example.choices ?? {});
  const taken = calc.examples.filter((example) => isTaken(calc, example, choices));
  const same = taken.filter((example) => sameOptions(calc, chosen(example), choices));
  const pool = same.length > 0 ? same : taken;
  const example = pool[Math.floor(random() * pool.length)];
  const { inputs } = example ? workedUnder(calc, example, choices) : evaluate(calc, situation(calc, {}, choices));
  return Object.fromEntries(
    names.flatMap((name) => {
      const spec = calc.inputs[name];
      const state = inputs[name];
      if (!spec || !state) throw new Error(`${name} is not an input`);
      if (spec.cell && !state.ok) return [];
      const { unit, kind } = spec.measure;
      const [low, high] = spec.range;
      const shown = state.ok ? fromSi(state.value, unit) : (low + high) / 2;
      const moved = shown * (0.99 + 0.02 * random());
      const inside = Math.min(Math.max(moved, low), high);
      return [[name, exactly(toSi(kind.whole ? Math.round(inside) : inside, unit))]];
    }),
  );
}

/** An example's inputs that there are under other options. */
function givenUnder(calc: Calculator, example: Example, choices: Choices): Record<string, string | undefined> {
  const names = inputsUnder(calc, choices);
  return Object.fromEntries(Object.entries(example.given).filter(([name]) => names.includes(name)));
}

const worked = new WeakMap<Example, Map<string, Evaluation>>();

/** A worked example carried out under other options than its own, once for each: a sweep asks for it by the thousand. */
function workedUnder(calc: Calculator, example: Example, choices: Choices): Evaluation {
  const known = worked.get(example) ?? new Map<string, Evaluation>();
  worked.set(example, known);
  const key = JSON.stringify(choices);
  const found = known.get(key) ?? evaluate(calc, situation(calc, givenUnder(calc, example, choices), choices));
  known.set(key, found);
  return found;
}

/** True where the model makes something of an example's readings under these options: a curve that falls is none that rises. */
function isTaken(calc: Calculator, example: Example, choices: Choices): boolean {
  return !calc.model || workedUnder(calc, example, choices).modelProblem === undefined;
}

/**
 * Readings as the formulas see them: a table's cells only through what the model makes of them, taken as exact like the
 * rest; undefined if it refuses.
 */
function throughModel(calc: Calculator, choices: Choices, read: Read): Read | undefined {
  const loose = Object.fromEntries(Object.entries(read).filter(([name]) => !calc.inputs[name]?.cell));
  const made = calc.model?.compute(read, choices);
  if (!made) return loose;
  if (!made.ok) return undefined;
  return {
    ...loose,
    ...Object.fromEntries(Object.entries(made.values).map(([name, one]) => [name, exactly(one.value)])),
  };
}

/** How often readings are drawn that the model refuses (times that run backwards) before it counts as broken. */
const PATIENCE = 10;

/** What the formulas start from, for exact inputs anywhere in their ranges, SI; cells near a worked example if they must be. */
export function randomInputs(calc: Calculator, choices: Choices, random: () => number): Record<string, InputValue> {
  for (let i = 0; i < 2 * PATIENCE; i += 1) {
    const read = randomReadings(calc, choices, random);
    const free = Object.entries(read).filter(([name]) => i < PATIENCE || !calc.inputs[name]?.cell);
    const cells = Object.entries(i < PATIENCE ? {} : nearbyReadings(calc, choices, random));
    const seen = throughModel(calc, choices, {
      ...Object.fromEntries(cells.filter(([name]) => calc.inputs[name]?.cell)),
      ...Object.fromEntries(free),
    });
    if (seen) return seen;
  }
  throw new Error('the model refuses whatever is read');
}

/** What the formulas start from near a worked example, SI. */
export function nearbyInputs(calc: Calculator, choices: Choices, random: () => number): Record<string, InputValue> {
  for (let i = 0; i < PATIENCE; i += 1) {
    const seen = throughModel(calc, choices, nearbyReadings(calc, choices, random));
    if (seen) return seen;
  }
  throw new Error('the model refuses the worked examples');
}

function sameOptions(calc: Calculator, a: Choices, b: Choices): boolean {
  return Object.keys(calc.choices).every((name) => a[name] === b[name]);
}

/** What a person would have typed, read with no particular tool; where there are pictures, one of them picked. */
export function entriesFrom(
  calc: Calculator,
  given: Readonly<Record<string, string | undefined>>,
): Record<string, Entry> {
  return Object.fromEntries(
    Object.entries(given).map(([symbol, text]) => {
      const spec = calc.inputs[symbol];
      if (!spec || text === undefined) throw new Error(`${symbol} is not an input`);
      return [symbol, { text: signedText(spec, text), unit: spec.measure.unit.id, tool: '' }];
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

/** Middle of an input's range, or its typical value, as text in its unit; in a table, what a worked example has there. */
export function plausible(calc: Calculator, symbol: string, choices: Choices = effectiveChoices(calc, {})): string {
  const spec = calc.inputs[symbol];
  if (!spec) throw new Error(`${symbol} is not an input`);
  const [low, high] = spec.range;
  const middle = spec.measure.kind.whole ? Math.round((low + high) / 2) : (low + high) / 2;
  const shown = spec.cell && fullest(calc, choices)?.given[symbol];
  return shown?.replace(/ *±.*/, '') ?? String(spec.typical ?? middle);
}

/** The worked example that fills the most cells, of those that the model takes under these options. */
function fullest(calc: Calculator, choices: Choices): Example | undefined {
  const cells = ({ given }: Example): number => Object.keys(given).filter((name) => calc.inputs[name]?.cell).length;
  return calc.examples
    .filter((example) => cells(example) > 0 && isTaken(calc, example, choices))
    .reduce<Example | undefined>((best, one) => (best && cells(best) >= cells(one) ? best : one), undefined);
}

/** A sheet filled so that there is a result: every input in force, and as many lines of a table as a worked example has. */
export function filledSheet(calc: Calculator, choices: Choices): Record<string, string> {
  const given = fullest(calc, choices)?.given ?? {};
  const names = inputsUnder(calc, choices).filter((name) => !calc.inputs[name]?.cell || Object.hasOwn(given, name));
  return Object.fromEntries(names.map((name) => [name, plausible(calc, name, choices)]));
}

export { fromSi };
