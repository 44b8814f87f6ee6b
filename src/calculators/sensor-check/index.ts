import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['switchOffUnplug', 'mainsHeaters', 'blockBurns', 'heaterWrongVoltage', 'neverRunHeater'],
    choices,
    inputs,
    formulas,
    limits,
    action: instruct,
    beware: ['roomTestOnly', 'bValueFit', 'looseInHole', 'otherLaws', 'betweenLines', 'risesWhenHot'],
    examples,
  },
  words,
);
