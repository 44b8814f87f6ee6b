import { expect } from '@playwright/test';
import { drawer } from './host';
import { test } from './support';

const SIGNS = [
  '%',
  '%%',
  '/',
  '//',
  '\\',
  '?',
  '#',
  '%2',
  '%zz',
  '%FF',
  '%E0%A4%A',
  '%00',
  ':',
  '@',
  '..',
  ' ',
  'é',
  '😀',
  '<b>',
  "'",
  '"',
  '{}',
  '|',
  '&=',
  'undefined',
];
const PLACES = [
  '',
  '/',
  '/check/',
  '/check/bed-tram',
  '/check/bed-tram?',
  '/machines/',
  '/machines/x/',
  '/machines/x/card',
  '/machines/x/check/',
  '/machines/x/reading/',
  '/case/',
  '/case/x/',
  '/case/x/y/sheet',
  '/case/link?',
  '/case/link?c=',
  '/case/new?symptom=',
  '/case/new?said=',
  '/stop?said=',
  '/phone/',
  '/settings/',
  '/licences',
];

/** Every place with every sign, and some of two signs drawn by a seed; one that is long. */
const drawn = drawer(3)(
  PLACES.flatMap((place) => SIGNS.flatMap((one) => SIGNS.map((two) => `${place}${one}${two}`))),
  60,
);
const ADDRESSES = [
  ...SIGNS,
  ...drawer(4)(
    PLACES.flatMap((place) => SIGNS.map((sign) => place + sign)),
    80,
  ),
  ...drawn,
  `/check/${'x'.repeat(50_000)}`,
  `/case/link?c=${'%'.repeat(5_000)}`,
];

test('every address, however malformed, gives a screen with a way on', async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto('./');
  for (const address of ADDRESSES) {
    await test.step(address.slice(0, 60), async () => {
      // Within the open page, as a link does.
      await page.evaluate((hash) => (location.hash = hash), address);
      await expect(page.locator('main h1').first()).not.toBeEmpty();
      await expect(page.locator('main :is(a, button)').first()).toBeVisible();
      expect(errors, address.slice(0, 60)).toEqual([]);
    });
  }
  for (const address of drawer(6)(ADDRESSES, 25)) {
    await test.step(`anew: ${address.slice(0, 60)}`, async () => {
      await page.goto('about:blank');
      await page.goto('./');
      await page.evaluate((hash) => (location.hash = hash), address);
      await page.reload();
      await expect(page.locator('main h1').first()).not.toBeEmpty();
      await expect(page.locator('main :is(a, button)').first()).toBeVisible();
      expect(errors, address.slice(0, 60)).toEqual([]);
    });
  }
});
