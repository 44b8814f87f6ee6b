import { defineConfig } from '@playwright/test';
import { language, outDir } from './build/chosen.ts';
import { isStyle } from './build/strange.ts';
import { findBrowser } from './test/browser/find-browser';

const PORT = Number(process.env.PORT ?? 4174);

export default defineConfig({
  testDir: 'test/browser',
  // A build in accented words is looked at, not worked: every other test finds things by their English words.
  ...(language === 'pseudo' ? { testMatch: 'pseudo.spec.ts' } : { testIgnore: 'pseudo.spec.ts' }),
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: 0,
  // No test is held to a time: these only end one that never would.
  timeout: 900_000,
  expect: { timeout: 60_000 },
  outputDir: 'test-results/browser',
  reporter: [
    ['list'],
    ['json', { outputFile: 'test-results/browser.json' }],
    ...(isStyle(language) ? ([['./test/browser/leftovers-reporter.ts']] as const) : []),
  ],
  use: {
    baseURL: `http://localhost:${PORT}/bench/`,
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    launchOptions: {
      ...findBrowser(),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `node test/browser/serve.mjs ${PORT} ${outDir}`,
    url: `http://localhost:${PORT}/bench/`,
    reuseExistingServer: false,
  },
});
