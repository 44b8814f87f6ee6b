import { commonPractice } from '../../reference/citation';
import { calculator } from '../../engine/calculator';
import { instruct } from './action';
import { choices, fed, onAxis, printed, travelled } from './choices';
import { examples } from './examples';
import type { Ask } from './asked';
import { STEP } from './change';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

/** By counting alone the number can be tried by itself; measured travel changes with it. */
const number = {
  step: (ask: Ask) => (byCount(ask) ? Math.max(STEP, (ask.number('S_c') * ask.number('e_lim')) / 4) : Infinity),
  from: (ask: Ask) => 0.95 * ask.number('S_c'),
  to: (ask: Ask) => 1.05 * ask.number('S_c'),
};
const byCount = (ask: Ask): boolean =>
  (ask.choice('axis') === 'feed' ? ask.choice('fed') : ask.choice('by')) === 'parts';

export default calculator(
  {
    cautions: ['keepFingersCaliper', 'filamentFedThrough', 'switchOffUnplug'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'c',
        max: 'e_lim',
        symmetric: true,
        cite: commonPractice,
        when: travelled,
      },
      { of: 'c', max: 'e_lim', symmetric: true, as: 'c_feed', cite: commonPractice, when: fed },
      {
        of: 'e_d',
        max: 'e_lim',
        symmetric: true,
        cite: commonPractice,
        when: printed,
      },
      { of: 'q', max: 'e_lim', symmetric: true, cite: commonPractice, when: { ...onAxis, by: ['parts', 'print'] } },
      { of: 'q', max: 'q_m', symmetric: true, as: 'q_travel', cite: commonPractice, when: travelled },
      {
        of: 'q',
        max: 'e_lim',
        symmetric: true,
        cite: commonPractice,
        when: { axis: 'feed', fed: 'parts' },
      },
    ],
    measured: ['S_x', 'S_y', 'S_z', 'S_e', 'x_2', 'r_2', 'm_o', 'm_i', 'm_1', 'm_2'],
    levers: { S_x: number, S_y: number, S_z: number, S_e: number },
    action: instruct,
    beware: [
      'beltsPitchDoes',
      'stepsCorrectedPrinted',
      'beltUnderN',
      'lostMotionLooks',
      'holesComeOut',
      'firstLayersSqueezed',
      'filamentNumberFound',
      'shrinkageWorkedOut',
    ],
    examples,
  },
  words,
);
