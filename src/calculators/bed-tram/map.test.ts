import { expect, it } from 'vitest';
import { intervalFor, levellingPlan } from './map';

const corners = (heights: readonly number[]) =>
  heights.map((z, i) => ({ n: i + 1, x: [0, 0.2, 0.2, 0][i]!, y: [0, 0, 0.2, 0.2][i]!, z }));

it('draws no contour on a level bed, nor where nothing is read', () => {
  expect(levellingPlan(corners([1, 1, 1, 1]), 0.2, 0.2).contours).toEqual([]);
  expect(levellingPlan([], 0.2, 0.2)).toEqual({ spots: [], contours: [] });
});

it('lets every tick point down: to the left on a bed that rises to the right', () => {
  const { contours, spots } = levellingPlan(corners([0, 1e-3, 1e-3, 0]), 0.2, 0.2);
  const ticks = contours.flatMap(({ from, to, tick }) => (tick ? [tick.x - (from.x + to.x) / 2] : []));
  expect(ticks.length).toBeGreaterThan(10);
  // Near the corners the interpolation is round them: the most of them lean to the left.
  expect(ticks.filter((dx) => dx < 0).length / ticks.length).toBeGreaterThan(0.9);
  expect(spots.map(({ rise }) => rise)).toEqual([-5e-4, 5e-4, 5e-4, -5e-4]);
});

it('keeps every piece on the bed, and turns with the bed', () => {
  const { contours } = levellingPlan(corners([0, 2e-4, 5e-4, 1e-4]), 0.2, 0.2);
  for (const { from, to } of contours)
    for (const at of [from.x, from.y, to.x, to.y]) expect(at >= -1e-12 && at <= 0.2 + 1e-12).toBe(true);
});

it.each([
  [7, 1],
  [7.1, 2],
  [0.3, 0.05],
  [35, 5],
  [36, 10],
])('parts a span of %s by %s, as a surveyor does', (span, step) => {
  expect(intervalFor(span)).toBeCloseTo(step, 12);
});
