import type { OutsideProof } from '../../engine/outside';

/** A span whose tension to aim at is 17.76 N. */
const span = {
  L_1: '150 mm ± 0',
  w: '6 mm ± 0',
  m_0: '13 g/m ± 0',
  T_b: '15.5 N',
  T_a: '43.7 N',
  M: '0.5 kg ± 0',
  a: '1000 mm/s²',
} as const;
const stiff = { ...span, EI: '20 N·mm² ± 0' } as const;

const pressed = {
  L_1: '300 mm ± 0',
  w: '6 mm ± 0',
  C_0: '31000 N ± 0',
  L_t1: '1000 mm ± 0',
  T_b: '15.5 N',
  T_a: '43.7 N',
  M: '0.5 kg ± 0',
  a: '1000 mm/s²',
} as const;

/** So limp, ends free, that stiffness takes 10⁻⁵ of the tension at most. */
const limp = { EI: '0.1 N·mm² ± 0' } as const;

/** 5 mm pitch, polyurethane and steel cord, 25 mm wide. */
const steel25 = {
  w: '25 mm',
  m_0: '21 g/m ± 0',
  T_a: '360 N',
  C_0: '90000 N ± 0',
  a: '0 mm/s²',
} as const;

/** Two strands of 0.25 m of it, 10 mm wide: 40 N are there, 360 N are wanting to the middle of 0 to 800 N. */
const loop = {
  ...steel25,
  ...limp,
  w: '10 mm ± 0',
  T_b: '0 N',
  T_a: '800 N',
  L_1: '250 mm ± 0',
  L_t1: '500 mm ± 0',
  theta_w: '180 deg ± 0',
  f: '87.2871561 Hz ± 0',
} as const;

