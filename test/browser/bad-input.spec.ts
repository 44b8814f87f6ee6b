import { expect } from '@playwright/test';
import { bench, calculatorIds, test, unmarked } from './support';
import say from '../../src/app/sheet/words/en';
import ui from '../../src/ui/words/en';

/** Not a number at all, and a number that no check can use. */
const keep = say.keeper.keep;
const BAD = ['abc', '9e99'];

for (const id of calculatorIds) {
  test(`${id}: a bad entry in any field gets a sentence, leaves no order standing and stays to be mended`, async ({
    page,
  }) => {
    await page.goto(`./#/check/${id}`);
    await expect(bench(page)).toBeVisible();
    // A worked example fills the sheet, so that there is a good verdict to lose.
    await page.getByText(say.folds.examples).click();
    const fill = page.getByRole('button', { name: say.examples.putIn });
    const word = bench(page).locator('.bench-word');
    // An example that has a verdict, and in which everything can be worked out.
    const isOpen = async () =>
      unmarked((await word.textContent()) ?? '') === say.bar.word(ui.verdict.none) ||
      (await page.locator('.field').getByRole('alert').count()) > 0;
    for (let i = 0; await isOpen(); i += 1) await fill.nth(i).click();
    const verdict = (await word.textContent()) ?? '';
    await bench(page).getByRole('button', { name: say.bar.steps }).click();
    const steps = bench(page).locator('ol li');
    const before = await steps.count();
    /** Nothing of the order stands on the plate, which names the entry. */
    const noOrder = async (label: string) => {
      await expect(word).not.toHaveText(verdict);
      await expect(bench(page).locator('.bench-headline')).toContainText(label);
      await expect(steps).toHaveCount(0);
      await expect(bench(page).getByRole('button', { name: keep })).toBeDisabled();
    };
    const asBefore = async () => {
      await expect(word).toHaveText(verdict);
      await expect(steps).toHaveCount(before);
    };
    const seldom = page.locator('summary', { hasText: 'Seldom changed' });
    if (await seldom.isVisible()) await seldom.click();
    const fields = page.locator('.field');
    const count = await fields.count();
    expect(count).toBeGreaterThan(0);
    for (let i = 0; i < count; i += 1) {
      const field = fields.nth(i);
      if (!(await field.getByRole('textbox').isVisible())) await field.locator('.field-line').click();
      const box = field.getByRole('textbox');
      const text = await box.inputValue();
      const label = (await box.getAttribute('aria-label')) ?? '';
      for (const bad of BAD) {
        await box.fill(bad);
        await expect(field.getByRole('alert')).toHaveText(/^.{15,}\.$/s);
        await expect(box).toHaveValue(bad);
        await noOrder(label);
      }
      await box.fill(text);
      await expect(field.getByRole('alert')).toHaveCount(0);
      await asBefore();
    }
    for (const table of await page.locator('.reading-table').all()) {
      const lines = table.locator('tr[data-line]');
      const last = (await lines.count()) - 1;
      expect(last).toBeGreaterThan(0);
      for (const at of [0, last]) {
        const line = lines.nth(at);
        // The sentence stands in the line below, and belongs to the box.
        const sentence = table.locator(`tr[data-line="${at}"] + tr`).getByRole('alert');
        for (const box of await line.getByRole('textbox').all()) {
          const text = await box.inputValue();
          for (const bad of BAD) {
            await box.fill(bad);
            await expect(sentence).toHaveText(/^.{15,}\.$/s);
            await expect(box).toHaveAttribute('aria-invalid', 'true');
            await expect(box).toHaveValue(bad);
            await noOrder('');
          }
          await box.fill(text);
          await expect(table.getByRole('alert')).toHaveCount(0);
          await asBefore();
        }
      }
    }
    await expect(page.locator('body')).not.toContainText('NaN');
    await expect(page.locator('body')).not.toContainText('Infinity');
  });
}
