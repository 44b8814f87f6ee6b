import { describe, expect, it } from 'vitest';
import { findRidges, readStrip, type RidgeFinding, type RidgesFound } from '../../src/signal/ridge';
import { generator } from '../support/calculators';
import { some } from '../support/sweep';
import { photograph, seenAt } from '../support/walls';

const square = { width: 110, height: 700, reach: 500, scale: 8000, pitch: 0, yaw: 0, roll: 0 };
const steady = { level: 128, slopeX: 0, slopeY: 0, bow: 0, corners: 0, noise: 4 };
const strip = { from: { x: 55, y: 20 }, to: { x: 55, y: 680 }, width: 60 };
const scale = { from: { x: 55, y: 30 }, to: { x: 55, y: 670 }, distance: 0.08, halfWidth: 0, pointing: 0.5, measured: 'points' as const }; // prettier-ignore
const plain = (amplitudes: readonly number[], period: number) => ({
  period,
  harmonics: amplitudes.map((amplitude) => ({ amplitude, phase: 1 })),
  layer: 0.001,
  layerAmplitude: 5,
  layerSpread: 0,
});
const look = (wall: Parameters<typeof photograph>[0], light = steady, options = { layer: 0.001 }) =>
  findRidges(readStrip(photograph(wall, square, light, generator(5)), strip), scale, options);

describe('what a line is taken for', () => {
  it('reads the first harmonic though the second and third are louder', () => {
    const finding = look(plain([4, 10, 8], 0.008)) as RidgesFound;
    expect(finding.status).toBe('found');
    expect(finding.period / 0.008).toBeCloseTo(1, 3);
    expect(finding.lines.map(({ role }) => role).sort()).toEqual(['harmonic', 'harmonic', 'layers', 'ridges']);
  });

  it('knows the layers by their height, and another pattern by neither', () => {
    const finding = look(plain([10], 0.008)) as RidgesFound;
    expect(finding.lines.map(({ role }) => role)).toEqual(['ridges', 'layers']);
    expect(finding.lines[1]!.period / 0.001).toBeCloseTo(1, 3);
  });

  it('counts the ridges and draws each where it is brightest', () => {
    // 660 px at 8000 px/m hold 10.3 ridges of 8 mm; cos(2 pi Y / 0.008 + 1) is brightest 1/(2 pi) of a period before Y = 0.
    const finding = look(plain([10], 0.008)) as RidgesFound;
    expect(finding.ridges).toBeCloseTo(10.3, 1);
    const middle = 349.5 - 64 / (2 * Math.PI);
    for (const { from, to } of finding.crests) {
      const from0 = ((from.y + to.y) / 2 - middle) / 64;
      expect(Math.abs(from0 - Math.round(from0))).toBeLessThan(0.02);
    }
    expect(finding.crests.length).toBeGreaterThanOrEqual(10);
  });
});

describe('a wall seen from aside, through a lens that bends', () => {
  const DEGREE = Math.PI / 180;
  const seenFrom = (yaw: number) => {
    const camera = { ...square, width: 320, yaw: yaw * DEGREE };
    const picture = photograph(plain([10], 0.008), camera, steady, generator(5));
    // Where the camera of test/support/walls.ts sees two places 80 mm apart on the wall, 12 mm beside the strip.
    const [from, to] = [-0.04, 0.04].map((Y) => seenAt(camera, 0.012, Y));
    return findRidges(
      readStrip(picture, { from: { x: 160, y: 20 }, to: { x: 160, y: 680 }, width: 60 }),
      { ...scale, from: from!, to: to!, distance: 0.08, pointing: 1 },
      { layer: 0.001 },
    );
  };

  it.each(some([-12, 12], 2))('holds the period in its interval at a yaw of %i°, the marks beside the strip', (yaw) => {
    const finding = seenFrom(yaw) as RidgesFound;
    expect(finding.status).toBe('found');
    expect(Math.abs(finding.period - 0.008)).toBeLessThanOrEqual(finding.halfWidth);
    expect(finding.halfWidth / finding.period).toBeLessThan(0.03);
  });

  it.each(some([25, -25], 2))('refuses a yaw of %i° for the angle, not for the light', (yaw) => {
    expect(seenFrom(yaw)).toMatchObject({ status: 'refused', reason: 'angle' });
  });
});

describe('refusals', () => {
  const reason = (finding: RidgeFinding) => (finding.status === 'refused' ? finding.reason : finding.status);

  it('says why', () => {
    const picture = photograph(plain([10], 0.008), square, steady, generator(5));
    expect(reason(findRidges(readStrip(picture, { ...strip, to: { x: 55, y: 40 } }), scale, {}))).toBe('too short');
    expect(reason(findRidges(readStrip(picture, { ...strip, from: { x: -9, y: 0 }, to: { x: -9, y: 700 } }), scale, {}))).toBe('too short'); // prettier-ignore
    expect(reason(findRidges(readStrip(picture, strip), { ...scale, to: scale.from }, {}))).toBe('no scale');
    expect(reason(findRidges(readStrip(picture, strip), { ...scale, distance: 0 }, {}))).toBe('no scale');
    expect(reason(look(plain([10], 0.008), { ...steady, level: 262 }))).toBe('overexposed');
    expect(reason(look(plain([10], 0.008), { ...steady, level: -6 }))).toBe('too dark');
  });

  it('asks for the layer height where what repeats may be the layers, and knows them by it', () => {
    const layersOnly = { ...plain([0], 0.008), layerAmplitude: 15 };
    const bare = findRidges(readStrip(photograph(layersOnly, square, steady, generator(5)), strip), scale, {});
    expect(reason(bare)).toBe('layers unknown');
    expect(bare.lines[0]!.period / 0.001).toBeCloseTo(1, 2);
    expect(reason(look(layersOnly))).toBe('only layers');
    // Ridges further apart than any layer is thick need none.
    expect(findRidges(readStrip(photograph(plain([10], 0.008), square, steady, generator(5)), strip), scale, {}).status).toBe('found'); // prettier-ignore
  });

  it('gives no period to ridges that are under three pixels wide', () => {
    const fine = plain([30], 0.00031);
    expect(reason(look(fine, steady, { layer: 0.00005 }))).toBe('too coarse');
  });
});
