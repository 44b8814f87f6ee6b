// Runs diagnosis.ts in plain Node: the diagnosis needs no browser. `node test/bench/diagnosis.mjs [cases of each symptom]`
import { runnerImport } from 'vite';

await runnerImport('./test/bench/diagnosis.ts', { logLevel: 'error' });
