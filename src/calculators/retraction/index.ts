import { commonPractice } from '../../reference/citation';
import { calculator, choice, derived } from '../../engine/calculator';
import { instruct } from './action';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { plastics } from './materials';
import words from './words/en';

export default calculator(
  {
    cautions: ['nozzleHeaterBlock', 'hotPlasticGives', 'driveGearPinches'],
    choices: {
      drive: choice(
        {
          tube: { set: { L: [450, 20], a_lo: 0.5, a_hi: 2, x_max: 7, x_step: 0.5 } },
          head: { set: { L: [45, 10], a_lo: 0.1, a_hi: 0.7, x_max: 2, x_step: 0.1 } },
        },
        'tube',
        { from: 'extruder.drive' },
      ),
      material: choice(plastics, 'pla'),
      source: choice({ table: {}, force: {} }, 'table'),
      land: choice({ same: {}, scaled: {} }, 'same'),
    },
    inputs,
    formulas,
    limits: [
      {
        of: 'x_set',
        min: 'x_lo',
        max: 'x_hi',
        cite: commonPractice,
      },
      // One for the figure and one for the setting, each by its own name, so that the instruction can tell them apart.
      { of: 'x_r', max: 'x_max', cite: commonPractice },
      {
        of: 'x_max',
        min: 'x_set',
        cite: commonPractice,
      },
      { of: 'F_g', max: 'F_max', cite: commonPractice },
      {
        of: 'gamma_w',
        min: 'gamma_min',
        cite: commonPractice,
        when: { source: 'table' },
      },
      {
        of: 'D_t',
        min: 'd_f',
        cite: derived('pass'),
        when: { drive: 'tube' },
      },
      { of: 'd_0', min: 'd', cite: derived('shapeNozzle') },
    ],
    action: (ctx) => instruct(ctx, ctx.choice('drive'), ctx.choice('source')),
    beware: [
      'absolutePressuresTabulated',
      'conesFormulaCounts',
      'bendsTakenEven',
      'partLagSpringiness',
      'slackCountsWhole',
      'coldDriveWorn',
      'towardsEndBleeding',
    ],
    examples,
  },
  words,
);
