import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Squareness',
  question: 'Are the axes square, and which end of the beam must move?',
  sayings: [
    'circles come out oval',
    'prints not square',
    'parts come out as a parallelogram',
    'skewed print',
    'diagonals not equal',
    'corners are not 90 degrees',
    'X and Y not square',
    'frame out of square',
    'rack the gantry',
    'beam crooked front to back',
    'lid does not fit the box',
    'try square does not fit',
  ],
};
export default en;
