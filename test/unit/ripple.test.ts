import { describe, expect, it } from 'vitest';
import { readStrip } from '../../src/signal/ridge';
import { findRipples, ringing } from '../../src/signal/ripple';
import { seeded } from '../support/level-support';
import { RIPPLED, shootRipples, type RippleTrial } from '../support/ripple-photos';
import { some, times } from '../support/sweep';

/*
 * Photographs by ray casting of what a mass on a spring does after a corner, by its equation of motion in small steps
 * (test/support/ripple-photos.ts): no damped sine was put down. Fixed seeds.
 */
const MM = 1e-3;
const DEGREE = Math.PI / 180;

function look(trial: Partial<RippleTrial>, seed: number, count = 1) {
  const random = seeded(seed).uniform;
  return Array.from({ length: count }, () => {
    const shot = shootRipples({ ...RIPPLED, ...trial }, random);
    return { shot, finding: findRipples(readStrip(shot.picture, shot.strip), shot.scale, shot.picture) };
  });
}
const reasonOf = (trial: Partial<RippleTrial>, seed: number) =>
  look(trial, seed).map(({ finding }) => (finding.status === 'refused' ? finding.reason : 'found'))[0];

describe('ripples beside a corner', () => {
  it('are spaced as far as speed over damped frequency, within the stated interval', () => {
    for (const { shot, finding } of [
      ...look({}, 3, times(3, 1)),
      ...look({ yaw: 10 * DEGREE, damping: 0.03 }, 8, times(1, 0)),
    ]) {
      expect(finding.status).toBe('found');
      if (finding.status !== 'found') continue;
      expect(Math.abs(finding.period - shot.period)).toBeLessThanOrEqual(finding.halfWidth);
      expect(finding.halfWidth / finding.period).toBeLessThan(0.03);
    }
  });

  it('die away as the damping says: ln 2 / δ ripples to half, δ = 2 π ζ / √(1 − ζ²)', () => {
    // Thomson, Theory of Vibration with Applications, 2.9 (logarithmic decrement; from memory).
    const [one] = look({}, 3);
    const halving = one?.finding.status === 'found' ? one.finding.halving : undefined;
    const delta = (2 * Math.PI * RIPPLED.damping) / Math.sqrt(1 - RIPPLED.damping ** 2);
    expect(halving).toBeDefined();
    expect(Math.abs((halving?.value ?? 0) - Math.LN2 / delta)).toBeLessThanOrEqual(halving?.halfWidth ?? 0);
  });

  it('are refused with what is wrong: none there, slow waves, out of focus, too much from one side', () => {
    const refused = [
      [{ height: 0, waviness: 0.05 * MM }, 6, 'no ripples'],
      [{ pitch: 30 * DEGREE }, 8, 'angle'],
      [{ height: 0 }, 5, 'no ripples'],
      [{ height: 0, shake: 30 }, 7, 'blurred'],
    ] as const;
    for (const [trial, seed, reason] of some(refused, 2)) expect(reasonOf(trial, seed)).toBe(reason);
  });
});

it('a frequency is speed over spacing, its doubt both of theirs', () => {
  // By hand: 100 mm/s over 2.5 mm is 40 Hz; 3 % and 4 % make 5 %.
  const [f, half] = ringing([0.1, 0.003], [0.0025, 0.0001]);
  expect(f).toBeCloseTo(40, 9);
  expect(half).toBeCloseTo(2, 9);
});
