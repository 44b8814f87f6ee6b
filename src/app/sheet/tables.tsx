import { createMemo, createSignal, For, Show } from 'solid-js';
import { formatValue } from '../../quantity/format';
import { ReadingTable, type TableCell, type TableColumn } from '../../ui/reading-table';
import type { OnBench } from './bench';
import { createCells, type Cell, type OnTable } from './table-cells';
import { fillTable } from './table-fill';
import { TableWatch } from './table-watch';
import { printEarlier, printElsewhere } from './repeat';
import say from './words/en';
import { toolOptions } from './tool-options';

/** The tables of readings of a check. */
export function Tables(props: OnBench) {
  return (
    <For each={Object.entries(props.calculator.tables)}>
      {([id, spec]) => <OneTable id={id} spec={spec} calculator={props.calculator} bench={props.bench} />}
    </For>
  );
}

function columnsOf(on: OnTable, first: readonly Cell[]): readonly TableColumn[] {
  return Object.entries(on.spec.columns).map(([id, heading]) => {
    const cell = first.find(({ column }) => column === id);
    const unit = on.bench.entryOf(cell?.symbol ?? '').unit;
    const label = cell?.spec.measure.kind.units.find((one) => one.id === unit)?.label ?? '';
    return { id, heading, unit: label, signed: cell?.spec.signed !== undefined };
  });
}

function cellView({ bench }: OnTable, { symbol, column }: Cell, text: string): TableCell {
  const state = bench.stateOf(symbol);
  const asked = bench.contradiction()?.of.includes(symbol) === true ? say.readings.asked : undefined;
  const shown = () => (state?.ok ? formatValue(state.value, 0, state.unit, { mark: bench.mark() }) : undefined);
  return {
    column,
    text,
    placeholder: text === '' ? (shown() ?? printEarlier(bench, symbol) ?? '') : '',
    problem: state && !state.ok && !state.blank ? state.reason : asked,
    remark: printElsewhere(bench, symbol) ?? (state?.ok ? state.beyondTool : undefined),
  };
}

const isSame = <T extends object>(a: T | undefined, b: T): a is T =>
  a !== undefined && (Object.keys(b) as (keyof T)[]).every((name) => a[name] === b[name]);

/** Objects that say the same stay the same ones, so that nothing is made anew on the page that did not change. */
function keepSame<T extends object>(before: readonly T[], now: readonly T[]): readonly T[] {
  const kept = now.map((one, i) => ((was) => (isSame(was, one) ? was : one))(before[i]));
  return kept.length === before.length && kept.every((one, i) => one === before[i]) ? before : kept;
}

function OneTable(props: OnTable) {
  const cells = createCells(props);
  const [refused, setRefused] = createSignal<string>();
  const [cursor, setCursor] = createSignal<{ line: number; column: string }>();
  const columns = createMemo<readonly TableColumn[]>(
    (before) => keepSame(before, columnsOf(props, cells.all()[0] ?? [])),
    [],
  );
  // A memo for each cell: one that is typed into leaves the others as they are.
  const viewOf = (cell: Cell) => {
    const view = createMemo(() => cellView(props, cell, cells.textOf(cell.symbol)), undefined, { equals: isSame });
    return [cell.symbol, view] as const;
  };
  const views = createMemo(() => new Map(cells.all().flat().map(viewOf)));
  const lines = createMemo<readonly (readonly TableCell[])[]>(
    (before) =>
      cells
        .all()
        .slice(0, cells.count())
        .map((line, i) =>
          keepSame(
            before[i] ?? [],
            line.map(({ symbol }) => views().get(symbol)?.()).filter((view) => view !== undefined),
          ),
        ),
    [],
  );
  /** Cells that a tool is named for: the whole table is read with one. */
  const tooled = createMemo(() => cells.all().flatMap((line) => line.filter(({ spec }) => spec.tool !== undefined)));
  const tool = createMemo(() => ((first) => (first ? props.bench.entryOf(first.symbol).tool : ''))(tooled()[0]));
  const tools = createMemo(() =>
    ((first) => (first ? toolOptions(first.spec, props.bench.choices(), tool()) : []))(tooled()[0]),
  );
  return (
    <ReadingTable
      label={props.spec.label}
      hint={props.spec.hint}
      line={props.spec.line}
      columns={columns()}
      lines={lines()}
      problem={refused() ?? props.bench.evaluation().modelProblem}
      tool={tool()}
      tools={tools()}
      canAdd={cells.count() < cells.all().length}
      presets={Object.keys(props.spec.presets ?? {}).map((id) => ({ id, label: props.spec.presetNames[id] ?? id }))}
      onTool={(tool) => props.bench.changeAll(Object.fromEntries(tooled().map(({ symbol }) => [symbol, { tool }])))}
      onText={(line, column, text) => {
        const symbol = cells.symbolAt(line, column);
        if (symbol !== undefined) props.bench.change(symbol, { text });
      }}
      onAdd={() => cells.show(cells.count() + 1)}
      onRemove={(line) => cells.remove(line)}
      onPreset={(name) => setRefused(fillTable(props, cells, name))}
      cursor={cursor()}
    >
      <Show when={props.spec.stopwatch}>
        {(column) => <TableWatch bench={props.bench} cells={cells} column={column()} onCursor={setCursor} />}
      </Show>
    </ReadingTable>
  );
}
