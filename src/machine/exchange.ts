import { FILE_LIMITS, FORMAT, FORMAT_VERSION, OF_ONE_DEVICE, SECTIONS } from './exchange-form';
import { keyOf } from './keys';
import { canonical } from './canonical';
import type { StoredRecord } from './schema';
import { finish, type Steps } from './steps';

/*
 * Trammel's file, described in the README: JSON, one record a line, records as `restore` knows them. The order of names
 * and records is fixed, so that the same records make the same text.
 */

export { FILE_LIMITS, FORMAT, FORMAT_VERSION, SECTIONS };

const portable = (record: StoredRecord): StoredRecord =>
  record.type === 'settings' ? { ...record, ...OF_ONE_DEVICE } : record;

const ORDER = ['machine', 'reading', 'case', 'photo', 'draft', 'typed', 'settings'] as const;

/** The order of keys, each made once. */
function inOrderOfKeys(records: readonly StoredRecord[]): readonly StoredRecord[] {
  const keyed = records.map((record) => ({ key: keyOf(record), record }));
  return keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)).map(({ record }) => record);
}

/** Pieces of text that make up the file, to be joined. See `writeFile`. */
export function* writeFileSteps(records: readonly StoredRecord[], made: string): Steps<readonly string[]> {
  const ordered = inOrderOfKeys(records);
  const head = [`"format": "${FORMAT}"`, `"v": ${FORMAT_VERSION}`, `"made": ${JSON.stringify(made)}`];
  const pieces = [`{\n${head.join(',\n')}`];
  let written = 0;
  for (const type of ORDER) {
    const found = ordered.filter((record) => record.type === type);
    if (type === 'settings') {
      for (const settings of found) pieces.push(`,\n"${SECTIONS.settings}": ${canonical(portable(settings))}`);
      continue;
    }
    if (found.length === 0) {
      // Machines and readings are always there, if only to be none.
      if (type === 'machine' || type === 'reading') pieces.push(`,\n"${SECTIONS[type]}": []`);
      continue;
    }
    for (const [i, record] of found.entries()) {
      pieces.push(`${i === 0 ? `,\n"${SECTIONS[type]}": [` : ','}\n${canonical(portable(record))}`);
      written += 1;
      yield written / records.length;
    }
    pieces.push('\n]');
  }
  pieces.push('\n}\n');
  return pieces;
}

/**
 * The text of a file with these records, in order of keys whatever order they come in.
 * @param made time of making, ISO 8601: all that two files of the same records differ in
 */
export const writeFile = (records: readonly StoredRecord[], made: string): string =>
  finish(writeFileSteps(records, made)).join('');
