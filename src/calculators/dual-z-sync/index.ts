import { angle, count, length, ratio, slope } from '../../quantity/kinds';
import { commonPractice } from '../../reference/citation';
import { calculator, formula, cite, derived } from '../../engine/calculator';
import { action } from './action';
import { choices, inputs } from './inputs';
import words from './words/en';

const pitchOfTurn = cite(
  'ISO 5296 and ISO 13050, synchronous belt drives',
  'pitchGeometryTooth',
  true,
);
const lead = cite('Machinery’s Handbook', 'powerScrewsLead', true);

export default calculator({
  cautions: ['switchOffUnplug', 'supportGantryBefore', 'letNozzleBed'],
  choices,
  inputs,
  formulas: [
    formula('h_t = P_h / z', length.mm, pitchOfTurn, { drive: 'belt' }, 'h_t_belt'),
    formula('h_t = P_h * theta_s / rev', length.mm, lead, { drive: 'motors' }, 'h_t_motors'),
    formula('dh_s = dh * S / S_m', length.mm, derived('similarTriangles'), {
      by: 'heights',
    }),
    formula(
      'dh_s = (i_g - i_f) * S',
      length.mm,
      derived('riseSlopeRun'),
      { by: 'level' },
    ),
    formula('n = dh_s / h_t', ratio.one, derived('heightOverHeight')),
    formula('n_w = round(n)', count.one, derived('nearestWholeNumber')),
    formula('r = dh_s - n_w * h_t', length.mm, derived('wholeTeethSteps')),
    formula('phi = rev * r / P_h', angle.deg, lead),
    formula('psi = rev * dh_s / P_h', angle.deg, lead),
    formula('i = dh_s / S', slope.mm_m, derived('riseOverRun')),
    formula('alpha = atan(i)', angle.deg, derived('riseOverRun')),
    formula('dh_bed = dh_s * W / S', length.mm, derived('similarTriangles')),
    formula('dh_lim = k_1 * h_1', length.mm, commonPractice),
  ],
  limits: [
    {
      of: 'dh_bed',
      max: 'dh_lim',
      symmetric: true,
      cite: commonPractice,
    },
  ],
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
}, words);
