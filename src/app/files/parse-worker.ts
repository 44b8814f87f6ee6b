import type { Parsed, Task } from './read';

/** Nothing of ours is imported: what is said of a file, and which of its records can be read, is the page's matter. */

const answer = (message: Parsed): void => postMessage(message);

/** What cannot even be passed on (nested without end) is no record either: refused by the door with the others. */
function pass(list: string, items: readonly unknown[]): void {
  try {
    answer({ kind: 'items', list, items });
  } catch {
    for (const item of items) {
      try {
        answer({ kind: 'items', list, items: [item] });
      } catch {
        answer({ kind: 'items', list, items: [null] });
      }
    }
  }
}

/** Parses a file's text apart from the page and hands it over in small parts. */
async function parse({ file, parts }: Task): Promise<void> {
  const text = await file.text();
  const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    answer({ kind: 'value', value: null });
    return;
  }
  const all: readonly (readonly [name: string, held: unknown])[] = Object.entries(value);
  const lists = all.flatMap(([name, held]) =>
    Object.hasOwn(parts, name) && Array.isArray(held) ? [[name, held] as const] : [],
  );
  const listed = new Set(lists.map(([name]) => name));
  answer({ kind: 'value', value: Object.fromEntries(all.map(([name, held]) => [name, listed.has(name) ? [] : held])) });
  for (const [list, items] of lists) {
    const size = parts[list] ?? items.length;
    for (let begin = 0; begin < items.length; begin += size) pass(list, items.slice(begin, begin + size));
  }
  answer({ kind: 'end' });
}

addEventListener('message', ({ data }: MessageEvent<Task>) => {
  parse(data).catch(() => answer({ kind: 'value', value: undefined }));
});
