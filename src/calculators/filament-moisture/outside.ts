import * as math from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const BESSEL = 'Crank’s series summed with 3000 zeros of J₀ from scipy 1.17';
const SHELLS =
  'The strand cut into rings, water carried from ring to ring in small steps (finite volumes, extrapolated)';

const room = { T: '20 °C', U: '50 %' } as const;
/** 10⁻¹² m²/s, 1.75 mm, air all round. */
const strand = {
  ...room,
  d_f: '1.75 mm',
  k_s: '1',
  D_1: '1e-12 m²/s',
  b: '0',
  T_1: '50 °C',
  T_b: '50 °C',
} as const;
/** Hours at which x has this value for that strand. */
const hoursAt = (x: number): string => `${(x * 0.000875 ** 2) / 1e-12 / 3600} h`;

const DRIED = 0.08;
/** Water of 0.8 %, of which the oven's air holds 0.1 %, after x = 0.08. */
const left = 0.1 + 0.7 * stillIn(DRIED);

const checks: readonly OutsideProof[] = [
  {
    source: 'OpenStax, Chemistry, reaction rates: what doubles from 25 to 35 °C has 52.9 kJ/mol (from memory)',
    given: { ...room, D_1: '1e-12 m²/s', b: '0', T_1: '25 °C', T_b: '35 °C', E_a: '52.9 kJ/mol' },
    expect: { D: [2, 0.01] },
  },
  {
    source:
      'OpenStax, Chemistry, reaction rates: what doubles from 25 to 35 °C has 52.9 kJ/mol; in a room (from memory)',
    given: { T: '35 °C', U: '50 %', t_o: '1 h', D_1: '1e-13 m²/s', b: '1', T_1: '25 °C', E_a: '52.9 kJ/mol' },
    choices: { ask: 'store' },
    expect: { D: [2, 0.01] },
  },
  {
    source: 'OpenStax, Chemistry, reaction rates: the same in an oven, from ten times a tenth (from memory)',
    given: { ...room, D_1: '1e-13 m²/s', b: '1', T_1: '25 °C', T_b: '35 °C', E_a: '52.9 kJ/mol' },
    expect: { D: [2, 0.01] },
  },
  {
    source: `${BESSEL}: 30 % are left at 0.145344`,
    given: { ...strand, q: '30 %' },
    expect: { x_q: [0.145344, 5e-5] },
  },
  {
    source: `${BESSEL}: 96.8285 % are left at 0.0002`,
    given: { ...strand, D_1: '1e-13 m²/s', t: hoursAt(0.002) },
    expect: { q_s: [96.828515456, 1e-6], q_t: [96.828515456, 1e-6] },
  },
  {
    source: `${BESSEL}: 0.0118 % are left at 1.5`,
    given: { ...strand, t: hoursAt(1.5) },
    expect: { q_t: [0.0118164, 1e-6] },
  },
  {
    source: 'Crank’s series, the first four terms alone with the zeros of J₀ from scipy 1.17, at 0.005',
    given: { ...strand, t: hoursAt(0.005) },
    expect: { q_l: [83.575323, 1e-4] },
  },
  {
    source: 'Fact: half a kilogram that loses 5 g loses 1 %',
    given: { ...strand, t: hoursAt(DRIED), m_1: '705 g', m_2: '700 g', m_s: '200 g', W_s: '2 %' },
    choices: { ask: 'weigh' },
    expect: { w_l: [1, 1e-9] },
  },
  ...(
    [
      ['50 %', 0.0631, 13.4],
      ['36.788 %', 0.1113, 23.7],
      ['10 %', 0.3344, 71.1],
      ['5 %', 0.4543, 96.6],
      ['1 %', 0.7325, 155.8],
    ] as const
  ).flatMap(([q, x, hours]): OutsideProof[] => {
    const oven: OutsideProof = {
      source: BESSEL,
      given: { ...strand, t: hoursAt(x) },
      expect: { x: [x, 1e-9], q_t: [parseFloat(q), 0.016], a: [0.875, 1e-12] },
    };
    const needed: OutsideProof = {
      source: BESSEL,
      given: { ...strand, q },
      expect: { x_1: [x, 1e-4], x_q: [x, 1e-4], t_q: [hours, 0.005 * hours] },
    };
    // The inverse is offered up to 30 % left.
    return parseFloat(q) <= 30 ? [oven, needed] : [oven];
  }),
  ...(
    [
      [0.01, 0.2155],
      [0.05, 0.4521],
      [0.1, 0.6058],
      [0.2, 0.7822],
      [0.4, 0.9316],
    ] as const
  ).map(([x, taken]): OutsideProof => {
    const form = x < 0.03 ? 'q_s' : 'q_l';
    return {
      source: BESSEL,
      given: { T: '50 °C', U: '50 %', d_f: '1.75 mm', k_s: '1', D_1: '1e-12 m²/s', b: '0', T_1: '50 °C', t_o: hoursAt(x), W_s: '2 %' }, // prettier-ignore
      choices: { ask: 'store' },
      expect: {
        x: [x, 1e-9],
        x_s: [x, 1e-9],
        x_l: [x, 1e-9],
        [form]: [100 * (1 - taken), 0.01],
        q_t: [100 * (1 - taken), 0.01],
        // Half of 2 % is where it ends in air of 50 %.
        W_o: [taken, 1e-4],
      },
    };
  }),
  {
    source: SHELLS,
    given: { ...strand, t: hoursAt(0.03) },
    expect: { q_s: [() => 100 * stillIn(0.03), 0.03], q_t: [() => 100 * stillIn(0.03), 0.02] },
  },
  {
    source: SHELLS,
    given: { ...strand, t: hoursAt(0.2), q: '21.785 %', U_0: '40 %', W_s: '2 %' },
    expect: {
      q_l: [() => 100 * stillIn(0.2), 0.01],
      t_q: [() => (0.2 * 0.000875 ** 2) / 1e-12 / 3600, 0.02],
      u_e: [() => 100 * held(), 0.1],
      Q: [() => 100 * (held() + (1 - held()) * stillIn(0.2)), 0.1],
      W_e: [() => 2 * 0.4 * (held() + (1 - held()) * stillIn(0.2)), 0.001],
    },
  },
  {
    source:
      'Vapour pressures by another formula, 6.116441 · 10^(7.591386 t / (t + 240.7263)) hPa, maximum error 0.083 % from −20 to 50 °C',
    given: { ...strand },
    expect: {
      e_w: [() => other(20), 0.07],
      e_b: [() => other(50), 0.3],
      U_b: [() => (50 * other(20)) / other(50), 0.02],
    },
  },
  {
    source: 'The Fahrenheit scale: 140 °F less 9 °F is 131 °F',
    given: { ...strand, T_g: '140 °F', m_T: '9 °F' },
    expect: { T_max: [((131 - 32) * 5) / 9, 1e-9] },
  },
  {
    source: 'mathjs units: 2 · 10⁻¹¹ m²/s, 2 days, 2.85 mm, half as fast on the spool',
    given: { ...strand, D_1: '2e-11 m²/s', t: '48 h', d_f: '2.85 mm', k_s: '2' },
    expect: {
      a: [1.425, 1e-12],
      x: [() => math.evaluate('(2e-11 m^2/s) * (2 day) / (2 * (1.425 mm)^2)') as number, 1e-9],
    },
  },
  {
    source: `${SHELLS}: 1 kg that held 8 g of water, of which 1 g stays for the oven’s air`,
    given: {
      ...strand,
      t: hoursAt(DRIED),
      // The oven's air then holds 0.1 % of the dry mass.
      W_s: `${(0.1 * 2 * other(50)) / other(20)} %`,
      m_1: '1208 g',
      m_2: `${1200 + 10 * left} g`,
      m_s: '200 g',
    },
    choices: { ask: 'weigh' },
    expect: {
      w_l: [0.8 - left, 0.005 * (0.8 - left)],
      W_x: [0.7, 0.005],
      W_2: [left, 0.005 * left],
      W_0: [0.8, 0.006],
    },
  },
];
export default checks;

