import { expect } from '@playwright/test';
import { demoMachine, demoReadings } from '../support/demo';
import { calculatorIds, test } from './support';

/*
 * Runs on the build in accented words only, where nothing is found by its English name. Each test fails by itself on a
 * plain word in any of its pages (words-watch.ts).
 */

const MACHINE = `machines/${demoMachine.id}`;
const screens = [
  '',
  'machines',
  MACHINE,
  `${MACHINE}/card`,
  ...demoReadings.slice(0, 1).map(({ calculator }) => `${MACHINE}/check/${calculator}`),
  ...demoReadings.map(({ at, id }) => `${MACHINE}/reading/${at}-${id}`),
  'case/new',
  'settings',
  'phone/note',
  'phone/clicks',
  'phone/ridges',
  'phone/ripples',
  'phone/skew',
  'phone/slope',
  ...calculatorIds.map((id) => `check/${id}`),
];

for (const screen of screens) {
  test(`no plain English on ${screen || 'the first screen'}`, async ({ page }, info) => {
    await page.goto('./#/machines');
    await page.locator('main button').last().click();
    await expect(page).toHaveURL(new RegExp(`${MACHINE}$`));
    await page.goto(`./#/${screen}`);
    await expect(page.locator('h1')).toHaveText(/\S/);
    if (screen.startsWith('check/')) await expect(page.getByRole('complementary')).toBeVisible();
    await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
    for (const head of await page.locator('main .field-line').all()) {
      if ((await head.getAttribute('aria-expanded')) === 'false') await head.click();
    }
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > 360) info.annotations.push({ type: 'wider than the phone', description: `${screen}: ${width} px` });
  });
}
