import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { build } from 'vite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { languagePlugins, wordsFor } from '../../build/language';

let root = '';

function put(path: string, text: string): void {
  const file = join(root, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

/** The page and the code that a build in `language` makes of the files put. */
async function made(language: string): Promise<{ page: string; code: string }> {
  const result = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    plugins: languagePlugins(language),
    build: { write: false, minify: false, modulePreload: false },
  });
  const output = Array.isArray(result) ? result.flatMap((one) => one.output) : 'output' in result ? result.output : [];
  const page = output.find(({ fileName }) => fileName === 'index.html');
  return {
    page: page?.type === 'asset' ? String(page.source) : '',
    code: output.map((file) => (file.type === 'chunk' ? file.code : '')).join('\n'),
  };
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'language-'));
  put('index.html', '<html lang="en"><body><script type="module" src="/src/main.ts"></script></body></html>');
  put(
    'src/main.ts',
    `import say from './words/en';
     const rooms = import.meta.glob<{ default: string }>('./*/words/en.ts');
     document.title = say;
     for (const open of Object.values(rooms)) void open().then((room) => document.body.append(room.default));`,
  );
  put('src/words/en.ts', `export default 'the house';`);
  put('src/desk/words/en.ts', `import legs from './en/legs'; export default 'the desk' + legs;`);
  put('src/desk/words/en/legs.ts', `export default 'four legs';`);
});

afterEach(() => rmSync(root, { recursive: true }));

describe('a build in one language', () => {
  it('holds English as written when nothing else is asked for', async () => {
    const { page, code } = await made('en');
    expect(page).toContain('lang="en"');
    for (const words of ['the house', 'the desk', 'four legs']) expect(code).toContain(words);
  });

  it('takes the other file of each folder, also where folders are found by a pattern, and no English', async () => {
    put('src/words/de.ts', `export default 'das Haus';`);
    put('src/desk/words/de.ts', `export default 'der Tisch';`);
    const { page, code } = await made('de');
    expect(page).toContain('<html lang="de">');
    expect(code).toContain('das Haus');
    expect(code).toContain('der Tisch');
    expect(code).not.toMatch(/the house|the desk|four legs/);
  });

  it('names every folder that lacks the language', async () => {
    put('src/desk/words/de.ts', `export default 'der Tisch';`);
    put('src/lamp/words/en.ts', `export default 'the lamp';`);
    await expect(made('de')).rejects.toThrow('no de.ts beside en.ts in src/lamp/words, src/words');
  });

  it('marks English, gathered parts too', async () => {
    const { page, code } = await made('marked');
    expect(page).toContain('lang="en"');
    expect(code).toMatch(
      /the\u200B house\u200B[^]*four\u200B legs\u200B|four\u200B legs\u200B[^]*the\u200B house\u200B/,
    );
    expect(code).not.toMatch(/the house|the desk|four legs/);
  });

  it('makes English strange, page included', async () => {
    const { page, code } = await made('pseudo');
    expect(page).toContain('<html lang="en-x-pseudo">');
    expect(code).toContain('⟦ţĥé ĥöûšé');
  });

  it('writes the page’s head and manifest from the words of the same language', async () => {
    put('src/words/de.ts', `export default 'das Haus';`);
    put('src/desk/words/de.ts', `export default 'der Tisch';`);
    const head = (language: string) => wordsFor<string>('src/words/en.ts', language, root);
    expect(await head('en')).toBe('the house');
    expect(await head('de')).toBe('das Haus');
    expect(await head('marked')).toBe('the\u200B house\u200B');
    expect(await head('pseudo')).toContain('ţĥé');
  });

  it('refuses what is no tag of a language', () => {
    expect(() => languagePlugins('../de')).toThrow('is not the tag of a language');
  });
});
