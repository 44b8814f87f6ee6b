import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { action, contradiction, likely } from './action';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

/** The smallest calculator there is, and the one to copy: DEVELOPERS.md says how. */
export default calculator(
  {
    cautions: ['switchOffUnplug'],
    choices: {},
    inputs,
    formulas,
    limits: [{ of: 'dP', max: 'a', symmetric: true, cite: commonPractice }],
    measured: ['x'],
    // Only what such a screw is made with is ever set.
    levers: {
      P_h: {
        step: (ask) => Math.abs(likely(ask) - ask.number('P_h')) || 1,
        from: (ask) => likely(ask) - 1e-12,
        to: (ask) => likely(ask) + 1e-12,
      },
    },
    contradiction,
    action,
    beware: ['leadRightAverage'],
    examples: [
      {
        key: 'tenTurnsFour',
        given: { x: '80 mm', N: '10', P_h: '8 mm' },
        expect: { P_m: [8, 1e-9], dP: [0, 1e-9] },
        verdict: 'within',
        source: derived('tenTurnsFour'),
      },
      {
        key: 'singleStartScrew',
        given: { x: '10 mm', N: '5', P_h: '8 mm' },
        expect: { P_m: [2, 1e-9], dP: [-6, 1e-9] },
        verdict: 'beyond',
        source: derived('singleStartScrew'),
      },
      {
        key: 'turnSteelRule',
        given: { x: '8 mm ± 0.5 mm', N: '1', P_h: '8 mm' },
        expect: { P_m: [8, 1e-9] },
        verdict: 'too close',
        source: derived('turnSteelRule'),
      },
    ],
  },
  words,
);
