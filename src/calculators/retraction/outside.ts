import { evaluate, fraction, type Unit } from 'mathjs';
import type { OutsideProof } from '../../engine/outside';

const PROFILE = 'Speed profile of a power-law melt across the bore, summed by Simpson’s rule (no wall-rate formula)';
const SLICES = 'the cone cut into short bores, summed likewise';
const ALONE = 'the other nozzle worked as a nozzle of its own';
const TUBE = 'Push grown over 20 000 small bends, filament squeezed piece by piece';
const WALLS = 'arcs along the outer and the inner wall of a wavy tube measured in chords';
const BLEED = 'Pressure let down in small steps of time, the flow at each from the speed profile';

const by = (expression: string, unit: string): number => (evaluate(expression) as Unit).toNumber(unit);

/** Simpson's rule. */
function simpson(f: (x: number) => number, from: number, to: number, parts: number): number {
  const step = (to - from) / parts;
  let sum = f(from) + f(to);
  for (let i = 1; i < parts; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * step);
  return (sum * step) / 3;
}

/** Area of a circle of that diameter, chord by chord. */
function disc(d: number): number {
  const strips = 20_000;
  let sum = 0;
  for (let i = 0; i < strips; i += 1) sum += 2 * Math.sqrt(0.25 - ((i + 0.5) / strips - 0.5) ** 2);
  return (sum / strips) * d ** 2;
}

/** A line of 0.5 × 0.2 mm at 50 mm/s through 0.4 mm: 5 mm³/s. mm, N, s, Pa. */
const K = 8000;
const N = 0.45;
const Q = 5;
const AREA = disc(1.75);

/**
 * Fall of pressure along a bore, Pa/mm: the flow that a gradient of 1 drives, from stress over the radius, rate by the
 * power law and speed by adding up rates from the wall in (integrated by parts); a power law scales it to the flow wanted.
 */
function gradient(flow: number, R: number): number {
  const driven = simpson((rho) => Math.PI * rho ** 2 * (rho / 2 / K) ** (1 / N), 0, R, 200);
  return (flow / driven) ** N;
}
const rate = (flow: number, R: number): number => ((gradient(flow, R) * R) / 2 / K) ** (1 / N);
const land = (flow: number, R: number, l: number): number => gradient(flow, R) * l;
/** From 1 mm of radius down to R, half angle 30°. */
const cone = (flow: number, R: number): number =>
  simpson((z) => gradient(flow, R + z * Math.tan(Math.PI / 6)), 0, (1 - R) / Math.tan(Math.PI / 6), 600);

const here = { land: land(Q, 0.2, 0.6), cone: cone(Q, 0.2) };
const PRESSURE = here.land + here.cone;

/** Push at the drive and filament squeezed, mm: from the melt up, each bit of bend adds friction 0.1 times its angle. */
function pushed(pressure: number, friction: number, length: number, E: number) {
  const bends = 20_000;
  let force = (pressure / 1e6) * AREA;
  let squeezed = 0;
  for (let i = 0; i < bends; i += 1) {
    squeezed += (force * (1 + (friction * Math.PI) / bends / 2) * (length / bends)) / (E * AREA);
    force *= 1 + (friction * Math.PI) / bends;
  }
  return { force, squeezed };
}

/** Outer less inner wall over half a turn of changing radius, 2 mm of tube and 1.75 mm of filament: chords, mm. */
function slack(): number {
  const walk = (side: number): number => {
    const chords = 20_000;
    let [x, y, length] = [0, 0, 0];
    let before: readonly [number, number] | undefined;
    for (let i = 0; i <= chords; i += 1) {
      const angle = (Math.PI * i) / chords;
      const point = [x - side * 0.125 * Math.sin(angle), y + side * 0.125 * Math.cos(angle)] as const;
      if (before) length += Math.hypot(point[0] - before[0], point[1] - before[1]);
      before = point;
      const stretch = (120 * (1 + 0.5 * Math.sin(3 * angle)) * Math.PI) / chords;
      x += stretch * Math.cos(angle + Math.PI / chords / 2);
      y += stretch * Math.sin(angle + Math.PI / chords / 2);
    }
    return length;
  };
  return walk(-1) - walk(1);
}

/** 40 mm³ of melt under pressure, as filament, mm: each small rise takes its share of what is left of the volume. */
const melt = (pressure: number): number => (40 * (1 - (1 - pressure / 1.4e9 / 1000) ** 1000)) / AREA;

const tube = (pressure: number): number => pushed(pressure, 0.1, 500, 3500).squeezed + melt(pressure);
const head = (pressure: number): number => pushed(pressure, 0, 50, 2500).squeezed + melt(pressure);

