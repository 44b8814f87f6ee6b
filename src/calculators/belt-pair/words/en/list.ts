import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Belt pair',
  question: 'Do two belts pull alike, and is one of them a tooth out?',
  sayings: [
    'two belts uneven',
    'one belt tighter than the other',
    'gantry pulled askew',
    'crossed belts out of tune',
    'tensioners do not match',
    'belt one tooth out',
    'squares print as diamonds',
    'gantry racks',
  ],
};
export default en;
