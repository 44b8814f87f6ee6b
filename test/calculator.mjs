// The generic tests and a calculator's own, for that calculator alone: `npm run calculator -- screw-lead`.
// `npm run calculator -- screw-lead whole` tries every combination of its options and every sweep at its full length.
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';

const ROOT = 'src/calculators';
const ids = readdirSync(ROOT).filter((name) => statSync(`${ROOT}/${name}`).isDirectory());
const [id, how] = process.argv.slice(2);
if (!ids.includes(id) || (how !== undefined && how !== 'whole')) {
  process.stderr.write(`Name one of these, and perhaps “whole” after it: ${ids.join(', ')}\n`);
  process.exit(1);
}
const places = [
  'test/generic/',
  'test/sweep/every/',
  'test/outside/proofs',
  'test/unit/citations',
  `/${id}/`,
  `/${id}.test`,
];
const projects = ['fast', ...(how === 'whole' ? ['slow'] : [])].flatMap((name) => ['--project', name]);
const { status } = spawnSync('npx', ['--no-install', 'vitest', 'run', '--reporter=dot', ...projects, ...places], {
  stdio: 'inherit',
  env: { ...process.env, CALCULATOR: id },
});
process.exitCode = status ?? 1;
