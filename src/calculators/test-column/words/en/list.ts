import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Test column',
  question: 'Will this tall, thin piece sway under the nozzle, or break loose from the bed?',
  sayings: [
    'tall thin part wobbles',
    'tower sways while printing',
    'slender part bends under the nozzle',
    'column gets rough towards the top',
    'test piece knocked over',
    'part breaks loose from the bed',
    'tall part comes off',
    'does it need a wider foot',
    'how wide a rim',
    'how tall can I print it',
    'is it the machine or the test piece',
    'pin or spike comes out wavy',
  ],
};
export default en;
