import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { instruct } from './action';
import { choices } from './choices';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import { DEGREE, DIAL, hottest, warmest } from './setting';
import words from './words/en';

export default calculator(
  {
    cautions: ['gotWet', 'dryBoxes', 'freshAir'],
    choices,
    inputs,
    formulas,
    limits: [
      {
        of: 'dT_d',
        min: 'm_d',
        cite: derived('waterSettlesColder'),
        when: { ask: 'cold' },
      },
      {
        of: 'U_b',
        max: 'U_lim',
        cite: commonPractice,
        when: { ask: 'box' },
      },
      { of: 'T_b', max: 'T_max', cite: derived('softensThere'), when: { ask: 'box' } },
      {
        of: 'dg',
        max: 'dg_lim',
        symmetric: true,
        cite: commonPractice,
        when: { ask: 'swing' },
      },
    ],
    measured: ['T', 'U', 'T_s', 'T_1', 'T_2'],
    levers: {
      T_s: { step: () => DEGREE, from: (ask) => ask.number('T_s'), to: warmest },
      T_b: { step: () => DIAL, from: (ask) => ask.number('T'), to: (ask) => hottest(ask) ?? 0 },
      T_1: { step: () => DEGREE },
    },
    action: instruct,
    beware: [
      'hygrometers',
      'againstPrintedTables',
      'belowFreezing',
      'swingTakenSame',
      'unevenWarmthBends',
      'printedBrackets',
    ],
    examples,
  },
  words,
);
