import type { Entry } from '../../engine/entry';
import { signedText } from '../../engine/signs';
import { problemText } from '../../engine/tell';
import { toTyped } from '../../quantity/parse';
import { valueOf } from './print';
import type { Cells, OnTable } from './table-cells';

type Changes = Readonly<Record<string, Partial<Entry>>>;

/** Cells as a preset writes them: its own filled in, what was read at other places taken out. */
function changesFor(on: OnTable, cells: Cells, made: readonly Readonly<Record<string, number>>[]): Changes {
  const { mark } = on.bench.situation();
  const changes: Record<string, Partial<Entry>> = {};
  // As many lines as there were are the same places, set a little otherwise: readings stay. Other places have no readings yet.
  const isSame = cells.used() === made.length;
  cells.all().forEach((line, i) => {
    for (const { symbol, spec, column } of line) {
      const si = made[i]?.[column];
      const unit = on.bench.unitOf(symbol);
      if (si !== undefined && unit)
        changes[symbol] = { text: signedText(spec, toTyped(si, unit, mark, 8)), unit: unit.id };
      else if (!isSame && cells.textOf(symbol) !== '') changes[symbol] = { text: '' };
    }
  });
  return changes;
}

/**
 * Fills a table by one of its presets. Readings that this takes out can be put back.
 *
 * @returns a sentence why it cannot; undefined when it is done
 */
export function fillTable(on: OnTable, cells: Cells, preset: string): string | undefined {
  const evaluation = on.bench.evaluation();
  const made = on.spec.presets?.[preset]?.((symbol) => valueOf(evaluation, symbol));
  if (!made) return undefined;
  if ('problem' in made) return problemText(on.calculator, made.problem, on.bench.situation().mark);
  const changes = changesFor(on, cells, made);
  if (Object.values(changes).some(({ text }) => text === '')) {
    const { entries, choices } = on.bench.entered;
    const written = Object.entries(changes).map(([symbol, part]): [string, Entry] => [
      symbol,
      { ...on.bench.entryOf(symbol), ...part },
    ]);
    on.bench.replace({ entries: { ...entries, ...Object.fromEntries(written) }, choices: { ...choices } });
  } else on.bench.changeAll(changes);
  cells.show(made.length);
  return undefined;
}
