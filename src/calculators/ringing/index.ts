import { commonPractice } from '../../reference/citation';
import { calculator, cite, derived } from '../../engine/calculator';
import { contradiction, instruct } from './action';
import { STEPS } from './asked';
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
        cite: cite('Den Hartog, Mechanical Vibrations, 4th edition (1956)', 'forceOnceBends', true),
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
    measured: ['x_N', 'P_w', 'v', 'x_0', 'a', 'x_N2', 'P_w2', 'v_2', 'v_c'],
    levers: {
      a: { step: () => STEPS.a, from: () => STEPS.a, to: (ask) => ask.number('a') },
      v_c: { step: () => STEPS.v_c, to: (ask) => ask.number('v_c') },
    },
    action: instruct,
    contradiction,
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
