import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { instruct } from './action';
import { MILLIMETRE, shortest, STEP, widest, WIDEST_RIM } from './change';
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
    measured: ['b', 'L', 'F_t'],
    levers: {
      b: { step: () => STEP, from: (ask) => ask.number('b'), to: widest },
      L: { step: () => MILLIMETRE, from: shortest, to: (ask) => ask.number('L') },
      r: { step: () => STEP, from: (ask) => ask.number('r'), to: () => WIDEST_RIM },
    },
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
