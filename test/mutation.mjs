// Puts faults into the code and tells what share of them the tests see (Stryker): those of both projects, sweeps in part. A whole
// run takes many hours.
//   npm run mutation -- --sample 200            drawn over all rooms by their size, the same ones every time
//   npm run mutation -- --sample 40 --seed 7    others
//   npm run mutation -- --sample 200 --write    and puts the figures in DEVELOPERS.md
//   npm run mutation -- --mutate src/formula/solve.ts,src/quantity/*.ts
// Faults in what is worked out once, when a file is read, are left out: each would need every test. Texts are not emptied:
// ids are held by the types, words are in files of their own.
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { table, writeMeasured } from './bench/measured.mjs';

const REPORT = 'reports/mutation/mutation.json';
const CHOSEN = 'reports/mutation/sample.json';
const TRIED = 'reports/mutation/tried.jsonl';
/** The least share that the tests must see. */
const LEAST = JSON.parse(readFileSync('stryker.config.json', 'utf8')).thresholds.break;

/** What is put to the test: what is worked out and decided. No words, no data of the list, no views. */
const ROOMS = /^src\/(formula|quantity|signal|diagnosis|machine|engine|calculators\/[^/]+)\/.*\.ts$/;
const LEFT_OUT = /\/words\/|\.test\.ts$|\/(meta|examples|outside[^/]*|download)\.ts$|^src\/engine\/list\.ts$/;
/** A sample is drawn from stretches of so many lines: to make the whole code ready for faults slows every test down. */
const STRETCH = 4;
/** Stretches for each fault wanted: some hold none. */
const SPARE = 3;

const mutated = () =>
  execFileSync('git', ['ls-files', 'src'], { encoding: 'utf8' })
    .split('\n')
    .filter((file) => ROOMS.test(file) && !LEFT_OUT.test(file));

/** How many of `wanted` fall to each room by its size, at least one to each (largest remainders). */
function shares(rooms, wanted) {
  const total = rooms.reduce((sum, { size }) => sum + size, 0);
  const exact = rooms.map(({ name, size }) => ({ name, part: (wanted * size) / total }));
  const given = new Map(exact.map(({ name, part }) => [name, Math.max(1, Math.floor(part))]));
  const left = wanted - [...given.values()].reduce((sum, one) => sum + one, 0);
  const next = exact.toSorted((a, b) => (b.part % 1) - (a.part % 1)).slice(0, Math.max(0, left));
  for (const { name } of next) given.set(name, given.get(name) + 1);
  return given;
}

/** Stretches of code by the seed (`file:line-line`), and how many faults each room gives. */
function stretches(wanted, seed) {
  const rooms = new Map();
  for (const file of mutated()) {
    const lines = readFileSync(file, 'utf8').split('\n').length;
    const room = ROOMS.exec(file)[1];
    for (let line = 1; line <= lines; line += STRETCH) {
      const rank = createHash('sha256').update(`${seed} ${file} ${line}`).digest('hex');
      rooms.set(room, [...(rooms.get(room) ?? []), { rank, range: `${file}:${line}-${line + STRETCH - 1}` }]);
    }
  }
  const quota = shares(
    [...rooms].map(([name, all]) => ({ name, size: all.length })),
    wanted,
  );
  const ranges = [...rooms].flatMap(([name, all]) =>
    all
      .sort((a, b) => (a.rank < b.rank ? -1 : 1))
      .slice(0, SPARE * quota.get(name))
      .map(({ range }) => range),
  );
  return { ranges, quota };
}

const { values } = parseArgs({
  options: {
    sample: { type: 'string' },
    seed: { type: 'string', default: '1' },
    mutate: { type: 'string' },
    concurrency: { type: 'string' },
    write: { type: 'boolean', default: false },
  },
});
const count = values.sample === undefined ? undefined : Number(values.sample);
if (count !== undefined && !(count > 0)) throw new Error(`--sample ${values.sample}: give a number above zero`);

