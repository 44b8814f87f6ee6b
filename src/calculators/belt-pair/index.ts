import { commonPractice } from '../../reference/citation';
import { calculator, cite, derived } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

const range = cite('Suppliers’ engineering tables', 'minimumInstallationAllowable', true);
const series = derived('exactFrequencyHeld');
const stiff = { ends: ['pinned', 'clamped'] };

export default calculator(
  {
    cautions: ['motorsOffUnplugged', 'beltUnderTension', 'blockUprightCarriage'],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 'd_T', max: 'd_lim', symmetric: true, cite: commonPractice },
      { of: 'T_1', min: 'T_lo1', max: 'T_hi1', cite: range },
      { of: 'T_2', min: 'T_lo2', max: 'T_hi2', cite: range },
      { of: 'L_1', min: 'L_min', cite: commonPractice, when: { ends: 'string' } },
      { of: 'L_2', min: 'L_min', cite: commonPractice, when: { ends: 'string' } },
      { of: 'epsilon_1', max: 'epsilon_max', cite: series, when: stiff },
      { of: 'epsilon_2', max: 'epsilon_max', cite: series, when: stiff },
    ],
    action: instruct,
    beware: [
      'sameTensionSame',
      'equalPlacesTensioners',
      'suspectNoteWhere',
      'crossedBeltsMotor',
      'leftOutStiffness',
      'offsetTeethTold',
      'toothBeltClamp',
      'rangeCountsBelt',
    ],
    examples,
  },
  words,
);
