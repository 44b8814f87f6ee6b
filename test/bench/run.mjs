// Keystroke to finished page on the phone profile (CPU slowed four times), as a share of one frame of 16.7 ms: entry, verdict,
// order and layout; and the longest task while typing, with what follows behind (drawing, formulas, what would settle it).
// It types into the field that costs most, and only where the page answers. All in one run, against a calibration loop, so
// that a slow machine shows as such. `node test/bench/run.mjs belt-pair retraction` runs those alone and writes nothing down.
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { table, writeMeasured } from './measured.mjs';

const PORT = 4190;
const FRAME_MS = 1000 / 60;
const SLOWED = 4;
const GROUPS = 16;
/** Keystrokes timed together, each laid out: the slowed CPU stops and goes in slices of several milliseconds. */
const TOGETHER = 5;
/** Between groups: what the page puts off to an idle moment gets its moment. */
const PAUSE_MS = 120;
/** Keystrokes of one who types fast, each in a task of its own. */
const TYPED = 16;
const TYPED_MS = 150;
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

const asked = process.argv.slice(2);
const ids = readdirSync('src/calculators', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && (asked.length === 0 || asked.includes(entry.name)))
  .map((entry) => entry.name);

const server = spawn('node', ['test/browser/serve.mjs', String(PORT), process.env.DIST ?? 'dist'], { stdio: 'ignore' });
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync', '--no-first-run'],
});

const quantile = (sorted, p) => sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))];

/** Puts `window.typist` into the page: finds what can be typed into, and types. */
const installTypist = (page) =>
  page.addInitScript(() => {
    const rest = (ms) =>
      new Promise((resolve) => setTimeout(() => requestAnimationFrame(() => setTimeout(resolve)), ms));
    const put = (box, text) => {
      box.value = text;
      box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    };
    const inField = (symbol) => document.querySelector(`.field[data-input="${symbol}"] .field-box input`);
    const boxes = () => ({
      fields: [...document.querySelectorAll('.field[data-input]')].map((field) => field.dataset.input),
      // The first line of a table stands for the others.
      cells: [...document.querySelectorAll('.reading-table tbody tr:first-child input')],
    });
    /** The box of a line, opened where it is closed. */
    const opened = async (symbol) => {
      if (!inField(symbol)) document.querySelector(`.field[data-input="${symbol}"] .field-line`).click();
      await rest(0);
      return inField(symbol);
    };
    const seen = () => document.querySelector('main').textContent + document.querySelector('.bench').textContent;
    /** Other numbers for a box, near the one in it, that the page takes; undefined where it takes none, or nothing answers. */
    const numbersFor = async (box) => {
      const was = box.value;
      const start = Number(was.replace(',', '.').match(/-?[\d.]+/)?.[0] ?? NaN);
      if (!Number.isFinite(start)) return undefined;
      const finely = (k) => String(Number((start * (1 + 0.0005 * (k % 40)) || 0.001 * k).toPrecision(6)));
      const wholly = (k) => String(start + (k % 2));
      for (const number of [finely, wholly]) {
        const before = seen();
        put(box, number(1));
        await rest(20);
        const answers = box.ariaInvalid !== 'true' && seen() !== before;
        put(box, was);
        await rest(20);
        if (answers) return number;
      }
      return undefined;
    };
    const timed = (box, number, from, together) => {
      const began = performance.now();
      for (let k = from + 1; k <= from + together; k += 1) {
        put(box, number(k));
        document.body.getBoundingClientRect();
      }
      return (performance.now() - began) / together;
    };
    const into = async (target) => (typeof target === 'string' ? opened(target) : boxes().cells[target]);
    window.typist = {
      /** The line (its symbol) or cell (its number) that costs most. */
      async costliest() {
        let found;
        const { fields, cells } = boxes();
        for (const target of [...fields, ...cells.keys()]) {
          const box = await into(target);
          const number = box && (await numbersFor(box));
          if (!number) continue;
          const times = [];
          for (let i = 0; i < 3; i += 1) {
            await rest(0);
            times.push(timed(box, number, 2 * i, 2));
          }
          const time = times.sort((a, b) => a - b)[1];
          if (!found || time > found.time) found = { target, time };
        }
        return found?.target;
      },
      /** Milliseconds per keystroke, handler to layout. */
      async strokes(target, groups, together, pause) {
        const box = await into(target);
        const number = await numbersFor(box);
        box.scrollIntoView({ block: 'center' });
        const times = [];
        for (let i = 0; i < groups; i += 1) {
          await rest(pause);
          times.push(timed(box, number, i * together, together));
        }
        return times.slice(4).sort((a, b) => a - b);
      },
      /** Milliseconds of each task over 50 ms while someone types. */
      async longTasks(target, count, every) {
        const box = await into(target);
        const number = await numbersFor(box);
        const long = [];
        const watch = new PerformanceObserver((list) => long.push(...list.getEntries().map((entry) => entry.duration)));
        watch.observe({ type: 'longtask' });
        for (let k = 1; k <= count; k += 1) {
          await new Promise((resolve) => setTimeout(resolve, every));
          put(box, number(k));
        }
        await rest(500);
        watch.disconnect();
        return long.sort((a, b) => a - b);
      },
      unfold(unfolded) {
        for (const fold of document.querySelectorAll('details.section')) {
          fold.open = unfolded && /^(Formulas|Limits)/.test(fold.querySelector('summary').textContent.trim());
        }
      },
    };
  });

