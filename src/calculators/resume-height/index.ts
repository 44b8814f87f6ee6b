import { calculator } from '../../engine/calculator';
import { contradiction, instruct, judge, levers } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: [
      'nozzleHotHold',
      'moveZSmallest',
      'neverLetZ',
      'cuttingSandingBlade',
      'gluesSolventsGloves',
      'partHoldsPerson',
    ],
    choices,
    inputs,
    formulas,
    limits: [],
    measured: ['Z_r', 'g_f', 'H'],
    levers,
    contradiction,
    judge,
    action: instruct,
    beware: ['partMeasuredCold', 'assumesAllLayers', 'footBulges', 'plasticAlsoShrinks', 'offBedPart', 'restartFindsZ'],
    examples,
  },
  words,
);