/** Time in s and volume out in mm³ until the pressure is at `share`: volume stored goes with pressure, flow by the power law. */
function bleed(share: number): { time: number; out: number } {
  const stored = AREA * tube(PRESSURE);
  const dt = stored / Q / 5000;
  const whole = gradient(Q, 0.2);
  const flowAt = (y: number): number =>
    simpson((rho) => Math.PI * rho ** 2 * ((y * whole * rho) / 2 / K) ** (1 / N), 0, 0.2, 20);
  let [y, time, out] = [1, 0, 0];
  while (y > share) {
    const middle = y - (flowAt(y) / stored) * (dt / 2);
    const step = flowAt(middle) * dt;
    [y, time, out] = [y - step / stored, time + dt, out + step];
  }
  return { time, out };
}

/** Side by side: a round-ended line 0.5 wide and 0.2 high against its rectangle; percent less. */
const rounded = (): number =>
  100 * (1 - simpson((y) => 0.3 + 2 * Math.sqrt(Math.max(0, 0.01 - y ** 2)), -0.1, 0.1, 20_000) / 0.1);

/** Whole layers of h that stand in a height, counted up in exact fractions. */
function layers(h: string, height: string): number {
  let count = 0;
  while (
    fraction(h)
      .mul(count + 1)
      .compare(fraction(height)) <= 0
  )
    count += 1;
  return count;
}

const bled = bleed(0.5);

const base = {
  x_set: '6 mm ± 0',
  d: '0.4 mm ± 0',
  l: '0.6 mm ± 0',
  alpha: '30 deg ± 0',
  d_0: '2 mm ± 0',
  f_c: '1 ± 0',
  w: '0.5 mm ± 0',
  h: '0.2 mm ± 0',
  v: '50 mm/s ± 0',
  d_f: '1.75 mm ± 0',
  n: '0.45 ± 0',
  B: '1.4 GPa ± 0',
  V: '40 mm3 ± 0',
  s_b: '0.1 mm ± 0',
  a_lo: '0.5 mm',
  a_hi: '0.7 mm',
  d_2: '0.2 mm',
  D_t: '2 mm ± 0',
  Theta: '180 deg ± 0',
  phi: '0.5',
} as const;
const table = { ...base, K: '8000', beta: '0 ± 0', L: '500 mm ± 0', E: '3.5 GPa ± 0', mu_t: '0.1 ± 0' } as const;
const measured = { ...base, F_m: `${(PRESSURE / 1e6) * AREA} N ± 0` } as const;
const atHead = { ...measured, L: '50 mm ± 0', E: '2.5 GPa ± 0' } as const;
const near = (value: number, share = 1e-5): readonly [number, number] => [value, Math.abs(value) * share];

/** Pressure of a nozzle of half the bore: the land as long or half as long, at a flow. */
const narrow = (flow: number, l: number): number => land(flow, 0.1, l) + cone(flow, 0.1);

/** The other nozzle under both rules for its land; at the same speed, line and layer in proportion, flow goes as the area. */
const other = (rule: 'same' | 'scaled', l: number): OutsideProof => ({
  source: `${PROFILE}; ${ALONE}, land ${rule === 'same' ? 'as long' : 'half as long'}`,
  given: table,
  choices: { land: rule },
  expect: {
    k_q: near(land(Q, 0.1, l) / here.land),
    k_v: near(land(Q / 4, 0.1, l) / here.land),
    k_c: near(cone(Q, 0.1) / here.cone),
    x_q: near(tube(narrow(Q, l)) + slack() + 0.1, 1e-3),
    x_v: near(tube(narrow(Q / 4, l)) + slack() + 0.1, 1e-3),
  },
});

