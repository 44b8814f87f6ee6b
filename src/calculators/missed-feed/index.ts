import { commonPractice } from '../../reference/citation';
import { calculator, derived } from '../../engine/calculator';
import { contradiction, instruct } from './action';
import { choices } from './choices';
import { compare } from './compare';
import { examples } from './examples';
import { formulas } from './formulas';
import { inputs } from './inputs';
import words from './words/en';

/** What no seam is too weak for by its duty alone. */
const seamed = { duty: ['shown', 'used', 'loaded'] };
const stuck = { ...seamed, stands: 'stuck' };
const off = { ...seamed, stands: 'off' };
const cheaper = derived('savingCostMore');

export default calculator(
  {
    cautions: [
      'jamClearedHot',
      'wireDrillNeedle',
      'heaterOffMachine',
      'plasticBakedBlocked',
      'knifeSawAway',
      'partHoldsPerson',
    ],
    choices,
    inputs,
    formulas,
    limits: [
      { of: 's_r', min: 's_n', cite: commonPractice, when: stuck },
      {
        of: 'z_b',
        max: 'b_lim',
        cite: commonPractice,
        when: { ...stuck, band: ['none', 'trim'] },
      },
      { of: 'C_r', max: 'C_n', cite: cheaper, when: stuck },
      { of: 's_g', min: 's_n', cite: commonPractice, when: off },
      { of: 'C_g', max: 'C_n', cite: cheaper, when: off },
      { of: 'n_j', max: 'n_0', cite: commonPractice, when: { duty: 'safety' } },
    ],
    measured: ['Z_s', 'G', 't_d', 'm_f', 'b_m', 'w_b'],
    contradiction,
    action: instruct,
    ways: compare,
    beware: [
      'timeWeightTell',
      'layersDifferArea',
      'strengthsTypicalWide',
      'starvedLayerLooks',
      'filamentHasRun',
      'sensorFilamentStops',
    ],
    examples,
  },
  words,
);
