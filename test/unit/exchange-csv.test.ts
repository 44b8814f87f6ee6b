import { spawnSync } from 'node:child_process';
import { parse as readCsv } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeCsv } from '../../src/machine/exchange-csv';
import { demoMachine, demoReadings } from '../support/demo';
import type { Reading, StoredRecord } from '../../src/machine/schema';
import { household } from '../support/exchange-samples';

const [before] = demoReadings as [Reading, Reading];

const HEAD =
  'time,machine,machine id,reading id,check,verdict,instruction,note,result,symbol,value,low,high,unit,as shown,' +
  'limit,limit least,limit most,limit verdict,kept by,' +
  'expected after the order,expected low,expected high';
const EARLIER = 'an earlier form: names and limits of today';
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

const one = (change: Partial<Reading>): Reading => ({ ...before, results: {}, ...change });
const rowsOf = (change: Partial<Reading>) => parse(writeCsv([demoMachine, one(change)])).slice(1);
const row = (change: Partial<Reading>) => rowsOf(change)[0]!;
const result = (value: number, unit: string, { text = '', kind = 'length', name = 'n' } = {}) => ({
  ...{ name, value, low: value, high: value, kind, unit, text },
});

describe('readings as comma-separated values', () => {
  it('has a header, one row per result, CRLF after each', () => {
    const text = writeCsv([demoMachine, ...demoReadings]);
    const rows = parse(text);
    expect(rows[0]!.join()).toBe(HEAD);
    expect(rows).toHaveLength(1 + demoReadings.flatMap((reading) => Object.keys(reading.results)).length);
    expect(text.endsWith('\r\n')).toBe(true);
    const found = rows.find((cells) => cells[3] === 'before' && cells[9] === 'dh_s')!;
    expect(found.slice(0, 6)).toEqual([
      ...['2026-03-05T17:40:00.000Z', 'Bench printer, window side', 'demo-window-side'],
      ...['before', 'two-z-screws', 'beyond'],
    ]);
    expect(found.slice(8)).toEqual([
      ...[before.results.dh_s!.name, 'dh_s', '0.75'],
      // By hand: two readings of ± 0.01 mm, and two spans of ± 0.5 and ± 1 mm in 400 mm: 2√(2·0.01²/3 + 0.75²·(0.5² + 1²)/400²/3).
      expect.stringMatching(/^0\.73359/),
      expect.stringMatching(/^0\.76640/),
      ...['mm', '0.750 ± 0.016\u00a0mm', '', '', '', '', 'this form', '', '', ''],
    ]);
  });

  it('says what a result is held to, in the unit of its row, and how it stands against it', () => {
    const rows = parse(writeCsv([demoMachine, ...demoReadings]));
    const limits = rows.filter((cells) => cells[9] === 'dh_bed').map((cells) => cells.slice(15, 19));
    const { name } = before.limits[0]!;
    expect(limits).toEqual([
      [name, '-0.05', '0.05', 'beyond'],
      [name, '-0.05', '0.05', 'within'],
    ]);
  });

  it('has a row for each limit of a result, and says where names and limits are not those of then', () => {
    const held = { of: 'n', symmetric: false, verdict: 'within' as const };
    const limits = [
      { ...held, name: 'Upper', max: 'dh_lim' },
      { ...held, name: 'Lower', min: 'dh' },
    ];
    const results = { n: result(1e-3, 'mm'), dh_lim: result(2e-3, 'mm') };
    const rows = rowsOf({ results, limits, whole: false });
    expect(rows.map((cells) => [cells[9], ...cells.slice(15, 20)])).toEqual([
      ['n', 'Upper', '', '2', 'within', 'an earlier form: names and limits of today'],
      ['n', 'Lower', '0.75', '', 'within', 'an earlier form: names and limits of today'],
      ['dh_lim', '', '', '', '', 'an earlier form: names and limits of today'],
    ]);
  });

  it('says of what an earlier form did not keep that it was not kept', () => {
    const limits = [{ of: 'F', name: 'Force', max: 'dh_lim', symmetric: false, verdict: 'none' as const }];
    const { order } = before;
    const rows = rowsOf({ results: { n: result(1e-3, 'mm') }, limits, whole: false, order: { ...order, expects: {} } });
    const unknown = 'not kept';
    expect(rows.map((cells) => cells.slice(8))).toEqual([
      ['n', 'n', '1', '1', '1', 'mm', '', '', '', '', '', EARLIER, unknown, unknown, unknown],
      ['F', 'F', unknown, unknown, unknown, 'SI', unknown, 'Force', '', '', 'none', EARLIER, unknown, unknown, unknown],
    ]);
  });

  it('has a row for an entry that is held to a limit', () => {
    const limits = [{ of: 'dh', name: 'Reading', max: 'dh', symmetric: false, verdict: 'within' as const }];
    expect(rowsOf({ limits }).map((cells) => cells.slice(9, 19))).toEqual([
      ['dh', '0.75', expect.any(String), expect.any(String), 'mm', '', 'Reading', '', '0.75', 'within'],
    ]);
  });

  it('says last what the order promised of a result, in the unit of its row', () => {
    const rows = parse(writeCsv([demoMachine, before]));
    const promised = rows
      .find((cells) => cells[9] === 'dh_bed')!
      .slice(-3)
      .map(Number);
    const { value, low, high } = before.order.expects.dh_bed!;
    // The teeth leave a rest, which the order turns away: about nothing, with the doubt of both readings.
    expect(promised.map((mm) => mm / 1e3)).toEqual([value, low, high].map((si) => expect.closeTo(si, 12) as number));
    expect(high - low).toBeGreaterThan(2e-5);
    expect(rows.find((cells) => cells[9] === 'n')!.slice(-3)).toEqual(['', '', '']);
  });

  it('is oldest first within a machine, whatever order the records come in', () => {
    const records = [...demoReadings, demoMachine];
    expect(writeCsv([...records].reverse())).toBe(writeCsv(records));
    const times = parse(writeCsv(records))
      .slice(1)
      .map(([at]) => at!);
    expect(times).toEqual([...times].sort());
  });

  it('keeps a reading without results, and one whose check is not known here, in SI', () => {
    expect(row({})).toHaveLength(COLUMNS);
    expect(row({}).slice(8, 19)).toEqual(Array.from({ length: 11 }, () => ''));
    expect(row({ results: { n: result(7.5e-4, 'mm', { kind: '' }) } }).slice(8, 14)).toEqual([
      ...['n', 'n', '0.00075', '0.00075', '0.00075', 'SI'],
    ]);
  });

  it('writes numbers with a point, without the dust of conversion, an offset where the unit has one', () => {
    const numbers = (value: number, unit: string, kind = 'length') =>
      row({ results: { n: result(value, unit, { kind }) } })[10];
    expect(numbers(0.3e-3, 'mm')).toBe('0.3');
    expect(numbers(-1234.5678e-3, 'mm')).toBe('-1234.5678');
    expect(numbers(-0, 'mm')).toBe('0');
    expect(numbers(1e-10, 'mm')).toBe('1e-7');
    // 0 °C and 32 °F are 273.15 K (ISO 80000-5).
    expect(numbers(273.15, 'C', 'temperature')).toBe('0');
    expect(numbers(273.15, 'F', 'temperature')).toBe('32');
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t'=1"],
    ['\r=1', "'\r'=1"],
    ['＝1', "'＝1"],
    ['a;=1', "a;'=1"],
    ['a,＋1', "a,'＋1"],
    ['a\t-1', "a\t'-1"],
    ['he said "=1"', 'he said "\'=1"'],
    ['- one\n- two', "'- one\n'- two"],
    [' \u00a0=1', "' \u00a0=1"],
    ['a; =1', "a;' =1"],
  ])('a text %j cannot run in a spreadsheet', (note, safe) => {
    expect(row({ note })[7]).toBe(safe);
  });

  it.each(["it's 5", '5 = 5', 'a-b', ' x', '', "'x", '−0.050 mm', 'a; b, c', 'one\n\ntwo'])(
    'a text %j is left as it is',
    (note) => {
      expect(row({ note })[7]).toBe(note);
    },
  );

  it('guards every text and no number', () => {
    const cells = parse(
      writeCsv([
        { ...demoMachine, name: '=name' },
        one({
          order: { ...before.order, sentence: '=line' },
          note: '=note',
          results: { n: result(-1e-3, 'mm', { text: '=text', name: '=result' }) },
          limits: [{ of: 'n', name: '=limit', min: 'dh', symmetric: false, verdict: 'beyond' }],
        }),
      ]),
    )[1]!;
    expect(cells[1]).toBe("'=name");
    expect(cells.slice(6, 9)).toEqual(["'=line", "'=note", "'=result"]);
    expect(cells.slice(10, 17)).toEqual(['-1', '-1', '-1', 'mm', "'=text", "'=limit", '0.75']);
  });

  const nasty = fc.string({
    unit: fc.constantFrom(
      ...['"', ',', '\r', '\n', '\r\n', ...Array.from('=+-@＝＋－＠'), "'", 'a', '°', ';', '\t', '|', ' ', '\u00a0'],
    ),
  });
  const bare = (text: string) => text.replaceAll("'", '');
  /** What a spreadsheet would run (the list is OWASP's, "CSV Injection"), unless all of it is a number. */
  const runs = (cell: string) =>
    /^[\s\0]*[=+\-@＝＋－＠]|^[\t\r]/.test(cell) && !/^-\d+([.,]\d+)?(e[-+]\d+)?$/.test(cell);

  it.each(['point', 'comma'] as const)(
    'with a decimal %s, a general reader finds every text, and no cell that runs',
    (mark) => {
      const [own, other] = mark === 'point' ? [',', ';'] : [';', ','];
      fc.assert(
        fc.property(nasty, nasty, (note, sentence) => {
          const results = { n: result(-1.5e-3, 'mm', { text: sentence, name: note }) };
          const reading = one({ note, results, order: { ...before.order, sentence } });
          const text = writeCsv([{ ...demoMachine, name: note }, reading], mark);
          const cells = readCsv(text, { delimiter: own, record_delimiter: '\r\n' })[1]!;
          expect(cells).toHaveLength(COLUMNS);
          // Nothing but apostrophes came in between.
          for (const [i, was] of [note, sentence, note, note].entries())
            expect(bare(cells[[1, 6, 7, 8][i]!]!)).toBe(bare(was));
          expect(cells[10]).toBe(mark === 'point' ? '-1.5' : '-1,5');
          const lenient = { relax_quotes: true, relax_column_count: true, skip_records_with_error: true } as const;
          for (const delimiter of [own, other, '\t', '|'])
            for (const cell of readCsv(text, { ...lenient, delimiter }).flat()) expect(runs(cell), cell).toBe(false);
          // The worst reader, that knows no quotes.
          for (const cell of text.split(mark === 'point' ? /[,;\t|"\r\n]/ : /[;\t|"\r\n]/))
            expect(runs(cell), cell).toBe(false);
        }),
        { endOnFailure: true },
      );
    },
  );

  it('a spreadsheet with a decimal comma gets semicolons and decimal commas', () => {
    const text = writeCsv([demoMachine, ...demoReadings], 'comma');
    const rows = readCsv(text, { delimiter: ';' });
    const same = readCsv(writeCsv([demoMachine, ...demoReadings]));
    expect(rows[0]).toEqual(same[0]);
    const numbers = [10, 11, 12, 16, 17, 20, 21, 22];
    const pointed = rows.map((cells, i) =>
      cells.map((cell, k) => (i > 0 && numbers.includes(k) ? cell.replace(',', '.') : cell)),
    );
    expect(pointed).toEqual(same);
    expect(rows.flat().filter((cell) => cell === '0,75')).not.toEqual([]);
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
    const text = writeCsv([...records, ...odd])
      .toWellFormed()
      .replaceAll('\0', '');
    const read = spawnSync('python3', ['-c', script], { input: text, maxBuffer: 1e8 });
    expect(read.stderr.toString()).toBe('');
    expect(JSON.parse(read.stdout.toString())).toEqual(parse(text));
  });
});
