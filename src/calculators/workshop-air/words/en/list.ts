import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Workshop air',
  question: 'Will this air wet a cold part, and how far do frame and screws grow over the day?',
  sayings: [
    'water on the bed',
    'bed wet in the morning',
    'dew on a cold part',
    'printer brought in from the cold',
    'machine stands in a cold garage or shed',
    'damp workshop',
    'screws and rods rust',
    'dry box humidity',
    'sticks in the morning, not in the evening',
    'first layer changes over the day',
    'frame grows when it gets warm',
    'winter and summer need another height',
  ],
};
export default en;