/** Saturation pressure by the other formula, hPa at °C. */
function other(t: number): number {
  return 6.116441 * 10 ** ((7.591386 * t) / (t + 240.7263));
}

/** Share of the water of air of 40 % that the oven's air holds. */
function held(): number {
  return (0.5 * other(20)) / other(50) / 0.4;
}

/** Mean share left in a cylinder of radius 1 with its surface dry, after the time x, from `rings` rings of equal width. */
function cutInto(rings: number, x: number): number {
  const width = 1 / rings;
  const steps = Math.ceil(x / (0.2 * width ** 2));
  const dt = x / steps;
  const share = new Array<number>(rings).fill(1);
  for (let step = 0; step < steps; step += 1) {
    let inward = 0;
    for (let i = 0; i < rings; i += 1) {
      const here = share[i] ?? 0;
      // The surface lies half a ring's width from the last ring's middle.
      const slope = i + 1 < rings ? (here - (share[i + 1] ?? 0)) / width : here / (width / 2);
      const outward = (i + 1) * width * slope;
      share[i] = here + (dt * (inward - outward)) / ((i + 0.5) * width ** 2);
      inward = outward;
    }
  }
  return share.reduce((sum, s, i) => sum + s * (2 * i + 1) * width ** 2, 0);
}

/** The same with the error of the width, which falls with its square, taken out. */
function stillIn(x: number): number {
  return (4 * cutInto(120, x) - cutInto(60, x)) / 3;
}
