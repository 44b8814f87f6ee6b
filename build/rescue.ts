import { createHash } from 'node:crypto';
import { build, type Plugin } from 'vite';
import { language } from './chosen.ts';
import { policy } from './headers.js';
import { languagePlugins } from './language.ts';

let made: Promise<string> | undefined;

/** The rescue as one script that needs no other file. */
async function makeScript(): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    plugins: languagePlugins(language),
    build: {
      write: false,
      // Older than what the app asks for: it is to say so where the app's own script is not understood.
      target: 'es2018',
      lib: { entry: 'src/rescue/start.ts', formats: ['iife'], name: 'rescue' },
    },
  });
  const [output] = Array.isArray(result) ? result : [result];
  const chunk = 'output' in output ? output.output[0] : undefined;
  if (!chunk) throw new Error('the rescue was not built');
  return chunk.code.trim().replaceAll('</script', '<\\/script');
}

const script = (): Promise<string> => (made ??= makeScript());

const policyFor = (code: string): string => policy(`sha256-${createHash('sha256').update(code).digest('base64')}`);

/** Puts the policy and the rescue into the built page; the development server needs inline styles and has no use for a rescue. */
export const rescueInPage: Plugin = {
  name: 'rescue-in-page',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: async (html) => {
      const code = await script();
      const policyTag = {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: policyFor(code) },
        injectTo: 'head-prepend',
      } as const;
      // Before the styles, which a script behind them would wait for; behind the charset, which stands in the first kilobyte.
      return { html: html.replace('<title>', () => `<script>${code}</script>\n    <title>`), tags: [policyTag] };
    },
  },
};

const PAGE = 'virtual:rescue-page';

/** `virtual:rescue-page`: a page of nothing but the rescue, for the worker to show where it has no other. */
export const rescuePage: Plugin = {
  name: 'rescue-page',
  resolveId: (id) => (id === PAGE ? `\0${PAGE}` : null),
  load: async (id) => {
    if (id !== `\0${PAGE}`) return null;
    const code = await script();
    const page = [
      `<!doctype html><html lang="${language}"><head><meta charset="utf-8">`,
      `<meta http-equiv="Content-Security-Policy" content="${policyFor(code)}">`,
      '<meta name="viewport" content="width=device-width, initial-scale=1"><title>Trammel</title></head>',
      `<body><div id="app"></div><script>${code}</script></body></html>`,
    ].join('');
    return `export default ${JSON.stringify(page)};`;
  },
};
