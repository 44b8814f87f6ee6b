import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Two Z screws in step',
  question: 'Is the gantry level, and how many belt teeth is it out?',
  sayings: [
    'one side high',
    'gantry crooked',
    'first layer thin on one side',
    'belt jumped a tooth',
    'two Z motors out of step',
    'not level',
    'higher on the right',
    'left side low',
    'leaning gantry',
    'spirit level on the gantry',
    'dual-Z sync',
    'sync both Z screws',
  ],
};
export default en;
