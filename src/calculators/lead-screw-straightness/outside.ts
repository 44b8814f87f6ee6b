import { intersect, lusolve } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const CIRCLE = 'A drawn circle, no formula of a flat arc: ';
const ELEMENTS = 'Stiffness matrix of two beam elements, solved by mathjs lusolve';

/** Height of an arc of radius R over a chord, both in mm: centre, Pythagoras. */
const sagitta = (R: number, chord: number): number => R - Math.sqrt(R ** 2 - (chord / 2) ** 2);
/** What an arc of radius R has left its tangent by after a way along that tangent, mm. */
const leaves = (R: number, way: number): number => sagitta(R, 2 * way);

/** Highest less lowest reading of a needle over a turn of a round bar that runs so far off its axis, mm. */
function swing(off: number): number {
  const readings = Array.from({ length: 3600 }, (_, i) => off * Math.cos((i * Math.PI) / 1800));
  return Math.max(...readings) - Math.min(...readings);
}

/** Second moment of a round bar of diameter 1, strip by strip: ∫ y² · 2·√(r² − y²) dy. */
function roundBar(): number {
  const strips = 20_000;
  let sum = 0;
  for (let i = 0; i < strips; i += 1) {
    const y = (i + 0.5) / strips - 0.5;
    sum += (y ** 2 * 2 * Math.sqrt(0.25 - y ** 2)) / strips;
  }
  return sum;
}

/** One element of length ½ with E·I = 1: rows are force and moment at either end, columns shift and turn there. */
const ELEMENT = [
  [96, 24, -96, 24],
  [24, 8, -24, 4],
  [-96, -24, 96, -24],
  [24, 4, -24, 8],
];

/** Two of them in line, length 1: shift and turn at the lower end, midway, at the upper end. */
const BEAM = Array.from({ length: 6 }, (_, i) =>
  Array.from({ length: 6 }, (__, j) => (ELEMENT[i]?.[j] ?? 0) + (ELEMENT[i - 2]?.[j - 2] ?? 0)),
);

/** Which of the six shifts and turns each kind of end holds. */
const HELD = { pinned: [0, 4], mixed: [0, 1, 4], clamped: [0, 1, 4, 5], free: [0, 1] } as const;
type Ends = keyof typeof HELD;
const MIDWAY = 2;
const TOP = 4;

/** Shifts and turns under six loads, with the ends held and, where there is one, a spring beside the nut. */
function bent(ends: Ends, load: readonly number[], spring: { at: number; k: number } = { at: 0, k: 0 }): number[] {
  const held: readonly number[] = HELD[ends];
  const loose = [0, 1, 2, 3, 4, 5].filter((i) => !held.includes(i));
  const side = BEAM.map((row, i) => row.map((k, j) => (i === j && i === spring.at ? k + spring.k : k)));
  const found = lusolve(
    loose.map((i) => loose.map((j) => side[i]?.[j] ?? 0)),
    loose.map((i) => load[i] ?? 0),
  ) as number[][];
  return [0, 1, 2, 3, 4, 5].map((i) => found[loose.indexOf(i)]?.[0] ?? 0);
}

const unit = (at: number): number[] => [0, 1, 2, 3, 4, 5].map((i) => (i === at ? 1 : 0));

/** Steel screw of the checks: N and mm. */
const [D_3, E, L, K_G] = [5.5, 206_000, 400, 100];
const I = (): number => roundBar() * D_3 ** 4;
const EI = (): number => E * I();

/** Force over shift at a place, N/mm. */
const stiffness = (ends: Ends, at: number): number => EI() / L ** 3 / (bent(ends, unit(at))[at] ?? NaN);

/** Where a screw that would stand `off` aside comes to rest against the guide's spring: equilibrium of the whole matrix, mm. */
function aside(ends: Ends, at: number, off: number): number {
  const k = (K_G * L ** 3) / EI();
  const pushed = bent(
    ends,
    unit(at).map((one) => -one * k * off),
    { at, k },
  );
  return off + (pushed[at] ?? NaN);
}

/** Sag midway on two supports under its own weight, mm: consistent loads of an even load, 300 g/m over 300 mm. */
function sag(): number {
  const even = [1 / 4, 1 / 48, 1 / 2, 0, 1 / 4, -1 / 48];
  return ((bent('pinned', even)[MIDWAY] ?? NaN) * (300e-6 * 9.80665) * 300 ** 4) / EI();
}

