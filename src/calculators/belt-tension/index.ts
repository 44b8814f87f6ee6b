import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { contradiction, instruct } from './action';
import { ACCELERATION_STEP, SCALE_STEP, tuningStep } from './asked';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['motorsOffUnplugged', 'beltUnderTension', 'blockUprightCarriage'],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 'T', min: 'T_lo', max: 'T_hi', cite: commonPractice },
      { of: 'T_lo', max: 'T_hi', cite: derived('leastTensionBelow') },
      { of: 'epsilon', max: 'epsilon_max', cite: derived('exactFrequencyHeld') },
      { of: 's', max: 's_max', cite: commonPractice, when: { by: 'press' } },
    ],
    measured: ['L_1', 'L_2', 'f', 'F', 'y'],
    levers: {
      f: { step: (ask) => tuningStep(ask.number('f')) },
      F: { step: () => SCALE_STEP },
      a: { step: () => ACCELERATION_STEP, to: (ask) => ask.number('a') },
    },
    action: instruct,
    contradiction,
    beware: [
      'everyRelativeError',
      'microphoneHearsOctave',
      'leftOutStiffness',
      'pressedStiffBelt',
      'runsLoopPull',
      'pullShaftTwice',
      'beltHeldTight',
      'valuesRubberBelts',
      'narrowBeltsCarry',
    ],
    examples,
  },
  words,
);
