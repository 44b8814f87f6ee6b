import { derived } from '../../engine/calculator';

const PLAIN = { x_1: '0 mm ± 0', b: '0 mm ± 0' } as const;

export const examples = [
  {
    key: 'beltMmPitch',
    given: { ...PLAIN, S_x: '80', x_2: '100.02 mm ± 0.03 mm' },
    expect: { S_c: [80, 1e-9], x_m: [12.5, 1e-9], q: [0, 1e-9], c: [0.02, 1e-9] },
    verdict: 'within',
    source: derived('beltMmPitch'),
  },
  {
    key: 'pulleyWasChanged',
    given: { ...PLAIN, S_y: '100', x_2: '125 mm ± 0.05 mm' },
    choices: { axis: 'y' },
    expect: { S_c: [80, 1e-9], q: [25, 1e-9], c: [25, 1e-9], S_n: [80, 1e-9], q_n: [0, 1e-9], p_e: [2, 1e-9] },
    verdict: 'beyond',
    source: derived('pulleyWasChanged'),
  },
  {
    key: 'steelRuleOver',
    given: { S_x: '80', x_1: '0 mm ± 0.5 mm', x_2: '100 mm ± 0.5 mm', b: '0 mm ± 0' },
    expect: { c: [0, 1e-9], S_n: [80, 1e-9] },
    verdict: 'too close',
    source: derived('steelRuleOver'),
  },
  {
    key: 'screwMmLead',
    given: { ...PLAIN, S_z: '400', x_2: '100 mm ± 0.02 mm' },
    choices: { axis: 'z' },
    expect: { S_c: [400, 1e-9], x_m: [2.5, 1e-9], P_e: [8, 1e-9] },
    verdict: 'within',
    source: derived('screwMmLead'),
  },
  {
    key: 'filamentMmTold',
    given: { S_e: '128', r_1: '120 mm ± 0.5 mm', r_2: '25 mm ± 0.5 mm', r_3: '29.75 mm ± 0.5 mm' },
    choices: { axis: 'feed' },
    expect: { l_d: [95, 1e-9], c: [-5, 1e-9], S_n: [134.7368, 1e-4], s_f: [5, 1e-9] },
    verdict: 'beyond',
    source: derived('filamentMmTold'),
  },
  {
    key: 'feederTicked',
    given: { S_e: '128', r_1: '120 mm ± 0.5 mm', r_2: '28 mm ± 0.5 mm', d_g: '11 mm', N_k: '10 ± 1' },
    choices: { axis: 'feed' },
    expect: { l_d: [92, 1e-9], c: [-8, 1e-9], l_k: [6.9115, 1e-4] },
    verdict: 'beyond',
    source: derived('feederTicked'),
  },
  {
    key: 'piecePlaOutside',
    given: {
      S_x: '80',
      m_o: '99.86 mm ± 0.01 mm',
      m_i: '79.68 mm ± 0.01 mm',
      alpha: '68 µm/(m·K) ± 1',
      T_g: '60 °C ± 1 °C',
      T_r: '22 °C ± 1 °C',
    },
    choices: { by: 'print' },
    expect: {
      c_t: [-0.255556, 1e-6],
      o: [0.115556, 1e-6],
      y: [0.0577778, 1e-6],
      s: [0.2584, 1e-9],
      e_d: [0.0028518, 1e-5],
      k_s: [100.25621, 1e-5],
    },
    verdict: 'within',
    source: derived('piecePlaOutside'),
  },
  {
    key: 'shortLongSize',
    given: {
      S_y: '80',
      l_1: '20 mm',
      m_1: '19.92 mm ± 0.01 mm',
      l_2: '120 mm',
      m_2: '119.68 mm ± 0.01 mm',
      s_m: '0.24 % ± 0.02 %',
    },
    choices: { axis: 'y', by: 'print', pair: 'lengths', material: 'other' },
    expect: { c_t: [-0.24, 1e-9], o: [-0.032, 1e-9], y: [-0.016, 1e-9], e_d: [0, 1e-9] },
    verdict: 'within',
    source: derived('shortLongSize'),
  },
] as const;
