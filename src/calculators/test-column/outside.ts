import { eigs, evaluate, lusolve, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const SHEET = 'Values worked out beforehand with another program from Roark, table 8.1, case 1a, and Blevins: ';
const BEAM = 'Stiffness matrix of twenty beam elements, solved by mathjs lusolve: ';
const LUMPS = 'Forty lumped masses on the flexibility of a clamped bar, eigenvalues by mathjs eigs: ';
const STRIPS = 'Section cut into strips and added up: ';
const UNITS = 'mathjs with units: ';

const ELEMENTS = 20;
const MASSES = 40;
const STRIP_COUNT = 4000;

type Width = (y: number) => number;
const squareOf =
  (b: number): Width =>
  (y) =>
    Math.abs(y) <= b / 2 ? b : 0;
const roundOf =
  (d: number): Width =>
  (y) =>
    2 * Math.sqrt(Math.max(0, d ** 2 / 4 - y ** 2));
const hollow =
  (outer: Width, inner: Width): Width =>
  (y) =>
    outer(y) - inner(y);

/** Area, second moment about the middle and its modulus at the edge, of a section given by its width, mm. */
function section(width: Width, b: number) {
  const dy = b / STRIP_COUNT;
  let [A, I] = [0, 0];
  for (let i = 0; i < STRIP_COUNT; i += 1) {
    const y = (i + 0.5) * dy - b / 2;
    A += width(y) * dy;
    I += y ** 2 * width(y) * dy;
  }
  return { A, I, Z: I / (b / 2) };
}

/** Sway of the free top under a unit push, for EI = 1 and length 1: shifts and turns of all nodes above the clamp. */
function swayOfUnitBeam(): number {
  const h = 1 / ELEMENTS;
  const element = [
    [12, 6 * h, -12, 6 * h],
    [6 * h, 4 * h * h, -6 * h, 2 * h * h],
    [-12, -6 * h, 12, -6 * h],
    [6 * h, 2 * h * h, -6 * h, 4 * h * h],
  ].map((row) => row.map((one) => one / h ** 3));
  const size = 2 * ELEMENTS + 2;
  const whole = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  for (let e = 0; e < ELEMENTS; e += 1) {
    element.forEach((row, i) => {
      row.forEach((one, j) => {
        const line = whole[2 * e + i];
        if (line) line[2 * e + j] = (line[2 * e + j] ?? 0) + one;
      });
    });
  }
  const free = whole.slice(2).map((row) => row.slice(2));
  const load = free.map((_, i) => (i === size - 4 ? 1 : 0));
  return (lusolve(free, load) as number[][])[size - 4]?.[0] ?? NaN;
}

/** Own angular frequency squared of a clamped–free bar with EI, mass per length and length 1. */
function unitFrequencySquared(): number {
  const at = Array.from({ length: MASSES }, (_, i) => (i + 0.5) / MASSES);
  // Shift at a under a unit push at c, by the areas of the moment diagram.
  const matrix = at.map((a) =>
    at.map((c) => (Math.min(a, c) ** 2 * (3 * Math.max(a, c) - Math.min(a, c))) / 6 / MASSES),
  );
  const { values } = eigs(matrix);
  return 1 / Math.max(...(values as number[]));
}

/** A slow number, worked out when first asked for. */
function once(work: () => number): () => number {
  let found: number | undefined;
  return () => (found ??= work());
}
const unitSway = once(swayOfUnitBeam);
const unitSquare = once(unitFrequencySquared);

/** N/mm of a bar of EI (N·mm²) and length (mm). */
const stiffnessOf = (EI: number, L: number): number => EI / (unitSway() * L ** 3);
/** Hz of a bar of EI (N·mm²), mass per length (g/m = 1e-6 kg/mm) and length (mm). */
const frequencyOf = (EI: number, gramPerMetre: number, L: number): number =>
  Math.sqrt((unitSquare() * EI * 1e-6) / (gramPerMetre * 1e-3)) / (L * 1e-3) ** 2 / (2 * Math.PI);

/** Where a falling function meets a value, by halving. */
function meets(f: (x: number) => number, wanted: number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) > wanted) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

const as = (text: string, to: string): number => (evaluate(text) as Unit).toNumber(to);

