import * as math from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

/** An expression with units, worked out by mathjs. */
const by = (expression: string, unit: string) => () => {
  const result = math.evaluate(expression) as math.Unit | number;
  return typeof result === 'number' ? result : result.toNumber(unit);
};

const ODE = 'scipy 1.17 solve_ivp (DOP853, 1e-11)';

const CONSTANTS = ['planckConstant', 'speedOfLight', 'boltzmann'].map((name) =>
  (math.evaluate(name) as math.Unit).toSI().toNumeric(),
) as [number, number, number];

/** Radiation of a black surface in W/m²: Planck’s spectrum summed by Simpson’s rule, constants from mathjs. */
function planck(kelvin: number): number {
  const [h, c, k] = CONSTANTS;
  const x = (i: number): number => (i * 60) / 6000;
  let sum = 0;
  for (let i = 1; i <= 6000; i += 1) sum += (i === 6000 ? 1 : i % 2 === 1 ? 4 : 2) * (x(i) ** 3 / Math.expm1(x(i)));
  return ((2 * Math.PI * (k * kelvin) ** 4) / (h ** 3 * c ** 2)) * ((sum * 60) / 6000 / 3);
}

/** Where a rising function passes zero, by halving. */
function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 80; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

const A = 1504e-6;
const [TA, TW] = [293.15, 473.15];
/** Loss without radiation for which 21.6 W end at 200 °C: scipy solve_ivp to the steady state, inside brentq. */
const HELD = 0.11392603809;
/** K/s as 40 W pass 200 °C in the linear block: scipy solve_ivp, dense output 0.01 s before and after. */
const SLOPE = 1.978092628;

const block = {
  V: '24 V',
  R_h: '14.4 ohm',
  T_a: '20 °C',
  a_1: '20 mm',
  a_2: '16 mm',
  a_3: '12 mm',
  epsilon: '0.3',
  t_g: '20 s',
  dT_l: '4 K',
  dT_g: '4 K',
} as const;
const body = { ...block, m_b: '10.37 g', c_b: '897', m_x: '0 g', T_w: '200 °C' } as const;
const held = { ...body, D_h: '54 %' } as const;
const byPower = { loss: 'held' } as const;

const typed = (times: readonly number[], shown: readonly number[]): Record<string, string> =>
  Object.fromEntries(times.flatMap((t, i) => [[`t_${i + 1}`, `${t} s ± 0`], [`T_${i + 1}`, `${shown[i] ?? 0} ± 0.5`]])); // prettier-ignore

/** solve_ivp with C 12 J/K, 40 W, 0.06 W/K and radiation, from room temperature; read from 12 s on. */
const HEATING = [
  58.767, 77.246, 95.14, 112.46, 129.219, 145.429, 161.101, 176.246, 190.875, 205, 218.631, 231.778, 244.453, 256.667,
];
/** The same block switched off at 215 °C. */
const COOLING = [
  215, 194.63, 176.518, 160.383, 145.985, 133.121, 121.613, 111.309, 102.076, 93.797, 86.368, 79.7, 73.711,
];
const steps = (shown: readonly number[], step: number): number[] => shown.map((_, i) => i * step);
const heating = { ...block, ...typed(steps(HEATING, 6), HEATING) };
const cooling = {
  ...block,
  m_b: '13.3779 g',
  c_b: '897',
  m_x: '0 g',
  ...typed(steps(COOLING, 20), COOLING),
};

const scale = (): number => root((T) => 0.3 * A * (planck(T) - planck(TA)) - 40 - HELD * TA, 300, 5000);
const share = (): number => HELD / ((0.3 * A * planck(scale())) / scale());

