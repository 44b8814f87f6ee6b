import { expect, type Page } from '@playwright/test';
import { inDatabase, makeMachine } from './records';
import { bench, enter, field, line, test, unmarked } from './support';
import say from '../../src/app/sheet/words/en';
import engine from '../../src/engine/words/en';
import ui from '../../src/ui/words/en';

const DH = 'Height difference of the two sides';
const key = (page: Page, picture: keyof typeof engine.signs) =>
  page.getByRole('button', { name: engine.signs[picture], exact: true });
const headline = (page: Page) => bench(page).locator('.bench-headline');

/** Waits until what was typed is written down. */
const drafted = (page: Page, text: string) =>
  expect.poll(async () => JSON.stringify(await inDatabase(page, 'draft:'))).toContain(`"${text}"`);

test('a sign is picked by its picture: none picked, no order; the other picture, the other way', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  const box = await field(page, DH);
  for (const picture of ['right-higher', 'left-higher'] as const) {
    const area = await key(page, picture).boundingBox();
    expect(Math.min(area?.width ?? 0, area?.height ?? 0)).toBeGreaterThanOrEqual(48);
  }
  await box.fill('0.75');
  await expect(headline(page)).toContainText(DH);
  await expect(headline(page)).toContainText(
    engine.pickSide(engine.signs['right-higher'], engine.signs['left-higher']),
  );
  await expect(bench(page).getByRole('button', { name: say.keeper.keep })).toBeDisabled();

  await key(page, 'right-higher').click();
  await expect(box).toHaveValue('0.75');
  await expect(key(page, 'right-higher')).toHaveAttribute('aria-pressed', 'true');
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.beyond));
  const right = unmarked((await headline(page).textContent()) ?? '');

  await key(page, 'left-higher').click();
  await expect(key(page, 'right-higher')).toHaveAttribute('aria-pressed', 'false');
  await expect(headline(page)).not.toHaveText(right);
  await expect(line(page, DH).locator('.field-value')).toContainText(engine.signs['left-higher']);

  // A sign that is typed picks the picture, and the field goes on with the size.
  await box.fill('+0.3');
  await expect(box).toHaveValue('0.3');
  await expect(key(page, 'right-higher')).toHaveAttribute('aria-pressed', 'true');
  await box.press('End');
  await box.press('Home');
  await box.pressSequentially('-');
  await expect(box).toHaveValue('0.3');
  await expect(key(page, 'left-higher')).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: ui.field.more(DH) }).click();
  await expect(box).toHaveValue('0.31');
  await expect(key(page, 'left-higher')).toHaveAttribute('aria-pressed', 'true');
});

test('the picture picked is in the draft and in a link', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '-0.75');
  await expect(key(page, 'left-higher')).toHaveAttribute('aria-pressed', 'true');
  await drafted(page, '-0.75');
  await page.reload();
  await expect(await field(page, DH)).toHaveValue('0.75');
  await expect(key(page, 'left-higher')).toHaveAttribute('aria-pressed', 'true');
  await page.goto('./#/check/two-z-screws?v=1&dh=0.4;mm;caliper');
  await expect(await field(page, DH)).toHaveValue('0.4');
  await expect(key(page, 'right-higher')).toHaveAttribute('aria-pressed', 'true');
});

test('entries that cannot all be right are asked about, marked, and a key goes to each', async ({ page }) => {
  await page.goto('./#/check/screw-lead');
  await enter(page, 'Travel of the nut', '80');
  await enter(page, 'Whole turns', '10');
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.within));
  await enter(page, 'Screw lead', '8');
  await page.locator('summary', { hasText: 'Seldom changed' }).click();
  await enter(page, 'Pitch, if the screw is marked with one', '2');
  await enter(page, 'Starts of its thread', '1');
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.none));
  await expect(headline(page)).toContainText('?');
  await expect(bench(page).getByRole('button', { name: say.keeper.keep })).toBeDisabled();
  for (const label of ['Screw lead', 'Pitch, if the screw is marked with one', 'Starts of its thread']) {
    await expect(line(page, label)).toContainText(say.readings.asked);
    await bench(page)
      .getByRole('button', { name: say.bar.goTo(label) })
      .click();
    await expect(page.getByRole('textbox', { name: label, exact: true })).toBeFocused();
  }
  await enter(page, 'Starts of its thread', '4');
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.within));
  await expect(page.getByText(say.readings.asked)).toHaveCount(0);
});

