import { expect, type Page } from '@playwright/test';
import { bench, enter, field, test } from './support';
import { makeMachine, untilKept } from './records';

const DH = 'Height difference of the two sides';

test('a killed tab loses nothing that was typed', async ({ context }) => {
  const page = await context.newPage();
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '0.42 ± 0.05');
  await untilKept(page, '0.42 ± 0.05');
  // No beforeunload, no pagehide: the process is gone.
  const session = await context.newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
  const again = await context.newPage();
  await again.goto('./#/check/two-z-screws');
  await expect(await field(again, DH)).toHaveValue('0.42 ± 0.05');
});

test('what was typed before a machine was chosen goes along to it', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '0.75');
  await bench(page).getByRole('button', { name: 'Save reading' }).click();
  await bench(page).getByRole('button', { name: 'New machine' }).click();
  await bench(page).getByLabel('Name of the machine').fill('Owner from the corner shop');
  await bench(page).getByRole('button', { name: 'Make it' }).click();
  await expect(await field(page, DH)).toHaveValue('0.75');
  await expect(bench(page)).toContainText('Saved on Owner from the corner shop');
  await page.reload();
  // It was kept: the next reading starts empty, this one beside it.
  await expect(await field(page, DH)).toHaveValue('');
  await expect(page.locator('.field-earlier').first()).toContainText('0.75');
  await expect(page.getByLabel('Machine on the bench')).toContainText('Owner from the corner shop');
});

test('a page that is loaded anew the moment it says that a reading is saved starts the next one empty', async ({
  page,
}) => {
  await makeMachine(page, 'In a hurry');
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '0.75');
  const again = page.waitForEvent('load');
  await page.evaluate(() => {
    const saved = () => document.querySelector('.bench [role=status]')?.textContent.includes('Saved') === true;
    new MutationObserver((_, observer) => {
      if (!saved()) return;
      observer.disconnect();
      location.reload();
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  await bench(page).getByRole('button', { name: 'Save reading' }).click();
  await again;
  await expect(await field(page, DH)).toHaveValue('');
  await expect(page.locator('.field-earlier').first()).toContainText('0.75');
});

test('two tabs change different values of one machine at once: both stay', async ({ context }) => {
  const one = await context.newPage();
  await makeMachine(one, 'Shared');
  const two = await context.newPage();
  for (const page of [one, two]) {
    await page.goto('./#/machines');
    await page.getByRole('link', { name: /Shared/ }).click();
  }
  const keep = async (page: Page, label: string, text: string) => {
    const line = page.locator('.field', { hasText: label }).first();
    await line.locator('.field-line').click();
    await line.getByRole('textbox').fill(text);
    await line.getByRole('button', { name: 'Keep it' }).click();
  };
  await Promise.all([keep(one, 'Screw lead', '8'), keep(two, 'Bed width', '205')]);
  for (const page of [one, two]) {
    await expect(page.locator('.field', { hasText: 'Screw lead' }).first()).toContainText('8 mm');
    await expect(page.locator('.field', { hasText: 'Bed width' }).first()).toContainText('205 mm');
  }
});

test('a database that does not open the first time is tried again', async ({ page }) => {
  await page.addInitScript(() => {
    const open = indexedDB.open.bind(indexedDB);
    let failures = 1;
    indexedDB.open = (name: string, version?: number) => {
      if (failures > 0) {
        failures -= 1;
        throw new DOMException('not now', 'UnknownError');
      }
      return open(name, version);
    };
  });
  await makeMachine(page, 'Second try');
  await page.reload();
  await expect(page.getByLabel('Machine on the bench')).toContainText('Second try');
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('without storage everything works and the page says that nothing is kept', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await page.goto('./#/check/two-z-screws');
  await expect(page.getByRole('alert')).toContainText('Nothing is being kept');
  await enter(page, DH, '0.75');
  await expect(bench(page)).toContainText('2 teeth');
});

test('a record that cannot be read is reported and left as it was', async ({ page }) => {
  await makeMachine(page, 'Good one');
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('trammel');
        opening.onsuccess = () => {
          const writing = opening.result.transaction('records', 'readwrite');
          writing.objectStore('records').put({ v: 1, type: 'machine', name: 42 }, 'machine:broken');
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          writing.onerror = () => reject(new Error('could not plant the record'));
        };
      }),
  );
  await page.reload();
  await expect(page.getByLabel('Machine on the bench')).toContainText('Good one');
  await page.getByRole('link', { name: 'Settings' }).click();
  await expect(page.locator('main')).toContainText('machine:broken');
});

test('the demo machine is marked and can be removed', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
  await expect(page.locator('h1')).toContainText('demo');
  await page.getByRole('button', { name: 'Remove this machine…' }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await expect(page.locator('main')).toContainText('No machine yet');
});
