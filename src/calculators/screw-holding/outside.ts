import type { OutsideProof } from '../../engine/outside';
import { bare, by, mott, slenderChecks } from './outside-slender';
import { trialChecks } from './outside-trial';

const PRINTED =
  'Common practice, no source: lead angles and efficiencies (square thread, friction 0.1 and 0.2) that are in print for trapezoidal screws';

/** One row of the printed tables: efficiencies are rounded to whole percents, and to half of one with the friction. */
const row = (screw: string, size: Readonly<Record<string, string>>, low: number, high: number): OutsideProof[] =>
  [
    { mu: '0.1 ± 0', eta: low },
    { mu: '0.2 ± 0', eta: high },
  ].map(({ mu, eta }) => ({
    source: PRINTED,
    given: { ...bare, ...size, mu },
    choices: { screw, screws: 'one' },
    expect: { eta_s: [eta, 0.5] },
  }));

/** A tenth of the book's load: torques are proportional. */
const shigley = {
  M_z: '65.26184 kg ± 0',
  d: '32 mm ± 0',
  P: '4 mm',
  P_h: '8 mm',
  alpha: '0 deg',
  mu: '0.08 ± 0',
  mu_c: '0.08',
  d_c: '40 mm ± 0',
  T_d: '0 N·mm',
  T_b: '0 N·mm',
} as const;
const weights = 'BIPM, SI brochure: weight at 9.80665 m/s²; mathjs with units';
const idle = { M_z: '2 kg ± 0', T_d: '12 N·mm ± 0', T_b: '3 N·mm ± 0', mu: '0.15 ± 0', mu_c: '0', i_g: '2' } as const;

/** Friction and 24 + 3 N·mm against the slope at 9.80665 N on 3.5 mm of radius, by the angles. */
const slope = 8 / (7 * Math.PI);
const MIDDLE =
  (0.15 / Math.cos(Math.PI / 12) + (27 / (9.80665 * 3.5)) * (1 + (0.15 / Math.cos(Math.PI / 12)) * slope)) / slope;

