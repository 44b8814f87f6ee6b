import AxeBuilder from '@axe-core/playwright';
import { expect, type Browser, type BrowserContext, type Page } from '@playwright/test';
import { inDatabase, makeMachine } from './records';
import { bench, enter, test, unmarked, untilOffline } from './support';

const step = (page: Page) => page.getByRole('region', { name: 'Next step' });
const log = (page: Page) => page.locator('.case-log > li');

/** A new case through the screen, as a person goes; ends on its page. */
async function begin(page: Page, symptom: string, complaint = '', owner = ''): Promise<void> {
  await page.goto('./#/case/new');
  await page.getByLabel('What is wrong').fill(complaint);
  await page.getByLabel('Who asks').fill(owner);
  await page
    .getByRole('button', { name: new RegExp(`^${symptom}`) })
    .first()
    .click();
  await page.getByRole('button', { name: 'Open the case' }).click();
  await expect(page.locator('h1')).toHaveText(symptom);
  await expect(step(page)).toBeVisible();
}

/** Goes to a step that is not the proposed one. */
async function instead(page: Page, title: string): Promise<void> {
  if (await step(page).getByRole('heading', { name: title }).isVisible()) return;
  await page.getByRole('heading', { name: 'Something else instead' }).click();
  const all = page.getByRole('button', { name: /^Show all/ });
  if (await all.isVisible()) await all.click();
  await page.locator('.case-other').filter({ hasText: title }).first().click();
}

/** Suspicions as the screen says them, by title, in per cent. */
async function suspected(page: Page): Promise<readonly [string, string][]> {
  const rows = await page.locator('.case-suspect').allInnerTexts();
  return rows.map(unmarked).map((row) => [row.split('\n')[0]!, /\((.*?) %\)/.exec(row)?.[1] ?? '']);
}

async function picture(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [60, 40];
    canvas.getContext('2d')!.fillRect(5, 5, 30, 20);
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  return { name: 'reprint.png', mimeType: 'image/png', buffer: Buffer.from(base64, 'base64') };
}

