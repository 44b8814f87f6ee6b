// The note of a plucked belt against made-up plucks and against other methods. Bundled as the app is, then run.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { table, writeMeasured } from './measured.mjs';

const folder = mkdtempSync(join(tmpdir(), 'trammel-note-'));
await build({
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  build: {
    ssr: 'test/bench/note.ts',
    outDir: folder,
    emptyOutDir: false,
    target: 'node20',
    rollupOptions: { output: { entryFileNames: 'note.mjs' } },
  },
  ssr: { noExternal: true },
});
const { rows } = await import(pathToFileURL(join(folder, 'note.mjs')).href);
rmSync(folder, { recursive: true });
// A shorter run is printed and not written down.
if (process.env.TRIALS === undefined || process.env.MEASURED_FILE !== undefined) {
  const head = [
    'sound',
    'wrong',
    'refused',
    'error, bound',
    'inside ±',
    'McLeod',
    'plain peak',
    'five harmonics',
    'aubio',
  ];
  await writeMeasured(
    'note',
    'npm run bench:note',
    table(
      head,
      rows.map((row) => [...row, ...head.slice(row.length).map(() => '')]),
    ),
  );
}