const checks: readonly OutsideProof[] = [
  {
    source: 'Facts of the trade: a heater of 14.4 Ω marked 24 V 40 W; mathjs with units',
    given: held,
    choices: byPower,
    expect: { P: [by('(24 V)^2 / (14.4 ohm)', 'W'), 1e-9] },
  },
  {
    source:
      'mathjs with units: side faces as perimeter × height, and two bases; heat that warms the block by one kelvin',
    given: { ...held, m_x: '6 g', c_x: '430' },
    choices: byPower,
    expect: {
      A: [by('2 * (20 mm + 16 mm) * 12 mm + 2 * 20 mm * 16 mm', 'mm^2'), 1e-9],
      C: [by('(10.37 g * 897 J/(kg K) + 6 g * 430 J/(kg K)) * 1 K / (1 K)', 'J/K'), 1e-6],
    },
  },
  {
    source: 'Planck’s spectrum summed numerically (constants from mathjs), between 200 and 20 °C, over 180 K',
    given: held,
    choices: byPower,
    expect: { g_w: [() => (0.3 * A * (planck(TW) - planck(TA))) / 180, 1e-7] },
  },
  {
    source:
      'Reference list of the project: still air, 12 W/(m²·K), takes 3.249 W off 15.04 cm² at 200 °C; tube by Fourier’s law',
    given: { ...body, h_c: '12', G_x: '0.0432613' },
    expect: {
      // Printed watts of convection and of radiation (ε 0.1: 0.364) over 180 K.
      G_w: [by('(3.249 + 3 * 0.364) / 180 + 15 * pi / 4 * (6^2 - 4.2^2) * 1e-6 / 5e-3', ''), 1e-4],
      G_c: [by('3.249 / 180 + 15 * pi / 4 * (6^2 - 4.2^2) * 1e-6 / 5e-3', ''), 1e-4],
    },
  },
  {
    source: `${ODE} inside brentq: the loss for which 21.6 W end at 200 °C, radiation and all`,
    given: held,
    choices: byPower,
    expect: { G_c: [HELD, 1e-8], G_w: [by('21.6 W / (180 K)', 'W/K'), 1e-9] },
  },
  {
    source: `${ODE} of the linear block, 40 W, 0.12 W/K, 9.302 J/K: times by event, temperatures by dense output`,
    given: held,
    choices: byPower,
    expect: {
      tau: [by('10.37 g * 897 J/(kg K) / (0.12 W/K)', 's'), 0.001],
      T_l: [353.333333, 1e-4],
      t_w: [60.193212, 1e-4],
      t_d: [0.17978285, 1e-6],
      t_x: [20.17978285, 1e-6],
      T_x: [235.144596, 1e-4],
      dT_h: [SLOPE * 20, 1e-3],
      T_c: [126.973737, 1e-4],
      t_p: [38.481678, 1e-4],
      T_p: [260, 1e-9],
    },
  },
  {
    source: `${ODE} of the linear block, metal all the way: 200 to 300 °C, by event`,
    given: held,
    choices: { ...byPower, liner: 'none' },
    expect: { T_p: [300, 1e-9], t_p: [81.860715, 1e-4] },
  },
  {
    source: `${ODE} with radiation, ε 0.3, run for 6000 s: where it ends`,
    given: held,
    choices: byPower,
    expect: { T_e: [340.846534, 1e-4], T_u: [340.846534, 1e-4] },
  },
  {
    source: `${ODE} with radiation, ε 0.9, run for 6000 s: where it ends, and what cuts in before`,
    given: { ...held, epsilon: '0.9', T_f: '300 °C' },
    choices: { ...byPower, cutoff: 'fitted' },
    expect: { T_e: [323.201359, 1e-4], T_u: [300, 1e-9] },
  },
  {
    source:
      'Planck’s spectrum, the temperature that radiates all the heat found by halving; roots by mathjs polynomialRoot',
    given: held,
    choices: byPower,
    expect: {
      T_r: [scale, 0.01],
      beta: [share, 1e-4],
      w: [() => Math.cbrt(Math.max(...(math.polynomialRoot(-64 / 27, -(share() ** 2), 1) as number[]))), 1e-4],
      u: [
        () =>
          math
            .polynomialRoot(-(share() ** 2), 4, 0, 1)
            .map((one) => math.complex(one as math.Complex))
            .filter((one) => Math.abs(one.im) < 1e-9)
            .map((one) => one.re)[0] ?? NaN,
        1e-4,
      ],
    },
  },
  {
    source: 'Facts of the trade: half as much again as 4 K is 6 K; a cut-off 20 K above 215 °C',
    given: { ...held, T_w: '215 °C', T_f: '240 °C' },
    choices: { ...byPower, cutoff: 'fitted' },
    expect: { dT_m: [6, 1e-9], T_fw: [235, 1e-9] },
  },
  {
    source: 'scipy 1.17 curve_fit of the exact solution to a heating curve; its covariance gives the temperature',
    given: heating,
    choices: { loss: 'heating' },
    expect: { T_m: [166.2528, 0.01], r_m: [2.53285, 1e-4], k: [0.343436, 1e-4] },
  },
  {
    source: `${ODE} made the heating curve from 12 J/K and 0.06 W/K; Planck’s spectrum differentiated at 166.25 °C`,
    given: heating,
    choices: { loss: 'heating' },
    expect: {
      C: [12, 0.05],
      G_c: [0.06, 0.0005],
      G_w: [() => 0.06 + (0.3 * A * (planck(488.15) - planck(TA))) / 195, 0.0005],
      g_m: [() => (0.3 * A * (planck(439.4028 + 0.1) - planck(439.4028 - 0.1))) / 0.2, 1e-6],
    },
  },
  {
    source: 'scipy 1.17 curve_fit of the exact solution to a cooling curve; its covariance gives the temperature',
    given: cooling,
    choices: { loss: 'cooling' },
    expect: { T_m: [126.6796, 0.01], r_m: [-0.574477, 1e-5], k: [0.335081, 1e-4] },
  },
  {
    source: `${ODE} made the cooling curve from 12 J/K and 0.06 W/K`,
    given: cooling,
    choices: { loss: 'cooling' },
    expect: {
      C: [12, 0.001],
      G_c: [0.06, 0.0005],
      G_w: [() => 0.06 + (0.3 * A * (planck(488.15) - planck(TA))) / 195, 0.0005],
      g_m: [() => (0.3 * A * (planck(399.8296) - planck(TA))) / 106.6796, 1e-6],
    },
  },
];
export default checks;
