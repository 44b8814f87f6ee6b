import MiniSearch from 'minisearch';
import type { ListWords } from '../../engine/calculator';
import say from './words/en';

/** What can be found: a check, or one of the phone's instruments. */
export interface Findable extends Pick<ListWords, 'title' | 'question' | 'sayings'> {
  readonly id: string;
}

/** A text by its words. */
const wordsOf = (text: string): string[] =>
  text
    .normalize('NFKD')
    .replaceAll(/[’']/g, '')
    .split(/[^\p{L}\p{N}]+/u);

const EMPTY = new Set(wordsOf(say.find.empty));

/** A plain stem by English endings, the same for what is asked and what is said: wheels, levelled and levelling meet wheel and level. */
function stem(word: string): string {
  if (word.length < 5) return word.replace(/(?<=..)s$/, '');
  return word.replace(/(?:ings?|ed|es|s|ly)$/, '').replace(/([b-df-hj-np-tv-z])\1$/, '$1');
}

function terms(term: string): string | null {
  const word = term.toLowerCase();
  return word === '' || EMPTY.has(word) ? null : stem(word);
}

/** Weight of a field: what people say counts as much as the name. */
const BOOST = { title: 3, sayings: 3, question: 1 };

/** Words of four letters may be one letter off, of eight two. */
const SLIP = 0.25;

/**
 * Finds by what a person would say, tolerating slips of the finger.
 *
 * @returns a search that gives ids, best first; none where no word is known
 */
export function createFinder(all: readonly Findable[]): (query: string) => readonly string[] {
  const index = new MiniSearch<Findable>({
    fields: ['title', 'sayings', 'question'],
    extractField: (entry, name) => {
      if (name === 'sayings') return entry.sayings.join('\n');
      return name === 'id' ? entry.id : name === 'title' ? entry.title : entry.question;
    },
    tokenize: wordsOf,
    processTerm: terms,
    searchOptions: {
      boost: BOOST,
      prefix: (term) => term.length >= 3,
      fuzzy: (term) => (term.length >= 4 ? SLIP : false),
      weights: { fuzzy: 0.4, prefix: 0.6 },
    },
  });
  index.addAll(all);
  const plain = (text: string): string => text.trim().toLowerCase();
  return (query) => {
    const named = all.find(({ title }) => plain(title) === plain(query))?.id;
    const found = index.search(query);
    const best = found[0]?.score ?? 0;
    const ids = found.filter(({ score }) => score * 5 >= best).map(({ id }) => String(id));
    return named === undefined ? ids : [named, ...ids.filter((id) => id !== named)];
  };
}