test('the plate says what to expect after the order, and nothing of it over a bad entry', async ({ page }) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '0.75');
  const expected = bench(page).locator('.bench-expect');
  // Two teeth turn it to the other side: what is expected has a side and the doubt of both readings.
  await expect(expected).toContainText('±');
  await expect(expected).toContainText(engine.signs['left-higher']);
  await enter(page, 'Screw lead', 'abc');
  await expect(expected).toHaveCount(0);
});

test('no old order, and no drawing that passes for the new one, stands beside a new entry for a single frame', async ({
  page,
}) => {
  await page.goto('./#/check/two-z-screws');
  await enter(page, DH, '-0.75');
  await expect(bench(page).locator('.bench-expect')).toBeVisible();
  const box = await field(page, DH);
  // In the task of the keystroke itself, before anything can be painted.
  const seen = await box.evaluate((input: HTMLInputElement) => {
    const head = () => document.querySelector('.bench-headline')?.textContent ?? '';
    const before = head();
    input.value = '0.6';
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    const expected = document.querySelector<HTMLElement>('.bench-expect');
    return {
      before,
      after: head(),
      expectation: expected ? getComputedStyle(expected).visibility : 'hidden',
      drawing: document.querySelector('.drawing')?.closest('[aria-busy]')?.getAttribute('aria-busy'),
    };
  });
  expect(seen.after).not.toBe(seen.before);
  expect(seen).toMatchObject({ expectation: 'hidden', drawing: 'true' });
  await expect(page.locator('[aria-busy=true]')).toHaveCount(0);
  await expect(bench(page).locator('.bench-expect')).toBeVisible();
});

test('a repeated reading starts empty, the old one beside it; what is set stays', async ({ page }) => {
  await makeMachine(page, 'Left bench');
  await page.goto('./#/check/two-z-screws');
  await enter(page, 'Distance between the two places', '390');
  await enter(page, DH, '0.75');
  const keep = bench(page).getByRole('button', { name: say.keeper.keep });
  await keep.click();
  await bench(page).getByRole('button', { name: say.keeper.again }).click();
  const box = await field(page, DH);
  const earlier = line(page, DH).locator('.field-earlier');
  await expect(box).toHaveValue('');
  await expect(earlier).toContainText('0.75');
  await expect(earlier).toContainText(engine.signs['right-higher']);
  await expect(await field(page, 'Distance between the two places')).toHaveValue('390');
  // Nothing measured: nothing to keep, and the key says why.
  await expect(keep).toBeDisabled();
  await expect(keep).toHaveAccessibleDescription(/\S{3,}/);
  await enter(page, DH, '0.01');
  await keep.click();
  await expect(bench(page)).toContainText('Saved on Left bench');

  // The next time, too: nothing was entered since.
  await page.goto('./#/');
  await page.goto('./#/check/two-z-screws');
  await expect(await field(page, DH)).toHaveValue('');
  await expect(earlier).toContainText('0.01');
  await expect(await field(page, 'Distance between the two places')).toHaveValue('390');
  await enter(page, DH, '0.02');
  await drafted(page, '+0.02');
  await page.reload();
  await expect(await field(page, DH)).toHaveValue('0.02');

  // The page of the first reading holds the second to what its order promised.
  await page.getByRole('link', { name: /Two Z screws in step: beyond limit/ }).click();
  await expect(page.locator('.outcome')).toContainText('as predicted');
  await expect(page.locator('.outcome')).not.toContainText('not as predicted');
});
