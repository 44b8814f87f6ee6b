import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import type { Calculator } from '../../src/engine/calculator';
import { demoMachine } from '../../src/machine/demo';
import type { KeptValue, Machine } from '../../src/machine/schema';
import { VERSION } from '../../src/machine/version';
import { inDatabase, makeMachine, plant, untilKept } from './records';
import { bench, calculatorIds, enter, test, unmarked, untilIdle } from './support';

const DH = 'Height difference of the two sides';
const DEMO = `machines/${demoMachine.id}`;

/** The instruction's own reading on a new machine, kept through the app; leaves its page open. */
async function keepOne(page: Page): Promise<void> {
  await makeMachine(page, 'Left bench');
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '0.75');
  await bench(page).getByRole('button', { name: 'Save reading' }).click();
  await expect(bench(page)).toContainText('Saved on Left bench');
  await page.getByRole('link', { name: /Two Z screws in step: beyond limit/ }).click();
  await expect(page.getByRole('heading', { name: 'Entered' })).toBeVisible();
}

async function withDemo(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
  await expect(page.locator('h1')).toContainText('demo');
}

/** A picture of noise, which JPEG can shrink little: as bytes of a PNG file. */
async function noise(page: Page, width: number, height: number): Promise<Buffer> {
  const base64 = await page.evaluate(
    ([w, h]) => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [w, h];
      const pen = canvas.getContext('2d')!;
      const data = pen.createImageData(w, h);
      for (let i = 0, x = 1; i < data.data.length; i += 1) {
        x = (x * 48271) % 2147483647;
        data.data[i] = i % 4 === 3 ? 255 : x & 255;
      }
      pen.putImageData(data, 0, 0);
      return canvas.toDataURL('image/png').split(',')[1]!;
    },
    [width, height] as const,
  );
  return Buffer.from(base64, 'base64');
}

const addPhoto = (page: Page, name: string, mimeType: string, buffer: Buffer) =>
  page.getByLabel('A photo of it').setInputFiles({ name, mimeType, buffer });

test('a reading has a page: what was entered and how, what came out, a note that stays', async ({ page }) => {
  await keepOne(page);
  const row = (label: string) => page.getByRole('row', { name: new RegExp(`^${label}`) });
  await expect(row(DH)).toContainText('0.75 ± 0.10 mm'.replaceAll(' ', '\u00a0'));
  await expect(row(DH)).toContainText('measured, caliper');
  await expect(row('Screw lead')).toContainText('typical, not measured');
  await expect(row('Error across the bed')).toContainText('0.375');
  await expect(page.locator('main')).toContainText('Beyond limit');
  await expect(page.locator('ol li').first()).toContainText('teeth');
  await page.getByLabel('Note', { exact: true }).fill('A crate was put down on it.');
  await page.getByLabel('Note', { exact: true }).blur();
  await untilKept(page, 'A crate was put down on it.', 'reading:');
  await page.reload();
  await expect(page.getByLabel('Note', { exact: true })).toHaveValue('A crate was put down on it.');
});

