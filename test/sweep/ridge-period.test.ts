import { divide, fraction, multiply, type Fraction } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { evaluate, type Evaluation } from '../../src/engine/evaluate';
import calc from '../../src/calculators/ridge-period/index';
import { rank, type Ranking } from '../../src/calculators/ridge-period/model';
import { generator, situation } from '../support/calculators';
import { times } from '../support/sweep';

const work = (given: Readonly<Record<string, string>>, choices: Readonly<Record<string, string>> = {}): Evaluation =>
  evaluate(calc, situation(calc, given, choices));

const ranked = (found: Evaluation): Ranking =>
  rank({
    known: (symbol) => {
      const outcome = found.outcomes[symbol];
      return outcome?.ok ? outcome : undefined;
    },
    choices: found.choices,
  });

const fitting = (found: Evaluation): string[] =>
  ranked(found)
    .lines.filter((line) => line.fits)
    .map((line) => line.part.id)
    .sort();

const mm = (found: Evaluation, symbol: string): number => {
  const outcome = found.outcomes[symbol];
  if (!outcome?.ok) throw new Error(`${symbol} has no result`);
  return outcome.value * 1e3;
};

describe('the beat of layers against full steps, by whole-number arithmetic (mathjs fractions, brute force)', () => {
  const cases = ['8', '2', '4', '1.5', '5.08', '6.35'].flatMap((P_h) =>
    ['0.05', '0.1', '0.12', '0.125', '0.13', '0.2', '0.25', '0.3'].flatMap((h) =>
      ['1.8', '0.9', '7.5'].map((theta_s) => ({ P_h, h, theta_s })),
    ),
  );

  /** Thickness of each layer in steps, its top rounded to the nearest step, halves up, until the pattern begins again. */
  function simulated(h: string, P_h: string, theta_s: string): number[] {
    const q = divide(multiply(fraction(P_h), fraction(theta_s)), fraction(360)) as Fraction;
    const n = divide(fraction(h), q) as unknown as Fraction;
    const [numerator, denominator] = [n.n, n.d];
    const top = (i: bigint): bigint => (2n * i * numerator + denominator) / (2n * denominator);
    const thickness: number[] = [];
    for (let i = 0n; i === 0n || (i * numerator) % denominator !== 0n; i += 1n)
      thickness.push(Number(top(i + 1n) - top(i)));
    return thickness;
  }

  it('the mean spacing of odd layers and the repeat are those of the simulated layers', () => {
    let odd = 0;
    let repeats = 0;
    for (const { P_h, h, theta_s } of cases) {
      const layers = simulated(h, P_h, theta_s);
      if (layers.length > 1000) continue;
      const found = work({ P_w: '1 mm', P_h: `${P_h} mm`, h: `${h} mm`, theta_s: `${theta_s} deg` }, { by: 'direct' });
      const lines = ranked(found).lines;
      const thick = Math.max(...layers);
      const share = layers.filter((layer) => layer === thick).length;
      const rare = Math.min(share, layers.length - share);
      if (rare === 0) {
        expect(lines.map((line) => line.part.id)).not.toContain('odd');
        expect(mm(found, 'k_odd')).toBeCloseTo(0, 6);
        continue;
      }
      const spacing = (layers.length * Number(h)) / rare;
      expect(lines.find((line) => line.part.id === 'odd')!.period * 1e3).toBeCloseTo(spacing, 9);
      odd += 1;
      const repeat = lines.find((line) => line.part.id === 'repeat');
      // With one odd layer in the pattern the two are one.
      expect(repeat !== undefined, `${h} on ${P_h}, ${theta_s}`).toBe(rare > 1);
      if (!repeat) continue;
      expect(repeat.period * 1e3).toBeCloseTo(layers.length * Number(h), 9);
      repeats += 1;
    }
    expect(odd).toBeGreaterThan(60);
    expect(repeats).toBeGreaterThan(20);
  });

  // 0.13 mm on 0.04 mm: 13/4 steps, a quarter over; 0.13 on 0.0254 (lead 5.08): 650/127, 15 over in 127.
  it.each([
    ['8 mm', '0.13 mm', 0.52, undefined],
    ['5.08 mm', '0.13 mm', (127 * 0.13) / 15, 127 * 0.13],
  ])('lead %s, layer %s', (P_h, h, odd, repeat) => {
    const lines = ranked(work({ P_w: '1 mm', P_h, h }, { by: 'direct' })).lines;
    expect(lines.find((line) => line.part.id === 'odd')!.period * 1e3).toBeCloseTo(odd, 9);
    const whole = lines.find((line) => line.part.id === 'repeat')?.period;
    if (repeat === undefined) expect(whole).toBeUndefined();
    else expect(whole! * 1e3).toBeCloseTo(repeat, 9);
  });
});

