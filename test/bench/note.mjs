// The ear: a feeder's ticks, then the note of a plucked belt: the whole listener on physical strings, then the estimator on made-up plucks; both beside other
// methods. Bundled as the app is, then run. `npm run bench:note -- 40` takes 40 plucks a cell; MINUTES=10 stops earlier.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { table, writeMeasured } from './measured.mjs';

const [count, part] = process.argv.slice(2);
if (count !== undefined) process.env.COUNT = count;
const folder = mkdtempSync(join(tmpdir(), 'trammel-note-'));

async function run(name) {
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      ssr: `test/bench/${name}.ts`,
      outDir: folder,
      emptyOutDir: false,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
    ssr: { noExternal: true },
  });
  return import(pathToFileURL(join(folder, `${name}.mjs`)).href);
}

const HEAD = ['sound', 'heard', 'wrong', 'refused', 'inside ±', 'two published', 'methods: wrong'];
const TICK_HEAD = ['sound', 'ticks', 'missed', 'added', 'counts inside ±', 'mean ±'];
const ear = await run('ear');
// A shorter run is printed and not written down.
if (ear.count >= 40) {
  await writeMeasured(
    'note',
    `npm run bench:note -- ${ear.count}`,
    `${ear.count} plucks a cell, 95 % intervals in brackets. ${ear.clipsLine} ${ear.noteLine} ${ear.reasonsLine} ${ear.notMet}\n\n${table(HEAD, ear.rows)}`,
  );
  await writeMeasured(
    'ticks',
    `npm run bench:note -- ${ear.count}`,
    `${ear.tickings} sounds of 12 s a line.\n\n${table(TICK_HEAD, ear.tickRows)}`,
  );
}
if (part !== 'ear') await run('note');
rmSync(folder, { recursive: true });
