import type { OutsideProof } from '../../engine/outside';

/** The pound-force in newtons (NIST SP 811, appendix B.8). */
const LBF = 4.4482216152605;

const spans = { L_1: '300 mm ± 0', L_2: '240 mm ± 0', f_1: '80 Hz ± 0', f_2: '90 Hz ± 0' } as const;
const short = { L_1: '300 mm ± 0', L_2: '100 mm ± 0', mu_a: '8 g/m ± 0', EI_1: '50 N·mm² ± 0' } as const;

const checks: readonly OutsideProof[] = [
  {
    source: 'OpenStax, University Physics 1, ch. 16: 6 g/m, 2 m, 19.6 N sounds 14.29 Hz (from memory)',
    given: {
      L_1: '2 m ± 0',
      f_1: '14.29 Hz ± 0',
      L_2: '1 m ± 0',
      f_2: '28.58 Hz ± 0',
      m_s: '12 g ± 0',
      l_s: '2 m ± 0',
    },
    choices: { mass: 'weigh' },
    expect: {
      mu_1: [6, 1e-9],
      mu_2: [6, 1e-9],
      T_01: [19.6, 0.01],
      T_02: [19.6, 0.01],
      T_1: [19.6, 0.01],
      T_2: [19.6, 0.01],
      d_T: [0, 1e-9],
      f_2e: [28.58, 0.01],
      f_1e: [14.29, 0.005],
    },
  },
  {
    source: 'Mersenne’s laws of strings: the note goes with one over the length and one over the root of the mass',
    given: {
      L_1: '400 mm ± 0',
      f_1: '50 Hz ± 0',
      L_2: '200 mm ± 0',
      f_2: '60 Hz ± 0',
      m_s: '10 g ± 0',
      l_s: '1000 mm ± 0',
      m_s2: '80 g ± 0',
      l_s2: '2000 mm ± 0',
    },
    choices: { belts: 'different', mass: 'weigh' },
    // Four times the mass halves the note, half the length doubles it.
    expect: { mu_2: [40, 1e-9], f_2e: [50, 1e-9], f_1e: [60, 1e-9] },
  },
  {
    source: 'GNU units 2.22: 4 · 7.8 g/m · (240 mm · 90 Hz)², against 17.9712 N; percentage of the mean by bc',
    given: { ...spans, w: '6 mm ± 0', m_0: '13 g/m ± 0' },
    expect: { mu_1: [7.8, 1e-9], T_2: [14.556672, 1e-6], d_T: [-20.994475, 1e-5] },
  },
  {
    source:
      'Suppliers’ tables: 5 mm pitch T profile, 25 mm wide, 0.053 kg/m, 900 N; AT profile, 100 mm wide, 0.34 kg/m, allowable 5600 N at ten times 10 mm',
    given: { ...spans, w: '25 mm', w_2: '100 mm', m_0: '21 g/m', m_02: '34 g/m', T_a: '360 N', T_a2: '560 N' },
    choices: { belts: 'different', belt: 'straight5', belt_2: 'wide5' },
    expect: { mu_1: [53, 0.6], mu_2: [340, 1e-9], T_hi1: [900, 1e-9], T_hi2: [5600, 1e-9] },
  },
  {
    source:
      'A table by the inch (supplier’s, from memory): 25 lbf allowable for 25.4 mm; as the pound-force by definition, 10 lbf for 25.4 mm',
    given: {
      ...spans,
      w: '25.4 mm',
      w_2: '25.4 mm',
      T_b: '17.5127 N',
      T_b2: '17.5127 N',
      T_a: '43.7817 N',
      T_a2: '43.7817 N',
    },
    choices: { belts: 'different' },
    expect: { T_lo1: [10 * LBF, 1e-3], T_hi2: [25 * LBF, 1e-3], T_lo2: [10 * LBF, 1e-3] },
  },
  {
    source: 'The same table by the inch, two belts alike',
    given: { ...spans, w: '25.4 mm', T_b: '17.5127 N', T_a: '43.7817 N' },
    expect: { T_hi1: [25 * LBF, 1e-3], T_hi2: [25 * LBF, 1e-3], T_lo2: [10 * LBF, 1e-3] },
  },
  {
    source: 'Exact frequency of held beams under 20 N (Euler and Bernoulli), root by scipy 1.17 brentq',
    given: { ...short, f_1: '84.2326836 Hz ± 0', f_2: '258.4847815 Hz ± 0' },
    choices: { mass: 'typed', ends: 'clamped' },
    expect: {
      mu_1: [8, 1e-9],
      T_01: [20.4340176, 1e-5],
      T_02: [21.3806023, 1e-5],
      B_1: [0.000555556, 1e-9],
      B_2: [0.005, 1e-9],
      beta_1: [0.0052142, 1e-6],
      beta_2: [0.0152924, 1e-6],
      T_1: [20, 0.00013],
      T_2: [20, 0.004],
      epsilon_1: [0.0052705, 1e-6],
      epsilon_2: [0.0158114, 2e-6],
      f_2e: [258.48478, 0.025],
      f_1e: [84.23268, 0.008],
    },
  },
  {
    source: 'Two hundred beam elements with tension, hinged ends, scipy 1.17 linalg.eigh',
    given: { ...short, f_1: '83.34475575 Hz ± 0', f_2: '250.3082353 Hz ± 0' },
    choices: { mass: 'typed', ends: 'pinned' },
    expect: {
      B_1: [0.000555556, 1e-9],
      T_1: [20, 1e-4],
      T_2: [20, 1e-4],
      f_2e: [250.30824, 1e-4],
      f_1e: [83.34476, 1e-4],
    },
  },
  {
    source: 'The same elements and root finder, second belt 15 g/m, 200 mm, 8·10⁻⁵ N·m² under 20 N',
    given: {
      L_1: '300 mm ± 0',
      f_1: '84.2326836 Hz ± 0',
      mu_a: '8 g/m ± 0',
      EI_1: '50 N·mm² ± 0',
      L_2: '200 mm ± 0',
      f_2: '93.19631737 Hz ± 0',
      mu_b: '15 g/m ± 0',
      EI_2: '80 N·mm² ± 0',
    },
    choices: { belts: 'different', mass: 'typed', ends: 'clamped' },
    expect: { mu_2: [15, 1e-9], B_2: [0.002, 1e-9], T_2: [20, 0.001], f_2e: [93.19632, 0.003] },
  },
  {
    source: 'Belt laid over a circle between two fixed points, lengths by numpy, slope at the start: 120° of wrap',
    given: { ...spans, p: '3 mm', theta_w: '120 deg ± 0' },
    expect: { x_1: [3 / 1.7320508, 1e-6] },
  },
  {
    source:
      'Fact of the trade: an idler wrapped half round takes up two lengths of belt, so two teeth of 2 mm are 2 mm',
    given: { ...spans, x: '2.25 mm ± 0.01 mm', x_d: '0.2 mm', p: '2 mm', theta_w: '180 deg ± 0' },
    expect: { x_1: [1, 1e-9], n: [2.05, 1e-9], n_w: [2, 0], r_x: [0.05, 1e-9] },
  },
  {
    source: 'Common practice, no source: spans under about 20 belt heights are no strings; 20 × 2.4 mm',
    given: { ...spans, h: '2.4 mm' },
    expect: { L_min: [48, 1e-9] },
  },
  {
    source: 'Exact frequency of held beams of 250 and 300 mm under 20 N, root by bisection in Python',
    given: { ...short, L_1: '250 mm ± 0', L_2: '300 mm ± 0', f_1: '101.3011836 Hz ± 0', f_2: '84.2326836 Hz ± 0' },
    choices: { mass: 'typed', ends: 'clamped' },
    expect: { T_2: [20, 0.00013], beta_2: [0.0052142, 1e-6], f_1e: [101.3011836, 0.0008] },
  },
  {
    source: 'Mersenne’s laws of strings: half the length sounds the octave, the double length the octave below',
    given: { L_1: '400 mm ± 0', f_1: '50 Hz ± 0', L_2: '200 mm ± 0', f_2: '60 Hz ± 0' },
    expect: { f_2e: [100, 1e-9], f_1e: [30, 1e-9] },
  },
  {
    source: 'Fact of the trade, two teeth of 2 mm are 2 mm: the other way, 2.45 mm are nearer to two than to three',
    given: { ...spans, x: '-2.25 mm ± 0.01 mm', x_d: '0.2 mm', p: '2 mm', theta_w: '180 deg ± 0' },
    expect: { n: [-2.45, 1e-9], n_w: [-2, 0], r_x: [-0.45, 1e-9] },
  },
];
export default checks;
