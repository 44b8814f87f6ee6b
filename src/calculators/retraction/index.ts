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
    cautions: ['nozzleHeaterBlock', 'hotPlasticGives', 'feedGearCrushes'],
    choices,
    inputs,
    formulas,
    limits: [
      // Listed flow values are off by more than their own interval says: from them alone there is no verdict, only from the test piece.
      { of: 'x_set', min: 'x_lo', max: 'x_hi', cite: commonPractice, when: { source: 'force' } },
      { of: 'dx_p', max: 'x_step', symmetric: true, cite: commonPractice, when: { source: 'table' } },
      // One for the figure and one for the setting, each by its own name, so that the instruction can tell them apart.
      { of: 'x_r', max: 'x_max', cite: commonPractice, when: { source: 'force' } },
      { of: 'x_max', min: 'x_set', cite: commonPractice },
      { of: 'F_g', max: 'F_max', cite: commonPractice, when: { source: 'force' } },
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
    measured: ['x_set', 'F_m'],
    levers: {
      x_set: { step: (ask) => ask.number('x_step'), to: (ask) => ask.number('x_max') },
    },
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
