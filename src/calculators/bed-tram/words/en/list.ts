import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Bed tram',
  question: 'How far must each bed adjuster be turned, and what can no screw put right?',
  sayings: [
    'bed not level',
    'level the bed',
    'bed levelling',
    'bed crooked',
    'tram the bed',
    'one corner high',
    'one corner too low',
    'first layer thick in one corner',
    'warped bed',
    'bed bowed in the middle',
    'dip in the middle of the bed',
    'knobs under the bed',
    'which way do I turn the bed screw',
    'three Z screws out of level',
  ],
};
export default en;
