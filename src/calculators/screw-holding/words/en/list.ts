import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Screw holding',
  question: 'Will the gantry stay up when the motors are off, and will its screws bend or whirl?',
  sayings: [
    'gantry sinks when idle',
    'gantry drops when switched off',
    'Z falls when the motors are off',
    'bed drops',
    'one side sinks',
    'left and right out of sync after switching off',
    'does this screw lock itself',
    'lead screw too steep',
    'lead screw turns by itself',
    'screw bends when the nozzle hits something',
    'screw whips',
    'how fast may Z move',
    'backdriving',
    'Z brake',
  ],
};
export default en;
