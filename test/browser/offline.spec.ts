import { expect } from '@playwright/test';
import { spawn, type ChildProcess } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { outDir } from '../../build/chosen';
import { bench, calculatorIds, enter, field, test, untilOffline } from './support';

const DH = 'Height difference of the two sides';

/** A host of its own with a copy of the built app, so that it can be killed or given a new version. */
async function host(port: number): Promise<{ folder: string; url: string; process: ChildProcess }> {
  const folder = mkdtempSync(join(tmpdir(), 'trammel-'));
  cpSync(outDir, folder, { recursive: true });
  const process = spawn('node', ['test/browser/serve.mjs', String(port), folder], { stdio: 'inherit' });
  const url = `http://localhost:${port}/bench/`;
  await expect
    .poll(async () =>
      fetch(url).then(
        (r) => r.status,
        () => 0,
      ),
    )
    .toBe(200);
  return { folder, url, process };
}

test('after one visit every check opens with the server gone, deep links too', async ({ page }, info) => {
  const server = await host(4300 + info.workerIndex);
  try {
    await page.goto(server.url);
    await untilOffline(page);
    server.process.kill();
    for (const id of calculatorIds) {
      await page.goto(`${server.url}#/check/${id}`);
      await page.reload();
      await expect(page.locator('h1')).not.toBeEmpty();
      await expect(page.locator('.drawing').first()).toBeVisible();
    }
    await page.goto(`${server.url}#/settings`);
    await expect(page.locator('main')).toContainText('Ready to work without a signal');
  } finally {
    server.process.kill();
    rmSync(server.folder, { recursive: true });
  }
});

test('a new version waits for the person and loses nothing typed', async ({ page }, info) => {
  const server = await host(4400 + info.workerIndex);
  try {
    await page.goto(`${server.url}#/check/two-z-screws`);
    await untilOffline(page);
    await enter(page, DH, '0.31');
    const worker = join(server.folder, 'sw.js');
    writeFileSync(worker, `${readFileSync(worker, 'utf8')}\n// a newer version\n`);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const notice = page.getByRole('status').filter({ hasText: 'A new version is ready' });
    await expect(notice).toBeVisible();
    await expect(await field(page, DH)).toHaveValue('0.31');
    const loaded = page.waitForEvent('load');
    await notice.getByRole('button', { name: 'Change over now' }).click();
    await loaded;
    await expect(notice).toHaveCount(0);
    await expect(await field(page, DH)).toHaveValue('0.31');
    await expect(bench(page)).toContainText('limit');
  } finally {
    server.process.kill();
    rmSync(server.folder, { recursive: true });
  }
});

test('a new version taken in one tab loses nothing typed in another, which changes over when its person says so', async ({
  page,
  context,
}, info) => {
  const server = await host(4420 + info.workerIndex);
  try {
    await page.goto(`${server.url}#/check/two-z-screws`);
    await untilOffline(page);
    const other = await context.newPage();
    await other.goto(`${server.url}#/case/new`);
    const worker = join(server.folder, 'sw.js');
    writeFileSync(worker, `${readFileSync(worker, 'utf8')}\n// a newer version\n`);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const notice = (of: typeof page) => of.getByRole('status').filter({ hasText: 'A new version is ready' });
    for (const one of [page, other]) await expect(notice(one)).toBeVisible();
    // Typed to the last moment before.
    await other.getByRole('textbox').first().fill('It clicks');
    await enter(page, DH, '0.31');
    const loaded = page.waitForEvent('load');
    await notice(page).getByRole('button', { name: 'Change over now' }).click();
    await loaded;
    await expect(await field(page, DH)).toHaveValue('0.31');
    await expect(other.getByRole('textbox').first()).toHaveValue('It clicks');
    await other.getByRole('textbox').first().fill('It clicks, loudly');
    const again = other.waitForEvent('load');
    await notice(other).getByRole('button', { name: 'Change over now' }).click();
    await again;
    await expect(other.getByRole('textbox').first()).toHaveValue('It clicks, loudly');
  } finally {
    server.process.kill();
    rmSync(server.folder, { recursive: true });
  }
});
