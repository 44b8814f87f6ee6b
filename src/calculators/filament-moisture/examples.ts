import { cite, derived } from '../../engine/calculator';

const crank = cite('Crank, The Mathematics of Diffusion, 2nd edition (1975)', 'equationSummedNumerical', true);

/** A strand of 1.75 mm, loose, in dry air, whose diffusion coefficient is 10⁻¹² m²/s at the oven's temperature. */
const strand = {
  T: '20 °C ± 0',
  U: '50 % ± 0',
  T_b: '50 °C ± 0',
  d_f: '1.75 mm ± 0',
  k_s: '1 ± 0',
  D_1: '1e-12 m²/s ± 0',
  b: '0 ± 0',
  T_1: '50 °C ± 0',
} as const;

export const examples = [
  {
    key: 'looseMm',
    given: { ...strand, q: '10 %', t: '80 h', U_0: '50 % ± 0', T_g: '60 °C ± 0' },
    expect: { x_q: [0.3344, 1e-4], t_q: [71.1, 0.3], U_b: [9.447, 0.01], u_e: [18.89, 0.02], Q: [27, 0.02] },
    verdict: 'within',
    source: crank,
  },
  {
    key: 'plaSpoolH',
    given: { T: '20 °C ± 1', U: '45 % ± 5 %', T_b: '45 °C ± 2', t: '6 h' },
    expect: { x_q: [0.3344, 1e-4], T_max: [55, 1e-9] },
    verdict: 'too close',
    source: derived('plaSpoolH'),
  },
  {
    key: 'ovenTooHot',
    given: { T: '20 °C ± 1', U: '45 % ± 5 %', T_b: '70 °C ± 2' },
    expect: { T_max: [55, 1e-9] },
    verdict: 'beyond',
    source: derived('ovenTooHot'),
  },
  {
    key: 'halfWayH',
    given: { ...strand, t: '13.41 h' },
    choices: { ask: 'weigh' },
    expect: { x: [0.06305, 1e-4], q_t: [50, 0.02] },
    source: crank,
  },
  {
    key: 'weekBenchWet',
    given: { T: '23 °C ± 0', U: '60 % ± 0', t_o: '168 h', d_f: '1.75 mm ± 0', k_s: '1 ± 0', D_1: '1e-12 m²/s ± 0', b: '0 ± 0', T_1: '23 °C ± 0', W_s: '0.3 % ± 0', W_lim: '0.1 %' }, // prettier-ignore
    choices: { ask: 'store' },
    expect: { x: [0.78994, 1e-4], q_t: [0.7175, 0.001], W_o: [0.17871, 1e-5] },
    verdict: 'beyond',
    source: derived('weekBenchWet'),
  },
  {
    key: 'spoolKgGets',
    given: {
      ...strand,
      t: '20 h',
      m_1: '1203 g ± 0',
      m_2: '1200 g ± 0',
      m_s: '200 g ± 0',
      W_s: '0.5 % ± 0',
      W_lim: '0.06 %',
    },
    choices: { ask: 'weigh' },
    expect: { w_l: [0.3, 1e-9], x: [0.094041, 1e-6], q_t: [40.911, 0.01], W_x: [0.5077, 1e-4], W_2: [0.2549, 2e-4] },
    verdict: 'beyond',
    source: derived('spoolKgGets'),
  },
] as const;
