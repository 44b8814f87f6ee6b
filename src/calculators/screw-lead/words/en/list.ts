import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Screw lead',
  question: 'Does this screw have the lead that is marked or set for it?',
  sayings: [
    'prints too tall',
    'prints too short',
    'heights are wrong',
    'which screw is this',
    'how many starts',
    'leadscrew pitch',
  ],
};
export default en;