const checks: readonly OutsideProof[] = [
  {
    source:
      'mathjs units: 2 m a minute of a line 1 mm × 0.5 mm are a millilitre a minute; circle summed chord by chord',
    given: { ...table, w: '1 mm ± 0', h: '0.5 mm ± 0', v: '2000 mm/min ± 0' },
    expect: {
      Q: near(by('1 ml / minute', 'mm^3/s'), 1e-9),
      A_f: near(AREA),
      v_f: near(by('1 ml / minute', 'mm^3/s') / AREA),
    },
  },
  {
    source: `${PROFILE}; ${SLICES}`,
    given: table,
    expect: {
      r: [0.2, 1e-12],
      gamma_w: near(rate(Q, 0.2)),
      dp_l: near(here.land / 1e6),
      dp_c: near(here.cone / 1e6),
      dp: near(PRESSURE / 1e6),
      F: near((PRESSURE / 1e6) * AREA),
    },
  },
  {
    source: `${PROFILE}; ${SLICES}, and as much again for stretching: the push by which the consistency is found again`,
    given: { ...measured, f_c: '2 ± 0', F_m: `${((here.land + 2 * here.cone) / 1e6) * AREA} N ± 0` },
    choices: { source: 'force' },
    expect: { K_e: near(K), dp_c: near((2 * here.cone) / 1e6) },
  },
  {
    source: 'Geometric means: half-way up in logarithms from 8000 to three times as much is √(8000 · 24 000)',
    given: { ...table, f_K: '3', beta: '0.5 ± 0' },
    expect: { K_e: near(Math.sqrt(8000 * 24_000), 1e-9) },
  },
  {
    source: `${TUBE}; ${WALLS}; melt squeezed in a thousand small steps`,
    given: table,
    expect: {
      F_g: near(pushed(PRESSURE, 0.1, 500, 3500).force, 1e-4),
      s_f: near(pushed(PRESSURE, 0.1, 500, 3500).squeezed, 1e-4),
      s_t: near(slack()),
      // The melt stiffens as it is squeezed: half of 1.5 MPa over 1.4 GPa.
      s_m: near(melt(PRESSURE), 1e-3),
      x_r: near(tube(PRESSURE) + slack() + 0.1, 1e-4),
      x_lo: near(tube(PRESSURE) + slack() + 0.1 - 0.5, 1e-4),
      x_hi: near(tube(PRESSURE) + slack() + 0.1 + 0.7, 1e-4),
      x_d: near(6 - tube(PRESSURE) - slack() - 0.1, 1e-4),
    },
  },
  {
    source: 'mathjs units: Hooke’s law and bulk modulus on the push and the filament, drive on the hot end',
    given: atHead,
    choices: { drive: 'head', source: 'force' },
    expect: {
      F_g: near(by(`${PRESSURE} Pa * ${AREA} mm^2`, 'N')),
      s_f: near(by(`${PRESSURE} Pa * ${AREA} mm^2 * 50 mm / (2.5 GPa * pi * (1.75 mm)^2 / 4)`, 'mm')),
      s_m: near(by(`${PRESSURE} Pa * 40 mm^3 / (1.4 GPa) / ${AREA} mm^2`, 'mm')),
      x_r: near(head(PRESSURE) + 0.1, 1e-4),
    },
  },
  other('same', 0.6),
  other('scaled', 0.3),
  {
    source: BLEED,
    given: { ...table, v_t: '150 mm/s' },
    expect: {
      t_b: near(bled.time, 1e-3),
      x_b: near(150 * bled.time, 1e-3),
      V_o: near(bled.out, 1e-3),
    },
  },
  {
    source: `${PROFILE}, at half the pressure`,
    given: table,
    expect: {
      q_b: near(
        (100 * simpson((rho) => rho ** 2 * (rho / 2) ** (1 / N), 0, 0.2, 200)) /
          simpson((rho) => rho ** 2 * rho ** (1 / N), 0, 0.2, 200),
      ),
      gamma_b: near(((0.5 * gradient(Q, 0.2) * 0.2) / 2 / K) ** (1 / N)),
    },
  },
  {
    source:
      'Archimedes, On the Sphere and Cylinder: a ball is two thirds of its cylinder; the cylinder’s base summed chord by chord',
    given: { ...table, v_t: '9000 mm/min' },
    expect: {
      t_1: near(((2 / 3) * disc(0.4) * 0.4) / Q),
      x_1: near((150 * ((2 / 3) * disc(0.4) * 0.4)) / Q),
    },
  },
  {
    source: `${BLEED}; the same volume as a round thread 40 mm long, its section summed chord by chord`,
    given: { ...table, g: '40 mm' },
    expect: { d_s: near(Math.sqrt(bled.out / 40 / disc(1)), 1e-3) },
  },
  {
    source: 'Facts: three millimetres less two and a half are half a millimetre',
    given: { ...table, x_set: '3 mm', x_p: '2.5 mm' },
    expect: { dx_p: [0.5, 1e-9] },
  },
  {
    source: 'A round-ended line against its rectangle, summed strip by strip',
    given: table,
    expect: { q_r: near(rounded(), 1e-4) },
  },
  {
    source: 'mathjs units: 6 mm at 2.4 m a minute; two blocks of 5 ml at 1.24 g/ml',
    given: { ...table, v_x: '2400 mm/min', rho: '1.24 g/cm3 ± 0', b: '10 mm', h_b: '50 mm' },
    expect: {
      t_x: near(by('6 mm / (2.4 m / minute)', 's'), 1e-9),
      m_p: near(by('2 * 5 ml * 1.24 g / ml', 'g'), 1e-9),
    },
  },
  {
    source:
      'mathjs fractions: layers of 0.3 mm stacked until 10 mm is full. Common practice, no source: a side of four lines',
    given: { ...table, h: '0.3 mm ± 0', h_b: '10 mm' },
    expect: { N_t: [layers('0.3', '10'), 0], b_min: [2, 1e-9] },
  },
];
export default checks;
