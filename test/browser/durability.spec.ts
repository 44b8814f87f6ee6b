import { expect, type BrowserContext, type Page } from '@playwright/test';
import { bench, enter, field, line, test, unmarked } from './support';
import { inDatabase, makeMachine, plant } from './records';
import { give } from './words-watch';

const DH = 'Height difference of the two sides';
const SHEET = './#/check/two-z-screws';
const keep = (page: Page) => bench(page).getByRole('button', { name: 'Save reading' });

/** A page on which writing can be made to fail as on a full disk: `full(page, true)`. */
async function withDisk(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  give('planted');
  await page.addInitScript(() => {
    // eslint-disable-next-line @typescript-eslint/unbound-method -- called on the store below
    const put = IDBObjectStore.prototype.put;
    Object.defineProperty(window, 'diskFull', { value: false, writable: true });
    IDBObjectStore.prototype.put = function (value: unknown, key?: IDBValidKey) {
      const request = put.call(this, value, key);
      if (Reflect.get(window, 'diskFull') === true) {
        // As a browser does it: the request is taken, the transaction ends with the reason.
        const { transaction } = this;
        Object.defineProperty(transaction, 'error', {
          configurable: true,
          get: () => new DOMException('planted', 'QuotaExceededError'),
        });
        queueMicrotask(() => transaction.abort());
      }
      return request;
    };
  });
  return page;
}

const full = (page: Page, is: boolean) => page.evaluate((now) => void Reflect.set(window, 'diskFull', now), is);

test.describe('a full disk', () => {
  test('a reading that finds no room is said so, stays on the sheet, and is kept once there is room', async ({
    context,
  }) => {
    const page = await withDisk(context);
    await makeMachine(page, 'Full');
    await page.goto(SHEET);
    await enter(page, DH, '0.42');
    await keep(page).click();
    await expect(bench(page)).toContainText('Saved on Full');
    const before = await inDatabase(page, 'reading:');
    expect(before).toHaveLength(1);

    await full(page, true);
    await enter(page, DH, '0.75');
    await keep(page).click();
    await expect(page.getByRole('alert').first()).toContainText('no room left');
    // The words of the reading before must not stand for this one.
    await expect(bench(page)).not.toContainText('Saved on');
    expect(await inDatabase(page, 'reading:')).toEqual(before);
    await expect(await field(page, DH)).toHaveValue('0.75');

    await full(page, false);
    await keep(page).click();
    await expect(bench(page)).toContainText('Saved on Full');
    await expect(page.getByRole('alert')).toHaveCount(0);
    const after = await inDatabase(page, 'reading:');
    expect(after).toHaveLength(2);
    expect(after[0]).toEqual(before[0]);
    expect(after[1]).toMatchObject([expect.any(String), { entries: { dh: { value: 0.75e-3 } } }]);
  });

  test('what was typed while there was no room is kept once there is, without another keystroke', async ({
    context,
  }) => {
    const page = await withDisk(context);
    await page.goto(SHEET);
    await enter(page, DH, '0.1');
    const typed = async () => (await inDatabase(page, 'draft:')).map(([, draft]) => JSON.stringify(draft));
    await expect.poll(typed).toEqual([expect.stringMatching(/"[+]?0\.1"/)]);
    await full(page, true);
    await enter(page, DH, '0.75 ± 0.05');
    await expect(page.getByRole('alert').first()).toContainText('no room left');
    await full(page, false);
    await expect(page.getByRole('alert')).toHaveCount(0);
    const again = await context.newPage();
    await again.goto(SHEET);
    await expect(await field(again, DH)).toHaveValue('0.75 ± 0.05');
  });

  test('a machine that cannot be renamed keeps its name and all of its values', async ({ context }) => {
    const page = await withDisk(context);
    await makeMachine(page, 'Old name');
    const before = await inDatabase(page, 'machine:');
    await page.goto('./#/machines');
    await page.getByRole('link', { name: /Old name/ }).click();
    await full(page, true);
    await page.getByLabel('Name', { exact: true }).fill('New name');
    await page.getByLabel('Name', { exact: true }).blur();
    await expect(page.getByRole('alert').first()).toContainText('no room left');
    expect(await inDatabase(page, 'machine:')).toEqual(before);
    await page.reload();
    await expect(page.locator('h1')).toContainText('Old name');
  });
});

