import { expect, type Page } from '@playwright/test';
import { give } from './words-watch';

/** What the tests do with machines and with what is stored of them. */

export async function makeMachine(page: Page, name: string): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'New machine' }).click();
  await page.getByLabel('Name of the machine').fill(name);
  await page.getByRole('button', { name: 'Make it' }).click();
  await expect(page.getByLabel('Machine on the bench').locator('option:checked')).toHaveText(name);
}

/** What stands in the browser's database at the keys that begin with `prefix`, past the app. */
export const inDatabase = (page: Page, prefix: string): Promise<readonly [string, unknown][]> =>
  page.evaluate(
    (begin) =>
      new Promise<[string, unknown][]>((resolve, reject) => {
        const opening = indexedDB.open('trammel');
        opening.onerror = () => reject(new Error('could not open the database'));
        opening.onsuccess = () => {
          const database = opening.result;
          const found: [string, unknown][] = [];
          const range = IDBKeyRange.bound(begin, `${begin}\uffff`);
          const walking = database.transaction('records').objectStore('records').openCursor(range);
          walking.onsuccess = () => {
            const cursor = walking.result;
            if (!cursor) {
              database.close();
              resolve(found);
              return;
            }
            if (typeof cursor.key === 'string') found.push([cursor.key, cursor.value]);
            cursor.continue();
          };
          walking.onerror = () => reject(new Error('could not read the database'));
        };
      }),
    prefix,
  );

/**
 * Waits until what was typed stands in a draft in the browser's database: from then on neither a reload nor a crash loses it.
 *
 * @param prefix of the keys to look at, where it is no draft
 */
export const untilKept = (page: Page, text: string, prefix = 'draft:'): Promise<void> =>
  expect.poll(async () => JSON.stringify(await inDatabase(page, prefix))).toContain(JSON.stringify(text).slice(1, -1));

/** Puts anything at a key, past the app. */
export const plant = (page: Page, key: string, value: unknown): Promise<void> => {
  give(value);
  return page.evaluate(
    ([at, what]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('trammel');
        opening.onerror = () => reject(new Error('could not open the database'));
        opening.onsuccess = () => {
          const writing = opening.result.transaction('records', 'readwrite');
          writing.objectStore('records').put(what, at);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          writing.onerror = () => reject(new Error('could not plant the record'));
        };
      }),
    [key, value] as const,
  );
};
