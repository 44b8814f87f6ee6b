import { defineConfig } from 'vitest/config';
import type { Plugin } from 'vite';
import solid from 'vite-plugin-solid';
import { language } from './build/chosen.ts';
import { languagePlugins } from './build/language.ts';

const SLOW = ['test/slow/**/*.test.ts', '**/*.slow.test.ts'];

const shared = {
  environment: 'node',
  setupFiles: 'test/support/setup.ts',
  // Nothing here leaves anything behind in a module, so the calculators are read once a worker and not once a file.
  isolate: false,
  pool: 'threads',
  // No test is held to a time: this only ends one that never would.
  testTimeout: 900_000,
} as const;

export const fast = {
  ...shared,
  name: 'fast',
  include: ['test/{unit,outside,generic,sweep}/**/*.test.ts', 'src/**/*.test.ts'],
  exclude: SLOW,
  // What is written is written whole.
  env: { SWEEP: process.argv.some((one) => one === '-u' || one === '--update') ? 'whole' : 'part' },
};

const slow = {
  ...shared,
  name: 'slow',
  // All tests, so that nothing that `fast` draws a part of is left out.
  include: ['test/**/*.test.ts', 'src/**/*.test.ts'],
  exclude: ['node_modules/**'],
  env: { SWEEP: 'whole' },
};

/** What a file finds by `import.meta.glob` changes with the folders, not with itself: it is read anew each time. */
const globsAnew: Plugin = {
  name: 'trammel:globs-anew',
  configureVitest: ({ experimental_defineCacheKeyGenerator: keep }) => {
    keep(({ sourceCode }) => (sourceCode.includes('import.meta.glob') ? false : undefined));
  },
};

export default defineConfig({
  define: { __TRAMMEL_VERSION__: JSON.stringify('test') },
  plugins: [...languagePlugins(language), solid(), globsAnew],
  test: {
    environment: 'node',
    // By itself it leaves a core idle, which is half of a small machine.
    maxWorkers: '100%',
    // What has been made ready of a file is kept until it changes.
    experimental: { fsModuleCache: true },
    projects: [
      { extends: true, test: fast },
      { extends: true, test: slow },
    ],
  },
});
