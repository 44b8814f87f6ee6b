import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['motorsOffUnplugged', 'pushCarriageHand', 'blockCarriageUpright'],
    choices,
    inputs,
    formulas,
    limits: [
      // N ≤ N_max is p_0 ≤ p_lim solved for the preload; in this form a wheel that spins freely still has a verdict.
      { of: 'N', min: 'N_min', max: 'N_max', cite: commonPractice },
      { of: 'N_min', max: 'N_max', cite: commonPractice },
    ],
    action: instruct,
    beware: [
      'momentHeldOver',
      'plasticsCreepPreload',
      'newWheelSharp',
      'frictionCoefficientWeakest',
      'whereWheelsFace',
      'bushNearHardly',
    ],
    examples,
  },
  words,
);
