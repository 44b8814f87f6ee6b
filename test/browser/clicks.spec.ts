import AxeBuilder from '@axe-core/playwright';
import { chromium, expect, type Browser, type Page } from '@playwright/test';
import { writeFileSync } from 'node:fs';
import { findBrowser } from './find-browser';
import { field, test, unmarked } from './support';
import { tickingWav } from './ticks';

const QUIET = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-sync'];
const FAKE = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];

/** Ten ticks in the first five seconds of every ten: the recording goes round and round. */
const AT = Array.from({ length: 10 }, (_, i) => 0.6 + 0.45 * i);

let browser: Browser | undefined;

test.afterEach(async () => {
  await browser?.close();
  browser = undefined;
});

async function open(flags: readonly string[], baseURL: string | undefined): Promise<Page> {
  browser = await chromium.launch({ ...findBrowser(), args: [...QUIET, ...flags] });
  const context = await browser.newContext({
    ...(baseURL === undefined ? {} : { baseURL }),
    viewport: { width: 360, height: 740 },
    hasTouch: true,
  });
  return context.newPage();
}

const key = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

async function expectSound(page: Page, state: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  const nodes = violations.map((v) => `${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`);
  expect(nodes, state).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth), state).toBeLessThanOrEqual(360);
}

/** Ticks counted and seconds listened, as shown. */
async function shown(page: Page): Promise<{ ticks: number; seconds: number }> {
  const text = unmarked(await page.locator('.ear-result').innerText());
  const [, ticks] = /^(\d+)/.exec(text) ?? [];
  const [, seconds] = /(\d+)\ss\b/.exec(text) ?? [];
  return { ticks: Number(ticks), seconds: Number(seconds) };
}

test('ticks in the microphone are counted and fill the check’s line', async ({ baseURL }) => {
  const file = test.info().outputPath('ticks.wav');
  writeFileSync(file, tickingWav({ at: AT, seconds: 10 }));
  const page = await open([...FAKE, `--use-file-for-fake-audio-capture=${file}`], baseURL);
  await page.goto('./#/check/steps-per-length?v=1&axis=feed');
  const box = await field(page, 'Ticks of the feeder meanwhile');
  await key(page, 'Count with the phone').click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByText('The hot end burns')).toBeVisible();
  await expectSound(page, 'before');
  await key(page, 'Listen').click();
  await expect.poll(async () => (await shown(page)).ticks, { timeout: 60_000 }).toBeGreaterThanOrEqual(8);
  await expectSound(page, 'listening');
  await key(page, 'Stop').click();
  const { ticks, seconds } = await shown(page);
  // Ten in ten seconds, wherever in the round it began and stopped.
  expect(ticks).toBeLessThanOrEqual(10 * Math.ceil((seconds + 1) / 10));
  expect(ticks).toBeGreaterThanOrEqual(10 * Math.floor((seconds - 1) / 10));
  await expect(page.getByRole('img', { name: /^Every tick over time/ })).toBeVisible();
  await expectSound(page, 'stopped');
  await key(page, 'Use as: Ticks of the feeder meanwhile').click();
  await expect(dialog).toBeHidden();
  await expect(box).toHaveValue(new RegExp(`^${ticks}(?!\\d)`));
});

test('counting: permission refused, and the check can still be filled', async ({ baseURL }) => {
  const page = await open(['--use-fake-device-for-media-stream'], baseURL);
  await page.goto('./#/phone/clicks');
  await key(page, 'Listen').click();
  await expect(page.getByRole('alert')).toContainText('The microphone was refused: allow it for this page');
  await expect(page.getByRole('alert')).toContainText('can always be typed into the check');
  await expectSound(page, 'refused');
});
