import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas, limits } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['motorsOffUnplugged', 'supportCarriageRuns', 'pullSlowlyHand'],
    choices,
    inputs,
    formulas,
    limits,
    action: instruct,
    beware: [
      'whetherBindsDepends',
      'ruleTakesGuide',
      'playDoesChange',
      'drivesCancelOnly',
      'frictionRestGreater',
      'wheelsTurnDo',
      'offsetsCountSquare',
    ],
    examples,
  },
  words,
);
