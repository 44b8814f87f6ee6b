import { toTyped } from '../../quantity/parse';
import { Stopwatch } from '../../ui/stopwatch';
import type { OnBench } from './bench';
import { createStopwatch } from './stopwatch';
import type { Cells } from './table-cells';

/** Seconds as a clock shows them: `1:05.3`. */
function clock(seconds: number, mark: string): string {
  const tenths = Math.round(seconds * 10);
  const rest = `${String(Math.floor((tenths % 600) / 10)).padStart(2, '0')}${mark}${tenths % 10}`;
  return `${Math.floor(tenths / 600)}:${rest}`;
}

/** The stopwatch that fills a column of a table, one line for each tap. */
export function TableWatch(
  props: Pick<OnBench, 'bench'> & {
    cells: Cells;
    column: string;
    /** Told where to type on. */
    onCursor: (at: { line: number; column: string }) => void;
  },
) {
  const watch = createStopwatch();
  const textAt = (line: number): string => props.cells.textOf(props.cells.symbolAt(line, props.column) ?? '');
  /** The first line without a time; -1 where all have one. */
  const free = (): number => props.cells.all().findIndex((_, line) => textAt(line) === '');
  const now = (): void => {
    watch.tick();
    const line = free();
    const symbol = props.cells.symbolAt(line, props.column);
    const unit = symbol === undefined ? undefined : props.bench.unitOf(symbol);
    if (symbol === undefined || !unit) return;
    const text = toTyped(Number(watch.elapsed().toFixed(1)), unit, props.bench.situation().mark, 8);
    props.bench.change(symbol, { text, unit: unit.id });
    // What the line still lacks is typed next.
    const lacking = props.cells.all()[line]?.find((cell) => props.cells.textOf(cell.symbol) === '');
    if (lacking) props.onCursor({ line, column: lacking.column });
  };
  return (
    <Stopwatch
      shown={clock(watch.elapsed(), props.bench.situation().mark === 'comma' ? ',' : '.')}
      running={watch.running()}
      used={textAt(0) !== ''}
      full={free() < 0}
      onStart={() => watch.start()}
      onNow={now}
      onStop={() => watch.stop()}
      onEmpty={() => props.cells.empty()}
    />
  );
}
