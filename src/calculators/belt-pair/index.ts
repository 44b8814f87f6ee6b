import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { contradiction, instruct } from './action';
import { tuningStep } from './asked';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

const series = derived('exactFrequencyHeld');

export default calculator(
  {
    cautions: ['motorsOffUnplugged', 'beltUnderTension', 'blockUprightCarriage'],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 'd_T', max: 'd_lim', symmetric: true, cite: commonPractice },
      { of: 'T_1', min: 'T_lo1', max: 'T_hi1', cite: commonPractice },
      { of: 'T_2', min: 'T_lo2', max: 'T_hi2', cite: commonPractice },
      { of: 'epsilon_1', max: 'epsilon_max', cite: series },
      { of: 'epsilon_2', max: 'epsilon_max', cite: series },
    ],
    measured: ['L_1', 'f_1', 'L_2', 'f_2'],
    levers: {
      f_1: { step: (ask) => tuningStep(ask.number('f_1')) },
      f_2: { step: (ask) => tuningStep(ask.number('f_2')) },
    },
    action: instruct,
    contradiction,
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
