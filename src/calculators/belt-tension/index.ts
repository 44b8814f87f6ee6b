import { commonPractice } from '../../reference/citation';
import { calculator, cite, derived } from '../../engine/calculator';
import { instruct } from './action';
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
      {
        of: 'T',
        min: 'T_lo',
        max: 'T_hi',
        cite: cite('Suppliers’ engineering tables', 'minimumInstallationAllowable', true),
      },
      {
        of: 'T_lo',
        max: 'T_hi',
        cite: derived('leastTensionBelow'),
      },
      { of: 'L', min: 'L_min', cite: commonPractice, when: { by: 'note', ends: 'string' } },
      { of: 'L', min: 'L_min', cite: commonPractice, when: { by: 'press' } },
      {
        of: 'epsilon',
        max: 'epsilon_max',
        cite: derived('exactFrequencyHeld'),
        when: { by: 'note', ends: ['pinned', 'clamped'] },
      },
      { of: 's', max: 's_max', cite: commonPractice, when: { by: 'press' } },
    ],
    action: instruct,
    beware: [
      'everyRelativeError',
      'microphoneHearsOctave',
      'leftOutStiffness',
      'pressedStiffBelt',
      'strandsLoopPull',
      'pullShaftTwice',
      'beltHeldTight',
      'valuesRubberBelts',
      'narrowBeltsCarry',
    ],
    examples,
  },
  words,
);
