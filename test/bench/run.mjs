// Keystroke to finished page on the phone profile (CPU slowed four times): results, formulas, drawing and layout, as a
// share of one frame of 16.7 ms. All in one run, against a calibration loop, so that a slow machine shows as such.
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { table, writeMeasured } from './measured.mjs';

const PORT = 4190;
const FRAME_MS = 1000 / 60;
const SLOWED = 4;
const GROUPS = 24;
/** Keystrokes timed together, each laid out: the slowed CPU stops and goes in slices of several milliseconds. */
const TOGETHER = 5;
/** Between groups: what the page puts off to an idle moment gets its moment. */
const PAUSE_MS = 120;
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';

const ids = readdirSync('src/calculators', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

const server = spawn('node', ['test/browser/serve.mjs', String(PORT)], { stdio: 'ignore' });
const browser = await chromium.launch({
  executablePath: CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync', '--no-first-run'],
});

const quantile = (sorted, p) => sorted[Math.min(sorted.length - 1, Math.floor(p * sorted.length))];

/** Milliseconds per keystroke in the page, handler to layout, with the formulas unfolded. */
async function strokes(page, unfolded) {
  return page.evaluate(
    async ([groups, together, pause, unfolded]) => {
      for (const fold of document.querySelectorAll('details')) {
        fold.open = unfolded && /^(Formulas|Limits)/.test(fold.querySelector('summary').textContent.trim());
      }
      const box = [...document.querySelectorAll('.field-box input')].find((input) => input.value !== '');
      const rest = () =>
        new Promise((resolve) => setTimeout(() => requestAnimationFrame(() => setTimeout(resolve)), pause));
      const times = [];
      const start = Number(box.value.replace(',', '.').match(/-?[\d.]+/)?.[0] ?? 1);
      for (let i = 0; i < groups; i += 1) {
        await rest();
        const began = performance.now();
        for (let k = 1; k <= together; k += 1) {
          box.value = String(Number((start * (1 + 0.001 * (i * together + k))).toPrecision(6)));
          box.dispatchEvent(new InputEvent('input', { bubbles: true }));
          document.body.getBoundingClientRect();
        }
        times.push((performance.now() - began) / together);
      }
      return times.slice(4).sort((a, b) => a - b);
    },
    [GROUPS, TOGETHER, PAUSE_MS, unfolded],
  );
}

/** A fixed amount of arithmetic, to tell a slow machine from a slow page. */
const calibrate = (page) =>
  page.evaluate(() => {
    const began = performance.now();
    let x = 0;
    for (let i = 1; i < 3e6; i += 1) x += Math.sqrt(i) / (x + i);
    return performance.now() - began + (x === 0 ? 1 : 0);
  });

/** Opens a check with a worked example in it and one line open, on a page slowed down. */
async function openSlowed(context, id) {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await page.goto(`http://localhost:${PORT}/bench/#/check/${id}`);
  await page.locator('.bench').waitFor();
  await page.getByText('Worked examples').click();
  await page.getByRole('button', { name: 'Put these numbers in' }).first().click();
  const line = page.locator('.field', { hasNotText: 'to be measured' }).first();
  if (!(await line.locator('.field-box').isVisible())) await line.locator('.field-line').click();
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return page;
}

const share = (times, p) => (quantile(times, p) / FRAME_MS).toFixed(2);

let slow = 0;
const rows = [];
try {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    serviceWorkers: 'block',
  });
  console.log('One keystroke as a share of a frame of 16.7 ms, CPU slowed four times: median, 95 %');
  console.log(`${'check'.padEnd(26)}${'as it opens'.padEnd(16)}${'formulas unfolded'.padEnd(20)}calibration`);
  for (const id of ids) {
    const columns = [];
    let unit = 0;
    for (const unfolded of [false, true]) {
      const page = await openSlowed(context, id);
      unit = await calibrate(page);
      const times = await strokes(page, unfolded);
      if (quantile(times, 0.5) > FRAME_MS) slow += 1;
      columns.push(`${share(times, 0.5)}  ${share(times, 0.95)}`);
      await page.close();
    }
    rows.push([id, ...columns.map((column) => column.replace('  ', ', '))]);
    console.log(`${id.padEnd(26)}${columns[0].padEnd(16)}${columns[1].padEnd(20)}${unit.toFixed(0)} ms`);
  }
} finally {
  await browser.close();
  server.kill();
}
console.log(
  slow === 0 ? 'The median keystroke fits into one frame everywhere.' : `${slow} of them take longer than a frame.`,
);
await writeMeasured('keystroke', 'node test/bench/run.mjs', table(['check', 'as it opens', 'formulas unfolded'], rows));
