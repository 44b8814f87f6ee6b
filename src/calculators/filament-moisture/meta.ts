import type { Meta } from '../../engine/calculator';

export default {
  title: 'Filament moisture',
  question: 'How wet is this filament, and how long must it dry at which temperature?',
  sayings: [
    'wet filament',
    'damp spool',
    'filament pops and hisses',
    'steam from the nozzle',
    'bubbles in the strand',
    'fine hairs between parts',
    'rough, foamy surface',
    'how long to dry the spool',
    'drying temperature',
    'spool was left open on the bench',
    'filament snaps',
    'nylon took up water',
  ],
  topic: 'air',
  order: 220,
} satisfies Meta;
