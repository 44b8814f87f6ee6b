import { intersect, rotate } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

type Point = [number, number];

const HELIX = 'Unrolled helix at the pitch diameter d − P/2 (ISO 2904:1977, from memory)';
/** Tr 20×20(P5): lead angle to the minute, at the pitch diameter. */
const LONG_LEAD = { angle: 20, d_2: 17.5 } as const;
/** Tr 12×6(P3): 10° 19′. */
const SHORT_LEAD = { angle: 10 + 19 / 60, d_2: 10.5 } as const;

/** What a nut climbs while its screw turns by so many degrees, mm: the unrolled helix, no lead in it. */
const climb = (screw: typeof LONG_LEAD | typeof SHORT_LEAD, degrees: number): number =>
  Math.PI * screw.d_2 * (degrees / 360) * Math.tan((screw.angle * Math.PI) / 180);

/** Height of a straight line through two points, over the place `x`. */
function above(x: number, a: Point, b: Point): number {
  const [, y] = intersect(a, b, [x, -1], [x, 1]) as Point;
  return y;
}

/** Two points on the gantry, 250 mm apart, and what the line through them does elsewhere. */
const seen: readonly [Point, Point] = [
  [60, 12.3],
  [310, 12.75],
];
const rise = (from: number, to: number) => () => above(to, ...seen) - above(from, ...seen);

/**
 * Frame and gantry as two bars turned against gravity, screws square to the frame: what the right screw carries its end
 * higher than the left one, mm.
 */
function carried(gantry: number, frame: number, S: number): number {
  const turned = (x: number, y: number, by: number): Point => rotate<Point>([x, y], by);
  const end = (x: number): number => {
    const foot = turned(x, 0, Math.atan(frame));
    const screw: Point = turned(x, 1, Math.atan(frame));
    const bar: Point = turned(1, 0, Math.atan(gantry));
    const start: Point = turned(0, 300, Math.atan(frame));
    const met = intersect(start, [start[0] + bar[0], start[1] + bar[1]], foot, screw) as Point;
    return Math.hypot(met[0] - foot[0], met[1] - foot[1]);
  };
  return end(S) - end(0);
}

const checks: readonly OutsideProof[] = [
  {
    source: `${HELIX}: Tr 20×20(P5) climbs at 20°00′; a screw 100° ahead, pulley of 20 teeth (18° each): six teeth less 8°`,
    given: { dh: `${climb(LONG_LEAD, 100)} mm ± 0`, S_m: '400 mm ± 0', S: '400 mm ± 0', P_h: '20 mm', z: '20' },
    // A minute of the angle is 0.09 % of the climb.
    expect: {
      h_t: [() => climb(LONG_LEAD, 18), 0.001],
      n: [100 / 18, 0.005],
      n_w: [6, 0],
      r: [() => -climb(LONG_LEAD, 8), 0.005],
      phi: [-8, 0.1],
      psi: [100, 0.1],
    },
  },
  {
    source: `${HELIX}: Tr 12×6(P3) climbs at 10°19′; a screw 16.2° ahead, motors of 200 full steps a turn: nine steps`,
    given: {
      dh: `${climb(SHORT_LEAD, 16.2)} mm ± 0`,
      S_m: '400 mm ± 0',
      S: '400 mm ± 0',
      P_h: '6 mm',
      theta_s: '1.8 deg',
    },
    choices: { drive: 'motors' },
    // A minute of the angle is 0.17 % of the climb.
    expect: {
      h_t: [() => climb(SHORT_LEAD, 360 / 200), 5e-5],
      n: [9, 0.015],
      n_w: [9, 0],
      psi: [16.2, 0.027],
    },
  },
  {
    source: 'mathjs intersect: the line through two points of the gantry cut over screws, bed edges and one metre',
    given: { dh: '0.45 mm ± 0', S_m: '250 mm ± 0', S: '400 mm ± 0', W: '240 mm ± 0' },
    expect: {
      dh_s: [rise(0, 400), 1e-9],
      dh_bed: [rise(80, 320), 1e-9],
      i: [rise(0, 1000), 1e-9],
    },
  },
  {
    source:
      'mathjs rotate and intersect: gantry and frame as two bars leaning 5 and −3 mm/m, screws square to the frame',
    given: { i_g: '5 mm/m ± 0', i_f: '-3 mm/m ± 0', S: '400 mm ± 0' },
    choices: { by: 'level' },
    // The two slopes are angles: their product, 15 in a million, is all that slope × run leaves out.
    expect: { dh_s: [() => carried(5e-3, -3e-3, 400), 1e-4] },
  },
  {
    source: 'Plumber’s table of falls: a quarter inch in a foot is 20.8 mm a metre, 1.19° (from memory)',
    given: { dh: '0.25 in ± 0', S_m: '12 in ± 0', S: '12 in ± 0' },
    expect: { i: [20.8, 0.05], alpha: [1.19, 0.005] },
  },
  {
    source: 'Gradients on road signs: 1 in 4 is 25 %, 14.04° (from memory)',
    given: { dh: '25 mm ± 0', S_m: '100 mm ± 0', S: '100 mm ± 0' },
    expect: { i: [250, 1e-9], alpha: [14.04, 0.005] },
  },
  {
    source: 'Common practice, no source: a quarter of the first layer; of 8 thou that is 2 thou, 0.0508 mm',
    given: { h_1: '8 thou', k_1: '0.25' },
    expect: { dh_lim: [0.0508, 1e-9] },
  },
];
export default checks;
