// The count of a feeder's ticks on sounds made by other means (tick-sounds.ts); a part of what `npm run bench:note` measures.
import { describe, expect, test } from 'vitest';
import { countClicks, isFaint } from '../../src/signal/click-count';
import { createClickListener } from '../../src/signal/click-watch';
import { hear, TICK_CELLS, ticksName, TickTally } from '../support/tick-trials';
import { RATE } from '../support/plucks';
import { SECONDS, ticking } from '../support/tick-sounds';
import { times } from '../support/sweep';

const seed = 900_000;
const loud = TICK_CELLS.filter(({ peakDb, beside }) => peakDb >= 20 && beside !== 'only speech');

test.each(loud)('misses no tick of an even beat at 20 dB peak over the noise and adds none: %j', (scene) => {
  const tally = new TickTally();
  for (let i = 0; i < times(4, 1); i += 1) tally.add(ticking(scene, seed + i));
  expect(tally.ticks, ticksName(scene)).toBeGreaterThan(0);
  // By chance two come so near to one another that they are one: known, and in DEVELOPERS.md.
  const most = scene.times === 'chance' ? Math.ceil(0.04 * tally.ticks) : 0;
  expect(tally.missed, ticksName(scene)).toBeLessThanOrEqual(most);
  expect(tally.added, ticksName(scene)).toBe(0);
  expect(tally.inside, ticksName(scene)).toBe(tally.trials);
});

test('ticks hardly over the noise are said to be so, and the interval still holds them', () => {
  const tally = new TickTally();
  for (let i = 0; i < times(8, 3); i += 1) {
    const made = ticking({ peakDb: 12, noise: 'pink', times: 'even', beside: 'nothing', room: 0 }, seed + i);
    tally.add(made);
    const { clicks } = hear(made);
    if (clicks.length < 0.9 * made.at.length) expect(isFaint(clicks)).toBe(true);
  }
  expect(tally.inside / tally.trials).toBeGreaterThanOrEqual(0.6);
});

test('a voice is not counted as ticks', () => {
  for (let i = 0; i < times(6, 2); i += 1) {
    const { clicks, seconds, masked } = hear(
      ticking({ peakDb: 20, noise: 'pink', times: 'none', beside: 'only speech', room: 0.3 }, seed + i),
    );
    const { count, halfWidth } = countClicks(clicks, seconds, masked);
    expect(count - halfWidth).toBeLessThanOrEqual(0.05 * SECONDS);
  }
});

describe('a count', () => {
  const at = (gaps: readonly number[]) => gaps.map((t) => ({ at: t, loudness: 20 }));
  const even = at(Array.from({ length: 20 }, (_, i) => 0.3 * i));

  test('is sure where every click is, and goes on in twos where some may be none', () => {
    expect(countClicks(even, 6, 0)).toMatchObject({ count: 20, halfWidth: 0 });
    const two = even.map((click, i) => (i % 10 === 3 ? { ...click, doubt: 'goes on' as const } : click));
    expect(countClicks(two, 6, 0)).toMatchObject({ count: 19, halfWidth: 1 });
  });

  test('has room for what other sounds hid, by the time that they took', () => {
    // A third of the time is masked: of 20 clicks in the rest, ten more are expected.
    const { count, halfWidth } = countClicks(even, 6, 2);
    expect(count + halfWidth).toBeGreaterThanOrEqual(30);
    expect(count - halfWidth).toBeLessThanOrEqual(20);
  });

  test('of nothing is nothing, and no time is no NaN', () => {
    expect(countClicks([], 0, 0)).toEqual({ count: 0, halfWidth: 0, rate: 0, rateHalfWidth: 0 });
  });

  test('is the same however the stream is cut up', () => {
    const { samples } = ticking(loud[0]!, seed);
    const whole = createClickListener(RATE).push(samples);
    const listener = createClickListener(RATE);
    const pieces: unknown[] = [];
    for (let from = 0; from < samples.length; from += 1000)
      pieces.push(...listener.push(samples.subarray(from, from + 1000)));
    expect(pieces).toEqual(whole);
  });
});
