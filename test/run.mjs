// Runs every check in turn, goes on after a failure so that one run reports all, and ends with the closing lines.
// `node test/run.mjs lint unit` runs those only.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';

const REPORTS = 'test-results';
rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });

const vitest = (project) =>
  `vitest run --project ${project} --reporter=default --reporter=json --outputFile.json=${REPORTS}/${project}.json`;

const steps = [
  ['types', 'tsc --noEmit'],
  ['lint', 'eslint . --max-warnings 0'],
  ['format', 'prettier --check --log-level warn .'],
  ['imports', 'depcruise src --config .dependency-cruiser.cjs'],
  ['unused', 'knip'],
  ['unit', vitest('fast')],
  ['slow', vitest('slow')],
  ['build', 'vite build --logLevel warn'],
  ['size', 'node test/size.mjs'],
  ['browser', 'playwright test'],
];

const only = process.argv.slice(2);
const unknown = only.filter((name) => !steps.some(([step]) => step === name));
if (unknown.length > 0) {
  process.stderr.write(`No such step: ${unknown.join(', ')}. There are: ${steps.map(([name]) => name).join(', ')}\n`);
  process.exit(1);
}
const failed = [];
for (const [name, command] of steps) {
  if (only.length > 0 && !only.includes(name)) continue;
  process.stdout.write(`\n== ${name}: ${command}\n`);
  const { status } = spawnSync(`npx --no-install ${command}`, { shell: true, stdio: 'inherit' });
  if (status !== 0) failed.push(name);
}

function closingLine(name, file, count) {
  if (!existsSync(file)) return;
  const [passed, bad, skipped] = count(JSON.parse(readFileSync(file, 'utf8')));
  const rest = skipped > 0 ? `, ${skipped} skipped` : '';
  process.stdout.write(`${name}: ${passed} passed, ${bad} failed${rest}\n`);
}

const ofVitest = (r) => [r.numPassedTests, r.numFailedTests, r.numPendingTests];

process.stdout.write('\n');
closingLine('unit', `${REPORTS}/fast.json`, ofVitest);
closingLine('slow', `${REPORTS}/slow.json`, ofVitest);
closingLine('browser', `${REPORTS}/browser.json`, ({ stats }) => [
  stats.expected,
  stats.unexpected + stats.flaky,
  stats.skipped,
]);
if (existsSync(`${REPORTS}/engines`)) {
  const others = readdirSync(`${REPORTS}/engines`).map((file) => {
    const found = readFileSync(`${REPORTS}/engines/${file}`, 'utf8').trim();
    return `${file.replace('.txt', '')} (main job: ${found})`;
  });
  process.stdout.write(`Engines tried: Chromium (all browser tests), ${others.join(', ')}\n`);
}
if (failed.length > 0) process.stdout.write(`Failed: ${failed.join(', ')}\n`);
process.exitCode = failed.length > 0 ? 1 : 0;
