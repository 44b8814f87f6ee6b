import { expect, type Page } from '@playwright/test';
import { drawer, entryOf, listedIn, openHost, type Host } from './host';
import { calculatorIds, test } from './support';

/*
 * Parts of the app that are fetched when they are asked for, each failing once, on a page without a worker.
 * Which part belongs to which screen is found by looking. CHUNKS=all tries every part, else some are drawn (SEED=n: others).
 */

test.use({ serviceWorkers: 'block' });

// Hashed files are kept by the browser for good: a part that was seen once would come from there.
test.beforeEach(async ({ page }) => {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
});

const SCREENS = [
  '/',
  '/machines',
  '/settings',
  '/licences',
  '/case/new',
  '/case/new?said=hairs',
  '/stop?said=smoke',
  '/phone/note',
  '/phone/clicks',
  '/phone/ridges',
  '/phone/ripples',
  '/phone/skew',
  '/phone/slope',
  ...calculatorIds.map((id) => `/check/${id}`),
] as const;

const COUNT = process.env.CHUNKS === 'all' ? Infinity : 10;

/** The heading of the screen, once all of it is there. */
async function headingOf(page: Page, host: Host, screen: string): Promise<string> {
  await page.goto('about:blank');
  await page.goto(`${host.url}#${screen}`);
  await page.waitForLoadState('networkidle');
  return page.locator('main h1').first().innerText();
}

/** Files that a screen asks for after the page itself has started. */
async function asksFor(page: Page, host: Host, screen: string, first: ReadonlySet<string>): Promise<readonly string[]> {
  const asked: string[] = [];
  const note = (request: { url(): string }) => void asked.push(request.url().slice(host.url.length));
  page.on('request', note);
  await headingOf(page, host, screen);
  page.off('request', note);
  return asked.filter((url) => url.startsWith('assets/') && !first.has(url));
}

/** Parts, each with a screen that cannot do without it, or that asks for it at least. */
async function partsOf(
  page: Page,
  host: Host,
  salt: number,
): Promise<readonly (readonly [part: string, screen: string])[]> {
  const draw = drawer(salt);
  const screens = COUNT === Infinity ? SCREENS : draw(SCREENS, 6);
  const first = new Set([...(await asksFor(page, host, '/nowhere', new Set())), entryOf(host.folder)]);
  const found = new Map<string, string>();
  for (const screen of screens) {
    for (const part of await asksFor(page, host, screen, first)) if (!found.has(part)) found.set(part, screen);
  }
  const known = new Set(listedIn(host.folder).map(({ url }) => url));
  return draw(
    [...found].filter(([part]) => known.has(part)),
    COUNT,
  );
}

for (const fault of ['dead', 'page', 'missing'] as const) {
  test(`a part that is "${fault}" once is a sentence with a key that brings it, never a blank page`, async ({
    page,
  }) => {
    const host = await openHost();
    let lost = 0;
    try {
      for (const [part, screen] of await partsOf(page, host, fault.length)) {
        await test.step(`${part} of ${screen}`, async () => {
          const heading = await headingOf(page, host, screen);
          await page.goto('about:blank');
          host.faults.set(part, fault);
          await page.goto(`${host.url}#${screen}`);
          await page.waitForLoadState('networkidle');
          await expect(page.getByRole('navigation')).toBeVisible();
          host.faults.clear();
          const again = page.getByRole('button', { name: 'Try again' });
          // What is fetched only to be at hand may fail without a word: then the screen is whole without it.
          await expect(again.or(page.locator('main h1', { hasText: heading })).first()).toBeVisible();
          if (await again.first().isVisible()) lost += 1;
          while ((await again.count()) > 0) {
            await again.first().click();
            await expect(again.or(page.locator('main h1')).first()).toBeVisible();
            await page.waitForLoadState('networkidle');
          }
          await expect(page.locator('main h1').first()).toHaveText(heading);
        });
      }
      expect(lost).toBeGreaterThan(0);
    } finally {
      host.close();
    }
  });
}

test('what was typed is there after a part had to be asked for again', async ({ page }) => {
  const host = await openHost();
  try {
    await page.goto(`${host.url}#/check/screw-lead`);
    await page.waitForLoadState('networkidle');
    const box = page.getByRole('textbox').first();
    if ((await box.count()) === 0) await page.locator('.field-line').first().click();
    await page.getByRole('textbox').first().fill('7.25');
    for (const { url } of listedIn(host.folder)) if (/screen|settings/.test(url)) host.faults.set(url, 'page');
    await page.getByRole('link', { name: 'Settings' }).click();
    await expect(page.getByRole('alert').getByRole('button', { name: 'Try again' })).toBeVisible();
    host.faults.clear();
    await page.getByRole('alert').getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('heading', { name: 'Settings' })).toBeVisible();
    await page.goto(`${host.url}#/check/screw-lead`);
    await expect(page.locator('main')).toContainText('screw', { ignoreCase: true });
    await expect(
      page.locator('input').and(page.locator('[value="7.25"]')).or(page.getByText('7.25')).first(),
    ).toBeAttached();
  } finally {
    host.close();
  }
});
