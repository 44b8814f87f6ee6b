import { readFileSync } from 'node:fs';
import { expect } from '@playwright/test';
import news from '../../src/app/shell/words/en/news';
import { inDatabase, makeMachine, plant } from './records';
import { test } from './support';

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly version: string };

test('whoever had an earlier version is told once what this one brought; whoever begins with it is not', async ({
  page,
}) => {
  const title = page.getByText(news.title(version));
  await makeMachine(page, 'Left bench');
  await page.reload();
  await expect(page.getByLabel('Machine on the bench')).toBeVisible();
  await expect(title).toHaveCount(0);
  const [[key, settings] = ['', {}]] = await inDatabase(page, 'settings');
  await plant(page, key, { ...(settings as object), seenVersion: '' });
  await page.reload();
  await expect(title).toBeVisible();
  await page.getByRole('button', { name: news.understood }).click();
  await expect(title).toHaveCount(0);
  await page.reload();
  await expect(page.getByLabel('Machine on the bench')).toBeVisible();
  await expect(title).toHaveCount(0);
});
