import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Heater and its guard',
  question: 'If the sensor falls out or the switch sticks, what stops the heater, and how hot does it get first?',
  sayings: [
    'hot end far too hot',
    'smells burnt',
    'smoke from the hot end',
    'sensor fell out',
    'heater stays on',
    'heater won’t switch off',
    'heats too slowly',
    'heating stops with an error',
    'fire protection',
    'is it safe to leave it printing overnight',
    'thermal runaway',
    'watchdog',
    'melted block',
    'which thermal fuse',
  ],
};
export default en;
