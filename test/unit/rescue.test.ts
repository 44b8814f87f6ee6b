import { IDBFactory } from 'fake-indexeddb';
import { expect, test } from 'vitest';
import { FILE_LIMITS } from '../../src/machine/exchange';
import { readFile } from '../../src/machine/exchange-read';
import { keyOf } from '../../src/machine/keys';
import { filesOf, readEverything } from '../../src/rescue/records';
import { MADE, samples } from '../support/exchange-samples';
import { isWhole } from '../support/sweep';

/** As idb-keyval makes it: one store without keys of its own. */
function filled(records: readonly (readonly [string, unknown])[]): Promise<IDBFactory> {
  const factory = new IDBFactory();
  return new Promise((resolve, reject) => {
    const open = factory.open('trammel');
    open.onupgradeneeded = () => open.result.createObjectStore('records');
    open.onerror = () => reject(open.error!);
    open.onsuccess = () => {
      const writing = open.result.transaction('records', 'readwrite');
      for (const [key, value] of records) writing.objectStore('records').put(value, key);
      writing.oncomplete = () => {
        open.result.close();
        resolve(factory);
      };
    };
  });
}

const stored = samples.map((record) => [keyOf(record), record] as const);

/** Settings say what concerns this device alone; a file does not carry it (README, Files). */
const portable = samples.map((record) =>
  record.type === 'settings' ? { ...record, lastExport: null, persistAsked: null } : record,
);

async function rescued(records: readonly (readonly [string, unknown])[]) {
  const { texts, records: count } = filesOf((await readEverything(await filled(records))) ?? [], MADE);
  return { count, read: texts.map((text) => readFile(text)) };
}

test('what the rescue saves is read in by the app, record for record', async () => {
  const { count, read } = await rescued(stored);
  expect(count).toBe(samples.length);
  expect(read).toHaveLength(1);
  const [file] = read;
  if (!file?.ok) throw new Error(file?.reason);
  expect(file.refused).toEqual([]);
  const byKey = (all: readonly (typeof samples)[number][]) => new Map(all.map((record) => [keyOf(record), record]));
  expect(byKey(file.records)).toEqual(byKey(portable));
});

test('what was set aside goes along, and the app says what ails it', async () => {
  const aside = { type: 'aside', key: 'draft:-:bed-tram', since: MADE, reason: 'torn', stored: 'torn' };
  const { count, read } = await rescued([...stored, ['aside:draft:-:bed-tram@1', aside]]);
  expect(count).toBe(samples.length + 1);
  expect(read[0]).toMatchObject({ ok: true, refused: [{}] });
});

test.runIf(isWhole)('more than one file can hold becomes several that each can be read', () => {
  const machine = stored.find(([key]) => key.startsWith('machine:'))!;
  const many = Array.from({ length: FILE_LIMITS.records + 1 }, (_, i) => {
    const id = `m${i}`;
    return [`machine:${id}`, { ...machine[1], id }] as const;
  });
  const { texts, records } = filesOf(many, MADE);
  expect(records).toBe(many.length);
  const held = texts.map((text) => (JSON.parse(text) as { machines: unknown[] }).machines.length);
  expect(held.reduce((sum, count) => sum + count, 0)).toBe(many.length);
  expect(texts.length).toBeGreaterThan(1);
  // Full machines weigh more than a kilobyte: it is the size that parts them, before the count does.
  for (const [i, text] of texts.entries()) {
    expect(new TextEncoder().encode(text).length).toBeLessThanOrEqual(FILE_LIMITS.bytes);
    expect(held[i]).toBeLessThanOrEqual(FILE_LIMITS.records);
  }
  expect(readFile(texts.at(-1)!)).toMatchObject({ ok: true, refused: [] });
});

test('where nothing was ever kept, no database is made', async () => {
  const factory = new IDBFactory();
  expect(await readEverything(factory)).toBeUndefined();
  expect(await factory.databases()).toEqual([]);
});
