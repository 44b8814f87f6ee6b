import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { textsIn, type FileText } from '../../build/texts';

/** A text that a person may see, and the file it stands in. */
export interface ShownText extends FileText {
  readonly file: string;
}

const ROOT = 'src';
const WORDS_FILE = /\/words\/en(\/.+)?\.ts$/;

/** Where a person's own words stand: what they say, what a search finds, what is read for danger. */
const IN_THEIR_WORDS = /(^|\.)(sayings|complaint|empty)(\.|$)/;
const READ_NOT_SHOWN = 'diagnosis/words/en/danger.ts';

/** Paths of all words files, of all rooms and checks. */
export const wordsFiles = (): readonly string[] =>
  readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
    .map((path) => join(ROOT, path).replaceAll('\\', '/'))
    .filter((path) => WORDS_FILE.test(path))
    .sort();

let shown: readonly ShownText[] | undefined;

/** All texts of the app in its own words, from all words files: read once. */
export const shownTexts = (): readonly ShownText[] =>
  (shown ??= wordsFiles()
    .filter((file) => !file.endsWith(READ_NOT_SHOWN))
    .flatMap((file) => textsIn(readFileSync(file, 'utf8'), file).map((text) => ({ ...text, file })))
    .filter(({ key }) => !IN_THEIR_WORDS.test(key)));

/** Met before a first reading is kept: the way in, a check's question, cautions and what it asks for, and a case's. */
const BEFORE_FIRST = [
  /^src\/app\/(shell|desk|sheet)\//,
  /^src\/app\/case\/words\/en\/door/,
  /^src\/ui\//,
  /^src\/engine\/words\/en\.ts:en\.(choices|places)/,
  /^src\/calculators\/[^/]+\/words\/en\/list\.ts/,
  /^src\/calculators\/[^/]+\/words\/en\.ts:en\.(inputs|choices|tables|cautions)/,
  /^src\/calculators\/[^/]+\/words\/en\/inputs\.ts/,
  /^src\/diagnosis\/catalogue\/words\/en\/(symptoms|facts|[a-z]+-inspections)/,
];

const sentences = (text: string): readonly string[] => text.split(/(?<=[.!?])\s+(?=[A-Z“])/u);
const wordsIn = (sentence: string): number => sentence.split(/\s+/u).filter((word) => /[\p{L}\d…]/u.test(word)).length;

/** The longest sentences a person meets before the first reading, longest first. */
export function longestSentences(
  most: number,
): readonly { readonly words: number; readonly where: string; readonly sentence: string }[] {
  return shownTexts()
    .filter(({ file, key, piece }) => !piece && BEFORE_FIRST.some((where) => where.test(`${file}:${key}`)))
    .flatMap(({ file, key, text }) =>
      sentences(text).map((sentence) => ({ words: wordsIn(sentence), where: `${file} ${key}`, sentence })),
    )
    .sort((a, b) => b.words - a.words)
    .slice(0, most);
}
