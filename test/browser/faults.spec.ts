import { expect, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readFile } from '../../src/machine/exchange-read';
import { keyOf } from '../../src/machine/keys';
import { drawer, entryOf, FAULTS, listedIn, openHost, putNextRelease, type Host } from './host';
import { inDatabase } from './records';
import { test, untilOffline } from './support';

/*
 * Hosts that answer with something else, and copies that were damaged. Every file of the build may be drawn; SEED=n draws
 * others. What is whole is told by SHA-256 of Node (crypto), not by the app.
 */

/** Every file in every cache of the page, with the hash of its content. */
const cached = (page: Page): Promise<readonly { readonly url: string; readonly hash: string }[]> =>
  page.evaluate(async () => {
    const found: { url: string; hash: string }[] = [];
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        const bytes = await (await cache.match(request))!.arrayBuffer();
        const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
        const url = request.url.slice(new URL('./', location.href).href.length);
        found.push({ url, hash: btoa(String.fromCharCode(...digest)) });
      }
    }
    return found.sort((a, b) => (a.url < b.url ? -1 : 1));
  });

const wanted = (folder: string) =>
  listedIn(folder)
    .map(({ url, hash }) => ({ url, hash }))
    .sort((a, b) => (a.url < b.url ? -1 : 1));

/** The page shows something, with something to press. */
async function notBlank(page: Page): Promise<void> {
  await expect(page.locator('h1').first()).not.toBeEmpty();
  await expect(page.locator('#app :is(a, button)').first()).toBeVisible();
}

const rescue = (page: Page) => page.getByRole('heading', { name: 'Trammel could not start' });

async function withHost(run: (host: Host) => Promise<void>): Promise<void> {
  const host = await openHost();
  try {
    await run(host);
  } finally {
    host.close();
  }
}

const lazyFiles = (host: Host): readonly string[] =>
  listedIn(host.folder)
    .map(({ url }) => url)
    .filter((url) => url.startsWith('assets/') && url !== entryOf(host.folder));

for (const [salt, fault] of FAULTS.entries()) {
  test(`a first visit with "${fault}" in place of a file keeps none of it, says so, and goes on when asked`, async ({
    page,
  }) =>
    withHost(async (host) => {
      const [icon] = drawer(salt)(['icon-192.png', 'icon-512.png', 'icon-maskable.png'], 1);
      const [check] = drawer(salt)(
        lazyFiles(host).filter((url) => /catalogue|belt|bed|ridges|note|level|demo/.test(url)),
        1,
      );
      for (const file of [icon!, check!]) host.faults.set(file, fault);
      await page.goto(`${host.url}#/settings`);
      await expect(page.getByText('Not ready to work without a signal: ')).toBeVisible();
      const whole = new Set(wanted(host.folder).map((one) => JSON.stringify(one)));
      for (const one of await cached(page)) expect(whole, one.url).toContain(JSON.stringify(one));
      expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active ?? null)).toBe(
        null,
      );
      host.faults.clear();
      await page.getByRole('button', { name: 'Try again' }).click();
      await untilOffline(page);
      await expect.poll(() => cached(page).catch(() => undefined)).toEqual(wanted(host.folder));
    }));

  test(`a release of which a file is "${fault}" is not taken over, and the one before stays`, async ({ page }) =>
    withHost(async (host) => {
      await page.goto(host.url);
      await untilOffline(page);
      await expect(page.getByText('All of this works without a signal')).toBeVisible();
      const before = wanted(host.folder);
      const [next] = putNextRelease(host.folder, drawer(salt)(lazyFiles(host), 1));
      host.faults.set(next!, fault);
      await page.evaluate(async () => {
        const registration = (await navigator.serviceWorker.getRegistration())!;
        const outcome = (worker: ServiceWorker) =>
          new Promise<string>((resolve) => {
            const look = () => {
              if (worker.state !== 'installing') resolve(worker.state);
            };
            worker.addEventListener('statechange', look);
            look();
          });
        // The browser may be at it by itself already.
        const coming = registration.installing
          ? outcome(registration.installing)
          : new Promise<string>((resolve) =>
              registration.addEventListener('updatefound', () => resolve(outcome(registration.installing!)), {
                once: true,
              }),
            );
        await registration.update();
        if ((await coming) !== 'redundant') throw new Error('it was installed');
      });
      await page.reload();
      await notBlank(page);
      await expect(rescue(page)).toHaveCount(0);
      const kept = await cached(page);
      for (const one of before) expect(kept).toContainEqual(one);
      host.faults.clear();
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.update());
      await page.getByRole('button', { name: 'Change over now' }).click();
      // The page loads anew meanwhile: what is asked of it then has no answer.
      await expect.poll(() => cached(page).catch(() => undefined)).toEqual(wanted(host.folder));
    }));
}

