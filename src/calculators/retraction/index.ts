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
    cautions: ['nozzleHeaterBlock', 'hotPlasticGives', 'driveGearPinches'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'x_set',
        min: 'x_lo',
        max: 'x_hi',
        cite: commonPractice,
      },
      // One for the figure and one for the setting, each by its own name, so that the instruction can tell them apart.
      { of: 'x_r', max: 'x_max', cite: commonPractice },
      {
        of: 'x_max',
        min: 'x_set',
        cite: commonPractice,
      },
      { of: 'F_g', max: 'F_max', cite: commonPractice },
      {
        of: 'gamma_w',
        min: 'gamma_min',
        cite: commonPractice,
        when: { source: 'table' },
      },
      {
        of: 'D_t',
        min: 'd_f',
        cite: derived('pass'),
        when: { drive: 'tube' },
      },
      { of: 'd_0', min: 'd', cite: derived('shapeNozzle') },
    ],
    action: instruct,
    beware: [
      'absolutePressuresTabulated',
      'conesFormulaCounts',
      'bendsTakenEven',
      'partLagSpringiness',
      'slackCountsWhole',
      'coldDriveWorn',
      'towardsEndBleeding',
    ],
    examples,
  },
  words,
);
