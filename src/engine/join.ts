import type { ChoiceSpec, Example, FormulaSpec, InputSpec, LimitSpec, OutputSpec, TableSpec } from './worded';
import type {
  ChoiceData,
  ExampleData,
  FormulaData,
  InputData,
  LimitData,
  ModelData,
  OutputData,
  TableData,
} from './spec';
import { worded } from './source';
import type { InputWords, Sayings, TableWords } from './words';
import engine from './words/en';

type Map<T> = Readonly<Record<string, T>>;

/** A calculator's data, its keys forgotten. */
export interface Data {
  readonly inputs: Map<InputData>;
  readonly tables?: Map<TableData>;
  readonly model?: ModelData;
  readonly choices: Map<ChoiceData>;
  readonly formulas: readonly FormulaData[];
  readonly limits: readonly LimitData[];
  readonly cautions: readonly string[];
  readonly beware?: readonly string[];
  readonly examples: readonly ExampleData[];
  readonly measured: readonly string[];
  readonly levers?: Map<unknown>;
}

/** Its words, their keys forgotten: the types have held them equal to the data's. */
interface AnyWords extends Sayings {
  readonly inputs: Map<Partial<InputWords> | undefined>;
  readonly choices: Map<
    { readonly label?: string; readonly hint?: string; readonly options?: Map<string> } | undefined
  >;
  readonly results: Map<string>;
  readonly equations?: Map<string>;
  readonly limits: Map<string>;
  readonly tables?: Map<TableWords<string>>;
  readonly cautions: Map<string>;
  readonly beware: Map<string>;
  readonly proof: string;
  readonly examples: Map<string>;
  readonly sources: Map<string>;
}

const places: Map<string> = engine.places;
const shared: Map<{ readonly label: string; readonly options: Map<string> }> = engine.choices;

/** The words of a key. @throws Error for one that the types could not see lacking */
function need<T>(found: T | undefined, what: string, key: string): T {
  if (found === undefined) throw new Error(`No words for ${what} ${key}: add them to the folder's words.`);
  return found;
}

const mapped = <A, B>(map: Map<A>, make: (one: A, key: string) => B): Map<B> =>
  Object.fromEntries(Object.entries(map).map(([key, one]) => [key, make(one, key)]));

function inputSpec(data: InputData, symbol: string, words: AnyWords): InputSpec {
  const own = words.inputs[symbol];
  const cell = data.cell;
  const label =
    own?.label ??
    (cell ? words.tables?.[cell.table]?.columns[cell.column]?.cell(cell.line) : undefined) ??
    places[data.from ?? ''];
  const { basis, ...rest } = data;
  return {
    ...rest,
    label: need(label, 'input', symbol),
    ...(own?.hint === undefined ? {} : { hint: own.hint }),
    ...(basis === undefined ? {} : { basis: worded(basis, words.sources) }),
  };
}

function choiceSpec(data: ChoiceData, name: string, words: AnyWords): ChoiceSpec {
  const own = words.choices[name];
  const place = shared[data.from ?? ''];
  return {
    ...data,
    label: need(own?.label ?? place?.label, 'choice', name),
    ...(own?.hint === undefined ? {} : { hint: own.hint }),
    options: mapped(data.options, (option, id) => ({
      ...option,
      label: need(option.label ?? own?.options?.[id] ?? place?.options[id], 'option', `${name}.${id}`),
    })),
  };
}

function tableSpec(data: TableData, id: string, words: AnyWords): TableSpec {
  const own = need(words.tables?.[id], 'table', id);
  const { columns, ...rest } = data;
  return {
    ...rest,
    label: own.label,
    line: own.line,
    hint: own.hint,
    columns: Object.fromEntries(columns.map((column) => [column, need(own.columns[column], 'column', column).head])),
    presetNames: own.presets ?? {},
  };
}

const symbolIn = (text: string): string => text.split('=', 1)[0]?.trim() ?? '';

function formulaSpec(data: FormulaData, words: AnyWords): FormulaSpec {
  const key = data.as ?? symbolIn(data.text);
  return { ...data, meaning: need(words.results[key], 'result', key), cite: worded(data.cite, words.sources) };
}

function limitSpec(data: LimitData, words: AnyWords): LimitSpec {
  const key = data.as ?? data.of;
  return { ...data, label: need(words.limits[key], 'limit', key), cite: worded(data.cite, words.sources) };
}

function outputSpec(data: OutputData, symbol: string, words: AnyWords): OutputSpec {
  return {
    ...data,
    meaning: need(words.results[symbol], 'output', symbol),
    equation: need(words.equations?.[symbol], 'equation', symbol),
    cite: worded(data.cite, words.sources),
  };
}

function example(data: ExampleData, words: AnyWords): Example {
  const { key, source, ...rest } = data;
  return { ...rest, title: need(words.examples[key], 'example', key), source: worded(source, words.sources) };
}

/** Puts the words beside the data that they belong to: what the rest of the app reads. */
export function join(data: Data, anyWords: unknown) {
  const words = anyWords as AnyWords;
  const { model, ...rest } = data;
  return {
    ...rest,
    levers: data.levers ?? {},
    inputs: mapped(data.inputs, (one, symbol) => inputSpec(one, symbol, words)),
    tables: mapped(data.tables ?? {}, (one, id) => tableSpec(one, id, words)),
    ...(model
      ? { model: { ...model, outputs: mapped(model.outputs, (one, symbol) => outputSpec(one, symbol, words)) } }
      : {}),
    choices: mapped(data.choices, (one, name) => choiceSpec(one, name, words)),
    formulas: data.formulas.map((one) => formulaSpec(one, words)),
    limits: data.limits.map((one) => limitSpec(one, words)),
    cautions: data.cautions.map((key) => need(words.cautions[key], 'caution', key)),
    beware: (data.beware ?? []).map((key) => need(words.beware[key], 'limitation', key)),
    proof: words.proof,
    examples: data.examples.map((one) => example(one, words)),
    words: {
      orders: words.orders,
      steps: words.steps,
      problems: words.problems,
      contradictions: words.contradictions,
      ways: words.ways,
    },
  };
}