test.describe('no database', () => {
  for (const [what, name, sentence] of [
    ['barred, as in a private window', 'SecurityError', 'keeps nothing here'],
    ['failing on every attempt', 'UnknownError', 'Storage failed'],
  ] as const) {
    test(`${what}: a reading can be taken and seen, and nothing claims to be kept for good`, async ({ page }) => {
      give('planted');
      await page.addInitScript((error) => {
        indexedDB.open = () => {
          throw new DOMException('planted', error);
        };
      }, name);
      await makeMachine(page, 'For now');
      await expect(page.getByRole('alert')).toContainText(`Nothing is being kept at the moment.`);
      await expect(page.getByRole('alert')).toContainText(sentence);
      await page.goto(SHEET);
      await enter(page, DH, '0.75');
      await keep(page).click();
      await expect(bench(page)).toContainText('For now');
      await expect(bench(page)).not.toContainText('Saved on');
      await expect(page.locator('main')).toContainText('Saved for this machine');
      await page.getByRole('link', { name: 'Settings' }).click();
      await expect(page.locator('main')).toContainText(sentence);
    });
  }

  test('held by another tab that does not let go: the page works, and says what to do', async ({ page }) => {
    await page.addInitScript(() => {
      // An open that never answers.
      indexedDB.open = () => new EventTarget() as unknown as IDBOpenDBRequest;
    });
    await page.goto(SHEET);
    await expect(page.getByRole('alert')).toContainText('Close other tabs of Trammel');
    await enter(page, DH, '0.75');
    await expect(bench(page)).toContainText('2 teeth');
  });
});

test.describe('a corrupt record', () => {
  test('among a machine’s readings hides none of the others, can be forgotten and put back', async ({ page }) => {
    await makeMachine(page, 'Damaged');
    await page.goto(SHEET);
    for (const text of ['0.1', '0.2', '0.3']) {
      await enter(page, DH, text);
      await keep(page).click();
      await expect(bench(page)).toContainText('Saved on Damaged');
      await enter(page, DH, '');
      await enter(page, DH, '9');
    }
    const readings = await inDatabase(page, 'reading:');
    expect(readings).toHaveLength(3);
    const [key, value] = readings[1]!;
    const damaged = { ...(value as object), verdict: 'perhaps' };
    await plant(page, key, damaged);
    await page.reload();
    await expect(page.locator('main .section', { hasText: 'Saved for this machine' }).last().locator('li')).toHaveCount(
      2,
    );

    await page.getByRole('link', { name: 'Settings' }).click();
    const line = page.locator('main li', { hasText: key });
    await expect(line).toContainText('at “verdict”');
    expect((await inDatabase(page, 'reading:'))[1]).toEqual([key, damaged]);
    await line.getByRole('button', { name: 'Forget it' }).click();
    await expect(line).toHaveCount(0);
    expect(await inDatabase(page, 'reading:')).toHaveLength(2);
    await page.getByRole('button', { name: 'Put it back' }).click();
    await expect(line).toHaveCount(1);
    expect((await inDatabase(page, 'reading:'))[1]).toEqual([key, damaged]);
  });

  test('in place of the settings or of what was being typed: the page opens, and sets it aside when it writes', async ({
    page,
  }) => {
    await page.goto('./#/settings');
    await plant(page, 'settings', { v: 2, type: 'settings', mark: 'dash' });
    await plant(page, 'draft:-:two-z-screws', 'torn');
    await page.goto(SHEET);
    await page.reload();
    await enter(page, DH, '0.75');
    await expect(bench(page)).toContainText('2 teeth');
    await expect(page.getByRole('alert').first()).toContainText('record');
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('radio', { name: '0,4' }).check({ force: true });
    await expect(page.locator('main li', { hasText: 'settings' })).toContainText('mark');
    await expect
      .poll(async () => (await inDatabase(page, 'aside:')).map(([, kept]) => (kept as { stored: unknown }).stored))
      .toEqual(['torn', { v: 2, type: 'settings', mark: 'dash' }]);
    await page.reload();
    await expect(page.locator('main')).toContainText('draft:-:two-z-screws');
  });
});

