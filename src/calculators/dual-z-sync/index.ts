import { angle, count, length, ratio, slope } from '../../quantity/kinds';
import { cite, commonPractice, derived } from '../../reference/citation';
import { calculator, formula } from '../../engine/calculator';
import { action } from './action';
import { choices, inputs } from './inputs';

const pitchOfTurn = cite(
  'ISO 5296 and ISO 13050, synchronous belt drives',
  'pitch geometry: one tooth is one pitch',
  true,
);
const lead = cite('Machinery’s Handbook', 'power screws: lead = pitch × starts', true);

export default calculator({
  cautions: [
    'Switch off and unplug before a hand goes near belts or screws; a homing move pinches.',
    'Support the gantry before loosening a screw or a belt: it can drop.',
    'Let nozzle and bed cool before a gauge or a hand goes under the nozzle.',
  ],
  choices,
  inputs,
  formulas: [
    formula('h_t = P_h / z', 'Height of one tooth', length.mm, pitchOfTurn, { drive: 'belt' }),
    formula('h_t = P_h * theta_s / rev', 'Height of one full step', length.mm, lead, { drive: 'motors' }),
    formula('dh_s = dh * S / S_m', 'Difference at the screws', length.mm, derived('similar triangles'), {
      by: 'heights',
    }),
    formula(
      'dh_s = (i_g - i_f) * S',
      'Difference at the screws',
      length.mm,
      derived('rise = slope × run, the gantry against the frame'),
      { by: 'level' },
    ),
    formula('n = dh_s / h_t', 'Teeth or steps out, as measured', ratio.one, derived('height over height of one')),
    formula('n_w = round(n)', 'Whole teeth or steps out', count.one, derived('nearest whole number')),
    formula('r = dh_s - n_w * h_t', 'Remainder', length.mm, derived('what whole teeth or steps leave')),
    formula('phi = rev * r / P_h', 'Remainder as screw rotation', angle.deg, lead),
    formula('psi = rev * dh_s / P_h', 'Whole difference as screw rotation', angle.deg, lead),
    formula('i = dh_s / S', 'Slope', slope.mm_m, derived('rise over run')),
    formula('alpha = atan(i)', 'Slope angle', angle.deg, derived('rise over run')),
    formula('dh_bed = dh_s * W / S', 'Error across the bed', length.mm, derived('similar triangles')),
    formula('dh_lim = k_1 * h_1', 'Allowed across the bed', length.mm, commonPractice),
  ],
  limits: [
    {
      of: 'dh_bed',
      max: 'dh_lim',
      symmetric: true,
      label: 'Height difference across the bed',
      cite: commonPractice,
    },
  ],
  action,
  proof:
    'Measure both ends again at the same places: the difference across the bed should now be within the limit. Then run the gantry up and down once and measure a third time; if it has moved again, something slips.',
  beware: [
    'Two heights taken from a bent frame or an untrue bed show the frame, not the sync: measure from something flat.',
    'A whole number of teeth can also come from a grub screw that slipped; mark screw and pulley with a pen and look again in a week.',
  ],
  examples: [
    {
      title: 'Two teeth out, read with a caliper',
      given: { dh: '0.75 mm', S_m: '400 mm ± 0', S: '400 mm ± 0', P_h: '8 mm', z: '20' },
      expect: { h_t: [0.4, 1e-9], n: [1.875, 1e-9], n_w: [2, 0], r: [-0.05, 1e-9], phi: [-2.25, 1e-9] },
      verdict: 'beyond',
      source: derived('8 mm / 20 = 0.4 mm; 0.75 = 2 × 0.4 − 0.05; 360° × −0.05 / 8 = −2.25°'),
    },
    {
      title: 'The same difference over half the distance counts double',
      given: { dh: '0.4 mm', S_m: '200 mm ± 0', S: '400 mm ± 0', W: '200 mm ± 0', P_h: '8 mm', z: '16' },
      expect: { dh_s: [0.8, 1e-9], n: [1.6, 1e-9], dh_bed: [0.4, 1e-9], i: [2, 1e-9] },
      verdict: 'beyond',
      source: derived('similar triangles by hand'),
    },
    {
      title: 'Two motors: steps instead of teeth',
      given: { dh: '0.12 mm', S_m: '300 mm ± 0', S: '300 mm ± 0', W: '300 mm ± 0', P_h: '8 mm', theta_s: '1.8 deg' },
      choices: { drive: 'motors' },
      expect: { h_t: [0.04, 1e-9], n: [3, 1e-9], psi: [5.4, 1e-9] },
      verdict: 'beyond',
      source: derived('8 mm × 1.8° / 360° = 0.04 mm; 0.12 / 8 × 360° = 5.4°'),
    },
    {
      title: 'With the level, on a table that leans',
      given: { i_g: '5 mm/m ± 0', i_f: '3 mm/m ± 0', S: '400 mm ± 0', W: '200 mm ± 0', P_h: '8 mm', z: '20' },
      choices: { by: 'level' },
      expect: { dh_s: [0.8, 1e-9], n: [2, 1e-9], i: [2, 1e-9], dh_bed: [0.4, 1e-9] },
      verdict: 'beyond',
      source: derived('(5 − 3) mm/m × 0.4 m = 0.8 mm, two teeth of 0.4 mm'),
    },
  ],
});
