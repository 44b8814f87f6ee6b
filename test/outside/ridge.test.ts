import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { findRidges, readStrip, type RidgesFound } from '../../src/signal/ridge';
import { halfWidth95 } from '../../src/signal/ridge-scale';
import { generator } from '../support/calculators';
import { some } from '../support/sweep';
import { normal, takeShot } from '../support/walls';

describe('against tools of others', () => {
  it("draws the spectrum that mathjs's own transform gives, and its peak lies at the period", () => {
    const shot = { ridges: 10, noise: 8, layerSpread: 2, amplitude: 10, layerAmplitude: 4, distance: 0, pointing: 0, marks: 'ends' } as const; // prettier-ignore
    const taken = takeShot(shot, generator(3));
    const { profile, spectrum, period } = findRidges(readStrip(taken.picture, taken.strip), taken.scale, { layer: taken.layer }) as RidgesFound; // prettier-ignore
    const n = profile.values.length;
    const size = 2 * (spectrum.amplitude.length - 1);
    // Hann's window sums to n / 2.
    const windowed = Array.from({ length: size }, (_, i) => (profile.values[i] ?? 0) * (i < n ? Math.sin((Math.PI * (i + 0.5)) / n) ** 2 : 0)); // prettier-ignore
    const theirs = (math.fft(windowed) as unknown as math.Complex[]).map((bin) => (4 * Math.hypot(bin.re, bin.im)) / n);
    const largest = Math.max(...spectrum.amplitude);
    spectrum.amplitude.forEach((ours, k) => expect(Math.abs(ours - theirs[k]!)).toBeLessThan(1e-9 * largest));
    expect(spectrum.step).toBeCloseTo(1 / (size * profile.step), 9);
    const peak = theirs.slice(0, size / 2).reduce((best, value, k, all) => (value > all[best]! ? k : best), 0);
    expect(Math.abs(peak * spectrum.step - 1 / period)).toBeLessThan(spectrum.step);
  });

  it('gives the 95 % half-width of a normal and a rectangular error together as drawing them does', () => {
    const random = generator(11);
    const shapes = [
      [1, 1],
      [1, 0],
      [1, 3],
      [0.1, 2],
      [0, 1],
    ] as const;
    for (const [s, a] of some(shapes, 5)) {
      const draws = Array.from({ length: 200_000 }, () => Math.abs(s * normal(random) + a * (2 * random() - 1)));
      const half = halfWidth95(s, a);
      const share = draws.filter((error) => error <= half).length / draws.length;
      expect(share).toBeCloseTo(0.95, 2);
    }
  });
});
