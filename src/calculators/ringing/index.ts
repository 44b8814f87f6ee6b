import { commonPractice } from '../../reference/citation';
import { calculator, cite, derived } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

const one = { test: 'one' };

export default calculator(
  {
    cautions: ['keepHandsOut', 'motorsOffUnplugged'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'a',
        max: 'a_s',
        cite: cite('Den Hartog, Mechanical Vibrations', 'forceOnceBends', true),
      },
      {
        of: 'x_0',
        min: 'l_r',
        cite: derived('rampSpeedYet'),
      },
      { of: 'g_p', min: 'g_lim', cite: commonPractice, when: one },
      { of: 'g_s', min: 'g_lim', cite: commonPractice, when: one },
      {
        of: 'kappa',
        min: 'kappa_lim',
        cite: derived('midwayBetweenPart'),
        when: { test: 'two' },
      },
      {
        of: 'x_c',
        max: 'x_tol',
        cite: commonPractice,
        when: { corner: 'kept' },
      },
    ],
    action: instruct,
    beware: [
      'speedWallRipples',
      'partsSwingOnce',
      'xYSwing',
      'stifferBeltMore',
      'motorsMagneticField',
      'dampingShiftsFrequency',
      'rampLastsWhole',
      'accelerationStartsSoftly',
    ],
    examples,
  },
  words,
);