/** Spoils entries of the copy as a failing storage would. */
const spoil = (page: Page, urls: readonly string[]): Promise<void> =>
  page.evaluate(async (all) => {
    const [name] = await caches.keys();
    const cache = await caches.open(name!);
    for (const [i, url] of all.entries()) {
      const found = (await cache.match(url))!;
      const way = (i + url.length) % 3;
      if (way === 0) await cache.delete(url);
      else if (way === 1)
        await cache.put(url, new Response('<!doctype html>', { headers: { 'content-type': 'text/html' } }));
      else await cache.put(url, new Response((await found.blob()).slice(0, 20), { headers: found.headers }));
    }
  }, urls);

test('a copy of which every file was spoiled is mended on the next visit with a signal', async ({ page }) =>
  withHost(async (host) => {
    await page.goto(host.url);
    await untilOffline(page);
    await expect.poll(async () => (await cached(page)).length).toBe(wanted(host.folder).length);
    await spoil(
      page,
      drawer(1)(
        wanted(host.folder).map(({ url }) => url),
        1000,
      ),
    );
    await page.reload();
    await notBlank(page);
    await expect(rescue(page)).toHaveCount(0);
    await expect.poll(() => cached(page).catch(() => undefined)).toEqual(wanted(host.folder));
  }));

test('a copy of which any file was spoiled shows a screen or the rescue without a signal, never nothing', async ({
  page,
}) =>
  withHost(async (host) => {
    await page.goto(host.url);
    await untilOffline(page);
    await expect.poll(async () => (await cached(page)).length).toBe(wanted(host.folder).length);
    const page0 = readFileSync(join(host.folder, 'index.html'), 'utf8');
    const first = [...page0.matchAll(/(?:src|href)="\.\/(assets\/[^"]+)"/g)].map(([, url]) => url!);
    for (const url of ['index.html', ...first, ...drawer(2)(lazyFiles(host), 4)]) {
      host.dark = true;
      await spoil(page, [url]);
      await page.goto(`${host.url}#/settings`);
      await page.reload();
      await notBlank(page);
      // With the signal back, what it says to press brings the app.
      host.dark = false;
      await page.reload();
      await expect(page.getByRole('heading', { name: 'Settings' })).toBeVisible();
      await expect.poll(() => cached(page).catch(() => undefined)).toEqual(wanted(host.folder));
    }
  }));

for (const fault of FAULTS) {
  test(`where the app's script is "${fault}", all that is kept can be saved, and the app fetched anew`, async ({
    page,
  }) =>
    withHost(async (host) => {
      await page.goto(host.url);
      await untilOffline(page);
      await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
      await expect(page.getByText('demo').first()).toBeVisible();
      await page.goto(`${host.url}#/case/new`);
      await expect.poll(async () => (await inDatabase(page, 'reading:')).length).toBeGreaterThan(0);
      await page.evaluate(async () => {
        for (const name of await caches.keys()) await caches.delete(name);
        for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
      });
      const [entry] = putNextRelease(host.folder, [entryOf(host.folder)]);
      host.faults.set(entry!, fault);
      await page.goto('about:blank');
      await page.goto(host.url);
      await expect(rescue(page)).toBeVisible();

      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save all that is kept to a file' }).click();
      const file = readFile(readFileSync(await (await download).path(), 'utf8'));
      const kept = await inDatabase(page, '');
      if (!file.ok) throw new Error(file.reason);
      expect(file.refused).toEqual([]);
      const device = (record: object) =>
        'seenVersion' in record ? { ...record, lastExport: null, persistAsked: null } : record;
      expect(new Map(file.records.map((record) => [keyOf(record), record]))).toEqual(
        new Map(kept.map(([key, record]) => [key, device(record as object)])),
      );

      host.faults.clear();
      await page.getByRole('button', { name: 'Fetch the app anew' }).click();
      await expect(page.getByRole('heading', { name: 'What needs measuring?' })).toBeVisible();
      expect(await inDatabase(page, 'reading:')).toEqual(kept.filter(([key]) => key.startsWith('reading:')));
    }));
}

test('a page that stays open over a change of releases still gets its own files; they go when it does', async ({
  page,
  context,
}) =>
  withHost(async (host) => {
    await page.goto(host.url);
    await untilOffline(page);
    const second = await context.newPage();
    await second.goto(host.url);
    const renamed = [entryOf(host.folder), ...lazyFiles(host).filter((url) => url.endsWith('.js'))];
    putNextRelease(host.folder, renamed);
    await second.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.update());
    await second.getByRole('button', { name: 'Change over now' }).click();
    await expect.poll(() => second.evaluate(async () => (await caches.keys()).length)).toBe(2);
    await expect(second.locator(`script[src$="-next.js"]`)).toHaveCount(1);
    host.dark = true;
    await page.getByRole('link', { name: 'Settings' }).click();
    await expect(page.getByRole('heading', { name: 'Settings' })).toBeVisible();
    host.dark = false;
    await page.close();
    await second.reload();
    await expect.poll(() => cached(second)).toEqual(wanted(host.folder));
  }));
