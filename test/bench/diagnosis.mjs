// Runs diagnosis.ts in plain Node: the diagnosis needs no browser. `node test/bench/diagnosis.mjs [cases of each symptom]`;
// a run of another length than the usual one is printed and not written down.
import { runnerImport } from 'vite';
import { table, writeMeasured } from './measured.mjs';

const { module } = await runnerImport('./test/bench/diagnosis.ts', { logLevel: 'error' });
if (process.argv[2] === undefined || process.env.MEASURED_FILE !== undefined) {
  const body = module.measured.map(({ title, head, rows }) => `${title}\n\n${table(head, rows)}`).join('\n\n');
  await writeMeasured('diagnosis', 'node test/bench/diagnosis.mjs', body);
}