/** Push midway, mm, at which the outer fibre reaches 400 MPa: the element's own end moment over I, times half the core. */
function yields(): number {
  const shape = bent('pinned', unit(MIDWAY));
  const moment = ELEMENT[3]?.reduce((sum, k, j) => sum + k * (shape[j] ?? 0), 0) ?? NaN;
  const stress = ((Math.abs(moment) * L) / I()) * (D_3 / 2);
  return (400 / stress) * (((shape[MIDWAY] ?? NaN) * L ** 3) / EI());
}

/** A smooth bow of 60 m radius, over the screw and over the supports. */
const R = 60_000;
const bow = sagitta(R, L);
const short = sagitta(R, 300);

/** Radius of the circle through the ends and the middle of 300 mm bowed by 0.25 mm: perpendicular bisectors, cut by mathjs. */
function classRadius(): number {
  const [, centre] = intersect([75, 0.125], [75 - 0.25, 0.125 + 150], [150, 0], [150, 1]) as [number, number];
  return 0.25 - centre;
}

/** What a lower end turned true leaves midway of that bow, the upper one free to turn: the arc's end slope, taken away. */
function straightened(): number {
  const slope = Math.asin(L / 2 / R);
  const turned = bent(
    'mixed',
    BEAM.map((row) => (row[1] ?? 0) * slope),
  );
  return bow + (turned[MIDWAY] ?? NaN) * L;
}

const exact = {
  c: '300 mm ± 0',
  L: '400 mm ± 0',
  d_3: '5.5 mm ± 0',
  E: '206 GPa ± 0',
  m_1: '300 g/m ± 0',
  k_g: '100 N/mm ± 0',
  R_e: '400 MPa ± 0',
  q: '0.01 mm ± 0',
} as const;
/** Crests 0.005 mm off centre, on the side of the bow. */
const CRESTS = 0.005;
const COUPLING = 0.02;
const onBlocks = { ...exact, TIR: `${swing(short + CRESTS)} mm ± 0` };
const mounted = (off: number) => ({
  ...exact,
  TIR: `${swing(off + CRESTS + COUPLING)} mm ± 0`,
  TIR_c: `${swing(COUPLING)} mm ± 0`,
});
/** Results that follow the bow, whichever way it was found. */
const ofBow = {
  s_L: [bow, 1e-5],
  kappa: [1e6 / R, 1e-3],
  s_r: [short, 1e-5],
  f_L: [(100 * bow) / L, 1e-5],
} as const;
const freed = [() => 2 * aside('free', MIDWAY, leaves(R, L / 2)), 1e-5] as const;

