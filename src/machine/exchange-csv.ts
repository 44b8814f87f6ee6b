import { endsOf, type KeptLimit } from './history';
import { keyOf } from './keys';
import { keptUnit } from './kept-unit';
import type { Reading, StoredRecord } from './schema';
import { fromSi, type Unit } from '../quantity/unit';
import say from './words/en';

/** A spreadsheet may run a text that begins like this as a formula; the last four are the wide forms of the first. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

/** RFC 4180, 2.5 to 2.7: quoted where it holds a comma, a quote or a line break. */
const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const words = (text: string): string => cell(FORMULA.test(text) ? `'${text}` : text);

const DIGITS = 12;

/** Decimal point, no thousands; twelve digits, so that 0.3 is not written 0.30000000000000004. */
const number = (value: number): string => String(Number(value.toPrecision(DIGITS)) + 0);

const NO_LIMIT = ['', '', '', ''];

/** A limit's name, its ends in the unit of its row, and the verdict on it. */
function limitCells(reading: Reading, limit: KeptLimit, unit: Unit | undefined): readonly string[] {
  const { min, max } = endsOf(reading, limit);
  const end = (si: number | undefined): string => (si === undefined ? '' : number(unit ? fromSi(si, unit) : si));
  return [words(limit.name), end(min), end(max), words(limit.verdict)];
}

/** A result's rows: one, or one for each of its limits. */
function resultRows(
  reading: Reading,
  symbol: string,
  result: Reading['results'][string],
): readonly (readonly string[])[] {
  const unit = keptUnit(result);
  const numbers = [result.value, result.low, result.high].map((si) => number(unit ? fromSi(si, unit) : si));
  const label = unit ? unit.label : say.csv.plainUnit;
  const cells = [words(result.name), words(symbol), ...numbers, words(label), words(result.text)];
  const limits = reading.limits.filter(({ of }) => of === symbol).map((limit) => limitCells(reading, limit, unit));
  return (limits.length > 0 ? limits : [NO_LIMIT]).map((limit) => [...cells, ...limit]);
}

/** What the order promised of a result, in the unit of its row. */
function expectedCells(reading: Reading, symbol: string, unit: Unit | undefined): readonly string[] {
  const found = reading.order.expects[symbol];
  if (!found) return NO_PROMISE;
  return [found.value, found.low, found.high].map((si) => number(unit ? fromSi(si, unit) : si));
}

const NO_PROMISE = ['', '', ''];
const NO_RESULT = ['', '', '', '', '', '', '', ...NO_LIMIT];

function rows(reading: Reading, machine: string): readonly string[] {
  const { at, id, calculator, verdict, order, note } = reading;
  const common = [at, machine, reading.machine, id, calculator, verdict, order.sentence, note].map(words);
  const results = Object.entries(reading.results).flatMap(([symbol, one]) => {
    const promise = expectedCells(reading, symbol, keptUnit(one));
    return resultRows(reading, symbol, one).map((cells) => ({ cells, promise }));
  });
  const rowsOf = results.length > 0 ? results : [{ cells: NO_RESULT, promise: NO_PROMISE }];
  const by = words(reading.whole ? say.csv.keptBy.whole : say.csv.keptBy.earlier);
  return rowsOf.map(({ cells, promise }) => [...common, ...cells, by, ...promise].join(','));
}

/**
 * Readings as comma-separated values (RFC 4180: CRLF, header line), oldest first within a machine: a row for each reading and
 * result, a result that is held to several limits with a row for each; a reading without results has one row. Numbers are
 * in the unit of their row, or in SI units where the check is not known here. A text that a spreadsheet could run as a formula gets a
 * leading apostrophe; numbers never do.
 * @param records readings that are not whole with their names filled in
 */
export function writeCsv(records: readonly StoredRecord[]): string {
  const machines = new Map(records.flatMap((one) => (one.type === 'machine' ? [[one.id, one.name] as const] : [])));
  const readings = records
    .flatMap((one) => (one.type === 'reading' ? [{ key: keyOf(one), reading: one }] : []))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ reading }) => reading);
  const lines = readings.flatMap((one) => rows(one, machines.get(one.machine) ?? ''));
  return [say.csv.columns.map(cell).join(','), ...lines].map((line) => `${line}\r\n`).join('');
}
