import { expect, test } from '@playwright/test';
import { bench, calculatorIds } from './support';

const BAD = ['abc', '1/0', '9e99', '--3'];

for (const id of calculatorIds) {
  test(`${id}: a bad entry in any field gets a sentence, greys the last good verdict and stays to be mended`, async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await page.goto(`./#/check/${id}`);
    await expect(bench(page)).toBeVisible();
    // A worked example fills the sheet, so that there is a good verdict to lose.
    await page.getByText('Worked examples').click();
    await page.getByRole('button', { name: 'Put these numbers in' }).first().click();
    await expect(bench(page)).not.toContainText('No verdict yet');
    const word = await bench(page).locator('.bench-word').textContent();
    const fields = page.locator('.field');
    const count = await fields.count();
    expect(count).toBeGreaterThan(0);
    for (let i = 0; i < count; i += 1) {
      const field = fields.nth(i);
      if (!(await field.getByRole('textbox').isVisible())) await field.locator('.field-line').click();
      const box = field.getByRole('textbox');
      const before = await box.inputValue();
      for (const bad of BAD) {
        await box.fill(bad);
        await expect(field.getByRole('alert')).toHaveText(/\S+ .*\.$/s);
        await expect(box).toHaveValue(bad);
        await expect(bench(page).locator('.stale')).toBeVisible();
        await expect(bench(page).locator('.bench-word')).toHaveText(word ?? '');
      }
      await box.fill(before);
      await expect(field.getByRole('alert')).toHaveCount(0);
      await expect(bench(page).locator('.stale')).toHaveCount(0);
    }
    await expect(page.locator('body')).not.toContainText('NaN');
    await expect(page.locator('body')).not.toContainText('Infinity');
  });
}
