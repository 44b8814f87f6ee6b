import { cite, derived } from '../../engine/calculator';

const swing = {
  h_1: '0.2 mm',
  l_s: '300 mm ± 0',
  alpha_s: '12 µm/(m·K) ± 0',
  alpha_f: '23 µm/(m·K) ± 0',
  alpha_r: '23 µm/(m·K) ± 0',
} as const;

export const examples = [
  {
    key: 'coldBed',
    given: { T: '20 °C ± 0', U: '50 % ± 0', T_s: '8 °C ± 0', p: '1013.25 hPa ± 0' },
    expect: { e_w: [23.326, 0.001], e: [11.663, 0.001], T_d: [9.26, 0.005], dT_d: [-1.26, 0.005], T_o: [11.26, 0.005] },
    verdict: 'beyond',
    source: derived('coldBed'),
  },
  {
    key: 'muggy',
    given: { T: '25 °C ± 0', U: '80 % ± 0', T_s: '22 °C ± 0', p: '1013.25 hPa ± 0' },
    expect: { T_d: [21.309, 0.02], dT_d: [0.69, 0.02] },
    verdict: 'beyond',
    source: cite('WMO-No. 8, Guide to Instruments (2014)', 'at25', true),
  },
  {
    key: 'frost',
    given: { T: '5 °C ± 0', U: '29.8 % ± 0', T_s: '-9.5 °C ± 0', m_d: '0 K', p: '1013.25 hPa ± 0' },
    expect: { T_d: [-11.26, 0.01], T_i: [-10, 0.02], dT_d: [0.5, 0.02] },
    verdict: 'within',
    source: derived('frost'),
  },
  {
    key: 'roomHygrometer',
    given: { T: '20 °C ± 1 °C', U: '50 % ± 10 %', T_s: '13 °C ± 1 °C' },
    expect: { dT_d: [3.74, 0.01] },
    verdict: 'too close',
    source: derived('roomHygrometer'),
  },
  {
    key: 'warmBox',
    given: { T: '22 °C ± 0', U: '50 % ± 0', T_b: '60 °C ± 0', p: '1013.25 hPa ± 0' },
    choices: { ask: 'box', plastic: 'abs' },
    expect: { e: [13.187, 0.001], e_b: [199.93, 0.02], U_b: [6.596, 0.002] },
    verdict: 'within',
    source: derived('warmBox'),
  },
  {
    key: 'steelInAluminium',
    given: { ...swing, T_1: '10 °C ± 0', T_2: '25 °C ± 0', l_f: '300 mm ± 0', q_1: '20 %' },
    choices: { ask: 'swing' },
    expect: { dl_s: [0.054, 1e-9], dl_f: [0.1035, 1e-9], dg: [-0.0495, 1e-9], dg_lim: [0.04, 1e-9] },
    verdict: 'beyond',
    source: derived('steelInAluminium'),
  },
  {
    key: 'bedOnScrews',
    given: { ...swing, T_1: '10 °C ± 0', T_2: '25 °C ± 0', l_f: '280 mm ± 0', q_1: '25 %' },
    choices: { ask: 'swing', lift: 'bed-foot' },
    expect: { dl_f: [0.0966, 1e-9], dl_r: [0.0069, 1e-9], dg: [0.0495, 1e-9] },
    verdict: 'within',
    source: derived('bedOnScrews'),
  },
  {
    key: 'zeroBySwitch',
    given: {
      T_1: '15 °C ± 0',
      T_2: '35 °C ± 0',
      l_f: '80 mm ± 0',
      alpha_f: '23 µm/(m·K) ± 0',
      alpha_r: '68 µm/(m·K) ± 0',
      h_1: '0.2 mm',
    },
    choices: { ask: 'swing', zero: 'switch' },
    expect: { dl_f: [0.0368, 1e-9], dl_r: [0.1088, 1e-9], dg: [-0.072, 1e-9] },
    verdict: 'beyond',
    source: derived('zeroBySwitch'),
  },
] as const;
