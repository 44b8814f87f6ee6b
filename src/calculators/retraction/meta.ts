import type { Meta } from '../../engine/calculator';

export default {
  title: 'Retraction and nozzle',
  question: 'How far must the filament be pulled back, and what changes with another nozzle?',
  sayings: [
    'stringing',
    'hairs between parts',
    'oozing on travel moves',
    'blobs at the start of a line',
    'gaps after a travel',
    'changed to a smaller nozzle',
    'strings',
    'oozing',
    'test piece STL',
  ],
  topic: 'melt',
  order: 40,
} satisfies Meta;
