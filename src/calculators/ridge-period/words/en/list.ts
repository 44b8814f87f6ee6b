import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Ridge period',
  question: 'Ridges come at a regular spacing: which part of this machine repeats at that spacing?',
  sayings: [
    'ridges at a regular spacing',
    'ridges along Z at a regular spacing',
    'banding on the walls',
    'rings stacked up the wall',
    'waves along the wall',
    'ripples that do not die away',
    'bent screw or not',
    'which part makes the ridges',
  ],
  verdicts: { within: 'One part fits', 'too close': 'Several fit', beyond: 'None fits' },
};
export default en;
