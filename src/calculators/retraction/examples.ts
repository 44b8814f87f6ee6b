import { derived } from '../../engine/calculator';

/** Nothing for stretching and no friction in the tube: what the formulas of the land, the cone and the rod give alone. */
const plain = { f_c: '1 ± 0' };
const smooth = { mu_t: '0 ± 0' };
const nozzle = { ...plain, d: '0.4 mm ± 0', l: '0.6 mm ± 0', alpha: '30 deg', d_0: '2 mm ± 0', d_f: '1.75 mm ± 0' };
/** w · h · v = 5 mm³/s. */
const line = { w: '0.5 mm', h: '0.2 mm', v: '50 mm/s' };

/** Worked by hand from round numbers; test/outside/retraction.test.ts reaches the same figures by integration. */
export const examples = [
  {
    key: 'stiffMeltMm',
    given: { ...nozzle, ...line, K: '8000', n: '0.45 ± 0', beta: '0 ± 0' },
    expect: {
      Q: [5, 1e-9],
      A_f: [2.4053, 1e-4],
      v_f: [2.0788, 1e-4],
      gamma_w: [1038.9, 0.05],
      dp_l: [1.093, 5e-4],
      dp_c: [0.414, 5e-4],
      F: [3.625, 2e-3],
    },
    source: derived('stiffMeltMm'),
  },
  {
    key: 'otherNozzleHalf',
    given: { ...nozzle, ...line, K: '5000', n: '0.5 ± 0', beta: '0 ± 0', d_2: '0.2 mm' },
    choices: { land: 'same' },
    expect: { dp_l: [0.94617, 2e-5], dp_c: [0.33161, 2e-5], k_q: [5.65685, 1e-5], k_v: [2.82843, 1e-5] },
    source: derived('otherNozzleHalf'),
  },
  {
    key: 'sameLandScaled',
    given: { ...nozzle, ...line, K: '5000', n: '0.5 ± 0', beta: '0 ± 0', d_2: '0.2 mm' },
    choices: { land: 'scaled' },
    expect: { k_q: [2.82843, 1e-5], k_v: [1.41421, 1e-5] },
    source: derived('sameLandScaled'),
  },
  {
    key: 'throughTubeSlack',
    given: {
      ...nozzle,
      ...line,
      x_set: '6 mm',
      F_m: '12.0264 N ± 0',
      n: '0.45 ± 0',
      L: '500 mm ± 0',
      E: '3.5 GPa ± 0',
      D_t: '2 mm ± 0',
      Theta: '180 deg ± 0',
      ...smooth,
      V: '40 mm3 ± 0',
      B: '1 GPa ± 0',
      s_b: '0.1 mm ± 0',
      a_lo: '0.5 mm',
      a_hi: '2 mm',
    },
    choices: { drive: 'tube', source: 'force' },
    expect: {
      dp: [5, 1e-4],
      s_f: [0.71429, 1e-4],
      s_t: [0.7854, 1e-4],
      s_m: [0.08315, 1e-4],
      x_r: [1.68284, 2e-4],
      x_d: [4.31716, 2e-4],
    },
    verdict: 'beyond',
    source: derived('throughTubeSlack'),
  },
  {
    key: 'samePushedRound',
    given: {
      ...nozzle,
      ...line,
      F_m: '12.0264 N ± 0',
      n: '0.45 ± 0',
      L: '500 mm ± 0',
      E: '3.5 GPa ± 0',
      D_t: '2 mm ± 0',
      Theta: '180 deg ± 0',
      mu_t: '0.1 ± 0',
    },
    choices: { drive: 'tube', source: 'force' },
    expect: { F: [12.0264, 1e-4], F_g: [16.4654, 1e-4], s_f: [0.83922, 2e-5] },
    source: derived('samePushedRound'),
  },
  {
    key: 'driveHotEnd',
    given: {
      ...nozzle,
      ...line,
      x_set: '0.6 mm',
      F_m: '12.0264 N ± 0.5 N',
      n: '0.45 ± 0',
      L: '50 mm ± 0',
      E: '2.5 GPa ± 0',
      V: '40 mm3 ± 0',
      B: '1 GPa ± 0',
      s_b: '0.1 mm ± 0.02 mm',
      a_lo: '0.1 mm',
      a_hi: '0.7 mm',
    },
    choices: { drive: 'head', source: 'force' },
    expect: { s_f: [0.1, 1e-5], x_r: [0.28315, 1e-4], t_x: [0.015, 1e-9] },
    verdict: 'within',
    source: derived('driveHotEnd'),
  },
] as const;
