import { endsOf, type KeptLimit } from './history';
import { keyOf } from './keys';
import { keptUnit } from './kept-unit';
import type { Reading, StoredRecord } from './schema';
import { finish, type Steps } from './steps';
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

/** Its rows: one, or one for each of its limits. */
function rowsFor(reading: Reading, { symbol, name, unit, numbers, shown }: Shown): readonly Row[] {
  const cells = [name, symbol, ...numbers, unit ? unit.label : say.csv.plainUnit, shown];
  const limits = reading.limits.filter(({ of }) => of === symbol).map((limit) => limitCells(reading, limit, unit));
  const promise = promiseCells(reading, symbol, unit);
  const by = reading.whole ? say.csv.keptBy.whole : say.csv.keptBy.earlier;
  return (limits.length > 0 ? limits : [NO_LIMIT]).map((limit) => [...cells, ...limit, by, ...promise]);
}

/** What the order promised of it, in the unit of its row. An earlier form kept no promises. */
function promiseCells(reading: Reading, symbol: string, unit: Unit | undefined): Row {
  const found = reading.order.expects[symbol];
  if (!found) return Array.from({ length: 3 }, () => (reading.whole ? '' : say.csv.notKept));
  return [found.value, found.low, found.high].map((si) => (unit ? fromSi(si, unit) : si));
}

/** What a row is about: a result, or an entry that is held to a limit. */
interface Shown {
  readonly symbol: string;
  readonly name: string;
  readonly unit: Unit | undefined;
  readonly numbers: Row;
  readonly shown: string;
}

function shownAt(reading: Reading, symbol: string): Shown | undefined {
  const [result, entry] = [reading.results[symbol], reading.entries[symbol]];
  const found =
    result ?? (entry && { ...entry, low: entry.value - entry.half, high: entry.value + entry.half, text: '' });
  if (found) {
    const unit = keptUnit(found);
    const numbers = [found.value, found.low, found.high].map((si) => (unit ? fromSi(si, unit) : si));
    return { symbol, name: found.name, unit, numbers, shown: found.text };
  }
  if (reading.whole) return undefined;
  const { notKept } = say.csv;
  return { symbol, name: symbol, unit: undefined, numbers: [notKept, notKept, notKept], shown: notKept };
}

function rows(reading: Reading, machine: string): readonly Row[] {
  const { at, id, calculator, verdict, order, note } = reading;
  const common = [at, machine, reading.machine, id, calculator, verdict, order.sentence, note];
  const symbols = new Set([...Object.keys(reading.results), ...reading.limits.map(({ of }) => of)]);
  const found = [...symbols].flatMap((symbol) => shownAt(reading, symbol) ?? []);
  const by = reading.whole ? say.csv.keptBy.whole : say.csv.keptBy.earlier;
  const none: Row = ['', '', '', '', '', '', '', ...NO_LIMIT, by, ...promiseCells(reading, '', undefined)];
  const rowsOf = found.length > 0 ? found.flatMap((one) => rowsFor(reading, one)) : [none];
  return rowsOf.map((cells) => [...common, ...cells]);
}

/** Lines of the file, to be joined. See `writeCsv`. */
export function* writeCsvSteps(
  records: readonly StoredRecord[],
  mark: DecimalMark = 'point',
): Steps<readonly string[]> {
  const machines = new Map(records.flatMap((one) => (one.type === 'machine' ? [[one.id, one.name] as const] : [])));
  const readings = records
    .flatMap((one) => (one.type === 'reading' ? [{ key: keyOf(one), reading: one }] : []))
    .sort((a, b) => (a.key < b.key ? -1 : 1));
  const line = (row: Row) => `${row.map((cell) => written(cell, mark)).join(SEPARATORS[mark])}\r\n`;
  const lines = [line(say.csv.columns)];
  for (const [i, { reading }] of readings.entries()) {
    for (const row of rows(reading, machines.get(reading.machine) ?? '')) lines.push(line(row));
    yield i / readings.length;
  }
  return lines;
}

/**
 * Readings as comma-separated values (RFC 4180: CRLF, header line), oldest first within a machine: a row for each reading and
 * result, a result that is held to several limits with a row for each; a reading without results has one row. Numbers are
 * in the unit of their row, or in SI units where the check is not known here. A text of which any part could be run as a
 * formula, at whichever separator a spreadsheet splits it, has an apostrophe before that part; numbers never do.
 * @param records readings that are not whole with their names filled in
 * @param mark with a decimal comma the cells are separated by semicolons, as spreadsheets of such countries have it
 */
export const writeCsv = (records: readonly StoredRecord[], mark: DecimalMark = 'point'): string =>
  finish(writeCsvSteps(records, mark)).join('');
