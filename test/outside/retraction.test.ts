import { describe, expect, it } from 'vitest';
import * as math from 'mathjs';
import calc from '../../src/calculators/retraction/index';
import { plastics } from '../../src/calculators/retraction/materials';
import { systemFor } from '../../src/engine/system';
import { propagate } from '../../src/formula/propagate';
import { some } from '../support/sweep';

/** mathjs, units and all, with the answer as a number in `unit`. */
function inUnit(expression: string, unit: string): number {
  return (math.evaluate(expression) as math.Unit).toNumber(unit);
}

/** Base case of section 5 of the reference notes: 5 mm³/s through a 0.4 mm bore. SI. */
const base: Readonly<Record<string, number>> = {
  x_set: 4e-3, d: 0.4e-3, l: 0.6e-3, alpha: Math.PI / 6, d_0: 2e-3, h: 0.2e-3, w: 0.5e-3, v: 50e-3, d_f: 1.75e-3,
  K: 8000, f_K: 3, beta: 0, n: 0.45, gamma_min: 10, E: 3.5e9, B: 1.4e9, rho: 1240, L: 0.5, D_t: 2e-3,
  Theta: Math.PI, V: 40e-9, s_b: 0.1e-3, v_x: 40e-3, v_t: 150e-3, a_lo: 0.5e-3, a_hi: 2e-3, x_step: 0.5e-3,
  d_2: 0.2e-3, phi: 0.5, g: 40e-3, b: 8e-3, h_b: 10e-3, d_v: 0.05e-3, F_m: 4,
  f_c: 1, mu_t: 0, x_max: 7e-3, F_max: 60,
}; // prettier-ignore

const typical = { drive: 'tube', material: 'pla', source: 'table', land: 'same' };

/** Results of the calculator's own formulas, SI, with some inputs or options replaced. */
function results(changed: Readonly<Record<string, number>> = {}, choices: Readonly<Record<string, string>> = {}) {
  const inputs = Object.fromEntries(
    Object.entries({ ...base, ...changed }).map(([name, value]) => [
      name,
      { value, u: 0, shape: 'rectangular' as const },
    ]),
  );
  const outcomes = propagate(systemFor(calc, { ...typical, ...choices }), inputs);
  return (symbol: string): number => {
    const outcome = outcomes[symbol];
    if (!outcome?.ok) throw new Error(`${symbol} has no result`);
    return outcome.value;
  };
}

/** Simpson's rule on `parts` (even) intervals. */
function simpson(f: (x: number) => number, from: number, to: number, parts = 4000): number {
  const step = (to - from) / parts;
  let sum = f(from) + f(to);
  for (let i = 1; i < parts; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * step);
  return (sum * step) / 3;
}

const relative = (found: number, wanted: number): number => Math.abs(found / wanted - 1);

describe('flow through the land', () => {
  it('gives back its flow when the velocity profile is integrated, without the wall-rate formula', () => {
    // Independent road: stress falls linearly to the axis, rate = (stress / K)^(1/n), and Q = ∫ π ρ² · rate dρ
    // (integrated by parts, no slip); neither (3n+1)/(4n) nor 4Q/πr³ is used. Quadrature against closed form.
    for (const n of [0.36, 0.45, 0.5, 0.8, 1]) {
      const at = results({ n });
      const gradient = at('dp_l') / base.l!;
      const rate = (rho: number): number => ((gradient * rho) / 2 / base.K!) ** (1 / n);
      const flow = simpson((rho) => Math.PI * rho ** 2 * rate(rho), 0, base.d! / 2);
      expect(relative(flow, 5e-9), `n = ${n}`).toBeLessThan(1e-9);
    }
  });

  it('is Hagen and Poiseuille’s law at n = 1: a solved exercise on a needle', () => {
    // A solved physics exercise (justaaa.com/physics/224862, found by search): water, 1.0e-3 Pa·s, 1 g/s through 3.14 cm of 0.35 mm bore: 8.5e4 Pa (85 254.55).
    const at = results({ n: 1, K: 1.0e-3, d: 0.35e-3, l: 3.14e-2, w: 1e-3, h: 1e-3, v: 1 });
    expect(at('Q')).toBeCloseTo(1e-6, 15);
    expect(relative(at('dp_l'), 85254.55)).toBeLessThan(1e-6);
  });

  it('matches the section-5 figures; the quadrature above reaches the same pressures', () => {
    // References, section 5: 4Q/πr³ 795.8 1/s; 1038.9 1/s; 1.093 MPa; 0.946 MPa; Newtonian 4.775 MPa (tol 0.001).
    expect(results()('gamma_w')).toBeCloseTo(1038.9, 1);
    expect(results()('dp_l') / 1e6).toBeCloseTo(1.093, 3);
    expect(results({ K: 5000, n: 0.5 })('dp_l') / 1e6).toBeCloseTo(0.946, 3);
    expect(results({ K: 1000, n: 1 })('dp_l') / 1e6).toBeCloseTo(4.775, 3);
    expect(results({ K: 1000, n: 1 })('gamma_w')).toBeCloseTo(795.8, 1);
  });
});

