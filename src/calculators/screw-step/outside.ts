import { fraction, unit, type Fraction } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const HELIX = 'Unrolled helix of Tr 12×6(P3) at its pitch diameter of 10.5 mm (ISO 2904:1977, d − P/2, from memory)';
const SINES = 'Sines as in any table of them (90°/m, four places)';

/** What a nut climbs on it while its screw turns by so many degrees, mm: the arc on the pitch circle, up a slope of 10°19′. */
const climb = (degrees: number): number =>
  Math.PI * 10.5 * (degrees / 360) * Math.tan(((10 + 19 / 60) * Math.PI) / 180);

const mm = (expression: string): number => unit(expression).toNumber('mm');

/** What rounding every layer's height to the grid makes of a wall: lengths in mm, counts in steps. */
interface Wall {
  readonly least: number;
  readonly most: number;
  readonly mean: number;
  readonly worst: number;
  readonly offHeight: number;
}

/** A wall of so many layers rounded one by one in exact fractions: no closed form of the pattern is used. */
function wall(h: string, g: string, layers: number): Wall {
  const [height, grid] = [fraction(h), fraction(g)];
  const half = fraction(1, 2);
  const at = (i: number): Fraction => height.mul(i).div(grid).add(half).floor();
  const steps = Array.from({ length: layers }, (_, i) => at(i + 1).sub(at(i)));
  const off = Array.from({ length: layers }, (_, i) =>
    at(i + 1)
      .mul(grid)
      .sub(height.mul(i + 1))
      .abs()
      .valueOf(),
  );
  const thick = steps.map((count) => count.mul(grid).sub(height).abs().valueOf());
  const counts = steps.map((count) => count.valueOf());
  return {
    least: Math.min(...counts),
    most: Math.max(...counts),
    mean: at(layers).div(layers).valueOf(),
    worst: Math.max(...thick),
    offHeight: Math.max(...off),
  };
}

/** Repeats every 4 layers; and every 127, on an inch screw. */
const quarter = wall('0.25', '0.04', 400);
const inch = wall('0.2', '0.0127', 1270);

/** Friction of that share of the holding torque: just what one microstep of lag overcomes. */
const paper = (m: number, percent: number): OutsideProof => ({
  source: `${SINES}: one microstep of ${m} makes ${percent} % of the holding torque; read backwards, that friction swallows one`,
  given: { P_h: '8 mm', theta_s: '1.8 deg', m: String(m), tau_h: '100 N·mm', tau_f: `${percent} N·mm ± 0` },
  // Half a unit of the last printed digit, and what the arc sine makes of it.
  expect: {
    tau_inc: [percent, 0.006],
    delta: [90 / m, 0.01],
    m_f: [1, 0.001],
    x_f: [40 / m, 0.005],
  },
});

const checks: readonly OutsideProof[] = [
  {
    source:
      'The inch is 25.4 mm exactly (1959): five threads to the inch, 200 steps a turn geared 2 to 1, are 1/2000 in, sixteenths 1/32000 in; 5 % of a step is 25 millionths',
    given: { P_h: '5.08 mm', theta_s: '1.8 deg', i_g: '2', m: '16', a: '5 %' },
    choices: { grid: 'micro' },
    expect: {
      q: [() => mm('0.0005 in'), 1e-12],
      q_m: [() => mm('1 in') / 32000, 1e-12],
      g: [() => mm('1 in') / 32000, 1e-12],
      r: [() => (1000 * mm('1 in')) / 64000, 1e-9],
      x_a: [() => 1000 * mm('0.000025 in'), 1e-9],
    },
  },
  {
    source: `${HELIX}, which climbs at 10°19′; 200 steps a turn, each off by 5 % of 1.8°, 0.09°`,
    given: { P_h: '6 mm', theta_s: '1.8 deg', a: '5 %' },
    choices: { grid: 'full' },
    // A minute of the angle is 0.17 % of the climb.
    expect: {
      q: [() => climb(360 / 200), 5e-5],
      g: [() => climb(360 / 200), 5e-5],
      x_a: [() => 1000 * climb(0.09), 0.003],
    },
  },
  {
    source:
      'ISO 5296, MXL: pitch 0.080 in, so 25 teeth are two inches a turn and 200 steps geared 4 to 1 make 0.0025 in each (from memory)',
    given: { p: '0.08 in', z: '25', theta_s: '1.8 deg', i_g: '4', m: '10' },
    choices: { lift: 'belt' },
    expect: { q: [() => mm('0.0025 in'), 1e-12], q_m: [() => mm('0.00025 in'), 1e-12] },
  },
  {
    source: 'ISO 5296, pitch diameter of 16 teeth of 2 mm: 10.186 mm (from memory); its circumference in 200 steps',
    given: { p: '2 mm', z: '16', theta_s: '1.8 deg' },
    choices: { lift: 'belt' },
    expect: { q: [(Math.PI * 10.186) / 200, 1e-5] },
  },
  {
    source: 'mathjs fractions: 400 layers of 0.25 mm rounded one by one to steps of 0.04 mm',
    given: { P_h: '8 mm', theta_s: '1.8 deg', h: '0.25 mm' },
    choices: { grid: 'full' },
    expect: {
      n: [quarter.mean, 1e-9],
      n_f: [quarter.least, 0],
      n_c: [quarter.most, 0],
      h_f: [quarter.least * 0.04, 1e-9],
      h_c: [quarter.most * 0.04, 1e-9],
      e: [1000 * quarter.worst, 1e-6],
      s: [(100 * quarter.worst) / 0.25, 1e-6],
      r: [1000 * quarter.offHeight, 1e-6],
    },
  },
  {
    source: 'mathjs fractions: 1270 layers of 0.2 mm rounded one by one to full steps of half a thousandth of an inch',
    given: { P_h: '5.08 mm', theta_s: '0.9 deg', h: '0.2 mm' },
    choices: { grid: 'full' },
    expect: {
      n: [inch.mean, 1e-9],
      n_f: [inch.least, 0],
      n_c: [inch.most, 0],
      h_f: [inch.least * 0.0127, 1e-9],
      h_c: [inch.most * 0.0127, 1e-9],
      e: [1000 * inch.worst, 1e-6],
      s: [(100 * inch.worst) / 0.2, 1e-6],
    },
  },
  paper(2, 70.71),
  paper(4, 38.27),
  paper(8, 19.51),
  {
    source: `${SINES}: 9.80 % at 16 microsteps, 0.61 % at 256`,
    given: { m: '256', tau_h: '100 N·mm' },
    expect: { tau_inc: [0.61, 0.005] },
  },
  {
    source: 'The sine of 30° is one half: friction of half the holding torque lags a third of a full step',
    given: { P_h: '8 mm', theta_s: '1.8 deg', m: '16', tau_h: '400 N·mm', tau_f: '200 N·mm ± 0' },
    expect: { delta: [30, 1e-9], m_f: [16 / 3, 1e-9], x_f: [40 / 3, 1e-9] },
  },
  {
    source: 'Common practice, no source: a twentieth of the layer; of 8 thou that is 0.4 thou',
    given: { h: '8 thou', k: '5 %' },
    expect: { e_lim: [() => 1000 * mm('0.0004 in'), 1e-9] },
  },
];
export default checks;
