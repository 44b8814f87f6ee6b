import { describe, expect, it } from 'vitest';
import calc from '../../src/calculators/belt-pair/index';
import { evaluate } from '../../src/engine/evaluate';
import type { Known } from '../../src/formula/outcome';
import { generator, situation } from '../support/calculators';
import { heldNote, hingedNote } from '../support/spans';
import { times } from '../support/sweep';

type Given = Readonly<Record<string, string>>;

function result(symbol: string, given: Given, choices: Given = {}): Known {
  const outcome = evaluate(calc, situation(calc, given, choices)).outcomes[symbol];
  if (!outcome?.ok) throw new Error(`${symbol} has no result`);
  return outcome;
}

/** With an E·I of 0.1 N·mm²: stiffness counts for nothing. */
const limp = { ends: 'pinned' };
const spans = { L_1: '300', L_2: '240', f_1: '80', f_2: '100' };

describe('the way of a tensioner that takes up one tooth', () => {
  /** Length of a belt laid round a circle of radius r between two fixed points; the circle moved outwards by x. */
  function laid(x: number, wrap: number, r: number, reach: number): number {
    // One half of it: the strand leaves the circle tangentially at half the wrap and runs to a point `reach` away.
    const half = wrap / 2;
    const end = { x: r * Math.cos(half) - reach * Math.sin(half), y: r * Math.sin(half) + reach * Math.cos(half) };
    const apart = Math.hypot(end.x - x, end.y);
    const strand = Math.sqrt(apart ** 2 - r ** 2);
    const touching = Math.atan2(end.y, end.x - x) - Math.acos(r / apart);
    return 2 * (strand + r * touching);
  }

  // Plane geometry: arc and tangents. The take-up of a small way must be pitch over the slope of that length.
  it.each([180, 150, 120, 90, 60])('at a wrap of %f°', (degrees) => {
    const wrap = (degrees * Math.PI) / 180;
    for (const r of [5, 8]) {
      const slope = (laid(1e-4, wrap, r, 250) - laid(-1e-4, wrap, r, 250)) / 2e-4;
      const found = result('x_1', { ...spans, p: '2', theta_w: `${degrees} ± 0` }).value * 1e3;
      expect(found).toBeCloseTo(2 / slope, 6);
    }
  });

  // Half round, the strands run with the way: two lengths for one, however far (common practice, no source).
  it('half round, seven teeth of 2 mm are 7 mm, and not only nearly', () => {
    expect(laid(7, Math.PI, 6, 250) - laid(0, Math.PI, 6, 250)).toBeCloseTo(7 * 2, 9);
    expect(result('n', { ...spans, p: '2', theta_w: '180 ± 0', x: '7 ± 0' }).value).toBeCloseTo(7, 12);
  });

  // At a quarter of wrap the strands turn as the pulley moves: the first-order rule is good to 2 % over three teeth.
  it('at less wrap the rule is one of small ways', () => {
    const taken = laid(3 * Math.SQRT2, Math.PI / 2, 6, 250) - laid(0, Math.PI / 2, 6, 250);
    expect(Math.abs(taken / 6 - 1)).toBeLessThan(0.02);
  });
});