test('one case from complaint to printed sheet, at phone size, with the network off', async ({ page, context }) => {
  await page.goto('./');
  await untilOffline(page);
  await context.setOffline(true);
  await makeMachine(page, 'Left bench');

  // The complaint finds its symptom.
  await page.getByRole('link', { name: 'Start from a complaint' }).click();
  await page.getByLabel('What is wrong').fill('one side of the first layer is squashed, gantry crooked');
  await page.getByLabel('Who asks').fill('Mrs Tarrow');
  await expect(page.getByText('By these words it may be:')).toBeVisible();
  await page
    .getByRole('button', { name: /^One side of the first layer is thin/ })
    .first()
    .click();
  const two = page.getByRole('group', { name: 'Does the machine have two Z screws or more?' });
  // A page that was put to sleep comes back with what was typed.
  await page.reload();
  await expect(page.getByLabel('Who asks')).toHaveValue('Mrs Tarrow');
  await page
    .locator('main')
    .getByLabel('A photo of it')
    .setInputFiles(await picture(page));
  await expect(page.getByText('The photo is ready')).toBeVisible();
  await two.getByText('Yes').click();
  await page.getByRole('button', { name: 'Open the case' }).click();
  await expect(page.locator('h1')).toHaveText('One side of the first layer is thin');
  await expect(page.locator('main')).toContainText('asked by Mrs Tarrow');
  await expect(step(page)).toContainText('Why this next');
  await expect(step(page)).toContainText('the case should take about');

  // A calculator's verdict is the answer.
  await instead(page, 'Measure the height of both gantry ends');
  const before = await suspected(page);
  await step(page).getByRole('button', { name: 'Open the check: Two Z screws in step' }).click();
  await expect(page.locator('main')).toContainText(
    'A case waits for this check: “One side of the first layer is thin”',
  );
  await enter(page, 'Height difference of the two sides', '0.75');
  await bench(page).getByRole('button', { name: 'Save reading' }).click();
  const banner = page.getByRole('status').filter({ hasText: 'Taken as the answer' });
  await expect(banner).toContainText('Beyond its limit');
  await banner.getByRole('link', { name: 'Back to the case' }).click();
  await expect(log(page)).toHaveCount(1);
  await expect(log(page).first()).toContainText('Beyond its limit');
  await expect(log(page).first()).toContainText('Error across the bed');
  const after = await suspected(page);
  expect(after).not.toEqual(before);
  expect(after[0]![0]).toBe('One end of the gantry stands higher');
  const [entry] = (await inDatabase(page, 'case:')).map(([, one]) => one as { log: { reading?: { id: string } }[] });
  const readings = await inDatabase(page, 'reading:');
  expect(readings.map(([key]) => key.endsWith(`-${entry!.log[0]!.reading!.id}`))).toEqual([true]);

  // The mend, and that it cured.
  await instead(page, 'Turn one screw until both ends stand alike');
  await expect(step(page)).toContainText('hold one screw and turn the other');
  await step(page).getByRole('button', { name: 'Yes, it is gone' }).click();

  // The proof: the reading after and the reprint. Nothing closes without one.
  await expect(step(page).getByRole('heading', { name: 'Prove the mend' })).toBeVisible();
  await step(page).getByRole('button', { name: 'Close the case' }).click();
  await expect(step(page).getByRole('alert')).toContainText('What shows that it is cured?');
  await step(page)
    .getByRole('link', { name: /Measure it again/ })
    .click();
  await expect(page.locator('main')).not.toContainText('A case waits');
  await enter(page, 'Height difference of the two sides', '0.02');
  await bench(page).getByRole('button', { name: 'Save reading' }).click();
  await expect(bench(page)).toContainText('Saved on Left bench');
  await page.goto('./');
  await page.getByRole('link', { name: /One side of the first layer is thin/ }).click();
  await step(page)
    .getByRole('button', { name: /Two Z screws in step: (within limit|too close)/ })
    .click();
  await step(page)
    .getByLabel('A photo of the reprint')
    .setInputFiles(await picture(page));
  await expect(step(page).getByRole('img', { name: 'The reprint' })).toBeVisible();
  await step(page).getByRole('button', { name: 'Close the case' }).click();
  const end = page.getByRole('region', { name: 'How it ended' });
  await expect(end).toContainText('Mended');

  // Days later: still there, still readable, and on one sheet.
  await page.reload();
  await expect(end).toContainText('Mended');
  await page.getByRole('link', { name: 'Case report, to print or send' }).click();
  const sheet = page.locator('.case-sheet');
  await expect(sheet).toHaveAttribute('data-ready', 'true');
  for (const words of [
    '“one side of the first layer is squashed, gantry crooked”',
    'Left bench, asked by Mrs Tarrow',
    'Does the machine have two Z screws or more? Yes.',
    'What was found',
    'One end of the gantry stands higher. Part: Z pair.',
    'Measure the height of both gantry ends: beyond its limit.',
    'Two Z screws in step: Error across the bed',
    'Turn one screw until both ends stand alike: it cured.',
    'Mended, ',
    'What to do next',
  ])
    await expect(sheet).toContainText(words);
  await expect(sheet.getByRole('img')).toHaveCount(2);
  await page.emulateMedia({ media: 'print' });
  await expect(sheet).toBeVisible();
  await expect(page.locator('.running-head')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
  const paper = await page.pdf({ preferCSSPageSize: true });
  expect(paper.subarray(0, 5).toString()).toBe('%PDF-');
  expect(paper.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
});

test('a hazard’s case shows nothing before the plug is out, and no powered check before the cold looks', async ({
  page,
}) => {
  await makeMachine(page, 'Left bench');
  await begin(page, 'The hot end is far above its set point', 'Far hotter than it shows');
  const safe = step(page).getByRole('heading', { name: 'Switch off and pull the plug' });
  await expect(safe).toBeVisible();
  for (const hidden of ['Still suspected', 'Something else instead', 'What is known of it', 'End without a cure'])
    await expect(page.getByRole('heading', { name: hidden })).toHaveCount(0);
  await expect(
    step(page).getByRole('group', { name: 'Is it off, and without power?' }).getByRole('button'),
  ).toHaveCount(3);
  // It can be sent before anything is ticked, and says so itself.
  const sent = await step(page).getByLabel('Link', { exact: true }).inputValue();
  expect(sent).toContain('#/case/link?');
  await step(page).getByRole('button', { name: 'Not yet: it will be done' }).click();
  await expect(step(page)).toContainText('The case goes on when it is done.');
  await step(page).getByRole('button', { name: 'It cannot be done' }).click();
  await expect(step(page).getByRole('heading', { name: 'Keep it unplugged' })).toBeVisible();
  await expect(page.locator('.case-other')).toHaveCount(0);
  await page.getByRole('button', { name: 'Take back: Switched off and unplugged' }).last().click();
  // Shown once it is written: a page that is loaded anew before that knows nothing of the press.
  await expect(step(page).getByRole('heading', { name: 'Keep it unplugged' })).toHaveCount(0);
  await page.reload();
  await expect(safe).toBeVisible();
  await step(page).getByRole('button', { name: 'Done: off and unplugged' }).click();
  await expect(safe).toHaveCount(0);
  await expect(page.locator('main')).toContainText('Unplugged since');

  await page.getByRole('heading', { name: 'Something else instead' }).click();
  await expect(page.locator('main')).toContainText('Held back because they, or trying them, need power: ');
  await expect(page.locator('.case-other').filter({ hasText: 'Mend: ' })).toHaveCount(0);
  await expect(page.locator('.case-other').filter({ hasText: 'Record a heating curve' })).toHaveCount(0);
  // A reading on the sheet of a check that is held back answers nothing.
  await page.goto('./#/check/heater-check');
  await expect(bench(page)).toBeVisible();
  await expect(page.locator('main')).not.toContainText('A case waits for this check');

  // Taken back, it stands first again.
  await page.goto('./');
  await page.getByRole('link', { name: /far above its set point/ }).click();
  await page.getByRole('button', { name: 'Take back: Switched off and unplugged' }).last().click();
  await expect(safe).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Still suspected' })).toHaveCount(0);
});

test('words of danger open stop before any list, go out by link before a tick, and the tick comes back', async ({
  page,
  browser,
}) => {
  await makeMachine(page, 'Left bench');
  await page.goto('./');
  await page.getByLabel('Find a check, or what is wrong').fill('hairs, and smoke from the plug');
  const stop = page.getByRole('alert').filter({ hasText: 'Get out' });
  await expect(stop).toContainText('No water on it');
  await expect(page.locator('.index-entry')).toHaveCount(0);
  await stop.getByRole('link', { name: 'Begin a case with these words' }).click();
  await expect(page.getByLabel('What is wrong')).toHaveValue('hairs, and smoke from the plug');
  await expect(page.getByRole('heading', { name: 'Get out' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'What it looks like' })).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Open the case' })).toHaveCount(0);

  const other = await secondPhone(browser);
  await other.page.goto(await page.getByLabel('Link', { exact: true }).inputValue());
  await expect(other.page.getByRole('heading', { name: 'Get out' })).toBeVisible();
  await other.page.getByRole('button', { name: 'It cannot be done' }).click();
  await expect(other.page.getByText('Send it back, with what was ticked')).toBeVisible();
  const back = other.page.getByLabel('Link', { exact: true });
  await expect(back).toHaveValue(/case\/new/);
  await page.goto(await back.inputValue());
  await other.context.close();

  // Only complaints that look for a danger can be picked; what was ticked is kept, and nothing that needs power comes.
  await expect(page.getByRole('heading', { name: 'What it looks like' })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Fine hairs between parts/ })).toHaveCount(0);
  await page
    .getByRole('button', { name: /^A smell of burning, or a warm plug/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Open the case' }).click();
  await expect(step(page).getByRole('heading', { name: 'Keep it unplugged' })).toBeVisible();
  await expect(log(page)).toContainText('cannot be done');
  await expect(page.locator('.case-other')).toHaveCount(0);
});

test('going back changes an answer or takes it out, and the order follows; so do skipping and ruling out', async ({
  page,
}) => {
  await makeMachine(page, 'Left bench');
  await begin(page, 'Layers are shifted');
  const title = () => step(page).getByRole('heading', { level: 2 }).first().innerText();
  const [first, at] = [await title(), await suspected(page)];
  await step(page).locator('.case-answer').first().click();
  await expect(log(page)).toHaveCount(1);
  const [second, then] = [await title(), await suspected(page)];
  expect(second).not.toBe(first);
  expect(then).not.toEqual(at);

  await page.getByRole('button', { name: /^Change: / }).click();
  await log(page).locator('.case-answer').first().click();
  await expect.poll(() => suspected(page)).not.toEqual(then);
  expect(await suspected(page)).not.toEqual(at);
  await page.getByRole('button', { name: /^Take back: / }).click();
  await expect(log(page)).toHaveCount(0);
  expect(await title()).toBe(first);
  expect(await suspected(page)).toEqual(at);

  await step(page).getByRole('button', { name: 'Skip this check' }).click();
  await expect(log(page)).toContainText('skipped');
  expect(await title()).not.toBe(first);
  expect(await suspected(page)).toEqual(at);

  const [most] = at[0]!;
  await page.getByRole('button', { name: new RegExp(`^${most}`) }).click();
  await page.getByRole('button', { name: 'Rule out for certain' }).click();
  await expect(log(page)).toHaveCount(2);
  expect((await suspected(page)).map(([one]) => one)).not.toContain(most);
});

test('a verdict that several answers share is left to the person', async ({ page }) => {
  await makeMachine(page, 'Left bench');
  await begin(page, 'Ridges along Z at a regular spacing');
  await instead(page, 'Measure the ridges’ spacing');
  await step(page).getByRole('button', { name: 'Open the check: Ridge period' }).click();
  await expect(page.locator('main')).toContainText('A case waits for this check');
  await enter(page, 'Length over the ridges', '79.8');
  await enter(page, 'Spaces between those two crests', '10');
  await enter(page, 'Screw lead', '8');
  await expect(bench(page)).toContainText('One part fits');
  await bench(page).getByRole('button', { name: 'Save reading' }).click();
  await expect(page.getByText('Which of these does it show?')).toBeVisible();
  expect(await inDatabase(page, 'case:')).toMatchObject([[expect.anything(), { log: [] }]]);
  // Left for later, it is still offered on the case.
  await page.goto('./');
  await page.getByRole('link', { name: /Ridges along Z/ }).click();
  await expect(step(page).getByText('Which of these does it show?')).toBeVisible();
  await step(page).getByRole('button', { name: 'The screw’s lead' }).click();
  await expect(log(page)).toContainText('The screw’s lead');
  await expect(log(page).getByRole('link', { name: 'The reading' })).toBeVisible();
});

test('a mend that did not cure goes on; a case ends handed over, and is opened again', async ({ page }) => {
  await makeMachine(page, 'Left bench');
  await begin(page, 'Layers are shifted');
  await instead(page, 'Mend: ');
  const mended = unmarked(await step(page).getByRole('heading', { level: 2 }).first().innerText());
  await step(page).getByRole('button', { name: 'No, still there' }).click();
  await expect(log(page)).toContainText(`${mended}: it did not cure`);
  await expect(step(page)).not.toContainText('Prove the mend');
  await expect(page.locator('.case-suspect').first()).toBeVisible();
  await page.getByRole('heading', { name: 'End without a cure' }).click();
  await page.getByLabel('To whom, or why').fill('To the school.');
  await page.getByRole('button', { name: 'End: handed over' }).click();
  const end = page.getByRole('region', { name: 'How it ended' });
  await expect(end).toContainText('Handed over');
  await expect(page.getByRole('button', { name: /^Take back/ })).toHaveCount(0);
  await end.getByRole('button', { name: 'Open it again' }).click();
  await expect(step(page)).toBeVisible();
});

test('repair and replacement stand side by side at an hour’s worth that is typed on the spot', async ({ page }) => {
  await makeMachine(page, 'Left bench');
  await begin(page, 'The gantry sinks when idle');
  await instead(page, 'Mend: keep the gantry from sinking when the motors rest');
  const worth = page.getByLabel('An hour of mine is worth');
  const total = (way: string) =>
    page
      .getByRole('row', { name: new RegExp(`^${way}`) })
      .getByRole('cell')
      .last();
  const cells = await page
    .getByRole('row', { name: /^Replace/ })
    .getByRole('cell')
    .allInnerTexts();
  const [minutes, parts] = cells.map(Number) as [number, number];
  await worth.fill('');
  // Key by key, as a thumb does: the field keeps the focus while the totals follow.
  await worth.pressSequentially('360');
  await expect(worth).toHaveValue('360');
  await expect(worth).toBeFocused();
  await expect(total('Replace')).toHaveText(String(Math.round(parts + (minutes / 60) * 360)));
  await worth.fill('much');
  await expect(step(page).getByRole('alert')).toContainText('until then 360 counts');

  await step(page).getByRole('button', { name: 'Replace it instead' }).click();
  await step(page).getByRole('button', { name: 'Yes, it is gone' }).click();
  await step(page).getByLabel('What it shows').fill('Stood a night at the same height.');
  await step(page).getByRole('button', { name: 'Close the case' }).click();
  await expect(page.getByRole('region', { name: 'How it ended' })).toContainText('Part replaced');
});

async function secondPhone(browser: Browser): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, hasTouch: true });
  return { context, page: await context.newPage() };
}

