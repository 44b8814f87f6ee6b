import { add, cos, distance, intersect, multiply, sin, sqrt, subtract, tan, unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const deg = (angle: number): number => unit(angle, 'deg').toNumber('rad');

/** Diagonals of a parallelogram by its corners: sides in mm, degrees by which the front left corner is sharper than 90°. */
function diagonals(A: number, B: number, skew: number): { readonly d_1: number; readonly d_2: number } {
  const u = [A, 0];
  const v = [B * sin(deg(skew)), B * cos(deg(skew))];
  return { d_1: distance([0, 0], add(u, v)) as number, d_2: distance(u, v) as number };
}

/** How far sideways a line that leans by `skew` degrees has gone over a depth: mathjs's intersection of two lines. */
function sideways(skew: number, depth: number): number {
  const lean = [sin(deg(skew)), cos(deg(skew))];
  return (intersect([0, 0], lean, [0, depth], [1, depth]) as number[])[0] ?? NaN;
}

const mm = (value: number): string => `${value} mm ± 0`;
const leant = diagonals(240, 160, -0.4);
/** A side that leans 2 mm/m to the right, and a square that is 1.5 mm/m too wide, turned over: places along each at 0 and 150 mm. */
const SIDE = [0.002, 1];
const LEFT_BLADE = [-0.0015, 1];
const RIGHT_BLADE = [0.0015, 1];
const apart = (blade: number[]): number => (subtract(multiply(SIDE, 150), multiply(blade, 150)) as number[])[0] ?? NaN;

const checks: readonly OutsideProof[] = [
  {
    source: 'A rhombus of 100 mm and 89°: diagonals 142.650 and 140.182 mm, 200 cos 44.5° and 200 sin 44.5°',
    given: { d_1: '142.650 ± 0', d_2: '140.182 ± 0', A: '100 ± 0', B: '100 ± 0', D: mm(200), S_b: mm(300) },
    expect: {
      s: [sin(deg(1)), 5e-6],
      epsilon: [1, 5e-4],
      e_0: [1.7455, 0.001],
      e_D: [3.491, 0.002],
      dy: [5.2365, 0.003],
      d_e: [0, 5e-4],
    },
  },
  {
    source: 'mathjs 15.2: corners of a leaning parallelogram, distances between them, lines met with lines',
    given: { d_1: mm(leant.d_1), d_2: mm(leant.d_2), A: mm(240), B: mm(160), L_f: mm(160) },
    choices: { of: 'frame' },
    expect: {
      s: [() => sin(deg(-0.4)), 1e-12],
      epsilon: [-0.4, 1e-9],
      e_0: [() => sideways(-0.4, 100), 1e-9],
      dx: [() => sideways(-0.4, 160), 1e-9],
    },
  },
  {
    source: 'Ptolemy’s theorem for the isosceles trapezoid, d² = c² + a b: sides 100 and 102 mm, legs 100 mm',
    given: { d_1: mm(sqrt(20_200) as number), d_2: mm(sqrt(20_200) as number), A: mm(100), B: mm(100) },
    expect: { d_e: [142.12670403551896 - 141.4213562373095, 1e-9] },
  },
  {
    source: 'mathjs 15.2: a leaning side and the blade of a square that is too wide, as vectors, turned over',
    given: { m_1: mm(apart(LEFT_BLADE)), m_2: mm(apart(RIGHT_BLADE)), l: mm(150), D: mm(250), S_b: mm(400) },
    choices: { way: 'reversal' },
    expect: {
      m_e: [0.3, 1e-9],
      m_s: [0.225, 1e-9],
      i_q: [1.5, 1e-9],
      epsilon: [() => unit(Math.atan2(2, 1000), 'rad').toNumber('deg'), 1e-9],
      e_0: [0.2, 1e-9],
      e_D: [0.5, 1e-9],
      dy: [0.8, 1e-9],
    },
  },
  {
    source: 'mathjs 15.2: the same side and square, one way round, the square’s error known',
    given: { m: mm(apart(LEFT_BLADE)), l: mm(150), i_e: '1.5 mm/m ± 0' },
    choices: { way: 'square' },
    expect: {
      i_m: [2, 1e-9],
      epsilon: [() => unit(Math.atan2(2, 1000), 'rad').toNumber('deg'), 1e-9],
      e_0: [() => 100 * tan(Math.atan2(2, 1000)), 1e-9],
    },
  },
  {
    source:
      'mathjs 15.2: how far sideways a line that leans by 0.3° has gone over 100 and 400 mm, lines met with lines',
    given: { i_p: `${1e3 * sideways(0.3, 1)} mm/m ± 0`, S_b: mm(400), D: mm(200) },
    choices: { way: 'photo' },
    expect: {
      epsilon: [0.3, 1e-9],
      e_0: [() => sideways(0.3, 100), 1e-9],
      e_D: [() => sideways(0.3, 200), 1e-9],
      dy: [() => sideways(0.3, 400), 1e-9],
    },
  },
];
export default checks;
