// Writes src/ui/faces/: the app's two faces, cut down to what it prints. `npm run faces`, after a package or WHAT has changed.
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import subset from 'subset-font';

const { resolve } = createRequire(import.meta.url);
const ASCII = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at)).join('');
/** What is not here (Greek, mathematics, letters of a machine's name in another tongue) comes from the system. */
export const WHAT = `${ASCII}–—‘’“”…×÷±°§·½¼¾µ−≤≥`;

const FACES = [
  ['@fontsource/besley', 'besley', 800],
  ['@fontsource/barlow-semi-condensed', 'barlow-semi-condensed', 500],
  ['@fontsource/barlow-semi-condensed', 'barlow-semi-condensed', 700],
];

/** @returns {Promise<{ name: string, bytes: Buffer }[]>} woff2 */
export const faces = () =>
  Promise.all(
    FACES.map(async ([from, name, weight]) => {
      const folder = dirname(resolve(`${from}/package.json`));
      const whole = readFileSync(join(folder, 'files', `${name}-latin-${weight}-normal.woff2`));
      const bytes = await subset(whole, WHAT, {
        targetFormat: 'woff2',
        keepFeatures: ['kern', 'tnum', 'lnum'],
        noHinting: true,
      });
      return { name: `${name}-${weight}.woff2`, bytes };
    }),
  );

if (process.argv[1] === import.meta.filename) {
  for (const { name, bytes } of await faces()) {
    writeFileSync(join('src/ui/faces', name), bytes);
    process.stdout.write(`${name}: ${bytes.length} bytes\n`);
  }
}
