import { evaluate, flatten, lusolve, type Matrix, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

/** An expression with units, worked out by mathjs. */
const by = (expression: string, unit: string) => () => {
  const result = evaluate(expression) as Unit | number;
  return typeof result === 'number' ? result : result.toNumber(unit);
};

interface Pushed {
  /** Drag in line, N. */
  readonly drag: number;
  /** Force of the mass, N, and where it acts, mm. */
  readonly weight: number;
  readonly at: number;
  readonly mu: number;
  readonly length: number;
  readonly offset: number;
}

/**
 * Drive force and sideways force from the two balances as a matrix, solved by mathjs: F − 2 μ |N| = drag + weight and
 * F · offset − N · length = weight · at; the sense of N is the one that agrees with itself.
 */
function balance({ drag, weight, at, mu, length, offset }: Pushed): { readonly F: number; readonly N: number } {
  for (const sense of [1, -1]) {
    const solved = lusolve(
      [
        [1, -2 * mu],
        [offset, -sense * length],
      ],
      [drag + weight, weight * at],
    );
    const [F = NaN, N = NaN] = flatten(solved as Matrix | number[]).valueOf() as number[];
    if (N >= 0 && F >= 0) return { F, N };
  }
  throw new Error('It binds.');
}

const RULE =
  'Common practice, no source: a plain bush binds where its offset is twice its length, at a friction of a quarter';
const STATICS = 'Balance of forces and moments as a 2 × 2 system, solved by mathjs lusolve';
const both = { L: '60 mm', a: '0 mm/s²', dx: '0 mm ± 0' } as const;
const exact = { a: '0 mm/s²', e: '0 mm ± 0', dx: '0 mm ± 0' } as const;

const level: Pushed = { drag: 3, weight: 0.8 * 2, at: -25, mu: 0.12, length: 50, offset: 70 };
const arm: Pushed = { drag: 1, weight: 1.5 * (9.80665 + 0.5), at: 180, mu: 0.12, length: 90, offset: 60 };
const given = ({ drag, at, mu, length, offset }: Pushed) => ({
  F_0: `${drag} N ± 0`,
  e: `${at} mm ± 0`,
  mu_p: `${mu} ± 0`,
  L: `${length} mm ± 0`,
  d_0: `${offset} mm ± 0`,
  dx: '0 mm ± 0',
});

/** What a scale would show at two offsets on a level guide, from the same balance. */
const shown = (offset: number) => balance({ ...level, weight: 0, offset }).F;
/** The same on an upright arm, lifted slowly. */
const lifted = (offset: number, at = 20) => balance({ ...arm, at, weight: 1.5 * 9.80665, offset }).F;

/**
 * A stiff bar of 60 mm in a slot 0.1 mm wider than it, tilted by 2 in 300, held at each end by a spring of 100 N/mm: the place
 * of its middle and both forces from balance, solved by mathjs lusolve.
 */
function pressedBySpring(): number {
  const tilt = 2 / 300;
  // Each end stands tilt · 30 mm from the middle, which may shift by y; it meets the slot at half the play.
  const reach = tilt * 30 - 0.1 / 2;
  const solved = lusolve(
    [
      [1, 0, -100],
      [0, 1, 100],
      [1, -1, 0],
    ],
    [100 * reach, 100 * reach, 0],
  );
  return Number((flatten(solved as Matrix | number[]).valueOf() as number[])[0]);
}

const checks: readonly OutsideProof[] = [
  {
    source: RULE,
    given: { ...exact, mu_p: '0.25 ± 0', L: '40 mm ± 0', d_0: '80 mm ± 0', q_lim: '100 %' },
    expect: {
      d: [80, 1e-9],
      mu: [0.25, 1e-12],
      q: [100, 1e-9],
      d_b: [80, 1e-9],
      d_m: [80, 1e-9],
      L_m: [40, 1e-9],
    },
  },
  {
    source: `${RULE}: an offset of 100 mm wants 50 mm of guide; at half the way to binding twice that`,
    given: { ...exact, mu_p: '0.25 ± 0', L: '40 mm ± 0', d_0: '100 mm ± 0', q_lim: '50 %' },
    expect: { L_m: [100, 1e-9], x_L: [60, 1e-9], d_m: [40, 1e-9], x_d: [60, 1e-9] },
  },
  ...(
    [
      [0.1, 5],
      [0.15, 3.33],
      [0.25, 2],
    ] as const
  ).map(([mu, ratio]): OutsideProof => ({
    source: 'Common practice: offset over length at frictions of 0.10, 0.15 and 0.25, to three digits: 5.0, 3.33, 2.0',
    given: { ...exact, mu_p: `${mu} ± 0`, L: '100 mm ± 0', d_0: '30 mm' },
    expect: { d_b: [100 * ratio, 0.5] },
  })),
  {
    source: `${STATICS}: level, mass on the other side`,
    given: { ...given(level), M: '0.8 kg ± 0', a: '2000 mm/s²', F_m: `${balance(level).F} N ± 0` },
    expect: {
      // A drive that can pull just what is needed gets just that through.
      F_t: [4.6, 1e-9],
      W: [by('0.8 kg * 2 m/s^2', 'N'), 1e-9],
      F_d: [3, 1e-12],
      R: [4.6, 1e-9],
      A: [by('4.6 N * 70 mm + 1.6 N * 25 mm', 'N mm'), 1e-9],
      N: [() => balance(level).N, 1e-9],
      F: [() => balance(level).F, 1e-9],
      k_F: [() => balance(level).F / 4.6, 1e-9],
    },
  },
  {
    source: `${STATICS}: an arm lifted, mass farther out than the drive, which turns the contacts over`,
    given: { ...given(arm), M: '1.5 kg ± 0', a: '500 mm/s²', F_m: `${balance(arm).F} N ± 0` },
    choices: { way: 'upright' },
    expect: {
      F_t: [by('1 + 1.5 * (9.80665 + 0.5)', ''), 1e-9],
      W: [by('1.5 kg * (9.80665 + 0.5) m/s^2', 'N'), 1e-9],
      N: [() => balance(arm).N, 1e-9],
      F: [() => balance(arm).F, 1e-9],
    },
  },
  {
    source:
      'The bar clamp: an arm on a bar stays where it is, at any load, once friction times twice its reach is the length (2:1 rule); 0.25, 45 mm, 90 mm',
    given: { ...given({ ...arm, mu: 0.25, length: 45, at: 90 }), M: '1.5 kg' },
    choices: { way: 'upright' },
    expect: { q_e: [100, 1e-9] },
  },
  {
    source: `${STATICS}: what a scale shows at 10 and 60 mm on a level guide of friction 0.12 and drag 3 N`,
    given: {
      ...exact,
      F_a: `${shown(10)} N ± 0`,
      a_1: '10 mm ± 0',
      F_b: `${shown(60)} N ± 0`,
      a_2: '60 mm ± 0',
      L: '50 mm ± 0',
      d_0: '70 mm ± 0',
    },
    choices: { by: 'scale' },
    expect: { kappa: [0.0048, 1e-9], mu: [0.12, 1e-9], F_d: [3, 1e-9] },
  },
  {
    source: `${STATICS}: the same on an arm of 1.5 kg lifted slowly at 30 and 100 mm, mass 20 mm out, drag 1 N`,
    given: {
      ...exact,
      e: '20 mm ± 0',
      M: '1.5 kg ± 0',
      F_a: `${lifted(30)} N ± 0`,
      a_1: '30 mm ± 0',
      F_b: `${lifted(100)} N ± 0`,
      a_2: '100 mm ± 0',
      L: '90 mm ± 0',
    },
    choices: { by: 'scale', way: 'upright' },
    expect: { mu: [0.12, 1e-9], F_d: [1, 1e-8] },
  },
  ...(
    [
      [90, 'mass farther out than both pulls: the weight turns it, and the far pull against that'],
      [-70, 'mass on the other side of the guide: weight and pulls turn it the same way'],
      [40, 'mass between the two pulls: the contacts turn over between them'],
    ] as const
  ).map(([at, what]): OutsideProof => ({
    source: `${STATICS}: an arm of 1.5 kg lifted slowly at 10 and 60 mm, drag 1 N; ${what}`,
    given: {
      ...exact,
      e: `${at} mm ± 0`,
      M: '1.5 kg ± 0',
      F_a: `${lifted(10, at)} N ± 0`,
      a_1: '10 mm ± 0',
      F_b: `${lifted(60, at)} N ± 0`,
      a_2: '60 mm ± 0',
      L: '90 mm ± 0',
      d_0: '20 mm ± 0',
    },
    choices: { by: 'scale', way: 'upright' },
    expect: { e_w: [at, 1e-9], kappa: [by('2 * 0.12 / 90', ''), 1e-9], mu: [0.12, 1e-9], F_d: [1, 1e-8] },
  })),
  {
    source:
      'Resultant of parallel forces, mathjs: 30 % at 120 mm left and 70 % at 200 mm right; a lever in balance at 200 to 120',
    given: { ...both, e_l: '15 mm ± 0', d_1: '120 mm ± 0', d_2: '200 mm ± 0', s: '30 % ± 0' },
    choices: { drive: 'both' },
    expect: { e_w: [15, 1e-9], d: [by('0.3 * 120 - 0.7 * 200', ''), 1e-9], s_0: [by('100 * 200 / 320', ''), 1e-9] },
  },
  {
    source:
      'Geometry by mathjs atan: 2 mm over 300 mm tilts a guide of 60 mm, whose play of 0.1 mm allows 0.0955°; Hooke’s law for the rest',
    given: {
      ...exact,
      dx: '2 mm ± 0',
      W_g: '300 mm ± 0',
      L: '60 mm ± 0',
      j: '0.1 mm ± 0',
      c_g: '100 N/mm ± 0',
      mu_p: '0.15 ± 0',
    },
    expect: {
      psi: [by('atan(2 / 300) * 180 / pi', ''), 1e-4],
      psi_0: [by('atan(0.1 / 60) * 180 / pi', ''), 1e-5],
      dx_0: [by('300 * tan(atan(0.1 / 60))', ''), 1e-9],
      N_c: [pressedBySpring(), 1e-9],
      F_c: [by('2 * 0.15 * 15 N', 'N'), 1e-9],
    },
  },
];
export default checks;