test.describe('two tabs at one machine', () => {
  test('both keep readings at the same time: all are there, in both', async ({ context }) => {
    const one = await context.newPage();
    await makeMachine(one, 'Shared');
    const two = await context.newPage();
    const pages = [one, two];
    for (const page of pages) await page.goto(SHEET);
    for (let round = 1; round <= 3; round += 1) {
      await Promise.all(
        pages.map(async (page, i) => {
          await enter(page, DH, `0.${round}${i}`);
          await keep(page).click();
          await expect(bench(page)).toContainText('Saved on Shared');
        }),
      );
    }
    await expect.poll(async () => (await inDatabase(one, 'reading:')).length).toBe(6);
    for (const page of pages) {
      const list = page.locator('main .section', { hasText: 'Saved for this machine' }).last();
      await expect(list.locator('li')).toHaveCount(5);
    }
  });

  test('both change the same value: the later one stands, whole, and both show it', async ({ context }) => {
    const one = await context.newPage();
    await makeMachine(one, 'Shared');
    const two = await context.newPage();
    const line = (page: Page) => page.locator('.field', { hasText: 'Screw lead' }).first();
    for (const page of [one, two]) {
      await page.goto('./#/machines');
      await page.getByRole('link', { name: /Shared/ }).click();
      await line(page).locator('.field-line').click();
      await line(page)
        .getByRole('textbox')
        .fill(page === one ? '8' : '0.5 in');
    }
    for (const page of [one, two]) await line(page).getByRole('button', { name: 'Keep it' }).click();
    await expect(line(two).locator('.field-value')).toContainText('0.5');
    const kept = await line(two).locator('.field-value').innerText();
    await expect(line(one).locator('.field-value')).toHaveText(kept, { useInnerText: true });
    const [[, machine]] = (await inDatabase(one, 'machine:')) as [[string, { values: Record<string, unknown> }]];
    expect(machine.values['z.lead']).toMatchObject({ value: 0.0127, unit: 'in' });
  });

  test('one removes the machine while the other keeps a reading: nothing vanishes, and it can be undone', async ({
    context,
  }) => {
    const one = await context.newPage();
    await makeMachine(one, 'Short-lived');
    const two = await context.newPage();
    // Deaf to the other tab: as in the moment before the news arrives.
    await two.addInitScript(() => Object.defineProperty(window, 'BroadcastChannel', { value: undefined }));
    await two.goto(SHEET);
    await enter(two, DH, '0.42');
    await keep(two).click();
    await expect(bench(two)).toContainText('Saved on Short-lived');
    await enter(two, DH, '0.75');

    await one.goto('./#/machines');
    await one.getByRole('link', { name: /Short-lived/ }).click();
    await one.getByRole('button', { name: 'Remove this machine…' }).click();
    await one.getByRole('button', { name: 'Remove it' }).click();
    await expect(one.locator('main')).toContainText('No machine yet');

    await keep(two).click();
    await expect(two.getByRole('alert')).toContainText('no longer there');
    await expect(bench(two)).not.toContainText('Saved on');
    await expect(await field(two, DH)).toHaveValue('0.75');
    expect(await inDatabase(two, 'reading:')).toEqual([]);

    await one.getByRole('button', { name: 'Put it back' }).click();
    await expect(one.getByRole('link', { name: /Short-lived/ })).toBeVisible();
    expect(await inDatabase(one, 'reading:')).toHaveLength(1);
    await keep(two).click();
    await expect(bench(two)).toContainText('Saved on Short-lived');
    expect(await inDatabase(two, 'reading:')).toHaveLength(2);
  });
});

