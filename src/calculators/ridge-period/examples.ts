import { cite, derived } from '../../reference/citation';

/** Worked by hand; `x` and `s` exact where the doubt is not the point. */
export const examples = [
  {
    title: 'Ten spaces over 79.8 mm: the screw',
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
    source: derived(
      '79.8 / 10 = 7.98; 7.98 / 0.997 = 8.004 mm, against 8, 2 and 2π × 10.5 mm; 0.2 / 0.04 = 5 full steps',
    ),
  },
  {
    title: 'Layer 0.25 mm on steps of 0.04 mm: an odd layer every fourth',
    given: { L: '24.9 mm', N: '25', P_h: '8 mm', n_s: '4', h: '0.25 mm', s: '0.3 % ± 0.3' },
    expect: { q: [0.04, 1e-12], n: [6.25, 1e-9], n_w: [6, 0], k_odd: [1, 1e-9], P: [0.998997, 1e-6] },
    verdict: 'within',
    source: derived('0.25 / 0.04 = 6.25: a quarter step over in each layer, one step in 4 layers = 1 mm'),
  },
  {
    title: 'Pulley, idler and wheel of nearly one size: a rough reading cannot tell them',
    given: { P_w: '40.2 mm ± 1.5', p_b: '2 mm', z_b: '20', d_i: '12 mm', r_w: '6.3 mm ± 0.1' },
    choices: { by: 'direct', way: 'along' },
    expect: { p_pulley: [40, 1e-12], p_idler: [40.212386, 1e-6], p_wheel: [39.584067, 1e-6] },
    verdict: 'too close',
    source: derived('2 × 20 = 40; π × (12 + 2 × 0.4) = 40.21; 2π × 6.3 = 39.58 mm: all within 1.5 mm of the reading'),
  },
  {
    title: 'Z by belt: ridges at 13 mm that nothing listed makes',
    given: { P_w: '13 mm ± 0.1', p: '2 mm', z: '20', h: '0.3 mm' },
    choices: { by: 'direct', lift: 'belt' },
    expect: { p_pulley: [40, 1e-12], q: [0.2, 1e-12], n: [1.5, 1e-9], P: [13.039117, 1e-6] },
    verdict: 'beyond',
    source: derived('13 / 0.997 = 13.04 mm, against 2, 40 and 0.3 / 0.5 = 0.6 mm'),
  },
  {
    title: 'Feed gear of 11 mm on a wall of two lines',
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
    source: cite('Area of 1.75 mm filament, textbook circle', '2.4053 mm²; × π × 11 mm / (0.95 × 0.45 × 32 mm²)', true),
  },
] as const;
