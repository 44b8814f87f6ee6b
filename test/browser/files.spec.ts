import AxeBuilder from '@axe-core/playwright';
import { expect, type Browser, type Page } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { writeFile } from '../../src/machine/exchange';
import { demoMachine, demoReadings } from '../support/demo';
import type { Machine, Reading } from '../../src/machine/schema';
import { inDatabase, plant } from './records';
import { test, unmarked, untilIdle } from './support';

const MADE = '2026-05-06T07:08:09.000Z';
/** After all that the demo holds, and not after now: such a time would win nothing. */
const LATER = '2026-08-02T00:00:00.000Z';
const MADE_LINE = /^"made": .*$/m;

const machine: Machine = { ...demoMachine, id: 'left', name: 'Left bench', demo: false };
const readings = demoReadings.map((reading): Reading => ({ ...reading, machine: 'left' }));
const plain = writeFile([machine, ...readings], MADE);

async function openSettings(page: Page): Promise<void> {
  await page.goto('./#/settings');
  await expect(page.getByRole('heading', { name: 'Files' })).toBeVisible();
}

async function choose(page: Page, text: string | Buffer, name = 'from-a-friend.json'): Promise<void> {
  const buffer = typeof text === 'string' ? Buffer.from(text) : text;
  await page.getByLabel('A file that Trammel saved').setInputFiles({ name, mimeType: 'application/json', buffer });
}

const plan = (page: Page) => page.getByRole('group', { name: 'What the file would do' });

async function takeIn(page: Page, text: string): Promise<void> {
  await openSettings(page);
  await choose(page, text);
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Read in:')).toBeVisible();
}

async function saved(page: Page, make = 'Put the file together'): Promise<{ name: string; text: string }> {
  await page.getByRole('button', { name: make }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the file' }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

/** Everything stored but the settings, which follow what the person does with the page. */
const stored = async (page: Page) => JSON.stringify((await inDatabase(page, '')).filter(([key]) => key !== 'settings'));

/** Another person's phone. */
const elsewhere = async (browser: Browser, address: string): Promise<Page> =>
  (await browser.newContext({ baseURL: address, viewport: { width: 360, height: 740 } })).newPage();

test('everything goes to another phone in a file and comes back byte for byte', async ({ page, browser, baseURL }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
  await expect(page.locator('h1')).toContainText('demo');
  await openSettings(page);
  const first = await saved(page);
  expect(first.name).toMatch(/^trammel-\d{4}-\d\d-\d\d\.json$/);
  expect(first.text).toContain('"format": "trammel"');

  const other = await elsewhere(browser, baseURL!);
  await openSettings(other);
  await choose(other, first.text);
  await expect(plan(other)).toContainText('4 to be added, 0 to be changed, 0 the same.');
  await expect(plan(other)).toContainText('A new machine, with 10 values.');
  await plan(other).getByRole('button', { name: 'Read it in' }).click();
  await expect(other.getByText('Read in: 4 added, 0 changed.')).toBeVisible();
  const second = await saved(other);
  expect(second.text.replace(MADE_LINE, '')).toBe(first.text.replace(MADE_LINE, ''));

  await other.getByRole('link', { name: 'Machines' }).click();
  await other.getByRole('link', { name: /Bench printer, window side/ }).click();
  await expect(other.locator('main')).toContainText('It has held'.toLowerCase());
  await other.context().close();
});

test('the same file twice changes nothing', async ({ page }) => {
  await takeIn(page, plain);
  const before = await stored(page);
  await choose(page, plain);
  await expect(plan(page)).toContainText('0 to be added, 0 to be changed, 3 the same.');
  await expect(plan(page)).toContainText('Reading it in would change nothing.');
  await expect(plan(page).getByRole('button', { name: 'Read it in' })).toBeDisabled();
  await plan(page).getByRole('button', { name: 'Leave it' }).click();
  await expect(plan(page)).toBeHidden();
  expect(await stored(page)).toBe(before);
});

test('what changed on both sides is shown, and the person decides per machine', async ({ page }) => {
  const lead = machine.values['z.lead']!;
  const mine: Machine = { ...machine, values: { ...machine.values, 'z.lead': { ...lead, value: 0.002, at: LATER } } };
  await takeIn(page, writeFile([{ ...mine, changed: '2026-08-01T00:00:00.000Z' }], MADE));
  const theirs: Machine = { ...machine, name: 'From the corner shop', changed: LATER };
  await choose(page, writeFile([theirs], MADE));
  await expect(plan(page)).toContainText('It was changed both here and in the file.');
  const row = (name: string) => plan(page).getByRole('row', { name });
  await expect(row('Screw lead').locator('strong')).toHaveText(/2\smm/);
  await expect(row('Name').locator('strong')).toContainText('From the corner shop');
  await plan(page).getByText('take the file’s').click();
  await expect(row('Screw lead').locator('strong')).toHaveText(/8\smm/);
  await plan(page).getByText('keep what is here', { exact: true }).click();
  await expect(row('Name').locator('strong')).toContainText('Left bench');
  await expect(plan(page).getByRole('button', { name: 'Read it in' })).toBeDisabled();
  await plan(page).getByText('the newer of each').click();
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Read in: 0 added, 1 changed.')).toBeVisible();
  const [[, kept]] = (await inDatabase(page, 'machine:left')) as [[string, Machine]];
  expect(kept).toMatchObject({ name: 'From the corner shop', changed: LATER });
  expect(kept.values['z.lead']?.value).toBe(0.002);
});

test('a file that cannot be read is refused in a sentence, and nothing changes', async ({ page }) => {
  await takeIn(page, plain);
  const before = await stored(page);
  const refusals: [string | Buffer, string][] = [
    [plain.slice(0, -100), 'damaged or cut short'],
    ['', 'This file is empty.'],
    [Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 1, 2]), 'damaged or cut short'],
    [plain.replace('"v": 1', '"v": 7'), 'written by a newer Trammel (form 7; this one reads up to 1)'],
    ['['.repeat(1_000_000), 'damaged or cut short'],
  ];
  for (const [text, sentence] of refusals) {
    await choose(page, text);
    await expect(page.getByRole('alert')).toContainText(sentence);
    await expect(plan(page)).toBeHidden();
  }
  expect(await stored(page)).toBe(before);
});

