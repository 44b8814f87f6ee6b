import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** The name of the app is a word in every language. */
const NAME = 'Trammel';

const below = (folder: string, ends: RegExp): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => ends.test(path))
    .map((path) => join(folder, path));

/** What styles put on the page by themselves: strings, and attributes that no one reads through. */
const saidByStyles = (css: string): string[] =>
  [...css.replace(/\/\*.*?\*\//gs, '').matchAll(/(?<![\w-])content:([^;}]*)/g)]
    .map(([, value = '']) => value.trim())
    .filter(
      (value) =>
        value.includes('attr(') || [...value.matchAll(/"([^"]*)"|'([^']*)'/g)].some((one) => /\p{L}{2,}/u.test(one[0])),
    );

/** Text between tags, and in attributes that a person reads or hears, without what the build fills in. */
function saidByPage(html: string): string[] {
  const bare = html.replace(/<!--.*?-->|<(script|style)\b.*?<\/\1>/gs, '').replace(/\{\{\w+\}\}/g, '');
  const between = [...bare.matchAll(/>([^<]*)</g)].map(([, text = '']) => text);
  const spoken = [...bare.matchAll(/\s(?:title|alt|placeholder|label|aria-[\w-]+)="([^"]*)"/g)].map(
    ([, text = '']) => text,
  );
  const meta = [
    ...bare.matchAll(
      /<meta[^>]*name="(?:description|application-name|apple-mobile-web-app-title)"[^>]*content="([^"]*)"/g,
    ),
  ].map(([, text = '']) => text);
  return [...between, ...spoken, ...meta]
    .map((text) => text.trim())
    .filter((text) => /\p{L}{2,}/u.test(text) && text !== NAME);
}

describe('what no file of words gives', () => {
  it.each(below('src', /\.css$/))('%s puts no words on the page', (file) => {
    expect(saidByStyles(readFileSync(file, 'utf8')), 'a style says nothing: put the words on the page').toEqual([]);
  });

  it.each(['index.html', ...below('public', /\.(svg|html|json|webmanifest|txt)$/)])('%s holds no words', (file) => {
    expect(
      saidByPage(readFileSync(file, 'utf8')),
      'give these from a file of words (vite.config.ts does so for the page)',
    ).toEqual([]);
  });

  it('is seen by this test', () => {
    expect(
      saidByStyles('a::after { content: "see below"; } b::before { content: attr(data-x) } i { content: "+" }'),
    ).toEqual(['"see below"', 'attr(data-x)']);
    expect(saidByStyles('main { justify-content: center } /* content: "no" */')).toEqual([]);
    expect(
      saidByPage('<title>Trammel</title><noscript>{{noScript}}</noscript><p title="Fine">Please wait</p>'),
    ).toEqual(['Please wait', 'Fine']);
  });
});
