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
    // A warm hand is asked for where the screen agrees with the room; one that disagrees needs none.
    measured: ['R_m', 'T_r', 'T_a', 'R_h'],
    contradiction,
    action: instruct,
    beware: ['roomTestOnly', 'bValueFit', 'looseInHole', 'otherLaws', 'betweenLines', 'risesWhenHot'],
    examples,
  },
  words,
);
