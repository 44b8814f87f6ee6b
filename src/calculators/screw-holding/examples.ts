import { cite, derived } from '../../engine/calculator';

const bare = { T_d: '0 N·mm', T_b: '0 N·mm', mu_c: '0' } as const;
const kilo = { M_z: '2 kg ± 0', M: '0.5 kg ± 0', S: '400 mm ± 0' } as const;

export const examples = [
  {
    key: 'squareThreadCollar',
    given: {
      M_z: '65.2618 kg',
      d: '32 mm ± 0',
      P: '4 mm',
      P_h: '8 mm',
      alpha: '0 deg',
      mu: '0.08 ± 0',
      mu_c: '0.08',
      d_c: '40 mm ± 0',
      T_d: '0 N·mm',
      T_b: '0 N·mm',
    },
    choices: { screw: 'tr8x8', screws: 'one' },
    // A tenth of the load in the book, so that it lies within what the check takes.
    expect: {
      F: [640, 0.001],
      T_R: [1594, 1],
      T_c: [1024, 0.01],
      T_u: [2618, 1],
      T_n: [977, 1],
      eta_c: [31.1, 0.05],
    },
    source: cite('Shigley’s Mechanical Engineering Design, 10th edition (2015)', 'exampleTenthLoad', true),
  },
  {
    key: 'fourStartsMm',
    given: { ...kilo, ...bare, x: '100 mm ± 0', mu: '0.15 ± 0' },
    expect: {
      F: [11.03248125, 1e-8],
      F_2: [8.58081875, 1e-8],
      n_s: [4, 1e-9],
      lambda: [19.991, 0.001],
      mu_l: [0.3514, 0.0001],
      m: [0.4269, 0.0002],
      h_e: [0.16, 1e-9],
    },
    verdict: 'beyond',
    source: derived('fourStartsMm'),
  },
  {
    key: 'startMmMotor',
    given: { M_z: '2 kg ± 0', ...bare, mu: '0.15 ± 0', tau_h: '150 N·mm' },
    choices: { screw: 'tr8x2', drive: 'belt', ends: 'mixed' },
    expect: {
      F: [9.80665, 1e-9],
      lambda: [5.197, 0.001],
      mu_l: [0.0878, 0.0001],
      m: [1.708, 0.002],
      eta: [36.4, 0.05],
    },
    verdict: 'within',
    source: derived('startMmMotor'),
  },
  {
    key: 'ballScrewRuns',
    given: { M_z: '3 kg ± 0', n_z: '3', k_u: '1 ± 0', P_h: '4 mm', eta_b: '90 % ± 0', ...bare },
    choices: { screw: 'ball', screws: 'more' },
    expect: { F: [9.80665, 1e-9], T_R: [6.9367, 0.0005], T_L: [-5.5494, 0.0005], m: [0.11111, 1e-5] },
    verdict: 'beyond',
    source: derived('ballScrewRuns'),
  },
  {
    key: 'coreMeasuredBuckling',
    given: {
      d: '8 mm ± 0',
      d_k: '5.5 mm ± 0',
      L: '400 mm ± 0',
      E: '206 GPa ± 0',
      rho: '7850 kg/m³ ± 0',
      mu: '0.15 ± 0',
    },
    choices: { screw: 'own', screws: 'one' },
    expect: { F_E: [570.8, 0.5], n_c: [4149, 2] },
    source: derived('coreMeasuredBuckling'),
  },
] as const;
