import { derived } from '../../engine/calculator';

const cold = { alpha: '68 µm/(m·K) ± 0', T_p: '40 °C ± 0', T_m: '40 °C ± 0', h: '0.2 mm', h_1: '0.3 mm' } as const;

export const examples = [
  {
    key: 'feltNozzleWarm',
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
    source: derived('feltNozzleWarm'),
  },
  {
    key: 'plaMmMeasured',
    given: { ...cold, T_m: '22 °C ± 0', H: '99.95 mm ± 0.01 mm', s: '0.03 mm ± 0.01 mm' },
    choices: { plan: 'rod' },
    expect: { Z_c: [99.98, 1e-9], c: [0.1224, 1e-9], dZ_w: [0.12238, 1e-5], Z_w: [100.10238, 1e-5], N: [500, 1e-9] },
    verdict: 'within',
    source: derived('plaMmMeasured'),
  },
  {
    key: 'sameOrdinaryCaliper',
    given: { h: '0.2 mm', h_1: '0.3 mm', H: '99.95 mm ± 0.03 mm' },
    choices: { plan: 'rod' },
    expect: { x: [500.0119, 1e-3] },
    verdict: 'too close',
    source: derived('sameOrdinaryCaliper'),
  },
  {
    key: 'sameFeltNozzle',
    given: { h: '0.2 mm', h_1: '0.3 mm', Z_r: '100.2 mm ± 0.02 mm', g_f: '0.1 mm ± 0.01 mm' },
    choices: { heat: 'warm' },
    expect: { Z_w: [100.1, 1e-9], N: [500, 1e-9], N_n: [501, 1e-9], Z_n: [100.3, 1e-9] },
    verdict: 'within',
    source: derived('sameFeltNozzle'),
  },
  {
    key: 'halfLayerOff',
    given: { ...cold, Z_r: '10.31 mm ± 0.01 mm', g_f: '0.1 mm ± 0.01 mm' },
    expect: { Z_c: [10.21, 1e-9], x: [50.55, 1e-9], Z_a: [10.41, 1e-9], d_lim: [0.05, 1e-9] },
    verdict: 'beyond',
    source: derived('halfLayerOff'),
  },
  {
    key: 'secondPartMissing',
    given: { ...cold, H: '35.2 mm ± 0.03 mm', s: '0 mm ± 0', g: '0.1 mm ± 0.02 mm', H_t: '80 mm' },
    choices: { plan: 'glue' },
    expect: { Z_w: [35.2, 1e-9], H_2: [44.7, 1e-9], Z_k: [35.3, 1e-9], x_2: [223, 1e-9] },
    verdict: 'within',
    source: derived('secondPartMissing'),
  },
] as const;
