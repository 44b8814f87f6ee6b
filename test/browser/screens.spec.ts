import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { bench, calculatorIds, test, untilIdle } from './support';
import say from '../../src/app/sheet/words/en';
import shell from '../../src/app/shell/words/en';

const phones = ['note', 'clicks', 'ridges', 'ripples', 'skew', 'slope'].map((name) => `phone/${name}`);
const screens = [
  '',
  'machines',
  'settings',
  'licences',
  'no-such-address',
  ...phones,
  ...calculatorIds.map((id) => `check/${id}`),
];

/** Opens every fold, so that what hides in it is looked at too. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
  const steps = page.getByRole('button', { name: say.bar.steps });
  if (await steps.isVisible()) await steps.click();
}

async function expectSound(page: Page, name: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((v) => `${name}: ${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);
}

/** Sunlight and forced colours change no layout: one screen in five stands for its like. */
const someScreens = screens.filter((_, at) => at % 5 === 0);
const looks = [
  ['light', { colorScheme: 'light' }, screens],
  ['dark', { colorScheme: 'dark' }, screens],
  ['sunlight', { colorScheme: 'dark' }, someScreens],
  ['forced colours', { forcedColors: 'active' }, someScreens],
] as const;

for (const [look, media, through] of looks) {
  test(`axe finds nothing on any screen, ${look}`, async ({ page }) => {
    await page.emulateMedia(media);
    await page.goto('./');
    if (look === 'sunlight') await page.getByRole('button', { name: shell.head.sunlight }).click();
    await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
    await expect(page.locator('h1')).toContainText('demo');
    await expect(page.locator('.field').first()).toBeVisible();
    await expectSound(page, 'a machine');
    for (const screen of through) {
      await page.goto(`./#/${screen}`);
      await expect(page.locator('h1')).not.toBeEmpty();
      if (screen.startsWith('check/')) await expect(bench(page)).toBeVisible();
      await unfold(page);
      await expectSound(page, screen);
    }
  });
}

test('no screen is wider than a small phone, and every control is big enough for a thumb', async ({ page }) => {
  for (const screen of screens) {
    await page.goto(`./#/${screen}`);
    await expect(page.locator('h1')).not.toBeEmpty();
    if (screen.startsWith('check/')) await expect(bench(page)).toBeVisible();
    await unfold(page);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width, `${screen} scrolls sideways`).toBeLessThanOrEqual(360);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'button, select, summary, input:not([type=radio]), .choice-options label, nav a, .index-entry',
        ),
      ]
        .filter((element) => element.checkVisibility())
        .flatMap((element) => {
          const { width, height } = element.getBoundingClientRect();
          return width < 47.5 || height < 47.5 ? [`${element.tagName} ${element.textContent} ${width}x${height}`] : [];
        }),
    );
    expect(small, screen).toEqual([]);
  }
});

test('nothing is asked of any other host, and the policy without unsafe-eval is never hit', async ({ page }) => {
  const strangers: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => {
    const { hostname, protocol } = new URL(request.url());
    if (protocol.startsWith('http') && hostname !== 'localhost') strangers.push(request.url());
  });
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  for (const screen of screens) {
    await page.goto(`./#/${screen}`);
    await expect(page.locator('h1')).not.toBeEmpty();
    await untilIdle(page);
  }
  expect(strangers).toEqual([]);
  expect(complaints).toEqual([]);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).not.toContain('unsafe');
});
