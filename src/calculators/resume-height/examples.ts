import { derived } from '../../reference/citation';

const cold = { alpha: '68 µm/(m·K) ± 0', T_p: '40 °C ± 0', T_m: '40 °C ± 0', h: '0.2 mm', h_1: '0.3 mm' } as const;

export const examples = [
  {
    title: 'Felt with the nozzle on the warm bed: layer 120 is there',
    given: { ...cold, Z_r: '24.21 mm ± 0.02 mm', g_f: '0.1 mm ± 0.01 mm' },
    expect: {
      Z_c: [24.11, 1e-9],
      x: [120.05, 1e-9],
      N: [120, 1e-9],
      Z_n: [24.3, 1e-9],
      d: [0.01, 1e-9],
      h_n: [0.19, 1e-9],
    },
    verdict: 'within',
    source: derived('0.3 + 119 · 0.2 = 24.1; the next at 24.3; 24.21 − 0.1 − 24.1 = 0.01'),
  },
  {
    title: 'PLA of 100 mm measured cold: 0.12 mm are missing',
    given: { ...cold, T_m: '22 °C ± 0', H: '99.95 mm ± 0.01 mm', s: '0.03 mm ± 0.01 mm' },
    choices: { plan: 'rod' },
    expect: { Z_c: [99.98, 1e-9], c: [0.1224, 1e-9], dZ_w: [0.12238, 1e-5], Z_w: [100.10238, 1e-5], N: [500, 1e-9] },
    verdict: 'within',
    source: derived('68 × 10⁻⁶ · 18 · 99.98 = 0.1224; 0.3 + 499 · 0.2 = 100.1'),
  },
  {
    title: 'The same by an ordinary caliper, temperatures guessed: not settled',
    given: { h: '0.2 mm', h_1: '0.3 mm', H: '99.95 mm ± 0.03 mm' },
    choices: { plan: 'rod' },
    expect: { x: [500.0119, 1e-3] },
    verdict: 'too close',
    source: derived('20 of 68 µm/(m·K) and 8 of 18 K: the shrinkage itself is only known to about half of it'),
  },
  {
    title: 'The same, felt with the nozzle on a bed that has been at its heat again: settled',
    given: { h: '0.2 mm', h_1: '0.3 mm', Z_r: '100.2 mm ± 0.02 mm', g_f: '0.1 mm ± 0.01 mm' },
    choices: { heat: 'warm' },
    expect: { Z_w: [100.1, 1e-9], N: [500, 1e-9], N_n: [501, 1e-9], Z_n: [100.3, 1e-9] },
    verdict: 'within',
    source: derived('0.3 + 499 · 0.2 = 100.1; 68 × 10⁻⁶ · 100 · 4 = 0.027 mm is all the doubt that warmth leaves'),
  },
  {
    title: 'Half a layer off: it fits none',
    given: { ...cold, Z_r: '10.31 mm ± 0.01 mm', g_f: '0.1 mm ± 0.01 mm' },
    expect: { Z_c: [10.21, 1e-9], x: [50.55, 1e-9], Z_a: [10.41, 1e-9], d_lim: [0.05, 1e-9] },
    verdict: 'beyond',
    source: derived('(10.21 − 0.3) / 0.2 + 1 = 50.55: nearly midway, and the reading is good to a tenth of a layer'),
  },
  {
    title: 'A second part for what is missing of 80 mm',
    given: { ...cold, H: '35.2 mm ± 0.03 mm', s: '0 mm ± 0', g: '0.1 mm ± 0.02 mm', H_t: '80 mm' },
    choices: { plan: 'glue' },
    expect: { Z_w: [35.2, 1e-9], H_2: [44.7, 1e-9], Z_k: [35.3, 1e-9], x_2: [223, 1e-9] },
    verdict: 'within',
    source: derived('80 − 35.2 − 0.1 = 44.7; 0.3 + 222 · 0.2 = 44.7'),
  },
] as const;
