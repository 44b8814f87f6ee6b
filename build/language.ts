import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { runnerImport, type Plugin } from 'vite';
import { HOME } from './chosen.ts';
import { rewriteWords } from './pseudo.ts';
import type { Style } from './strange.ts';

/** Folders below `root` that hold English words and no file of words in `wanted`, as paths from `root`. */
function foldersWithout(wanted: string, root: string): readonly string[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((path) => /(^|\/)words\/en\.ts$/.test(path.replaceAll('\\', '/')))
    .map((path) => dirname(path))
    .filter((folder) => !existsSync(join(root, folder, `${wanted}.ts`)))
    .sort();
}

const WORDS_IMPORT = /\/words\/en(\.ts)?$/;
const WORDS_FILE = /\/words\/en(\/.+)?\.ts$/;

/** Every import of `…/words/en` gets the file of `wanted` beside it. */
const swapWords = (wanted: string): Plugin => ({
  name: 'words-of-one-language',
  enforce: 'pre',
  configResolved({ root }) {
    const source = join(root, 'src');
    const missing = foldersWithout(wanted, source).map((folder) => relative(root, join(source, folder)));
    if (missing.length > 0) {
      throw new Error(`TRAMMEL_LANGUAGE=${wanted}: no ${wanted}.ts beside en.ts in ${missing.join(', ')}`);
    }
  },
  resolveId(source, importer) {
    if (!WORDS_IMPORT.test(source)) return null;
    return this.resolve(source.replace(WORDS_IMPORT, `/words/${wanted}.ts`), importer, { skipSelf: true });
  },
});

const strangeWords = (style: Style): Plugin => ({
  name: 'words-made-strange',
  enforce: 'pre',
  transform(code, id) {
    const [file = id] = id.split('?');
    return WORDS_FILE.test(file) ? { code: rewriteWords(code, file, style), map: null } : null;
  },
});

const pageLanguage = (tag: string): Plugin => ({
  name: 'language-of-the-page',
  transformIndexHtml: (html) => html.replace('<html lang="en">', `<html lang="${tag}">`),
});

/** What a build in `chosen` needs: nothing for English. */
export function languagePlugins(chosen: string): Plugin[] {
  if (chosen === HOME) return [];
  if (chosen === 'marked') return [strangeWords(chosen)];
  if (chosen === 'pseudo') return [strangeWords(chosen), pageLanguage('en-x-pseudo')];
  if (!/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(chosen)) {
    throw new Error(`TRAMMEL_LANGUAGE=${chosen} is not the tag of a language, such as "de" or "pt-BR"`);
  }
  return [swapWords(chosen), pageLanguage(chosen)];
}

/** The words of one file as a build in `chosen` holds them: for what the build itself writes, the page's head and its manifest. */
export async function wordsFor<T>(file: string, chosen: string, root = process.cwd()): Promise<T> {
  const inline = { root, configFile: false, logLevel: 'error', plugins: languagePlugins(chosen) } as const;
  const { module } = await runnerImport<{ readonly default: T }>(join(root, file), inline);
  return module.default;
}
