import { expect } from '@playwright/test';
import { bench, test } from './support';
import say from '../../src/app/sheet/words/en';
import ui from '../../src/ui/words/en';

test('the stopwatch goes on while the screen is locked, and puts the cursor where the reading belongs', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-25T10:00:00') });
  await page.goto('./#/check/heater-check');
  await expect(bench(page)).toBeVisible();
  const time = (line: number) => page.getByRole('textbox', { name: ui.table.cell('Line', line, 'Time') });
  await page.getByRole('button', { name: ui.stopwatch.start, exact: true }).click();
  // A locked phone runs no timers: the clock jumps.
  await page.clock.fastForward(75_000);
  await page.getByRole('button', { name: ui.stopwatch.now }).click();
  await expect(page.getByRole('textbox', { name: ui.table.cell('Line', 1, 'Shown') })).toBeFocused();
  expect(Number(await time(1).inputValue())).toBeGreaterThanOrEqual(75);
  expect(Number(await time(1).inputValue())).toBeLessThan(80);
  await page.keyboard.type('143');
  await page.clock.fastForward(20_000);
  await page.getByRole('button', { name: ui.stopwatch.now }).click();
  expect(Number(await time(2).inputValue()) - Number(await time(1).inputValue())).toBeGreaterThanOrEqual(20);
  await page.getByRole('button', { name: ui.stopwatch.stop }).click();
  // Readings that were taken go only when asked to, and come back.
  await page.getByRole('button', { name: ui.stopwatch.empty }).click();
  await expect(time(1)).toHaveValue('');
  await page.getByRole('button', { name: say.putBack }).click();
  await expect(page.getByRole('textbox', { name: ui.table.cell('Line', 1, 'Shown') })).toHaveValue('143');
});
