import { evaluate, lusolve, polynomialRoot, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

/** An expression with units, worked out by mathjs. */
const by = (expression: string, unit: string) => () => {
  const result = evaluate(expression) as Unit | number;
  return typeof result === 'number' ? result : result.toNumber(unit);
};

const NTC = { R_n: '100', B: '3950', R_m: '100', T_a: '25 °C' } as const;
const RT =
  'dR/dT = −B R/T² summed in 20 000 steps from 25 °C; the project’s reference list has 336 206, 24 861.7, 6975.2, 1996.8, 744.6, 335.3 Ω at 0, 60, 100, 150, 200, 250 °C';

/** A 10 kΩ sensor by its printed table (from memory): °C and ohms. */
const TABLE = [
  [25, 10000],
  [100, 679.8],
  [200, 63.4],
] as const;
const lines = {
  T_1: '25 °C',
  R_1: '10',
  T_2: '100 °C',
  R_2: '0.6798',
  T_3: '200 °C',
  R_3: '0.0634',
} as const;
const three = { ...lines, R_m: '3.6', T_a: '20 °C', T_w: '180 °C' } as const;

/** a, b, c of 1/T = a + b ln R + c (ln R)³ through the three lines, by mathjs’s LU decomposition. */
function solved(): [number, number, number] {
  const rows = TABLE.map(([, R]) => [1, Math.log(R), Math.log(R) ** 3]);
  const right = TABLE.map(([celsius]) => 1 / (celsius + 273.15));
  return (lusolve(rows, right) as number[][]).map(([one]) => one ?? NaN) as [number, number, number];
}

function inverse(ohms: number): number {
  const [a, b, c] = solved();
  return a + b * Math.log(ohms) + c * Math.log(ohms) ** 3;
}

/** Kilohms at a temperature, by halving: the equation is not turned round here. */
function kilohms(celsius: number): number {
  let [low, high] = [1, 1e7];
  for (let i = 0; i < 100; i += 1) {
    const middle = Math.sqrt(low * high);
    if (inverse(middle) < 1 / (celsius + 273.15)) low = middle;
    else high = middle;
  }
  return low / 1000;
}

/** ln R = c₁ + c₂ (z − z₁) + c₃ (z − z₁)(z − z₂), z = T₁/T. */
function parabola(): [number, number, number] {
  const [, z2, z3] = TABLE.map(([celsius]) => 298.15 / (celsius + 273.15)) as [number, number, number];
  const rows = [
    [1, 0, 0],
    [1, z2 - 1, 0],
    [1, z3 - 1, (z3 - 1) * (z3 - z2)],
  ];
  const right = TABLE.map(([, R]) => Math.log(R));
  return (lusolve(rows, right) as number[][]).map(([one]) => one ?? NaN) as [number, number, number];
}

/** Kilohms at a temperature by the same parabola in powers of 1/T. */
function onParabola(celsius: number): number {
  const rows = TABLE.map(([one]) => [1, 1000 / (one + 273.15), (1000 / (one + 273.15)) ** 2]);
  const right = TABLE.map(([, R]) => Math.log(R));
  const [c0, c1, c2] = (lusolve(rows, right) as number[][]).map(([one]) => one ?? NaN) as [number, number, number];
  const y = 1000 / (celsius + 273.15);
  return Math.exp(c0 + c1 * y + c2 * y * y) / 1000;
}

const slope = (i: 1 | 2) => (): number =>
  (1 / (TABLE[i][0] + 273.15) - 1 / 298.15) / Math.log(TABLE[i][1] / TABLE[0][1]);

const checks: readonly OutsideProof[] = [
  ...(
    [
      [0, 336.206],
      [60, 24.8617],
    ] as const
  ).map(([celsius, kohm]): OutsideProof => ({
    source: RT,
    given: { ...NTC, T_a: `${celsius} °C`, R_m: String(kohm) },
    expect: {
      R_e: [() => printed(celsius), 1e-5 * kohm],
      ...(celsius === 60 ? { T_s: [60, 0.01], q: [1, 0.001] } : {}),
    },
  })),
  ...(
    [
      [100, 6.9752],
      [150, 1.9968],
      [200, 0.7446],
      [250, 0.3353],
    ] as const
  ).map(([celsius, kohm]): OutsideProof => ({
    source: RT,
    given: { ...NTC, T_w: `${celsius} °C`, R_m: String(kohm) },
    expect: {
      R_w: [() => printed(celsius), 1e-5 * kohm],
      T_s: [celsius, 0.05],
      y_s: [1 / (celsius + 273.15), 2e-7],
      dT_s: [celsius - 25, 0.05],
    },
  })),
  {
    source: 'Project’s reference list: −1.764 %/K at 200 °C, and 2.8 K for 1 % of B',
    given: { ...NTC, T_w: '200 °C' },
    expect: { alpha_w: [-0.01764, 0.000005], dT_B: [2.8, 0.05] },
  },
  {
    source:
      'The same sum turned round by halving: a sensor 10 % too high, held at a shown 200 °C (744.6 Ω / 1.1 is the true one’s)',
    given: { ...NTC, R_m: '110', T_w: '200 °C' },
    expect: { q: [1.1, 1e-9], dT_R: [() => 200 - halved(0.7446066 / 1.1), 0.01] },
  },
  {
    source: 'Screen and room thermometer: 30 shown, 25 is 5 K too high; dR/dT summed to 30 °C',
    given: { R_n: '100', B: '3950', T_r: '30 °C', T_h: '33 °C', T_a: '25 °C', T_hi: '100 °C', dT_max: '4 K' },
    choices: { by: 'shown' },
    expect: {
      T_s: [30, 1e-9],
      dT_h: [3, 1e-9],
      T_top: [100, 1e-9],
      T_low: [-10, 1e-9],
      dT_s: [5, 1e-9],
      q: [() => printed(30) / 100, 1e-6],
    },
  },
  {
    source: 'mathjs lusolve: the three equations of Steinhart and Hart as a linear system',
    given: three,
    choices: { law: 'three' },
    expect: {
      a_S: [() => solved()[0], 1e-12],
      b_S: [() => solved()[1], 1e-12],
      c_S: [() => solved()[2], 1e-14],
      y_s: [() => inverse(3600), 1e-12],
      T_s: [() => 1 / inverse(3600) - 273.15, 1e-6],
      L_1: [by('log10(10000) * log(10)', ''), 1e-9],
      L_2: [by('log10(679.8) * log(10)', ''), 1e-9],
      L_3: [by('log10(63.4) * log(10)', ''), 1e-9],
      D_2: [slope(1), 1e-12],
      D_3: [slope(2), 1e-12],
    },
  },
  {
    source:
      'The same equation with mathjs’s coefficients, its root found by halving: 0.1 K is 0.45 % at 20 °C, 0.2 % at 180 °C',
    given: three,
    choices: { law: 'three' },
    expect: { R_e: [() => kilohms(20), 0.05], R_w: [() => kilohms(180), 0.0002] },
  },
  {
    source: 'mathjs lusolve: the parabola of ln R over T₁/T through the three lines as a linear system',
    given: three,
    choices: { law: 'three' },
    expect: {
      E_2: [() => parabola()[1], 1e-8],
      E_3: [() => parabola()[2], 1e-8],
      R_e: [() => onParabola(20), 1e-6],
      R_w: [() => onParabola(180), 1e-8],
    },
  },
  {
    source: 'The sum dR/dT of a sensor of half a megohm in a garage at −12 °C: three times that is the bound, not 3 MΩ',
    given: { R_n: '500', B: '3950', R_m: '3000', T_a: '-12 °C', R_hi: '3000', R_lo: '0.5' },
    expect: { R_top: [() => 15 * printed(-12), 0.1], R_low: [0.5, 1e-9] },
  },
  {
    source:
      'Facts: a third of a kilohm is less than the bound of half a kilohm; −12 °C less twice 4 K, 110 °C below 120',
    given: { R_n: '1', B: '3950', R_m: '1', T_a: '25 °C' },
    expect: { R_top: [3000, 1e-9], R_low: [1 / 3, 1e-9] },
  },
  {
    source: 'Facts: −12 °C less twice 4 K; 60 °C and twice 20 K are below 120 °C',
    given: { R_n: '100', B: '3950', T_r: '-12 °C', T_h: '-5 °C', T_a: '-12 °C', dT_max: '4 K' },
    choices: { by: 'shown' },
    expect: { T_low: [-20, 1e-9], T_top: [120, 1e-9], dT_h: [7, 1e-9] },
  },
  {
    source:
      'IEC 60751, table: 107.79, 119.40, 175.86 Ω at 20, 50, 200 °C (from memory); the way back by mathjs polynomialRoot',
    given: { R_m: '119.40 ohm', R_0: '100 ohm', T_a: '20 °C', T_w: '200 °C' },
    choices: { law: 'pt100' },
    expect: {
      R_e: [0.10779, 5e-6],
      R_w: [0.17586, 5e-6],
      T_s: [50, 0.015],
      dT_s: [30, 0.015],
      q: [119.4 / 107.79, 1e-4],
      dT_R: [() => 200 - platinum((175.86 * 107.79) / 119.4), 0.03],
    },
  },
  {
    source: 'IEC 60751, table of a Pt1000: 921.60 Ω at −20 °C (from memory)',
    given: { R_m: '921.6 ohm', R_0: '1000 ohm', T_a: '-20 °C', T_w: '200 °C' },
    choices: { law: 'pt1000' },
    expect: { R_e: [0.9216, 5e-6], T_s: [-20, 0.003] },
  },
  {
    source: 'IEC 60751, table: 119.40 and 107.79 Ω at 50 and 20 °C (from memory)',
    given: { R_0: '100 ohm', T_r: '50 °C', T_h: '55 °C', T_a: '20 °C', T_w: '200 °C' },
    choices: { law: 'pt100', by: 'shown' },
    expect: { R_s: [0.1194, 5e-6], q: [119.4 / 107.79, 1e-4] },
  },
  {
    source: 'mathjs lusolve: the same parabola at 30 and 20 °C',
    given: { ...lines, T_r: '30 °C', T_h: '33 °C', T_a: '20 °C' },
    choices: { law: 'three', by: 'shown' },
    expect: { R_s: [() => onParabola(30), 1e-6], q: [() => onParabola(30) / onParabola(20), 1e-8] },
  },
  {
    source: 'Steinhart and Hart with mathjs’s coefficients at the resistance of the parabola at 180 °C over the ratio',
    given: three,
    choices: { law: 'three' },
    expect: { dT_R: [() => 180 - (1 / inverse((onParabola(180) * 1000 * onParabola(20)) / 3.6) - 273.15), 1e-6] },
  },
  {
    source: 'Facts of the trade: a heater of 12 V 40 W has 3.6 Ω and on 24 V four times its power; mathjs with units',
    given: { R_h: '3.6 ohm', V: '24 V', V_r: '12 V', P_r: '40 W' },
    choices: { what: 'heater' },
    expect: {
      P: [by('(24 V)^2 / (3.6 ohm)', 'W'), 1e-9],
      I: [by('24 V / (3.6 ohm)', 'A'), 1e-9],
      R_x: [3.6, 1e-9],
      k_P: [4, 1e-9],
    },
  },
];

/** Kilohms of the B 3950 sensor at a temperature: its differential law dR/dT = −B R / T² summed in small steps from 25 °C. */
function printed(celsius: number): number {
  let logarithm = 0;
  const steps = 20000;
  const h = (celsius - 25) / steps;
  for (let i = 0; i < steps; i += 1) logarithm -= (3950 * h) / (298.15 + (i + 0.5) * h) ** 2;
  return 100 * Math.exp(logarithm);
}

/** °C at so many ohms of a Pt100: A and B of IEC 60751 as a polynomial. */
function platinum(ohms: number): number {
  const roots = polynomialRoot(1 - ohms / 100, 3.9083e-3, -5.775e-7) as number[];
  return Math.min(...roots.filter((root) => root > 0));
}

/** Temperature at which the B 3950 sensor has so many kilohms, by halving. */
function halved(kohm: number): number {
  let [low, high] = [0, 400];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (printed(middle) > kohm) low = middle;
    else high = middle;
  }
  return low;
}
export default checks;
