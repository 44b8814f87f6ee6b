// A file of the most records and bytes that are read (src/machine/exchange.ts), taken in and made again in the built page:
// how long it takes, and the longest stretch in which the page does nothing else.
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const RECORDS = 50_000;
const MOST_MS = 200;

/** A machine and readings of it, in the form in which the app wrote the invented machine, cut to fill the bytes. */
const pattern = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('trammel');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('records').objectStore('records').getAll();
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result);
          };
        };
      }),
  );

function fileOf(all, path) {
  const machine = { ...all.find(({ type }) => type === 'machine'), id: 'large', name: 'Large', demo: false };
  const whole = all.find(({ type }) => type === 'reading');
  const few = (map, n) => Object.fromEntries(Object.entries(map).slice(0, n));
  const reading = {
    ...{ ...whole, machine: 'large', entries: few(whole.entries, 2), results: few(whole.results, 2) },
    order: { ...whole.order, steps: [], assumes: [], expects: {} },
  };
  const lines = Array.from({ length: RECORDS - 1 }, (_, i) => {
    const at = new Date(Date.UTC(2020, 0, 1) + i * 600_000).toISOString();
    return JSON.stringify({ ...reading, id: `r${i}`, at });
  });
  writeFileSync(
    path,
    `{"format":"trammel","v":1,"made":"2026-01-01T00:00:00.000Z","machines":[${JSON.stringify(machine)}],"readings":[\n${lines.join(',\n')}\n]}`,
  );
  return statSync(path).size;
}

/** Watches the page until it is asked: the longest time between two turns of its own. */
const watch = (page) =>
  page.evaluate(() => {
    let last = performance.now();
    window.longest = 0;
    window.shares = new Set();
    const turn = () => {
      const now = performance.now();
      window.longest = Math.max(window.longest, now - last);
      last = now;
      const share = document.querySelector('progress');
      if (share) window.shares.add(share.value);
      channel.port2.postMessage(0);
    };
    const channel = new MessageChannel();
    channel.port1.onmessage = () => setTimeout(turn, 4);
    turn();
  });

const longest = (page) =>
  page.evaluate(() => {
    const found = { ms: window.longest, shares: window.shares.size };
    window.longest = 0;
    window.shares.clear();
    return found;
  });

const stored = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve) => {
        const opening = indexedDB.open('trammel');
        opening.onsuccess = () => {
          const asked = opening.result.transaction('records').objectStore('records').count();
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result);
          };
        };
      }),
  );

/** @param line says one finding and whether its limit is held */
export async function largeFile(page, at, line) {
  const folder = mkdtempSync(join(tmpdir(), 'trammel-large-'));
  const path = join(folder, 'large.json');
  try {
    const bytes = fileOf(await pattern(page), path);
    const before = await stored(page);
    await page.goto(`${at}#/settings`);
    const choose = page.getByLabel('A file that Trammel saved');
    await choose.waitFor();
    await watch(page);
    const step = async (what, body) => {
      await longest(page);
      const began = performance.now();
      await body();
      const seconds = (performance.now() - began) / 1000;
      const { ms, shares } = await longest(page);
      const value = `${seconds.toFixed(1)} s, longest block ${ms.toFixed(0)} ms, ${shares} steps told`;
      line(`  ${what}`, value, `${MOST_MS} ms`, ms <= MOST_MS);
    };
    line(`File of ${RECORDS} records, MB`, (bytes / 1024 / 1024).toFixed(1));
    const stop = page.getByRole('button', { name: 'Stop', exact: true });
    const take = page.getByRole('button', { name: 'Read it in' });
    const wait = { timeout: 400_000 };
    await step('read, what it would do shown', async () => {
      await choose.setInputFiles(path);
      await take.waitFor(wait);
    });
    await step('taking in, stopped half way', async () => {
      await take.click();
      await page.waitForFunction(() => document.querySelector('progress')?.value > 0.75, undefined, wait);
      await stop.click();
      await page.getByText('Stopped. Nothing was read in.').waitFor(wait);
    });
    const left = await stored(page);
    line('  records it left', String(left - before), '0', left === before);
    await step('taken in', async () => {
      await take.click();
      await page.getByText('Read in:').waitFor(wait);
    });
    line(
      '  records then',
      String((await stored(page)) - before - 1),
      String(RECORDS),
      (await stored(page)) === before + RECORDS + 1,
    );
    await page.getByText('machines and readings', { exact: true }).click();
    await step('made again', async () => {
      await page.getByRole('button', { name: 'Put the file together' }).click();
      await page.getByRole('link', { name: 'Save the file' }).waitFor(wait);
    });
    await page.getByText('readings, for a spreadsheet').click();
    await step('made for a spreadsheet', async () => {
      await page.getByRole('button', { name: 'Put the file together' }).click();
      await page.getByRole('link', { name: 'Save the file' }).waitFor(wait);
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
