import { endsOf, type KeptLimit } from './history';
import { keyOf } from './keys';
import { keptUnit } from './kept-unit';
import type { Reading, StoredRecord } from './schema';
import type { DecimalMark } from '../quantity/parse';
import { fromSi, type Unit } from '../quantity/unit';
import say from './words/en';

/** Text or number as it is meant: made safe and put into words in one place, `written`. */
type Cell = string | number;
type Row = readonly Cell[];

/** Where one spreadsheet or another begins a new cell, whatever it takes for the separator. */
const BREAKS = ',;|"\\t\\r\\n';
/** What makes a spreadsheet run a text as a formula; the last four are the wide forms of the first. */
const RUNS = '=+\\-@＝＋－＠';
/** What a spreadsheet may leave out in front of it. */
const BLANK = '(?:(?![\\t\\r\\n])[\\p{Z}\\p{C}])*';
const AT_START = new RegExp(`^(?=${BLANK}[${RUNS}\\t\\r\\n])`, 'u');
const WITHIN = new RegExp(`([${BREAKS}])(?=${BLANK}[${RUNS}\\t\\r])`, 'gu');

/** No part of the text begins like a formula, at whichever separator it is split: an apostrophe stands before it. */
const harmless = (text: string): string => text.replace(WITHIN, "$1'").replace(AT_START, "'");

/** RFC 4180, 2.5 to 2.7: quoted where it holds a quote, a line break, or what separates cells here or elsewhere. */
const quoted = (text: string): string => (/[",;|\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const DIGITS = 12;

/** No thousands; twelve digits, so that 0.3 is not written 0.30000000000000004. */
function written(cell: Cell, mark: DecimalMark): string {
  if (typeof cell === 'string') return quoted(harmless(cell));
  const number = String(Number(cell.toPrecision(DIGITS)) + 0);
  return mark === 'comma' ? number.replace('.', ',') : number;
}

/** Spreadsheets with a decimal comma take the semicolon between cells. */
const SEPARATORS: Readonly<Record<DecimalMark, string>> = { point: ',', comma: ';' };

const NO_LIMIT: Row = ['', '', '', ''];

/** A limit's name, its ends in the unit of its row, and the verdict on it. */
function limitCells(reading: Reading, limit: KeptLimit, unit: Unit | undefined): Row {
  const { min, max } = endsOf(reading, limit);
  const end = (si: number | undefined): Cell => (si === undefined ? '' : unit ? fromSi(si, unit) : si);
  return [limit.name, end(min), end(max), limit.verdict];
}

/** A result's rows: one, or one for each of its limits. */
function resultRows(reading: Reading, symbol: string, result: Reading['results'][string]): readonly Row[] {
  const unit = keptUnit(result);
  const numbers = [result.value, result.low, result.high].map((si) => (unit ? fromSi(si, unit) : si));
  const cells = [result.name, symbol, ...numbers, unit ? unit.label : say.csv.plainUnit, result.text];
  const limits = reading.limits.filter(({ of }) => of === symbol).map((limit) => limitCells(reading, limit, unit));
  return (limits.length > 0 ? limits : [NO_LIMIT]).map((limit) => [...cells, ...limit]);
}

const NO_PROMISE: Row = ['', '', ''];
const NO_RESULT: Row = ['', '', '', '', '', '', '', ...NO_LIMIT];

/** What the order promised of a result, in the unit of its row. */
function expectedCells(reading: Reading, symbol: string, unit: Unit | undefined): Row {
  const found = reading.order.expects[symbol];
  if (!found) return NO_PROMISE;
  return [found.value, found.low, found.high].map((si) => (unit ? fromSi(si, unit) : si));
}

function rows(reading: Reading, machine: string): readonly Row[] {
  const { at, id, calculator, verdict, order, note } = reading;
  const common = [at, machine, reading.machine, id, calculator, verdict, order.sentence, note];
  const results = Object.entries(reading.results).flatMap(([symbol, one]) => {
    const promise = expectedCells(reading, symbol, keptUnit(one));
    return resultRows(reading, symbol, one).map((cells) => ({ cells, promise }));
  });
  const rowsOf = results.length > 0 ? results : [{ cells: NO_RESULT, promise: NO_PROMISE }];
  const by = reading.whole ? say.csv.keptBy.whole : say.csv.keptBy.earlier;
  return rowsOf.map(({ cells, promise }) => [...common, ...cells, by, ...promise]);
}

/**
 * Readings as comma-separated values (RFC 4180: CRLF, header line), oldest first within a machine: a row for each reading and
 * result, a result that is held to several limits with a row for each; a reading without results has one row. Numbers are
 * in the unit of their row, or in SI units where the check is not known here. A text of which any part could be run as a
 * formula, at whichever separator a spreadsheet splits it, has an apostrophe before that part; numbers never do.
 * @param records readings that are not whole with their names filled in
 * @param mark with a decimal comma the cells are separated by semicolons, as spreadsheets of such countries have it
 */
export function writeCsv(records: readonly StoredRecord[], mark: DecimalMark = 'point'): string {
  const machines = new Map(records.flatMap((one) => (one.type === 'machine' ? [[one.id, one.name] as const] : [])));
  const readings = records
    .flatMap((one) => (one.type === 'reading' ? [{ key: keyOf(one), reading: one }] : []))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ reading }) => reading);
  const lines = readings.flatMap((one) => rows(one, machines.get(one.machine) ?? ''));
  const line = (row: Row) => `${row.map((cell) => written(cell, mark)).join(SEPARATORS[mark])}\r\n`;
  return [say.csv.columns, ...lines].map(line).join('');
}