/** A fixed amount of arithmetic, to tell a slow machine from a slow page. */
const calibrate = (page) =>
  page.evaluate(() => {
    const began = performance.now();
    let x = 0;
    for (let i = 1; i < 3e6; i += 1) x += Math.sqrt(i) / (x + i);
    return performance.now() - began + (x === 0 ? 1 : 0);
  });

/** Opens a check with a worked example in it, on a page slowed down. */
async function openSlowed(context, id) {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await installTypist(page);
  await page.goto(`http://localhost:${PORT}/bench/#/check/${id}`);
  await page.locator('.bench').waitFor();
  await page.getByText('Worked examples').click();
  await page.getByRole('button', { name: 'Put these numbers in' }).first().click();
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return page;
}

/** What one check takes: its row of the table, and whether any median is over a frame. */
async function measure(context, id) {
  const page = await openSlowed(context, id);
  const unit = await calibrate(page);
  const columns = [];
  let slow = 0;
  await page.evaluate(() => window.typist.unfold(false));
  const target = await page.evaluate(() => window.typist.costliest());
  if (target === undefined) throw new Error(`${id}: nothing that is typed changes the page`);
  for (const unfolded of [false, true]) {
    await page.evaluate((open) => window.typist.unfold(open), unfolded);
    const times = await page.evaluate((args) => window.typist.strokes(...args), [target, GROUPS, TOGETHER, PAUSE_MS]);
    if (quantile(times, 0.5) > FRAME_MS) slow += 1;
    columns.push(`${share(times, 0.5)}, ${share(times, 0.95)}`);
    const long = await page.evaluate((args) => window.typist.longTasks(...args), [target, TYPED, TYPED_MS]);
    columns.push(long.length === 0 ? 'none' : `${long.length}, to ${long.at(-1).toFixed(0)} ms`);
  }
  await page.close();
  const [opens, longOpens, open, longOpen] = columns;
  return {
    slow,
    long: columns[1] !== 'none' || columns[3] !== 'none',
    row: [id, String(target), opens, open, longOpens, longOpen],
    unit,
  };
}

const share = (times, p) => (quantile(times, p) / FRAME_MS).toFixed(2);

let slow = 0;
let late = 0;
const rows = [];
const WIDTHS = [26, 12, 14, 14, 18, 18];
const print = (cells) => console.log(cells.map((cell, i) => String(cell).padEnd(WIDTHS[i] ?? 0)).join(''));
const head = ['check', 'typed into', 'as it opens', 'unfolded', 'tasks over 50 ms', 'those unfolded'];
try {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    serviceWorkers: 'block',
  });
  console.log('One keystroke as a share of a frame of 16.7 ms, CPU slowed four times: median, 95 %');
  print([...head, 'calibration']);
  for (const id of ids) {
    const { row, unit, ...found } = await measure(context, id);
    slow += found.slow;
    late += Number(found.long);
    rows.push(row);
    print([...row, `${unit.toFixed(0)} ms`]);
  }
} finally {
  await browser.close();
  server.kill();
}
console.log(
  slow === 0 ? 'The median keystroke fits into one frame everywhere.' : `${slow} of them take longer than a frame.`,
);
console.log(late === 0 ? 'No task takes over 50 ms while someone types.' : `${late} checks have tasks over 50 ms.`);
if (asked.length === 0) await writeMeasured('keystroke', 'node test/bench/run.mjs', table(head, rows));
process.exitCode = slow + late === 0 ? 0 : 1;
