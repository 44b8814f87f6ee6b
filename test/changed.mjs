// What a change touches, quickly: types, lint and format of the files that differ from where this branch left main (and of
// those not committed yet), and the fast tests that import any of them. `npm run changed -- COMMIT` compares with another.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const git = (...args) => execFileSync('git', args, { encoding: 'utf8' }).trim();
const lines = (text) => text.split('\n').filter((line) => line !== '');

const base = process.argv[2] ?? git('merge-base', 'HEAD', 'main');
const changed = [
  ...new Set([...lines(git('diff', '--name-only', base)), ...lines(git('ls-files', '--others', '--exclude-standard'))]),
].filter((file) => existsSync(file));
if (changed.length === 0) {
  process.stdout.write(`Nothing differs from ${base.slice(0, 7)}.\n`);
  process.exit();
}
const code = changed.filter((file) => /\.(ts|tsx|js|mjs|cjs)$/.test(file));

/** The one calculator whose folder holds all that changed: then its tests suffice, and the generic ones for it alone. */
const folders = new Set(changed.map((file) => /^src\/calculators\/([^/]+)\//.exec(file)?.[1]));
const [id] = folders.size === 1 ? folders : [];

const steps = [
  ['types', 'tsc', ['--noEmit', '--incremental', '--tsBuildInfoFile', 'node_modules/.cache/changed.tsbuildinfo']],
  ...(code.length > 0 ? [['lint', 'eslint', ['--max-warnings', '0', '--no-warn-ignored', ...code]]] : []),
  ['format', 'prettier', ['--check', '--ignore-unknown', '--log-level', 'warn', ...changed]],
  id === undefined
    ? ['unit', 'vitest', ['run', '--project', 'fast', '--reporter=dot', '--changed', base]]
    : ['unit', 'node', ['test/calculator.mjs', id]],
];
const failed = [];
for (const [name, command, args] of steps) {
  process.stdout.write(`\n== ${name}\n`);
  const [run, rest] = command === 'node' ? ['node', args] : ['npx', ['--no-install', command, ...args]];
  if (spawnSync(run, rest, { stdio: 'inherit' }).status !== 0) failed.push(name);
}
process.stdout.write(failed.length > 0 ? `\nFailed: ${failed.join(', ')}\n` : `\n${changed.length} files, all good.\n`);
process.exitCode = failed.length > 0 ? 1 : 0;
