import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Retraction and nozzle',
  question: 'How much retraction does this nozzle need, and what changes with another one?',
  sayings: [
    'stringing',
    'hairs between parts',
    'oozing on travel moves',
    'blobs at the start of a line',
    'gaps after a travel',
    'changed to a smaller nozzle',
    'strings',
    'oozing',
    'test piece STL',
  ],
};
export default en;
