import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeCsv, type NameResult } from '../../src/machine/exchange-csv';
import { demoMachine, demoReadings } from '../../src/machine/demo';
import type { Reading, StoredRecord } from '../../src/machine/schema';
import { angle, length, temperature } from '../../src/quantity/kinds';
import { household } from '../support/exchange-samples';

const [before] = demoReadings as [Reading, Reading];

const HEAD =
  'time,machine,machine id,reading id,check,verdict,instruction,note,result,symbol,value,low,high,unit,as shown';
const COLUMNS = HEAD.split(',').length;

/** As the grammar of RFC 4180, section 2, has it; throws for a text that is none. */
function parse(text: string): string[][] {
  const rows: string[][] = [];
  const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  let row: string[] = [];
  while (field.lastIndex < text.length) {
    const at = field.lastIndex;
    const found = field.exec(text);
    if (!found) throw new Error(`no field of RFC 4180 at ${at}`);
    const [, quoted, bare, end] = found;
    row.push(quoted?.replaceAll('""', '"') ?? bare ?? '');
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  if (row.length > 0) throw new Error('the last line does not end');
  return rows;
}

const named: NameResult = (_, symbol, unit) => ({
  name: symbol,
  unit: [...length.mm.kind.units, ...angle.deg.kind.units].find(({ id }) => id === unit),
});
const unnamed: NameResult = (_, symbol) => ({ name: symbol, unit: undefined });

const one = (change: Partial<Reading>): Reading => ({ ...before, results: {}, ...change });
const row = (change: Partial<Reading>, name = named) => parse(writeCsv([demoMachine, one(change)], name))[1]!;
const result = (value: number, unit: string, text = '') => ({ value, low: value, high: value, unit, text });

describe('readings as comma-separated values', () => {
  it('has a header, one row per result, CRLF after each', () => {
    const text = writeCsv([demoMachine, ...demoReadings], named);
    const rows = parse(text);
    expect(rows[0]!.join()).toBe(HEAD);
    expect(rows).toHaveLength(1 + demoReadings.flatMap((reading) => Object.keys(reading.results)).length);
    expect(text.endsWith('\r\n')).toBe(true);
    const found = rows.find((cells) => cells[3] === 'before' && cells[9] === 'dh_s')!;
    expect(found.slice(0, 6)).toEqual([
      ...['2026-03-05T17:40:00.000Z', 'Bench printer, window side', 'demo-window-side'],
      ...['before', 'dual-z-sync', 'beyond'],
    ]);
    expect(found.slice(10)).toEqual(['0.75', '0.7153251712', '0.7846748288', 'mm', '0.750 ± 0.035\u00a0mm']);
  });

  it('is oldest first within a machine, whatever order the records come in', () => {
    const records = [...demoReadings, demoMachine];
    expect(writeCsv([...records].reverse(), named)).toBe(writeCsv(records, named));
    const times = parse(writeCsv(records, named))
      .slice(1)
      .map(([at]) => at!);
    expect(times).toEqual([...times].sort());
  });

  it('keeps a reading without results, and one whose check is not known here, in SI', () => {
    expect(row({})).toHaveLength(COLUMNS);
    expect(row({}).slice(8)).toEqual(['', '', '', '', '', '', '']);
    expect(row({ results: { n: result(7.5e-4, 'mm') } }, unnamed).slice(8, 14)).toEqual([
      ...['n', 'n', '0.00075', '0.00075', '0.00075', 'SI'],
    ]);
  });

  it('writes numbers with a point, without the dust of conversion, an offset where the unit has one', () => {
    const numbers = (value: number, unit: string, name = named) =>
      row({ results: { n: result(value, unit) } }, name)[10];
    expect(numbers(0.3e-3, 'mm')).toBe('0.3');
    expect(numbers(-1234.5678e-3, 'mm')).toBe('-1234.5678');
    expect(numbers(-0, 'mm')).toBe('0');
    expect(numbers(1e-10, 'mm')).toBe('1e-7');
    // 0 °C and 32 °F are 273.15 K (ISO 80000-5).
    const celsius: NameResult = () => ({ name: 't', unit: temperature.C.unit });
    const fahrenheit: NameResult = () => ({ name: 't', unit: temperature.F.unit });
    expect(numbers(273.15, 'C', celsius)).toBe('0');
    expect(numbers(273.15, 'F', fahrenheit)).toBe('32');
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1'])('a text %j cannot run in a spreadsheet', (note) => {
    expect(row({ note })[7]).toBe(`'${note}`);
  });

  it.each(["it's 5", '5 = 5', 'a-b', ' x', '', "'x", '−0.050 mm'])('a text %j is left as it is', (note) => {
    expect(row({ note })[7]).toBe(note);
  });

  it('guards every text and no number', () => {
    const cells = parse(
      writeCsv(
        [
          { ...demoMachine, name: '=name' },
          one({ headline: '=line', note: '=note', results: { n: result(-1e-3, 'mm', '=text') } }),
        ],
        (_, symbol, unit) => ({ ...named('', symbol, unit), name: '=result' }),
      ),
    )[1]!;
    expect(cells[1]).toBe("'=name");
    expect(cells.slice(6, 9)).toEqual(["'=line", "'=note", "'=result"]);
    expect(cells.slice(10)).toEqual(['-1', '-1', '-1', 'mm', "'=text"]);
  });

  const nasty = fc.string({ unit: fc.constantFrom('"', ',', '\r', '\n', '\r\n', '=', "'", 'a', '°', ';', '\t') });

  it('every text comes back through the grammar, guarded or as it was', () => {
    fc.assert(
      fc.property(nasty, nasty, (note, headline) => {
        const cells = row({ note, headline });
        expect(cells).toHaveLength(COLUMNS);
        for (const [i, text] of [
          [6, headline],
          [7, note],
        ] as const)
          expect([text, `'${text}`]).toContain(cells[i]);
        for (const cell of cells) expect(cell).not.toMatch(/^[=+@\t\r-]/);
      }),
      { endOnFailure: true },
    );
  });

  const python = spawnSync('python3', ['-c', '1']).status === 0;

  it.skipIf(!python)('Python’s csv module reads the same cells, in its strict mode', () => {
    const script =
      'import csv,json,sys,io;' +
      "print(json.dumps(list(csv.reader(io.StringIO(sys.stdin.buffer.read().decode('utf-8'), newline=''), strict=True))))";
    const records = fc.sample(household(true), { numRuns: 40, seed: 4180 }).flat();
    const odd = fc
      .sample(nasty, { numRuns: 60, seed: 4180 })
      .map((note, i): StoredRecord => one({ id: `n${i}`, note }));
    // No halves of surrogate pairs (UTF-8 has none), no NUL (Python before 3.11 takes none).
    const text = writeCsv([...records, ...odd], named)
      .toWellFormed()
      .replaceAll('\0', '');
    const read = spawnSync('python3', ['-c', script], { input: text, maxBuffer: 1e8 });
    expect(read.stderr.toString()).toBe('');
    expect(JSON.parse(read.stdout.toString())).toEqual(parse(text));
  });
});
