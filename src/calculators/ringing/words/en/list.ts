import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Ringing',
  question: 'Ripples after a corner: what swings, and which acceleration keeps them low?',
  sayings: [
    'ripples after corners',
    'ripples after an edge',
    'echo of an edge on the wall',
    'ghost of the corner',
    'waves that die away',
    'ringing',
    'frame shakes',
    'how fast may it accelerate',
    'acceleration too high',
    'printing fast makes waves',
    'machine wobbles on its table',
  ],
};
export default en;
