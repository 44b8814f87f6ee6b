import { expect, type Page } from '@playwright/test';
import { enter, field, line, test } from './support';
import { inDatabase, makeMachine, untilKept } from './records';
import say from '../../src/app/sheet/words/en';
import desk from '../../src/app/desk/words/en';

const CHECK = './#/check/two-z-screws';
const HEIGHT = 'Height difference of the two sides';
const LEAD = 'Screw lead';

const onBench = (page: Page) => page.getByLabel('Machine on the bench');

test('two tabs on one sheet: each writes its own fields and sees the other’s', async ({ page, context }) => {
  await makeMachine(page, 'Shared');
  await page.goto(CHECK);
  const other = await context.newPage();
  await other.goto(CHECK);
  await field(page, HEIGHT);
  await field(other, LEAD);
  await enter(page, HEIGHT, '0.42');
  await expect(line(other, HEIGHT)).toContainText('0.42');
  await enter(other, LEAD, '12');
  await expect(line(page, LEAD)).toContainText('12');
  // At the same moment, before either hears of the other.
  await Promise.all([enter(page, HEIGHT, '0.43'), enter(other, LEAD, '4')]);
  await untilKept(page, '0.43');
  const stored = async () =>
    (await inDatabase(page, 'draft:')).map(
      ([, draft]) => (draft as { entries: Record<string, { text: string }> }).entries,
    );
  await expect.poll(stored).toEqual([expect.objectContaining({ P_h: expect.objectContaining({ text: '4' }) })]);
  for (const one of [page, other]) {
    await one.reload();
    await expect(line(one, HEIGHT)).toContainText('0.43');
    await expect(line(one, LEAD)).toContainText('4');
  }
});

test('what another tab writes to the field that the cursor stands in is said beside it, and taken when it is left', async ({
  page,
  context,
}) => {
  await makeMachine(page, 'Shared');
  await page.goto(CHECK);
  await enter(page, LEAD, '8.5');
  await untilKept(page, '8.5');
  const box = await field(page, LEAD);
  await box.focus();
  const other = await context.newPage();
  await other.goto(CHECK);
  await expect(line(other, LEAD)).toContainText('8.5');
  await enter(other, LEAD, '12.5');
  await expect(line(page, LEAD).getByRole('status')).toHaveText(say.readings.elsewhere('12.5'));
  await expect(box).toHaveValue('8.5');
  await box.blur();
  await expect(box).toHaveValue('12.5');
  await expect(line(page, LEAD).getByRole('status')).toHaveCount(0);
  // Typed over: what is typed here last stands in both.
  await box.focus();
  await enter(other, LEAD, '16.5');
  await expect(line(page, LEAD).getByRole('status')).toHaveText(say.readings.elsewhere('16.5'));
  await box.fill('4.5');
  await box.blur();
  await (await field(other, LEAD)).blur();
  await expect(await field(other, LEAD)).toHaveValue('4.5');
  await expect(box).toHaveValue('4.5');
});

test('the machine on the bench is the tab’s own; a new tab begins with the one picked last', async ({
  page,
  context,
}) => {
  await makeMachine(page, 'One');
  const one = await onBench(page).inputValue();
  const other = await context.newPage();
  await makeMachine(other, 'Two');
  const two = await onBench(other).inputValue();
  expect(two).not.toBe(one);
  await page.goto(CHECK);
  await expect(onBench(page)).toHaveValue(one);
  await page.reload();
  await expect(onBench(page)).toHaveValue(one);
  const third = await context.newPage();
  await third.goto('./');
  await expect(onBench(third)).toHaveValue(two);
});

test('a link changes neither settings nor drafts nor another tab’s bench; what stood there comes back after a reload', async ({
  page,
  context,
}) => {
  await makeMachine(page, 'Mine');
  await page.goto(CHECK);
  await enter(page, HEIGHT, '0.31');
  await untilKept(page, '0.31');
  const machine = await onBench(page).inputValue();
  const before = JSON.stringify([await inDatabase(page, 'settings'), await inDatabase(page, 'draft:')]);
  const other = await context.newPage();
  for (const query of ['v=1&dh=0.75;mm;caliper', 'v=99&dh=0.75;mm', 'v=1&dh=%E0%A4%A']) {
    await other.goto('about:blank');
    await other.goto(`${CHECK}?${query}`);
    await expect(other.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(line(other, HEIGHT)).toBeVisible();
    expect(JSON.stringify([await inDatabase(page, 'settings'), await inDatabase(page, 'draft:')])).toBe(before);
    await expect(onBench(page)).toHaveValue(machine);
  }
  // Left without a touch, its own bench is as it was.
  await other.goto(`${CHECK}?v=1&dh=0.75;mm;caliper`);
  await expect(other.getByText('Mine is off the bench')).toBeVisible();
  await other.goto('./#/');
  await expect(onBench(other)).toHaveValue(machine);

  // Gone on from, it is the draft of no machine; what stood there can be put back, after a reload too.
  await onBench(page).selectOption('');
  await enter(page, HEIGHT, '0.55');
  await untilKept(page, '0.55');
  await page.goto(`${CHECK}?v=1&dh=0.75;mm;caliper`);
  await expect(await field(page, HEIGHT)).toHaveValue('0.75');
  await enter(page, HEIGHT, '0.8');
  await untilKept(page, '0.8');
  await page.reload();
  await expect(await field(page, HEIGHT)).toHaveValue('0.8');
  await page.getByRole('button', { name: say.putBack }).first().click();
  await expect(await field(page, HEIGHT)).toHaveValue('0.55');
  await expect(page.getByRole('button', { name: say.putBack })).toHaveCount(0);
});

test('what is typed for a case is kept while the typing goes on, followed, and there after a reload', async ({
  page,
  context,
}) => {
  await makeMachine(page, 'Cased');
  await page.goto('./#/case/new');
  const words = page.getByRole('textbox').first();
  await words.click();
  // A key every 100 ms: no pause is long enough to write in, and yet it is written.
  const text = 'The first layer is thin on the right';
  const typing = words.pressSequentially(text, { delay: 100 });
  await untilKept(page, 'The first', 'typed:');
  await typing;
  await untilKept(page, text, 'typed:');
  const other = await context.newPage();
  await other.goto('./#/case/new');
  await expect(other.getByRole('textbox').first()).toHaveValue(text);
  await words.press('End');
  await words.pressSequentially(', once');
  await expect(other.getByRole('textbox').first()).toHaveValue(`${text}, once`);
  await page.reload();
  await expect(page.getByRole('textbox').first()).toHaveValue(`${text}, once`);

  // A link’s words stand in the field; the person’s own are one key away and still kept.
  await other.goto('about:blank');
  await other.goto('./#/case/new?said=It%20clicks');
  await expect(other.getByRole('textbox').first()).toHaveValue('It clicks');
  await expect(other.getByRole('status').filter({ hasText: `${text}, once` })).toBeVisible();
  await untilKept(page, `${text}, once`, 'typed:');
  await other.getByRole('button', { name: desk.typed.take }).click();
  await expect(other.getByRole('textbox').first()).toHaveValue(`${text}, once`);
});
