import { RuleTester } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, it } from 'vitest';
import shortFunctions from '../../build/length-rule.js';

RuleTester.describe = describe;
RuleTester.it = it;

const tester = new RuleTester({
  languageOptions: { parser: tseslint.parser, parserOptions: { ecmaFeatures: { jsx: true } } },
});

/** A function of so many lines, its own two among them, with blank ones and comments between. */
const ofLines = (head: string, lines: number): string =>
  [
    head,
    '',
    '  // Why.',
    '  /* and',
    '   * why */',
    ...Array.from({ length: lines - 2 }, (_, i) => `  go(${i});`),
    '}',
  ].join('\n');

const fault = (code: string, filename: string, name: string, lines: number, most: number) => ({
  code,
  filename,
  errors: [{ messageId: 'long', data: { name, lines, most } }],
});

tester.run('short functions', shortFunctions, {
  valid: [
    { code: ofLines('function work() {', 60), filename: 'work.ts' },
    { code: ofLines('const work = () => {', 60), filename: 'work.ts' },
    { code: ofLines('export function Sheet() {', 120), filename: 'sheet.tsx' },
    { code: ofLines('export function createBench() {', 120), filename: 'bench.ts' },
  ],
  invalid: [
    fault(ofLines('function work() {', 61), 'work.ts', 'work', 61, 60),
    fault(ofLines('const work = () => {', 61), 'work.ts', 'work', 61, 60),
    fault(ofLines('run(() => {', 61).concat(');'), 'work.ts', 'This function', 61, 60),
    fault(ofLines('const Sheet = () => {', 121), 'sheet.tsx', 'Sheet', 121, 120),
    fault(ofLines('function help() {', 61), 'sheet.tsx', 'help', 61, 60),
    fault(ofLines('function Sheet() {', 61), 'sheet.ts', 'Sheet', 61, 60),
    fault(ofLines('function createBench() {', 121), 'bench.ts', 'createBench', 121, 120),
  ],
});
