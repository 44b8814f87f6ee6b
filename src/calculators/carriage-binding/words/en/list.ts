import type { ListWords } from '../../../../engine/calculator';

/** What the list of checks shows and the search finds. */
const en: ListWords = {
  title: 'Carriage binding',
  question: 'Does this carriage jam on its guide because it is pushed beside it?',
  sayings: [
    'carriage sticks',
    'carriage jams',
    'gantry binds',
    'gantry racks and locks',
    'moves freely by hand but not by the belt',
    'easy to push in the middle, hard at the end',
    'one side drags behind',
    'drawer effect',
    'squeaks and jerks along',
    'stick slip',
    'bushes too short',
    'arm hangs up on the way down',
    'lost steps on the gantry',
  ],
};
export default en;
