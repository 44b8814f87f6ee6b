import { derived } from '../../engine/calculator';

const exact = {
  E: '3.5 GPa ± 0',
  q_E: '1 ± 0',
  q_T: '1 ± 0',
  rho: '1.24 g/cm³ ± 0',
  F: '1 N ± 0',
  w: '0.45 mm ± 0',
  f_m: '40 Hz ± 0',
} as const;

export const examples = [
  {
    key: 'pinMmSquare',
    given: { ...exact, b: '5 mm ± 0', L: '50 mm ± 0', sigma_a: '10 MPa ± 0', q_p: '50 % ± 0' },
    expect: {
      I: [52.083, 0.001],
      k: [4.375, 1e-6],
      x: [0.22857, 1e-5],
      f: [543, 0.5],
      sigma: [2.4, 1e-9],
      s: [10, 1e-9],
    },
    verdict: 'beyond',
    source: derived('pinMmSquare'),
  },
  {
    key: 'twiceWideTall',
    given: { ...exact, b: '10 mm ± 0', L: '100 mm ± 0', F: '0.5 N ± 0', sigma_a: '2 MPa ± 0', q_p: '50 % ± 0' },
    expect: { k: [8.75, 1e-6], x: [0.05714, 1e-5], f: [271.5, 0.5], sigma: [0.3, 1e-9], x_lim: [0.1125, 1e-9] },
    verdict: 'within',
    source: derived('twiceWideTall'),
  },
  {
    key: 'sameColumnTwice',
    given: { ...exact, b: '10 mm ± 0', L: '200 mm ± 0', sigma_a: '2 MPa ± 0', q_p: '50 % ± 0' },
    expect: { k: [1.09375, 1e-6], x: [0.914286, 1e-6], f: [67.87, 0.05], sigma: [1.2, 1e-9], B_n: [10.6266, 1e-4] },
    verdict: 'beyond',
    source: derived('sameColumnTwice'),
  },
  {
    key: 'tubeMmWalls',
    given: {
      ...exact,
      b: '10 mm ± 0',
      L: '100 mm ± 0',
      t_w: '1 mm ± 0',
      q_i: '0 % ± 0',
      sigma_a: '2 MPa ± 0',
      q_p: '50 % ± 0',
      F: '0.2 N ± 0',
    },
    choices: { section: 'round', core: 'shell' },
    expect: { b_i: [8, 1e-9], I: [289.81, 0.01], A: [28.2743, 1e-4], k: [3.043, 0.001], Z: [98.175, 0.001] },
    verdict: 'within',
    source: derived('tubeMmWalls'),
  },
  {
    key: 'holdMeasuredTest',
    given: {
      ...exact,
      b: '8 mm ± 0',
      L: '120 mm ± 0',
      b_t: '10 mm ± 0',
      h_t: '20 mm ± 0',
      F_t: '5 N ± 0',
      r: '4 mm ± 0',
      q_r: '50 % ± 0',
      F: '0.3 N ± 0',
    },
    choices: { bed: 'tested', foot: 'rim' },
    expect: { sigma_h: [0.6, 1e-9], B: [12, 1e-9], sigma: [0.125, 1e-9], B_n: [7.1138, 1e-4], r_n: [-0.8862, 1e-4] },
    verdict: 'beyond',
    source: derived('holdMeasuredTest'),
  },
] as const;