test('names with script in them are words, here as elsewhere; one bad record does not stop the others', async ({
  page,
}) => {
  const words = '<img src=x onerror="document.title=\'hit\'"><script>document.title="hit"</script>';
  const file = JSON.parse(plain) as { machines: object[] };
  file.machines[0] = { ...machine, name: words, note: words };
  file.machines.push(
    { ...machine, id: 'newer', v: 99, name: words },
    JSON.parse('{"__proto__":{"polluted":1}}') as object,
  );
  await openSettings(page);
  await choose(page, JSON.stringify(file));
  await expect(plan(page)).toContainText('3 to be added, 0 to be changed, 0 the same, 2 refused.');
  await expect(plan(page)).toContainText('written by a newer Trammel');
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Read in: 3 added')).toBeVisible();
  await page.getByRole('link', { name: 'Machines' }).click();
  await expect(page.locator('main')).toContainText(words);
  await page.getByRole('link', { name: /onerror/ }).click();
  await expect(page.locator('h1')).toContainText(words);
  expect(await page.title()).toBe('Trammel');
  expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
});

test('a full disk in mid-write takes in nothing of the file, and says so', async ({ page }) => {
  await takeIn(page, plain);
  const before = await stored(page);
  await page.evaluate(() => {
    let left = 5;
    IDBObjectStore.prototype.put = new Proxy(Reflect.get(IDBObjectStore.prototype, 'put') as () => IDBRequest, {
      apply(put, store, given: []) {
        left -= 1;
        if (left < 0) throw new DOMException('planted', 'QuotaExceededError');
        return Reflect.apply(put, store, given);
      },
    });
  });
  const more = Array.from({ length: 20 }, (_, i): Reading => ({ ...readings[0]!, id: `more-${i}` }));
  await choose(page, writeFile([machine, ...more], MADE));
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Nothing was read in. There is no room left')).toBeVisible();
  expect(await stored(page)).toBe(before);
});

test('what another tab changed after the plan was shown is not written over', async ({ page, context }) => {
  await takeIn(page, plain);
  await choose(page, writeFile([{ ...machine, name: 'From the file', changed: '2026-08-01T00:00:00.000Z' }], MADE));
  await expect(plan(page)).toContainText('The file has newer values.');
  const other = await context.newPage();
  await other.goto('./#/machines/left');
  await other.getByLabel('Name', { exact: true }).fill('From the other tab');
  await other.getByLabel('Name', { exact: true }).blur();
  await expect(other.locator('h1')).toContainText('From the other tab');
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByRole('alert')).toContainText('Something was changed here meanwhile');
  const [[, kept]] = (await inDatabase(page, 'machine:left')) as [[string, Machine]];
  expect(kept.name).toBe('From the other tab');
});

test('10,000 readings are taken in and saved again byte for byte', async ({ page }) => {
  const many = Array.from({ length: 10_000 }, (_, i): Reading => {
    const at = new Date(Date.UTC(2025, 0, 1) + i * 3_600_000).toISOString();
    return { ...readings[i % 2]!, id: `r${i}`, at };
  });
  const text = writeFile([machine, ...many], MADE);
  await openSettings(page);
  await choose(page, text);
  await expect(plan(page)).toContainText('10001 to be added');
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Read in: 10001 added')).toBeVisible();
  await page.getByText('machines and readings', { exact: true }).click();
  const again = await saved(page);
  expect(again.text.replace(MADE_LINE, '')).toBe(text.replace(MADE_LINE, ''));
});