test('a photo is made smaller, says its size, lies apart from the reading, and comes back when put back', async ({
  page,
}) => {
  await keepOne(page);
  const before = await inDatabase(page, 'reading:');
  const file = await noise(page, 2600, 1400);
  expect(file.length).toBeGreaterThan(2e6);
  await addPhoto(page, 'gantry.png', 'image/png', file);
  const picture = page.getByRole('img', { name: 'Kept with this reading' });
  await expect(picture).toBeVisible();
  const [width, height] = await picture.evaluate((image: HTMLImageElement) => [
    image.naturalWidth,
    image.naturalHeight,
  ]);
  expect([width, height]).toEqual([1280, 689]);
  const photos = await inDatabase(page, 'photo:');
  expect(photos).toHaveLength(1);
  const { jpeg } = photos[0]![1] as { jpeg: string };
  const bytes = Buffer.from(jpeg, 'base64');
  // JPEG begins with FF D8 FF (ISO/IEC 10918-1, B.2).
  expect([...bytes.subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
  await expect(page.locator('main')).toContainText(`1280 × 689, ${Math.round(bytes.length / 1000)} kB`);
  expect(await inDatabase(page, 'reading:')).toEqual(before);

  await page.getByRole('button', { name: 'Remove the photo' }).click();
  await expect(picture).toHaveCount(0);
  expect(await inDatabase(page, 'photo:')).toEqual([]);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(picture).toBeVisible();
  expect(await inDatabase(page, 'photo:')).toEqual(photos);
});

test('what is no picture is refused in a sentence, and nothing is kept of it', async ({ page }) => {
  await keepOne(page);
  await addPhoto(page, 'note.jpg', 'image/jpeg', Buffer.from('not a picture at all'));
  await expect(page.getByRole('alert')).toContainText('cannot open that file as a picture');
  expect(await inDatabase(page, 'photo:')).toEqual([]);
});

test('a reading and a machine that were removed come back exactly as they were', async ({ page }) => {
  await keepOne(page);
  await addPhoto(page, 'small.png', 'image/png', await noise(page, 40, 30));
  await expect(page.getByRole('img', { name: 'Kept with this reading' })).toBeVisible();
  const all = () => inDatabase(page, '');
  const known = (records: Awaited<ReturnType<typeof all>>) => records.filter(([key]) => key !== 'settings');
  const before = known(await all());
  expect(before.map(([key]) => key.split(':')[0])).toEqual(['draft', 'machine', 'photo', 'reading']);

  await page.getByRole('button', { name: 'Remove this reading' }).click();
  await expect(page.locator('h1')).toContainText('Left bench');
  await expect(page.locator('main')).toContainText('No check taken yet');
  expect(known(await all()).map(([key]) => key.split(':')[0])).toEqual(['draft', 'machine']);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByRole('link', { name: /Two Z screws in step: beyond limit/ })).toBeVisible();
  expect(known(await all())).toEqual(before);

  await page.getByRole('button', { name: 'Remove this machine…' }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await expect(page.locator('main')).toContainText('No machine yet');
  expect(known(await all())).toEqual([]);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByRole('link', { name: /Left bench/ })).toBeVisible();
  expect(known(await all())).toEqual(before);
});

test('a value that is forgotten can be put back', async ({ page }) => {
  await withDemo(page);
  const line = page.locator('.field', { hasText: 'Screw lead' }).first();
  await line.locator('.field-line').click();
  await line.getByRole('button', { name: 'Forget it' }).click();
  await expect(line).toContainText('Forgotten: 8 mm');
  await expect(line.locator('.field-line')).toContainText('not known yet');
  await line.getByRole('button', { name: 'Put it back' }).click();
  await expect(line.locator('.field-line')).toContainText('8 mm');
  const [[, machine]] = (await inDatabase(page, 'machine:')) as [[string, Machine]];
  // Putting it back is one thing more that was done to the machine: it stands after the others.
  const { ordinal, ...lead } = machine.values['z.lead']!;
  expect(ordinal).toBeGreaterThan(0);
  expect({ ...machine.values, 'z.lead': lead }).toEqual(demoMachine.values);
});

test('at a glance: the latest verdict, and why a check is due', async ({ page }) => {
  await withDemo(page);
  const entry = page.getByRole('link', { name: /^Two Z screws in step (due )?Within limit/ });
  await expect(entry).toBeVisible();
  await expect(page.locator('main')).not.toContainText('due');
  const line = page.locator('.field', { hasText: 'Screw lead' }).first();
  await line.locator('.field-line').click();
  await line.getByRole('textbox').fill('4');
  await line.getByRole('button', { name: 'Keep it' }).click();
  await expect(page.locator('main')).toContainText('One check is due.');
  await expect(page.locator('main')).toContainText(
    'Changed since the last reading. Screw lead: 8\u00a0mm then, 4\u00a0mm now.',
  );

  await entry.click();
  const days = page.getByLabel(/^Days/);
  await days.fill('0');
  await days.blur();
  await expect(page.getByRole('alert')).toContainText('Whole days from 1');
  await days.fill('30');
  await days.blur();
  // The demo's last reading was taken on 12 March 2026.
  const age = Math.floor((Date.now() - Date.parse('2026-03-12T17:15:00.000Z')) / 86_400_000);
  await expect(page.locator('main')).toContainText(`The last reading is ${age} days old; wanted every 30 days.`);
  await page.reload();
  await expect(days).toHaveValue('30');
});

test('a trend is drawn to scale with its limit, says whether the correction worked, and can be read as a table', async ({
  page,
}) => {
  await withDemo(page);
  await page.goto(`./#/${DEMO}/check/two-z-screws`);
  const chart = page.getByRole('img', { name: /Error across the bed: 2 readings/ });
  await expect(chart).toBeVisible();
  const sizes = await chart.evaluate((svg) =>
    [...svg.querySelectorAll('text')].map((text) => {
      const scale = svg.getBoundingClientRect().width / 340;
      return Number.parseFloat(getComputedStyle(text).fontSize) * scale;
    }),
  );
  expect(sizes.length).toBeGreaterThan(4);
  for (const size of sizes) expect(size).toBeGreaterThanOrEqual(11);
  const [wide, seen] = await chart.evaluate((svg: SVGSVGElement) => {
    const { width } = svg.viewBox.baseVal;
    return [
      width,
      [...svg.querySelectorAll('text')].every((t) => t.getBBox().x >= 0 && t.getBBox().x + t.getBBox().width <= width),
    ];
  });
  expect([wide, seen]).toEqual([340, true]);

  await expect(page.locator('.outcome')).toContainText('Did it work? Yes.');
  await expect(page.locator('.outcome')).toContainText(
    'Better by 0.438 ± 0.014 mm; within the limit now'.replaceAll(/(?<=\d|±) (?=\d|±|mm)/g, '\u00a0'),
  );
  await page.getByText('As a table').click();
  await expect(page.getByRole('row')).toHaveCount(3);
  await expect(page.getByRole('row').nth(2)).toContainText('−0.05\u00a0mm to 0.05\u00a0mm');
  await page.getByLabel('Another result over time').selectOption({ label: 'Remainder' });
  await expect(page.getByRole('img', { name: /^Remainder: 2 readings/ })).toBeVisible();
});

test('a list of machines reads no readings, and a long history is read in parts', async ({ page }) => {
  await withDemo(page);
  const [[, machine], [, reading]] = [
    (await inDatabase(page, 'machine:'))[0]!,
    (await inDatabase(page, 'reading:'))[0]!,
  ] as [[string, Machine], [string, { at: string }]];
  for (let i = 0; i < 20; i += 1) {
    const id = `m${i}`;
    await plant(page, `machine:${id}`, { ...machine, id, name: `Machine ${i}` });
    for (let k = 0; k < 3; k += 1) {
      const at = new Date(Date.parse(reading.at) + k * 1000).toISOString();
      await plant(page, `reading:${id}:${at}-r${k}`, { ...reading, id: `r${k}`, machine: id, at, ordinal: 0 });
    }
  }
  await page.addInitScript(() => {
    const read: string[] = [];
    Object.assign(window, { read });
    const { prototype } = IDBObjectStore;
    for (const name of ['get', 'getAll', 'openCursor'] as const) {
      const real = Object.getOwnPropertyDescriptor(prototype, name)?.value as (...args: unknown[]) => IDBRequest;
      Object.defineProperty(prototype, name, {
        value(this: IDBObjectStore, query?: unknown, ...rest: unknown[]) {
          read.push(query instanceof IDBKeyRange ? String(query.lower) : String(query));
          return real.call(this, query, ...rest);
        },
      });
    }
  });
  await page.goto('./#/machines');
  await page.reload();
  await expect(page.getByRole('link', { name: /Machine 19/ })).toBeVisible();
  await page.getByLabel('Find a machine').fill('MACHINE 7');
  // 7 and 17.
  await expect(page.locator('.index-entry')).toHaveCount(2);
  const readings = () =>
    page.evaluate(() =>
      (window as unknown as { read: string[] }).read.filter((at) => !/^(machine|settings|draft)/.test(at)),
    );
  expect(await readings()).toEqual([]);
  await page.getByRole('link', { name: /^Machine 7 / }).click();
  await expect(page.getByRole('link', { name: /Two Z screws in step: / }).first()).toBeVisible();
  const found = await readings();
  expect(found.length).toBeGreaterThan(0);
  expect(found.filter((at) => !/^(reading|case):m7:/.test(at))).toEqual([]);
});

test('readings come ten at a time', async ({ page }) => {
  await withDemo(page);
  const [, reading] = (await inDatabase(page, 'reading:'))[0] as [string, object];
  for (let i = 0; i < 23; i += 1) {
    const at = new Date(Date.UTC(2026, 4, 1 + i)).toISOString();
    await plant(page, `reading:${demoMachine.id}:${at}-p${i}`, { ...reading, id: `p${i}`, at, ordinal: 0 });
  }
  await page.reload();
  const entries = page
    .locator('section', { has: page.getByRole('heading', { name: 'Readings' }) })
    .locator('.index-entry');
  await expect(entries).toHaveCount(10);
  await page.getByRole('button', { name: 'Show more' }).click();
  await expect(entries).toHaveCount(20);
  await page.getByRole('button', { name: 'Show more' }).click();
  await expect(entries).toHaveCount(25);
});

/** Sixty of the values that checks draw from: more than any one machine has. */
async function fullMachine(): Promise<Machine> {
  const values: Record<string, KeptValue> = {};
  const choices: Record<string, string> = {};
  const at = '2026-10-20T10:00:00.000Z';
  for (const id of calculatorIds) {
    const { default: calculator } = (await import(`../../src/calculators/${id}/index.ts`)) as { default: Calculator };
    for (const { from, measure, range, typical = (range[0] + range[1]) / 2 } of Object.values(calculator.inputs)) {
      const value = typical * measure.unit.factor + measure.unit.offset;
      const half = measure.kind.whole ? 0 : Math.abs(value) * 0.012;
      if (from) values[from] = { value, half, unit: measure.unit.id, origin: 'measured', tool: 'caliper', at };
    }
    for (const { from, typical } of Object.values(calculator.choices)) if (from) choices[from] = typical;
  }
  const most = <T>(all: Readonly<Record<string, T>>, count: number) =>
    Object.fromEntries(Object.entries(all).slice(0, count));
  return {
    ...demoMachine,
    v: VERSION,
    id: 'full',
    name: 'Full card',
    demo: false,
    values: most(values, 50),
    choices: most(choices, 10),
  };
}

async function printed(page: Page): Promise<{ sheets: number; size: number[] }> {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf);
  return { sheets: pdf.match(/\/Type \/Page\b/g)?.length ?? 0, size: [Number(box?.[1]), Number(box?.[2])] };
}

