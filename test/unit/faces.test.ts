import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faces, WHAT } from '../../build/faces.mjs';
import { shownTexts } from '../support/words';

/** Left to the system's faces: Greek, raised and lowered figures, signs of mathematics, arrows and other marks. */
const OF_THE_SYSTEM = /[\p{Script=Greek}\p{So}\p{Sm}\p{No}\p{Lm}\p{Mn}\p{Zs}\p{Cf}]/u;

describe('the faces', () => {
  it('hold every letter that the app prints, but for what is left to the system', () => {
    const held = new Set(WHAT);
    const missing = shownTexts().flatMap(({ file, key, text }) =>
      Array.from(text.replaceAll('\n', ''))
        .filter((letter) => !held.has(letter) && !OF_THE_SYSTEM.test(letter))
        .map((letter) => `${letter} in ${file} ${key}: add it to WHAT in build/faces.mjs, then \`npm run faces\``),
    );
    expect(missing).toEqual([]);
  });

  it('are what `npm run faces` writes', async () => {
    for (const { name, bytes } of await faces()) {
      expect(readFileSync(`src/ui/faces/${name}`).equals(bytes), `${name}: run \`npm run faces\``).toBe(true);
    }
  });
});
