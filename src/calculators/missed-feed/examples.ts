import { derived } from '../../reference/citation';

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
    title: 'Ran out at night, 4 mm below the nozzle: it stands, and going on pays',
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
    source: derived('0.2 · 0.5 · 50 = 5 mm³/s, 48 s of 60: 240 mm³, 0.3 g; 25 min of work cost more than a new one'),
  },
  {
    title: 'The same with work that costs nothing: worth it',
    given: { ...job, ...sure, Z_s: '84 mm', G: '4 mm ± 0.03 mm', r_h: '0' },
    expect: { C_n: [7.16667, 1e-5], C_r: [2.86667, 1e-5], C_g: [3.15, 1e-5], z_l: [4, 1e-9] },
    verdict: 'within',
    source: derived('20 · 0.15 + 0.5 · 8.333 = 7.167; 20 · 0.03 + 0.5 · 1.667 + 0.2 · 7.167 = 2.867'),
  },
  {
    title: 'Came off the bed: only gluing is left, here known by the time it ran dry',
    given: { ...job, ...sure, Z_s: '84 mm', t_d: '20 min ± 10 min', r_h: '0' },
    choices: { by: 'delay', stands: 'off' },
    expect: { n_l: [20, 1e-9], n_g: [400, 1e-9], C_g: [3.15, 1e-5], T_g: [2.33333, 1e-5] },
    verdict: 'within',
    source: derived('20 min of 60 s are 20 layers, give or take ten; 1 h 40 min and 40 min of work'),
  },
  {
    title: 'By weight, with a ground strand and a thin band left in: too weak to be used',
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
    source: derived('500 · 120 / 150 = 400; 75 % · 0.1 / 0.5 = 15 %, and 40 % is wanted'),
  },
  {
    title: 'Typical strengths for a part that carries a load: too close to call',
    given: { ...job, Z_s: '84 mm', G: '4 mm ± 0.03 mm', r_h: '0' },
    choices: { duty: 'loaded' },
    expect: { s_r: [60, 1e-9], tau: [2, 1e-9], t_o: [4.60517, 1e-5], z_b: [0.0191882, 1e-6] },
    verdict: 'too close',
    source: derived('40 · 25 % / 5 = 2 s; 2 · ln 10 = 4.605 s; 0.2 · 4.605 / 48'),
  },
] as const;
