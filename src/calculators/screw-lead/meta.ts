import type { Meta } from '../../engine/calculator';

export default {
  title: 'Screw lead',
  question: 'Does this screw have the lead that is marked or set for it?',
  sayings: [
    'prints too tall',
    'prints too short',
    'heights are wrong',
    'which screw is this',
    'how many starts',
    'leadscrew pitch',
  ],
  topic: 'z',
  order: 60,
} satisfies Meta;
