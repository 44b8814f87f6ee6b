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

/** 5 mm pitch, polyurethane and steel cord, as a supplier prints it for 25 mm of width. */
const steel25 = {
  w: '25 mm',
  m_0: '21 g/m ± 0',
  T_a: '360 N',
  C_0: '90000 N ± 0',
  a: '0 mm/s²',
} as const;

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
    given: { L_1: '2 m ± 0', f: '14.29 Hz ± 0', m_s: '12 g ± 0', l_s: '2000 mm ± 0' },
    choices: { mass: 'weigh' },
    expect: { L: [2000, 1e-9], mu: [6, 1e-9], T_0: [19.6, 0.01], T: [19.6, 0.01], T_h: [19.6 / 4, 0.0025] },
  },
  {
    source: 'Mersenne’s laws of strings: four times the tension sounds the octave, half the length as well',
    given: { L_2: '300 mm ± 0', f: '220 Hz ± 0', mu_1: '8.4 g/m ± 0' },
    choices: { mass: 'typed', which: 'second' },
    // 9.1476 N at 150 mm and 110 Hz, by GNU units 2.22.
    expect: { L: [300, 1e-9], mu: [8.4, 1e-12], T: [16 * 9.1476, 1e-9], T_h: [4 * 9.1476, 1e-9] },
  },
  {
    source: 'A supplier’s table, 5 mm pitch T profile, 25 mm wide: 0.053 kg/m, 900 N allowable, spring rate 225 000 N',
    given: { ...steel25, L_1: '500 mm', f: '80 Hz' },
    choices: { belt: 'straight5' },
    expect: { mu: [53, 0.6], T_hi: [900, 1e-9], C: [225000, 1e-6] },
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
    given: { ...span, f: '150 Hz' },
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
      B: [0.000888889, 1e-9],
      beta: [0.006972, 1e-5],
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
    given: { ...pressed, F: '2 N ± 0', y: '7.0795385952 mm ± 0' },
    choices: { by: 'press' },
    expect: {
      T_1: [21.1878215, 1e-5],
      T_y: [21.2114063, 1e-5],
      dl: [0.3339466, 1e-6],
      dT_y: [6.2114063, 1e-5],
      T: [15, 1e-5],
      s: [2.35984615, 1e-7],
      q_y: [41.4093756, 1e-4],
      F_lo: [1.50969774, 1e-6],
      F_aim: [2.2602373, 1e-6],
      F_hi: [3.01077686, 1e-6],
    },
  },
  {
    source:
      'A supplier’s rule: at a deflection of t/64 the force is (T + (t/L)·Y)/16; T 9.3 N, Y 9.12 N, t 300 mm, L 1 m give 0.75225 N (Y from memory)',
    // Y is the stretch of 1/2048 that this deflection makes: C = 2048 · Y.
    given: { ...pressed, C_0: `${(2048 * 9.12) / 0.6} N ± 0`, F: '0.75225 N ± 0', y: `${300 / 64} mm ± 0` },
    choices: { by: 'press' },
    expect: { L_t: [1000, 1e-9], T: [9.3, 0.02], T_1: [12.036, 1e-9] },
  },
  {
    source:
      'A supplier’s table, 5 mm pitch T profile, 10 mm wide, 90 000 N: two strands of 0.25 m hold a pulley with 720 N/mm, so 1 mm is 360 N in each',
    given: {
      ...steel25,
      w: '10 mm ± 0',
      T_b: '0 N',
      T_a: '800 N',
      L_1: '250 mm ± 0',
      L_t1: '500 mm ± 0',
      theta_w: '180 deg ± 0',
      // 40 N are there, 360 N are wanting to the middle of 0 to 800 N.
      f: '87.2871561 Hz ± 0',
    },
    choices: { belt: 'straight5' },
    expect: { dT: [360, 0.001], dl_t: [2, 1e-5], dx: [1, 1e-5], F_s: [80, 0.001] },
  },
  {
    source: 'ISO 261: M3 coarse has a pitch of 0.5 mm, so 1 mm is two turns (from memory)',
    given: {
      ...steel25,
      w: '10 mm ± 0',
      T_b: '0 N',
      T_a: '800 N',
      L_1: '250 mm ± 0',
      L_t1: '500 mm ± 0',
      theta_w: '180 deg ± 0',
      f: '87.2871561 Hz ± 0',
      P_a: '0.5 mm',
    },
    choices: { belt: 'straight5' },
    expect: { psi: [2, 1e-5] },
  },
  {
    source: 'Common practice, no source: spans under about 20 belt heights are no strings; 20 × 1.45 mm',
    given: { L_1: '250 mm', f: '80 Hz', h: '1.45 mm' },
    expect: { L_min: [29, 1e-9] },
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
      w: '10 mm ± 0',
      C_0: '1000 N ± 0',
      L_1: '480 mm ± 0',
      L_t1: '2 m ± 0',
      F: '14 N ± 0',
      y: '70 mm ± 0',
    },
    choices: { by: 'press' },
    // 14 N on two strands that rise 7 in 25: 25 N each.
    expect: { dl: [20, 1e-9], dT_y: [10, 1e-9], T_y: [25, 1e-9], T: [15, 1e-9] },
  },
  {
    source:
      'Belt laid over a circle between two fixed points, lengths by numpy: at 120° of wrap the way is 1/√3 of the belt',
    given: {
      ...steel25,
      w: '10 mm ± 0',
      T_b: '0 N',
      T_a: '800 N',
      L_1: '250 mm ± 0',
      L_t1: '500 mm ± 0',
      theta_w: '120 deg ± 0',
      f: '87.2871561 Hz ± 0',
    },
    choices: { belt: 'straight5' },
    expect: { dl_t: [2, 1e-5], dx: [2 / 1.7320508, 1e-5] },
  },
];
export default checks;