test('one machine is shared from its page, as text, where the phone shares files', async ({ page }) => {
  await page.addInitScript(() => {
    const shared: { name: string; type: string; text: string }[] = [];
    let answer: string | undefined;
    Object.assign(window, { shared, refuse: (name: string) => (answer = name) });
    Object.assign(navigator, {
      canShare: ({ files }: ShareData) => files?.every((file) => /\.(txt|csv)$/.test(file.name)) === true,
      share: async ({ files }: ShareData) => {
        if (answer !== undefined) throw new DOMException('planted', answer);
        for (const file of files ?? []) shared.push({ name: file.name, type: file.type, text: await file.text() });
      },
    });
  });
  const another: Machine = { ...machine, id: 'other', name: 'Not this one' };
  await takeIn(page, writeFile([machine, another, ...readings], MADE));
  await page.goto('./#/machines/left');
  await page.getByRole('button', { name: 'Put the file together' }).click();
  await page.getByRole('button', { name: 'Share it' }).click();
  const sent = () =>
    page.evaluate(() => (window as unknown as { shared: { name: string; type: string; text: string }[] }).shared);
  await expect.poll(async () => (await sent()).length).toBe(1);
  const [file] = await sent();
  expect(file!.name).toMatch(/^trammel-left-bench-.*\.txt$/);
  expect(file!.type).toBe('text/plain');
  expect(file!.text.replace(MADE_LINE, '')).toBe(plain.replace(MADE_LINE, ''));

  const refuse = (name: string) =>
    page.evaluate((with_) => (window as unknown as { refuse: (name: string) => void }).refuse(with_), name);
  await refuse('AbortError');
  await page.getByRole('button', { name: 'Share it' }).click();
  await expect(page.getByText('would not share the file')).toBeHidden();
  await refuse('NotAllowedError');
  await page.getByRole('button', { name: 'Share it' }).click();
  await expect(page.getByText('would not share the file')).toBeVisible();
});