describe('which parts fit, against 4000 draws of plain arithmetic', () => {
  const DRAWS = 4000;
  /** Nearer than this to the edge of the interval, in standard uncertainties, the draws cannot tell. */
  const EDGE = 0.1;

  interface Given {
    readonly value: number;
    readonly half: number;
  }

  /** Periods worked out anew, in mm, from the values of one draw. Screw drive, ridges up the wall. */
  const periods = (at: Readonly<Record<string, number>>): Record<string, number> => {
    const q = (at.P_h! * 1.8) / 360;
    const over = Math.abs(at.h! / q - Math.round(at.h! / q));
    const section = (Math.PI * at.d_f! ** 2) / 4;
    const line = at.k_A! * at.w! * at.h!;
    return {
      lead: at.P_h!,
      thread: at.P_h! / at.n_s!,
      odd: at.h! / over,
      wheel: 2 * Math.PI * at.r_w!,
      gear: (at.h! * (Math.PI * at.d_g! * section)) / (line * at.l_L!),
      heat: (at.h! * at.t_c!) / at.t_L!,
      day: (at.h! * 24 * 3600) / at.t_L!,
    };
  };

  it('agree on random machines and readings', () => {
    const random = generator(20_261_125);
    const between = (low: number, high: number): number => low + (high - low) * random();
    let compared = 0;
    let fits = 0;
    for (let machine = 0; machine < times(90, 4); machine += 1) {
      const spaces = 5 + Math.floor(random() * 20);
      const given: Record<string, Given> = {
        P_h: { value: [2, 4, 8][Math.floor(random() * 3)]!, half: 0 },
        n_s: { value: 4, half: 0 },
        h: { value: 0.25 + 0.01 * Math.floor(random() * 3), half: 0 },
        r_w: { value: Number(between(6, 12).toFixed(2)), half: 0.1 },
        d_g: { value: Number(between(8, 12).toFixed(2)), half: 0.2 },
        d_f: { value: 1.75, half: 0.03 },
        w: { value: 0.45, half: 0.01 },
        k_A: { value: 0.95, half: 0.05 },
        l_L: { value: Math.round(between(40, 400)), half: 2 },
        t_c: { value: Number(between(20, 90).toFixed(1)), half: 0.3 },
        t_L: { value: Number(between(8, 20).toFixed(1)), half: 0.3 },
        s: { value: 0.3, half: 0.3 },
        x: { value: 0, half: 0.2 },
      };
      const centre = periods(Object.fromEntries(Object.entries(given).map(([name, { value }]) => [name, value])));
      const truth = Object.values(centre)[Math.floor(random() * 7)]!;
      const length = truth * 0.997 * spaces * between(0.985, 1.015);
      given.L = { value: Number(length.toFixed(2)), half: 0.03 };
      if (given.L.value < 1 || given.L.value > 2000) continue;
      const found = work(
        Object.fromEntries<string>([
          ...Object.entries(given).map(
            ([name, { value, half }]) => [name, name === 'n_s' ? String(value) : `${value} ± ${half}`] as const,
          ),
          ['N', String(spaces)],
        ]),
      );
      const drawn: Record<string, number[]> = {};
      for (let draw = 0; draw < DRAWS; draw += 1) {
        const at = Object.fromEntries(
          Object.entries(given).map(([name, { value, half }]) => [name, value + half * (2 * random() - 1)]),
        );
        const ridges = (at.L! + at.x!) / spaces / (1 - at.s! / 100);
        for (const [id, period] of Object.entries(periods(at))) (drawn[id] ??= []).push(ridges / period - 1);
      }
      const own = ranked(found).lines.filter((line) => line.part.id !== 'repeat');
      for (const line of own) {
        const sample = drawn[line.part.id]!;
        const mean = sample.reduce((sum, e) => sum + e, 0) / DRAWS;
        const u = Math.sqrt(sample.reduce((sum, e) => sum + (e - mean) ** 2, 0) / (DRAWS - 1));
        const away = Math.abs(mean) / u;
        expect(line.period * 1e3).toBeCloseTo(centre[line.part.id]!, 6);
        if (Math.abs(away - 2) < EDGE) continue;
        expect(line.fits, `${line.part.id}: ${away} u away, e ${line.value}`).toBe(away < 2);
        compared += 1;
        if (line.fits) fits += 1;
      }
    }
    expect(compared).toBeGreaterThan(times(250, 8));
    expect(fits).toBeGreaterThan(times(40, 0));
  });

  it('the part that made the ridges is among those that fit, 95 % of the time or more', () => {
    const random = generator(7);
    const off = (half: number): number => half * (2 * random() - 1);
    const trials = times(400, 60);
    let kept = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      const spaces = 4 + Math.floor(random() * 20);
      // A wheel of true radius 10.5, misread by up to 0.3; a wall that shrank 0 to 0.6 %; jaws off by up to 0.2.
      const wall = 2 * Math.PI * 10.5 * (1 - (0.3 + off(0.3)) / 100);
      const given = {
        L: `${(wall * spaces + off(0.2) + off(0.03)).toFixed(4)} mm ± 0.03`,
        N: String(spaces),
        r_w: `${(10.5 + off(0.3)).toFixed(4)} mm ± 0.3`,
        P_h: '8 mm',
      };
      if (fitting(work(given)).includes('wheel')) kept += 1;
    }
    expect(kept / trials).toBeGreaterThanOrEqual(0.95);
  });
});