/** Tension in N that sounds a note with held ends: root of the frequency equation of a held beam under tension, by halving. */
function exactlyHeld(note: number, mass: number, length: number, stiffness: number): number {
  const w = 2 * Math.PI * note;
  const equation = (tension: number): number => {
    const half = tension / (2 * stiffness);
    const root = Math.sqrt(half ** 2 + (mass * w ** 2) / stiffness);
    const [a, b] = [Math.sqrt(root + half), Math.sqrt(root - half)];
    return (
      2 * a * b * (1 / Math.cosh(a * length) - Math.cos(b * length)) +
      (a * a - b * b) * Math.tanh(a * length) * Math.sin(b * length)
    );
  };
  const string = 4 * mass * length ** 2 * note ** 2;
  let [low, high] = [0.3 * string, string];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (equation(low) * equation(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Force in N that presses a tensioned beam in by y: ends free, half of it pressed each, or held (hyperbolic functions). */
function presses(tension: number, y: number, length: number, stiffness: number, held: boolean): number {
  const k = Math.sqrt(tension / stiffness);
  const free = Math.tanh((k * length) / 2) / ((k * length) / 2);
  const clamped = (2 * Math.tanh((k * length) / 4)) / ((k * length) / 2);
  return (4 * tension * y) / (length * (1 - (held ? clamped : free)));
}

/** Tension in N that sounds a note in Hz, from kg/m, m and N·m², by halving: Morse’s series is printed for the note. */
function tensionFor(note: number, mass: number, length: number, stiffness: number): number {
  const sounds = (tension: number): number => {
    const e = Math.sqrt(stiffness / tension) / length;
    return (Math.sqrt(tension / mass) / (2 * length)) * (1 + 2 * e + (4 + Math.PI ** 2 / 2) * e ** 2);
  };
  let [low, high] = [1, 1000];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (sounds(middle) < note) low = middle;
    else high = middle;
  }
  return low;
}
/** A very stiff belt, ε about 0.05, so that the terms of second order weigh. */
const STIFF = tensionFor(180, 0.0078, 0.15, 1e-3);

const checks: readonly OutsideProof[] = [
  {
    source: 'OpenStax, University Physics 1, ch. 16: 6 g/m, 2 m, 19.6 N gives 57.15 m/s, hence 14.29 Hz (from memory)',
    given: { ...limp, L_1: '2 m ± 0', f: '14.29 Hz ± 0', m_s: '12 g ± 0', l_s: '2000 mm ± 0' },
    choices: { mass: 'weigh', ends: 'pinned' },
    expect: { L: [2000, 1e-9], mu: [6, 1e-9], T_0: [19.6, 0.01], T: [19.6, 0.01], T_h: [19.6 / 4, 0.0025] },
  },
  {
    source: 'Mersenne’s laws of strings: four times the tension sounds the octave, half the length as well',
    given: { ...limp, L_2: '300 mm ± 0', f: '220 Hz ± 0', mu_1: '8.4 g/m ± 0' },
    choices: { mass: 'typed', which: 'second', ends: 'pinned' },
    // 9.1476 N at 150 mm and 110 Hz, by GNU units 2.22.
    expect: {
      L: [300, 1e-9],
      mu: [8.4, 1e-12],
      T: [16 * 9.1476, 1e-4],
      T_0: [16 * 9.1476, 1e-9],
      T_h: [4 * 9.1476, 1e-9],
    },
  },
  {
    source:
      'Trade fact: 2.5 times the width has 2.5 times the cords: 0.0525 kg/m, 900 N, 225 000 N, 225 N·mm² of T5 belt',
    given: { ...steel25, EI_0: '90 N·mm² ± 0', L_1: '500 mm', f: '80 Hz' },
    choices: { belt: 'straight5' },
    expect: { mu: [52.5, 1e-9], T_hi: [900, 1e-9], C: [225000, 1e-6], EI_b: [225, 1e-9] },
  },
  {
    source: 'A table by the inch: 10 lbf for 25.4 mm is 44.482 N (the pound-force: NIST SP 811, appendix B.8)',
    given: { w: '25.4 mm', T_b: '17.5127 N', a: '0 mm/s²', L_1: '250 mm', f: '80 Hz' },
    expect: { T_lo: [44.482, 1e-3] },
  },
  {
    source: 'BIPM, SI brochure: the newton gives 1 kg an acceleration of 1 m/s²',
    given: { M: '3 kg', a: '1 m/s²', L_1: '250 mm', f: '80 Hz' },
    expect: { F_d: [3, 1e-9] },
  },
  {
    source: 'BIPM, SI brochure: the newton, second belt',
    given: { M_2: '2 kg', a: '2000 mm/s²', L_2: '250 mm', L_t2: '1.2 m', f: '80 Hz' },
    choices: { which: 'second' },
    expect: { F_d: [4, 1e-9], L_t: [1200, 1e-9] },
  },
  {
    source: 'GNU units 2.22: sqrt(T/mu)/(2 L) for 9.8, 17.76 and 25.72 N, 7.8 g/m, 150 mm',
    given: { ...span, ...limp, f: '150 Hz' },
    choices: { ends: 'pinned' },
    expect: {
      T_aim: [17.76, 1e-9],
      f_lo: [118.15, 0.01],
      f_aim: [159.06, 0.01],
      f_hi: [191.41, 0.01],
    },
  },
  {
    source:
      'Exact frequency of a held beam under tension (Euler and Bernoulli), root by scipy 1.17 brentq; the same by beam elements, scipy eigh',
    given: { ...stiff, f: '161.37989752 Hz ± 0' },
    choices: { ends: 'clamped' },
    expect: {
      EI_b: [20, 1e-9],
      B: [0.000888889, 1e-9],
      beta: [0.006972, 1e-5],
      T_c: [17.76, 0.0005],
      T: [17.76, 0.0005],
      epsilon: [0.0070746, 1e-6],
      q_T: [2.9421, 0.005],
      f_lo: [120.50136, 0.005],
      f_aim: [161.3799, 0.002],
      f_hi: [193.72147, 0.002],
    },
  },
  {
    source: 'Two hundred beam elements with tension, hinged ends, scipy 1.17 linalg.eigh',
    given: { ...stiff, f: '159.09633068 Hz ± 0' },
    choices: { ends: 'pinned' },
    expect: {
      B: [0.000888889, 1e-9],
      T_p: [17.76, 1e-4],
      T: [17.76, 1e-4],
      epsilon: [0.0070746, 1e-6],
      q_T: [0.0494, 0.0005],
      f_lo: [118.2058, 1e-4],
      f_aim: [159.09633, 1e-4],
      f_hi: [191.44366, 1e-4],
    },
  },
  {
    source: 'Elastica of an overhanging strip under its own weight, scipy 1.17 solve_bvp: 8.4 g/m, 40 mm, 10⁻⁴ N·m²',
    given: { L_1: '150 mm', f: '150 Hz', mu_1: '8.4 g/m', EI: '100 N·mm²', l_o: '40 mm' },
    choices: { mass: 'typed', ends: 'pinned' },
    expect: { y_o: [0.2635936, 0.0001] },
  },
  {
    source: 'Least energy of a stretched and pressed belt at 15 N rest tension under 2 N, scipy 1.17 minimize_scalar',
    given: { ...pressed, ...limp, F: '2 N ± 0', y: '7.0795385952 mm ± 0' },
    // A belt without stiffness: of a limp one its own takes 0.05 % off.
    choices: { by: 'press', ends: 'pinned' },
    expect: {
      T_1: [21.1878215, 1e-5],
      T_y: [21.2114063, 1e-5],
      dl: [0.3339466, 1e-6],
      dT_y: [6.2114063, 1e-5],
      T: [15, 0.01],
      s: [2.35984615, 1e-7],
      q_y: [41.4093756, 0.03],
      F_lo: [1.50969774, 0.001],
      F_aim: [2.2602373, 0.0015],
      F_hi: [3.01077686, 0.002],
    },
  },
  ...([false, true] as const).map((held): OutsideProof => {
    const [L, EI, y] = [0.15, 5e-5, 0.5e-3];
    return {
      source: `A tensioned beam of 150 mm, E·I 50 N·mm², under 20 N pressed in by 0.5 mm, ends ${held ? 'held' : 'free'}: its bending line in hyperbolic functions`,
      given: {
        ...pressed,
        L_1: '150 mm ± 0',
        // So soft that pressing adds no tension.
        C_0: '100 N ± 0',
        EI: '50 N·mm² ± 0',
        F: `${presses(20, y, L, EI, held)} N ± 0`,
        y: '0.5 mm ± 0',
      },
      choices: { by: 'press', ends: held ? 'clamped' : 'pinned' },
      expect: {
        beta: [Math.sqrt(EI / ((presses(20, y, L, EI, held) * L) / (4 * y))) / L, 1e-6],
        epsilon: [Math.sqrt(EI / 20) / L, 1e-5],
        T_s: [20, held ? 0.015 : 0.003],
        T: [20, held ? 0.015 : 0.003],
        F_lo: [() => presses(9.8, y, L, EI, held), 1e-4],
        F_aim: [() => presses(17.76, y, L, EI, held), 1e-4],
        F_hi: [() => presses(25.72, y, L, EI, held), 1e-4],
      },
    };
  }),
  {
    source: 'Common practice, no source: a belt is pressed in by 1/64 of its span; triangle of 150 mm and 4.6875 mm',
    given: { ...pressed, ...limp, F: '0.75225 N ± 0', y: `${300 / 64} mm ± 0` },
    choices: { by: 'press', ends: 'pinned' },
    expect: { L_t: [1000, 1e-9], T_1: [12.036, 1e-9] },
  },
  ...(
    [
      [80, 200],
      [60, 260],
      [120, 150],
    ] as const
  ).map(([L, f]): OutsideProof => {
    const [m, EI] = [0.0078, 6e-6];
    const held = exactlyHeld(f, m, L / 1e3, EI);
    const free = 4 * m * (L / 1e3) ** 2 * f ** 2 - (Math.PI ** 2 * EI) / (L / 1e3) ** 2;
    return {
      source: `Exact frequency equation of a held beam under tension, and that of a hinged one: ${L} mm at ${f} Hz on pulleys lie midway`,
      given: { L_1: `${L} mm ± 0`, f: `${f} Hz ± 0`, w: '6 mm ± 0', m_0: '13 g/m ± 0', EI_0: '10 N·mm² ± 0' },
      expect: { EI_b: [6, 1e-9], T_p: [free, 1e-6], T_c: [held, 1e-3 * held], T: [(free + held) / 2, 1e-3 * held] },
    };
  }),
  {
    source:
      'Trade fact: on a T5 belt, 10 mm wide, 90 000 N, two strands of 0.25 m hold a pulley with 720 N/mm, so 1 mm is 360 N in each',
    given: loop,
    choices: { belt: 'straight5', ends: 'pinned' },
    expect: { dT: [360, 0.001], dl_t: [2, 1e-5], dx: [1, 1e-5], F_s: [80, 0.001] },
  },
  {
    source: 'ISO 261: M3 coarse has a pitch of 0.5 mm, so 1 mm is two turns (from memory)',
    given: { ...loop, P_a: '0.5 mm' },
    choices: { belt: 'straight5', ends: 'pinned' },
    expect: { psi: [2, 1e-5] },
  },
  {
    source: 'Exact frequency of a held beam under tension, a quarter as stiff: root by bisection in Python',
    given: { ...span, EI: '5 N·mm² ± 0', f: '160.2002471852 Hz ± 0' },
    choices: { ends: 'clamped' },
    expect: {
      T: [17.76, 0.0001],
      q_T: [1.4426333, 0.0005],
      f_lo: [119.3023996, 0.0006],
      f_aim: [160.2002472, 0.0003],
      f_hi: [192.55116, 0.0003],
    },
  },
  {
    source:
      'Morse, Vibration and Sound (from memory): the series for the note of a held stiff string, root by bisection',
    given: { ...span, EI: '1000 N·mm² ± 0', f: '180 Hz ± 0' },
    choices: { ends: 'clamped' },
    expect: {
      T: [() => STIFF, 1e-8],
      q_T: [() => ((4 * 0.0078 * 0.15 ** 2 * 180 ** 2) / STIFF - 1) * 100, 1e-7],
    },
  },
  {
    source:
      'Pythagoras, 7-24-25: pressed in 70 mm, a span of 480 mm is two sides of 250 mm; 20 mm are 1 % of 2 m, and 1 % of 1000 N is 10 N',
    given: {
      ...pressed,
      ...limp,
      w: '10 mm ± 0',
      C_0: '1000 N ± 0',
      L_1: '480 mm ± 0',
      L_t1: '2 m ± 0',
      F: '14 N ± 0',
      y: '70 mm ± 0',
    },
    choices: { by: 'press', ends: 'pinned' },
    // 14 N on two strands that rise 7 in 25: 25 N each.
    expect: { dl: [20, 1e-9], dT_y: [10, 1e-9], T_y: [25, 1e-9], T: [15, 0.01] },
  },
  {
    source:
      'Belt laid over a circle between two fixed points, lengths by numpy: at 120° of wrap the way is 1/√3 of the belt',
    given: { ...loop, theta_w: '120 deg ± 0' },
    choices: { belt: 'straight5', ends: 'pinned' },
    expect: { dl_t: [2, 1e-5], dx: [2 / 1.7320508, 1e-5] },
  },
];
export default checks;