describe('flow through the cone', () => {
  const cases = [
    { K: 8000, n: 0.45, printed: 0.414 },
    { K: 5000, n: 0.5, printed: 0.332 },
    { K: 1000, n: 1, printed: 0.912 },
  ];
  for (const { K, n, printed } of cases) {
    it(`is the land’s pressure gradient summed over slices (K ${K}, n ${n})`, () => {
      // mathjs evaluates the textbook capillary gradient 2 τ_w / R slice by slice; Simpson's rule adds them up.
      const slice = math.compile('2 * K / R * ((3 n + 1) / (4 n) * 4 Q / (pi * R^3))^n');
      const [r1, r0] = [base.d! / 2, base.d_0! / 2];
      const depth = (r0 - r1) / Math.tan(base.alpha!);
      const gradient = (z: number): number =>
        slice.evaluate({ K, n, Q: 5e-9, R: r0 - z * Math.tan(base.alpha!) }) as number;
      const summed = simpson(gradient, 0, depth);
      const found = results({ K, n })('dp_c');
      expect(relative(found, summed)).toBeLessThan(1e-8);
      // References, section 5, tol 0.001.
      expect(Math.abs(found / 1e6 - printed)).toBeLessThan(0.001);
    });
  }
});

describe('a nozzle change', () => {
  it('at equal flow: 0.2 against 0.4 mm, the land’s pressure ratio is 2^(3n+1), one power of two less when the land scales', () => {
    for (const n of [0.32, 0.36, 0.45, 0.76, 1]) {
      const wide = results({ n, d: 0.4e-3 });
      // The other nozzle worked as a nozzle of its own, by the land formula; the ratio formula is not used.
      const narrow = results({ n, d: 0.2e-3 });
      expect(narrow('Q')).toBe(wide('Q'));
      expect(relative(narrow('dp_l') / wide('dp_l'), 2 ** (3 * n + 1))).toBeLessThan(1e-12);
      expect(relative(wide('k_q'), 2 ** (3 * n + 1))).toBeLessThan(1e-12);
      const short = results({ n, d: 0.2e-3, l: 0.3e-3 });
      expect(relative(short('dp_l') / wide('dp_l'), 2 ** (3 * n))).toBeLessThan(1e-12);
      expect(relative(results({ n }, { land: 'scaled' })('k_q'), 2 ** (3 * n))).toBeLessThan(1e-12);
    }
  });

  it('has the published ratio from 0.2 to 0.3 mm radius: 1.5^(3n+1) = 2.593 at n 0.45', () => {
    // References, section 5, tol 0.001.
    expect(results({ d: 0.4e-3, d_2: 0.6e-3 })('k_q') ** -1).toBeCloseTo(2.593, 3);
  });

  for (const land of ['same', 'scaled']) {
    it(`gives the retraction length of the other nozzle worked by itself (land ${land})`, () => {
      const here = results({}, { land });
      const l = land === 'same' ? base.l! : base.l! / 2;
      expect(relative(here('x_q'), results({ d: 0.2e-3, l })('x_r'))).toBeLessThan(1e-12);
      const scaledLine = { d: 0.2e-3, l, w: base.w! / 2, h: base.h! / 2 };
      expect(relative(here('k_v'), results(scaledLine)('dp_l') / here('dp_l'))).toBeLessThan(1e-12);
      expect(relative(here('x_v'), results(scaledLine)('x_r'))).toBeLessThan(1e-12);
    });
  }

  it('has the cone’s ratio of the other nozzle worked by itself, and none where that is wider than the inlet', () => {
    for (const d_2 of [0.2e-3, 0.6e-3, 1.9e-3]) {
      expect(relative(results({ d_2 })('k_c'), results({ d: d_2 })('dp_c') / results()('dp_c'))).toBeLessThan(1e-9);
    }
    for (const symbol of ['k_c', 'x_q', 'x_v']) expect(() => results({ d_2: 2.5e-3 })(symbol)).toThrow('no result');
    expect(results({ d_2: 2.5e-3 })('x_r')).toBe(results()('x_r'));
  });

  it('keeps its ratio when the consistency is off by three either way', () => {
    expect(results({ beta: 1 })('dp') / results({ beta: -1 })('dp')).toBeCloseTo(9, 9);
    expect(results({ beta: 1 })('k_q')).toBe(results({ beta: -1 })('k_q'));
  });
});

