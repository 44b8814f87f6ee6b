import { evaluate, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const UNITS = 'mathjs with units: ';
const CLOCK = 'A print run second by second in a loop, its feed cut off at a given moment: ';
const STEPS = 'Flow out of a melt that runs dry, stepped through time (Runge–Kutta, no exponential): ';

const as = (text: string, to: string): number => (evaluate(text) as Unit).toNumber(to);
/** Bare result of an expression in which all units cancel. */
const bare = (text: string): number => Number(evaluate(text));

/** 0.2 mm × 0.5 mm lines at 50 mm/s, 60 s a layer, 48 of them laying plastic. */
const job = {
  h: '0.2 mm',
  h_1: '0.3 mm',
  w: '0.5 mm',
  v: '50 mm/s',
  t_L: '60 s ± 0',
  q_x: '80 %',
  d_f: '1.75 mm',
  rho: '1.25 g/cm³',
} as const;
const whole = 450;
const H_t = `${(30 + (whole - 1) * 20) / 100} mm`;

/** Layers laid and sound, and the Z reached, of a print whose feed fails and that is stopped later; times in s. */
function run(fails: number, stops: number) {
  let [sound, layer, z, fed] = [0, 1, 30, 0];
  for (let second = 1; second <= stops; second += 1) {
    if (second <= fails) fed += second % 60 < 48 ? 1 : 0;
    if (second % 60 === 0) {
      if (second <= fails) sound = layer;
      if (second < stops) {
        layer += 1;
        z += 20;
      }
    }
  }
  return { sound, layer, z: z / 100, fed };
}

/** Time until the flow out of a store has fallen to a share: dV/dt = −Q·V/V_o. */
function dry(first: number, store: number, share: number): number {
  const dt = 1e-3;
  const rate = (V: number): number => (-first * V) / store;
  let [V, t] = [store, 0];
  while (V > share * store) {
    const a = rate(V);
    const b = rate(V + (dt / 2) * a);
    const c = rate(V + (dt / 2) * b);
    V += (dt / 6) * (a + 2 * b + 2 * c + rate(V + dt * c));
    t += dt;
  }
  return t;
}

/** Fails at the end of layer 400, stopped at the end of layer 420. */
const found = run(400 * 60, 420 * 60);
const lost = found.layer - found.sound;
const stopped = `${found.z} mm`;

const checks: readonly OutsideProof[] = [
  {
    source: `${UNITS}flow, feed and filament of a layer`,
    given: { ...job, Z_s: stopped, H_t, G: '4 mm' },
    expect: {
      Q: [as('0.2 mm * 0.5 mm * 50 mm/s', 'mm^3/s'), 1e-9],
      A_f: [as('pi / 4 * (1.75 mm)^2', 'mm^2'), 1e-9],
      v_f: [as('0.2 mm * 0.5 mm * 50 mm/s / (pi / 4 * (1.75 mm)^2)', 'mm/s'), 1e-9],
      V_L: [as('0.2 mm * 0.5 mm * 50 mm/s * 48 s', 'mm^3'), 1e-9],
      l_L: [as('0.2 mm * 0.5 mm * 50 mm/s * 48 s / (pi / 4 * (1.75 mm)^2)', 'mm'), 1e-9],
      m_L: [as('0.2 mm * 0.5 mm * 50 mm/s * 48 s * 1.25 g/cm^3', 'g'), 1e-9],
      l_l: [as('20 * 0.2 mm * 0.5 mm * 50 mm/s * 48 s / (pi / 4 * (1.75 mm)^2)', 'm'), 1e-9],
    },
  },
  {
    source:
      'Values worked out beforehand with another program: filament of 1.75 mm has 2.4053 mm²; 5 mm³/s are 2.079 mm/s of it',
    given: { ...job, Z_s: stopped, H_t, G: '4 mm' },
    expect: { A_f: [2.4053, 0.00005], v_f: [2.079, 0.0005] },
  },
  ...(
    [
      ['gap', { G: `${(lost * 20) / 100} mm` }],
      ['delay', { t_d: '20 min' }],
      // As much of the whole's plastic as there were seconds of feed.
      ['fed', { m_f: `${found.fed / 48} g`, m_t: `${whole} g`, k_u: '1' }],
    ] as const
  ).map(([by, known]): OutsideProof => {
    return {
      source: `${CLOCK}known by ${by}`,
      given: { ...job, ...known, Z_s: stopped, H_t },
      choices: { by },
      expect: {
        n_s: [found.layer, 1e-6],
        n_t: [whole, 1e-6],
        n_g: [found.sound, 1e-6],
        n_l: [lost, 1e-6],
        z_l: [(lost * 20) / 100, 1e-6],
        Z_g: [(30 + (found.sound - 1) * 20) / 100, 1e-6],
        t_p: [(found.sound * 60) / 3600, 1e-6],
        t_r: [((whole - found.sound) * 60) / 3600, 1e-6],
        t_a: [(whole * 60) / 3600, 1e-6],
      },
    };
  }),
  {
    source: `${STEPS}12 mm³ from 5 mm³/s down to a tenth`,
    given: { ...job, Z_s: stopped, H_t, G: '4 mm', V: '40 mm³', q_o: '30 %', q_e: '10 %' },
    expect: {
      V_o: [12, 1e-9],
      // Falling to 1/e takes one time constant.
      tau: [() => dry(5, 12, Math.exp(-1)), 2e-3],
      t_o: [() => dry(5, 12, 0.1), 2e-3],
      z_b: [() => (0.2 * dry(5, 12, 0.1)) / 48, 1e-4],
    },
  },
  {
    source:
      'Bond area of a layer’s lines added up one by one, 0.15 mm wide in place of 0.5 mm; common practice for what they hold',
    given: { ...job, Z_s: stopped, H_t, G: '4 mm', b_m: '2 mm', w_b: '0.15 mm', k_b: '75 %', j_c: '60 %', j_g: '70 %' },
    choices: { band: 'left' },
    expect: {
      z_b: [2, 1e-9],
      s_b: [() => 75 * bonded(0.15), 1e-9],
      s_r: [() => 75 * bonded(0.15), 1e-9],
      s_g: [70, 1e-9],
    },
  },
  {
    source:
      'Common practice, no source: new plastic on a cold top holds about 60 % of a sound layer; a wide band left in no less',
    given: { ...job, Z_s: stopped, H_t, G: '4 mm', b_m: '2 mm', w_b: '0.5 mm', k_b: '90 %', j_c: '60 %' },
    choices: { band: 'left' },
    expect: { s_b: [90, 1e-9], s_r: [60, 1e-9] },
  },
  {
    source: 'Common practice, no source: PLA, 60 % on a cold top, 60 % glued; a band of 1 mm, as measured',
    given: { ...job, Z_s: stopped, H_t, G: '4 mm', b_m: '1 mm' },
    choices: { band: 'trim' },
    expect: { s_r: [60, 1e-9], s_g: [60, 1e-9], z_b: [1, 1e-9] },
  },
  {
    source:
      'Common practice, no source: what holds a person, heat, mains or a raised load gets no seam; two pieces meet in one',
    given: { ...job, Z_s: stopped, H_t, G: '4 mm' },
    choices: { duty: 'safety' },
    expect: { n_j: [1, 1e-12], n_0: [0, 1e-12] },
  },
  {
    source: `${UNITS}hours, plastic and money of the three ways`,
    given: {
      ...job,
      Z_s: stopped,
      H_t,
      G: '4 mm',
      c_s: '24',
      m_s: '750 g',
      r_m: '0.6',
      r_h: '18',
      c_g: '2',
      t_hr: '30 min',
      t_hg: '45 min',
      t_hn: '10 min',
      p_r: '20 %',
      p_g: '10 %',
    },
    expect: {
      T_r: [as('50 * 60 s + 30 minute', 'hour'), 1e-9],
      T_g: [as('50 * 60 s + 45 minute', 'hour'), 1e-9],
      T_n: [as('450 * 60 s + 10 minute', 'hour'), 1e-9],
      m_r: [as('50 * 240 mm^3 * 1.25 g/cm^3', 'g'), 1e-9],
      m_a: [as('450 * 240 mm^3 * 1.25 g/cm^3', 'g'), 1e-9],
      C_n: [bare(spent(450, 10)), 1e-9],
      C_r: [bare(`${spent(50, 30)} + 0.2 * (${spent(450, 10)})`), 1e-9],
      C_g: [bare(`${spent(50, 45)} + 2 + 0.1 * (${spent(450, 10)})`), 1e-9],
    },
  },
];
export default checks;

/** Share of a layer's bond area that thin lines keep: a hundred lines of 0.5 mm pitch, one by one. */
function bonded(width: number): number {
  let [thin, full] = [0, 0];
  for (let i = 0; i < 100; i += 1) {
    thin += width * 10;
    full += 0.5 * 10;
  }
  return thin / full;
}

/** Money for so many layers and minutes of work, as an expression with units. */
function spent(layers: number, minutes: number): string {
  return `${layers} * 240 mm^3 * 1.25 g/cm^3 / (750 g) * 24 + ${layers} * 60 s / (1 hour) * 0.6 + ${minutes} minute / (1 hour) * 18`;
}
