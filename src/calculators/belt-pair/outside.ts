import type { OutsideProof } from '../../engine/outside';

/** The pound-force in newtons (NIST SP 811, appendix B.8). */
const LBF = 4.4482216152605;

const spans = { L_1: '300 mm ± 0', L_2: '240 mm ± 0', f_1: '80 Hz ± 0', f_2: '90 Hz ± 0' } as const;
const short = { L_1: '300 mm ± 0', L_2: '100 mm ± 0', mu_a: '8 g/m ± 0', EI_1: '50 N·mm² ± 0' } as const;

/** So limp, ends free, that stiffness takes 10⁻⁶ of the tension at most. */
const limp = { EI_1: '0.1 N·mm² ± 0', EI_2: '0.1 N·mm² ± 0' } as const;
const alike = { EI_1: '0.1 N·mm² ± 0' } as const;

/** Note in Hz of a beam under tension on hinges, and with held ends: the latter by halving of its frequency equation. */
const hinged = (T: number, mass: number, L: number, EI: number): number =>
  Math.sqrt((T + (Math.PI ** 2 * EI) / L ** 2) / mass) / (2 * L);
function held(T: number, mass: number, L: number, EI: number): number {
  const equation = (note: number): number => {
    const half = T / (2 * EI);
    const root = Math.sqrt(half ** 2 + (mass * (2 * Math.PI * note) ** 2) / EI);
    const [a, b] = [Math.sqrt(root + half), Math.sqrt(root - half)];
    return 2 * a * b * (1 / Math.cosh(a * L) - Math.cos(b * L)) + (a * a - b * b) * Math.tanh(a * L) * Math.sin(b * L);
  };
  const string = Math.sqrt(T / mass) / (2 * L);
  let [low, high] = [string, 1.4 * string];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (equation(low) * equation(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

const checks: readonly OutsideProof[] = [
  {
    source: 'OpenStax, University Physics 1, ch. 16: 6 g/m, 2 m, 19.6 N sounds 14.29 Hz (from memory)',
    given: {
      L_1: '2 m ± 0',
      f_1: '14.29 Hz ± 0',
      L_2: '1 m ± 0',
      f_2: '28.58 Hz ± 0',
      m_s: '12 g ± 0',
      l_s: '2 m ± 0',
      ...alike,
    },
    choices: { mass: 'weigh', ends: 'pinned' },
    expect: {
      mu_1: [6, 1e-9],
      mu_2: [6, 1e-9],
      T_01: [19.6, 0.01],
      T_02: [19.6, 0.01],
      T_1: [19.6, 0.01],
      T_2: [19.6, 0.01],
      d_T: [0, 1e-4],
      f_2e: [28.58, 0.01],
      f_1e: [14.29, 0.005],
    },
  },
  {
    source: 'Mersenne’s laws of strings: the note goes with one over the length and one over the root of the mass',
    given: {
      L_1: '400 mm ± 0',
      f_1: '50 Hz ± 0',
      L_2: '200 mm ± 0',
      f_2: '60 Hz ± 0',
      m_s: '10 g ± 0',
      l_s: '1000 mm ± 0',
      m_s2: '80 g ± 0',
      l_s2: '2000 mm ± 0',
      ...limp,
    },
    choices: { belts: 'different', mass: 'weigh', ends: 'pinned' },
    // Four times the mass halves the note, half the length doubles it.
    expect: { mu_2: [40, 1e-9], f_2e: [50, 1e-4], f_1e: [60, 1e-4] },
  },
  {
    source: 'GNU units 2.22: 4 · 7.8 g/m · (240 mm · 90 Hz)², against 17.9712 N; percentage of the mean by bc',
    given: { ...spans, ...alike, w: '6 mm ± 0', m_0: '13 g/m ± 0' },
    choices: { ends: 'pinned' },
    expect: { mu_1: [7.8, 1e-9], T_2: [14.556672, 3e-5], d_T: [-20.994475, 1e-4] },
  },
  {
    source:
      'Trade fact: 2.5 times the width has 2.5 times the cords, ten times the width ten times: T5 25 mm, AT5 100 mm wide',
    given: {
      ...spans,
      w: '25 mm',
      w_2: '100 mm',
      m_0: '21 g/m',
      m_02: '34 g/m',
      T_a: '360 N',
      T_a2: '560 N',
      EI_01: '90 N·mm²',
      EI_02: '150 N·mm²',
    },
    choices: { belts: 'different', belt: 'straight5', belt_2: 'wide5' },
    expect: {
      mu_1: [52.5, 1e-9],
      mu_2: [340, 1e-9],
      T_hi1: [900, 1e-9],
      T_hi2: [5600, 1e-9],
      EI_a: [225, 1e-9],
      EI_b: [1500, 1e-9],
    },
  },
  {
    source:
      'NIST SP 811, appendix B.8, the pound-force by definition: tensions by the inch of width, 25 lbf and 10 lbf for 25.4 mm',
    given: {
      ...spans,
      w: '25.4 mm',
      w_2: '25.4 mm',
      T_b: '17.5127 N',
      T_b2: '17.5127 N',
      T_a: '43.7817 N',
      T_a2: '43.7817 N',
    },
    choices: { belts: 'different' },
    expect: {
      T_lo1: [10 * LBF, 1e-3],
      T_hi2: [25 * LBF, 1e-3],
      T_lo2: [10 * LBF, 1e-3],
      // Midway between 10 and 25 pound-force.
      T_aim: [17.5 * LBF, 1e-3],
    },
  },
  {
    source: 'The pound-force by definition, two belts alike',
    given: { ...spans, w: '25.4 mm', T_b: '17.5127 N', T_a: '43.7817 N' },
    expect: {
      T_hi1: [25 * LBF, 1e-3],
      T_hi2: [25 * LBF, 1e-3],
      T_lo2: [10 * LBF, 1e-3],
      T_aim: [17.5 * LBF, 1e-3],
    },
  },
  {
    source: 'Exact frequency of held beams under 20 N (Euler and Bernoulli), root by scipy 1.17 brentq',
    given: { ...short, f_1: '84.2326836 Hz ± 0', f_2: '258.4847815 Hz ± 0' },
    choices: { mass: 'typed', ends: 'clamped' },
    expect: {
      mu_1: [8, 1e-9],
      T_01: [20.4340176, 1e-5],
      T_02: [21.3806023, 1e-5],
      EI_a: [50, 1e-9],
      EI_b: [50, 1e-9],
      B_1: [0.000555556, 1e-9],
      B_2: [0.005, 1e-9],
      T_c1: [20, 0.00013],
      T_c2: [20, 0.004],
      beta_1: [0.0052142, 1e-6],
      beta_2: [0.0152924, 1e-6],
      T_1: [20, 0.00013],
      T_2: [20, 0.004],
      epsilon_1: [0.0052705, 1e-6],
      epsilon_2: [0.0158114, 2e-6],
      f_2e: [258.48478, 0.025],
      f_1e: [84.23268, 0.008],
    },
  },
  {
    source: 'Two hundred beam elements with tension, hinged ends, scipy 1.17 linalg.eigh',
    given: { ...short, f_1: '83.34475575 Hz ± 0', f_2: '250.3082353 Hz ± 0' },
    choices: { mass: 'typed', ends: 'pinned' },
    expect: {
      B_1: [0.000555556, 1e-9],
      T_p1: [20, 1e-4],
      T_p2: [20, 1e-4],
      T_1: [20, 1e-4],
      T_2: [20, 1e-4],
      f_2e: [250.30824, 1e-4],
      f_1e: [83.34476, 1e-4],
    },
  },
  {
    source: 'The same elements and root finder, second belt 15 g/m, 200 mm, 8·10⁻⁵ N·m² under 20 N',
    given: {
      L_1: '300 mm ± 0',
      f_1: '84.2326836 Hz ± 0',
      mu_a: '8 g/m ± 0',
      EI_1: '50 N·mm² ± 0',
      L_2: '200 mm ± 0',
      f_2: '93.19631737 Hz ± 0',
      mu_b: '15 g/m ± 0',
      EI_2: '80 N·mm² ± 0',
    },
    choices: { belts: 'different', mass: 'typed', ends: 'clamped' },
    expect: { EI_b: [80, 1e-9], mu_2: [15, 1e-9], B_2: [0.002, 1e-9], T_2: [20, 0.001], f_2e: [93.19632, 0.003] },
  },
  {
    source: 'Belt laid over a circle between two fixed points, lengths by numpy, slope at the start: 120° of wrap',
    given: { ...spans, p: '3 mm', theta_w: '120 deg ± 0' },
    expect: { x_1: [3 / 1.7320508, 1e-6] },
  },
  {
    source:
      'Fact of the trade: an idler wrapped half round takes up two lengths of belt, so two teeth of 2 mm are 2 mm',
    given: { ...spans, x: '2.25 mm ± 0.01 mm', x_d: '0.2 mm', p: '2 mm', theta_w: '180 deg ± 0' },
    expect: { x_1: [1, 1e-9], n: [2.05, 1e-9], n_w: [2, 0], r_x: [0.05, 1e-9] },
  },
  ...(['pinned', 'clamped'] as const).map((ends): OutsideProof => {
    const note = ends === 'pinned' ? hinged : held;
    return {
      source: `Exact frequency of a beam under tension, ends ${ends === 'pinned' ? 'hinged' : 'held'}: 200 and 120 mm of 8 g/m, 30 N·mm², at 25 N`,
      given: {
        L_1: '200 mm ± 0',
        L_2: '120 mm ± 0',
        f_1: `${note(25, 0.008, 0.2, 3e-5)} Hz ± 0`,
        f_2: `${note(25, 0.008, 0.12, 3e-5)} Hz ± 0`,
        mu_a: '8 g/m ± 0',
        EI_1: '30 N·mm² ± 0',
        w: '10 mm',
        T_b: '20 N',
        T_a: '30 N',
      },
      choices: { mass: 'typed', ends },
      expect: {
        T_aim: [25, 1e-9],
        T_1: [25, 0.002],
        T_2: [25, 0.005],
        f_1a: [note(25, 0.008, 0.2, 3e-5), 0.002],
        f_2a: [note(25, 0.008, 0.12, 3e-5), 0.03],
        f_1e: [note(25, 0.008, 0.2, 3e-5), 0.03],
        f_2e: [note(25, 0.008, 0.12, 3e-5), 0.03],
      },
    };
  }),
  {
    source: 'Exact frequency equations of a hinged and of a held beam under 15 N: on pulleys a note lies between',
    given: {
      L_1: '300 mm ± 0',
      L_2: '150 mm ± 0',
      f_1: `${held(15, 0.0078, 0.3, 6e-6)} Hz ± 0`,
      f_2: `${hinged(15, 0.0078, 0.15, 6e-6)} Hz ± 0`,
      w: '6 mm',
      m_0: '13 g/m ± 0',
      EI_01: '10 N·mm² ± 0',
    },
    expect: {
      EI_a: [6, 1e-9],
      EI_b: [6, 1e-9],
      T_c1: [15, 0.001],
      T_p2: [15, 1e-6],
      // Half of what held ends would take, 4 ε in first order: ε is 0.0021 and 0.0042.
      T_1: [15 * (1 + 2 * 0.0021), 0.01],
      T_2: [15 * (1 - 2 * 0.0042), 0.01],
    },
  },
  {
    source: 'Exact frequency of held beams of 250 and 300 mm under 20 N, root by bisection in Python',
    given: { ...short, L_1: '250 mm ± 0', L_2: '300 mm ± 0', f_1: '101.3011836 Hz ± 0', f_2: '84.2326836 Hz ± 0' },
    choices: { mass: 'typed', ends: 'clamped' },
    expect: { T_2: [20, 0.00013], beta_2: [0.0052142, 1e-6], f_1e: [101.3011836, 0.0008] },
  },
  {
    source: 'Mersenne’s laws of strings: half the length sounds the octave, the double length the octave below',
    given: { ...alike, L_1: '400 mm ± 0', f_1: '50 Hz ± 0', L_2: '200 mm ± 0', f_2: '60 Hz ± 0' },
    choices: { ends: 'pinned' },
    expect: { f_2e: [100, 1e-3], f_1e: [30, 1e-3] },
  },
  {
    source: 'Fact of the trade, two teeth of 2 mm are 2 mm: the other way, 2.45 mm are nearer to two than to three',
    given: { ...spans, x: '-2.25 mm ± 0.01 mm', x_d: '0.2 mm', p: '2 mm', theta_w: '180 deg ± 0' },
    expect: { n: [-2.45, 1e-9], n_w: [-2, 0], r_x: [-0.45, 1e-9] },
  },
];
export default checks;
