import { cite, derived } from '../../engine/calculator';

const known = { L_1: '150 mm ± 0', mu_1: '8.4 g/m ± 0' } as const;
const typed = { mass: 'typed' } as const;
/** So limp and so free at its ends that its stiffness counts for nothing. */
const limp = { EI: '0.1 N·mm² ± 0' } as const;

export const examples = [
  {
    key: 'spanMmG',
    given: { ...known, f: '110 Hz ± 0' },
    choices: typed,
    expect: { T_0: [9.1476, 1e-4], T_h: [2.2869, 1e-4] },
    source: derived('spanMmG'),
  },
  {
    key: 'textbooksStringG',
    given: { L_1: '2 m ± 0', f: '14.29 Hz ± 0', m_s: '12 g ± 0', l_s: '2000 mm ± 0' },
    choices: { mass: 'weigh' },
    expect: { mu: [6, 1e-9], T_0: [19.6, 0.01] },
    source: cite('OpenStax, University Physics volume 1 (2016)', 'chapterWavesStretched', true),
  },
  {
    key: 'slackBeltMm',
    given: {
      ...limp,
      L_1: '250 mm ± 0',
      f: '50 Hz ± 0',
      w: '6 mm ± 0',
      m_0: '13 g/m ± 0',
      T_b: '15.5 N',
      T_a: '43.7 N',
      M: '0.5 kg ± 0',
      a: '1000 mm/s²',
      C_0: '31000 N ± 0',
      L_t1: '1000 mm ± 0',
      theta_w: '180 deg ± 0',
      P_a: '0.5 mm',
    },
    choices: { ends: 'pinned' },
    expect: {
      mu: [7.8, 1e-9],
      T: [4.875, 1e-4],
      T_lo: [9.8, 1e-9],
      T_hi: [25.72, 1e-9],
      T_aim: [17.76, 1e-9],
      f_lo: [70.891, 0.002],
      f_hi: [114.846, 0.002],
      C: [18600, 1e-6],
      dT: [12.885, 1e-4],
      dl_t: [0.692742, 1e-5],
      dx: [0.346371, 1e-5],
      psi: [0.692742, 1e-5],
    },
    verdict: 'beyond',
    source: derived('slackBeltMm'),
  },
  {
    key: 'shortSpanEnds',
    given: { ...known, f: '167.8335 Hz ± 0', EI: '100 N·mm² ± 0' },
    choices: { ...typed, ends: 'clamped' },
    expect: { T_0: [21.2953, 0.0005], T: [20, 0.005], epsilon: [0.014907, 1e-5] },
    source: derived('shortSpanEnds'),
  },
  {
    key: 'sameSpanEnds',
    given: { ...known, f: '162.8283 Hz ± 0', EI: '100 N·mm² ± 0', l_o: '40 mm ± 0' },
    choices: { ...typed, ends: 'pinned' },
    expect: { B: [0.0044444, 1e-7], T: [20, 0.0005], q_T: [0.21932, 0.0005], y_o: [0.263602, 1e-6] },
    source: derived('sameSpanEnds'),
  },
  {
    key: 'shortSpanBetween',
    given: { ...known, f: '167.8335 Hz ± 0', EI: '100 N·mm² ± 0' },
    choices: { ...typed, ends: 'between' },
    expect: { T_p: [21.2512, 1e-4], T_c: [20.0028, 1e-4], T: [20.627, 1e-4] },
    source: derived('shortSpanBetween'),
  },
  {
    key: 'pressedNMm',
    given: {
      ...limp,
      L_1: '300 mm ± 0',
      F: '3 N ± 0',
      y: '10 mm ± 0',
      w: '6 mm ± 0',
      C_0: '31000 N ± 0',
      L_t1: '1000 mm ± 0',
    },
    choices: { by: 'press', ends: 'pinned' },
    expect: {
      T_1: [22.5, 1e-9],
      T_y: [22.54994, 1e-5],
      dl: [0.665927, 1e-6],
      dT_y: [12.38625, 1e-5],
      T_s: [22.53993, 1e-5],
      T: [10.15368, 1e-5],
      s: [3.33333, 1e-5],
    },
    source: derived('pressedNMm'),
  },
] as const;
