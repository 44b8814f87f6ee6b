import * as math from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

/*
 * The swinging mass is followed in time here, as seen from what drives it: x″ = −2ζω x′ − ω² x − a(t), with the matrix
 * exponential of mathjs or its solver of differential equations. No formula of the calculator is used to find a peak.
 */
type State = readonly [x: number, v: number];

const FINE = 4000;

/** Path of the mass under a steady drive `a`, at `FINE` moments over `span` seconds, from the start given. */
function follow(omega: number, zeta: number, a: number, span: number, from: State = [0, 0]): State[] {
  const dt = span / FINE;
  const rates = math.matrix([
    [0, dt, 0],
    [-omega * omega * dt, -2 * zeta * omega * dt, -a * dt],
    [0, 0, 0],
  ]);
  const step = math.expm(rates).toArray() as number[][];
  const path: State[] = [from];
  for (let i = 0; i < FINE; i += 1) {
    const [x, v] = path[i] ?? from;
    const row = (r: number): number => (step[r]?.[0] ?? 0) * x + (step[r]?.[1] ?? 0) * v + (step[r]?.[2] ?? 0);
    path.push([row(0), row(1)]);
  }
  return path;
}

interface Peak {
  readonly t: number;
  readonly x: number;
}

/** Crests of a path: where the speed goes from above zero to below, by a straight line between two moments. */
function crests(path: readonly State[], span: number): Peak[] {
  const found: Peak[] = [];
  for (let i = 1; i < path.length; i += 1) {
    const [before, after] = [path[i - 1], path[i]];
    if (!before || !after || before[1] <= 0 || after[1] > 0) continue;
    const share = before[1] / (before[1] - after[1]);
    const x = Math.max(before[0], after[0], before[0] + share * (after[0] - before[0]));
    found.push({ t: ((i - 1 + share) * span) / FINE, x });
  }
  return found;
}

/** Spacing of the crests that a mass on a spring prints at a speed, mm: from the first crest to the sixth, fifths of it. */
function spacing(omega: number, speed: number, zeta = 0): number {
  const span = (7.2 * 2 * Math.PI) / omega;
  const all = crests(follow(omega, zeta, 0, span, [0, 1]), span);
  return (((all[5]?.t ?? NaN) - (all[0]?.t ?? NaN)) * speed) / 5;
}

/** Farthest way under a drive that starts at once, for so many swings. */
function farthest(omega: number, zeta: number, a: number, swings: number): number {
  const path = follow(omega, zeta, a, (swings * 2 * Math.PI) / omega);
  return Math.max(...path.map(([x]) => Math.abs(x)));
}

/** Ripple left after a ramp from rest to `speed` at `a`: the farthest way in the swing after it. */
function left(omega: number, a: number, speed: number): number {
  const end = follow(omega, 0, a, speed / a).at(-1) ?? [0, 0];
  const after = follow(omega, 0, 0, (2 * Math.PI) / omega, end);
  return Math.max(...after.map(([x]) => Math.abs(x)));
}

/** The acceleration between two at which the least ripple is left, by thirds. */
function quietest(omega: number, speed: number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let i = 0; i < 24; i += 1) {
    const [b, c] = [from + (to - from) / 3, to - (to - from) / 3];
    if (left(omega, b, speed) < left(omega, c, speed)) to = c;
    else from = b;
  }
  return (from + to) / 2;
}

/** Farthest way after an acceleration that starts at once, by mathjs’s solver of differential equations (RK45). */
function stepPeak(omega: number, a: number): number {
  const slope = (_: number, [x = NaN, v = NaN]: readonly number[]) => [v, -omega * omega * x - a];
  const options = '{method: "RK45", tol: 1e-7, maxStep: T / 400}';
  const T = (1.2 * Math.PI) / omega;
  const solved = math.evaluate(`solveODE(f, [0, T], [0, 0], ${options})`, { f: slope, T }) as { y: math.Matrix };
  return Math.max(...(solved.y.toArray() as number[][]).map(([x]) => Math.abs(x ?? 0)));
}

const RATE = (f: number): number => 2 * Math.PI * f;
const ODE = 'mathjs expm: the swinging mass followed in time';
const plain = { x_0: '400 mm ± 0', theta_w: '0° ± 0', v: '80' } as const;
/** 30 N/mm and 0.5 kg. */
const spring = Math.sqrt(30_000 / 0.5);
/** Crests of a mass damped by a twentieth. */
const damped = crests(follow(RATE(40), 0.05, 0, 0.2, [0, 1]), 0.2);
const ratio3 = (damped[0]?.x ?? NaN) / (damped[3]?.x ?? NaN);
/** The same, damped by three tenths. */
const heavily = crests(follow(RATE(40), 0.3, 0, 0.1, [0, 1]), 0.1);
const ratio1 = (heavily[0]?.x ?? NaN) / (heavily[1]?.x ?? NaN);
/** A mass on two strands of belt, each pulling for itself: its period from crest to crest. */
const strands = spacing(Math.sqrt((18_600 / 0.2 + 18_600 / 0.8) / 0.5), 1);

