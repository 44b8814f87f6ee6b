import { expect, type Page } from '@playwright/test';
import { writeFile } from '../../src/machine/exchange';
import type { Reading } from '../../src/machine/schema';
import desk from '../../src/app/desk/words/en';
import files from '../../src/app/files/words/en';
import sheet from '../../src/app/sheet/words/en';
import { demoMachine, demoReadings } from '../support/demo';
import { inDatabase, makeMachine, untilKept } from './records';
import { bench, enter, field, test } from './support';

/* Storage that is really full: the browser's own refusal, nothing planted. */

const DH = 'Height difference of the two sides';
const FULL = /no room left|Storage failed/;

const many = Array.from({ length: 400 }, (_, i): Reading => ({ ...demoReadings[0]!, machine: 'theirs', id: `r${i}` }));
const file = writeFile([{ ...demoMachine, id: 'theirs', name: 'Theirs', demo: false }, ...many], demoMachine.changed);

const records = async (page: Page) =>
  (await inDatabase(page, '')).filter(([key]) => /^(machine|reading|photo|case):/.test(key));

/** A picture that stays large, drawn by the page. */
const picture = (page: Page): Promise<Buffer> =>
  page
    .evaluate(async () => {
      const canvas = document.createElement('canvas');
      canvas.width = canvas.height = 1000;
      const pen = canvas.getContext('2d')!;
      const noise = pen.createImageData(1000, 1000);
      for (let i = 0; i < noise.data.length; i += 1) noise.data[i] = i % 4 === 3 ? 255 : (i * 7919) % 251;
      pen.putImageData(noise, 0, 0);
      const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
      return [...new Uint8Array(await blob!.arrayBuffer())];
    })
    .then((bytes) => Buffer.from(bytes));

const keep = (page: Page) => bench(page).getByRole('button', { name: sheet.keeper.keep }).click();

/** The job before storage is full: a machine, a reading of it, and the next one typed. */
async function begin(page: Page): Promise<string> {
  await makeMachine(page, 'Left bench');
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '0.5 ± 0.03');
  await keep(page);
  await expect(bench(page)).toContainText('Saved on Left bench');
  await enter(page, DH, '0.75 ± 0.03');
  await untilKept(page, '0.75 ± 0.03');
  const [[, { machine, at, id }]] = (await inDatabase(page, 'reading:')) as [[string, Reading]];
  return `./#/machines/${machine}/reading/${at}-${id}`;
}

/** Keeping, a photo and a file, while nothing more can be written: said, nothing in part, what was typed still there. */
async function refuses(page: Page, reading: string): Promise<void> {
  const before = await records(page);
  await keep(page);
  await expect(page.getByRole('alert').filter({ hasText: FULL }).first()).toBeVisible();
  await expect(bench(page)).not.toContainText('Saved on Left bench');
  await expect(await field(page, DH)).toHaveValue(/0\.75/);
  expect(await records(page)).toEqual(before);

  const buffer = await picture(page);
  await page.goto(reading);
  await page.getByLabel(desk.photo.ask).setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer });
  await expect(page.getByRole('alert').filter({ hasText: FULL }).first()).toBeVisible();
  await expect(page.getByLabel(desk.photo.ask)).toBeEnabled();
  expect(await records(page)).toEqual(before);

  await page.goto('./#/settings');
  await page
    .getByLabel(files.takeIn.choose)
    .setInputFiles({ name: 'theirs.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await page.getByRole('button', { name: files.plan.take }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Nothing was read in.' })).toContainText(FULL);
  expect(await records(page)).toEqual(before);
  await page.goto('./#/check/two-z-screws');
  await expect(await field(page, DH)).toHaveValue(/0\.75/);
}

/** The browser notes that there is room again after a while: the person tries again. */
async function works(page: Page): Promise<void> {
  await expect(async () => {
    await keep(page);
    await expect(bench(page)).toContainText('Saved on Left bench', { timeout: 2000 });
  }).toPass();
  expect(await inDatabase(page, 'reading:')).toHaveLength(2);
}

/** Writes ever smaller things past the app until not even the smallest finds room. */
const fill = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('trammel');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(new Error('could not open the database'));
    });
    const fits = (size: number, i: number) =>
      new Promise<boolean>((resolve) => {
        const writing = database.transaction('records', 'readwrite');
        const noise = crypto.getRandomValues(new Uint8Array(Math.min(size, 65_536)));
        writing
          .objectStore('records')
          .put({ filler: Array.from({ length: size / noise.length }, () => noise) }, `zz:${size}-${i}`);
        writing.oncomplete = () => resolve(true);
        writing.onabort = () => resolve(false);
      });
    for (const size of [524_288, 65_536, 4096, 256]) for (let i = 0; i < 1000 && (await fits(size, i)); i += 1);
    database.close();
  });

test.describe('a quota of its own', () => {
  // The offline copy would take its share.
  test.use({ serviceWorkers: 'block' });

  test('that is used up: said, nothing half-written, nothing typed lost, and it works again once there is room', async ({
    page,
    baseURL,
  }) => {
    const session = await page.context().newCDPSession(page);
    const { origin } = new URL(baseURL!);
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 8_000_000 });
    const reading = await begin(page);
    await fill(page);
    await refuses(page, reading);
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await works(page);
  });
});
