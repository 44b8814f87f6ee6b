import { evaluate, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

/** An expression with units, worked out by mathjs. */
export const by = (expression: string, unit: string) => () => {
  const result = evaluate(expression) as Unit | number;
  return typeof result === 'number' ? result : result.toNumber(unit);
};

export const bare = { T_d: '0 N·mm', T_b: '0 N·mm', mu_c: '0' } as const;

/** Mott, Machine Elements in Mechanical Design, example 17-1, at a hundredth of its load. */
export const mott = {
  ...bare,
  M_z: '125 lb ± 0',
  d: '1.4679 in ± 0',
  P: '0.25 in',
  P_h: '0.25 in',
  mu: '0.15 ± 0',
} as const;
const slim = {
  d: '8 mm ± 0',
  d_k: '5.5 mm ± 0',
  L: '400 mm ± 0',
  E: '206 GPa ± 0',
  rho: '7850 kg/m³ ± 0',
  ...bare,
} as const;
const pinned = { screw: 'own', screws: 'one', ends: 'pinned' } as const;

/** Roots of cos x · cosh x = −1, sin x = 0, tan x = tanh x, cos x · cosh x = 1 by bisection: the beam's own equation. */
function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 80; i += 1) {
    const middle = (a + b) / 2;
    if (f(a) * f(middle) <= 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}
const rpm = (beta: number): number =>
  (60 / (2 * Math.PI)) * (beta / 0.4) ** 2 * Math.sqrt((206e9 * 0.0055 ** 2) / (16 * 7850));
const roots = {
  free: root((x) => Math.cos(x) * Math.cosh(x) + 1, 1.5, 2.5),
  pinned: Math.PI,
  mixed: root((x) => Math.tan(x) - Math.tanh(x), 3.5, 4.2),
  clamped: root((x) => Math.cos(x) * Math.cosh(x) - 1, 4, 5.5),
};
/** Free length of the bar that buckles alike, mm, over a quarter of the core: its radius of gyration. */
const slender = { free: 800, pinned: 400, mixed: 280, clamped: 200 };
const euler = { free: 142.7, pinned: 570.8, mixed: 1165, clamped: 2283 };

const ends = (['free', 'pinned', 'mixed', 'clamped'] as const).map((end): OutsideProof => ({
  source:
    'Euler’s load of a 5.5 mm core over 400 mm at 206 GPa with K 2, 1, 0.7, 0.5 (handbook factors); critical speed from the roots of the bending beam’s equation, by bisection',
  given: slim,
  choices: { ...pinned, ends: end },
  expect: { F_E: [euler[end], 0.005 * euler[end]], n_c: [() => rpm(roots[end]), 1], s: [slender[end] / 1.375, 1e-6] },
}));

/** What the stalled motor pushes with, what buckles and what whirls. */
export const slenderChecks: readonly OutsideProof[] = [
  {
    source: 'Mott, example 17-1 the other way round: 18.09 lbf·in pushes 125 lbf',
    given: {
      ...mott,
      tau_h: '18.09 lbf in ± 0',
    },
    choices: { screw: 'acme', screws: 'one' },
    expect: { F_s: [by('125 lbf', 'N'), 3] },
  },
  {
    source: 'Mott, example 17-1 the other way round, half the torque through a gearing of two to one',
    given: {
      ...mott,
      tau_h: '9.045 lbf in ± 0',
      i_g: '2',
    },
    choices: { screw: 'acme', screws: 'one' },
    expect: { F_s: [by('125 lbf', 'N'), 3] },
  },
  {
    source:
      'Mott, example 17-1 the other way round, twice the torque at half the current, to which torque is in proportion',
    given: {
      ...mott,
      tau_h: '36.18 lbf in ± 0',
      k_I: '50 %',
    },
    choices: { screw: 'acme', screws: 'one' },
    expect: { F_s: [by('125 lbf', 'N'), 3] },
  },
  ...ends,
  {
    source:
      'Shigley’s form of Johnson’s column, S_y − (S_y l / (2 π k))² / (C E) (from memory), by mathjs: 12 mm core, 200 mm, pinned; ratio to a push known from energy',
    given: { ...slim, d: '14 mm', P: '2 mm', d_k: '12 mm ± 0', L: '200 mm ± 0', R_e: '400 MPa ± 0' },
    choices: pinned,
    expect: {
      d_3: [12, 1e-9],
      s: [by('200 / (12 / 4)', ''), 1e-9],
      r_s: [by('(200 / (12 / 4)) / sqrt(2 * pi^2 * 206000 / 400)', ''), 1e-9],
      sigma: [by('400 - (400 * 200 / (2 pi * 3))^2 / 206000', ''), 1e-6],
      F_b: [by('(400 - (400 * 200 / (2 pi * 3))^2 / 206000) * pi * 36', ''), 1e-4],
    },
  },
  {
    source:
      'Shigley, columns: Euler and Johnson meet at half the yield strength (from memory); 5.5 mm core at a slenderness of 100.82',
    given: { ...slim, L: `${(100.82 * 5.5) / 4} mm ± 0`, R_e: '400 MPa ± 0' },
    choices: pinned,
    expect: { sigma: [200, 0.2] },
  },
  {
    source:
      'Euler’s load of the reference list, 570.8 N, is also the buckling load of a slender screw; second moment of a 5.5 mm round by mathjs; push from Mott’s torque',
    given: {
      ...slim,
      d: '1.4679 in ± 0',
      P: '0.25 in',
      P_h: '0.25 in',
      alpha: '14.5 deg',
      mu: '0.15 ± 0',
      R_e: '400 MPa ± 0',
      tau_h: '18.09 lbf in ± 0',
    },
    choices: pinned,
    expect: {
      I: [by('pi * 5.5^4 / 64', ''), 1e-6],
      F_b: [570.8, 2.8],
      m_b: [by('570.8 N / (125 lbf)', ''), 0.011],
    },
  },
  ...(
    [
      ['free', 3.4],
      ['pinned', 9.7],
      ['mixed', 15.1],
      ['clamped', 21.9],
    ] as const
  ).map(([end, factor]): OutsideProof => ({
    source:
      'Common practice, no source: critical speed as f · d/L² · 10⁷ rpm with f 3.4, 9.7, 15.1, 21.9, which hold the 80 % margin already',
    given: { ...slim, P_h: '2 mm' },
    choices: { ...pinned, ends: end },
    expect: {
      n_m: [(factor * 5.5e7) / 400 ** 2, (0.015 * factor * 5.5e7) / 400 ** 2],
      v_m: [(2 * factor * 5.5e7) / 400 ** 2 / 60, (0.03 * factor * 5.5e7) / 400 ** 2 / 60],
    },
  })),
  {
    source:
      'Common practice, no source: the formula in inches, 4.76 · 10⁶ · d/L² rpm, end factor 1, which holds no margin',
    given: slim,
    choices: pinned,
    expect: { n_c: [(4.76e6 * (5.5 / 25.4)) / (400 / 25.4) ** 2, 42] },
  },
  {
    source: 'The definition of lead: 10 mm/s over 2 mm a turn is 5 turns a second; d₂ from typed values by mathjs',
    given: { ...slim, P: '2 mm', P_h: '2 mm', v: '10 mm/s' },
    choices: pinned,
    expect: { n: [300, 1e-9], d_2: [7, 1e-9] },
  },
];
