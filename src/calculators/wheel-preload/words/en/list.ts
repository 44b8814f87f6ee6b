import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Wheel preload',
  question: 'Do the wheels press hard enough to hold the carriage, and not so hard that they go flat?',
  sayings: [
    'carriage wobbles',
    'play in the wheels',
    'eccentric nut',
    'wheel spins freely',
    'flat spots on the wheels',
    'carriage hard to push',
    'arm sags',
    'loose wheels',
    'play in the carriage',
    'rattles',
  ],
};
export default en;
