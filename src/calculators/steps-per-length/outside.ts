import { evaluate, lusolve, unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const inch = (expression: string): number => unit(expression).toNumber('mm');
const ISO = 'ISO 5296, MXL: pitch 0.080 in (from memory); the inch is 25.4 mm exactly';

/** What a nut climbs on Tr 12×6(P3) in a turn, mm: printed lead angle 10°19′ at the pitch diameter 10.5 mm. */
const CLIMB = Math.PI * 10.5 * Math.tan(((10 + 19 / 60) * Math.PI) / 180);

/** Straight line through two sizes by mathjs: [1 + error, offset]. The offset counts against an inside size. */
function lineThrough(rows: readonly (readonly [drawn: number, sign: number, measured: number])[]): [number, number] {
  const found = lusolve(
    rows.map(([drawn, sign]) => [drawn, sign]),
    rows.map(([, , measured]) => measured),
  ) as number[][];
  return [found[0]?.[0] ?? NaN, found[1]?.[0] ?? NaN];
}

const outsideInside = lineThrough([
  [100, 1, 99.86],
  [80, -1, 79.68],
]);
const shortLong = lineThrough([
  [25, 1, 25.03],
  [150, 1, 149.63],
]);

/** Feed gear of 10.5 mm where 11 mm was counted: 3200 microsteps a turn, polygon of a million sides for the circle. */
const around = (d: number): number => 1e6 * d * Math.sin(Math.PI / 1e6);
const fedLength = 100 * (around(10.5) / around(11));

/** A piece laid down 0.3 % too large by the drive, then shrunk by 0.5 %, with walls 0.06 mm out. */
const made = (drawn: number, sign: number): string => `${drawn * 1.003 * 0.995 + sign * 0.12} mm ± 0`;

const checks: readonly OutsideProof[] = [
  {
    source: `${ISO}: 25 teeth are two inches a turn, 3200 microsteps make 1600 in an inch`,
    given: { S_x: '1600 /in', p: '0.08 in', z: '25', x_1: '0 mm', x_2: '4 in', l_c: '4 in', b: '0 mm' },
    expect: {
      S_0: [1600 / 25.4, 1e-9],
      S_c: [1600 / 25.4, 1e-9],
      x_m: [() => (1000 * inch('1 in')) / 1600, 1e-9],
      q: [0, 1e-9],
      l_d: [() => inch('4 in'), 1e-9],
      c: [0, 1e-9],
      S_n: [1600 / 25.4, 1e-9],
      q_n: [0, 1e-9],
    },
  },
  {
    source: `${ISO}: taken for 2 mm it moves 101.6 mm for 100 mm, and wants 2000 in an inch on 20 teeth`,
    given: { S_y: '80', x_1: '0 mm', x_2: '101.6 mm', b: '0 mm' },
    choices: { axis: 'y' },
    expect: {
      S_0: [80, 1e-9],
      c: [1.6, 1e-9],
      S_n: [2000 / 25.4, 1e-9],
      q_n: [100 * (2000 / 25.4 / 80 - 1), 1e-9],
      p_e: [2.032, 1e-9],
    },
  },
  {
    source: `${ISO}: Z pinion of 25 teeth geared 4 to 1, 200 full steps: 400 in an inch`,
    given: {
      S_z: '400 /in',
      p_z: '0.08 in',
      z_z: '25',
      i_z: '4',
      m_z: '1',
      x_1: '1 in',
      x_2: '5.08 in',
      l_c: '4 in',
      b: '0 mm',
    },
    choices: { axis: 'zb' },
    expect: {
      S_0: [400 / 25.4, 1e-9],
      S_c: [400 / 25.4, 1e-9],
      c: [2, 1e-9],
      p_e: [() => inch('0.0816 in'), 1e-9],
    },
  },
  {
    source:
      'Tr 12×6(P3) by ISO 2904:1977 (from memory), pitch diameter 10.5 mm: the unrolled helix climbs at 10°19′; 3200 in a turn',
    given: { S_z: '400', P_h: '6 mm', x_1: '0 mm', x_2: `${100 * (400 / (3200 / CLIMB))} mm`, b: '0 mm' },
    choices: { axis: 'z' },
    // A minute of the printed angle is 0.17 % of the climb.
    expect: { S_c: [3200 / CLIMB, 0.9], S_n: [3200 / CLIMB, 1e-6], P_e: [CLIMB, 1e-6] },
  },
  {
    source: 'Machinery’s Handbook, circumferences of circles: diameter 10, circumference 31.4159 (from memory)',
    given: { S_e: '100', d_g: '10 mm', r_1: '120 mm', r_2: '20 mm' },
    choices: { axis: 'feed' },
    expect: { S_0: [100, 1e-9], S_c: [3200 / 31.4159, 1e-3], x_m: [31415.9 / 3200, 1e-3] },
  },
  {
    source:
      'Trade fact: a motor of 200 steps has 50 teeth and falls back by whole teeth; 25 of them are half a turn, of Machinery’s Handbook’s 31.4159 (from memory), geared down five to one',
    given: { S_e: '100', d_g: '10 mm', theta_e: '1.8°', i_e: '5', r_1: '120 mm', r_2: '20 mm', N_k: '25' },
    choices: { axis: 'feed' },
    expect: { l_k: [31.4159 / 2 / 5, 1e-4] },
  },
  {
    source:
      'A feed gear of 10.5 mm taken for 11 mm, turned over: polygon of a million sides, not π; then a tenth slips',
    given: {
      S_e: `${3200 / around(11)}`,
      d_g: '11 mm',
      r_1: '120 mm ± 0',
      r_2: `${120 - fedLength} mm ± 0`,
      r_3: `${120 - 0.9 * fedLength} mm ± 0`,
    },
    choices: { axis: 'feed' },
    expect: {
      l_d: [fedLength, 1e-9],
      c: [fedLength - 100, 1e-9],
      S_n: [3200 / around(10.5), 1e-6],
      d_e: [10.5, 1e-6],
      s_f: [10, 1e-9],
    },
  },
  {
    source: 'mathjs lusolve: the straight line through an outside and an inside size',
    given: { S_x: '80', m_o: '99.86 mm', m_i: '79.68 mm' },
    choices: { by: 'print' },
    expect: {
      c_t: [100 * (outsideInside[0] - 1), 1e-9],
      o: [outsideInside[1], 1e-9],
      y: [outsideInside[1] / 2, 1e-9],
      k_s: [100 / outsideInside[0], 1e-9],
    },
  },
  {
    source: 'mathjs lusolve: the straight line through two outside sizes',
    given: { S_x: '80', l_1: '25 mm', m_1: '25.03 mm', l_2: '150 mm', m_2: '149.63 mm' },
    choices: { by: 'print', pair: 'lengths' },
    expect: { c_t: [100 * (shortLong[0] - 1), 1e-9], o: [shortLong[1], 1e-9], y: [shortLong[1] / 2, 1e-9] },
  },
  {
    source:
      'OpenStax, University Physics 2, ch. 1: a steel span of 1275 m grows 0.84 m from −15 to 40 °C (from memory)',
    given: { S_x: '80', m_o: '100 mm', m_i: '80 mm', alpha: '12', T_g: '40 °C', T_r: '-15 °C' },
    choices: { by: 'print' },
    expect: { s: [(100 * 0.84) / 1275, (100 * 0.005) / 1275] },
  },
  {
    source: 'A piece made up from a drive 0.3 % too far, 0.5 % of shrinkage and walls 0.06 mm out, found again',
    given: { S_y: '80', m_o: made(100, 1), m_i: made(80, -1), s_m: '0.5 % ± 0' },
    choices: { axis: 'y', by: 'print', material: 'other' },
    expect: { s: [0.5, 1e-12], e_d: [0.3, 1e-9], y: [0.06, 1e-9], k_s: [100 / (1.003 * 0.995), 1e-9] },
  },
  ...(['x', 'y'] as const).map((axis): OutsideProof => ({
    source: 'Trade fact: 200 steps in halves on 20 teeth of 2 mm make 10 per mm; geared down three to one 30',
    given: { [axis === 'x' ? 'S_x' : 'S_y']: '30', m_b: '2', i_b: '3', p: '2 mm', z: '20', x_1: '0', x_2: '100 mm' },
    choices: { axis },
    expect: { S_c: [30, 1e-9] },
  })),
  {
    source: 'Trade fact: 200 steps in halves on a lead of 8 mm make 50 per mm; geared down three to one 150',
    given: { S_z: '150', m_z: '2', i_z: '3', P_h: '8 mm', x_1: '0', x_2: '100 mm' },
    choices: { axis: 'z' },
    expect: { S_c: [150, 1e-9] },
  },
  {
    source:
      'Trade fact: 200 steps in halves on a pinion of 20 teeth of 2 mm make 10 per mm; geared down three to one 30',
    given: { S_z: '30', m_z: '2', i_z: '3', p_z: '2 mm', z_z: '20', x_1: '0', x_2: '100 mm' },
    choices: { axis: 'zb' },
    expect: { S_c: [30, 1e-9] },
  },
  {
    source: 'Machinery’s Handbook, circumference 31.4159 (from memory): 200 steps in halves, geared down three to one',
    given: { S_e: '40', d_g: '10 mm', m_e: '2', i_e: '3', r_1: '120 mm', r_2: '20 mm' },
    choices: { axis: 'feed' },
    expect: { S_c: [1200 / 31.4159, 1e-3] },
  },
  {
    source:
      'Hooke’s law, mathjs units: 360 N on a belt that 90 kN would double in length; a tenth of a percent of tolerance',
    given: { S_x: '80', x_1: '0', x_2: '100 mm', l_c: '100 mm', T_a: '360 N ± 0', C_0: '90000 N ± 0', q_p: '0.1 %' },
    expect: { q_m: [() => 100 * (evaluate('360 N / (90 kN)') as number) + 0.1, 1e-9] },
  },
  {
    source: 'Common practice: a screw is held to the share that its class allows',
    given: { S_z: '400', x_1: '0', x_2: '100 mm', q_lim: '0.25 %' },
    choices: { axis: 'z' },
    expect: { q_m: [0.25, 1e-9] },
  },
  {
    source: 'Fact: a drive that first takes up 0.25 mm of slack and then pushes 99.75 mm has gone 100 mm',
    given: { S_x: '80', x_1: '10 mm', x_2: '109.75 mm', b: '0.25 mm', l_c: '100 mm' },
    expect: { l_d: [100, 1e-9], c: [0, 1e-9], S_n: [80, 1e-9] },
  },
];
export default checks;
