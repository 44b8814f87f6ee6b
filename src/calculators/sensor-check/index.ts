import { calculator } from '../../engine/calculator';
import { contradiction, instruct } from './action';
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
    measured: ['R_m', 'T_r', 'T_h', 'T_a', 'R_h'],
    contradiction,
    action: instruct,
    beware: ['roomTestOnly', 'bValueFit', 'looseInHole', 'otherLaws', 'betweenLines', 'risesWhenHot'],
    examples,
  },
  words,
);
