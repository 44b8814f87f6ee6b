// The note of a plucked belt against made-up plucks and against other methods. Bundled as the app is, then run.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

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
await import(pathToFileURL(join(folder, 'note.mjs')).href);
rmSync(folder, { recursive: true });