test('the card prints on one sheet of its paper, black on white from the dark page, with sixty values too', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await withDemo(page);
  const full = await fullMachine();
  expect(Object.keys({ ...full.values, ...full.choices }).length).toBeGreaterThan(50);
  await plant(page, 'machine:full', full);
  await page.reload();
  for (const id of [demoMachine.id, 'full']) {
    await page.goto(`./#/machines/${id}/card`);
    await expect(page.locator('.card')).toBeVisible();
    // ISO 216: A5 is 148 mm x 210 mm; half Letter is 5.5 in x 8.5 in. A point is 1/72 in.
    for (const [paper, width, height] of [
      ['A5', (148 / 25.4) * 72, (210 / 25.4) * 72],
      ['half Letter', 5.5 * 72, 8.5 * 72],
    ] as const) {
      await page.getByText(paper, { exact: true }).click();
      const { sheets, size } = await printed(page);
      expect(sheets, `${id} on ${paper}`).toBe(1);
      expect(Math.abs(size[0]! - width)).toBeLessThan(1);
      expect(Math.abs(size[1]! - height)).toBeLessThan(1);
    }
  }
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const colours = await page
    .locator('.card-value')
    .first()
    .evaluate((cell) => [getComputedStyle(cell).color, getComputedStyle(document.documentElement).backgroundColor]);
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  await expect(page.locator('header.running-head')).toBeHidden();
});