const checks: readonly OutsideProof[] = [
  {
    source: `${CIRCLE}radius 60 m over 300 and 400 mm; the needle’s swing read off a turned round bar`,
    given: onBlocks,
    expect: { s: [short, 1e-9], ...ofBow, y_0: [bow, 1e-6] },
  },
  {
    source: `${CIRCLE}where an arc of 60 m has left the tangent at its lower end by 400 mm further up`,
    given: { ...onBlocks, b: '4' },
    choices: { ends: 'free' },
    expect: { y_0: [leaves(R, L), 2e-5] },
  },
  {
    source: `${CIRCLE}the same swing at a free top in the machine, coupling off centre on the same side`,
    given: { ...mounted(leaves(R, L)), b: '4' },
    choices: { method: 'mounted', ends: 'free' },
    expect: { y_0: [leaves(R, L), 1e-9], ...ofBow },
  },
  {
    source: `${CIRCLE}radius 3 m over 300 mm, a bow seen by eye`,
    given: { ...exact, TIR: `${swing(sagitta(3000, 300) + CRESTS)} mm ± 0` },
    expect: { kappa: [1e6 / 3000, 1e-6] },
  },
  {
    source: `${CIRCLE}radius 3 m over 400 mm, a bow seen by eye, in the machine`,
    given: mounted(sagitta(3000, L)),
    choices: { method: 'mounted' },
    expect: { kappa: [1e6 / 3000, 1e-6] },
  },
  {
    source: 'Moment of a round section summed strip by strip, ∫ y² dA over 20 000 strips',
    given: onBlocks,
    expect: { I: [I, 1e-4] },
  },
  {
    source: `${ELEMENTS}: held at both ends, guide as a spring`,
    given: onBlocks,
    expect: {
      k_s: [() => stiffness('pinned', MIDWAY), 1e-4],
      F: [() => stiffness('pinned', MIDWAY) * bow, 1e-4],
      x: [() => aside('pinned', MIDWAY, bow), 1e-6],
      w_x: [() => 2 * aside('pinned', MIDWAY, bow), 1e-6],
      r_k: [() => (100 * aside('pinned', MIDWAY, bow)) / bow, 1e-4],
      y_y: [yields, 1e-4],
    },
  },
  {
    source: `${ELEMENTS}: top freed, lower end true, the arc 200 mm up, guide as a spring`,
    given: onBlocks,
    expect: { k_t: [() => stiffness('free', MIDWAY), 1e-3], w_t: freed },
  },
  {
    source: `${ELEMENTS}: the same, told from the swing in the machine`,
    given: mounted(bow),
    choices: { method: 'mounted' },
    expect: { y_0: [bow, 1e-9], ...ofBow, w_t: freed },
  },
  {
    source: `${ELEMENTS}: one end clamped true takes three quarters of a smooth bow; held so, top freed`,
    given: { ...onBlocks, b: '0.25' },
    choices: { ends: 'mixed' },
    expect: {
      y_0: [straightened, 1e-6],
      k_s: [() => stiffness('mixed', MIDWAY), 1e-3],
      x: [() => aside('mixed', MIDWAY, straightened()), 1e-6],
      k_t: [() => stiffness('free', MIDWAY), 1e-3],
    },
  },
  {
    source: `${ELEMENTS}: both ends clamped true`,
    given: onBlocks,
    choices: { ends: 'clamped' },
    expect: { k_s: [() => stiffness('clamped', MIDWAY), 1e-3], w_t: freed },
  },
  {
    source: `${ELEMENTS}: clamped below, free above, loaded at the top, guide as a spring`,
    given: { ...onBlocks, b: '4' },
    choices: { ends: 'free' },
    expect: {
      k_s: [() => stiffness('free', TOP), 1e-4],
      r_k: [() => 100 * aside('free', TOP, 1), 1e-4],
      w_x: [() => 2 * aside('free', TOP, leaves(R, L)), 1e-5],
      w_n: [() => 2 * aside('free', TOP, leaves(classRadius(), L)), 1e-4],
    },
  },
  {
    source: `${ELEMENTS}: sag of 300 g/m between supports 300 mm apart, added to the gap less the crests’ part`,
    given: { ...exact, g: `${short - sag() + 2 * CRESTS} mm ± 0` },
    choices: { method: 'flat', touch: 'gap' },
    expect: { y_g: [sag, 1e-6], s: [short, 1e-6] },
  },
  {
    source: `${ELEMENTS}: the bow whose gap, once it has sagged, just stops the thinnest leaf; half of it`,
    given: { ...exact, g_0: '0.05 mm ± 0', f_w: '0.5 ± 0' },
    choices: { method: 'flat', touch: 'none' },
    expect: { y_g: [sag, 1e-6], s: [() => (0.05 + sag()) / 2, 1e-6] },
  },
  {
    source:
      'mathjs intersect: circle through three points 0.25 mm out of line over 300 mm, drawn on to 400 mm; beam elements',
    given: onBlocks,
    expect: { w_n: [() => 2 * aside('pinned', MIDWAY, sagitta(classRadius(), L)), 1e-6] },
  },
  {
    source: 'ISO 2902, designation Tr 8×8(P2): 8 mm in one turn (from memory), and a bent screw swings once in it',
    given: { ...onBlocks, P_h: '8 mm' },
    expect: { p_r: [8, 1e-12] },
  },
  {
    source: 'Common practice, no source: a twentieth of the line; of 16 thou that is 0.8 thou, 0.02032 mm',
    given: { ...onBlocks, w: '16 thou', k_w: '0.05' },
    expect: { w_lim: [0.02032, 1e-9] },
  },
];
export default checks;