test.describe('keeping for good', () => {
  const asked = (page: Page) => page.evaluate(() => Reflect.get(window, 'askedToPersist') as number);

  test('the browser is asked after the first reading is kept, once, and never as a page opens', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'askedToPersist', { value: 0, writable: true });
      StorageManager.prototype.persisted = () => Promise.resolve(false);
      StorageManager.prototype.persist = () => {
        Reflect.set(window, 'askedToPersist', (Reflect.get(window, 'askedToPersist') as number) + 1);
        return Promise.resolve(false);
      };
    });
    await makeMachine(page, 'Asked');
    await page.goto(SHEET);
    await enter(page, DH, '0.42');
    expect(await asked(page)).toBe(0);
    await keep(page).click();
    await expect.poll(() => asked(page)).toBe(1);
    await enter(page, DH, '0.75');
    await keep(page).click();
    await expect.poll(async () => (await inDatabase(page, 'reading:')).length).toBe(2);
    expect(await asked(page)).toBe(1);
    await page.reload();
    await enter(page, DH, '0.5');
    await keep(page).click();
    await expect(bench(page)).toContainText('Saved on Asked');
    expect(await asked(page)).toBe(0);

    await page.getByRole('link', { name: 'Settings' }).click();
    await expect(page.locator('main')).toContainText('The browser may clear it');
    await expect
      .poll(async () => unmarked(await page.locator('main').innerText()))
      .toMatch(/Room used: .* MB.*; free: \d+ MB/);
    await page.getByRole('button', { name: 'Ask the browser not to clear it' }).click();
    await expect(page.getByRole('status').filter({ hasText: 'It did not promise' })).toBeVisible();
    expect(await asked(page)).toBe(1);
  });

  test('readings that no file holds are counted, those of the invented machine are not', async ({ page }) => {
    await page.goto('./');
    await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
    await expect(page.locator('h1')).toContainText('demo');
    await page.getByRole('link', { name: 'Settings' }).click();
    await expect(page.locator('main')).toContainText('Room used');
    await expect(page.getByText('saved in no file')).toHaveCount(0);
    await makeMachine(page, 'Counted');
    await page.goto(SHEET);
    await enter(page, DH, '0.42');
    await keep(page).click();
    await expect(bench(page)).toContainText('Saved on Counted');
    await page.getByRole('link', { name: 'Settings' }).click();
    await expect(page.getByText('One reading is saved in no file')).toBeVisible();
    await page.getByRole('button', { name: 'Later' }).click();
    await expect(page.getByText('saved in no file')).toHaveCount(0);

    await page.reload();
    await expect(page.getByText('One reading is saved in no file')).toBeVisible();
    const [[, settings]] = (await inDatabase(page, 'settings')) as [[string, object]];
    await plant(page, 'settings', { ...settings, lastExport: new Date().toISOString() });
    await page.reload();
    await expect(page.locator('main')).toContainText('Room used');
    await expect(page.getByText('saved in no file')).toHaveCount(0);
  });
});

/** Tabs open at a time: all of them keep readings on one machine, and all are killed. */
const TABS = 4;

/** Types every fourth number and keeps it, on and on, until the page is killed; tells which were shown as kept. */
const keepOnAndOn = ([label, first, step]: readonly [label: string, first: number, step: number]) => {
  const tell = Reflect.get(window, 'tellTest') as (what: 'began' | 'kept', number: number) => void;
  // A marked build has a sign without width after each word.
  const plainly = (text: string | null | undefined): string => (text ?? '').replaceAll('\u200B', '').trim();
  const box = [...document.querySelectorAll('input')].find((input) => plainly(input.ariaLabel) === label);
  const key = [...document.querySelectorAll('button')].find((button) => plainly(button.textContent) === 'Save reading');
  if (!box || !key) throw new Error('the sheet is not there');
  const shown = () =>
    plainly(key.closest('.bench')?.querySelector('[role=status]')?.textContent).startsWith('Saved on');
  const next = (number: number): void => {
    // The sign picks the side.
    box.value = `+${(number / 1000).toFixed(3)}`;
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    tell('began', number);
    key.click();
    // What another tab typed into the same field may stand here before the reading is kept: then nothing says that it is.
    const wait = () => {
      if (shown()) tell('kept', number);
      else if (key.disabled) return void setTimeout(wait);
      next(number + step);
    };
    wait();
  };
  next(first);
};