test('the card goes to another app as plain text, or to the clipboard', async ({ page, context }) => {
  await page.addInitScript(() => {
    const shared: unknown[] = [];
    Object.assign(window, { shared });
    Object.assign(navigator, { share: (data: unknown) => Promise.resolve(void shared.push(data)) });
  });
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await withDemo(page);
  await page.getByRole('link', { name: 'Card for the machine' }).click();
  await page.getByRole('button', { name: 'Send as text' }).click();
  const shared = await page.evaluate(() => (window as unknown as { shared: { title: string; text: string }[] }).shared);
  expect(unmarked(shared[0]!.title)).toBe(demoMachine.name);
  expect(unmarked(shared[0]!.text)).toContain(`\nZ drive\n  Screws joined by: a closed belt\n`);
  expect(unmarked(shared[0]!.text)).toMatch(
    /\n {2}Distance between the screws: 400\.00 ± 0\.50 mm \(steel rule, .*2026\)\n/,
  );
  await page.getByRole('button', { name: 'Copy as text' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'copied' })).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(shared[0]!.text);
});

test('the screens of a machine are sound: axe, width, thumbs', async ({ page }) => {
  await withDemo(page);
  const [key] = (await inDatabase(page, 'reading:'))[0]!;
  const taken = key.slice(`reading:${demoMachine.id}:`.length);
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: scheme });
    for (const screen of ['', '/card', '/check/two-z-screws', '/check/screw-lead', `/reading/${taken}`]) {
      await page.goto(`./#/${DEMO}${screen}`);
      await expect(page.locator('h1')).not.toBeEmpty();
      await untilIdle(page);
      await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((v) => `${screen}: ${v.id} ${v.nodes.map((n) => n.html).join(' ')}`)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), screen).toBeLessThanOrEqual(360);
      const small = await page.evaluate(() =>
        [
          ...document.querySelectorAll(
            'button, select, summary, input:not([type=radio]), .choice-options label, .button',
          ),
        ]
          .filter((element) => element.checkVisibility())
          .map((element) => element.getBoundingClientRect().height)
          .filter((height) => height < 47.5),
      );
      expect(small, screen).toEqual([]);
    }
  }
});
