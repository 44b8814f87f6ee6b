import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Sensor and heater',
  question: 'Does the temperature sensor tell the truth, and has the heater the power it is marked with?',
  sayings: [
    'wrong temperature',
    'temperature jumps',
    'shows far too cold',
    'temperature below zero in a warm room',
    'is my thermistor broken',
    'thermistor resistance',
    'how many ohms',
    'sensor error when switched on',
    'new sensor reads differently',
    'prints too cold at the right temperature',
    'which heater is this',
    '12 volt heater on 24 volt',
    'heater open circuit',
  ],
};
export default en;
