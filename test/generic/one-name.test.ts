import { describe, expect, it } from 'vitest';
import { longestSentences, shownTexts, wordsFiles } from '../support/words';
import { otherNames, things } from '../support/one-name';

/** Rooms that still say it otherwise: this list shrinks to nothing. */
const NOT_YET: readonly string[] = [];

const texts = shownTexts().filter(({ file }) => NOT_YET.every((room) => !file.startsWith(room)));

describe('one name for one thing', () => {
  it('is read from every words file there is', () => {
    const read = new Set(shownTexts().map(({ file }) => file));
    const without = wordsFiles().filter((file) => !read.has(file));
    // Words of danger are read, not shown; the others gather parts or help to put a sentence together.
    expect(without.sort()).toEqual(['src/diagnosis/catalogue/words/en.ts', 'src/diagnosis/words/en/danger.ts']);
    expect(texts.length).toBeGreaterThan(5000);
  });

  it('finds a word in each of its forms, and only as a word', () => {
    expect(otherNames('Pull the strands apart.').map(({ found }) => found)).toEqual(['strands']);
    expect(otherNames('Work it out, and leave the leaflet.')).toEqual([]);
    expect(otherNames('It hangs on the width; save it to a file.').map(({ name }) => name)).toEqual(['depends on']);
    for (const { name } of things) expect(otherNames(name), `${name} is itself another name`).toEqual([]);
  });

  it('holds in every text that a person sees', () => {
    const wrong = texts.flatMap(({ file, line, key, text }) =>
      otherNames(text).map(({ found, name }) => `${file}:${line} ${key}: “${found}” (say: ${name}) in “${text}”`),
    );
    expect(wrong).toEqual([]);
  });

  it('keeps what is read before the first reading short: no sentence over 22 words', () => {
    const long = longestSentences(20).filter(({ words }) => words > 22);
    expect(long.map(({ words, where, sentence }) => `${words} words, ${where}: ${sentence}`)).toEqual([]);
  });
});
