// The store at 200 machines and 10,000 readings, in the built page: how fast the list and a machine open, whether the list
// scrolls at frame rate, and whether keeping a reading costs more at 10,000 than at 10. Saves at both sizes take turns in
// one run, so that a slow moment of this computer meets both.
import { spawn } from 'node:child_process';
import { chromium } from '@playwright/test';
import { largeFile } from './large-file.mjs';
import { table, writeMeasured } from './measured.mjs';

const PORT = 4191;
const AT = `http://localhost:${PORT}/bench/`;
const MACHINES = 200;
const READINGS = 10_000;
const FEW = 10;
const SAVES = 40;
const OPENINGS = 7;
const SLOWED = 4;
const FRAME_MS = 1000 / 60;
const MOST = { list: 150, ratio: 1.5 };
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

const server = spawn('node', ['test/browser/serve.mjs', String(PORT), ...process.argv.slice(2)], { stdio: 'ignore' });
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync', '--no-first-run'],
});

const quantile = (values, p) =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(p * values.length))];
const median = (values) => quantile(values, 0.5);
const ms = (value) => `${value.toFixed(1)} ms`;

/** A page of a browser of its own, with the invented machine kept by the app as the pattern for all records. */
async function openPage() {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(AT);
  await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
  await page.locator('h1', { hasText: 'demo' }).waitFor();
  return page;
}

/** Writes the records past the app, in the form in which it wrote the invented machine: so many readings to the first. */
async function seed(page, machines, ofFirst, spread) {
  await page.evaluate(
    async ([machines, ofFirst, spread]) => {
      const asked = (request) =>
        new Promise((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const database = await asked(indexedDB.open('trammel'));
      const reading = database.transaction('records').objectStore('records');
      const all = await asked(reading.getAll(IDBKeyRange.bound('machine:', 'reading:\uffff')));
      const machine = all.find((record) => record.type === 'machine');
      const pattern = all.find((record) => record.type === 'reading');
      const writing = database.transaction('records', 'readwrite');
      const store = writing.objectStore('records');
      const put = (of, i) => {
        const at = new Date(Date.UTC(2020, 0, 1) + i * 3_600_000).toISOString();
        // A few checks in turn, as a history has them.
        const calculator = ['two-z-screws', 'screw-lead', 'retraction', 'screw-step'][i % 4];
        store.put({ ...pattern, machine: of, calculator, id: `r${i}`, at }, `reading:${of}:${at}-r${i}`);
      };
      for (let m = 0; m < machines; m += 1) {
        const id = `m${m}`;
        store.put({ ...machine, id, name: `Machine ${String(m).padStart(3, '0')}`, demo: false }, `machine:${id}`);
        for (let i = 0; i < (m === 0 ? ofFirst : spread); i += 1) put(id, i);
      }
      await new Promise((resolve, reject) => {
        writing.oncomplete = resolve;
        writing.onabort = () => reject(writing.error);
      });
      const settings = database.transaction('records', 'readwrite').objectStore('records');
      const kept = await asked(settings.get('settings'));
      await asked(settings.put({ ...kept, machine: 'm0', persistAsked: new Date().toISOString() }, 'settings'));
      database.close();
    },
    [machines, ofFirst, spread],
  );
  await page.reload();
}

/** Milliseconds from a click on a link until `count` elements of `found` are there and have been painted. */
const clickToPaint = (page, link, found, count) =>
  page.evaluate(
    ([link, found, count]) =>
      new Promise((resolve) => {
        const began = performance.now();
        const look = () => {
          if (document.querySelectorAll(found).length < count) {
            requestAnimationFrame(look);
            return;
          }
          requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)));
        };
        document.querySelector(link).click();
        look();
      }),
    [link, found, count],
  );

/** A fixed amount of arithmetic, to tell a slow computer from a slow page. */
const calibrate = (page) =>
  page.evaluate(() => {
    const began = performance.now();
    let x = 0;
    for (let i = 1; i < 3e6; i += 1) x += Math.sqrt(i) / (x + i);
    return performance.now() - began + (x === 0 ? 1 : 0);
  });

/** Until the page has nothing left to do: what was typed is written, what was put off is done. */
const atRest = (page) =>
  page.evaluate(async () => {
    const rest = () => new Promise((resolve) => setTimeout(() => requestIdleCallback(resolve), 150));
    for (let i = 0; i < 2; i += 1) await rest();
  });

const home = async (page) => {
  await page.locator('.running-head a').first().click();
  await page.getByRole('heading', { name: 'What needs measuring?' }).waitFor();
  await atRest(page);
};

async function openings(page, link, found, count, before) {
  const times = [];
  for (let i = 0; i < OPENINGS; i += 1) {
    await home(page);
    await before?.();
    times.push(await clickToPaint(page, link, found, count));
  }
  // The first one also fetches the screen's code.
  return { first: times[0], later: median(times.slice(1)) };
}

/** Intervals between frames while the list is scrolled from end to end. */
const scrolled = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve) => {
        const root = document.scrollingElement;
        const intervals = [];
        let last;
        const step = (now) => {
          if (last !== undefined) intervals.push(now - last);
          last = now;
          const before = root.scrollTop;
          root.scrollTop += 120;
          if (root.scrollTop > before) requestAnimationFrame(step);
          else resolve(intervals);
        };
        root.scrollTop = 0;
        requestAnimationFrame(step);
      }),
  );

