import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Calculator, InputSpec, TableSpec } from '../../engine/calculator';
import type { Entry } from '../../engine/entry';
import { toTyped } from '../../quantity/parse';
import { ReadingTable } from '../../ui/reading-table';
import { Stopwatch } from '../../ui/stopwatch';
import { toolOptions } from './tool-options';
import type { Bench } from './bench';
import { printSymbol, valueOf } from './print';
import { createStopwatch } from './stopwatch';

interface Cell {
  readonly symbol: string;
  readonly spec: InputSpec;
  readonly column: string;
}

/** The tables of readings of a check. */
export function Tables(props: { calculator: Calculator; bench: Bench }) {
  return (
    <For each={Object.entries(props.calculator.tables)}>
      {([id, spec]) => <OneTable id={id} spec={spec} calculator={props.calculator} bench={props.bench} />}
    </For>
  );
}

function OneTable(props: { id: string; spec: TableSpec; calculator: Calculator; bench: Bench }) {
  const [added, setAdded] = createSignal(0);
  const [refused, setRefused] = createSignal<string>();
  /** Every line that there may be, by column. */
  const all = createMemo(() => {
    const lines: Cell[][] = [];
    for (const [symbol, spec] of Object.entries(props.calculator.inputs)) {
      if (spec.cell?.table !== props.id) continue;
      const { line, column } = spec.cell;
      lines[line - 1] = [...(lines[line - 1] ?? []), { symbol, spec, column }];
    }
    return lines;
  });
  const columns = createMemo(() => {
    const [first = []] = all();
    return Object.entries(props.spec.columns).map(([id, heading]) => {
      const spec = first.find((cell) => cell.column === id)?.spec;
      const unit = props.bench.entryOf(first.find((cell) => cell.column === id)?.symbol ?? '').unit;
      const label = spec?.measure.kind.units.find((one) => one.id === unit)?.label ?? '';
      return { id, heading, unit: label, signed: spec?.signed === true };
    });
  });
  const textOf = (symbol: string): string => props.bench.entered.entries[symbol]?.text ?? '';
  const isUsed = (cells: readonly Cell[]): boolean => cells.some(({ symbol }) => textOf(symbol) !== '');
  const used = () => all().findLastIndex(isUsed) + 1;
  const count = () => Math.min(Math.max(used(), props.spec.least, added()), all().length);
  const lines = () =>
    all()
      .slice(0, count())
      .map((cells) =>
        cells.map(({ symbol, column }) => {
          const state = props.bench.evaluation().inputs[symbol];
          const shown = printSymbol(props.calculator, props.bench.evaluation(), props.bench.situation(), symbol, false);
          return {
            column,
            text: textOf(symbol),
            placeholder: textOf(symbol) === '' ? (shown ?? '') : '',
            problem: state && !state.ok && !state.blank ? state.reason : undefined,
          };
        }),
      );
  const tooled = () => all().flatMap((cells) => cells.filter(({ spec }) => spec.tool !== undefined));
  const tool = () => {
    const [first] = tooled();
    return first ? props.bench.entryOf(first.symbol).tool : '';
  };
  const write = (changes: Readonly<Record<string, Partial<Entry>>>) => props.bench.changeAll(changes);
  const symbolAt = (line: number, column: string): string | undefined =>
    all()[line]?.find((cell) => cell.column === column)?.symbol;

  /** Takes a line out and moves those below it up. */
  const remove = (line: number): void => {
    const lines = all();
    const changes: Record<string, Partial<Entry>> = {};
    for (let i = line; i < count(); i += 1) {
      for (const { symbol, column } of lines[i] ?? []) {
        const below = symbolAt(i + 1, column);
        changes[symbol] = below === undefined ? { text: '' } : { ...props.bench.entryOf(below) };
      }
    }
    write(changes);
    setAdded(Math.max(0, count() - 1));
  };

  const fill = (name: string): void => {
    const evaluation = props.bench.evaluation();
    const made = props.spec.presets?.[name]?.((symbol) => valueOf(evaluation, symbol));
    if (!made) return;
    setRefused('reason' in made ? made.reason : undefined);
    if ('reason' in made) return;
    const { mark } = props.bench.situation();
    const changes: Record<string, Partial<Entry>> = {};
    // As many lines as there were are the same places, set a little otherwise: readings stay. Other places have no readings yet.
    const isSame = used() === made.length;
    all().forEach((cells, i) => {
      for (const { symbol, column } of cells) {
        const si = made[i]?.[column];
        const unit = props.bench.unitOf(symbol);
        if (si !== undefined && unit) changes[symbol] = { text: toTyped(si, unit, mark, 8), unit: unit.id };
        else if (!isSame && textOf(symbol) !== '') changes[symbol] = { text: '' };
      }
    });
    if (Object.values(changes).some(({ text }) => text === '')) {
      // What was read can be put back.
      const { entries, choices } = props.bench.entered;
      const written = Object.entries(changes).map(([symbol, part]): [string, Entry] => [
        symbol,
        { ...props.bench.entryOf(symbol), ...part },
      ]);
      props.bench.replace({ entries: { ...entries, ...Object.fromEntries(written) }, choices: { ...choices } });
    } else write(changes);
    setAdded(made.length);
  };

  const watch = createStopwatch();
  const [cursor, setCursor] = createSignal<{ line: number; column: string }>();
  /** The first line without a time; -1 where all have one. */
  const free = (column: string): number => all().findIndex((_, line) => textOf(symbolAt(line, column) ?? '') === '');
  const now = (column: string): void => {
    watch.tick();
    const line = free(column);
    const symbol = symbolAt(line, column);
    const unit = symbol === undefined ? undefined : props.bench.unitOf(symbol);
    if (symbol === undefined || !unit) return;
    const text = toTyped(Number(watch.elapsed().toFixed(1)), unit, props.bench.situation().mark, 8);
    write({ [symbol]: { text, unit: unit.id } });
    // What the line still lacks is typed next.
    const lacking = all()[line]?.find((cell) => textOf(cell.symbol) === '');
    if (lacking) setCursor({ line, column: lacking.column });
  };
  const empty = (): void => {
    const own = new Set(all().flatMap((cells) => cells.map(({ symbol }) => symbol)));
    const { entries, choices } = props.bench.entered;
    const kept = Object.entries(entries).filter(([symbol]) => !own.has(symbol));
    props.bench.replace({ entries: Object.fromEntries(kept), choices: { ...choices } });
    setAdded(0);
  };
  const clock = (seconds: number, mark: string): string => {
    const tenths = Math.round(seconds * 10);
    const rest = `${String(Math.floor((tenths % 600) / 10)).padStart(2, '0')}${mark}${tenths % 10}`;
    return `${Math.floor(tenths / 600)}:${rest}`;
  };

  return (
    <ReadingTable
      label={props.spec.label}
      hint={props.spec.hint}
      line={props.spec.line}
      columns={columns()}
      lines={lines()}
      problem={refused() ?? props.bench.evaluation().modelProblem}
      tool={tool()}
      tools={tooled()[0] ? toolOptions(tooled()[0]?.spec.measure.kind.id ?? '') : []}
      canAdd={count() < all().length}
      presets={Object.keys(props.spec.presets ?? {})}
      onTool={(id) => write(Object.fromEntries(tooled().map(({ symbol }) => [symbol, { tool: id }])))}
      onText={(line, column, text) => {
        const symbol = symbolAt(line, column);
        if (symbol !== undefined) write({ [symbol]: { text } });
      }}
      onAdd={() => setAdded(count() + 1)}
      onRemove={remove}
      onPreset={fill}
      cursor={cursor()}
    >
      <Show when={props.spec.stopwatch}>
        {(column) => (
          <Stopwatch
            shown={clock(watch.elapsed(), props.bench.situation().mark === 'comma' ? ',' : '.')}
            running={watch.running()}
            used={textOf(symbolAt(0, column()) ?? '') !== ''}
            full={free(column()) < 0}
            onStart={() => watch.start()}
            onNow={() => now(column())}
            onStop={() => watch.stop()}
            onEmpty={empty}
          />
        )}
      </Show>
    </ReadingTable>
  );
}