describe('what is stored', () => {
  it('takes up Θ (D − d) of slack in a tube of any bend: arc lengths measured along two wavy walls', () => {
    // Direct measurement: centre lines offset to either side of a curve of changing radius, cut into 20 000 chords.
    const clearance = (base.D_t! - base.d_f!) / 2;
    for (const radius of some([0.03, 0.12, 0.4], 3)) {
      const turned = Math.PI;
      const chords = 20_000;
      const walk = (side: number): number => {
        let [x, y, length] = [0, 0, 0];
        let before: readonly [number, number] | undefined;
        for (let i = 0; i <= chords; i += 1) {
          const angle = (turned * i) / chords;
          const here = [x - side * clearance * Math.sin(angle), y + side * clearance * Math.cos(angle)] as const;
          if (before) length += Math.hypot(here[0] - before[0], here[1] - before[1]);
          before = here;
          const local = radius * (1 + 0.5 * Math.sin(3 * angle));
          const middle = angle + turned / chords / 2;
          x += (local * turned * Math.cos(middle)) / chords;
          y += (local * turned * Math.sin(middle)) / chords;
        }
        return length;
      };
      expect(relative(walk(-1) - walk(1), results()('s_t')), `radius ${radius}`).toBeLessThan(1e-5);
    }
    // References, section 5: 0.785 and 0.471 mm (bore 2.0 and 1.9 mm, 180°), tol 0.001.
    expect(results()('s_t') * 1e3).toBeCloseTo(0.785, 3);
    expect(results({ D_t: 1.9e-3 })('s_t') * 1e3).toBeCloseTo(0.471, 3);
  });

  it('agrees with mathjs units on filament and force', () => {
    // References, section 5: area 2.4053 mm², 2.079 mm/s, 12.03 N at 5 MPa, 1.188 mm (20 N, 500 mm, 3.5 GPa);
    // worked again by mathjs with units, so that a slipped factor of ten shows.
    const area = inUnit('pi * (1.75 mm)^2 / 4', 'mm^2');
    expect(results()('A_f') * 1e6).toBeCloseTo(area, 9);
    expect(area).toBeCloseTo(2.4053, 4);
    const feed = inUnit('5 mm^3/s / (pi * (1.75 mm)^2 / 4)', 'mm/s');
    expect(feed).toBeCloseTo(2.079, 3);
    expect(results()('v_f') * 1e3).toBeCloseTo(feed, 9);
    const pushed = results({ F_m: 20 }, { source: 'force' });
    const squeezed = inUnit('20 N * 500 mm / (3.5 GPa * pi * (1.75 mm)^2 / 4)', 'mm');
    expect(squeezed).toBeCloseTo(1.188, 3);
    expect(pushed('s_f') * 1e3).toBeCloseTo(squeezed, 9);
    const melt = inUnit('20 N / (pi * (1.75 mm)^2 / 4)^2 * 40 mm^3 / (1.4 GPa)', 'mm');
    expect(pushed('s_m') * 1e3).toBeCloseTo(melt, 9);
    expect(pushed('F')).toBeCloseTo(20, 9);
    expect(relative(pushed('dp_l') + pushed('dp_c'), 20 / (area * 1e-6))).toBeLessThan(1e-12);
  });
});

describe('the friction of the tube', () => {
  it('raises the push by the capstan’s factor: 1.369 at 0.1 over half a turn', () => {
    // References, section 5 (Machinery's Handbook), tol 0.001; that round a tube of many short bends is the product.
    expect(results({ mu_t: 0.1 })('F_g') / results({ mu_t: 0.1 })('F')).toBeCloseTo(1.369, 3);
    expect(results({ mu_t: 0 })('F_g')).toBe(results({ mu_t: 0 })('F'));
    const bends = 20_000;
    const product = (1 + (0.2 * 3) / bends) ** bends;
    const long = results({ mu_t: 0.2, Theta: 3 });
    expect(relative(long('F_g') / long('F'), product)).toBeLessThan(2e-5);
  });

  // The push summed piece by piece along the tube, by mathjs's exponential; Simpson's three points are not used.
  for (const { x, off } of [
    { x: 0, off: 1e-12 },
    { x: 0.1 * Math.PI, off: 1e-5 },
    { x: 2, off: 0.005 },
    { x: 3, off: 0.0221 },
  ]) {
    it(`compresses the filament under the mean of the push (μΘ ${x.toFixed(2)})`, () => {
      const pieces = 20_000;
      const grown = math.compile('exp(x * s)');
      let mean = 0;
      for (let i = 0; i < pieces; i += 1) mean += (grown.evaluate({ x, s: (i + 0.5) / pieces }) as number) / pieces;
      const found = results({ mu_t: x / Math.PI })('s_f') / results()('s_f');
      expect(found / mean).toBeGreaterThan(1 - 1e-8);
      expect(found / mean).toBeLessThan(1 + off);
    });
  }

  it('is nothing to a drive on the hot end', () => {
    const head = { drive: 'head' };
    expect(results({ mu_t: 0.3 }, head)('s_f')).toBe(results({}, head)('s_f'));
    expect(results({ mu_t: 0.3 }, head)('F_g')).toBe(results({}, head)('F'));
  });
});