async function linkOf(page: Page): Promise<string> {
  const fold = page.getByRole('heading', { name: 'Hand the case over' });
  const link = page.getByLabel('Link', { exact: true });
  if (!(await link.isVisible())) await fold.click();
  return link.inputValue();
}

test('a case goes to a second phone by link, and what was found there comes back the same way', async ({
  page,
  browser,
}) => {
  await makeMachine(page, 'Left bench');
  await begin(page, 'The gantry sinks when idle', 'It comes down at night & beeps: 100 %', 'Mrs Tarrow');
  await step(page).getByRole('button', { name: 'Skip this check' }).click();
  await expect(log(page)).toHaveCount(1);
  const out = await linkOf(page);

  const other = await secondPhone(browser);
  await other.page.goto(out);
  await expect(other.page.locator('h1')).toHaveText('The gantry sinks when idle');
  await expect(other.page.locator('main')).toContainText('“It comes down at night & beeps: 100 %”');
  await expect(log(other.page)).toHaveCount(1);
  await other.page.getByRole('button', { name: 'Make a machine “Left bench” for it' }).click();
  await expect(step(other.page)).toBeVisible();
  await expect(log(other.page)).toHaveCount(1);
  await instead(other.page, 'Mark the coupling and run Z');
  await step(other.page).getByRole('button', { name: 'The marks part' }).click();
  await expect(log(other.page)).toHaveCount(2);
  await expect.poll(() => linkOf(other.page)).not.toBe(out);
  const back = await linkOf(other.page);

  await page.goto(back);
  await expect(page.locator('main')).toContainText('The link goes on from it:');
  await expect(log(page)).toHaveCount(1);
  await page.getByRole('button', { name: 'Take this over' }).click();
  await expect(step(page)).toBeVisible();
  await expect(log(page)).toHaveCount(2);
  await expect(log(page).last()).toContainText('The marks part');
  expect((await inDatabase(page, 'case:')).length).toBe(1);

  // The old link is behind ours; one that was changed on both sides is laid beside it.
  await page.goto(out);
  await expect(page.locator('main')).toContainText('further on than the link');
  await other.page.getByRole('button', { name: /^Change: Mark the coupling/ }).click();
  await other.page.getByRole('button', { name: 'They stay in line' }).click();
  await expect(log(other.page).last()).toContainText('They stay in line');
  // The link is made anew once the answer stands in the store.
  await expect.poll(() => linkOf(other.page)).not.toBe(back);
  await page.goto(await linkOf(other.page));
  await expect(page.locator('main')).toContainText('have come apart');
  await page.getByRole('button', { name: 'Keep what is here' }).click();
  await expect(log(page).last()).toContainText('The marks part');
  await other.context.close();
});

