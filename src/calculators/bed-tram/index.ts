import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { action, contradiction, LAYER } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { model } from './model';
import { cells, tables } from './points';
import words from './words/en';

// A spread alone forgets the names of the cells.
const readings: typeof cells & typeof inputs = { ...cells, ...inputs };

export default calculator(
  {
    cautions: ['warmBedBurns', 'switchMotorsOff', 'liftNozzleClear'],
    choices,
    inputs: readings,
    tables,
    model,
    formulas,
    limits: [
      { of: 't_p', max: 't_lim', symmetric: true, cite: commonPractice },
      { of: 't_q', max: 't_lim', symmetric: true, cite: commonPractice },
      { of: 'F', max: 'F_lim', cite: commonPractice, when: { judge: 'both' } },
    ],
    measured: ['z_1', 'z_2', 'z_3'],
    // A first layer that takes up the warp; adjusters move all points at once, so no one reading stands for them.
    levers: { h_1: { step: () => LAYER.step, to: () => LAYER.most } },
    contradiction,
    action,
    beware: ['doubtCountsTool', 'leftManyPoints', 'bedTakenCold', 'heightsUnderNozzle'],
    examples,
  },
  words,
);
