// What the phone's eye makes of photographs by ray casting. Bundled as the app is, then run.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { table, writeMeasured } from './measured.mjs';

const folder = mkdtempSync(join(tmpdir(), 'trammel-eye-'));
await build({
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  build: {
    ssr: 'test/bench/eye.ts',
    outDir: folder,
    emptyOutDir: false,
    target: 'node20',
    rollupOptions: { output: { entryFileNames: 'eye.mjs' } },
  },
  ssr: { noExternal: true },
});
const { rows } = await import(pathToFileURL(join(folder, 'eye.mjs')).href);
rmSync(folder, { recursive: true });
// A shorter run is printed and not written down.
const isWhole = process.env.TRIALS === undefined && process.env.CELLS === undefined;
if (isWhole || process.env.MEASURED_FILE) {
  const head = ['cell', 'heard', 'wrong', 'refused', 'inside ±', 'error, ± (median)', 'reasons'];
  await writeMeasured('eye', 'npm run bench:eye', table(head, rows));
}
