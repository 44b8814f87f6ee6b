import { keyOf } from './keys';
import type { Reading, StoredRecord } from './schema';
import { fromSi, type Unit } from '../quantity/unit';
import say from './words/en';

/** What the calculators know and a reading does not say: a result's name, and the unit that an id stands for there. */
export interface ResultName {
  readonly name: string;
  readonly unit: Unit | undefined;
}

export type NameResult = (calculator: string, symbol: string, unit: string) => ResultName;

/** A spreadsheet may run a text that begins like this as a formula; the last four are the wide forms of the first. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

/** RFC 4180, 2.5 to 2.7: quoted where it holds a comma, a quote or a line break. */
const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const words = (text: string): string => cell(FORMULA.test(text) ? `'${text}` : text);

const DIGITS = 12;

/** Decimal point, no thousands; twelve digits, so that 0.3 is not written 0.30000000000000004. */
const number = (value: number): string => String(Number(value.toPrecision(DIGITS)) + 0);

function rows(reading: Reading, machine: string, name: NameResult): readonly string[] {
  const { at, id, calculator, verdict, headline, note } = reading;
  const common = [at, machine, reading.machine, id, calculator, verdict, headline, note].map(words);
  const results = Object.entries(reading.results);
  if (results.length === 0) return [[...common, '', '', '', '', '', '', ''].join(',')];
  return results.map(([symbol, result]) => {
    const known = name(calculator, symbol, result.unit);
    const { unit } = known;
    const numbers = [result.value, result.low, result.high].map((si) => number(unit ? fromSi(si, unit) : si));
    return [
      ...common,
      words(known.name),
      words(symbol),
      ...numbers,
      words(unit ? unit.label : say.csv.plainUnit),
      words(result.text),
    ].join(',');
  });
}

/**
 * Readings as comma-separated values (RFC 4180: CRLF, header line), one row per reading and result, oldest first within
 * a machine; a reading without results has one row. Numbers are in the unit of their row, or in SI units where the check
 * is not known here. A text that a spreadsheet could run as a formula gets a leading apostrophe; numbers never do.
 */
export function writeCsv(records: readonly StoredRecord[], name: NameResult): string {
  const machines = new Map(records.flatMap((one) => (one.type === 'machine' ? [[one.id, one.name] as const] : [])));
  const readings = records
    .flatMap((one) => (one.type === 'reading' ? [{ key: keyOf(one), reading: one }] : []))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ reading }) => reading);
  const lines = readings.flatMap((one) => rows(one, machines.get(one.machine) ?? '', name));
  return [say.csv.columns.map(cell).join(','), ...lines].map((line) => `${line}\r\n`).join('');
}
