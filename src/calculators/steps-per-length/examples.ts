import { derived } from '../../reference/citation';

const PLAIN = { x_1: '0 mm ± 0', b: '0 mm ± 0' } as const;

export const examples = [
  {
    title: 'A belt of 2 mm pitch on 20 teeth, 16 microsteps: 80 steps per mm, and it moves as told',
    given: { ...PLAIN, S_x: '80', x_2: '100.02 mm ± 0.03 mm' },
    expect: { S_c: [80, 1e-9], x_m: [12.5, 1e-9], q: [0, 1e-9], c: [0.02, 1e-9] },
    verdict: 'within',
    source: derived('200 × 16 / (2 × 20) = 80; 1/80 mm = 12.5 µm'),
  },
  {
    title: 'The pulley was changed from 16 to 20 teeth and the number left',
    given: { ...PLAIN, S_y: '100', x_2: '125 mm ± 0.05 mm' },
    choices: { axis: 'y' },
    expect: { S_c: [80, 1e-9], q: [25, 1e-9], c: [25, 1e-9], S_n: [80, 1e-9], q_n: [0, 1e-9], p_e: [2, 1e-9] },
    verdict: 'beyond',
    source: derived('20 / 16 = 1.25; 100 × 100 / 125 = 80'),
  },
  {
    title: 'By steel rule over 100 mm a tenth of a percent cannot be told',
    given: { S_x: '80', x_1: '0 mm ± 0.5 mm', x_2: '100 mm ± 0.5 mm', b: '0 mm ± 0' },
    expect: { c: [0, 1e-9], S_n: [80, 1e-9] },
    verdict: 'too close',
    source: derived('2 × √2 × 0.5 mm / √3 / 100 mm = 0.8 %'),
  },
  {
    title: 'A screw of 8 mm lead: 400 steps per mm',
    given: { ...PLAIN, S_z: '400', x_2: '100 mm ± 0.02 mm' },
    choices: { axis: 'z' },
    expect: { S_c: [400, 1e-9], x_m: [2.5, 1e-9], P_e: [8, 1e-9] },
    verdict: 'within',
    source: derived('200 × 16 / 8 = 400'),
  },
  {
    title: 'Filament: 100 mm told, 25 mm left of 120 mm',
    given: { S_e: '93', r_1: '120 mm ± 0.5 mm', r_2: '25 mm ± 0.5 mm', r_3: '29.75 mm ± 0.5 mm' },
    choices: { axis: 'feed' },
    expect: { l_d: [95, 1e-9], c: [-5, 1e-9], S_n: [97.8947, 1e-4], s_f: [5, 1e-9] },
    verdict: 'beyond',
    source: derived('120 − 25 = 95; 93 × 100 / 95 = 97.8947; 1 − 90.25 / 95 = 5 %'),
  },
  {
    title: 'A piece of PLA, outside and inside: it shrank, and its lines stand out',
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
    source: derived('179.54 / 180 − 1; 99.86 − 100 × 0.99744444; 68 × 10⁻⁶ × 38; 0.99744444 / 0.997416 − 1'),
  },
  {
    title: 'A short and a long size: 0.08 mm and 0.32 mm short is 0.24 % and 0.03 mm',
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
    source: derived('(119.68 − 19.92) / 100 − 1 = −0.24 %; 19.92 − 20 × 0.9976 = −0.032'),
  },
] as const;
