import type { Meta } from '../../engine/calculator';

export default {
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
    'overtightened',
  ],
  topic: 'repair',
  order: 90,
} satisfies Meta;
