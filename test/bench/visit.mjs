// A first visit on a slow phone, as Lighthouse's mobile profile has it (CPU slowed four times, 150 ms to and fro, 1.6 Mbit/s
// down, nothing in the cache): first and largest paint, blocked time, shift of layout, and the score that Lighthouse 12 makes
// of them (its weights and log-normal curves, from memory; its speed index is taken as the largest paint, which it is never above here).
// The host compresses, as hosts do. Machine and case are what a demo leaves; they are opened again with an empty cache.
// `node test/bench/visit.mjs` after a build.
import { createServer } from 'node:http';
import { existsSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { table, writeMeasured } from './measured.mjs';

const PORT = 4192;
const AT = `http://localhost:${PORT}/`;
const DIST = process.env.DIST ?? 'dist';
const VISITS = 3;
/** Quiet for so long, the page has come to rest. */
const REST_MS = 3000;
const NETWORK = { offline: false, latency: 150, downloadThroughput: 204_800, uploadThroughput: 93_750 };
const TYPES = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml' };

const server = createServer((request, response) => {
  const path = new URL(request.url ?? '/', AT).pathname;
  const file = join(DIST, path === '/' ? 'index.html' : path);
  if (!existsSync(file)) return void response.writeHead(404).end();
  const type = TYPES[extname(file)];
  response.writeHead(200, { 'content-type': type ?? 'image/png', ...(type ? { 'content-encoding': 'gzip' } : {}) });
  response.end(type ? gzipSync(readFileSync(file)) : readFileSync(file));
}).listen(PORT, 'localhost');

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync', '--no-first-run'],
});

/** Complementary error function (Abramowitz & Stegun 7.1.26, from memory). */
function erfc(x) {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const tail =
    ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t * Math.exp(-x * x);
  return x < 0 ? 2 - tail : tail;
}

/** Share of pages that are slower: 0.9 at `good`, 0.5 at `middling`. */
const curve = (value, good, middling) =>
  value <= 0 ? 1 : erfc((0.9061938024368232 * Math.log(value / middling)) / Math.log(middling / good)) / 2;

const score = ({ first, largest, blocked, shift }) =>
  100 *
  (0.1 * curve(first, 1800, 3000) +
    0.25 * curve(largest, 2500, 4000) +
    0.3 * curve(blocked, 200, 600) +
    0.25 * curve(shift, 0.1, 0.25) +
    0.1 * curve(largest, 3387, 5800));

/** Notes paints, shifts and long tasks from before the page's own code runs. */
const watch = () => {
  const seen = { first: 0, largest: 0, shift: 0, long: [] };
  window.seen = seen;
  const on = (type, note) =>
    new PerformanceObserver((list) => list.getEntries().forEach(note)).observe({ type, buffered: true });
  on('paint', (entry) => {
    if (entry.name === 'first-contentful-paint') seen.first = entry.startTime;
  });
  on('largest-contentful-paint', (entry) => (seen.largest = entry.startTime));
  on('layout-shift', (entry) => (seen.shift += entry.hadRecentInput ? 0 : entry.value));
  on('longtask', (entry) => seen.long.push([entry.startTime, entry.duration]));
};

async function visit(context, hash) {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await page.addInitScript(watch);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
  await session.send('Network.emulateNetworkConditions', NETWORK);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.goto(AT + hash);
  await page.locator('h1').first().waitFor();
  await page.evaluate((rest) => new Promise((resolve) => setTimeout(resolve, rest)), REST_MS);
  const { first, largest, shift, long } = await page.evaluate(() => window.seen);
  await page.close();
  const after = long.filter(([at]) => at > first);
  const blocked = after.reduce((sum, [, duration]) => sum + duration - 50, 0);
  return { first, largest, shift, blocked, longest: Math.max(0, ...long.map(([, duration]) => duration)) };
}

const fresh = () =>
  browser.newContext({ viewport: { width: 412, height: 823 }, hasTouch: true, serviceWorkers: 'block' });

/** A browser with the demo machine and a case in it, and where they are. */
async function lived() {
  const context = await fresh();
  const page = await context.newPage();
  await page.goto(AT);
  await page.getByRole('button', { name: 'Put a demo machine on the bench' }).click();
  await page.locator('h1', { hasText: 'demo' }).waitFor();
  const machine = new URL(page.url()).hash;
  await page.goto(`${AT}#/case/new`);
  await page.getByLabel('What is wrong').fill('one side of the first layer is squashed, gantry crooked');
  await page
    .getByRole('button', { name: /^One side of the first layer is thin/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Open the case' }).click();
  await page.getByRole('region', { name: 'Next step' }).waitFor();
  const found = { context, machine, ofCase: new URL(page.url()).hash };
  await page.close();
  return found;
}

const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];
const head = ['first visit to', 'score', 'first paint', 'largest paint', 'blocked', 'longest task', 'shift'];
const rows = [];
try {
  const { context: kept, machine, ofCase } = await lived();
  const places = [
    ['home', '', undefined],
    ['the check screw-lead', '#/check/screw-lead', undefined],
    ['the check heater-check', '#/check/heater-check', undefined],
    ['a machine', machine, kept],
    ['a case', ofCase, kept],
  ];
  for (const [name, hash, context] of places) {
    const visits = [];
    for (let i = 0; i < VISITS; i += 1) {
      const own = context ?? (await fresh());
      visits.push(await visit(own, hash));
      if (!context) await own.close();
    }
    const of = (what) => median(visits.map((one) => one[what]));
    const found = Object.fromEntries(Object.keys(visits[0]).map((what) => [what, of(what)]));
    const ms = (value) => `${value.toFixed(0)} ms`;
    const { first, largest, blocked, longest, shift } = found;
    rows.push([name, score(found).toFixed(0), ...[first, largest, blocked, longest].map(ms), shift.toFixed(3)]);
    console.log(rows.at(-1).join('  '));
  }
} finally {
  await browser.close();
  server.close();
}
if (process.env.DIST === undefined) await writeMeasured('visit', 'node test/bench/visit.mjs', table(head, rows));
