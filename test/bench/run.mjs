// Keystroke to finished page on the phone profile (CPU slowed four times): results, formulas, drawing and layout, as a
// share of one frame of 16.7 ms. All in one run, against a calibration loop, so that a slow machine shows as such.
import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { chromium } from '@playwright/test';

const PORT = 4190;
const FRAME_MS = 1000 / 60;
const SLOWED = 4;
const STROKES = 60;
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
async function strokes(page) {
  return page.evaluate(async (count) => {
    for (const fold of document.querySelectorAll('details')) fold.open = /Formulas|Limits/.test(fold.textContent);
    const box = [...document.querySelectorAll('.field-box input')].find((input) => input.value !== '');
    const frame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    const times = [];
    const start = Number(box.value.replace(',', '.').match(/-?[\d.]+/)?.[0] ?? 1);
    for (let i = 0; i < count; i += 1) {
      await frame();
      box.value = String(Number((start * (1 + 0.001 * (i + 1))).toPrecision(6)));
      const began = performance.now();
      box.dispatchEvent(new InputEvent('input', { bubbles: true }));
      document.body.getBoundingClientRect();
      times.push(performance.now() - began);
    }
    return times.slice(5).sort((a, b) => a - b);
  }, STROKES);
}

/** A fixed amount of arithmetic, to tell a slow machine from a slow page. */
const calibrate = (page) =>
  page.evaluate(() => {
    const began = performance.now();
    let x = 0;
    for (let i = 1; i < 3e6; i += 1) x += Math.sqrt(i) / (x + i);
    return performance.now() - began + (x === 0 ? 1 : 0);
  });

let slow = 0;
try {
  const context = await browser.newContext({
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    serviceWorkers: 'block',
  });
  console.log(`check                     median  95 %    share of a frame (95 %)   calibration`);
  for (const id of ids) {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await page.goto(`http://localhost:${PORT}/bench/#/check/${id}`);
    await page.locator('.bench').waitFor();
    await page.getByText('Worked examples').click();
    await page.getByRole('button', { name: 'Put these numbers in' }).first().click();
    // The first line that holds a number in the example, opened if it is not.
    const line = page.locator('.field', { hasNotText: 'to be measured' }).first();
    if (!(await line.locator('.field-box').isVisible())) await line.locator('.field-line').click();
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    const unit = await calibrate(page);
    const times = await strokes(page);
    const [median, high] = [quantile(times, 0.5), quantile(times, 0.95)];
    const share = high / FRAME_MS;
    if (share > 1) slow += 1;
    const columns = [id.padEnd(25), `${median.toFixed(1)} ms`.padEnd(8), `${high.toFixed(1)} ms`.padEnd(8)];
    console.log(`${columns.join('')}${share.toFixed(2).padEnd(26)}${unit.toFixed(0)} ms`);
    await page.close();
  }
} finally {
  await browser.close();
  server.kill();
}
console.log(slow === 0 ? 'Every keystroke fits into one frame.' : `${slow} check(s) take longer than a frame.`);
