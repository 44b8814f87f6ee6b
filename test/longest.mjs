// The longest sentences that a person meets before the first reading: `npm run longest`, or with how many to show.
import { runnerImport } from 'vite';

const { module } = await runnerImport('./test/support/words.ts', { logLevel: 'error' });
for (const { words, where, sentence } of module.longestSentences(Number(process.argv[2] ?? 20)))
  process.stdout.write(`${String(words).padStart(3)}  ${where}\n     ${sentence}\n`);
