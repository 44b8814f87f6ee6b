import type { Meta } from '../../engine/calculator';

export default {
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
  topic: 'motion',
  order: 80,
  phone: ['note'],
} satisfies Meta;
