// For Stryker: lets a sample of the mutants through and passes over the rest, the same sample for the same seed: so many of
// each room (formula, each calculator…) as test/mutation.mjs says.
import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { relative } from 'node:path';

const QUOTA = process.env.MUTATION_QUOTA === undefined ? undefined : JSON.parse(process.env.MUTATION_QUOTA);
/** Where faults are written down as they are tried. */
const TRIED = process.env.MUTATION_TRIED;
const SEED = process.env.MUTATION_SEED ?? '1';
/** Chosen once and read by every process that checks. */
const CHOSEN = process.env.MUTATION_CHOSEN ?? '';

const roomOf = (file) => /src\/(calculators\/[^/]+|[^/]+)\//.exec(file)?.[1] ?? '';

/** A mutant's own number, which no other mutant and no order changes. */
function rank({ fileName, location: { start, end }, mutatorName, replacement }) {
  const file = relative(process.cwd(), fileName).replace(/^.*?(?=src\/)/, '');
  const own = [SEED, file, start.line, start.column, end.line, end.column, mutatorName, replacement];
  return createHash('sha256').update(own.join('\n')).digest('hex');
}

function choose(mutants) {
  const rooms = new Map();
  for (const mutant of mutants) {
    const room = roomOf(mutant.fileName);
    rooms.set(room, [...(rooms.get(room) ?? []), { id: mutant.id, rank: rank(mutant) }]);
  }
  return [...rooms].flatMap(([room, all]) =>
    all
      .sort((a, b) => (a.rank < b.rank ? -1 : 1))
      .slice(0, QUOTA?.[room] ?? all.length)
      .map(({ id }) => id),
  );
}

const sampleChecker = () => ({
  init: () => Promise.resolve(),
  group: (mutants) => {
    if (!existsSync(CHOSEN)) writeFileSync(CHOSEN, JSON.stringify(choose(mutants)));
    return Promise.resolve([mutants.map(({ id }) => id)]);
  },
  check: (mutants) => {
    const chosen = new Set(JSON.parse(readFileSync(CHOSEN, 'utf8')));
    const passed = { status: 'passed' };
    const left = { status: 'compileError', reason: 'not in the sample' };
    return Promise.resolve(Object.fromEntries(mutants.map(({ id }) => [id, chosen.has(id) ? passed : left])));
  },
});

/** Writes down each fault as it is tried: a run of an hour that is broken off is not lost. */
class Tried {
  onMutantTested({ fileName, location, mutatorName, replacement, status }) {
    if (status === 'CompileError' || TRIED === undefined) return;
    appendFileSync(TRIED, `${JSON.stringify({ file: fileName, location, mutatorName, replacement, status })}\n`);
  }
}

export const strykerPlugins = [
  { kind: 'Checker', name: 'sample', factory: sampleChecker },
  { kind: 'Reporter', name: 'tried', injectableClass: Tried },
];