async function openSheet(page) {
  await page.goto(`${AT}#/check/two-z-screws`);
  await page.locator('.bench').waitFor();
  await page.getByText('Worked examples').click();
  await page.getByRole('button', { name: 'Put these numbers in' }).first().click();
  await atRest(page);
}

/** Another number in the first entry that has one: a reading that is kept already cannot be kept again. */
const enterAnother = (page, i) =>
  page.evaluate((i) => {
    const box = [...document.querySelectorAll('.field-box input')].find((input) => input.value !== '');
    const start = Number(box.value.replace(',', '.').match(/-?[\d.]+/)?.[0] ?? 1);
    box.value = String(Number((start * (i % 2 ? 1.01 : 0.99)).toPrecision(6)));
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
  }, i);

/** Milliseconds from the press of the key until the page says that the reading is kept. */
const save = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const bench = document.querySelector('.bench');
        const key = [...bench.querySelectorAll('button')].find((b) => b.textContent.trim() === 'Save reading');
        const kept = () => bench.querySelector('[role=status]')?.textContent.startsWith('Saved on') ?? false;
        const began = performance.now();
        const watch = new MutationObserver(() => {
          if (!kept()) return;
          watch.disconnect();
          resolve(performance.now() - began);
        });
        setTimeout(() => reject(new Error('nothing was kept')), 10_000);
        key.click();
        if (kept()) reject(new Error('said to be kept before it was'));
        watch.observe(bench, { subtree: true, childList: true, characterData: true });
      }),
  );

async function savesInTurn(pages) {
  const times = pages.map(() => []);
  for (let i = 0; i < SAVES; i += 1) {
    for (const [k, page] of pages.entries()) {
      await enterAnother(page, i);
      // Until what was typed is written and the page is at rest.
      await atRest(page);
      times[k].push(await save(page));
    }
  }
  // The first ones warm the page up.
  return times.map((each) => median(each.slice(5)));
}

let missed = 0;
const rows = [];
function line(what, value, limit, good) {
  if (limit !== undefined && !good) missed += 1;
  const verdict = limit === undefined ? '' : ` (${good ? 'within' : 'BEYOND'} ${limit})`;
  rows.push([what, value, limit ?? '']);
  console.log(`${what.padEnd(66)}${value}${verdict}`);
}

try {
  const spread = await openPage();
  await seed(spread, MACHINES, READINGS / MACHINES, READINGS / MACHINES);
  await atRest(spread);
  line('Calibration loop', ms(await calibrate(spread)));
  const list = await openings(spread, 'nav a[href$="/machines"]', '.index-list > li', MACHINES);
  line(
    `List of ${MACHINES} machines, ${READINGS} readings: first opening`,
    ms(list.first),
    '150 ms',
    list.first <= MOST.list,
  );
  line('  later openings, median', ms(list.later), '150 ms', list.later <= MOST.list);
  const session = await spread.context().newCDPSession(spread);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const phone = await openings(spread, 'nav a[href$="/machines"]', '.index-list > li', MACHINES);
  line('  later openings, CPU slowed four times, median', ms(phone.later));
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();
  const frames = await scrolled(spread);
  line(
    '  scrolling: frames, median and 95 % interval',
    `${frames.length}, ${ms(median(frames))}, ${ms(quantile(frames, 0.95))}`,
  );
  const dropped = frames.filter((interval) => interval > 1.5 * FRAME_MS).length;
  line('  scrolling: frames missed', `${dropped} of ${frames.length}`);

  const many = await openPage();
  await seed(many, MACHINES, READINGS, 0);
  const few = await openPage();
  await seed(few, 1, FEW, 0);
  const toList = (page) => async () => {
    await page.locator('nav a[href$="/machines"]').click();
    await page.locator('.index-list a[href$="/machines/m0"]').waitFor();
  };
  const link = '.index-list a[href$="/machines/m0"]';
  // Four checks at a glance, and the newest ten readings.
  const row = 'main .two-columns .index-list > li';
  const one = await openings(many, link, row, 4 + FEW, toList(many));
  const other = await openings(few, link, row, 4 + FEW, toList(few));
  line(`Machine with ${READINGS} readings: first opening`, ms(one.first));
  line('  later openings, median', ms(one.later));
  line(`  as against ${FEW} readings`, `ratio ${(one.later / other.later).toFixed(2)}`);

  for (const page of [many, few]) await openSheet(page);
  const [atMany, atFew] = await savesInTurn([many, few]);
  const ratio = atMany / atFew;
  line(`Keeping a reading at ${FEW}, median`, ms(atFew));
  line(`Keeping a reading at ${READINGS} on one machine, median`, ms(atMany));
  line('  ratio', ratio.toFixed(2), String(MOST.ratio), ratio < MOST.ratio);
  await openSheet(spread);
  const [atSpread, again] = await savesInTurn([spread, few]);
  line(`Keeping a reading at ${READINGS} over ${MACHINES} machines, median`, ms(atSpread));
  line('  ratio', (atSpread / again).toFixed(2), String(MOST.ratio), atSpread / again < MOST.ratio);
  await largeFile(await openPage(), AT, line);
} finally {
  await browser.close();
  server.kill();
}
console.log(missed === 0 ? 'Every limit is held.' : `${missed} limits are not held.`);
await writeMeasured('store', 'npm run bench:store', table(['what', 'found', 'limit'], rows));
process.exitCode = missed === 0 ? 0 : 1;
