import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Resume height',
  question: 'The print stopped part-way: at which layer and which Z does it go on?',
  sayings: [
    'print stopped half way',
    'power cut in the middle of a print',
    'restart a failed print',
    'which layer did it stop at',
    'at which height do I go on',
    'measure the part and find the layer',
    'continue on top of what is there',
    'glue the rest on',
    'print the missing top as a second piece',
    'how high must the second piece be',
    'saved print has a step or gap at the seam',
    'nozzle scrapes the part after a restart',
  ],
  verdicts: { within: 'Settled', 'too close': 'Not settled', beyond: 'Fits no layer' },
};
export default en;