test('without sharing there is only the link', async ({ page }) => {
  await page.addInitScript(() => Object.assign(navigator, { canShare: undefined, share: undefined }));
  await takeIn(page, plain);
  await page.getByRole('button', { name: 'Put the file together' }).click();
  await expect(page.getByRole('link', { name: 'Save the file' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Share it' })).toHaveCount(0);
});

test('readings go to a spreadsheet in the units of the check', async ({ page }) => {
  await takeIn(page, plain);
  await page.getByText('readings, for a spreadsheet').click();
  const { name, text: written } = await saved(page);
  const text = unmarked(written);
  expect(name).toMatch(/\.csv$/);
  expect(text.startsWith('\uFEFFtime,machine,')).toBe(true);
  const rows = text.trimEnd().split('\r\n');
  expect(rows).toHaveLength(1 + readings.reduce((sum, one) => sum + Object.keys(one.results).length, 0));
  // 0.75 mm, as the demo reading was taken and printed.
  const row = rows.find((line) => line.includes(',dh_s,0.75,'))!;
  expect(row).toContain('Left bench');
  expect(row).toMatch(/,0\.75,0\.73359\d*,0\.76640\d*,mm,/);
});

test('readings of the released version have the names of today, say so, and stay as they are stored', async ({
  page,
}) => {
  await takeIn(page, await readFile('test/cases/version-3.txt', 'utf8'));
  const taken = '2026-10-02T09:00:00.000Z-motors';
  // As that version stored it, past the door.
  const released = JSON.parse(await readFile('test/cases/version-3.txt', 'utf8')) as { readings: { id: string }[] };
  const old = released.readings.find(({ id }) => id === 'motors');
  await plant(page, `reading:door:${taken}`, old);
  await page.goto(`./#/machines/door/reading/${taken}`);
  await page.reload();
  await expect(page.locator('main')).toContainText('Kept by an earlier version of Trammel');
  await expect(page.getByRole('row', { name: /^Height of one full step/ })).toBeVisible();
  await expect(page.getByRole('row', { name: /one tooth/ })).toHaveCount(0);
  expect(await inDatabase(page, `reading:door:${taken}`)).toEqual([[`reading:door:${taken}`, old]]);
  await page.goto('./#/machines/door/check/bed-tram');
  await expect(page.locator('main')).toContainText('Over time');
});

test('saving everything ends the reminder; saving one machine or a spreadsheet does not', async ({ page }) => {
  await takeIn(page, plain);
  const last = async () => {
    const [found] = await inDatabase(page, 'settings');
    return (found?.[1] as { lastExport: string | null } | undefined)?.lastExport ?? null;
  };
  await page.getByText('readings, for a spreadsheet').click();
  await saved(page);
  await page.goto('./#/machines/left');
  await saved(page);
  expect(await last()).toBeNull();
  await openSettings(page);
  await saved(page);
  await expect.poll(last).not.toBeNull();
});

test('a picture from a file is redrawn: place and camera stay behind; one that cannot be opened is refused, and said', async ({
  page,
}) => {
  await openSettings(page);
  const drawn = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [64, 48];
    canvas.getContext('2d')!.fillRect(8, 8, 20, 20);
    return canvas.toDataURL('image/jpeg').split(',')[1]!;
  });
  const bytes = Buffer.from(drawn, 'base64');
  // Exif lies in an APP1 segment behind the start of the picture (CIPA DC-008, 4.5.4).
  const exif = Buffer.concat([Buffer.from([0xff, 0xe1, 0, 24]), Buffer.from('Exif\0\0MM GPS 48.2082N')]);
  const located = Buffer.concat([bytes.subarray(0, 2), exif, bytes.subarray(2), Buffer.from('GPS behind the end')]);
  const photo = (reading: string, jpeg: string) => ({
    ...{ v: machine.v, type: 'photo', machine: 'left', reading, width: 64, height: 48, jpeg },
  });
  const [one, two] = [readings[0]!, readings[1]!];
  const broken = { ...one, id: 'third' };
  const file = JSON.parse(writeFile([machine, one, two, broken], MADE)) as object;
  const photos = [
    photo(one.id, located.toString('base64')),
    photo(two.id, drawn),
    photo('third', Buffer.from('no picture at all').toString('base64')),
  ];
  const text = JSON.stringify({ ...file, photos });
  await choose(page, text);
  await expect(plan(page)).toContainText('6 to be added, 0 to be changed, 0 the same, 1 refused.');
  await expect(plan(page)).toContainText('photo to reading third: This browser cannot open it as a picture.');
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Read in: 6 added')).toBeVisible();
  const kept = (await inDatabase(page, 'photo:')) as [string, { jpeg: string; width: number; height: number }][];
  expect(kept.map(([key]) => key).sort()).toEqual([one.id, two.id].map((id) => `photo:left:${id}`).sort());
  for (const [, picture] of kept) {
    expect(Buffer.from(picture.jpeg, 'base64').toString('latin1')).not.toMatch(/Exif|GPS/);
    expect([picture.width, picture.height]).toEqual([64, 48]);
  }
  // What was drawn by this app comes in to the byte; and the same file again changes nothing.
  expect(kept.find(([key]) => key.endsWith(two.id))![1].jpeg).toBe(drawn);
  await choose(page, text);
  await expect(plan(page)).toContainText('Reading it in would change nothing.');
});

test('readings that came in from a file are not said to be in none', async ({ page }) => {
  await takeIn(page, plain);
  await page.goto('./#/machines');
  await expect(page.getByRole('link', { name: /Left bench/ })).toBeVisible();
  await untilIdle(page);
  await expect(page.getByText('saved in no file')).toHaveCount(0);
  // One that is kept here still is.
  await plant(page, 'reading:left:2026-09-01T00:00:00.000Z-own', {
    ...readings[0]!,
    id: 'own',
    at: '2026-09-01T00:00:00.000Z',
  });
  await page.reload();
  await expect(page.getByText('One reading is saved in no file')).toBeVisible();
});

test('a large file can be stopped at any time, and nothing of it stands', async ({ page }) => {
  const many = Array.from({ length: 4000 }, (_, i): Reading => ({ ...readings[0]!, id: `r${i}` }));
  await openSettings(page);
  const before = await stored(page);
  await choose(page, writeFile([machine, ...many], MADE));
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(page.getByText('Stopped. Nothing was read in.')).toBeVisible();
  expect(await stored(page)).toBe(before);
  await plan(page).getByRole('button', { name: 'Read it in' }).click();
  await expect(page.getByText('Read in: 4001 added')).toBeVisible();
});

test('the plan fits a small phone, and axe finds nothing in it', async ({ page }) => {
  await takeIn(page, plain);
  await page.getByRole('button', { name: 'Put the file together' }).click();
  const theirs: Machine = { ...machine, name: 'W'.repeat(110), note: 'x'.repeat(400), changed: LATER };
  await choose(page, writeFile([theirs, { ...readings[0]!, note: 'another' }], MADE));
  await expect(plan(page).getByRole('table')).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map((v) => `${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);
  }
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('button, select, a.button, input:not([type=radio]), .choice-options label')]
      .filter((element) => element.checkVisibility())
      .flatMap((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width < 47.5 || height < 47.5 ? [`${element.outerHTML.slice(0, 80)} ${width}x${height}`] : [];
      }),
  );
  expect(small).toEqual([]);
});
