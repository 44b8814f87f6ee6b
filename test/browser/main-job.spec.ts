import { expect } from '@playwright/test';
import { bench, enter, field, line, test } from './support';
import say from '../../src/app/sheet/words/en';
import engine from '../../src/engine/words/en';
import ui from '../../src/ui/words/en';

test('a reading becomes an instruction, is kept, and is found again without a signal', async ({ page, context }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'New machine' }).click();
  await page.getByLabel('Name of the machine').fill('Left bench');
  await page.getByRole('button', { name: 'Make it' }).click();
  await expect(page.getByLabel('Machine on the bench')).toHaveValue(/\w+/);

  await page.getByLabel('Find a check').fill('one side high');
  await page.getByRole('link', { name: /Two Z screws in step/ }).click();
  await enter(page, 'Height difference of the two sides', '0,75 ± 0,03');
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.beyond));
  await expect(bench(page)).toContainText('turn the right screw anticlockwise, seen from above, by 2 teeth');
  await bench(page).getByRole('button', { name: say.bar.steps }).click();
  await expect(bench(page)).toContainText('Slacken the joining belt');
  await expect(bench(page)).toContainText(say.bar.proof);

  await enter(page, 'Screw lead', '8');
  await bench(page).getByRole('button', { name: say.keeper.keep }).click();
  await expect(bench(page)).toContainText('Saved on Left bench');

  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === 'activated');
  await context.setOffline(true);
  await page.reload();
  // Nothing was entered since it was kept: the reading starts empty, the old one beside it; what is set stays.
  await expect(await field(page, 'Height difference of the two sides')).toHaveValue('');
  await expect(line(page, 'Height difference of the two sides').locator('.field-earlier')).toContainText('0.750');
  await expect(line(page, 'Screw lead')).toContainText('8');
  await page.getByRole('link', { name: 'Machines' }).click();
  await page.getByRole('link', { name: /Left bench/ }).click();
  await expect(page.getByRole('link', { name: /Two Z screws in step: beyond limit/ })).toContainText('by 2 teeth');
  await expect(page.locator('main')).toContainText('Screw lead');
  await expect(page.locator('.field', { hasText: 'Screw lead' }).first()).toContainText('8 mm');
});

test('the formula on the screen carries the numbers and the source', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, 'Height difference of the two sides', '0.75');
  await page.getByText(say.folds.workings).click();
  const card = page.locator('.working', { has: page.getByRole('heading', { name: 'Height of one tooth' }) });
  await expect(card.locator('math')).toHaveCount(2);
  await expect(card).toContainText('0.4 mm');
  await expect(card).toContainText('ISO 5296');
  const remainder = page.locator('.working', { has: page.getByRole('heading', { name: 'Remainder', exact: true }) });
  await expect(remainder).toContainText('−0.050 ±');
});

test('a steel rule cannot tell the teeth; the sheet says which tool would', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, 'Height difference of the two sides', '0.75');
  await page.getByLabel(ui.field.readWith('Height difference of the two sides')).selectOption('rule');
  // The difference of two readings by rule has the doubt of both.
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict['too close']));
  await expect(bench(page)).toContainText(say.bar.settle('caliper'));
});

test('the other way round: which reading makes two teeth', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await page.getByText(say.folds.ask).click();
  await page.getByLabel(say.ask.wanted).selectOption({ label: 'Teeth or steps out, as measured' });
  await page.getByLabel(say.ask.toBe).fill('2');
  await page.getByLabel(say.ask.byChanging).selectOption({ label: 'Height difference of the two sides' });
  await page.getByRole('button', { name: say.ask.putIn }).click();
  await expect(await field(page, 'Height difference of the two sides')).toHaveValue('0.8');
  await expect(bench(page)).toContainText('2 teeth');
});

test('thumb: the keys nudge by one division and the rule drags', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  const box = await field(page, 'Height difference of the two sides');
  await box.fill('+0.75');
  await page.getByRole('button', { name: ui.field.more('Height difference of the two sides') }).click();
  await expect(box).toHaveValue('0.76');
  const rule = page.locator('.thumb-rule').first();
  const area = await rule.boundingBox();
  if (!area) throw new Error('no rule to drag');
  await page.mouse.move(area.x + 100, area.y + 20);
  await page.mouse.down();
  await page.mouse.move(area.x + 171, area.y + 20, { steps: 10 });
  await page.mouse.up();
  await expect(box).toHaveValue('0.81');
  await page.getByRole('button', { name: engine.signs['left-higher'] }).click();
  await expect(bench(page)).toContainText('turn the left screw');
});
