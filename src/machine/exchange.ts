import { FILE_LIMITS, FORMAT, FORMAT_VERSION, SECTIONS } from './exchange-form';
import { keyOf } from './keys';
import { isPlain } from './schema-parts';
import type { StoredRecord } from './schema';

/*
 * Trammel's file, described in the README: JSON, one record a line, records as `restore` knows them. The order of names
 * and records is fixed, so that the same records make the same text.
 */

export { FILE_LIMITS, FORMAT, FORMAT_VERSION, SECTIONS };

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (!isPlain(value)) return value;
  const names = Object.keys(value).sort();
  return Object.fromEntries(names.map((name) => [name, inOrder(value[name])]));
}

/** A value of a record as JSON, names in order of their letters: equal texts mean equal values (0 and -0 too). */
export const canonical = (value: unknown): string => JSON.stringify(inOrder(value));

const byKey = (a: StoredRecord, b: StoredRecord): number => {
  const [first, second] = [keyOf(a), keyOf(b)];
  return first < second ? -1 : first > second ? 1 : 0;
};

const list = (records: readonly StoredRecord[]): string =>
  records.length === 0 ? '[]' : `[\n${records.map(canonical).join(',\n')}\n]`;

/** Without what concerns this device alone: else no two files of the same records would be alike. */
const portable = (record: StoredRecord): StoredRecord =>
  record.type === 'settings' ? { ...record, lastExport: null, persistAsked: null } : record;

/**
 * The text of a file with these records, in order of keys whatever order they come in.
 * @param made time of making, ISO 8601: all that two files of the same records differ in
 */
export function writeFile(records: readonly StoredRecord[], made: string): string {
  const ordered = records.map(portable).sort(byKey);
  const of = (type: StoredRecord['type']) => ordered.filter((record) => record.type === type);
  const parts = [
    `"format": "${FORMAT}"`,
    `"v": ${FORMAT_VERSION}`,
    `"made": ${JSON.stringify(made)}`,
    `"${SECTIONS.machine}": ${list(of('machine'))}`,
    `"${SECTIONS.reading}": ${list(of('reading'))}`,
  ];
  for (const type of ['case', 'photo', 'draft', 'typed'] as const) {
    const found = of(type);
    if (found.length > 0) parts.push(`"${SECTIONS[type]}": ${list(found)}`);
  }
  for (const settings of of('settings')) parts.push(`"${SECTIONS.settings}": ${canonical(settings)}`);
  return `{\n${parts.join(',\n')}\n}\n`;
}
