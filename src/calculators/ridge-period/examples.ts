import { derived } from '../../engine/calculator';

/** Worked by hand; `x` and `s` exact where the doubt is not the point. */
export const examples = [
  {
    key: 'tenSpacesOver',
    given: { L: '79.8 mm', N: '10', P_h: '8 mm', n_s: '4', h: '0.2 mm', r_w: '10.5 mm' },
    expect: {
      P_m: [7.98, 1e-9],
      P: [8.004012, 1e-6],
      p_thread: [2, 1e-12],
      p_wheel: [65.973446, 1e-6],
      n: [5, 1e-9],
      k_odd: [0, 1e-9],
      e_lead: [0.0501505, 1e-6],
    },
    verdict: 'within',
    source: derived('tenSpacesOver'),
  },
  {
    key: 'layerMmSteps',
    given: { L: '24.9 mm', N: '25', P_h: '8 mm', n_s: '4', h: '0.25 mm', s: '0.3 % ± 0.3' },
    expect: { q: [0.04, 1e-12], n: [6.25, 1e-9], n_w: [6, 0], k_odd: [1, 1e-9], P: [0.998997, 1e-6] },
    verdict: 'within',
    source: derived('layerMmSteps'),
  },
  {
    key: 'pulleyIdlerWheel',
    given: { P_w: '40.2 mm ± 1.5', p_b: '2 mm', z_b: '20', d_i: '12 mm', r_w: '6.3 mm ± 0.1' },
    choices: { by: 'direct', way: 'along' },
    expect: { p_pulley: [40, 1e-12], p_idler: [40.212386, 1e-6], p_wheel: [39.584067, 1e-6] },
    verdict: 'too close',
    source: derived('pulleyIdlerWheel'),
  },
  {
    key: 'zBeltRidges',
    given: { P_w: '13 mm ± 0.1', p: '2 mm', z: '20', h: '0.3 mm' },
    choices: { by: 'direct', lift: 'belt' },
    expect: { p_pulley: [40, 1e-12], q: [0.2, 1e-12], n: [1.5, 1e-9], P: [13.039117, 1e-6] },
    verdict: 'beyond',
    source: derived('zBeltRidges'),
  },
  {
    key: 'feedGearMm',
    given: {
      P_w: '6.1 mm ± 0.2',
      d_g: '11 mm ± 0',
      d_f: '1.75 mm ± 0',
      w: '0.45 mm ± 0',
      k_A: '0.95 ± 0',
      l_L: '32 mm ± 0',
      h: '0.2 mm',
    },
    choices: { by: 'direct' },
    expect: { A_f: [2.4053, 0.0001], V_g: [83.121, 0.001], p_gear: [6.0761, 0.0001] },
    verdict: 'within',
    source: derived('mmMmMm'),
  },
] as const;
