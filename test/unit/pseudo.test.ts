import { Buffer } from 'node:buffer';
import { describe, expect, it } from 'vitest';
import { rewriteWords } from '../../build/pseudo';
import { inStyle, MARK, type Style } from '../../build/strange';

/** What a words file must never lose: types, keys, modules, cases and comparisons, beside the text around them. */
const TYPED = `
import { list } from './list of words';
import type { Side } from './left right';
export * from './more words';
type Held = 'kept whole' | \`as \${string} type\`;
const names: Readonly<Record<Side, string>> = { left: 'the left', 'right side': "the right" };
const en = { both: ['one way', 'the other'] as const, list } satisfies Record<'both' | 'list', unknown>;
export default en;
`;

const SAMPLE = `
const names = { left: 'the left', 'right side': "the right" };
function kind(of) {
  switch (of) {
    case 'belt':
      return 'a belt';
    default:
      return of.startsWith('rubber') || 'never' in names ? 'no belt' : of.replace('steel', 'brass');
  }
}
export default {
  title: 'Save to a file',
  'aria label': 'It\\'s µm – "ä"',
  nested: { deep: { price: (n) => \`cost \\\`now\\\`: \\\${n} \\\\ \${n}\\n\` } },
  done: (name, n) => \`Saved \${name}, \${n} \${n === 1 ? 'part' : 'parts'} of \${names['left']}.\`,
  turns: (n, unit = 'turn') => (unit === 'turn' ? 'turns' : 'teeth'),
  glued: (n) => 'Turn ' + n + (n > 1 ? ' times' : ' time'),
  listed: (items) => items.join(' and '),
  plural: (n) => ({ one: 'tooth', other: 'teeth' })[new Intl.PluralRules('en').select(n)],
  kind,
  empty: '',
  figures: '12.5 %',
};
`;

interface Sample {
  readonly title: string;
  readonly 'aria label': string;
  readonly nested: { readonly deep: { readonly price: (n: number) => string } };
  readonly done: (name: string, n: number) => string;
  readonly turns: (n: number, unit?: string) => string;
  readonly glued: (n: number) => string;
  readonly listed: (items: readonly string[]) => string;
  readonly plural: (n: number) => string;
  readonly kind: (of: string) => string;
  readonly empty: string;
  readonly figures: string;
}

/** The sample as it runs in this style. */
async function run(style: Style): Promise<Sample> {
  const code = Buffer.from(rewriteWords(SAMPLE, 'words/en.js', style)).toString('base64');
  const loaded: { default: Sample } = (await import(`data:text/javascript;base64,${code}`)) as { default: Sample };
  return loaded.default;
}

/** Marks as a sign that can be read here. */
const seen = (text: string): string => text.replaceAll(MARK, '|');

describe('a marked words file', () => {
  it('has a mark after every word of its text, and runs as before', async () => {
    const en = await run('marked');
    expect(seen(en.title)).toBe('Save| to| a| file|');
    expect(seen(en['aria label'])).toBe(`It|'s| µm| – "ä|"`);
    expect(seen(en.nested.deep.price(3))).toBe('cost| `now|`: ${n|} \\ 3\n');
    expect(seen(en.done('Bo', 1))).toBe('Saved| Bo, 1 part| of| the| left|.');
    expect(seen(en.done('Bo', 2))).toBe('Saved| Bo, 2 parts| of| the| left|.');
    expect(seen(en.glued(2))).toBe('Turn| 2 times|');
    expect(seen(en.listed(['a', 'b']))).toBe('a and| b');
    expect(en.empty + en.figures).toBe('12.5 %');
  });

  it('keeps what the code compares, looks up or is called by', async () => {
    const en = await run('marked');
    expect(seen(en.turns(2))).toBe('turns|');
    expect(seen(en.turns(2, 'tooth'))).toBe('teeth|');
    expect(seen(en.plural(1))).toBe('tooth|');
    expect(seen(en.kind('belt'))).toBe('a| belt|');
    expect(seen(en.kind('rubber'))).toBe('no| belt|');
    expect(seen(en.kind('steel'))).toBe('brass|');
  });

  it('keeps types, keys and the names of modules', () => {
    const out = rewriteWords(TYPED, 'src/words/en.ts', 'marked');
    expect(out.replaceAll(MARK, '').replaceAll('"', "'")).toBe(TYPED.replaceAll('"', "'"));
    const marked = out.split('\n').filter((line) => line.includes(MARK));
    expect(marked.map(seen)).toEqual([
      `const names: Readonly<Record<Side, string>> = { left: "the| left|", 'right side': "the| right|" };`,
      `const en = { both: ["one| way|", "the| other|"] as const, list } satisfies Record<'both' | 'list', unknown>;`,
    ]);
  });

  it('says where a file does not parse', () => {
    expect(() => rewriteWords('export default {', 'src/ui/words/en.ts', 'marked')).toThrow('src/ui/words/en.ts');
  });
});

describe('a pseudo words file', () => {
  it('has no plain letter left in a text, stands in brackets and is a third longer', async () => {
    const en = await run('pseudo');
    for (const text of [en.title, en.done('7', 2), en.glued(2), en.kind('belt')]) expect(text).not.toMatch(/[A-Za-z]/);
    for (const text of [en.title, en.kind('belt')]) expect(text).toMatch(/^⟦[^⟦]+⟧$/);
    expect(en.title.length).toBeGreaterThanOrEqual(('Save to a file'.length * 4) / 3);
    expect(en.title).toBe(inStyle('Save to a file', 'pseudo'));
    expect(en.figures).toBe('12.5 %');
  });

  it('has a sign of its own for every letter', () => {
    const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz';
    const [, strange = ''] = /⟦(\S+)/.exec(inStyle(letters, 'pseudo')) ?? [];
    expect(new Set(strange).size).toBe(letters.length);
    expect(strange).not.toMatch(/[A-Za-z]/);
  });
});
