import { cite, derived } from '../../engine/calculator';

const exact = {
  V: '24 V ± 0',
  T_a: '20 °C ± 0',
  T_w: '200 °C',
  m_x: '0 g ± 0',
  c_b: '897 ± 0',
  m_b: '10.37 g ± 0',
} as const;
const edges = { a_1: '24 mm ± 0', a_2: '15 mm ± 0', a_3: '10 mm ± 0' } as const;
const guard = { t_g: '20 s', dT_l: '4 K', dT_g: '3 K' } as const;

/** T = 420 − 400 e^(−t/100 s), to a tenth of a kelvin. */
const rising = {
  t_1: '0 s ± 0.3',
  T_1: '20 ± 0.1',
  t_2: '20 s ± 0.3',
  T_2: '92.5 ± 0.1',
  t_3: '40 s ± 0.3',
  T_3: '151.9 ± 0.1',
  t_4: '60 s ± 0.3',
  T_4: '200.5 ± 0.1',
  t_5: '80 s ± 0.3',
  T_5: '240.3 ± 0.1',
  t_6: '100 s ± 0.3',
  T_6: '272.8 ± 0.1',
  t_7: '120 s ± 0.3',
  T_7: '299.5 ± 0.1',
} as const;

/** T = 20 + 180 e^(−t/100 s), to a tenth of a kelvin. */
const falling = {
  t_1: '0 s ± 0.3',
  T_1: '200 ± 0.1',
  t_2: '20 s ± 0.3',
  T_2: '167.4 ± 0.1',
  t_3: '40 s ± 0.3',
  T_3: '140.7 ± 0.1',
  t_4: '60 s ± 0.3',
  T_4: '118.8 ± 0.1',
  t_5: '80 s ± 0.3',
  T_5: '100.9 ± 0.1',
  t_6: '100 s ± 0.3',
  T_6: '86.2 ± 0.1',
  t_7: '120 s ± 0.3',
  T_7: '74.2 ± 0.1',
} as const;

export const examples = [
  {
    key: 'heldAt54',
    given: { ...exact, ...edges, ...guard, R_h: '14.4 ohm ± 0', D_h: '54 % ± 0' },
    choices: { loss: 'held' },
    expect: {
      P: [40, 1e-9],
      A: [1500, 1e-9],
      C: [9.302, 0.001],
      G_w: [0.12, 1e-9],
      tau: [77.5, 0.05],
      t_w: [60.2, 0.1],
    },
    verdict: 'beyond',
    source: cite('Incropera, Fundamentals of Heat and Mass Transfer, 6th edition (2007)', 'lossFromDuty', true),
  },
  {
    key: 'twelveOnTwentyFour',
    given: { ...exact, ...edges, ...guard, R_h: '3.6 ohm ± 0', D_h: '13.5 % ± 0' },
    choices: { loss: 'held' },
    expect: { P: [160, 1e-9], G_w: [0.12, 1e-9], T_l: [1353.33, 0.01] },
    verdict: 'beyond',
    source: derived('twelveOnTwentyFour'),
  },
  {
    key: 'metalAllTheWay',
    given: {
      ...exact,
      ...edges,
      ...guard,
      R_h: '19.2 ohm ± 0',
      D_h: '60 % ± 0',
      T_f: '270 °C ± 10',
      t_g: '25 s',
      t_s: '8 s ± 0',
    },
    choices: { loss: 'held', liner: 'none', cutoff: 'fitted' },
    expect: { P: [30, 1e-9], G_w: [0.1, 1e-9], T_l: [320, 1e-6], t_d: [0.1798, 0.0001], t_x: [25.18, 0.001] },
    verdict: 'within',
    source: derived('metalAllTheWay'),
  },
  {
    key: 'fromHeating',
    given: {
      V: '24 V ± 0',
      T_a: '20 °C ± 0',
      ...edges,
      ...guard,
      ...rising,
      R_h: '14.4 ohm ± 0',
      T_w: '250 °C',
      epsilon: '0.02 ± 0',
    },
    choices: { loss: 'heating' },
    expect: { P: [40, 1e-9], C: [10, 0.1], tau: [100, 1], T_l: [420, 2] },
    source: derived('fromHeating'),
  },
  {
    key: 'fromCooling',
    given: { ...exact, ...edges, ...guard, ...falling, R_h: '14.4 ohm ± 0', epsilon: '0.02 ± 0' },
    choices: { loss: 'cooling', liner: 'none' },
    expect: { P: [40, 1e-9], C: [9.302, 0.001], G_w: [0.093, 0.001], T_l: [450, 4] },
    verdict: 'beyond',
    source: derived('fromCooling'),
  },
] as const;
