import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberTicks, placesOf, timeTicks } from '../../src/ui/ticks';

const at = (text: string) => new Date(text).getTime();

describe('round numbers', () => {
  it.each<[number, number, number, number[], number]>([
    [0, 1, 4, [0, 0.5, 1], 1],
    [-0.05, 0.45, 4, [0, 0.2, 0.4], 1],
    [0, 100, 4, [0, 50, 100], 0],
    [-3, 3, 6, [-3, -2, -1, 0, 1, 2, 3], 0],
  ])('%d to %d', (low, high, count, ticks, places) => {
    const found = numberTicks(low, high, count);
    expect(found).toHaveLength(ticks.length);
    found.forEach((tick, i) => expect(tick).toBeCloseTo(ticks[i]!, 9));
    expect(placesOf(found)).toBe(places);
  });

  it('lie inside, evenly, one to eight of them, and print apart', () => {
    const low = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(low, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (from, span) => {
        const found = numberTicks(from, from + span, 4);
        expect(found.length).toBeGreaterThanOrEqual(1);
        expect(found.length).toBeLessThanOrEqual(8);
        for (const tick of found) {
          expect(tick).toBeGreaterThanOrEqual(from - span * 1e-6);
          expect(tick).toBeLessThanOrEqual(from + span * (1 + 1e-6));
        }
        expect(new Set(found.map((tick) => tick.toFixed(placesOf(found)))).size).toBe(found.length);
      }),
    );
  });
});

describe('dates', () => {
  it.each<[string, string, string[]]>([
    ['2026-03-05T17:00', '2026-03-07T20:00', ['6 Mar', '7 Mar']],
    ['2026-01-20T00:00', '2026-04-25T00:00', ['Feb 26', 'Mar 26', 'Apr 26']],
    ['2024-06-01T00:00', '2026-12-31T00:00', ['2025', '2026']],
    ['2026-03-05T06:30', '2026-03-05T23:00', ['12:00', '18:00']],
  ])('%s to %s', (from, to, texts) => {
    expect(timeTicks(at(from), at(to), 4, 'en-GB').map((tick) => tick.text)).toEqual(texts);
  });

  it('are in order, inside, and few, from an hour to two centuries', () => {
    const year = 3.156e10;
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100 * year }),
        fc.integer({ min: 3.6e6, max: 200 * year }),
        (from, span) => {
          const found = timeTicks(from, from + span, 4, 'en-GB');
          expect(found.length).toBeLessThanOrEqual(6);
          found.forEach((tick, i) => {
            expect(tick.at).toBeGreaterThanOrEqual(from);
            expect(tick.at).toBeLessThanOrEqual(from + span);
            if (i > 0) expect(tick.at).toBeGreaterThan(found[i - 1]!.at);
          });
        },
      ),
    );
  });
});
