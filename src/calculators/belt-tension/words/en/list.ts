import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Belt tension',
  question: 'How tight is this belt, and which note should it give?',
  sayings: [
    'belt too loose',
    'belt too tight',
    'slack belt',
    'belt slips or jumps a tooth',
    'how tight should the belt be',
    'belt note',
    'pluck the belt like a string',
    'circles print as ovals',
    'shifted layers',
    'motor shaft bends',
  ],
};
export default en;
