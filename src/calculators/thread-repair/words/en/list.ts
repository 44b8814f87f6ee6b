import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Thread repair',
  question: 'Does what is left of this thread hold, and if not, which way of mending it is best?',
  sayings: [
    'screw won’t tighten',
    'screw turns without tightening',
    'stripped hole',
    'stripped thread',
    'thread torn out',
    'screw pulls out',
    'screw keeps coming loose',
    'thread came out with the screw',
    'which drill for a thread insert',
    'tap drill size',
    'how tight is tight',
    'heat-set insert hole size',
    'nut pocket size',
    'threads in plastic torn out',
    'overtightened',
  ],
};
export default en;
