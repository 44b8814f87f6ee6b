import { derived } from '../../engine/calculator';

const level = { a: '0 mm/s²', dx: '0 mm ± 0' } as const;
const still = { ...level, e: '0 mm ± 0' } as const;

export const examples = [
  {
    key: 'ruleFrictionQuarter',
    given: { ...still, mu_p: '0.25 ± 0', L: '40 mm ± 0', d_0: '80 mm ± 0' },
    expect: { q: [100, 1e-9], d_b: [80, 1e-9] },
    source: derived('ruleFrictionQuarter'),
  },
  {
    key: 'halfWayBinding',
    given: { ...still, mu_p: '0.25 ± 0', L: '40 mm ± 0', d_0: '40 mm ± 0', F_0: '2 N ± 0', F_m: '40 N', q_lim: '50 %' },
    expect: { q: [50, 1e-9], N: [4, 1e-9], F: [4, 1e-9], k_F: [2, 1e-9], d_m: [40, 1e-9], L_m: [40, 1e-9] },
    verdict: 'within',
    source: derived('halfWayBinding'),
  },
  {
    key: 'pullsNLine',
    given: {
      ...still,
      F_a: '2 N ± 0',
      a_1: '0 mm ± 0',
      F_b: '3 N ± 0',
      a_2: '60 mm ± 0',
      L: '36 mm ± 0',
      d_0: '20 mm ± 0',
    },
    choices: { by: 'scale' },
    expect: { kappa: [1 / 180, 1e-9], mu: [0.1, 1e-9], q: [11.11111, 1e-4], F_d: [2, 1e-9], F: [2.25, 1e-9] },
    verdict: 'within',
    source: derived('pullsNLine'),
  },
  {
    key: 'armUprightRail',
    given: {
      mu_p: '0.2 ± 0',
      L: '60 mm ± 0',
      d_0: '20 mm ± 0',
      e: '160 mm ± 0',
      M: '1 kg ± 0',
      a: '0 mm/s²',
      F_0: '0 N ± 0',
      dx: '0 mm ± 0',
    },
    choices: { way: 'upright' },
    expect: {
      q: [13.33333, 1e-4],
      q_e: [106.66667, 1e-4],
      A: [-1372.931, 1e-6],
      N: [20.190162, 1e-5],
      F: [17.882715, 1e-5],
    },
    verdict: 'beyond',
    source: derived('armUprightRail'),
  },
  {
    key: 'drivesPullAlike',
    given: {
      ...level,
      mu_p: '0.15 ± 0',
      L: '60 mm ± 0',
      e_l: '0 mm ± 0',
      d_1: '150 mm ± 0',
      d_2: '150 mm ± 0',
      s: '50 % ± 0',
      dx: '2 mm ± 0',
      W_g: '300 mm ± 0',
      j: '0.1 mm ± 0',
      c_g: '100 N/mm ± 0',
      F_0: '2 N ± 0',
    },
    choices: { drive: 'both' },
    expect: { d: [0, 1e-9], s_0: [50, 1e-9], dx_0: [0.5, 1e-9], N_c: [15, 1e-9], F_c: [4.5, 1e-9], F: [6.5, 1e-9] },
    verdict: 'within',
    source: derived('drivesPullAlike'),
  },
] as const;
