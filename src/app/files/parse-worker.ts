import { SECTIONS } from '../../machine/exchange';
import { parseFile, textTrouble } from '../../machine/exchange-read';
import { isPlain } from '../../machine/schema-parts';
import type { Parsed } from './read';

/** Records to a message: few enough that none of them holds the page up. */
const PART = 200;
const PHOTOS = 4;

const LISTS: readonly string[] = Object.values(SECTIONS).filter((list) => list !== SECTIONS.settings);

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
async function parse(file: Blob): Promise<void> {
  const text = await file.text();
  const reason = textTrouble(text);
  if (reason !== undefined) {
    answer({ kind: 'trouble', reason });
    return;
  }
  const value = parseFile(text);
  if (!isPlain(value)) {
    answer({ kind: 'value', value: value === undefined ? undefined : null });
    return;
  }
  const isList = ([name, held]: [string, unknown]) => LISTS.includes(name) && Array.isArray(held);
  const all = Object.entries(value);
  answer({ kind: 'value', value: Object.fromEntries(all.map((one) => (isList(one) ? [one[0], []] : one))) });
  for (const [list, items] of all.filter(isList) as [string, unknown[]][]) {
    const size = list === SECTIONS.photo ? PHOTOS : PART;
    for (let begin = 0; begin < items.length; begin += size) pass(list, items.slice(begin, begin + size));
  }
  answer({ kind: 'end' });
}

addEventListener('message', ({ data }: MessageEvent<Blob>) => {
  parse(data).catch(() => answer({ kind: 'value', value: undefined }));
});
