import { readFileSync } from 'node:fs';
import { defineConfig, type Plugin } from 'vite';
import solid from 'vite-plugin-solid';
import { VitePWA } from 'vite-plugin-pwa';
import { language, outDir } from './build/chosen.ts';
import { languagePlugins, wordsFor } from './build/language.ts';
import type shellWords from './src/app/shell/words/en.ts';

const say = await wordsFor<typeof shellWords>('src/app/shell/words/en.ts', language);

const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
].join('; ');

/** Puts the policy into the built page only: the development server needs inline styles. */
const contentSecurityPolicy: Plugin = {
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
  ],
};

/** What the page says before and without its script. */
const wordsOfThePage: Plugin = {
  name: 'words-of-the-page',
  transformIndexHtml: (html) =>
    html.replace('{{description}}', say.page.description).replace('{{noScript}}', say.page.noScript),
};

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly version: string };

export default defineConfig({
  define: { __TRAMMEL_VERSION__: JSON.stringify(version) },
  // Relative addresses: the same build serves from a domain's root and from any folder below it.
  base: './',
  plugins: [
    ...languagePlugins(language),
    solid(),
    wordsOfThePage,
    contentSecurityPolicy,
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
        background_color: '#f4efe2',
        theme_color: '#f4efe2',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,webmanifest}'],
        cleanupOutdatedCaches: true,
        clientsClaim: true,
      },
    }),
  ],
  worker: { plugins: () => languagePlugins(language) },
  build: { outDir, target: 'es2022', modulePreload: { polyfill: false } },
});
