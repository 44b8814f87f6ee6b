import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page } from '@playwright/test';
import { bench, test, unmarked } from './support';
import say from '../../src/app/sheet/words/en';
import ui from '../../src/ui/words/en';
import { inDatabase } from './records';

const cell = (page: Page, point: number, column = 'Height or gap'): Locator =>
  page.getByRole('textbox', { name: ui.table.cell('Point', point, column), exact: true });

async function open(page: Page): Promise<void> {
  await page.goto('./#/check/bed-tram');
  await expect(bench(page)).toBeVisible();
}

/** Four corners, read with a feeler gauge: front left, front right, back right, back left, as the adjusters are numbered. */
async function fourCorners(page: Page, heights: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: '4 corners' }).click();
  for (const [i, height] of heights.entries()) await cell(page, i + 1).fill(height);
}

test('places are filled by a key, four heights give the turns, each way round', async ({ page }) => {
  await open(page);
  await expect(bench(page)).toContainText('No point so far');
  await fourCorners(page, ['0', '0', '0.35', '0.35']);
  await expect(cell(page, 3, 'x, from left')).toHaveValue('170');
  await expect(cell(page, 4, 'x, from left')).toHaveValue('30');
  await expect(cell(page, 4, 'y, from front')).toHaveValue('170');
  // A gap 0.35 mm wider behind, at 0.7 mm a turn: the bed goes up by half a turn there, which a nut below does clockwise from above.
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.beyond));
  expect(unmarked(await bench(page).innerText())).toMatch(
    /Turn the back (right|left) adjuster \([34]\) 180° clockwise, seen from above/,
  );
  await page.getByRole('button', { name: ui.table.changeSign('Point', 3) }).click();
  await page.getByRole('button', { name: ui.table.changeSign('Point', 4) }).click();
  await expect(cell(page, 4)).toHaveValue('-0.35');
  await expect(bench(page)).toContainText('180° anticlockwise, seen from above');
  await page.getByText('heights of the bed, by indicator').click();
  await expect(bench(page)).toContainText('180° clockwise, seen from above');
});

test('a line taken out moves the others up with their tool, and a reload keeps what is left', async ({ page }) => {
  await open(page);
  await fourCorners(page, ['0.01', '0.02', '0.03', '0.04']);
  await page.getByText('heights of the bed, by indicator').click();
  await page.getByRole('combobox', { name: ui.field.readWith('Points of the bed') }).selectOption('dial');
  await page.getByRole('button', { name: ui.table.takeOut('Point', 2) }).click();
  const heights = async (): Promise<string[]> => Promise.all([1, 2, 3].map((point) => cell(page, point).inputValue()));
  expect(await heights()).toEqual(['0.01', '0.03', '0.04']);
  await expect(cell(page, 2, 'x, from left')).toHaveValue('170');
  await expect(cell(page, 2, 'y, from front')).toHaveValue('170');
  await expect(cell(page, 4)).toHaveCount(0);
  await expect(bench(page)).toContainText(say.bar.word(ui.verdict.none));
  // Written when the line taken out is gone from it, with the tool of the rest.
  const draft = async () => JSON.stringify(await inDatabase(page, 'draft:'));
  await expect
    .poll(async () => /"0\.04".*"dial"|"dial".*"0\.04"/.test(await draft()) && !(await draft()).includes('"0.02"'))
    .toBe(true);
  await page.reload();
  await expect(bench(page)).toBeVisible();
  await expect(cell(page, 3)).toHaveValue('0.04');
  expect(await heights()).toEqual(['0.01', '0.03', '0.04']);
  await expect(page.getByRole('combobox', { name: ui.field.readWith('Points of the bed') })).toHaveValue('dial');
  await expect(cell(page, 4)).toHaveCount(0);
});

test('other places take no old readings with them, and what was read can be put back', async ({ page }) => {
  await open(page);
  await fourCorners(page, ['0.01', '0.02', '0.03', '0.04']);
  // The same four places, set a little otherwise: the readings stay.
  await page.getByRole('button', { name: 'at the adjusters' }).click();
  await expect(cell(page, 2)).toHaveValue('0.02');
  await page.getByRole('button', { name: '3 × 3' }).click();
  await expect(cell(page, 9)).toBeVisible();
  await expect(cell(page, 9, 'x, from left')).toHaveValue('170');
  for (const point of [1, 2, 4, 9]) await expect(cell(page, point)).toHaveValue('');
  await page.getByRole('button', { name: say.putBack }).click();
  await expect(cell(page, 4)).toHaveValue('0.04');
});

test('a bad cell has its sentence below its line, named to a screen reader; twenty-five lines and no more', async ({
  page,
}) => {
  await open(page);
  await page.getByRole('button', { name: '5 × 5' }).click();
  await expect(cell(page, 25)).toBeVisible();
  await expect(page.getByRole('button', { name: ui.table.add })).toBeDisabled();
  await cell(page, 7).fill('0,1,2');
  await expect(cell(page, 7)).toHaveAccessibleDescription(/^.{15,}\.$/s);
  await expect(cell(page, 7)).toHaveValue('0,1,2');
  await expect(page.locator('.reading-table').getByRole('alert')).toHaveCount(1);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a full table: axe finds nothing, nothing scrolls sideways, keys are for thumbs, ${colorScheme}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme });
    await open(page);
    await page.getByRole('button', { name: '5 × 5' }).click();
    for (let point = 1; point <= 25; point += 1) await cell(page, point).fill(String((point % 7) / -50));
    await cell(page, 3).fill('abc');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map((v) => `${v.id} ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('.reading-table :is(button, input, select)')].flatMap((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width < 47.5 || height < 47.5 ? [`${element.outerHTML} ${width}x${height}`] : [];
      }),
    );
    expect(small).toEqual([]);
  });
}
