import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
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
};
export default en;