test('a link that is cut, and a case of causes not known here, say so and keep nothing', async ({ page }) => {
  await makeMachine(page, 'Left bench');
  await page.goto('./#/case/link?v=1&i=abc&s=gantry-sinks&o=zz&e=a.');
  await expect(page.locator('h1')).toHaveText('This link opens no case');
  await expect(page.locator('main')).toContainText('garbled');
  await page.goto('./#/case/link?v=1&i=abc&s=no-such&o=1&n=x');
  await expect(page.locator('main')).toContainText('no symptom “no-such”');
  expect(await inDatabase(page, 'case:')).toEqual([]);
  await page.goto('./#/case/nobody/nothing');
  await expect(page.locator('h1')).toHaveText('No such case');
});

async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
}

/** axe, no sideways scrolling, and every control big enough for a thumb. */
async function sound(page: Page, name: string): Promise<void> {
  await unfold(page);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((v) => `${name}: ${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width, `${name} scrolls sideways`).toBeLessThanOrEqual(360);
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'main button, main select, summary, main input:not([type=radio]), .choice-options label, .index-entry',
      ),
    ]
      .filter((element) => element.checkVisibility())
      .flatMap((element) => {
        const { width: w, height: h } = element.getBoundingClientRect();
        return w < 47.5 || h < 47.5 ? [`${element.tagName} ${element.textContent} ${w}x${h}`] : [];
      }),
  );
  expect(small, name).toEqual([]);
}

for (const scheme of ['light', 'dark'] as const) {
  test(`every state of a case is sound for axe, a small phone and a thumb, ${scheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await makeMachine(page, 'Left bench');
    await page.goto('./#/case/new?symptom=far-too-hot');
    await expect(page.getByRole('button', { name: 'Open the case' })).toBeVisible();
    await sound(page, 'a new case');
    await page.getByRole('button', { name: 'Open the case' }).click();
    await expect(step(page)).toBeVisible();
    await sound(page, 'switch off');
    await step(page).getByRole('button', { name: 'It cannot be done' }).click();
    await expect(step(page)).toContainText('Keep it unplugged');
    await sound(page, 'keep it unplugged');
    await step(page).getByRole('button', { name: 'It is off and unplugged now' }).click();
    await expect(page.getByRole('heading', { name: 'Still suspected' })).toBeVisible();
    await page.locator('button.case-suspect').first().click();
    await sound(page, 'a check');
    // Looked at unplugged on another phone: the mend of what was found comes.
    const looked = ['sensor-tug.yes', 'switch-ohms.no', 'sensor-ohms.within', 'heater-ohms.within'];
    const seen = looked.map((one) => `&e=a.${one}.1.`).join('');
    await page.goto(`./#/case/link?v=1&i=abcdefghjk&s=far-too-hot&o=1&n=Left%20bench&e=s.1.${seen}`);
    await expect(page.getByRole('button', { name: 'Make it a case of Left bench' })).toBeVisible();
    await sound(page, 'a case that came');
    await page.getByRole('button', { name: 'Make it a case of Left bench' }).click();
    await expect(step(page)).toContainText('Did it cure');
    await sound(page, 'a mend');
    await step(page).getByRole('button', { name: 'Yes, it is gone' }).click();
    await expect(step(page)).toContainText('Prove the mend');
    await sound(page, 'a proof');
    await step(page).getByLabel('What it shows').fill('An hour at 210 °C, steady.');
    await step(page).getByRole('button', { name: 'Close the case' }).click();
    await expect(page.getByRole('region', { name: 'How it ended' })).toBeVisible();
    await sound(page, 'a closed case');
    const link = await linkOf(page);
    await page.getByRole('link', { name: 'Case report, to print or send' }).click();
    await expect(page.locator('.case-sheet')).toHaveAttribute('data-ready', 'true');
    await sound(page, 'the sheet');
    await page.goto(link);
    await expect(page.locator('main')).toContainText('says nothing new');
    await sound(page, 'a link');
    await page.goto('./#/machines');
    await page.getByRole('link', { name: /Left bench/ }).click();
    await expect(page.getByRole('link', { name: /far above its set point/ }).first()).toBeVisible();
    await sound(page, 'a machine with a case');
    await page.goto('./#/stop?said=the%20plug%20is%20charred&who=Mrs%20Tarrow');
    await expect(page.getByRole('heading', { name: 'Switch off at the breaker' })).toBeVisible();
    await sound(page, 'stop');
    await page.goto('./#/case/new?said=I%20get%20a%20tingle');
    await expect(page.getByRole('heading', { name: 'Switch off at the breaker' })).toBeVisible();
    await sound(page, 'stop in a new case');
  });
}
