// Real plucked strings with known notes: Debian's freepats (nylon, steel, jazz and clean guitars, a harp), each labelled
// with the frequency it sounds at in its patch header. Strings above 500 Hz are left out: beyond the belt's range.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { estimateNote } from '../../src/signal/note';
import { readPatch, type Recorded } from '../support/patch';

const PATCHES = ['024_Nylon_Guitar', '025_Steel_Guitar', '026_Jazz_Guitar', '027_Clean_Electric_Guitar', '046_Harp'];
const got = spawnSync('node', ['test/outside/fetch-strings.mjs'], { timeout: 50_000 });
const folder = got.status === 0 ? got.stdout.toString() : undefined;
if (!folder) console.log(`SKIPPED: real strings: ${got.stderr.toString() || 'out of time'}`);

/** One second from where the sound first reaches a tenth of its height. */
function fromOnset({ samples, rate }: Recorded): Float32Array {
  const first = samples.subarray(0, rate);
  const height = first.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const onset = first.findIndex((x) => Math.abs(x) >= height / 10);
  return samples.slice(onset, onset + rate);
}

test.skipIf(!folder)('every recorded string is named, and within 15 cents of its label', () => {
  const strings = PATCHES.flatMap((patch) =>
    readPatch(join(folder!, `${patch}.pat`)).map((recorded) => ({ patch, ...recorded })),
  ).filter(({ root }) => root <= 500);
  expect(strings.length).toBeGreaterThanOrEqual(20);
  const off = strings.map((string) => {
    const note = estimateNote(fromOnset(string), string.rate);
    const cents = note.status === 'found' ? 1200 * Math.log2(note.frequency / string.root) : NaN;
    return { string: `${string.patch} ${string.root} Hz`, cents };
  });
  const worst = Math.max(...off.map(({ cents }) => Math.abs(cents)));
  console.log(`real strings: ${strings.length} named, farthest ${worst.toFixed(1)} cents from its label`);
  for (const { string, cents } of off) expect(Math.abs(cents), string).toBeLessThan(15);
});
