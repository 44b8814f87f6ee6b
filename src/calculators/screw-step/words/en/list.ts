import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Layer height and screw step',
  question: 'Does this layer height fall on whole steps of the Z drive, and what pattern does it print if not?',
  sayings: [
    'ridges along Z at a regular spacing',
    'every few layers one sticks out',
    'which layer height suits my lead screw',
    'layers uneven',
    'small Z moves do nothing',
    'ridges at a regular spacing',
    'banding',
    'layer lines uneven',
  ],
};
export default en;
