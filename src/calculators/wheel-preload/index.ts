import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { HAND_TURN, instruct, readAt } from './action';
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
    measured: ['F_slip', 'theta_t'],
    levers: { theta_0: { step: () => HAND_TURN, reads: readAt } },
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