const checks: readonly OutsideProof[] = [
  {
    source:
      'Shigley, Mechanical Engineering Design, example 8-1 (from memory), at a tenth of its load: 15.94, 10.24, 26.18, 9.77 N·m, 0.311',
    given: shigley,
    choices: { screws: 'one' },
    expect: {
      F: [640, 0.01],
      d_2: [30, 1e-9],
      n_s: [2, 1e-9],
      T_R: [1594, 1],
      T_c: [1024, 0.5],
      T_u: [2618, 1],
      T_L: [-46.6, 0.5],
      T_n: [977, 1],
      eta_c: [31.1, 0.1],
    },
  },
  {
    source:
      'The same example: a margin of one is where the torque left over, 0.466 N·m at a tenth 46.6 N·mm, is just held; by collar, by motor, by drag',
    given: { ...shigley, mu_c: '0', T_d: '40.6 N·mm ± 0', T_b: '6 N·mm ± 0' },
    choices: { screws: 'one' },
    expect: { m: [1, 0.002], T_m: [40.6, 1e-9], T_1: [46.6 / (1 - (0.08 * Math.PI * 30) / 8), 10] },
  },
  {
    source: 'The same example: collar friction that just balances the 46.6 N·mm left over',
    given: { ...shigley, mu_c: `${46.6 / 12800} ± 0` },
    choices: { screws: 'one' },
    expect: { m_p: [1, 0.002], m: [1, 0.002] },
  },
  {
    source:
      'Mott, Machine Elements in Mechanical Design, example 17-1: 1809 lbf·in at a hundredth of 12 500 lbf, lead angle 3.39°',
    given: mott,
    choices: { screw: 'acme', screws: 'one' },
    expect: {
      d_2: [1.3429 * 25.4, 1e-6],
      lambda: [3.39, 0.005],
      T_R: [by('18.09 lbf in', 'N mm'), 11],
      eta: [27.4, 0.15],
    },
  },
  ...row('tr10x2', {}, 41, 26),
  ...row('tr10x3', {}, 52, 35),
  ...row('tr10x4', {}, 58, 40),
  ...row('tr12x6', {}, 63, 46),
  ...row('tr16x4', {}, 47, 31),
  ...row('tr16x4', { d: '20 mm', P: '4 mm', P_h: '20 mm' }, 75, 59),
  ...row('tr16x4', { d: '20 mm', P: '5 mm', P_h: '20 mm' }, 76, 60),
  {
    source: `${PRINTED}: Tr 10 × 2, 4°02′; core 7.5 and pitch diameter 9 mm in a worked example to ISO 2904`,
    given: { ...bare, mu: '0.1 ± 0' },
    choices: { screw: 'tr10x2', screws: 'one' },
    expect: { lambda: [4 + 2 / 60, 1 / 60], d_2: [9, 1e-9], d_3: [7.5, 1e-9] },
  },
  {
    source: `${PRINTED}: Tr 12 × 3, 5°12′`,
    given: bare,
    choices: { screw: 'tr12x3', screws: 'one' },
    expect: { lambda: [5 + 12 / 60, 1 / 60] },
  },
  {
    source: `${PRINTED}: Tr 12 × 6 (P3), 10°19′`,
    given: bare,
    choices: { screw: 'tr12x6', screws: 'one' },
    expect: { lambda: [10 + 19 / 60, 1 / 60], n_s: [2, 1e-9] },
  },
  {
    source:
      'ISO 2903, limits of Tr 8 × 1.5 (from memory): a core of 6.200 mm, and 7.183 mm less its allowance of 67 µm as pitch diameter',
    given: bare,
    choices: { screw: 'tr8x1.5', screws: 'one' },
    expect: { d_3: [6.2, 0.001], d_2: [7.183 + 0.067, 0.001] },
  },
  {
    source:
      'The definition of locking: at the friction that just locks, no torque is needed to lower; mathjs tan and cos',
    given: { ...bare, mu: '0.0878468 ± 0' },
    choices: { screw: 'tr8x2', screws: 'one' },
    expect: {
      mu_l: [by('tan(atan(2 / (7 pi))) * cos(15 deg)', ''), 1e-6],
      m_t: [1, 1e-4],
      P_n: [by('2 / 1.5', ''), 0.001],
    },
  },
  {
    source:
      'mathjs: balance of forces on the developed thread, solved for the friction as a rotation by the friction angle',
    given: { ...idle, i_g: '1' },
    choices: { screw: 'tr8x8', screws: 'one' },
    expect: {
      T_L: [by('-2 * 9.80665 * 3.5 * tan(atan(8 / (7 pi)) - atan(0.15 / cos(15 deg)))', ''), 1e-6],
      T_R: [by('2 * 9.80665 * 3.5 * tan(atan(8 / (7 pi)) + atan(0.15 / cos(15 deg)))', ''), 1e-6],
      eta: [by('100 * tan(atan(8 / (7 pi))) / tan(atan(8 / (7 pi)) + atan(0.15 / cos(15 deg)))', ''), 1e-6],
    },
  },
  {
    source:
      'mathjs: the margin taken back to its meaning. A brake of T_k, or a weight cut to F_m, must leave exactly the margin: μ and holding torque over 1.5 then balance the thread',
    given: { ...idle, i_g: '1' },
    choices: { screw: 'tr8x8', screws: 'one' },
    expect: {
      // Friction that would do alone, 1.5 μ_l, less what μ and 15 N·mm at this weight come to, turned back into torque.
      T_k: [
        by(
          '(1.5 - (0.15 / cos(15 deg) + 15 / (2 * 9.80665 * 3.5) * (1 + 0.15 / cos(15 deg) * 8 / (7 pi))) / (8 / (7 pi))) * 2 * 9.80665 * 3.5 * (8 / (7 pi)) / (1 + 0.15 / cos(15 deg) * 8 / (7 pi))',
          '',
        ),
        1e-6,
      ],
      F_m: [
        by('15 * (1 + 0.15 / cos(15 deg) * 8 / (7 pi)) / (3.5 * (1.5 * 8 / (7 pi) - 0.15 / cos(15 deg)))', ''),
        1e-6,
      ],
    },
  },
  {
    source: `${weights}: two screws, carriage 0.5 kg at a quarter of the way; the far side is the near side's mirror image`,
    given: { ...idle, M: '0.5 kg ± 0', S: '400 mm ± 0', x: '100 mm ± 0', theta_s: '1.8 deg' },
    choices: { screw: 'tr8x8' },
    expect: {
      F: [by('(1.5 kg / 2 + 0.5 kg * 300 / 400) * 9.80665 m/s^2', 'N'), 1e-9],
      F_2: [by('(1.5 kg / 2 + 0.5 kg * 100 / 400) * 9.80665 m/s^2', 'N'), 1e-9],
      T_m: [24, 1e-9],
      h_e: [by('8 / 50 / 2', ''), 1e-9],
    },
  },
  {
    source:
      'Balance of forces: with the carriage in the middle both screws carry alike, and their margins are one and the same',
    given: { ...idle, M: '0.5 kg ± 0', S: '400 mm ± 0', x: '0 mm ± 0' },
    choices: { screw: 'tr8x8' },
    expect: { F: [9.80665, 1e-9], F_2: [9.80665, 1e-9], m: [MIDDLE, 1e-6], m_2: [MIDDLE, 1e-6] },
  },
  {
    source:
      'A lever: a carriage that is all the weight, halfway out, loads the screws 3 to 1; without drag the motor’s part of the margin is 3 to 1 too',
    given: { ...idle, M: '2 kg ± 0', S: '400 mm ± 0', x: '100 mm ± 0', mu: '0.01 ± 0', alpha: '0 deg' },
    choices: { screw: 'tr8x8' },
    expect: {
      F: [1.5 * 9.80665, 1e-9],
      F_2: [0.5 * 9.80665, 1e-9],
      m: [by('0.01 * 7 pi / 8 + 27 / (1.5 * 9.80665 * 8 / (2 pi)) * (1 + 0.01 * 8 / (7 pi))', ''), 1e-5],
      m_2: [by('0.01 * 7 pi / 8 + 27 / (0.5 * 9.80665 * 8 / (2 pi)) * (1 + 0.01 * 8 / (7 pi))', ''), 1e-5],
    },
  },
  {
    source:
      'Energy of one turn: without friction a margin of one is the weight times the lead over 2 π; two screws on one belted motor share it',
    given: { ...idle, mu: '0.01 ± 0', T_b: '0 N·mm' },
    choices: { screw: 'tr8x2', drive: 'belt' },
    expect: { F: [9.80665, 1e-9], T_m: [12, 1e-9], T_1: [by('9.80665 * 2 / (2 pi)', ''), 0.005] },
  },
  {
    source:
      'Work of one turn with the same friction lost both ways: T = F P / (2 π η), driven back T = F P η₂ / (2 π), η₂ = 2 − 1/η; mathjs with units',
    given: { ...bare, M_z: '10 kg ± 0', P_h: '5 mm', eta_b: '90 % ± 0', T_d: '10 N·mm ± 0' },
    choices: { screw: 'ball', screws: 'one' },
    expect: {
      T_R: [by('10 kg * 9.80665 m/s^2 * 5 mm / (2 pi * 0.9)', 'N mm'), 1e-6],
      T_L: [by('-10 kg * 9.80665 m/s^2 * 5 mm * (2 - 1 / 0.9) / (2 pi)', 'N mm'), 1e-6],
      T_1: [by('10 kg * 9.80665 m/s^2 * 5 mm / (2 pi)', 'N mm'), 1e-6],
      m: [by('(10 + 78.0388 * 1 / 9) / 78.0388', ''), 1e-5],
    },
  },
  {
    source: 'Work of one turn: half of it lost is the edge of driving back',
    given: { ...bare, M_z: '10 kg ± 0', eta_b: '50 % ± 0' },
    choices: { screw: 'ball', screws: 'one' },
    expect: { m_t: [1, 1e-9], m: [1, 1e-9], T_L: [0, 1e-9] },
  },
  {
    source:
      'BIPM, SI brochure: three screws, evenly loaded, carry 1 kg each of 3 kg; 200 full steps a turn are 50 electrical turns',
    given: { ...idle, M_z: '3 kg ± 0', n_z: '3', k_u: '1 ± 0', i_g: '1', theta_s: '1.8 deg' },
    choices: { screw: 'tr8x8', screws: 'more' },
    expect: { F: [9.80665, 1e-9], T_m: [12, 1e-9], h_e: [by('8 / 50', ''), 1e-9] },
  },
  {
    source:
      'Shigley, example 8-1 (from memory), at a tenth of its load; drag of 500 N·mm in the bearings hinders both ways',
    given: { ...shigley, T_b: '500 N·mm ± 0' },
    choices: { screws: 'one' },
    expect: { T_u: [3118, 1], T_n: [1477, 1] },
  },
  {
    source:
      'Machinery’s Handbook, square thread (from memory): (1 − μ tan λ) / (1 + μ cot λ), without the friction angle, by mathjs',
    given: { ...bare, mu: '0.4 ± 0' },
    choices: { screw: 'tr8x8', screws: 'one' },
    expect: { eta_s: [by('100 * (1 - 0.4 * 8 / (7 pi)) / (1 + 0.4 * 7 pi / 8)', ''), 1e-9] },
  },
  {
    source: 'Gearing two to one: twice the drag of the motor at the screw',
    given: idle,
    choices: { screw: 'tr8x8', screws: 'one' },
    expect: { T_m: [24, 1e-9] },
  },
  {
    source: 'Fact: 200 full steps a turn are 50 electrical turns; two of the motor make one of a lead of 8 mm',
    given: { ...idle, M_z: '3 kg ± 0', n_z: '3', k_u: '1 ± 0', theta_s: '1.8 deg' },
    choices: { screw: 'tr8x8', screws: 'more' },
    expect: { h_e: [by('8 / 100', ''), 1e-9] },
  },
  ...slenderChecks,
  ...trialChecks,
];
export default checks;
