import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { action, contradiction, HAND_TURN } from './action';
import { formulas } from './formulas';
import { choices, inputs } from './inputs';
import words from './words/en';

export default calculator(
  {
    cautions: ['switchOffUnplug', 'supportGantryBefore', 'letNozzleBed'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'dh_bed',
        max: 'dh_lim',
        symmetric: true,
        cite: commonPractice,
      },
    ],
    measured: ['dh', 'i_g', 'i_f'],
    levers: {
      dh: { step: (ask) => (ask.number('P_h') * HAND_TURN * ask.number('S_m')) / (2 * Math.PI * ask.number('S')) },
      i_g: { step: (ask) => (ask.number('P_h') * HAND_TURN) / (2 * Math.PI * ask.number('S')) },
    },
    contradiction,
    action,
    beware: ['heightsTakenBent', 'wholeNumberTeeth'],
    examples: [
      {
        key: 'teethOutRead',
        given: { dh: '0.75 mm', S_m: '400 mm ± 0', S: '400 mm ± 0', P_h: '8 mm', z: '20' },
        expect: { h_t: [0.4, 1e-9], n: [1.875, 1e-9], n_w: [2, 0], r: [-0.05, 1e-9], phi: [-2.25, 1e-9] },
        verdict: 'beyond',
        source: derived('teethOutRead'),
      },
      {
        key: 'sameDifferenceOver',
        given: { dh: '0.4 mm', S_m: '200 mm ± 0', S: '400 mm ± 0', W: '200 mm ± 0', P_h: '8 mm', z: '16' },
        expect: { dh_s: [0.8, 1e-9], n: [1.6, 1e-9], dh_bed: [0.4, 1e-9], i: [2, 1e-9] },
        verdict: 'beyond',
        source: derived('sameDifferenceOver'),
      },
      {
        key: 'motorsStepsInstead',
        given: { dh: '0.12 mm', S_m: '300 mm ± 0', S: '300 mm ± 0', W: '300 mm ± 0', P_h: '8 mm', theta_s: '1.8 deg' },
        choices: { drive: 'motors' },
        expect: { h_t: [0.04, 1e-9], n: [3, 1e-9], psi: [5.4, 1e-9] },
        verdict: 'beyond',
        source: derived('motorsStepsInstead'),
      },
      {
        key: 'levelTableLeans',
        given: { i_g: '5 mm/m ± 0', i_f: '3 mm/m ± 0', S: '400 mm ± 0', W: '200 mm ± 0', P_h: '8 mm', z: '20' },
        choices: { by: 'level' },
        expect: { dh_s: [0.8, 1e-9], n: [2, 1e-9], i: [2, 1e-9], dh_bed: [0.4, 1e-9] },
        verdict: 'beyond',
        source: derived('levelTableLeans'),
      },
    ],
  },
  words,
);
