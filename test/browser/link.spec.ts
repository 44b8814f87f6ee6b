import { expect, type Page } from '@playwright/test';
import jsQR from 'jsqr';
import { bench, enter, field, line, test } from './support';
import say from '../../src/app/sheet/words/en';
import { untilKept } from './records';

const HEIGHT = 'Height difference of the two sides';

async function open(page: Page): Promise<string> {
  await page.getByRole('heading', { name: say.folds.handOver }).click();
  return page.getByRole('textbox', { name: 'Link', exact: true }).inputValue();
}

/** What a scanner reads off the screen as it stands; its picture is taken apart by a page of its own. */
async function scan(page: Page): Promise<string | undefined> {
  const png = (await page.screenshot()).toString('base64');
  const other = await page.context().newPage();
  const { reds, width, height } = await other.evaluate(async (source) => {
    const image = new Image();
    image.src = `data:image/png;base64,${source}`;
    await image.decode();
    const { width, height } = image;
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    const pen = canvas.getContext('2d')!;
    pen.drawImage(image, 0, 0);
    // Text crosses over much faster than a list of a million numbers; of the grey values one channel is enough.
    const { data } = pen.getImageData(0, 0, width, height);
    let reds = '';
    for (let i = 0; i < data.length; i += 4) reds += String.fromCharCode(data[i]!);
    return { reds, width, height };
  }, png);
  await other.close();
  const data = Uint8ClampedArray.from({ length: 4 * reds.length }, (_, i) =>
    i % 4 === 3 ? 255 : reds.charCodeAt(i >> 2),
  );
  return jsQR(data, width, height)?.data;
}

async function newMachine(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'New machine' }).click();
  await page.getByLabel('Name of the machine').fill(name);
  await page.getByRole('button', { name: 'Make it' }).click();
  await expect(page.getByLabel('Machine on the bench')).toHaveValue(/\w+/);
}

