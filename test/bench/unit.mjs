// How long the fast tests take: twice, the first time to make every file ready; the second is written into DEVELOPERS.md. Meant
// for a machine with nothing else to do.
import { spawnSync } from 'node:child_process';
import { table, writeMeasured } from './measured.mjs';

const COMMAND = 'npx --no-install vitest run --project fast --reporter=dot > /dev/null';

function timed() {
  const { stderr, status } = spawnSync('bash', ['-c', `TIMEFORMAT='%R %U'; time ${COMMAND}`], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the fast tests fail:\n${stderr}`);
  return stderr.trim().split('\n').at(-1).split(' ').map(Number);
}

timed();
const [wall, user] = timed();
const seconds = (one) => `${one.toFixed(1)} s`;
process.stdout.write(`npm run unit: ${seconds(wall)}, ${seconds(user)} of processor\n`);
await writeMeasured('unit', 'npm run bench:unit', table(['what', 'time'], [['npm run unit', seconds(wall)], ['of processor', seconds(user)]])); // prettier-ignore
