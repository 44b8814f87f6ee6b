import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate';
import { problemText } from '../../src/engine/tell';
import { calculators, filledSheet, fromSi, situation } from '../support/calculators';

describe.each(calculators)('%s: its tables', (_id, calc) => {
  it('have a cell in every column of every line, of one kind and range down a column', () => {
    const cells = Object.entries(calc.inputs).flatMap(([symbol, spec]) =>
      spec.cell ? [{ symbol, spec, ...spec.cell }] : [],
    );
    const tables = Object.keys(calc.tables);
    for (const { symbol, table } of cells) expect(tables, `${symbol}: its cell names a table; add it`).toContain(table);
    if (cells.length > 0) expect(calc.model, 'add a model: cells reach the formulas through one').toBeDefined();
    for (const [id, { columns, least }] of Object.entries(calc.tables)) {
      const here = cells.filter(({ table }) => table === id);
      const most = Math.max(...here.map(({ line }) => line));
      expect(most, `${id}: give it at least the ${least} lines it asks for`).toBeGreaterThanOrEqual(least);
      for (const column of Object.keys(columns)) {
        const down = here.filter((cell) => cell.column === column);
        const lines = down.map(({ line }) => line).sort((a, b) => a - b);
        expect(lines, `${id}: give column ${column} one input for each line, 1 to ${most}`).toEqual(
          Array.from({ length: most }, (_, i) => i + 1),
        );
        const [first] = down;
        for (const { spec, symbol } of down) {
          expect(
            { ...spec, label: '', cell: '' },
            `${symbol}: make it as ${first!.symbol}, at the head of ${column}`,
          ).toEqual({
            ...first!.spec,
            label: '',
            cell: '',
          });
          expect(
            spec.from,
            `${symbol}: leave out \`from:\`; a machine keeps what describes it, not readings`,
          ).toBeUndefined();
        }
      }
      expect(here.length, `${id}: some of its cells stand in no column; add the column`).toBe(
        most * Object.keys(columns).length,
      );
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
      expect(Array.isArray(filled), `preset ${name}: return lines when all it asks for is known`).toBe(true);
      if ('problem' in filled) continue;
      filled.forEach((line, i) => {
        for (const [column, si] of Object.entries(line)) {
          const spec = Object.values(calc.inputs).find(
            ({ cell }) => cell?.table === id && cell.line === i + 1 && cell.column === column,
          );
          const where = `preset ${name}, line ${i + 1}, ${column}`;
          expect(spec, `${where}: there is no such cell; fill fewer lines`).toBeDefined();
          const shown = fromSi(si, spec!.measure.unit);
          const [low, high] = spec!.range;
          expect(shown >= low && shown <= high, `${where}: ${shown} is not in the range ${low} to ${high}`).toBe(true);
        }
      });
      const refused = preset(() => undefined);
      if (!('problem' in refused))
        expect(refused.length, `preset ${name}: give lines, or a problem`).toBeGreaterThan(0);
      else
        expect(problemText(calc, refused.problem, 'point'), `preset ${name}: make the problem a sentence`).toMatch(
          /^[A-Z].*\.$/,
        );
    }
  });
});