describe('the further reading that is asked for parts the two', () => {
  it('whichever of them is the true one, at the worst error of the reading', () => {
    // A screw of 25 mm and a wheel of 2π × 4.02 = 25.26 mm, one percent apart, read to 1 mm.
    const turn = 2 * Math.PI * 4.02;
    const parts = { P_h: '25 mm', r_w: '4.02 mm ± 0', s: '0.3 % ± 0.05', x: '0 mm ± 0' };
    const reading = (spaces: number, wall: number, error: number) =>
      work({ ...parts, L: `${(spaces * wall * 0.997 + error).toFixed(4)} mm ± 1`, N: String(spaces) });
    const first = reading(3, 25, 0);
    expect(fitting(first)).toEqual(['lead', 'wheel']);
    expect(first.verdict.state).toBe('too close');
    const spaces = Number(/measure over (\d+) spaces/.exec(first.instruction!.sentence)![1]);
    for (const truth of [25, turn]) {
      for (const error of [-1, -0.3, 0, 0.3, 1]) {
        const again = reading(spaces, truth, error);
        expect(fitting(again), `${truth}, ${error}, ${spaces}`).toEqual([truth === 25 ? 'lead' : 'wheel']);
        expect(again.verdict.state).toBe('within');
      }
    }
    // Half as many would not do: an error within the reading's own leaves both.
    expect(fitting(reading(Math.floor(spaces / 2), 25, 0.6))).toEqual(['lead', 'wheel']);
  });

  it('or the better tool that is named', () => {
    const parts = { P_h: '25 mm', r_w: '4.02 mm ± 0', s: '0.3 % ± 0.05', x: '0 mm ± 0' };
    const first = work({ ...parts, L: '74.9 mm ± 1', N: '3' });
    const tool = /the same length with a ([a-z ]+)/.exec(first.instruction!.sentence)?.[1];
    expect(tool).toBe('caliper');
    expect(fitting(work({ ...parts, L: '74.775 mm ± 0.03', N: '3' }))).toEqual(['lead']);
    // The steel rule, a step coarser, does not do it in the worst case: 0.5 mm in 75 is 0.77 % at k = 2.
    expect(fitting(work({ ...parts, L: '75.2 mm ± 0.5', N: '3' }))).toEqual(['lead', 'wheel']);
  });
});

// references.md, section 1: textbook pitch diameters p z / π, mm, printed to 0.001.
describe('pulleys of textbook pitch diameter', () => {
  it.each([
    ['2', '16', 10.186],
    ['2', '20', 12.732],
    ['3', '20', 19.099],
    ['5', '20', 31.831],
  ])('pitch %s, %s teeth: one turn is the circle of its pitch diameter', (p, z, diameter) => {
    const along = work({ P_w: '40 mm', p_b: p, z_b: z }, { by: 'direct', way: 'along' });
    const lifted = work({ P_w: '40 mm', p, z }, { by: 'direct', lift: 'belt' });
    for (const found of [along, lifted]) {
      expect(Math.abs(mm(found, 'p_pulley') - Math.PI * diameter)).toBeLessThan(Math.PI * 0.0005);
      expect(mm(found, 'p_tooth')).toBeCloseTo(Number(p), 12);
    }
  });
});

// references.md, section 5: a 1.75 mm filament has 2.4053 mm²; 5 mm³/s take 2.079 mm/s of it.
describe('feed gear', () => {
  it('one turn along a line: so long as the flow of the line takes to use it up', () => {
    // 0.2 × 0.5 mm, filled whole, at 50 mm/s is 5 mm³/s.
    const found = work(
      { P_w: '700 mm', d_g: '11 mm', w: '0.5 mm', h: '0.2 mm', k_A: '1', d_f: '1.75 mm' },
      { by: 'direct', way: 'along' },
    );
    const seconds = (Math.PI * 11) / 2.079;
    expect(mm(found, 'p_gear') / (50 * seconds)).toBeCloseTo(1, 3);
  });

  it('one turn up the wall: layers of that length of line', () => {
    const up = work({ P_w: '6 mm', d_g: '11 mm', w: '0.5 mm', h: '0.2 mm', k_A: '1', l_L: '160 mm' }, { by: 'direct' });
    const line = (2.4053 * Math.PI * 11) / (0.5 * 0.2);
    expect(mm(up, 'p_gear') / ((line / 160) * 0.2)).toBeCloseTo(1, 4);
  });
});