mkdirSync('reports/mutation', { recursive: true });
for (const file of [REPORT, CHOSEN, TRIED]) rmSync(file, { force: true });
const args = ['--no-install', 'stryker', 'run', 'stryker.config.json', '--checkers', 'sample'];
const drawn = count === undefined ? undefined : stretches(count, values.seed);
args.push('--mutate', values.mutate ?? (drawn?.ranges ?? mutated()).join(','));
if (values.concurrency !== undefined) args.push('--concurrency', values.concurrency);
const { status } = spawnSync('npx', args, {
  stdio: 'inherit',
  env: {
    ...process.env,
    MUTATION_CHOSEN: resolve(CHOSEN),
    MUTATION_TRIED: resolve(TRIED),
    MUTATION_SEED: values.seed,
    ...(drawn === undefined ? {} : { MUTATION_QUOTA: JSON.stringify(Object.fromEntries(drawn.quota)) }),
  },
});
if (!existsSync(REPORT)) process.exit(status ?? 1);

/** Wilson's interval of 95 % for a share (Wilson 1927). */
function wilson(hits, n) {
  const z = 1.96;
  const p = hits / n;
  const middle = (p + z ** 2 / (2 * n)) / (1 + z ** 2 / n);
  const reach = (z * Math.sqrt((p * (1 - p)) / n + z ** 2 / (4 * n ** 2))) / (1 + z ** 2 / n);
  return [middle - reach, middle + reach].map((share) => `${(100 * share).toFixed(0)} %`);
}

const { files } = JSON.parse(readFileSync(REPORT, 'utf8'));
const all = Object.entries(files).flatMap(([file, { source, mutants }]) =>
  mutants.map((mutant) => ({ file, source, ...mutant })),
);
const tried = all.filter(({ status }) => ['Killed', 'Timeout', 'Survived', 'NoCoverage'].includes(status));
const seen = tried.filter(({ status }) => status === 'Killed' || status === 'Timeout');
const unseen = tried.filter((one) => !seen.includes(one)).sort((a, b) => (a.file < b.file ? -1 : 1));

const text = ({ source, location: { start, end } }) => {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  lines[lines.length - 1] = lines.at(-1).slice(0, end.column - 1);
  lines[0] = lines[0].slice(start.column - 1);
  const whole = lines.join(' ').replace(/\s+/g, ' ');
  return whole.length > 100 ? `${whole.slice(0, 100)}…` : whole;
};
process.stdout.write('\n');
for (const one of unseen) {
  const where = `${one.file}:${one.location.start.line}:${one.location.start.column}`;
  const how = one.status === 'NoCoverage' ? 'run by no test' : 'seen by no test';
  process.stdout.write(`${where}  ${one.mutatorName}, ${how}\n  - ${text(one)}\n  + ${one.replacement ?? ''}\n`);
}
if (tried.length === 0) throw new Error('no fault was tried');
const [low, high] = wilson(seen.length, tried.length);
const share = (100 * seen.length) / tried.length;
const rows = [...new Set(tried.map(({ file }) => ROOMS.exec(file)[1]))].sort().map((room) => {
  const here = (all) => all.filter(({ file }) => ROOMS.exec(file)[1] === room).length;
  const [hits, of] = [here(seen), here(tried)];
  return [room, `${hits} of ${of}`, wilson(hits, of).join(' to ')];
});
process.stdout.write('\n');
for (const [room, hits, interval] of rows)
  process.stdout.write(`${room.padEnd(38)} ${hits.padStart(10)}   ${interval}\n`);
process.stdout.write(
  `mutation: ${seen.length} of ${tried.length} faults seen, ${share.toFixed(1)} % (95 % interval ${low} to ${high}); at least ${LEAST} % are wanted\n`,
);
process.exitCode = share < LEAST ? 1 : 0;
if (values.write) {
  const all = ['**all**', `${seen.length} of ${tried.length}, ${share.toFixed(1)} %`, `${low} to ${high}`];
  const how = `npm run mutation -- ${process.argv.slice(2).join(' ')}`;
  await writeMeasured('mutation', how, table(['room', 'faults seen', '95 % interval'], [...rows, all]));
}