test('a check goes to a phone that has no such machine, by copied link', async ({ page, browser, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('./#/check/two-z-screws');
  await newMachine(page, 'Left bench');
  await enter(page, 'Screw lead', '12');
  await enter(page, HEIGHT, '0,75');
  await bench(page).getByRole('button', { name: say.keeper.keep }).click();
  await expect(bench(page)).toContainText('Saved on Left bench');
  const headline = await bench(page).locator('.bench-headline').textContent();

  // The lead stands on the machine only, as on the next day.
  await page.getByRole('button', { name: 'Clear all entries' }).click();
  await enter(page, HEIGHT, '0,75');
  await expect(line(page, 'Screw lead')).toContainText('machine');
  const link = await open(page);
  expect(link.length).toBeLessThan(300);
  await page.getByRole('button', { name: 'Copy link' }).click();
  await expect(page.getByText('The link is copied.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);

  const asked: string[] = [];
  const other = await browser.newContext();
  const phone = await other.newPage();
  phone.on('request', (request) => asked.push(request.url()));
  await phone.goto(link);
  await expect(bench(phone).locator('.bench-headline')).toHaveText(headline ?? '');
  await expect(line(phone, 'Screw lead')).toContainText('12');
  await expect(await field(phone, HEIGHT)).toHaveValue('0.75');
  expect(new URL(phone.url()).hash).toBe('#/check/two-z-screws');
  // The browser never sends a fragment; nothing else may either.
  expect(asked.filter((url) => new URL(url).search !== '' || url.includes('0.75'))).toEqual([]);
  await other.close();
});

test('a link does not write over the draft: it can be put back, and a reload shows it', async ({ page }) => {
  await page.clock.install();
  await page.goto('./#/check/two-z-screws');
  await enter(page, HEIGHT, '0.31');
  await untilKept(page, '0.31');
  await page.goto('./#/check/two-z-screws?v=1&dh=0.75;mm;caliper');
  await expect(page.getByText(say.arrival.cameWithLink)).toBeVisible();
  await expect(await field(page, HEIGHT)).toHaveValue('0.75');
  expect(new URL(page.url()).hash).toBe('#/check/two-z-screws');
  // Whatever it puts off for a moment has had it.
  await page.clock.runFor(5000);
  await page.reload();
  await expect(await field(page, HEIGHT)).toHaveValue('0.31');

  await page.goto('./#/check/two-z-screws?v=1&dh=0.75;mm;caliper');
  await expect(await field(page, HEIGHT)).toHaveValue('0.75');
  await page.getByRole('button', { name: say.putBack }).first().click();
  await expect(await field(page, HEIGHT)).toHaveValue('0.31');
  await expect(page.getByText(say.arrival.cameWithLink)).toBeHidden();

  // Going on from the link's numbers is the person's own doing: then they are the draft.
  await page.goto('./#/check/two-z-screws?v=1&dh=0.75;mm;caliper&P_h=8;mm');
  await expect(await field(page, HEIGHT)).toHaveValue('0.75');
  await enter(page, HEIGHT, '0.8');
  await untilKept(page, '0.8');
  await page.reload();
  await expect(await field(page, HEIGHT)).toHaveValue('0.8');
});

test('a link that is opened while the same check is open takes the newest numbers as the ones to put back', async ({
  page,
}) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, HEIGHT, '0.31');
  await enter(page, HEIGHT, '0.32');
  await untilKept(page, '0.32');
  for (const value of ['0.75', '0.9']) {
    await page.evaluate((text) => (location.hash = `#/check/two-z-screws?v=1&dh=${text};mm;caliper`), value);
    await expect(await field(page, HEIGHT)).toHaveValue(value);
  }
  await page.getByRole('button', { name: say.putBack }).first().click();
  await expect(await field(page, HEIGHT)).toHaveValue('0.32');
});

test('what the machine on the bench keeps does not creep into a link’s check; the machine is one key away', async ({
  page,
}) => {
  await page.goto('./#/check/two-z-screws');
  await newMachine(page, 'Left bench');
  await enter(page, 'Screw lead', '12');
  await enter(page, HEIGHT, '0.31');
  await bench(page).getByRole('button', { name: say.keeper.keep }).click();
  await expect(bench(page)).toContainText('Saved on Left bench');

  await page.goto('./#/check/two-z-screws?v=1&dh=0.75;mm;caliper');
  await expect(page.getByText('Left bench is off the bench')).toBeVisible();
  await expect(line(page, 'Screw lead')).toContainText('typical');
  await page.getByRole('button', { name: 'Put Left bench back' }).click();
  await expect(await field(page, HEIGHT)).toHaveValue('0.31');
  await expect(line(page, 'Screw lead')).toContainText('12');
  await expect(page.getByText('came with a link')).toBeHidden();

  // A reading from a link can be kept on a machine: its numbers go along when the machine is picked.
  await page.goto('./#/check/two-z-screws?v=1&dh=0.75;mm;caliper');
  await expect(page.getByText('Left bench is off the bench')).toBeVisible();
  await bench(page).getByRole('button', { name: say.keeper.keep }).click();
  await bench(page).getByRole('combobox').selectOption({ label: 'Left bench' });
  await expect(await field(page, HEIGHT)).toHaveValue('0.75');
  await page.getByRole('button', { name: say.putBack }).first().click();
  await expect(await field(page, HEIGHT)).toHaveValue('0.31');
});

test('what a link holds and cannot be used is named; a newer form is refused; nothing runs', async ({ page }) => {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('dialog', (dialog) => errors.push(dialog.message()));
  await page.goto('./#/check/two-z-screws?v=1&dh=0.75;parsec&z=20&q=%3Cimg%20src=x%20onerror=alert(1)%3E&drive=%');
  await expect(page.getByText(`Left out: ${HEIGHT}.`)).toContainText('the unit “parsec”');
  await expect(page.getByText('This check has no such value')).toContainText('<img src=x');
  await expect(page.locator('main img')).toHaveCount(0);

  await enter(page, HEIGHT, '0.31');
  await untilKept(page, '0.31');
  await page.goto('./#/check/two-z-screws?v=2&dh=0.75;mm');
  await expect(page.getByText('made by a newer Trammel (form 2')).toBeVisible();
  await expect(await field(page, HEIGHT)).toHaveValue('0.31');
  expect(new URL(page.url()).hash).toBe('#/check/two-z-screws');
  expect(errors).toEqual([]);
});

for (const theme of ['light', 'dark'] as const) {
  for (const viewport of [
    { width: 360, height: 740 },
    { width: 740, height: 360 },
  ]) {
    test(`the QR code on the screen scans back to the link, ${theme}, ${viewport.width} wide`, async ({ page }) => {
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme: theme });
      await page.goto(
        './#/check/wheel-preload?v=1&F_slip=40;N&d=0;mm&h=0;mm&N_0=1;N&beta=90;deg&l_f=5;mm&p_lim=35;MPa',
      );
      const link = await open(page);
      expect(link).toContain('F_slip=40;N');
      await page.getByRole('button', { name: 'Show as QR code' }).click();
      const code = page.getByRole('img', { name: 'The code' });
      await expect(code).toBeInViewport({ ratio: 1 });
      expect(await scan(page)).toBe(link);
      await page.getByRole('button', { name: 'Close' }).click();
      await expect(code).toBeHidden();

      await enter(page, 'Slip force at the tread', '41');
      await page.getByRole('button', { name: 'Show as QR code' }).click();
      await expect(code).toBeInViewport({ ratio: 1 });
      expect(await scan(page)).toBe(link.replace('F_slip=40', 'F_slip=41'));
      await page.keyboard.press('Escape');
      await expect(code).toBeHidden();
    });
  }
}

test('no link is made of an entry that cannot be used: it says which', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, HEIGHT, 'about one');
  await page.getByRole('heading', { name: say.folds.handOver }).click();
  await expect(page.getByText(`Put this right first, then there is a link. ${HEIGHT}:`)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Link', exact: true })).toBeHidden();
});

test('sends the link where the phone can, and says so where it does not take it', async ({ page }) => {
  await page.addInitScript(() => {
    const sent: unknown[] = [];
    Object.assign(window, { sent });
    Object.defineProperty(Navigator.prototype, 'share', {
      configurable: true,
      value: (data: ShareData) => {
        sent.push(data);
        if (sent.length === 1) return Promise.resolve();
        return Promise.reject(new DOMException('', sent.length === 2 ? 'AbortError' : 'NotAllowedError'));
      },
    });
  });
  await page.goto('./#/check/two-z-screws');
  await enter(page, HEIGHT, '0.75');
  const link = await open(page);
  const send = page.getByRole('button', { name: 'Send link' });
  const refused = page.getByText('This phone did not take the link');
  await send.click();
  await send.click();
  await expect(refused).toBeHidden();
  await send.click();
  await expect(refused).toBeVisible();
  expect(await page.evaluate(() => (window as unknown as { sent: { url: string }[] }).sent[0]?.url)).toBe(link);
});
