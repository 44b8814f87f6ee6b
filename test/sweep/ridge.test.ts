import { describe, expect, it } from 'vitest';
import { findRidges, readStrip, type RidgeFinding } from '../../src/signal/ridge';
import { generator } from '../support/calculators';
import { isWhole, times } from '../support/sweep';
import { takeShot, type Shot, type Taken } from '../support/walls';

/*
 * Rendered walls with a known period (test/support/walls.ts): camera up to 5° off square about each axis, uneven light,
 * pixel noise, grey that differs from layer to layer, layer lines, marks that miss. Fixed seeds.
 */
const MODERATE: Shot = { ridges: 10, noise: 8, layerSpread: 2, amplitude: 10, layerAmplitude: 4, distance: 0, pointing: 1, marks: 'ends' }; // prettier-ignore

function trials(shot: Shot, count: number, seed: number): { readonly taken: Taken; readonly finding: RidgeFinding }[] {
  const random = generator(seed);
  return Array.from({ length: count }, () => {
    const taken = takeShot(shot, random);
    return { taken, finding: findRidges(readStrip(taken.picture, taken.strip), taken.scale, { layer: taken.layer }) };
  });
}

const found = (all: ReturnType<typeof trials>) =>
  all.flatMap(({ taken, finding }) =>
    finding.status === 'found' ? [{ finding, error: finding.period / taken.period - 1, period: taken.period }] : [],
  );

describe('the period of ridges on rendered walls', () => {
  it('is within 1 % at ten ridges and moderate noise, every time that it is given', () => {
    const count = times(150, 1);
    const all = found(trials(MODERATE, count, 20_261_125));
    // Two of these 150 flat walls are taken for round ones and refused: known, and written so in DEVELOPERS.md.
    expect(all.length).toBeGreaterThanOrEqual(Math.floor(0.985 * count));
    expect(all.filter(({ error }) => Math.abs(error) > 0.01)).toEqual([]);
  });

  // Of a few nothing can be said.
  it.runIf(isWhole)(
    'stands in the stated interval in 93 to 98 of 100, over noise, ridges and scales of several kinds',
    () => {
      const shots: Shot[] = [
        MODERATE,
        { ...MODERATE, layerSpread: 4, noise: 20 },
        { ...MODERATE, ridges: 20 },
        { ...MODERATE, ridges: 6 },
        { ...MODERATE, distance: 0.005 },
        { ...MODERATE, marks: 'free' },
      ];
      const all = shots.flatMap((shot, k) => found(trials(shot, 80, 7000 + k)));
      const inside = all.filter(({ finding, error, period }) => Math.abs(error) * period <= finding.halfWidth).length;
      expect(all.length).toBeGreaterThan(465);
      expect(inside / all.length).toBeGreaterThanOrEqual(0.93);
      expect(inside / all.length).toBeLessThanOrEqual(0.98);
    },
  );

  it.runIf(isWhole)('is not claimed where there are no ridges: nothing at all, layers only, two ridges', () => {
    const reasons = (shot: Shot, count: number, seed: number) =>
      [...new Set(trials(shot, count, seed).map(({ finding }) => (finding.status === 'refused' ? finding.reason : 'found')))]; // prettier-ignore
    expect(reasons({ ...MODERATE, amplitude: 0, layerAmplitude: 0, layerSpread: 0 }, times(40, 1), 1)).toEqual([
      'nothing regular',
    ]);
    expect(reasons({ ...MODERATE, amplitude: 0, layerAmplitude: 0, layerSpread: 4 }, times(40, 1), 2)).toEqual([
      'nothing regular',
    ]);
    expect(reasons({ ...MODERATE, amplitude: 0, layerSpread: 0.5 }, times(30, 1), 3)).toEqual(['only layers']);
    expect(reasons({ ...MODERATE, ridges: 2.2, layerSpread: 1 }, times(30, 1), 4)).toEqual(['too few ridges']);
  });
});
