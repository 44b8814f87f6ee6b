import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { MARK } from '../../build/strange';
import { demoMachine, demoReadings } from './demo';
import { defaultSettings } from '../../src/machine/version';
import { allKinds } from '../../src/quantity/all-kinds';

/** What a page showed: a text, the element that holds it, and the address it stood under. */
export interface Seen {
  readonly text: string;
  readonly where: string;
  readonly route: string;
}

/** A text with the words in it that no words file gave. */
export interface Leftover extends Seen {
  readonly words: readonly string[];
}

const LETTER = '\\p{L}\\p{M}';
const alone = (pattern: string): string => `(?<![${LETTER}\\d])(?:${pattern})(?![${LETTER}\\d${MARK}])`;
const escape = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');

const LABELS = allKinds
  .flatMap((kind) => kind.units.map(({ label }) => label))
  // Of sound, whose level no check asks for.
  .concat('dB')
  .filter((label) => /\p{L}/u.test(label))
  .sort((a, b) => b.length - a.length);

/** Unit labels that are words of English as well: taken for units only after a number, or alone. */
const ALSO_WORDS = new Set(['in', 'turn', 'min', 'thou', 'rad', 'h', 'm', 's']);
const units = LABELS.map(escape).join('|');
const plainUnits = LABELS.filter((label) => !ALSO_WORDS.has(label)).map(escape);

const MONTHS = Array.from({ length: 12 }, (_, month) => new Date(2026, month, 1)).flatMap((day) =>
  (['short', 'long'] as const).map((month) => day.toLocaleDateString('en', { month })),
);
const month = `(?:${[...new Set(MONTHS)].join('|')})`;

const ALLOWED: readonly RegExp[] = [
  new RegExp(`(?<=[\\d)]\\s?)(?:${units})(?![${LETTER}${MARK}])`, 'gu'),
  new RegExp(`^\\s*\\(?(?:${units})\\)?\\s*$`, 'gu'),
  // "Accepted: mm, in or ft."
  new RegExp(`(?<=[:,] )(?:${units})(?=[, ])`, 'gu'),
  new RegExp(alone(plainUnits.join('|')), 'gu'),
  // Dates come from the browser, in its language.
  new RegExp(`${alone(month)}(?=[ ,.]*\\d)|(?<=\\d\\.? )${alone(month)}`, 'gu'),
  // What a file's field may hold, as the file writes it: "one of: point, comma."
  new RegExp(`(?<=of${MARK}: )[a-z ]+(?:, [a-z ]+)*(?=\\.)`, 'gu'),
  // Names of files.
  /[\w-]+\.(?:json|csv|txt|stl|3mf|png|jpe?g|wav)\b/gu,
  /\bTrammel\b/gu,
  // Symbols of formulas.
  /\b\p{L}+_\w+/gu,
  // Designations: M4, GT2, 3D, PLA.
  new RegExp(`[${LETTER}]*\\d[${LETTER}\\d]*`, 'gu'),
  new RegExp(alone('\\p{Lu}{1,4}'), 'gu'),
];

const RUNS = {
  marked: new RegExp(`[${LETTER}]{2,}(?![${LETTER}${MARK}])`, 'gu'),
  pseudo: /[A-Za-z]{3,}/g,
} as const;

const CITED = /\b(?:cite|memory)\(\s*(['"`])(.*?)\1|\bsource: (['"`])(.*?)\3/g;

/** Names of published works, which no language changes: read where they are cited. */
export const worksCited = (): readonly string[] =>
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts') && !/[\\/]words[\\/]/.test(path))
    .flatMap((path) => [...readFileSync(join('src', path), 'utf8').matchAll(CITED)])
    .map(([, , cited, , source]) => cited ?? source ?? '');

/** Names and notes of the demo machine: a person's words, not the app's. */
export const DEMO: readonly string[] = [demoMachine, ...demoReadings].flatMap((record) =>
  'name' in record ? [record.name, record.note] : [record.note],
);

/** Every name of a field in a value, however deep; a place's (`z.lead`) by its parts. */
const fieldsIn = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([name, part]) => [...name.split('.'), ...fieldsIn(part)])
    : [];

/** Names of fields, as a record that cannot be read is said to be bad “at” them: no language changes what stands in a file. */
const FIELDS = [...new Set([demoMachine, ...demoReadings, defaultSettings].flatMap(fieldsIn))].map(escape).join('|');
const bad = new RegExp(`“(?:${FIELDS}|\\d+)(?:\\.(?:${FIELDS}|\\d+))*”`, 'g');

/** Every string in a value, however deep: what a test gives the app to keep. */
export function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : [];
}

/** What the app may quote of a link: each name and value in it and each of their parts, in the app's quotation marks. */
export const quotable = (link: string): readonly string[] =>
  [...new URLSearchParams(link)].flat().flatMap((text) => [text, ...text.split(/[;.]/)].map((part) => `“${part}”`));

/** One pattern for all that people and tests wrote, the longest first, so that it is looked through once. */
function patternOf(given: Iterable<string>): RegExp | undefined {
  const worth = [...new Set([...given].map((text) => text.trim()))].filter((text) => /\p{L}{2}/u.test(text));
  if (worth.length === 0) return undefined;
  const longestFirst = worth.sort((a, b) => b.length - a.length).map((text) => escape(text).replace(/\s+/g, '\\s+'));
  return new RegExp(`(?<![${LETTER}])(?:${longestFirst.join('|')})(?![${LETTER}${MARK}])`, 'gu');
}

/** The least of a given text by which a cut one is known. */
const CUT_AT_LEAST = 8;

/** A text with the beginnings of what was given taken out where the app cut it short: "Town repair worksh…". */
function withoutCut(text: string, given: readonly string[]): string {
  return text.replace(/[^…]{8,}…/g, (stretch) => {
    const shown = stretch.slice(0, -1);
    const longest = Math.max(
      ...given.map((whole) => {
        for (let length = Math.min(whole.length - 1, shown.length); length >= CUT_AT_LEAST; length -= 1) {
          if (shown.endsWith(whole.slice(0, length))) return length;
        }
        return 0;
      }),
      0,
    );
    return longest > 0 ? `${shown.slice(0, -longest)} …` : stretch;
  });
}

/**
 * The texts that hold words from no words file.
 * @param given what the test or the demo wrote, and the app only repeats
 */
export function leftovers(seen: readonly Seen[], given: Iterable<string>, style: keyof typeof RUNS): Leftover[] {
  const all = [...given];
  const theirs = patternOf(all);
  return seen.flatMap((one) => {
    const named = one.text.replace(bad, ' ');
    const whole = named.includes('…') ? withoutCut(named, all) : named;
    const others = theirs ? whole.replace(theirs, ' ') : whole;
    const ours = ALLOWED.reduce((text, pattern) => text.replace(pattern, ' '), others);
    const words = ours.match(RUNS[style]) ?? [];
    return words.length > 0 ? [{ ...one, words }] : [];
  });
}
