import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Lead-screw straightness',
  question: 'How far is the screw bowed, and does the bow reach the print?',
  sayings: [
    'bent lead screw',
    'screw wobbles',
    'ridges at a regular spacing',
    'top of the screw swings',
    'run-out of the Z screw',
    'is the screw straight',
    'ridges up the wall',
    'banding',
    'wobble',
    'bent screw',
    'leadscrew',
  ],
};
export default en;
