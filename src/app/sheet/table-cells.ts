import { createMemo, createSignal } from 'solid-js';
import type { InputSpec, TableSpec } from '../../engine/calculator';
import type { Entry } from '../../engine/entry';
import type { OnBench } from './bench';

/** A table of readings of a calculator on its bench. */
export interface OnTable extends OnBench {
  readonly id: string;
  readonly spec: TableSpec;
}

/** An input that stands in a line and column of a table. */
export interface Cell {
  readonly symbol: string;
  readonly spec: InputSpec;
  readonly column: string;
}

/** The cells of a table: every line that there may be, and how many of them are shown. Lines count from 0. */
export function createCells(on: OnTable) {
  const [added, setAdded] = createSignal(0);
  const all = createMemo(() => {
    const lines: Cell[][] = [];
    for (const [symbol, spec] of Object.entries(on.calculator.inputs)) {
      if (spec.cell?.table !== on.id) continue;
      const { line, column } = spec.cell;
      lines[line - 1] = [...(lines[line - 1] ?? []), { symbol, spec, column }];
    }
    return lines;
  });
  const textOf = (symbol: string): string => on.bench.entered.entries[symbol]?.text ?? '';
  const used = () => all().findLastIndex((cells) => cells.some(({ symbol }) => textOf(symbol) !== '')) + 1;
  const count = () => Math.min(Math.max(used(), on.spec.least, added()), all().length);
  const symbolAt = (line: number, column: string): string | undefined =>
    all()[line]?.find((cell) => cell.column === column)?.symbol;
  return {
    all,
    textOf,
    /** Lines up to the last with something typed in it. */
    used,
    /** Lines shown. */
    count,
    symbolAt,
    /** Shows at least so many lines. */
    show: (lines: number) => setAdded(lines),
    /** Takes a line out and moves those below it up. */
    remove(line: number): void {
      const changes: Record<string, Partial<Entry>> = {};
      for (let i = line; i < count(); i += 1) {
        for (const { symbol, column } of all()[i] ?? []) {
          const below = symbolAt(i + 1, column);
          changes[symbol] = below === undefined ? { text: '' } : { ...on.bench.entryOf(below) };
        }
      }
      on.bench.changeAll(changes);
      setAdded(Math.max(0, count() - 1));
    },
    /** Takes out all that is typed in the table; it can be put back. */
    empty(): void {
      const own = new Set(all().flatMap((cells) => cells.map(({ symbol }) => symbol)));
      const { entries, choices } = on.bench.entered;
      const kept = Object.entries(entries).filter(([symbol]) => !own.has(symbol));
      on.bench.replace({ entries: Object.fromEntries(kept), choices: { ...choices } });
      setAdded(0);
    },
  };
}

export type Cells = ReturnType<typeof createCells>;
