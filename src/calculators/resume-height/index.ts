import { calculator } from '../../engine/calculator';
import { instruct, judge } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['nozzleHotHold', 'moveZSmallest', 'neverLetZ', 'cuttingSandingBlade', 'gluesSolventsGloves'],
    choices,
    inputs,
    formulas,
    limits: [],
    judge,
    action: instruct,
    beware: [
      'partMeasuredCold',
      'assumesAllLayers',
      'elephantFootSqueezed',
      'plasticAlsoShrinks',
      'offBedPart',
      'restartFindsZ',
    ],
    examples,
  },
  words,
);
