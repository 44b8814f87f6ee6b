// A part of what `npm run bench:note` measures, to the same limits: fixed seeds, none of those used for calibrating.
import { describe, expect, test } from 'vitest';
import { LIMITS, median, runCell } from '../support/note-trials';
import type { Room } from '../support/plucks';
import { isWhole, some, times } from '../support/sweep';

const room = (noise: Room['noise'], microphone: Room['microphone'], snrDb: number, low = 35, high = 180): Room => ({
  noise,
  microphone,
  snrDb,
  low,
  high,
});

describe('made-up plucks with hum and a fan behind them', () => {
  const cells: readonly [Room, number][] = [
    [room('white', 'plain', 20), 40],
    [room('white', 'high-passed', 0), 40],
    [room('pink', 'plain', 10), 40],
    [room('pink', 'high-passed', 20), 40],
    [room('pink', 'high-passed, noise behind', 0), 60],
    [room('pink', 'high-passed', 20, 20, 35), 20],
    [room('white', 'plain', 20, 180, 500), 20],
  ];
  let inside = 0;
  let found = 0;
  test.each(some(cells, 3))('%j', (made, trials) => {
    // Of two the median would be the worse one.
    const count = times(trials, Math.ceil(trials / 8));
    const cell = runCell(made, 200_000, count);
    const limit = LIMITS[made.snrDb]!;
    expect(cell.tally.wrongs).toBeLessThanOrEqual(limit.wrong * count);
    expect(cell.tally.refused).toBeLessThanOrEqual(Math.ceil(limit.refused * count));
    if (made.snrDb === 20) expect(median(cell.tally.cents.map(Math.abs))).toBeLessThan(0.6);
    // Within a factor of what no estimate can beat: four, and not three as it was told the sound is a sum of decaying partials,
    // since the answer is averaged over what a room or a glide may do (src/signal/note-track.ts).
    expect(median(cell.tally.cents.map(Math.abs))).toBeLessThan(4 * median(cell.bounds));
    inside += cell.inside;
    found += cell.tally.cents.length;
  });

  // Of a few nothing can be said.
  test.runIf(isWhole)(
    'the 95 % interval holds 93 to 98 % of the errors, give or take what so few trials scatter',
    () => {
      expect(inside / found).toBeGreaterThan(0.91);
      expect(inside / found).toBeLessThan(0.99);
    },
  );
});