describe('two spans under one tension are called alike, whatever their spans, masses and stiffness', () => {
  // Notes from the exact sine and the frequency equation of a held beam, both held against scipy in belt-tension.test.ts.
  it.each([
    ['pinned', hingedNote],
    ['clamped', heldNote],
  ] as const)('ends %s', (ends, note) => {
    const random = generator(411);
    for (let i = 0; i < times(30, 4); i += 1) {
      const T = 8 + 30 * random();
      const belt = () => ({ L: 0.12 + 0.3 * random(), mu: 0.006 + 0.02 * random(), EI: 2e-6 + 6e-5 * random() });
      const [a, b] = [belt(), belt()];
      const [f_1, f_2] = [note({ ...a, T }), note({ ...b, T })];
      const given = {
        L_1: `${a.L * 1e3} ± 0`,
        L_2: `${b.L * 1e3} ± 0`,
        f_1: `${f_1} ± 0`,
        f_2: `${f_2} ± 0`,
        mu_a: `${a.mu * 1e3} ± 0`,
        mu_b: `${b.mu * 1e3} ± 0`,
        EI_1: `${a.EI * 1e6} ± 0`,
        EI_2: `${b.EI * 1e6} ± 0`,
      };
      const choices = { belts: 'different', mass: 'typed', ends };
      const worst = Math.max(...[a, b].map(({ L, EI }) => Math.sqrt(EI / T) / L));
      const allowed = ends === 'clamped' ? 45 * worst ** 3 + 1e-6 : 1e-9;
      expect(Math.abs(result('d_T', given, choices).value), `ε ${worst}`).toBeLessThan(allowed);
      expect(Math.abs(result('f_2e', given, choices).value / f_2 - 1)).toBeLessThan(allowed);
      expect(Math.abs(result('f_1e', given, choices).value / f_1 - 1)).toBeLessThan(allowed);
    }
  });

  it('without stiffness the note goes with span and mass as Mersenne’s laws say', () => {
    const random = generator(412);
    for (let i = 0; i < times(30, 4); i += 1) {
      const [L_1, L_2, f_1] = [100 + 400 * random(), 200 + 400 * random(), 30 + 100 * random()];
      const given = { L_1: `${L_1} ± 0`, L_2: `${L_2} ± 0`, f_1: `${f_1} ± 0`, f_2: '80 ± 0', EI_1: '0.1 ± 0' };
      expect(result('f_2e', given, limp).value / ((f_1 * L_1) / L_2)).toBeCloseTo(1, 4);
      const alike = { ...given, f_2: `${(f_1 * L_1) / L_2} ± 0` };
      expect(result('d_T', alike, limp).value).toBeCloseTo(0, 3);
    }
  });

  it('left out, stiffness makes the shorter span seem the tighter', () => {
    const belt = { mu: 0.008, EI: 5e-5, T: 20 };
    const given = {
      L_1: '300 ± 0',
      L_2: '100 ± 0',
      f_1: `${heldNote({ ...belt, L: 0.3 })} ± 0`,
      f_2: `${heldNote({ ...belt, L: 0.1 })} ± 0`,
      mu_a: '8 ± 0',
    };
    // scipy 1.17: 84.2327 and 258.4848 Hz, as strings 20.4340 and 21.3806 N.
    expect(result('T_01', given, { mass: 'typed' }).value).toBeCloseTo(20.434018, 5);
    expect(result('T_02', given, { mass: 'typed' }).value).toBeCloseTo(21.380602, 5);
  });
});

it('two spans on pulleys are stated apart by the doubt of their ends, the shorter one most', () => {
  const belt = { mu: 0.008, EI: 1e-5, T: 20 };
  const given = (note: typeof heldNote, L_1: number, L_2: number) => ({
    L_1: `${L_1} ± 0`,
    L_2: `${L_2} ± 0`,
    f_1: `${note({ ...belt, L: L_1 / 1e3 })} ± 0`,
    f_2: `${note({ ...belt, L: L_2 / 1e3 })} ± 0`,
    mu_a: '8 ± 0',
    EI_1: '10 ± 0',
  });
  for (const L of [40, 80, 160, 300]) {
    for (const note of [hingedNote, heldNote]) {
      // Both on hinges, or both in clamps, under 20 N: alike, inside the doubt.
      const found = result('d_T', given(note, 300, L), { mass: 'typed', ends: 'between' });
      expect(found.low, `${L}`).toBeLessThan(0);
      expect(found.high, `${L}`).toBeGreaterThan(0);
    }
  }
  const wide = (L: number) => result('d_T', given(heldNote, 300, L), { mass: 'typed', ends: 'between' }).u;
  expect(wide(40)).toBeGreaterThan(3 * wide(160));
});

// Doubt of a quotient of two squares: 2·u(f)/f for each note, all else shared (JCGM 100, 5.1.6).
it('the difference of two belts of one sort hangs on the notes alone', () => {
  const given = { L_1: '300 ± 0', L_2: '300 ± 0', f_1: '80 ± 0.8', f_2: '80 ± 0.8', EI_1: '0.1 ± 0' };
  const found = result('d_T', given, limp);
  expect(found.u).toBeCloseTo((Math.SQRT2 * 2 * 0.01) / Math.sqrt(3), 4);
});
