import { expect, test } from '@playwright/test';
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { outDir } from '../../build/chosen';
import { MARK } from '../../build/strange';
import desk from '../../src/app/desk/words/en';
import sheet from '../../src/app/sheet/words/en';
import engine from '../../src/engine/words/en';
import inputs from '../../src/calculators/two-z-screws/words/en';
import list from '../../src/calculators/two-z-screws/words/en/list';
import ui from '../../src/ui/words/en';
import type { Driver } from './engines/driver';
import { ENGINES, findEngine } from './engines/engine';
import { unmarked } from './support';

/*
 * The main job in the engines that the whole suite does not run in. They are driven through their own WebDriver, as a
 * person's hand would: clicks, keys, a reload. `test/run.mjs` says at its end which were tried.
 */

const DH = inputs.inputs.dh.label;

/** Finds what can be seen, by its words: what `finds` selects and whose name or text begins so. */
const BY_WORDS = `
  const [finds, words] = arguments;
  const plain = (text) => (text ?? '').replaceAll('${MARK}', '').replaceAll(/\\s+/g, ' ').trim();
  return [...document.querySelectorAll(finds)].find((one) =>
    one.getClientRects().length > 0 && [one.getAttribute('aria-label'), one.textContent, one.dataset.symbol, one.labels?.[0]?.textContent].some((text) => plain(text).startsWith(words)));
`;
const SAYS = `
  const [finds, words] = arguments;
  return [...document.querySelectorAll(finds)].map((one) => one.textContent.replaceAll('${MARK}', '').replaceAll(/\\s+/g, ' ')).find((text) => text.includes(words));
`;

interface Page {
  readonly press: (finds: string, words: string) => Promise<void>;
  readonly write: (text: string, finds: string, words: string) => Promise<void>;
  readonly reads: (finds: string, words: string) => Promise<string>;
}

const pageOf = (driver: Driver): Page => ({
  press: (finds, words) => driver.click(words, BY_WORDS, finds, words),
  write: (text, finds, words) => driver.type(text, BY_WORDS, finds, words),
  reads: (finds, words) => driver.until<string>(`${finds} saying ${words}`, SAYS, finds, words),
});

async function host(port: number): Promise<{ readonly url: string; readonly process: ChildProcess }> {
  const process = spawn('node', ['test/browser/serve.mjs', String(port), outDir], { stdio: 'inherit' });
  const url = `http://localhost:${port}/bench/`;
  await expect
    .poll(() =>
      fetch(url).then(
        ({ status }) => status,
        () => 0,
      ),
    )
    .toBe(200);
  return { url, process };
}

/** For the closing lines of a test run. */
function tried(name: string, found: string): void {
  mkdirSync('test-results/engines', { recursive: true });
  writeFileSync(`test-results/engines/${name}.txt`, `${found}\n`);
}

async function mainJob(driver: Driver, url: string, killServer: () => void): Promise<void> {
  const { press, write, reads } = pageOf(driver);
  await driver.go(url);
  await press('button', desk.machine.make);
  await write('Left bench', 'input', desk.machine.name);
  await press('button', desk.machine.makeIt);
  await driver.until(
    'a machine on the bench',
    'return [...document.querySelectorAll("select")].some((one) => one.selectedOptions[0]?.textContent.includes("Left bench"))',
  );
  await driver.go(`${url}#/check/two-z-screws`);
  await driver.until('the field', BY_WORDS, '.field-label', DH);
  if ((await driver.now(BY_WORDS, '.field-box input', DH)) === null) await press('.field-label', DH);
  await write('0,75 ± 0,03', '.field-box input', DH);
  // A decimal comma, a half-width, and the picture that stands for the sign.
  await press('.sign-keys button, .sign-keys label', engine.signs['right-higher']);
  expect(unmarked(await reads('.bench-headline', ui.verdict.beyond))).toContain('2 teeth');
  // Typeset formulas have a size of their own; on a wide screen they stand open.
  const typeset =
    'return [...document.querySelectorAll(".working math")].some((one) => one.getBoundingClientRect().height > 8)';
  if ((await driver.now(typeset)) !== true) await press('summary', sheet.folds.workings);
  await driver.until('a typeset formula', typeset);
  await press('.bench button', sheet.keeper.keep);
  await reads('.bench', 'Saved on Left bench');
  await driver.until('a worker in charge', 'return navigator.serviceWorker.controller?.state === "activated"');
  killServer();
  await expect(fetch(url)).rejects.toThrow();
  await driver.refresh();
  // Nothing was entered since it was kept: the old reading stands beside the empty field.
  expect(await reads('.field-earlier', '0.750')).toContain('0.750');
  await driver.go(`${url}#/machines`);
  await press('main a', 'Left bench');
  await press('main a', `${list.title}:`);
  await reads('main', '2 teeth');
  expect(await reads('.reading-values', 'Height of one tooth')).toContain('0.4');
}

for (const name of ENGINES) {
  test(`the main job runs in ${name}, offline too`, async ({}, info) => {
    const open = findEngine(name);
    if (!open) tried(name, 'not to be had here');
    test.skip(!open, `${name} is neither here nor can it be installed: nothing is known of it from this run.`);
    const port = Number(process.env.PORT ?? 4174) + 200 + 10 * info.workerIndex;
    const server = await host(port);
    const opened = await open!(port + 1);
    try {
      tried(name, opened.version);
      await mainJob(opened.driver, server.url, () => server.process.kill());
    } catch (error) {
      await info.attach('screen', { body: await opened.driver.screenshot(), contentType: 'image/png' });
      throw error;
    } finally {
      opened.end();
      server.process.kill();
    }
  });
}