const plain = { E: '3.5 GPa', q_E: '1', q_T: '1', rho: '1.24 g/cm³', F: '1 N' } as const;
const EI = (width: Width, b: number): number => 3500 * section(width, b).I;

const ten = squareOf(10);
const rod = roundOf(10);
const box = hollow(squareOf(10), squareOf(8));
const tube = hollow(rod, roundOf(8));
const typicalHold = { sigma_a: '1 MPa', q_p: '40 %' } as const;

const checks: readonly OutsideProof[] = [
  {
    source: `${SHEET}5 mm square, 50 mm: 52.08 mm⁴, 4.375 N/mm, 543 Hz, 2.40 MPa`,
    given: { ...plain, b: '5 mm', L: '50 mm' },
    expect: { I: [52.08, 0.005], k: [4.375, 0.0005], f: [543, 0.5], sigma: [2.4, 0.005] },
  },
  {
    source: `${SHEET}10 mm square, 100 mm: 833.3 mm⁴, 8.75 N/mm, 271 Hz, 0.60 MPa, 0.0061 N`,
    given: { ...plain, b: '10 mm', L: '100 mm' },
    expect: { I: [833.3, 0.05], k: [8.75, 0.005], f: [271, 0.6], sigma: [0.6, 0.005], F_tip: [6.1, 0.05] },
  },
  {
    source: `${SHEET}10 mm square, 200 mm: 1.094 N/mm, 67.8 Hz, 1.20 MPa`,
    given: { ...plain, b: '10 mm', L: '200 mm' },
    // The factor 3.516 has four digits: 67.87 to two decimals.
    expect: { k: [1.094, 0.0005], f: [67.8, 0.08], sigma: [1.2, 0.005] },
  },
  {
    source: `${SHEET}tube 10/8 mm: 289.8 mm⁴`,
    given: { ...plain, b: '10 mm', L: '100 mm', t_w: '1 mm' },
    choices: { section: 'round', core: 'shell' },
    expect: { I: [289.8, 0.05] },
  },
  ...(
    [
      ['square', 'solid', ten],
      ['round', 'solid', rod],
      ['square', 'shell', box],
      ['round', 'shell', tube],
    ] as const
  ).flatMap(([form, core, width]): OutsideProof[] => {
    const whole = form === 'square' ? ten : rod;
    const hollowed = core === 'shell';
    const given = { ...plain, b: '10 mm', L: '120 mm', ...(hollowed ? { t_w: '1 mm', q_i: '20 %' } : {}) };
    const choices = { section: form, core };
    const carried = section(width, 10).A;
    const within = section(whole, 10).A;
    const perMetre = 1.24 * (carried + (hollowed ? 0.2 * (within - carried) : 0));
    return [
      {
        source: `${STRIPS}area, second moment and modulus`,
        given,
        choices,
        expect: {
          A_g: [within, 1e-3],
          A: [carried, 1e-3],
          I: [section(width, 10).I, 0.01],
          Z: [section(whole, 10).Z, 0.01],
          ...(hollowed ? { b_i: [8, 1e-9] } : {}),
        },
      },
      {
        source: `${BEAM}stiffness, sway, and the height at which it sways by 0.1 mm`,
        given: { ...given, w: '0.4 mm', q_w: '25 %' },
        choices,
        expect: {
          k: [() => stiffnessOf(EI(width, 10), 120), 1e-3],
          x: [() => 1 / stiffnessOf(EI(width, 10), 120), 1e-4],
          x_lim: [0.1, 1e-9],
          L_x: [() => meets((L) => stiffnessOf(EI(width, 10), L), 10, 1, 1000), 0.01],
        },
      },
      {
        source: `${LUMPS}own frequency, and the height at which it is twice 40 Hz`,
        given: { ...given, f_m: '40 Hz', r_min: '2' },
        choices,
        expect: {
          mu: [perMetre, 1e-3],
          f: [() => frequencyOf(EI(width, 10), perMetre, 120), 0.3],
          r_f: [() => frequencyOf(EI(width, 10), perMetre, 120) / 40, 0.01],
          L_f: [() => meets((L) => frequencyOf(EI(width, 10), perMetre, L), 80, 1, 1000), 0.2],
        },
      },
      {
        source: `${STRIPS}the width at which the push gives the sway allowed, walls in proportion or thin`,
        given: hollowed
          ? { ...plain, b: '40 mm', L: '400 mm', t_w: '0.4 mm', w: '0.4 mm', q_w: '25 %', F: '1 N' }
          : { ...given, w: '0.4 mm', q_w: '25 %' },
        choices,
        expect: { b_x: [() => widthFor(form, hollowed), hollowed ? 0.4 : 0.01] },
      },
      {
        source: `${STRIPS}foot of 16 mm; the width at which its edge pulls with 0.4 MPa`,
        given: { ...given, ...typicalHold, r: '6 mm', q_r: '50 %' },
        choices: { ...choices, foot: 'rim' },
        expect: {
          B: [16, 1e-9],
          Z: [() => modulusOf(form, 16), 0.01],
          sigma: [() => 120 / modulusOf(form, 16), 1e-5],
          L_h: [() => 0.4 * modulusOf(form, 16), 0.01],
          B_n: [() => meets((B) => 120 / modulusOf(form, B), 0.4, 1, 100), 1e-3],
          r_n: [() => meets((r) => 120 / modulusOf(form, 10 + r), 0.4, -9, 100), 1e-3],
        },
      },
    ];
  }),
  {
    source: `${UNITS}mass, weight and modulus`,
    given: { ...plain, b: '10 mm', L: '100 mm', q_E: '0.8', q_T: '0.75', ...typicalHold },
    expect: {
      m: [as('1.24 g / cm^3 * 100 mm^2 * 100 mm', 'g'), 1e-9],
      E_c: [2.1, 1e-9],
      sigma_h: [0.4, 1e-9],
      s: [10, 1e-9],
      // Weight of 12.4 g at half of 10 mm against a push at 100 mm.
      F_tip: [as('12.4 g * 9.80665 m/s^2 * 5 mm / (100 mm)', 'mN'), 1e-9],
    },
  },
  {
    source: `${STRIPS}a block of 12 mm square, pushed at 20 mm with 6 N`,
    given: { ...plain, b: '10 mm', L: '100 mm', b_t: '12 mm', h_t: '20 mm', F_t: '6 N' },
    choices: { bed: 'tested' },
    expect: { sigma_h: [() => 120 / modulusOf('square', 12), 1e-5] },
  },
  ...(['square', 'round'] as const).map((form): OutsideProof => {
    const width = form === 'square' ? ten : rod;
    return {
      source: `${STRIPS}and ${BEAM}under a push of 2 N on 120 mm, two fifths of the rim of 6 mm holding`,
      given: {
        ...plain,
        ...typicalHold,
        b: '10 mm',
        L: '120 mm',
        F: '2 N',
        w: '0.4 mm',
        q_w: '25 %',
        r: '6 mm',
        q_r: '40 %',
      },
      choices: { section: form, core: 'solid', foot: 'rim' },
      expect: {
        B: [14.8, 1e-9],
        L_x: [() => meets((L) => stiffnessOf(EI(width, 10), L), 20, 1, 1000), 0.01],
        L_h: [() => meets((L) => -(2 * L) / modulusOf(form, 14.8), -0.4, 1, 1000), 0.01],
        B_n: [() => meets((B) => 240 / modulusOf(form, B), 0.4, 1, 100), 1e-3],
        r_n: [() => meets((r) => 240 / modulusOf(form, 10 + 2 * 0.4 * r), 0.4, -9, 100), 2e-3],
      },
    };
  }),
];
export default checks;

/** Modulus of a full foot, mm³. */
function modulusOf(form: 'square' | 'round', B: number): number {
  return section(form === 'square' ? squareOf(B) : roundOf(B), B).Z;
}

/** Width in mm at which 1 N sways it by 0.1 mm: solid of 120 mm height, or thin walls of 0.4 mm on 400 mm. */
function widthFor(form: 'square' | 'round', thin: boolean): number {
  const outline = form === 'square' ? squareOf : roundOf;
  const bar = (b: number): Width => (thin ? hollow(outline(b), outline(b - 0.8)) : outline(b));
  return meets((b) => 1 / stiffnessOf(EI(bar(b), b), thin ? 400 : 120), 0.1, 1, 200);
}
