import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig, type Plugin } from 'vite';
import solid from 'vite-plugin-solid';
import { VitePWA } from 'vite-plugin-pwa';
import { language, outDir } from './build/chosen.ts';
import { chunks } from './build/chunks.ts';
import { everywhere } from './build/headers.js';
import { languagePlugins, wordsFor } from './build/language.ts';
import { licences } from './build/licences.ts';
import { rescueInPage, rescuePage } from './build/rescue.ts';
import type shellWords from './src/app/shell/words/en.ts';

const say = await wordsFor<typeof shellWords>('src/app/shell/words/en.ts', language);

/** What the page says before and without its script. */
const wordsOfThePage: Plugin = {
  name: 'words-of-the-page',
  transformIndexHtml: (html) =>
    html.replace('{{description}}', say.page.description).replace('{{noScript}}', say.page.noScript),
};

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly version: string };

/** What a file of the build is known by to the worker. */
const hashOf = (url: string): string =>
  createHash('sha256')
    .update(readFileSync(join(outDir, url)))
    .digest('base64');

export default defineConfig({
  define: { __TRAMMEL_VERSION__: JSON.stringify(version) },
  // Relative addresses: the same build serves from a domain's root and from any folder below it.
  base: './',
  plugins: [
    ...languagePlugins(language),
    solid(),
    wordsOfThePage,
    rescueInPage,
    licences('page'),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Trammel',
        short_name: 'Trammel',
        description: say.page.description,
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#ffffff',
        theme_color: '#ffffff',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      strategies: 'injectManifest',
      srcDir: 'src/worker',
      filename: 'sw.ts',
      injectManifest: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,webmanifest}', 'licences.txt'],
        manifestTransforms: [
          (entries) => ({ manifest: entries.map((entry) => ({ ...entry, revision: null, hash: hashOf(entry.url) })) }),
        ],
        buildPlugins: { vite: [...languagePlugins(language), rescuePage] },
      },
    }),
  ],
  worker: { plugins: () => [...languagePlugins(language), licences('worker')] },
  preview: { headers: { ...everywhere } },
  build: {
    outDir,
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { codeSplitting: chunks } },
  },
});