/** A ramp to 80 mm/s at 1500 mm/s² in a thousand pieces: length and middle of each, s. */
const PIECE = 80 / 1500 / 1000;
const middles = Array.from({ length: 1000 }, (_, i) => (i + 0.5) * PIECE);

const checks: readonly OutsideProof[] = [
  {
    source: `${ODE}: 30 N/mm and 0.5 kg, 38.98 Hz, crests laid down at 80 mm/s`,
    given: { ...plain, x_N: `${5 * spacing(spring, 80)} mm ± 0`, N: '5', M: '0.5 kg ± 0' },
    expect: {
      P: [80 / 38.985, 1e-4],
      lambda: [80 / 38.985, 1e-4],
      lambda_a: [80 / 38.985, 1e-4],
      f: [38.985, 0.001],
      omega: [244.949, 0.005],
      k_r: [30, 0.001],
    },
  },
  {
    source: `${ODE}: crests at 80 and at 40 mm/s; spacing by photo`,
    given: {
      ...plain,
      P_w: `${spacing(RATE(50), 80)} mm ± 0`,
      P_w2: `${spacing(RATE(50), 40)} mm ± 0`,
      v_2: '40',
    },
    choices: { by: 'direct', test: 'two' },
    expect: { P: [1.6, 1e-5], P_2: [0.8, 1e-5], lambda_2: [0.8, 1e-5], f_2: [50, 1e-3], kappa: [1, 1e-5] },
  },
  {
    source: 'A belt’s tooth keeps its place whatever the speed: 2 mm at 80 and at 20 mm/s',
    given: { ...plain, x_N: '10 mm ± 0', x_N2: '20 mm ± 0', N_2: '10', v_2: '20' },
    choices: { test: 'two' },
    expect: { P_2: [2, 1e-9], kappa: [0, 1e-9] },
  },
  {
    source: 'The triangle of 3, 4 and 5: a wall at 36.8699° to the axis, 4 mm along the axis are 5 mm of wall',
    given: { ...plain, P_w: '4 mm ± 0', theta_w: '36.86989765° ± 0' },
    choices: { by: 'direct', along: 'axis' },
    expect: { lambda: [5, 1e-8], lambda_a: [4, 1e-8] },
  },
  {
    source: 'The triangle of 3, 4 and 5, second print',
    given: { ...plain, P_w: '4 mm ± 0', P_w2: '8 mm ± 0', v_2: '160', theta_w: '36.86989765° ± 0' },
    choices: { by: 'direct', along: 'axis', test: 'two' },
    expect: { lambda_2: [10, 1e-8], f_2: [16, 1e-7] },
  },
  {
    source: 'mathjs solveODE (RK45): a mass at 40 Hz under 632 mm/s² at once',
    given: { ...plain, x_N: '10 mm ± 0', a: '632', x_tol: '0.02 mm' },
    expect: {
      X: [() => 1e3 * stepPeak(RATE(40), 0.632), 1e-6],
      a_s: [() => (632 * 0.02) / (1e3 * stepPeak(RATE(40), 0.632)), 0.03],
      r_k: [() => (1e3 * stepPeak(RATE(40), 0.632)) / 0.02, 1e-4],
    },
  },
  {
    source: `${ODE}: 60 Hz, stiffer by the factor found, 3000 mm/s² at once reach just 0.02 mm`,
    given: { ...plain, x_N: `${(5 * 80) / 60} mm ± 0`, a: '3000', x_tol: '0.02 mm' },
    expect: { r_k: [() => (1e3 * farthest(RATE(60), 0, 3, 1)) / 0.02, 1e-5] },
  },
  {
    source: `${ODE}: 40 Hz, damped away, 1000 mm/s²: where it comes to rest`,
    given: { ...plain, x_N: '10 mm ± 0', x_tol: '0.02 mm' },
    expect: { a_q: [() => (1000 * 0.02) / (1e3 * farthest(RATE(40), 1, 1, 6)), 0.01] },
  },
  {
    source: `${ODE}: 50 Hz, ramps to 80 mm/s, the acceleration that leaves least ripple sought by thirds`,
    given: { ...plain, x_N: '8 mm ± 0', a: '1500' },
    expect: {
      a_1: [() => 1e3 * quietest(RATE(50), 0.08, 3.6, 4.4), 0.4],
      a_k: [() => 1e3 * quietest(RATE(50), 0.08, 1.2, 1.45), 0.2],
      k_a: [3, 0],
      // 80 mm/s in 1/1500 s per mm/s, in swings of 20 ms.
      n_a: [() => math.evaluate('(80 mm/s / (1500 mm/s^2)) / (20 ms)') as number, 1e-9],
    },
  },
  {
    source: 'A ramp summed by mathjs in a thousand pieces: way covered until 80 mm/s at 1500 mm/s²',
    given: { ...plain, x_N: '8 mm ± 0', a: '1500' },
    expect: {
      l_r: [() => math.sum(middles.map((t) => 1500 * t * PIECE)), 1e-6],
    },
  },
  {
    source: `${ODE}: 40 Hz set off with 5 mm/s and left to itself`,
    given: { ...plain, x_N: '10 mm ± 0', v_c: '5', x_tol: '0.02 mm' },
    choices: { corner: 'kept' },
    expect: {
      x_c: [() => 5 * (crests(follow(RATE(40), 0, 0, 0.05, [0, 1]), 0.05)[0]?.x ?? NaN), 1e-6],
      v_m: [() => 0.02 / (crests(follow(RATE(40), 0, 0, 0.05, [0, 1]), 0.05)[0]?.x ?? NaN), 1e-4],
    },
  },
  {
    source: `${ODE}: damped by 5 %, three crests on`,
    given: { ...plain, x_N: '10 mm ± 0', n_h: `${(3 * math.log(2)) / math.log(ratio3)} ± 0` },
    expect: {
      delta: [math.log(ratio3) / 3, 1e-6],
      zeta: [5, 1e-3],
      n_10: [(3 * math.log(10)) / math.log(ratio3), 1e-4],
      l_10: [(2 * 3 * math.log(10)) / math.log(ratio3), 1e-3],
    },
  },
  {
    source:
      'Thomson, Theory of Vibration with Applications, 5th edition (1998), section 2.7, figure of cycles to half: n ζ = 0.110 (from memory)',
    given: { ...plain, x_N: '10 mm ± 0', n_h: '3 ± 0' },
    expect: { zeta: [11 / 3, 0.03] },
  },
  {
    source:
      'Hooke’s law: 90 000 N over two sides of 0.25 m hold with 720 N/mm; a belt of 25 mm has 2.5 times the cords of 10 mm, 225 000 N',
    given: { ...plain, x_N: '10 mm ± 0', w: '10 mm', L_1: '250 mm ± 0', L_t1: '500 mm ± 0' },
    choices: { belt: 'straight5' },
    expect: { C: [90_000, 1e-6], k_b: [720, 1e-9] },
  },
  {
    source: `${ODE}: 0.5 kg on 0.2 m and 0.8 m of a belt of 18 600 N, period from crest to crest`,
    given: {
      ...plain,
      x_N: `${5 * 80 * strands} mm ± 0`,
      w: '6 mm',
      C_0: '31000 N ± 0',
      L_1: '200 mm ± 0',
      L_t1: '1000 mm ± 0',
      M: '0.5 kg ± 0',
    },
    expect: { f_b: [1 / strands, 0.001], r_b: [100, 0.001] },
  },
  {
    source: 'OpenStax, University Physics 1, ch. 15: 2 kg on 32 N/m swing in 1.57 s (from memory)',
    given: { ...plain, v: '40', P_w: '62.8 mm ± 0', F: '1.6 N ± 0', y_f: '50 mm ± 0', M_f: '2 kg ± 0' },
    choices: { by: 'direct' },
    expect: { k_f: [0.032, 1e-9], f_f: [1 / 1.57, 0.0005], f: [1 / 1.57, 1e-9], r_f: [100, 0.1] },
  },
  {
    source:
      'ISO 5296, MXL: 0.080 in, 25 teeth are two inches a turn; four of 200 steps 0.04 in. Table of eˣ: e^0.1 = 1.105171',
    given: { ...plain, P_w: `${1.016 * 1.105171} mm ± 0`, p: '0.08 in', z: '25' },
    choices: { by: 'direct' },
    expect: { x_f: [1.016, 1e-9], g_s: [10, 1e-4], g_p: [100 * math.log(2) - 10, 1e-4] },
  },
  {
    source: `${ODE}: damped by 30 %, one crest on`,
    given: { ...plain, x_N: '10 mm ± 0', n_h: `${math.log(2) / math.log(ratio1)} ± 0` },
    expect: { delta: [math.log(ratio1), 1e-6], zeta: [30, 0.005] },
  },
  {
    source: 'ISO 5296, MXL: 0.080 in, 25 teeth; geared down two to one, four of 200 steps are 0.02 in',
    given: { ...plain, P_w: '1.2 mm ± 0', p: '0.08 in', z: '25', i_b: '2' },
    choices: { by: 'direct' },
    expect: { x_f: [0.508, 1e-9] },
  },
  {
    source: 'mathjs units: 80 mm/s at 1380 mm/s² take 58 ms, a little short of three swings of 20 ms',
    given: { ...plain, x_N: '8 mm ± 0', a: '1380' },
    expect: {
      n_a: [() => math.evaluate('(80 mm/s / (1380 mm/s^2)) / (20 ms)') as number, 1e-9],
      k_a: [3, 0],
    },
  },
];
export default checks;
