import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Steps per length',
  question: 'Does the drive move as far as it is told, or is it the plastic that shrinks?',
  sayings: [
    'parts come out too small',
    'parts come out too large',
    'wrong size',
    'part measures too small',
    'holes too small',
    'moves twice as far as it should',
    'steps per mm',
    'calibrate the axis',
    'too little filament comes out',
    'feeds too much filament',
    'under-extrusion everywhere',
    'changed the pulley or the motor driver',
    'part shrinks',
  ],
};
export default en;
