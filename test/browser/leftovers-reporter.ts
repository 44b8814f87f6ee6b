import type { Reporter, TestCase, TestResult } from '@playwright/test/reporter';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { MARK } from '../../build/strange';
import type { Leftover } from '../support/leftovers';
import { LEFTOVERS } from './words-watch';

interface Line {
  readonly text: string;
  readonly words: readonly string[];
  readonly where: string;
  readonly route: string;
  readonly tests: string[];
}

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.ts$|outside\.ts$|words\/en/.test(path))
  .map((path) => ({ room: join('src', dirname(path)), text: readFileSync(join('src', path), 'utf8') }));

/** The rooms that hold the longest stretch of a text between its numbers and marked words: where it likely comes from. */
function comesFrom(text: string): string {
  const stretches = text.split(new RegExp(`\\p{L}+${MARK}|[^\\p{L}\\p{P} ]+`, 'u')).map((part) => part.trim());
  const [longest = ''] = stretches.sort((a, b) => b.length - a.length);
  const rooms = new Set(sources.filter((source) => source.text.includes(longest)).map(({ room }) => room));
  return rooms.size === 0 ? 'unknown' : rooms.size > 2 ? 'many' : [...rooms].join(', ');
}

/** Writes what all tests of a run found of words that no words file gave, by where they likely come from. */
export default class LeftoversReporter implements Reporter {
  private readonly lines = new Map<string, Line>();
  private failedOtherwise = 0;

  onTestEnd(test: TestCase, { attachments, errors }: TestResult): void {
    if (errors.some(({ message }) => !message?.includes('Words from no words file'))) this.failedOtherwise += 1;
    for (const { name, body } of attachments) {
      if (name !== LEFTOVERS || !body) continue;
      for (const left of JSON.parse(body.toString()) as Leftover[]) {
        const sentence = left.text.replace(/\d+/g, '0');
        const line = this.lines.get(sentence) ?? { ...left, tests: [] };
        if (!line.tests.includes(test.title)) line.tests.push(test.title);
        this.lines.set(sentence, line);
      }
    }
  }

  onEnd(): void {
    const from: Record<string, Line[]> = {};
    for (const line of this.lines.values()) (from[comesFrom(line.text)] ??= []).push(line);
    const sorted = Object.fromEntries(Object.entries(from).sort(([, a], [, b]) => b.length - a.length));
    mkdirSync('test-results', { recursive: true });
    writeFileSync('test-results/leftovers.json', `${JSON.stringify(sorted, null, 2)}\n`);
    const counts = Object.entries(sorted).map(([room, lines]) => `${String(lines.length).padStart(5)}  ${room}\n`);
    process.stdout.write(
      `\nTexts with words from no words file: ${this.lines.size} (test-results/leftovers.json)\n${counts.join('')}` +
        `Tests that failed for another reason: ${this.failedOtherwise}\n`,
    );
  }
}
