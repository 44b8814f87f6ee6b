import { describe, expect, it } from 'vitest';
import { findSkew, skewOf, type SheetSeen } from '../../src/signal/sheet';
import { seeded } from '../support/level-support';
import { shootPair, shootSheet, SQUARE, type SheetTrial } from '../support/sheet-photos';
import { some, times } from '../support/sweep';

/*
 * Photographs by ray casting of a prism on a sheet whose corners are off by chance, through a lens that bends, from a camera
 * that leans (test/support/sheet-photos.ts). Fixed seeds.
 */
const MM = 1e-3;
const DEGREE = Math.PI / 180;
const pair = (trial: Partial<SheetTrial>, seed: number, width?: number) =>
  shootPair({ ...SQUARE, ...trial }, seeded(seed).uniform, width);
const reasonOf = (trial: Partial<SheetTrial>, seed: number) =>
  ((finding) => (finding.status === 'refused' ? finding.reason : 'seen'))(
    findSkew(shootSheet({ ...SQUARE, ...trial }, seeded(seed).uniform, 480)),
  );

describe('a square on a sheet of paper', () => {
  const shots: [Partial<SheetTrial>, number][] = [
    [{ skew: -2e-3, lens: -0.1, tilt: 12 * DEGREE, height: 8 * MM }, 22],
    [{ skew: 3e-3 }, 21],
  ];
  it.each(some(shots, 2))(
    '%o: its skew stands in the stated interval, turned over, whatever sheet and lens add',
    (trial, seed) => {
      for (let k = 0; k < times(2, 1); k += 1) {
        const [first, second] = pair(trial, seed + 100 * k, 720).map(findSkew);
        if (first?.status !== 'seen' || second?.status !== 'seen') throw new Error('not seen');
        const both = skewOf(first, second);
        if (both.status !== 'found') throw new Error('not found');
        expect(Math.abs(both.skew - (trial.skew ?? 0))).toBeLessThanOrEqual(both.halfWidth);
        // 0.20 mm in 100.
        expect(both.halfWidth).toBeLessThan(2e-3);
        for (const side of first.size) expect(Math.abs(side / SQUARE.side - 1)).toBeLessThan(0.06);
      }
    },
  );

  it('is refused with what is wrong', () => {
    const refused: [Partial<SheetTrial>, number, RegExp][] = [
      [{ table: 0.85 }, 31, /no sheet|cut off/],
      [{ shake: 12 }, 35, /blurred/],
      [{ aside: 120 * MM }, 32, /sheet cut off/],
      [{ round: true }, 34, /no square part/],
      [{ colour: 0.8 }, 33, /no part/],
      [{ turn: 40 * DEGREE }, 37, /askew/],
    ];
    for (const [trial, seed, reason] of some(refused, 3)) expect(reasonOf(trial, seed)).toMatch(reason);
  });

  it('that was not turned over is found out, where it is askew by more than any sheet', () => {
    const seen = (skew: number): SheetSeen => ({ status: 'seen', skew, u: 1e-4, turn: 0, size: [0.1, 0.1], sheet: [], part: [] }); // prettier-ignore
    expect(skewOf(seen(5e-3), seen(5.2e-3))).toEqual({ status: 'refused', reason: 'not turned over' });
    // By hand: (5 + 3) / 2 of the part, (5 - 3) / 2 of sheet and lens.
    expect(skewOf(seen(5e-3), seen(-3e-3))).toMatchObject({ skew: 4e-3, sheet: expect.closeTo(1e-3, 12) as number });
  });
});
