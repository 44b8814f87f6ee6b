import { derived } from '../../engine/calculator';

const job = {
  h: '0.2 mm',
  h_1: '0.2 mm',
  w: '0.5 mm',
  v: '50 mm/s',
  t_L: '60 s ± 0',
  q_x: '80 % ± 0',
  d_f: '1.75 mm ± 0',
  rho: '1.25 g/cm³ ± 0',
  H_t: '100 mm',
} as const;
const sure = { j_c: '60 % ± 5 %', j_g: '60 % ± 5 %' } as const;

export const examples = [
  {
    key: 'ranOutNight',
    given: { ...job, ...sure, Z_s: '84 mm', G: '4 mm ± 0.03 mm' },
    expect: {
      Q: [5, 1e-9],
      A_f: [2.4053, 1e-4],
      v_f: [2.0787, 1e-4],
      V_L: [240, 1e-9],
      l_L: [99.78, 0.01],
      n_s: [420, 1e-9],
      n_g: [400, 1e-9],
      n_l: [20, 1e-9],
      Z_g: [80, 1e-9],
      l_l: [1.9956, 1e-3],
      t_r: [1.66667, 1e-5],
      t_a: [8.33333, 1e-5],
      m_a: [150, 1e-9],
    },
    verdict: 'beyond',
    source: derived('ranOutNight'),
  },
  {
    key: 'sameWorkCosts',
    given: { ...job, ...sure, Z_s: '84 mm', G: '4 mm ± 0.03 mm', r_h: '0' },
    expect: { C_n: [7.16667, 1e-5], C_r: [2.86667, 1e-5], C_g: [3.15, 1e-5], z_l: [4, 1e-9] },
    verdict: 'within',
    source: derived('sameWorkCosts'),
  },
  {
    key: 'cameOffBed',
    given: { ...job, ...sure, Z_s: '84 mm', t_d: '20 min ± 10 min', r_h: '0' },
    choices: { by: 'delay', stands: 'off' },
    expect: { n_l: [20, 1e-9], n_g: [400, 1e-9], C_g: [3.15, 1e-5], T_g: [2.33333, 1e-5] },
    verdict: 'within',
    source: derived('cameOffBed'),
  },
  {
    key: 'weightGroundFilament',
    given: {
      ...job,
      ...sure,
      Z_s: '84 mm',
      m_f: '120 g ± 1 g',
      m_t: '150 g ± 1 g',
      k_u: '1 ± 0',
      b_m: '2 mm ± 0.5 mm',
      w_b: '0.1 mm ± 0.03 mm',
      k_b: '75 % ± 0',
    },
    choices: { by: 'fed', band: 'left' },
    expect: { n_g: [400, 1e-9], s_b: [15, 1e-9], z_b: [2, 1e-9] },
    verdict: 'beyond',
    source: derived('weightGroundFilament'),
  },
  {
    key: 'typicalStrengthsPart',
    given: { ...job, Z_s: '84 mm', G: '4 mm ± 0.03 mm', r_h: '0' },
    choices: { duty: 'loaded' },
    expect: { s_r: [60, 1e-9], tau: [2, 1e-9], t_o: [4.60517, 1e-5], z_b: [0.0191882, 1e-6] },
    verdict: 'too close',
    source: derived('typicalStrengthsPart'),
  },
] as const;
