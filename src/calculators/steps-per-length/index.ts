import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices, fed, onAxis, printed, travelled } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['keepFingersCaliper', 'filamentFedThrough', 'switchOffUnplug'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'c',
        max: 'e_lim',
        symmetric: true,
        cite: commonPractice,
        when: travelled,
      },
      { of: 'c', max: 'e_lim', symmetric: true, as: 'c_feed', cite: commonPractice, when: fed },
      {
        of: 'e_d',
        max: 'e_lim',
        symmetric: true,
        cite: commonPractice,
        when: printed,
      },
      { of: 'q', max: 'e_lim', symmetric: true, cite: commonPractice, when: onAxis },
      {
        of: 'q',
        max: 'e_lim',
        symmetric: true,
        cite: commonPractice,
        when: { axis: 'feed', fed: 'parts' },
      },
    ],
    action: instruct,
    beware: [
      'beltsPitchDoes',
      'stepsCorrectedPrinted',
      'beltUnderN',
      'lostMotionLooks',
      'holesComeOut',
      'firstLayersSqueezed',
      'filamentNumberFound',
      'shrinkageWorkedOut',
    ],
    examples,
  },
  words,
);