describe('the stretching of the melt', () => {
  it('multiplies the cone’s pressure, and a measured push is still explained by the two together', () => {
    expect(relative(results({ f_c: 2 })('dp_c'), 2 * results()('dp_c'))).toBeLessThan(1e-12);
    expect(results({ f_c: 2 })('dp_l')).toBe(results()('dp_l'));
    const pushed = results({ f_c: 2 }, { source: 'force' });
    expect(relative(pushed('F'), base.F_m!)).toBeLessThan(1e-12);
    // The cone's part of the pressure, twice as large against the land's.
    const plain = results({}, { source: 'force' });
    expect(relative(pushed('dp_c') / pushed('dp_l'), (2 * plain('dp_c')) / plain('dp_l'))).toBeLessThan(1e-12);
  });
});

describe('bleeding', () => {
  for (const n of some([0.76, 0.45, 0.36], 3)) {
    it(`takes the time that stepping dp/dt through mathjs’s solver takes (n ${n})`, () => {
      const at = results({ n });
      const stored = at('A_f') * (at('s_f') + at('s_m'));
      // y: pressure over its first value; x: time over the time constant C p / Q. Flow in a power-law tube goes as
      // y^(1/n). mathjs tries the whole span as its first step; that lands below zero pressure, gives NaN, and never
      // recovers (seen with 15.2.0), hence a short first step.
      const slope = (_: number, y: readonly number[]): number[] => [-((y[0] ?? NaN) ** (1 / n))];
      const T = (at('t_b') * at('Q')) / stored;
      const options = '{tol: 1e-10, firstStep: T / 100}';
      const solved = math.evaluate(`solveODE(f, [0, T], [1], ${options})`, { f: slope, T }) as { y: math.Matrix };
      const pressures = (solved.y.toArray() as number[][]).map(([y]) => y);
      expect(pressures.length).toBeGreaterThan(50);
      expect(pressures.at(-1)).toBeCloseTo(0.5, 8);
      // What flows out meanwhile, at the closed form's own pressures, is what the stored volume loses.
      const time = (y: number): number => results({ n, phi: y })('t_b');
      const flows = Array.from({ length: 201 }, (_, i) => 1 - i / 400).map((y) => ({
        t: y === 1 ? 0 : time(y),
        q: at('Q') * y ** (1 / n),
      }));
      const out = flows.slice(1).reduce((sum, next, i) => {
        const last = flows[i]!;
        return sum + ((next.q + last.q) / 2) * (next.t - last.t);
      }, 0);
      expect(relative(out, at('V_o'))).toBeLessThan(1e-4);
    });
  }
});

describe('flow values', () => {
  it('for PLA are the tangent to the cited curve between 100 and 1000 1/s at 210 °C', () => {
    // Cross–WLF constants from the reference notes (from memory, one moulding grade), evaluated by mathjs.
    const zero = math.evaluate('3.31719e9 * exp(-20.194 * (483.15 - 373.15) / (51.6 + 483.15 - 373.15))') as number;
    const eta = (rate: number): number =>
      math.evaluate('z / (1 + (z * g / 1.00861e5)^0.75)', { z: zero, g: rate }) as number;
    expect(zero).toBeCloseTo(3556, -1);
    expect(eta(100)).toBeCloseTo(995, 0);
    expect(eta(1000)).toBeCloseTo(230, 0);
    const n = 1 + Math.log10(eta(1000) / eta(100));
    const K = eta(100) * 100 ** (1 - n);
    const [given, half] = plastics.pla.set.n;
    expect(Math.abs(n - given)).toBeLessThan(0.005);
    expect(relative(plastics.pla.set.K, K)).toBeLessThan(0.01);
    // The published power-law index 0.32 (Materials 2023, 16(24), 7664, Table 1) lies on the edge of the half-width.
    expect(given - half).toBeLessThanOrEqual(0.32 + 1e-12);
  });

  it('for ABS are the middle of the published range', () => {
    // Materials 2023, 16(24), 7664, Table 1: n 0.42 to 0.49, K 6678 to 12 189 Pa·sⁿ.
    const [n, half] = plastics.abs.set.n;
    expect([n - half, n + half].map((end) => Number(end.toFixed(6)))).toEqual([0.42, 0.49]);
    expect(relative(plastics.abs.set.K, Math.sqrt(6678 * 12189))).toBeLessThan(0.01);
  });
});