test('tabs killed in the middle of writing, a hundred times: every reading that was shown as kept is there', async ({
  context,
}) => {
  const KILLS = 100;
  const began = new Set<number>();
  const kept = new Set<number>();
  await context.exposeFunction('tellTest', (what: 'began' | 'kept', number: number) => {
    (what === 'began' ? began : kept).add(number);
  });
  const first = await context.newPage();
  await makeMachine(first, 'Killed');

  /** Opens a tab, lets it write, kills its process; true if a reading was under way then. */
  const openAndKill = async (tab: number, kill: number): Promise<boolean> => {
    const mine = (numbers: ReadonlySet<number>) => [...numbers].filter((number) => number % TABS === tab);
    const page = await context.newPage();
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('requestfailed', (request) => said.push(`failed: ${request.url()}`));
    page.on('pageerror', (error) => said.push(String(error)));
    await page.goto(SHEET);
    // The driver's own report shows the first page of all, which stands on the home screen: this tab speaks for itself.
    await line(page, DH)
      .waitFor()
      .catch(async (error: unknown) => {
        const shown = await page.evaluate(() => document.body.innerText);
        throw new Error(`fresh tab ${kill}, at ${page.url()}: ${shown}\n${said.join('\n')}`, { cause: error });
      });
    expect(page.url()).toContain(SHEET.slice(SHEET.indexOf('#')));
    await field(page, DH);
    const before = mine(began).length;
    const under = before - mine(kept).length;
    await page.evaluate(keepOnAndOn, [DH, tab + TABS * (1 + before), TABS] as const);
    await expect.poll(() => mine(began).length, { intervals: [5] }).toBeGreaterThan(before + (kill % 3));
    // Not always at the same step of a write.
    for (let i = 0; i < (kill * 7) % 23; i += 1) await page.evaluate(() => undefined);
    const session = await context.newCDPSession(page);
    const crashed = page.waitForEvent('crash');
    session.send('Page.crash').catch(() => undefined);
    await crashed;
    await page.close();
    return mine(began).length - mine(kept).length > under;
  };
  const inMidWrite = await Promise.all(
    Array.from({ length: TABS }, async (_, tab) => {
      let count = 0;
      for (let kill = tab; kill < KILLS; kill += TABS) if (await openAndKill(tab, kill)) count += 1;
      return count;
    }),
  );
  const midWrites = inMidWrite.reduce((sum, count) => sum + count, 0);

  const stored = (await inDatabase(first, 'reading:')).map(
    ([, reading]) => (reading as { entries: { dh: { value: number } } }).entries.dh.value,
  );
  const there = new Set(stored.map((metres) => Math.round(metres * 1e6)));
  console.log(`killed ${KILLS} times, ${midWrites} in mid-write; ${kept.size} shown as kept, ${stored.length} there`);
  expect([...kept].filter((number) => !there.has(number))).toEqual([]);
  // Nothing twice, nothing that was not begun.
  expect(stored).toHaveLength(there.size);
  expect([...there].filter((number) => !began.has(number))).toEqual([]);
  // Otherwise nothing was put to the test.
  expect(kept.size).toBeGreaterThan(KILLS / 2);
  expect(midWrites).toBeGreaterThan(KILLS / 2);
  // No half of a record either.
  await first.getByRole('link', { name: 'Settings' }).click();
  await expect(first.locator('main')).toContainText('Room used');
  await expect(first.getByText('Set aside')).toHaveCount(0);
});
