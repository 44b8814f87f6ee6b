import { cross, evaluate, intersect, log, lusolve, mean, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const G = 9.80665;
const FLANKS = 'Balance of the two flanks across and along the axle, solved by mathjs lusolve';
const STATICS = 'Turning effect as a vector product and the balance of the two ends, mathjs cross and lusolve';
const CARVILL =
  'J. Carvill, Mechanical Engineer’s Data Handbook, two rollers: width √(16 F ((1−ν₁²)/E₁ + (1−ν₂²)/E₂) r/(π L))';
const TABLE =
  'Timoshenko and Goodier, Theory of Elasticity, 3rd edition (1970), art. 141, table of m and n (from memory)';
const BALL =
  'Hertz, steel ball of 5 mm on a steel flat under 100 N, worked by Debian’s scipy 1.10: 0.1491 mm, 2148 MPa';
const BUSH = 'The bush’s centre carried round as a complex number by mathjs';

const solved = (rows: number[][], right: number[]): number[] => (lusolve(rows, right) as number[][]).flat();
const by = (expression: string, unit: string): number => (evaluate(expression) as Unit).toNumber(unit);
const cosine = (degrees: number): number => evaluate(`re(exp(i * ${degrees} * pi / 180))`) as number;

/** What each flank of a V of that half angle takes of a force square to the rail: across they add, along they cancel. */
function flank(across: number, beta: number): number {
  const [s, c] = [cosine(90 - beta), cosine(beta)];
  const rows = [
    [s, s],
    [c, -c],
  ];
  return solved(rows, [across, 0])[0] ?? NaN;
}

/** What the two ends of a carriage carry: kg, mm and mm/s²; weight down, push along the rail, ends `s` apart. */
function carriage(M: number, d: number, h: number, a: number, s: number) {
  const turning = (cross([d, h, 0], [(M * a) / 1000, -M * G, 0]) as number[])[2] ?? NaN;
  const rows = [
    [1, 1],
    [s / 2, -s / 2],
  ];
  const [outer = NaN, inner = NaN] = solved(rows, [M * G, -turning]);
  return { moment: -turning / 1000, each: (outer - inner) / 2 };
}

/** Radius in which a plane square to the flank cuts the wheel's cone: one of its points, found by halving, mm. */
function rolls(r: number, beta: number): number {
  const [s, c] = [cosine(90 - beta), cosine(beta)];
  const y = 0.02;
  let [low, high] = [0, y];
  for (let i = 0; i < 100; i += 1) {
    const w = (low + high) / 2;
    // Sunk by w along the normal: inside the cone once its distance from the axle is less than the cone's there.
    if (Math.hypot(r - w * s, y) > r + (w * c * c) / s) low = w;
    else high = w;
  }
  return y ** 2 / (2 * low) + low / 2;
}

/** Strain along a unit stress in a body that cannot grow sideways: Hooke's law in three directions, solved. */
const strain = (E: number, nu: number): number =>
  solved(
    [
      [E, 0, nu],
      [0, E, nu],
      [0, 0, 1],
    ],
    [1, -nu, nu],
  )[0] ?? NaN;

const POM = [2.8, 0.35] as const;
const RUBBERY = [0.06, 0.48] as const;
const ALUMINIUM = [70, 0.33] as const;
const STEEL = [206, 0.3] as const;
type Solid = readonly [E: number, nu: number];
const contact = (wheel: Solid, rail: Solid): number => 1 / (strain(...wheel) + strain(...rail));

/** A slip test of the wheel of so much preload and no weight on it, N, degrees; friction 0.2. */
const tread = (preload: number, beta: number, wheel: Solid, rail: Solid) => ({
  F_slip: `${0.2 * (beta === 90 ? preload : 2 * flank(preload, beta))} N ± 0`,
  mu: '0.2 ± 0',
  beta: `${beta} deg ± 0`,
  d: '0 mm ± 0',
  h: '0 mm ± 0',
  E_w: `${wheel[0]} GPa ± 0`,
  nu_w: `${wheel[1]} ± 0`,
  E_r: `${rail[0]} GPa ± 0`,
  nu_r: `${rail[1]} ± 0`,
});

/** Carvill's width and stress of two rollers, one of them flat; mathjs carries the units. N, mm, MPa. */
function rollers(load: number, r: number, l: number, wheel: Solid) {
  const soft = `((1 - ${wheel[1]}^2) / (${wheel[0]} GPa) + (1 - 0.33^2) / (70 GPa))`;
  const width = `sqrt(16 * ${load} N * ${soft} * ${r} mm / (pi * ${l} mm))`;
  return { width: by(width, 'mm'), stress: by(`4 * ${load} N / (pi * ${width} * ${l} mm)`, 'MPa') };
}

/** A line contact at 20 MPa allowed, on a flat tread or in a V. */
function line(load: number, r: number, l: number, beta: number, wheel: Solid): OutsideProof {
  const preload = beta === 90 ? 2 * load : load / flank(1, beta);
  const found = rollers(load, beta === 90 ? r : rolls(r, beta), l, wheel);
  const most = load * (20 / found.stress) ** 2;
  return {
    source: `${CARVILL}, stress 4 F/(π w L), mathjs units${beta === 90 ? '' : `; a cone’s section and a V of half angle ${beta}°`}`,
    given: { ...tread(preload, beta, wheel, ALUMINIUM), r_w: `${r} mm ± 0`, l_f: `${l} mm ± 0`, p_lim: '20 MPa' },
    expect: {
      Q: [load, 1e-6],
      b: [found.width / 2, 1e-5],
      p_0: [found.stress, found.stress * 1e-4],
      Q_max: [most, most * 1e-4],
      N_max: [(preload / load) * most, most * 2e-4],
    },
  };
}

/** Crossed cylinders as printed at θ: m, n; a = m K, b = n K, K = (3 P/(4 E* (A + B)))^(1/3). 20 N, wheel radius 12 mm. */
function crossed(theta: number, m: number, n: number): OutsideProof {
  const A = 1 / 24;
  const B = (A * (1 + cosine(theta))) / (1 - cosine(theta));
  // GPa are kN/mm².
  const K = Math.cbrt((3 * 0.02) / (4 * contact(POM, ALUMINIUM) * (A + B)));
  const [R_e, p_0] = [(m * n) ** 1.5 / (A + B), (3 * 20) / (2 * Math.PI * m * n * K * K)];
  return {
    source: `${TABLE}: ${m} and ${n} at θ = ${theta}°`,
    given: { ...tread(40, 90, POM, ALUMINIUM), r_w: '12 mm ± 0', r_e: `${1 / (2 * B)} mm ± 0` },
    choices: { contact: 'edge' },
    // Three printed decimals of m and n leave 0.1 %, thrice halved in the radius; the closed form leaves as much.
    expect: {
      R_e: [R_e, R_e * 0.004],
      a_c: [K * Math.sqrt(m * n), K * 0.002],
      p_0: [p_0, p_0 * 0.002],
    },
  };
}

const ball = {
  ...tread(200, 90, STEEL, STEEL),
  r_w: '5 mm ± 0',
  r_e: '5 mm ± 0',
  p_lim: '2148 MPa',
} as const;
const edge = { contact: 'edge' };

/** A bush of 0.8 mm turned from 60° on to 90°, on a wheel, bolt and plate of 100 N/mm. */
const turned = { e: '0.8 mm ± 0', theta_0: '60 deg ± 0', theta: '90 deg ± 0', c_w: '100 N/mm ± 0' } as const;
const raised = (e: number, from: number, to: number): number => e * (cosine(from) - cosine(to));
const load = { M: '0.7 kg ± 0', d: '55 mm ± 0', h: '25 mm ± 0', a: '3000 mm/s²', s: '48 mm ± 0' } as const;
const arm = carriage(0.7, 55, 25, 3000, 48);
const weight = carriage(0.7, 55, 25, 0, 48).each / 2;
const V = { mu: '0.25 ± 0', beta: '30 deg ± 0' } as const;
/** Slip force of a wheel in that V, N. */
const slips = (across: number): number => 0.25 * 2 * flank(across, 30);

const checks: readonly OutsideProof[] = [
  {
    source: `${STATICS}: an end that is no more pressed than this lifts off`,
    given: { ...load, F_slip: '10 N', k: '1', N_0: '0 N', n_w: '1' },
    expect: { M_o: [arm.moment, 1e-9], F_o: [arm.each, 1e-9], N_min: [arm.each, 1e-9] },
  },
  {
    source: `${STATICS}: two wheels at an end, all loads 1.4 times as large, 2 N kept besides`,
    given: { ...load, F_slip: '10 N', k: '1.4', N_0: '2 N', n_w: '2' },
    expect: { F_g: [weight, 1e-9], N_min: [carriage(1.4 * 0.7, 55, 25, 3000, 48).each / 2 + 2, 1e-9] },
  },
  {
    source: `${FLANKS}: 17 N in a V of half angle 30°`,
    given: { ...V, ...turned, d: '0 mm ± 0', F_slip: `${slips(17)} N ± 0` },
    expect: {
      P: [2 * flank(17, 30), 1e-9],
      N: [17, 1e-9],
      Q: [flank(17, 30), 1e-9],
      F_1: [slips(17 + 40), 1e-9],
    },
  },
  {
    source: `${FLANKS}, with the weight left on the other side; ${STATICS}`,
    given: { ...load, ...V, ...turned, n_w: '2', F_slip: `${slips(17)} N ± 0` },
    choices: { by: 'hanging' },
    expect: {
      P: [2 * flank(17, 30), 1e-9],
      N: [17 + weight, 1e-9],
      N_s: [17 + 2 * weight, 1e-9],
      Q: [flank(17 + 2 * weight, 30), 1e-9],
      N_1: [57 + weight, 1e-9],
      F_1: [slips(57), 1e-9],
    },
  },
  {
    source: `${FLANKS}; printed versed sines of 30°, 60° and 90°: 0.1339746, 0.5 and 1`,
    given: { ...V, ...turned, theta_t: '30 deg ± 0', d: '0 mm ± 0' },
    choices: { by: 'bush' },
    expect: {
      u_t: [0.8 * (0.5 - 0.1339746), 1e-6],
      N: [80 * (0.5 - 0.1339746), 1e-5],
      N_1: [80 * (1 - 0.1339746), 1e-5],
      F_1: [slips(80 * (1 - 0.1339746)), 1e-5],
    },
  },
  {
    source: 'Printed versed sines of 30° and 120°: 0.1339746 and 1.5',
    given: { F_slip: '5 N', e: '0.8 mm ± 0', theta_0: '30 deg ± 0', theta: '120 deg ± 0' },
    expect: { x: [0.8 * 0.1339746, 1e-7], u: [0.8 * (1.5 - 0.1339746), 1e-7] },
  },
  {
    source: `${BUSH}: from 52° to 131°, one degree about 52°, the same about 90°`,
    given: { F_slip: '5 N', e: '1.1 mm ± 0', theta_0: '52 deg ± 0', theta: '131 deg ± 0' },
    expect: {
      u: [raised(1.1, 52, 131), 1e-9],
      // A chord falls 13 in a million short of the tangent.
      u_1: [1000 * raised(1.1, 51.5, 52.5), 1e-3],
      q: [(100 * raised(1, 51.5, 52.5)) / raised(1, 89.5, 90.5), 1e-6],
    },
  },
  {
    source: 'Cone of half angle 50° to its axle cut by a plane square to the flank: radius from one of its points',
    given: { F_slip: '5 N', r_w: '10.5 mm ± 0', beta: '40 deg ± 0' },
    expect: { R_n: [rolls(10.5, 40), 1e-4] },
  },
  {
    source:
      'Hooke’s law in three directions, no growth sideways, solved by mathjs for wheel and rail, one after the other',
    given: tread(40, 90, POM, ALUMINIUM),
    expect: { E_s: [contact(POM, ALUMINIUM), 1e-9] },
  },
  line(20, 12, 5, 90, POM),
  line(60, 30, 8, 90, RUBBERY),
  line(15, 10.5, 1.5, 45, POM),
  {
    source: BALL,
    given: ball,
    choices: edge,
    expect: {
      E_s: [113.19, 0.005],
      R_e: [5, 1e-9],
      a_c: [0.1491, 5e-5],
      p_0: [2148, 0.5],
      Q_max: [100, 0.1],
      N_max: [200, 0.2],
    },
  },
  {
    source: `${BALL}; twice that less the weight’s part. ${STATICS}`,
    given: { ...ball, ...load, n_w: '2' },
    choices: edge,
    expect: { N_max: [200 - weight, 0.2] },
  },
  crossed(80, 1.128, 0.893),
  crossed(70, 1.284, 0.802),
  crossed(60, 1.486, 0.717),
  {
    source: `${BALL}; midway by logarithms between 50 and 200 N is 100 N; versed sines of 60° and 90°: 0.5 and 1`,
    given: { ...ball, ...turned, N_0: '50 N', c_w: '200 N/mm ± 0', F_slip: '4 N ± 0' },
    choices: edge,
    // 20 N are there: 80 N more are 0.4 mm, half of the eccentricity.
    expect: {
      N_aim: [Math.exp(mean([log(50), log(200)])), 0.1],
      du: [0.4, 0.0005],
      theta_n: [90, 0.05],
      dtheta: [30, 0.05],
    },
  },
  {
    source: 'Lever of the rolling wheel: 40 N that stand 0.21 mm ahead of an axle 10.5 mm up, mathjs units',
    given: { ...tread(40, 90, POM, ALUMINIUM), c_rr: '0.02 ± 0' },
    expect: { F_r: [by('40 N * 0.21 mm / (10.5 mm)', 'N'), 1e-9] },
  },
  {
    source: 'mathjs intersect: a line that rises by 0.04 mm between wheels 48 mm apart, 300 mm out',
    given: { F_slip: '5 N', j: '0.04 mm ± 0', s: '48 mm ± 0', R: '300 mm ± 0' },
    expect: { y: [(intersect([0, 0], [48, 0.04], [300, -1], [300, 1]) as number[])[1] ?? NaN, 1e-9] },
  },
];
export default checks;
