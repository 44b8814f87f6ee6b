import { evaluate, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const COUNTED = 'Layers laid one on another in a loop, in whole hundredths of a millimetre: ';

/** Tops of the layers, hundredths of a millimetre: counted, no formula. */
function tops(first: number, layer: number, upTo: number): number[] {
  const all: number[] = [];
  for (let z = first; z <= upTo; z += layer) all.push(z);
  return all;
}

/** Number of the layer whose top lies nearest. */
function nearest(all: readonly number[], z: number): number {
  return all.reduce(
    (best, top, i) => (Math.abs(top - z) < Math.abs((all[best - 1] ?? Infinity) - z) ? i + 1 : best),
    1,
  );
}

const as = (text: string, to: string): number => (evaluate(text) as Unit).toNumber(to);
const still = { T_p: '40 °C ± 0', T_m: '40 °C ± 0', alpha: '68 µm/(m·K) ± 0' } as const;

/** Two pieces, cooled, that are stacked with glue between. */
const stacked = {
  H: '60 mm',
  s: '0.05 mm',
  g: '0.1 mm',
  H_t: '100 mm',
  alpha: '90 µm/(m·K)',
  T_p: '72 °C',
  T_m: '22 °C',
  h: '0.2 mm',
  h_1: '0.3 mm',
} as const;

const checks: readonly OutsideProof[] = [
  ...(
    [
      [30, 20, 2412],
      [24, 28, 13311],
      [20, 10, 993],
    ] as const
  ).map(([first, layer, z]): OutsideProof => {
    const all = tops(first, layer, 20_000);
    const n = nearest(all, z);
    const [mine, next] = [all[n - 1] ?? NaN, all[n] ?? NaN];
    return {
      source: `${COUNTED}first ${first}, others ${layer}, top at ${z}`,
      given: {
        ...still,
        h_1: `${first / 100} mm`,
        h: `${layer / 100} mm`,
        Z_r: `${(z + 10) / 100} mm ± 0`,
        g_f: '0.1 mm ± 0',
        q: '25 %',
      },
      expect: {
        Z_c: [z / 100, 1e-9],
        x: [n + (z - mine) / (next - mine), 1e-6],
        N: [n, 1e-9],
        N_n: [n + 1, 1e-9],
        Z_N: [mine / 100, 1e-9],
        Z_n: [next / 100, 1e-9],
        d: [(z - mine) / 100, 1e-9],
        h_n: [(next - z) / 100, 1e-9],
        Z_a: [(z + layer) / 100, 1e-9],
        d_lim: [(layer / 100) * 0.25, 1e-9],
      },
    };
  }),
  {
    source:
      'What a coefficient of expansion means: 200 mm at 74 µm/(m·K) (ABS, common practice, no source) grow by 0.59 mm in 40 K; so 200 mm cold were 200.59 mm',
    given: { H: '200 mm', s: '0 mm', alpha: '74 µm/(m·K)', T_p: '60 °C', T_m: '20 °C' },
    choices: { plan: 'rod', plastic: 'abs' },
    expect: { Z_c: [200, 1e-9], dZ_w: [0.59, 0.005], Z_w: [200.59, 0.005] },
  },
  {
    source: 'mathjs with units: a part 3 K cooler than while it printed',
    given: { Z_r: '80.1 mm', g_f: '0.1 mm', alpha: '68 µm/(m·K)', dT: '3 K' },
    choices: { heat: 'warm' },
    expect: {
      c: [() => as('68e-6 / K * 3 K * 1 m', 'cm'), 1e-9],
      dZ_w: [() => as('80 mm * 68e-6 / K * 3 K', 'mm'), 1e-9],
    },
  },
  {
    source: 'mathjs with units: a part 3 K warmer than while it printed',
    given: { Z_r: '80.1 mm', g_f: '0.1 mm', alpha: '68 µm/(m·K)', dT: '3 K' },
    choices: { heat: 'warm', drift: 'warmer' },
    expect: {
      c: [() => -as('68e-6 / K * 3 K * 1 m', 'cm'), 1e-9],
      dZ_w: [() => -as('80 mm * 68e-6 / K * 3 K', 'mm'), 1e-9],
    },
  },
  {
    source: 'mathjs with units: expansion of polycarbonate, 65 µm/(m·K), from 20 to 85 °C',
    given: { H: '150 mm', s: '0.04 mm', alpha: '65 µm/(m·K)', T_p: '85 °C', T_m: '20 °C' },
    choices: { plan: 'rod', plastic: 'pc' },
    expect: {
      c: [() => as('65e-6 / K * 65 K * 1 m', 'cm'), 1e-6],
      Z_w: [() => as('150.04 mm * (1 + 65e-6 / K * 65 K)', 'mm'), 1e-6],
    },
  },
  {
    source:
      'Both pieces cooled and pressed first, then stacked with the glue: as high as the whole would have been, cold',
    given: stacked,
    choices: { plan: 'glue', plastic: 'abs' },
    expect: {
      H_2: [() => secondPart(0.05), 2e-3],
      Z_k: [() => 100 - secondPart(0.05), 2e-3],
      x_2: [() => (secondPart(0.05) * 100 - 30) / 20 + 1, 0.01],
    },
  },
  {
    source:
      'Both pieces cooled, their first layers thicker than set, then stacked with the glue: as high as the whole would have been',
    given: stacked,
    choices: { plan: 'glue', plastic: 'abs', zero: 'far' },
    expect: {
      Z_c: [59.95, 1e-9],
      H_2: [() => secondPart(-0.05), 2e-3],
      Z_k: [() => 100 - secondPart(-0.05), 2e-3],
    },
  },
];
export default checks;

/** Drawn height of the second part, mm, by halving: glued, the pieces must stand as high as the whole one cooled. */
function secondPart(pressed: number): number {
  const cooled = (drawn: number): number => (drawn - pressed) / (1 + 90e-6 * 50);
  const wanted = cooled(100);
  let [low, high] = [0, 100];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (60 + 0.1 + cooled(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
