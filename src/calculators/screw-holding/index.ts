import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { contradiction, instruct, levers } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['gantryBedMay', 'keepHandsOther', 'trialLetHave', 'fallingLoadMakes'],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 'm', min: 'm_lim', cite: commonPractice },
      { of: 'm_b', min: 'm_bl', cite: commonPractice },
      { of: 'n', max: 'n_m', cite: commonPractice },
    ],
    measured: ['M_z', 'x'],
    levers,
    contradiction,
    action: instruct,
    beware: [
      'marginPromiseFriction',
      'frictionRestOnce',
      'motorsIdleTorque',
      'withoutCurrentMotor',
      'factorsCriticalSpeed',
      'bucklingCountsOnly',
      'pitchesMmMm',
      'efficiencyWithoutCollar',
    ],
    examples,
  },
  words,
);
