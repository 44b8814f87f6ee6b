import { expect, type Locator, type Page } from '@playwright/test';
import { readdirSync } from 'node:fs';
import { asBuilt } from '../../build/chosen';
import { MARK } from '../../build/strange';
import say from '../../src/app/sheet/words/en';

export { test } from './words-watch';

/** Every calculator folder. */
export const calculatorIds = readdirSync('src/calculators', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

/** A text read from the page, without the marks of a marked build: for comparing outside the driver's own matching. */
export const unmarked = (text: string): string => text.replaceAll(MARK, '');

/** What a calculator's screen has for an input, by the input's label. */
export const line = (page: Page, label: string): Locator =>
  page.locator(`.field:is([data-symbol="${label}"], [data-symbol="${asBuilt(label)}"])`);

/** The entry of an input on a calculator's screen, opened if its line is closed. */
export async function field(page: Page, label: string): Promise<Locator> {
  const box = page.getByRole('textbox', { name: label, exact: true });
  // The sheet may be made anew meanwhile (a machine was picked): try until the line stands open.
  await expect(async () => {
    const head = line(page, label).locator('.field-line');
    await expect(head).toBeVisible({ timeout: 1000 });
    if ((await head.getAttribute('aria-expanded', { timeout: 1000 })) === 'false') await head.click({ timeout: 1000 });
    await expect(box).toBeVisible({ timeout: 1000 });
  }).toPass();
  return box;
}

/** Types into an input; where pictures stand for the sign, a text without one means the one that counts up. */
export async function enter(page: Page, label: string, text: string): Promise<void> {
  const box = await field(page, label);
  const pictured = (await line(page, label).locator('.sign-keys').count()) > 0 && !/^\s*[-−+]/.test(text);
  await box.fill(pictured && text !== '' ? `+${text}` : text);
}

export const bench = (page: Page): Locator => page.getByRole('complementary', { name: say.bar.title });

/** Waits until a service worker is in charge, so that going offline is fair. */
export async function untilOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller) {
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      );
    }
  });
}

/** Waits until the page has nothing left to do: what it puts off to an idle moment has had it, and is painted. */
export const untilIdle = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    for (let i = 0; i < 3; i += 1) {
      await new Promise((resolve) => requestIdleCallback(resolve));
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
  });
