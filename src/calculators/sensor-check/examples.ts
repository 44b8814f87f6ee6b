import { cite, derived } from '../../engine/calculator';

const ntc = { R_n: '100 kohm ± 0', B: '3950 K ± 0' } as const;

export const examples = [
  {
    key: 'atRatedPoint',
    given: { ...ntc, R_m: '100 kohm ± 1', T_a: '25 °C ± 1', T_w: '200 °C' },
    expect: { T_s: [25, 1e-9], dT_s: [0, 1e-9], R_e: [100, 1e-9], R_w: [0.7446, 0.0001], dT_B: [2.8, 0.05] },
    verdict: 'within',
    source: cite('IEC 60539-1:2016', 'ratedPoint', true),
  },
  {
    key: 'wrongSetting',
    given: { ...ntc, T_r: '36 °C ± 0.5', T_h: '40 °C ± 0.5', T_a: '20 °C ± 1' },
    choices: { by: 'shown' },
    expect: { T_s: [36, 1e-9], dT_s: [16, 1e-9] },
    verdict: 'beyond',
    source: derived('wrongSetting'),
  },
  {
    key: 'coldGarage',
    given: { ...ntc, T_r: '-12 °C ± 0.5', T_h: '-4 °C ± 0.5', T_a: '-12 °C ± 1' },
    choices: { by: 'shown' },
    expect: { dT_s: [0, 1e-9], dT_h: [8, 1e-9], T_low: [-20, 1e-9] },
    verdict: 'within',
    source: derived('coldGarage'),
  },
  {
    key: 'platinum',
    given: { R_m: '107.79 ohm ± 0.2', T_a: '20 °C ± 1', R_0: '100 ohm ± 0' },
    choices: { law: 'pt100' },
    expect: { R_e: [0.1077935, 1e-7], T_s: [20, 0.01] },
    verdict: 'within',
    source: cite('IEC 60751:2022', 'platinum', true),
  },
  {
    key: 'brokenWire',
    given: { ...ntc, R_m: '100000 kohm', T_a: '20 °C ± 1' },
    expect: { R_e: [125.35, 0.05] },
    verdict: 'beyond',
    source: cite('IEC 60539-1:2016', 'coldRoom', true),
  },
  {
    key: 'threeLines',
    given: {
      T_1: '25 °C',
      R_1: '10 kohm',
      T_2: '100 °C',
      R_2: '0.6798 kohm',
      T_3: '200 °C',
      R_3: '0.0634 kohm',
      R_m: '10 kohm ± 0.1',
      T_a: '24 °C ± 1',
    },
    choices: { law: 'three' },
    expect: { T_s: [25, 1e-6], dT_s: [1, 1e-6] },
    verdict: 'within',
    source: derived('threeLines'),
  },
  {
    key: 'twelveOnTwentyFour',
    given: { R_h: '3.6 ohm ± 0.04', V: '24 V ± 0', V_r: '12 V', P_r: '40 W' },
    choices: { what: 'heater' },
    expect: { P: [160, 1e-9], k_P: [4, 1e-9], I: [6.6667, 0.0001], R_x: [3.6, 1e-9] },
    verdict: 'beyond',
    source: derived('twelveOnTwentyFour'),
  },
] as const;
