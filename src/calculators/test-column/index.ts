import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['keepHandsOut', 'tallPieceLets', 'pushingTestBlock'],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 'x', max: 'x_lim', cite: commonPractice },
      {
        of: 'r_f',
        min: 'r_min',
        cite: derived('wellAboveExcitation'),
      },
      { of: 'sigma', max: 'sigma_h', cite: commonPractice },
    ],
    action: instruct,
    beware: [
      'dragNozzleKnown',
      'infillLeftOut',
      'stiffnessFallsLong',
      'pullSharedOut',
      'bendingOnlyShear',
      'bedMovesShakes',
      'bedSheetMachine',
    ],
    examples,
  },
  words,
);
