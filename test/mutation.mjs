// Puts faults into the code and tells what share of them the fast tests see (Stryker). A whole run takes many hours.
//   npm run mutation -- --sample 200            faults spread over all rooms, the same ones every time
//   npm run mutation -- --sample 40 --seed 7    others
//   npm run mutation -- --mutate src/formula/solve.ts,src/quantity/*.ts
// Faults in what is worked out once, when a file is read, are left out: each would need every test. Texts are not emptied:
// ids are held by the types, words are in files of their own.
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, rmSync, mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';

const REPORT = 'reports/mutation/mutation.json';
const CHOSEN = 'reports/mutation/sample.json';
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

/** Stretches of code by the seed, rooms in turn: `file:line-line`. */
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
  const queues = [...rooms.keys()].sort().map((room) => rooms.get(room).sort((a, b) => (a.rank < b.rank ? -1 : 1)));
  const found = [];
  for (let turn = 0; found.length < wanted && queues.some((queue) => queue[turn]); turn += 1)
    for (const queue of queues) if (queue[turn]) found.push(queue[turn].range);
  return found;
}

const { values } = parseArgs({
  options: {
    sample: { type: 'string' },
    seed: { type: 'string', default: '1' },
    mutate: { type: 'string' },
    concurrency: { type: 'string' },
  },
});
const count = values.sample === undefined ? undefined : Number(values.sample);
if (count !== undefined && !(count > 0)) throw new Error(`--sample ${values.sample}: give a number above zero`);

mkdirSync('reports/mutation', { recursive: true });
for (const file of [REPORT, CHOSEN]) rmSync(file, { force: true });
const args = ['--no-install', 'stryker', 'run', 'stryker.config.json', '--checkers', 'sample'];
const where = values.mutate ?? (count === undefined ? mutated() : stretches(SPARE * count, values.seed)).join(',');
args.push('--mutate', where);
if (values.concurrency !== undefined) args.push('--concurrency', values.concurrency);
const { status } = spawnSync('npx', args, {
  stdio: 'inherit',
  env: {
    ...process.env,
    MUTATION_CHOSEN: resolve(CHOSEN),
    MUTATION_SEED: values.seed,
    ...(count === undefined ? {} : { MUTATION_SAMPLE: String(count) }),
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
process.stdout.write(
  `mutation: ${seen.length} of ${tried.length} faults seen, ${share.toFixed(1)} % (95 % interval ${low} to ${high}); at least ${LEAST} % are wanted\n`,
);
process.exitCode = share < LEAST ? 1 : 0;
