import { describe, expect, it } from 'vitest';
import { findRidges, readStrip } from '../../src/signal/ridge';
import { seeded } from '../support/level-support';
import { PLAIN, shootWall, type WallTrial } from '../support/ridge-photos';
import { times } from '../support/sweep';

/*
 * Photographs by ray casting (test/support/photos.ts): a pinhole with a lens that bends, a lamp by Lambert's law, JPEG. Not
 * the rendered walls that the ridges were tuned on. Fixed seeds.
 */
const MM = 1e-3;
const DEGREE = Math.PI / 180;

function look(trial: Partial<WallTrial>, seed: number, count: number) {
  const random = seeded(seed).uniform;
  const wall = { ...PLAIN, ...trial };
  return Array.from({ length: count }, () => {
    const shot = shootWall(wall, random);
    return { shot, finding: findRidges(readStrip(shot.picture, shot.strip), shot.scale, { layer: wall.layer }) };
  });
}

describe('photographs of walls', () => {
  it('give no period for slow waves without one', () => {
    const all = [...look({ depth: 0, waviness: 0.2 * MM }, 4242, times(4, 1)), ...look({ depth: 0, waviness: 0.05 * MM }, 77, times(3, 0))]; // prettier-ignore
    expect(all.map(({ finding }) => finding.status)).toEqual(all.map(() => 'refused'));
  });

  it('of a round wall are refused for what they are, or for the angle, never for the light', () => {
    const reasons = look({ radius: 20 * MM }, 31, times(3, 1)).map(({ finding }) => finding.status === 'refused' ? finding.reason : 'found'); // prettier-ignore
    expect(reasons.filter((reason) => !['round', 'angle'].includes(reason))).toEqual([]);
  });

  it.each([
    ['from 15° aside', { yaw: 15 * DEGREE }, times(12, 1)],
    ['through a lens of 2 % barrel, in a narrow strip', { lens: -0.15, strip: 44 }, times(12, 1)],
  ])('hold the period in the stated interval %s, the rule beside the strip', (_, trial, count) => {
    const all = look(trial, 11, count);
    const misses = all.filter(
      ({ shot, finding }) => finding.status === 'found' && Math.abs(finding.period - shot.period) > finding.halfWidth,
    );
    expect(all.filter(({ finding }) => finding.status === 'found').length).toBeGreaterThanOrEqual(all.length / 2);
    // An interval that holds 95 in 100 misses two or more of twelve in one lot out of eight.
    expect(misses.length).toBeLessThanOrEqual(Math.floor(all.length / 6));
  });
});
